package chock.rehearse;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.Period;

/**
 * How long before the judgement something was.
 *
 * @param days days, months or years before that day; the hour is then any
 * @param time hours or minutes before that moment, or null
 */
record Ago(Period days, Duration time) {
    static final Ago ON_THE_DAY = new Ago(Period.ZERO, null);

    static Ago of(int many, String unit) {
        return switch (unit) {
            case "minute" -> new Ago(Period.ZERO, Duration.ofMinutes(many));
            case "hour" -> new Ago(Period.ZERO, Duration.ofHours(many));
            case "day" -> new Ago(Period.ofDays(many), null);
            case "month" -> new Ago(Period.ofMonths(many), null);
            default -> new Ago(Period.ofYears(many), null);
        };
    }

    /** The moment it was, or null when only its day is known. */
    LocalDateTime before(LocalDateTime judged) {
        return time == null ? null : judged.minus(time);
    }
}
