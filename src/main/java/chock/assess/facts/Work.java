package chock.assess.facts;

import chock.record.Entry;

/** Work done on a part. */
public record Work(Entry entry) {

    /** True when it was done on this part or on something this part carries. */
    public boolean isOn(String part) {
        return Entry.covers(part, entry.point());
    }

    /** True when this certainly came later, on the same part or on what carries it. */
    public boolean endsWhatBegan(Work earlier) {
        return Entry.covers(entry.point(), earlier.entry.point()) && entry.at().surelyAfter(earlier.entry.at());
    }

    /** True when this certainly came later, at the place of the evidence or on what carries it. */
    public boolean settles(Evidence evidence) {
        return Entry.covers(entry.point(), evidence.entry().point()) && entry.at().surelyAfter(evidence.entry().at());
    }

    /** True when this work takes away what the evidence proved. */
    public boolean undoes(Wanted wanted, Evidence evidence) {
        return mayFollow(evidence, wanted) && wanted.isUndoneBy(entry);
    }

    /** True unless everything that the evidence speaks of certainly came later: work inside a time that was watched leaves no more than a part of it. */
    public boolean mayFollow(Evidence evidence, Wanted wanted) {
        return mayFollow(evidence) || wanted.want().covers() && !entry.id().equals(evidence.id()) && !wanted.began(evidence).isAfter(entry.at().latest());
    }

    /** True unless the evidence certainly came later, or is this work itself. */
    public boolean mayFollow(Evidence evidence) {
        return !entry.id().equals(evidence.id()) && !evidence.entry().at().surelyAfter(entry.at());
    }
}
