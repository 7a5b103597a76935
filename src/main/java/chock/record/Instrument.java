package chock.record;

import chock.quantity.Quantity;
import java.time.LocalDate;

/**
 * What readings are taken with.
 *
 * @param id short id used in entries
 * @param kind a kind known to the table of instruments, such as {@code caliper}
 * @param uncertainty its expanded uncertainty U (k = 2), or null when the record says {@code by-kind}
 * @param calibrated day of the last calibration
 * @param due last day on which that calibration counts
 */
public record Instrument(String id, String kind, Quantity uncertainty, LocalDate calibrated, LocalDate due) { }
