package chock.assess.facts;

/**
 * Whether the machine was built with a brake at one end, where that is known.
 *
 * @param shownBy where it comes from, in words
 */
public record BuiltBrakeFact(String end, boolean had, String shownBy) { }
