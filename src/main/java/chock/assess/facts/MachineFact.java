package chock.assess.facts;

import chock.quantity.Quantity;
import chock.record.Machine;
import java.time.LocalDate;
import java.util.Set;

/** The machine as a whole. */
public record MachineFact(Machine.Kind kind, int built, LocalDate firstRegistered, boolean linkedBrakes, int seats, int volts, Machine.Drive drive, String territory, Quantity topSpeed, boolean historyKnown,
                          Machine.Further further, Set<Machine.Part> parts) {

    public Machine.Battery battery() {
        return further.battery();
    }

    /** Since when it stood when it came in; null when it was in use, and when that is not written or not known. */
    public LocalDate laidUpSince() {
        return further.laidUp() == null ? null : further.laidUp().since();
    }

    /** True when it is written that nobody knows how long it stood. */
    public boolean laidUpUnknown() {
        return further.laidUp() != null && !further.laidUp().known();
    }

    /** Whether it has a part; see {@link Machine#has}. */
    public boolean has(Machine.Part part) {
        return parts.contains(part);
    }

    public boolean generator() {
        return further.generator();
    }
}
