package chock.rulebook;

import java.util.List;

/**
 * The limit in force for one check at one place of one machine.
 *
 * @param applied the limit, or null when something is lacking
 * @param gap what is lacking, in a sentence, or null
 * @param rests the limits of the rule book, local codes and house that were held against each other
 */
public record LimitFor(Applied applied, String gap, List<Limit> rests) { }
