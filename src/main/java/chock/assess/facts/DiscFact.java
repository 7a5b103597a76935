package chock.assess.facts;

/** One brake disc. */
public record DiscFact(String end, String point, String caliperPoint) { }
