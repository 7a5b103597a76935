package chock.record;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Objects;

/**
 * When something was written down: a date, with or without a time of day, in the workshop's time zone. Without a time
 * it stands for the whole of that day there. What the program wrote down at that very moment has a number as well, so that
 * entries of one minute keep their order.
 */
public final class Moment {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm");

    private final LocalDate date;
    private final LocalTime time;
    private final ZoneId zone;
    private final int seq;
    // Kept, because the rules compare every entry with every work and finding an offset is the slow part of it.
    private final Instant earliest;
    private final Instant latest;

    /**
     * @param date the day
     * @param time the time of day, or null
     * @param zone the workshop's time zone
     */
    public Moment(LocalDate date, LocalTime time, ZoneId zone) {
        this(date, time, zone, 0);
    }

    /** @param seq from 1, the greater the later among entries of one minute; 0 when it was written by hand */
    public Moment(LocalDate date, LocalTime time, ZoneId zone, int seq) {
        this.date = Objects.requireNonNull(date);
        this.time = time;
        this.zone = Objects.requireNonNull(zone);
        this.seq = seq;
        this.earliest = (time == null ? date.atStartOfDay(zone) : LocalDateTime.of(date, time).atZone(zone)).toInstant();
        this.latest = time == null ? date.plusDays(1).atStartOfDay(zone).toInstant().minusNanos(1) : earliest;
    }

    public LocalDate date() {
        return date;
    }

    /** The time of day, or null. */
    public LocalTime time() {
        return time;
    }

    public ZoneId zone() {
        return zone;
    }

    /** Its number among all entries that the program dated, or 0. */
    public int seq() {
        return seq;
    }

    /** The first instant it can mean. */
    public Instant earliest() {
        return earliest;
    }

    /** The last instant it can mean. */
    public Instant latest() {
        return latest;
    }

    /**
     * True only when this is certainly later. Two things on one day without times are not, nor are two of one minute unless
     * the program numbered both.
     */
    public boolean surelyAfter(Moment other) {
        return earliest.isAfter(other.latest) || other.seq > 0 && seq > other.seq && time != null && earliest.equals(other.latest);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Moment m && m.date.equals(date) && Objects.equals(m.time, time) && m.zone.equals(zone) && m.seq == seq;
    }

    @Override
    public int hashCode() {
        return Objects.hash(date, time, zone, seq);
    }

    @Override
    public String toString() {
        return time == null ? date.toString() : date + " " + time.format(CLOCK);
    }
}
