package chock.assess.facts;

/** One brake pad. */
public record PadFact(String end, String caliperPoint, String point) { }
