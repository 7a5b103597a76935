package chock.rulebook;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;

/**
 * How long evidence holds if nothing touches it.
 *
 * @param period how long, or null when it holds until undone
 * @param sameDay whether it holds only on the day it was taken
 */
public record Holds(Period period, boolean sameDay) {
    public static final Holds UNTIL_UNDONE = new Holds(null, false);
    public static final Holds SAME_DAY = new Holds(null, true);

    /** Reads {@code until undone}, {@code same day}, {@code 30 days}, {@code 12 months}, {@code 2 years}. */
    public static Holds parse(String text) {
        String tidy = text.strip();
        if (tidy.equals("until undone")) {
            return UNTIL_UNDONE;
        }
        if (tidy.equals("same day")) {
            return SAME_DAY;
        }
        String[] parts = tidy.split("\\s+");
        if (parts.length == 2 && parts[0].matches("[1-9]\\d{0,3}")) {
            int n = Integer.parseInt(parts[0]);
            switch (parts[1]) {
                case "day", "days": return new Holds(Period.ofDays(n), false);
                case "month", "months": return new Holds(Period.ofMonths(n), false);
                case "year", "years": return new Holds(Period.ofYears(n), false);
                default: break;
            }
        }
        throw new IllegalArgumentException("'" + text + "': write 'until undone', 'same day', '30 days', '12 months' or '2 years'");
    }

    /** The first instant at which evidence of this day no longer holds, or null when it never lapses by itself. */
    public Instant lapse(LocalDate taken, ZoneId zone) {
        if (sameDay) {
            return taken.plusDays(1).atStartOfDay(zone).toInstant();
        }
        return period == null ? null : taken.plus(period).plusDays(1).atStartOfDay(zone).toInstant();
    }

    public String words() {
        if (sameDay) {
            return "on the day it was taken";
        }
        if (period == null) {
            return "until work undoes it";
        }
        return period.getYears() > 0 ? period.getYears() + " years" : period.getMonths() > 0 ? period.getMonths() + " months" : period.getDays() + " days";
    }
}
