package chock.rulebook;

/**
 * The limit in force for one check at one place of one machine.
 *
 * @param applied the limit, or null when something is lacking
 * @param gap what is lacking, in a sentence, or null
 */
public record LimitFor(Applied applied, String gap) { }
