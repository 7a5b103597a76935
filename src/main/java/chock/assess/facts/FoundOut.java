package chock.assess.facts;

import chock.record.Entry;

/** An instrument was found out of tolerance. */
public record FoundOut(Entry entry) {

    /** True when the reading was taken with it and it has not been calibrated again before the reading. */
    public boolean kills(Evidence evidence) {
        return evidence.instrument() != null && evidence.instrument().id().equals(entry.point())
                && !(evidence.calibration().on().isAfter(entry.at().date()) && !evidence.entry().at().date().isBefore(evidence.calibration().on()));
    }
}
