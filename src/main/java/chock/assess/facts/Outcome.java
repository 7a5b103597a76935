package chock.assess.facts;

import chock.assess.State;

/** The state of a required check at its place. There must be exactly one. */
public record Outcome(Required required, State state) { }
