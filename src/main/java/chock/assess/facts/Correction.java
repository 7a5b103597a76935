package chock.assess.facts;

import chock.record.Deed;
import chock.record.Entry;

/** An entry that replaces an earlier one. */
public record Correction(Entry entry) {

    public String corrects() {
        return entry.corrects();
    }

    /**
     * A slip may be put right by its writer. A fault may not: that takes another person, and a new reading where a
     * reading is put right.
     */
    public boolean mayReplace(Evidence first, Wanted wanted) {
        boolean another = !entry.by().equals(first.entry().by());
        boolean asStrong = entry.deed().ordinal() <= first.entry().deed().ordinal();
        return another && asStrong || !wanted.faulty(first) && asStrong && first.entry().deed() != Deed.DONE;
    }

    /** Work is corrected away only by another person. */
    public boolean mayReplace(Work first) {
        return !entry.by().equals(first.entry().by());
    }
}
