package chock.assess.facts;

import chock.record.Deed;
import chock.record.Entry;

/**
 * The last word on an entry that was corrected. Where a correction was itself corrected, only the last of them counts, for each entry before
 * it: a fault that somebody found to be none comes back when they say that they had not looked.
 *
 * @param corrects id of the corrected entry
 * @param entry what is said instead
 */
public record Correction(String corrects, Entry entry) {

    /**
     * A slip may be put right by its writer, and who wrote that work was done may say that other work was. A fault may not: that takes
     * another person, and a new reading where a reading is put right. A fault of a safety-critical check takes more; see
     * {@link #isFreshLookAt}. So it is with a reading that may have shown a fault together with others.
     */
    public boolean mayReplace(Evidence first, Wanted wanted) {
        return isAsStrongAs(first) && (isByAnotherThan(first) && !wanted.card().critical() || !wanted.faulty(first) && !wanted.maySpoilOthers());
    }

    /**
     * True when the first proves nothing any more, and what it showed bad with others is still shown: when this says less than the first
     * did, such as that something was not seen but told, whoever says so, or when a reading that counts with others is put right. Nobody
     * may ride on what its own writer takes back. A fault is not taken back like that.
     */
    public boolean takesBack(Evidence first, Wanted wanted) {
        return !wanted.faulty(first) && (!isAsStrongAs(first) || wanted.maySpoilOthers());
    }

    /** Work is corrected away only by another person, who knows it at first hand. */
    public boolean mayReplace(Work first) {
        return mayReplace(first.entry());
    }

    /** The same of an entry of work. */
    public boolean mayReplace(Entry work) {
        return !entry.by().equals(work.by()) && (entry.deed() == Deed.DONE || entry.deed().atLeast(Deed.SEEN));
    }

    /** True when somebody else tried or looked at the same thing again, at least as well: what lifts a safety-critical fault. */
    public boolean isFreshLookAt(Evidence first) {
        return isByAnotherThan(first) && isSameAgain(first);
    }

    /** True when the same thing was tried or looked at again at first hand, at least as well, by whomever. */
    public boolean isSameAgain(Evidence first) {
        String about = Entry.key(entry.point(), String.valueOf(entry.what()));
        boolean same = about.equals(first.key()) || about.equals(Entry.key(first.entry().point(), first.entry().what()));
        return same && entry.deed().atLeast(Deed.SEEN) && isAsStrongAs(first);
    }

    /** True when another person wrote it than the entry it corrects. */
    public boolean isByAnotherThan(Evidence first) {
        return !entry.by().equals(first.entry().by());
    }

    private boolean isAsStrongAs(Evidence first) {
        return entry.deed().ordinal() <= first.entry().deed().ordinal();
    }
}
