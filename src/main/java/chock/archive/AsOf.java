package chock.archive;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.ResolverStyle;
import java.time.temporal.TemporalAccessor;
import java.util.Locale;
import java.util.Optional;

/**
 * The moment of judgement as the user gave it: with a zone, or on the clock of whatever workshop the record is from.
 *
 * @param instant the moment, or null when no zone was given
 * @param local the date and time, when no zone was given
 */
public record AsOf(Instant instant, LocalDateTime local) {
    private static final DateTimeFormatter WRITTEN = new DateTimeFormatterBuilder()
            .append(DateTimeFormatter.ISO_LOCAL_DATE).appendLiteral('T').append(DateTimeFormatter.ISO_LOCAL_TIME)
            .optionalStart().appendOffsetId().optionalEnd()
            .optionalStart().appendLiteral('[').appendZoneRegionId().appendLiteral(']').optionalEnd()
            .toFormatter(Locale.ROOT).withChronology(IsoChronology.INSTANCE).withResolverStyle(ResolverStyle.STRICT);

    /** What to write, in a sentence about what is no date and time. */
    public static final String ADVICE = "write 2026-11-25T12:00, with +01:00 or [Europe/London] behind it when it is not on the workshop's clock";

    /**
     * Reads {@code 2026-11-25T12:00}, the same with a blank for the {@code T}, with {@code Z} or {@code +01:00} behind it,
     * or with {@code [Europe/London]}. Years 1900 to 2999. Empty when it is not a date and time.
     */
    public static Optional<AsOf> read(String text) {
        try {
            TemporalAccessor read = WRITTEN.parseBest(text.strip().replaceFirst("(?<=\\d) (?=\\d)", "T"), ZonedDateTime::from, LocalDateTime::from);
            LocalDateTime local = LocalDateTime.from(read);
            if (local.getYear() >= 1900 && local.getYear() <= 2999) {
                return Optional.of(read instanceof ZonedDateTime zoned ? new AsOf(zoned.toInstant(), null) : new AsOf(null, local));
            }
        } catch (DateTimeException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /** The moment, on the clock of this workshop when no zone was given. */
    public Instant in(ZoneId workshop) {
        return instant != null ? instant : local.atZone(workshop).toInstant();
    }
}
