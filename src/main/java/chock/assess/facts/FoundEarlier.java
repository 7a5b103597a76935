package chock.assess.facts;

/** A fault that was worked out from readings of which one was read again since. */
public record FoundEarlier(Judgement fault) { }
