package chock.assess.facts;

import chock.record.Entry;

/** Work done on a part. */
public record Work(Entry entry) {

    /** True when this work takes away what the evidence proved. */
    public boolean undoes(Wanted wanted, Evidence evidence) {
        return !entry.id().equals(evidence.id()) && !evidence.entry().at().surelyAfter(entry.at()) && wanted.isUndoneBy(entry);
    }
}
