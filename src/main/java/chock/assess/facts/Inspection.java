package chock.assess.facts;

import chock.record.Entry;

/** A licensed inspection. */
public record Inspection(Entry entry) {

    public boolean refused() {
        return !passed();
    }

    public boolean passed() {
        return "passed".equals(entry.what());
    }

    /** True when this is certainly later; of two on one day without times a refusal is taken as the later. */
    public boolean laterThan(Inspection other) {
        return entry.at().surelyAfter(other.entry.at()) || !other.entry.at().surelyAfter(entry.at()) && refused() && other.passed();
    }
}
