package chock.assess.facts;

/** A check that is at fault. */
public record KnownFault(Required required) { }
