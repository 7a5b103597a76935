package chock.record;

import java.time.LocalDate;

/**
 * One calibration of an instrument.
 *
 * @param on the day of it
 * @param due last day on which it counts
 */
public record Calibration(LocalDate on, LocalDate due) {

    /** True for a day on which a reading rests on it. */
    public boolean covers(LocalDate day) {
        return !day.isBefore(on) && !day.isAfter(due);
    }
}
