package chock.assess.facts;

/**
 * A disc or a drum that was looked over for the figure of its maker.
 *
 * @param point the disc or the drum
 * @param legible whether a figure was read on it
 */
public record MarkFact(String point, boolean legible) { }
