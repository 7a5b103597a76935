package chock.assess.facts;

import chock.quantity.Measured;
import chock.record.Value;

/** A reading that proves nothing any more for its age, its instrument or work since, and shows a fault all the same where others are put with it. */
public record SpentReading(Wanted wanted, Evidence evidence) {

    /** The amount, or null when it is none. */
    public Measured measured() {
        return evidence.entry().is() instanceof Value.Amount amount ? amount.measured() : null;
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof SpentReading o && o.evidence.equals(evidence) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * wanted.hashCode() + evidence.hashCode();
    }
}
