package chock.signoff;

import java.util.List;

/**
 * What of a sign-off holds, and what does not.
 *
 * @param title what it is a sign-off of, or that this is not known
 * @param things one after the other, as they were looked at
 * @param signOff what was signed, or null for a seal and for whatever nobody trusted signed
 * @param head the head of the ledger that was looked at, or null where none was
 */
public record Verification(String title, List<Thing> things, SignOff signOff, LedgerHead head) {

    /** Whether something holds. */
    public enum Holds { YES, NO, NOT_LOOKED_AT }

    /**
     * One thing looked at.
     *
     * @param thing what
     * @param says one sentence
     */
    public record Thing(String thing, Holds holds, String says) { }

    /** True when nothing looked at does not hold. */
    public boolean holds() {
        return !things.isEmpty() && things.stream().noneMatch(t -> t.holds() == Holds.NO) && things.get(0).holds() == Holds.YES;
    }

    /** True when everything was looked at as well. */
    public boolean complete() {
        return things.stream().noneMatch(t -> t.holds() == Holds.NOT_LOOKED_AT);
    }
}
