package chock.assess.facts;

import chock.record.Entry;

/** Somebody's word that a reported defect is closed. */
public record Closure(Entry entry) {

    public boolean isOf(Defect defect) {
        return defect.id().equals(entry.what());
    }

    /** True when another person closes it than the one who reported it. */
    public boolean isByAnotherThan(Defect defect) {
        return !entry.by().equals(defect.entry().by());
    }

    /** True when it was written on a later day than the report. */
    public boolean isLaterDayThan(Defect defect) {
        return entry.at().date().isAfter(defect.entry().at().date());
    }
}
