package chock.rulebook;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The words shared by all cards.
 *
 * @param places words behind the names in braces
 * @param works every work, with what it means
 * @param disturbing works that undo whatever lies on or below the part worked on
 * @param besides aspects that may be written though no check asks for them
 */
public record Library(Map<String, List<String>> places, Map<String, String> works, Set<String> disturbing,
                      Set<String> besides) { }
