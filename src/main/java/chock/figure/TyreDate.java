package chock.figure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The week a tyre was made, from the date code at the end of its identification number (49 CFR 574.5).
 *
 * <p>Four digits are week and year, three are week and the last digit of a year in a decade that is not marked. Week 1 is
 * the first full week of the calendar year (read in a copy: a maker's handbook of 2006, page 197), Sunday to Saturday
 * (from memory). The last week of a year may reach into the next. Makers elsewhere count by ISO 8601: a week 53 that the
 * first calendar does not have is the ISO week of that number, where the year has one, and the age counts from its Monday.
 *
 * @param code the three or four digits
 * @param weeks every week the code can mean, earliest first; one for four digits, at least one for three
 */
public record TyreDate(String code, List<Week> weeks) {

    /** Codes were first required of tyres made from this day (36 FR 1196, from memory). */
    private static final LocalDate FIRST_CODES = LocalDate.of(1971, 5, 22);
    /** Three digits were allowed until the day before (64 FR 36807; that a one-digit year lasted until July 2000 is read in a copy). */
    private static final LocalDate THREE_DIGITS_ENDED = LocalDate.of(2000, 7, 2);
    /** Year of the earliest four-digit code: the example of the rule that brought them in, 3197 (64 FR 36807; example from memory). */
    private static final int FIRST_FOUR_DIGIT_YEAR = 1997;

    /**
     * One week.
     *
     * @param from the Sunday it begins, or the Monday of an ISO week
     * @param to the day it ends, six days later
     */
    public record Week(LocalDate from, LocalDate to) { }

    public TyreDate {
        weeks = List.copyOf(weeks);
    }

    /**
     * Reads a date code, alone ({@code 1307}, {@code 031}) or at the end of a marking ({@code DOT U2LL LMLR 5107}).
     *
     * @param marking what stands on the tyre
     * @param asOf the day of judgement; weeks that had not begun then are no candidates
     * @throws BadFigureInput when no code can be read without guessing, or it names a week that cannot be
     */
    public static TyreDate read(String marking, LocalDate asOf) {
        String code = codeIn(marking);
        int week = Integer.parseInt(code.substring(0, 2));
        List<Integer> years = yearsOf(code, asOf);
        List<Week> weeks = new ArrayList<>();
        for (int year : years) {
            if (exists(week, year)) {
                Week candidate = begun(week, year);
                if (!candidate.from.isAfter(asOf) && (code.length() == 4 || threeDigitsAllowed(candidate))) {
                    weeks.add(candidate);
                }
            }
        }
        if (weeks.isEmpty()) {
            throw new BadFigureInput("'" + code + "' is not a date code that can stand on a tyre: " + whyNone(code, week, years, asOf) + ". Read it again on both sides");
        }
        return new TyreDate(code, weeks);
    }

    /** As {@link #read}, empty where that would refuse. */
    public static Optional<TyreDate> find(String marking, LocalDate asOf) {
        try {
            return Optional.of(read(marking, asOf));
        } catch (BadFigureInput unreadable) {
            return Optional.empty();
        }
    }

    /**
     * Days after this one on which the marking may come to be read otherwise: those years whose last two digits it names
     * begin, and that week in them begins. Up to a hundred and fifty years on; empty when no digits of a date show.
     */
    public static List<LocalDate> readChanges(String marking, LocalDate after) {
        String code;
        try {
            code = codeIn(marking);
        } catch (BadFigureInput unreadable) {
            return List.of();
        }
        int week = Integer.parseInt(code.substring(0, 2));
        List<LocalDate> days = new ArrayList<>();
        for (int year = after.getYear(); code.length() == 4 && year <= after.getYear() + 150; year++) {
            if (year % 100 == Integer.parseInt(code.substring(2))) {
                days.add(LocalDate.of(year, 1, 1));
                if (exists(week, year)) {
                    days.add(begun(week, year).from());
                }
            }
        }
        return days.stream().filter(day -> day.isAfter(after)).toList();
    }

    /** The week with this number, from 1, counted from the first full Sunday-to-Saturday week of the year. */
    public static Week week(int number, int year) {
        if (number < 1 || number > sundaysIn(year)) {
            throw new BadFigureInput("week " + number + " of " + year + " does not exist; the year has " + sundaysIn(year) + " weeks that begin on a Sunday");
        }
        LocalDate from = firstSunday(year).plusWeeks(number - 1L);
        return new Week(from, from.plusDays(6));
    }

    private static boolean exists(int week, int year) {
        return week >= 1 && week <= Math.max(sundaysIn(year), isoWeeksIn(year));
    }

    /** A year never has a week 53 by both calendars. */
    private static Week begun(int week, int year) {
        if (week <= sundaysIn(year)) {
            return week(week, year);
        }
        LocalDate from = LocalDate.of(year, 12, 28).with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        return new Week(from, from.plusDays(6));
    }

    /** 28 December always lies in the last ISO week of its year. */
    private static int isoWeeksIn(int year) {
        return LocalDate.of(year, 12, 28).get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }

    /** First day on which the tyre can have been made: the one to judge its age by. */
    public LocalDate earliest() {
        return weeks.get(0).from;
    }

    /** Last day on which the tyre can have been made. */
    public LocalDate latest() {
        return weeks.get(weeks.size() - 1).to;
    }

    /** Whether the year is marked in full (four digits). */
    public boolean yearIsMarked() {
        return code.length() == 4;
    }

    /**
     * Age in years, from the first day of a week; rounded up to a hundredth, so that it never reads younger.
     *
     * @throws BadFigureInput when {@code asOf} is before {@code made}
     */
    public static BigDecimal years(LocalDate made, LocalDate asOf) {
        if (asOf.isBefore(made)) {
            throw new BadFigureInput(asOf + " is before " + made + "; an age needs the later day");
        }
        long whole = ChronoUnit.YEARS.between(made, asOf);
        LocalDate birthday = made.plusYears(whole);
        BigDecimal part = BigDecimal.valueOf(ChronoUnit.DAYS.between(birthday, asOf))
                .divide(BigDecimal.valueOf(ChronoUnit.DAYS.between(birthday, made.plusYears(whole + 1))), 2, RoundingMode.UP);
        return part.add(BigDecimal.valueOf(whole));
    }

    /**
     * The digits that are the date. A last group of three or four digits is it. In a number written without gaps the code
     * may follow another digit, so longer runs are only cut where the whole length leaves no choice: 12 symbols (the longest
     * before 2015, from memory) or 13 (80 FR 19553) end in four digits of date.
     */
    private static String codeIn(String marking) {
        String tidy = marking.strip().toUpperCase(Locale.ROOT);
        String withoutDot = tidy.replaceFirst("^DOT", "");
        String lastGroup = withoutDot.substring(withoutDot.lastIndexOf(' ') + 1);
        if (lastGroup.matches("[0-9]{3,4}")) {
            return lastGroup;
        }
        String symbols = withoutDot.replace(" ", "");
        if (symbols.matches("[A-Z0-9]*[A-Z][0-9]{3}")) {
            return symbols.substring(symbols.length() - 3);
        }
        if (symbols.matches("[A-Z0-9]{8,9}[0-9]{4}")) {
            return symbols.substring(symbols.length() - 4);
        }
        throw new BadFigureInput("'" + (marking.length() > 40 ? marking.substring(0, 40) + "…" : marking) + "' does not show which digits are the date; "
                + "write the last group alone, four digits such as 1307 or three such as 031");
    }

    private static List<Integer> yearsOf(String code, LocalDate asOf) {
        int modulus = code.length() == 4 ? 100 : 10;
        int marked = Integer.parseInt(code.substring(2));
        int first = code.length() == 4 ? FIRST_FOUR_DIGIT_YEAR : FIRST_CODES.getYear();
        int last = code.length() == 4 ? asOf.getYear() : Math.min(asOf.getYear(), THREE_DIGITS_ENDED.getYear());
        List<Integer> years = new ArrayList<>();
        int year = first + Math.floorMod(marked - first, modulus);
        for (; year <= Math.max(first, last); year += modulus) {
            years.add(year);
        }
        return code.length() == 4 && !years.isEmpty() ? years.subList(years.size() - 1, years.size()) : years;
    }

    private static boolean threeDigitsAllowed(Week week) {
        return !week.from.isBefore(FIRST_CODES) && week.from.isBefore(THREE_DIGITS_ENDED);
    }

    private static String whyNone(String code, int week, List<Integer> years, LocalDate asOf) {
        if (week < 1 || week > 53) {
            return "there is no week " + code.substring(0, 2);
        }
        if (years.isEmpty()) {
            return "four digits mean a year from " + FIRST_FOUR_DIGIT_YEAR + " to " + asOf.getYear() + ", and '" + code.substring(2) + "' is none of them";
        }
        return week == 53 && years.stream().noneMatch(year -> exists(53, year)) ? "no year it can mean has a week 53 (" + years + ")"
                : "that week had not begun on " + asOf;
    }

    private static LocalDate firstSunday(int year) {
        return LocalDate.of(year, 1, 1).with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
    }

    private static int sundaysIn(int year) {
        LocalDate first = firstSunday(year);
        return first.plusWeeks(52).getYear() == year ? 53 : 52;
    }
}
