package chock.assess.facts;

import java.util.Objects;

/**
 * Evidence that does not count for one want.
 *
 * @param wanted the want
 * @param entry id of the entry set aside
 * @param reason why
 * @param by id of the entry that undid or corrected it, or of the reading it was opened for, or null
 */
public record SetAside(Wanted wanted, String entry, Reason reason, String by) {

    /** Why evidence does not count. */
    public enum Reason {
        CORRECTED, TAKEN_BACK, TOO_WEAK, INSTRUMENT_NOT_NAMED, IMPOSSIBLE, MISPLACED, UNDONE, OPENED, TOO_OLD, OUT_OF_CALIBRATION, INSTRUMENT_FOUND_OUT, EXAMINED, SETTLED;

        /** True when it proved something once. */
        public boolean wasProof() {
            return this != CORRECTED && this != TAKEN_BACK && this != TOO_WEAK && this != INSTRUMENT_NOT_NAMED && this != IMPOSSIBLE && this != MISPLACED && this != EXAMINED && this != SETTLED;
        }
    }

    /** True when the evidence proved something once. */
    public boolean wasProof() {
        return reason.wasProof();
    }

    /** True when it takes away what the evidence proved, and does not say that it was wrong. */
    public boolean leavesFaults() {
        return reason == Reason.TOO_OLD || reason == Reason.OUT_OF_CALIBRATION || reason == Reason.INSTRUMENT_FOUND_OUT || reason == Reason.UNDONE || reason == Reason.OPENED || reason == Reason.TAKEN_BACK;
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof SetAside o && o.reason == reason && o.entry.equals(entry) && Objects.equals(o.by, by) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * wanted.hashCode() + entry.hashCode()) + Objects.hashCode(by);
    }
}
