package chock.rulebook;

/** A check of a house, and a place of one machine at which it is asked. */
public record Asked(String check, String point) { }
