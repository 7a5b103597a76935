package chock.assess.facts;

import chock.assess.State;

/** The state of a required check at its place. There must be exactly one. */
public record Outcome(Required required, State state) {
    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Outcome o && o.state == state && o.required.equals(required);
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + state.ordinal();
    }
}
