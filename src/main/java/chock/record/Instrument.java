package chock.record;

import chock.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;

/**
 * What readings are taken with.
 *
 * @param id short id used in entries
 * @param kind a kind known to the table of instruments, such as {@code caliper}
 * @param uncertainty its expanded uncertainty U (k = 2), or null when the record says {@code by-kind}
 * @param calibrated day of the last calibration
 * @param due last day on which that calibration counts
 * @param history every calibration the workshop's register knows, earliest first; empty where there is no register
 * @param certificate number of the certificate that states this uncertainty, or null; without one no less is believed than the
 *     table of instruments gives for its kind
 */
public record Instrument(String id, String kind, Quantity uncertainty, LocalDate calibrated, LocalDate due, List<Calibration> history,
                         String certificate) {

    /** An instrument of which only the last calibration is known. */
    public Instrument(String id, String kind, Quantity uncertainty, LocalDate calibrated, LocalDate due) {
        this(id, kind, uncertainty, calibrated, due, List.of(), null);
    }

    /** The same instrument with the calibrations of a register, at least one. */
    public Instrument with(List<Calibration> known) {
        Calibration newest = known.get(known.size() - 1);
        return new Instrument(id, kind, uncertainty, newest.on(), newest.due(), List.copyOf(known), certificate);
    }

    /** The calibration that what is read with it on a day rests on; of a day before the first, the first. */
    public Calibration calibrationFor(LocalDate day) {
        Calibration found = history.isEmpty() ? new Calibration(calibrated, due) : history.get(0);
        for (Calibration one : history) {
            found = one.on().isAfter(day) ? found : one;
        }
        return found;
    }
}
