package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Year;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Turns the texts of one record into days, amounts and words of the trade. Each method answers null when there is
 * nothing to turn or when it makes no sense; in the latter case the reason is among the faults.
 */
final class Reading {
    private static final Pattern DAY = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern DAY_AND_TIME = Pattern.compile("(\\d{4}-\\d{2}-\\d{2})[ T]+(\\d{2}:\\d{2})");

    final Faults faults;
    final Vocabulary words;
    private final Instant asOf;
    private final Set<String> written;
    private final ReadAs as;
    private ZoneId zone;

    /**
     * @param written every path that stands in the file
     * @param as which of them are being written now
     */
    Reading(Faults faults, Vocabulary words, Instant asOf, Set<String> written, ReadAs as) {
        this.faults = faults;
        this.words = words;
        this.asOf = asOf;
        this.written = written;
        this.as = as;
    }

    /** True when what stands here is being written now, and is refused where it cannot be true; else it is stored and only marked. */
    boolean isNew(String path) {
        return as.isWritten(path);
    }

    /** The same for another text of the same file, with faults of its own. */
    Reading apart() {
        Reading apart = new Reading(new Faults("", Map.of()), words, asOf, written, ReadAs.STORED);
        apart.zone = zone;
        return apart;
    }

    /** True when this key stands in the file, whatever stands behind it. */
    boolean isWritten(String path) {
        return written.contains(path);
    }

    static boolean blank(String text) {
        return text == null || text.isBlank();
    }

    /** True when there is nothing here that is still worth looking at. */
    private boolean settled(String path, String text) {
        return blank(text) || faults.at(path);
    }

    ZoneId zone(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        if (!ZoneId.getAvailableZoneIds().contains(text)) {
            List<String> near = Spelling.nearest(text, ZoneId.getAvailableZoneIds());
            faults.add(path, Faults.quoted(text) + " is not a time zone", near.isEmpty() ? "Write a zone by its place, such as Europe/London" : "Nearest: " + String.join(", ", near));
            return null;
        }
        zone = ZoneId.of(text);
        return zone;
    }

    /** The day judged, in the workshop's zone; null while the zone is not known. */
    LocalDate today() {
        return zone == null ? null : LocalDate.ofInstant(asOf, zone);
    }

    String asOfWords() {
        return LocalDateTime.ofInstant(asOf, zone == null ? ZoneOffset.UTC : zone).withSecond(0).withNano(0).toString().replace('T', ' ');
    }

    /** A day that is not after the day judged. */
    LocalDate pastDay(String path, String text) {
        LocalDate day = day(path, text);
        if (day != null && today() != null && day.isAfter(today())) {
            faults.add(path, day + " lies after the moment judged (" + asOfWords() + ")", "Write the day it was, or judge as of a later day");
        }
        return day;
    }

    LocalDate day(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        try {
            if (DAY.matcher(text).matches()) {
                return LocalDate.parse(text);
            }
        } catch (DateTimeException e) {
            faults.add(path, "there is no day " + text, "Write a day of the calendar, such as 2026-11-20");
            return null;
        }
        faults.add(path, Faults.quoted(text) + " is not a day", "Write it as 2026-11-20");
        return null;
    }

    /** When an entry was made; not after the moment judged. */
    Moment moment(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        Moment moment = parseMoment(path, text);
        if (moment != null && zone != null && moment.earliest().isAfter(asOf)) {
            faults.add(path, moment + " lies after the moment judged (" + asOfWords() + ")", "Write when it was, or judge as of a later time");
        }
        return moment;
    }

    private Moment parseMoment(String path, String text) {
        var timed = DAY_AND_TIME.matcher(text);
        if (!timed.matches()) {
            if (!DAY.matcher(text).matches()) {
                faults.add(path, Faults.quoted(text) + " is not a day or a day and time", "Write 2026-11-20 or 2026-11-20 09:40, in the workshop's time");
                return null;
            }
            LocalDate day = day(path, text);
            return day == null ? null : new Moment(day, null, zoneOrAny());
        }
        LocalDate day = day(path, timed.group(1));
        if (day == null) {
            return null;
        }
        try {
            LocalTime time = LocalTime.parse(timed.group(2));
            if (zone != null && zone.getRules().getValidOffsets(LocalDateTime.of(day, time)).isEmpty()) {
                faults.add(path, "there is no " + time + " on " + day + " in " + zone + ": the clocks go forward over it", "Write the time the clock showed");
                return null;
            }
            return new Moment(day, time, zoneOrAny());
        } catch (DateTimeException e) {
            faults.add(path, "there is no time " + timed.group(2), "Write a time of the day, such as 09:40");
            return null;
        }
    }

    /** A record without a known zone is refused as a whole; any zone will do to look at the rest of it. */
    private ZoneId zoneOrAny() {
        return zone == null ? ZoneOffset.UTC : zone;
    }

    /** A day, month or year as marked on a part. */
    Value.Days days(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        try {
            if (text.matches("\\d{4}")) {
                Year year = Year.parse(text);
                return new Value.Days(year.atDay(1), year.atMonth(12).atEndOfMonth(), text);
            }
            if (text.matches("\\d{4}-\\d{2}")) {
                YearMonth month = YearMonth.parse(text);
                return new Value.Days(month.atDay(1), month.atEndOfMonth(), text);
            }
        } catch (DateTimeException e) {
            faults.add(path, "there is no month " + text, "Write a month of the calendar, such as 2023-05");
            return null;
        }
        if (!DAY.matcher(text).matches()) {
            faults.add(path, Faults.quoted(text) + " is not a day, month or year", "Write it as marked: 2023-05-14, 2023-05 or 2023");
            return null;
        }
        LocalDate day = day(path, text);
        return day == null ? null : new Value.Days(day, day, text);
    }

    Boolean yesNo(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        switch (text) {
            case "yes", "true": return true;
            case "no", "false": return false;
            default:
                faults.add(path, Faults.quoted(text) + " is neither yes nor no", "Write yes or no");
                return null;
        }
    }

    Integer wholeNumber(String path, String text, int least, int most) {
        if (settled(path, text)) {
            return null;
        }
        if (text.matches("\\d{1,6}") && Integer.parseInt(text) >= least && Integer.parseInt(text) <= most) {
            return Integer.valueOf(text);
        }
        faults.add(path, Faults.quoted(text) + " cannot stand here", "Write a whole number from " + least + " to " + most);
        return null;
    }

    /** One of a fixed set of words, written with small letters and dashes. */
    <E extends Enum<E>> E choice(String path, String text, Class<E> kind) {
        if (settled(path, text)) {
            return null;
        }
        for (E constant : kind.getEnumConstants()) {
            if (spelled(constant).equals(text)) {
                return constant;
            }
        }
        faults.add(path, Faults.quoted(text) + " cannot stand here", Choices.advice("Write", text, spellings(kind)));
        return null;
    }

    static List<String> spellings(Class<? extends Enum<?>> kind) {
        return Arrays.stream(kind.getEnumConstants()).map(Reading::spelled).toList();
    }

    static String spelled(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * A word that must be one of those known.
     *
     * @param thing what of, such as {@code a kind of instrument}
     * @param all those known; null when that is not known itself, so that nothing can be said
     */
    String known(String path, String text, String thing, Collection<String> all) {
        if (settled(path, text) || all == null) {
            return null;
        }
        if (!all.contains(text)) {
            faults.add(path, Faults.quoted(text) + " is not " + thing, Choices.advice("Write", text, all));
            return null;
        }
        return text;
    }

    String point(String path, String text) {
        if (settled(path, text)) {
            return null;
        }
        String now = words.placeNow(text);
        if (!words.points().contains(text) && words.points().contains(now)) {
            if (isNew(path)) {
                faults.add(path, Faults.quoted(text) + " is called " + now + " today", "Write " + now);
            }
            return now;
        }
        if (!words.points().contains(text)) {
            faults.add(path, Faults.quoted(text) + " is not a place this rule book knows", Choices.places(text, words.points()));
            return null;
        }
        return text;
    }

    /** An amount without ±, of one kind of unit ({@code null}: of any). */
    Quantity amount(String path, String text, Unit.Dimension kind) {
        if (settled(path, text)) {
            return null;
        }
        if (text.matches("(?s).*(±|\\+/?-).*")) {
            faults.add(path, "an uncertainty stands here", "Leave the ± out");
            return null;
        }
        try {
            Quantity amount = Quantity.parse(text);
            return ofKind(path, amount, kind) ? amount : null;
        } catch (UnreadableQuantity e) {
            unreadable(path, text, e, kind);
            return null;
        }
    }

    boolean ofKind(String path, Quantity amount, Unit.Dimension kind) {
        if (kind == null || amount.unit().dimension() == kind) {
            return true;
        }
        faults.add(path, Faults.quoted(amount.toString()) + " is " + article(amount.unit().dimension().words()) + "; " + article(kind.words()) + " is wanted",
                "Write it in " + Listing.or(Unit.symbolsOf(kind)));
        return false;
    }

    /** @param kind the kind of unit wanted, or null for any */
    void unreadable(String path, String text, UnreadableQuantity e, Unit.Dimension kind) {
        // The message reads: what was written, in quotes, a colon, and what is wrong with it.
        String says = e.getMessage().substring(e.getMessage().indexOf("': ") + 3);
        String units = kind == null ? "" : "Write a number and its unit: " + Listing.or(Unit.symbolsOf(kind));
        boolean general = says.startsWith("write a number") || says.startsWith("the unit is missing");
        String advice = Character.toUpperCase(says.charAt(0)) + says.substring(1);
        faults.add(path, Faults.quoted(text) + " is not an amount", units.isEmpty() ? advice : general ? units : says.contains("not a unit") ? advice + ". " + units : advice);
    }

    static String article(String name) {
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }
}
