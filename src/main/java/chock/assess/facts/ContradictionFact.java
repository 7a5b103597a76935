package chock.assess.facts;

import java.util.List;

/**
 * Entries about parts that the machine of their day did not have by one value of its description.
 *
 * @param says both, with their lines
 * @param entries their ids
 */
public record ContradictionFact(String says, List<String> entries) { }
