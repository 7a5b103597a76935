package chock.assess.facts;

/**
 * Evidence that does not count for one want.
 *
 * @param wanted the want
 * @param entry id of the entry set aside
 * @param reason why
 * @param by id of the entry that undid or corrected it, or null
 */
public record SetAside(Wanted wanted, String entry, Reason reason, String by) {

    /** Why evidence does not count. */
    public enum Reason {
        CORRECTED, TOO_WEAK, UNDONE, TOO_OLD, OUT_OF_CALIBRATION, INSTRUMENT_FOUND_OUT;

        /** True when it proved something once. */
        public boolean wasProof() {
            return this != CORRECTED && this != TOO_WEAK;
        }
    }

    /** True when the evidence proved something once. */
    public boolean wasProof() {
        return reason.wasProof();
    }
}
