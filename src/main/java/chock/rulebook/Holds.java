package chock.rulebook;

import chock.record.Moment;
import java.time.Duration;
import java.time.Instant;
import java.time.Period;
import java.util.Optional;

/**
 * How long evidence holds if nothing touches it.
 *
 * @param period whole days, months or years, or null
 * @param sameDay whether it holds only on the day it was taken
 * @param hours hours from the moment it was taken, or null; beside {@code sunset}, what counts where sunset is not known
 * @param sunset whether it holds until sunset on the day it was taken
 */
public record Holds(Period period, boolean sameDay, Duration hours, boolean sunset) {
    public static final Holds UNTIL_UNDONE = new Holds(null, false, null, false);
    public static final Holds SAME_DAY = new Holds(null, true, null, false);

    private static final String UNTIL_SUNSET = "until sunset, else ";

    /** Reads {@code until undone}, {@code same day}, {@code 2 hours}, {@code until sunset, else 2 hours}, {@code 30 days}, {@code 12 months}, {@code 2 years}. */
    public static Holds parse(String text) {
        String tidy = text.strip();
        if (tidy.equals("until undone")) {
            return UNTIL_UNDONE;
        }
        if (tidy.equals("same day")) {
            return SAME_DAY;
        }
        boolean sunset = tidy.startsWith(UNTIL_SUNSET);
        String[] parts = (sunset ? tidy.substring(UNTIL_SUNSET.length()) : tidy).split("\\s+");
        if (parts.length == 2 && parts[0].matches("[1-9]\\d{0,3}")) {
            int n = Integer.parseInt(parts[0]);
            if (parts[1].matches("hours?")) {
                return new Holds(null, false, Duration.ofHours(n), sunset);
            }
            Period period = sunset ? null : switch (parts[1]) {
                case "day", "days" -> Period.ofDays(n);
                case "month", "months" -> Period.ofMonths(n);
                case "year", "years" -> Period.ofYears(n);
                default -> null;
            };
            if (period != null) {
                return new Holds(period, false, null, false);
            }
        }
        throw new IllegalArgumentException("'" + text + "': write 'until undone', 'same day', '2 hours', 'until sunset, else 2 hours', '30 days', '12 months' or '2 years'");
    }

    /**
     * The first instant at which evidence no longer holds, or null when it never lapses by itself.
     *
     * @param taken when it was taken
     * @param from the instant from which hours count: one that the moment can mean
     * @param sunset sunset on that day, or empty where it is not known
     */
    public Instant lapse(Moment taken, Instant from, Optional<Instant> sunset) {
        if (this.sunset && sunset.isPresent()) {
            return sunset.get();
        }
        if (hours != null) {
            return from.plus(hours);
        }
        if (sameDay) {
            return taken.date().plusDays(1).atStartOfDay(taken.zone()).toInstant();
        }
        return period == null ? null : taken.date().plus(period).plusDays(1).atStartOfDay(taken.zone()).toInstant();
    }

    /** True when it holds for no more than the day it was taken on: what it is about changes by itself. */
    public boolean ofTheDay() {
        return sameDay || hours != null;
    }

    public String words() {
        if (sunset) {
            return "until sunset, or " + words(hours) + " where the shop's settings name no place";
        }
        if (hours != null) {
            return words(hours);
        }
        if (sameDay) {
            return "on the day it was taken";
        }
        if (period == null) {
            return "until work undoes it";
        }
        return period.getYears() > 0 ? period.getYears() + " years" : period.getMonths() > 0 ? period.getMonths() + " months" : period.getDays() + " days";
    }

    private static String words(Duration hours) {
        return hours.toHours() == 1 ? "1 hour" : hours.toHours() + " hours";
    }
}
