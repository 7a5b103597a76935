package chock.assess.facts;

import chock.record.Value;

/**
 * An entry that no check reads at its place, and the nearest check of this machine that asks for the like.
 *
 * @param wanted what the nearest check wants; one of several when they are equally near
 * @param evidence the entry at its own place
 */
public record Misplaced(Wanted wanted, Evidence evidence) {

    /** True when the nearest check would call it a fault by itself. */
    public boolean faulty() {
        return wanted.faulty(evidence);
    }

    /**
     * True when its value says nothing by itself: an amount that a rule puts together with others, a marked day, a code.
     * Whether the machine is sound then depends on what the entry was about, and nobody knows.
     */
    public boolean unclear() {
        Value is = evidence.entry().is();
        boolean together = is instanceof Value.Amount && !wanted.decidesAlone();
        return !wanted.tooWeak(evidence) && (together || is instanceof Value.Days || is instanceof Value.Code);
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Misplaced o && o.evidence.equals(evidence) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * wanted.hashCode() + evidence.hashCode();
    }
}
