package chock.assess.facts;

/**
 * A number the machine is known by.
 *
 * @param point {@code frame} or {@code engine}
 * @param number as the record gives it, or {@code none}
 */
public record NumberFact(String point, String number) { }
