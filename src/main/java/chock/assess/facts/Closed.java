package chock.assess.facts;

import chock.record.Gate;

/** A known fault of this check closes a gate that does not ask for it. */
public record Closed(Required required, Gate gate) {
    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Closed o && o.gate == gate && o.required.equals(required);
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + gate.ordinal();
    }
}
