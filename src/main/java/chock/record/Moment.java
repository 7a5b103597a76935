package chock.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/**
 * When something was written down: a date, with or without a time of day, in the workshop's time zone. Without a time
 * it stands for the whole of that day there.
 *
 * @param date the day
 * @param time the time of day, or null
 * @param zone the workshop's time zone
 */
public record Moment(LocalDate date, LocalTime time, ZoneId zone) {

    /** The first instant it can mean. */
    public Instant earliest() {
        return (time == null ? date.atStartOfDay(zone) : LocalDateTime.of(date, time).atZone(zone)).toInstant();
    }

    /** The last instant it can mean. */
    public Instant latest() {
        return time == null ? date.plusDays(1).atStartOfDay(zone).toInstant().minusNanos(1) : earliest();
    }

    /** True only when this is certainly later. Two things on one day without times are not. */
    public boolean surelyAfter(Moment other) {
        return earliest().isAfter(other.latest());
    }

    @Override
    public String toString() {
        return time == null ? date.toString() : date + " " + time.format(DateTimeFormatter.ofPattern("HH:mm"));
    }
}
