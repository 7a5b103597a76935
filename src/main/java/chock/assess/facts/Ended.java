package chock.assess.facts;

/** A fault worked out from several readings, and ended by work since. */
public record Ended(Judgement fault) { }
