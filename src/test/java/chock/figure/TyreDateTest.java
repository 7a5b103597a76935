package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.WeekFields;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TyreDateTest {
    private static final LocalDate AS_OF = LocalDate.of(2026, 11, 25);

    private static TyreDate read(String marking) {
        return TyreDate.read(marking, AS_OF);
    }

    /**
     * 3197: example of 49 CFR 574.5 (from memory). 0301: owner's handbook of 2006, page 197 (read in a copy). The others were
     * made with {@code date +%U} of GNU coreutils, whose week begins on Sunday and whose week 1 is the first full one.
     */
    @ParameterizedTest
    @CsvSource({
        "3197, 1997-08-03, 1997-08-09", "0301, 2001-01-21, 2001-01-27", "5300, 2000-12-31, 2001-01-06", "5306, 2006-12-31, 2007-01-06",
        "5312, 2012-12-30, 2013-01-05", "5317, 2017-12-31, 2018-01-06", "5323, 2023-12-31, 2024-01-06", "1313, 2013-03-31, 2013-04-06",
        "0118, 2018-01-07, 2018-01-13", "0824, 2024-02-25, 2024-03-02", "4726, 2026-11-22, 2026-11-28"})
    void readsWeekAndYear(String code, LocalDate from, LocalDate to) {
        assertThat(read(code).weeks()).containsExactly(new TyreDate.Week(from, to));
        assertThat(read(code).yearIsMarked()).isTrue();
    }

    /** Years with 53 ISO weeks, and the Monday each begins ({@code date -d 2020-12-31 +%G-%V} and so on). */
    @ParameterizedTest
    @CsvSource({"5304, 2004-12-27", "5309, 2009-12-28", "5315, 2015-12-28", "5320, 2020-12-28"})
    void takesTheIsoWeek53FromItsMonday(String code, LocalDate from) {
        assertThat(read(code).weeks()).containsExactly(new TyreDate.Week(from, from.plusDays(6)));
        assertThat(read(code).earliest()).isEqualTo(from);
    }

    @Test
    void hasNoYearWithAWeek53ByBothCalendars() {
        for (int year = 1971; year <= 2100; year++) {
            boolean sunday = LocalDate.of(year, 12, 31).get(WeekFields.of(DayOfWeek.SUNDAY, 7).weekOfYear()) == 53;
            boolean iso = LocalDate.of(year, 12, 28).get(WeekFields.ISO.weekOfWeekBasedYear()) == 53;
            assertThat(sunday && iso).as("%d", year).isFalse();
        }
    }

    @Test
    void beginsEveryWeekOnASundayAndCountsEveryDayOnce() {
        WeekFields fullWeeks = WeekFields.of(DayOfWeek.SUNDAY, 7);
        LocalDate expected = TyreDate.week(1, 1971).from();
        for (int year = 1971; year <= 2030; year++) {
            int weeks = LocalDate.of(year, 12, 31).get(fullWeeks.weekOfYear());
            for (int number = 1; number <= weeks; number++) {
                TyreDate.Week week = TyreDate.week(number, year);
                assertThat(week.from()).isEqualTo(expected).matches(day -> day.getDayOfWeek() == DayOfWeek.SUNDAY);
                assertThat(week.to()).isEqualTo(week.from().plusDays(6));
                assertThat(week.from().getYear()).isEqualTo(year);
                expected = week.from().plusWeeks(1);
            }
            int tooMany = weeks + 1;
            int in = year;
            assertThatThrownBy(() -> TyreDate.week(tooMany, in)).isInstanceOf(BadFigureInput.class);
        }
    }

    /** 031 is week 3 of 1981 or 1991 (owner's handbook of 2006, read in a copy); 1971 is before codes were required (from memory). */
    @Test
    void leavesTheDecadeOfThreeDigitsOpen() {
        TyreDate date = read("DOT U2LL LMLR 031");
        assertThat(date.yearIsMarked()).isFalse();
        assertThat(date.weeks()).extracting(TyreDate.Week::from).containsExactly(LocalDate.of(1981, 1, 18), LocalDate.of(1991, 1, 20));
        assertThat(date.earliest()).isEqualTo("1981-01-18");
        assertThat(date.latest()).isEqualTo("1991-01-26");
    }

    /** A public page reads 317 as 1997 only. */
    @Test
    void doesNotTakeTheNinetiesForGranted() {
        assertThat(read("317").weeks()).extracting(week -> week.from().getYear()).containsExactly(1977, 1987, 1997);
    }

    /** A one-digit year was allowed until July 2000 (read in a copy). */
    @ParameterizedTest
    @CsvSource({"260, 3, 2000-07-01", "270, 2, 1990-07-14", "401, 3, 1991-10-12", "201, 2, 1991-05-25", "211, 3, 1991-06-01"})
    void boundsThreeDigitsByTheYearsTheyWereUsed(String code, int candidates, LocalDate latest) {
        assertThat(read(code).weeks()).hasSize(candidates);
        assertThat(read(code).latest()).isEqualTo(latest);
    }

    /**
     * Sundays: 1972, 1978 and 1989 have 53 of them, the other years these codes can mean have 52 ({@code date +%U}). ISO weeks:
     * of those years 1992 and 1998 have 53 ({@code date +%V}).
     */
    @Test
    void takesWeek53OnlyWhereTheYearHasOne() {
        assertThat(read("538").weeks()).extracting(week -> week.from().getYear()).containsExactly(1978, 1998);
        assertThat(read("532").weeks()).extracting(week -> week.from().getYear()).containsExactly(1972, 1992);
        assertThat(read("539").weeks()).extracting(week -> week.from().getYear()).containsExactly(1989);
    }

    @Test
    void makesEveryThreeDigitTyreOverTwentyFiveYearsOld() {
        for (int week = 1; week <= 52; week++) {
            for (int year = 0; year <= 9; year++) {
                assertThat(read("%02d%d".formatted(week, year)).latest().plusYears(25)).isBefore(AS_OF);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"DOT U2LL LMLR 5107, 5107", "dot u2ll lmlr 5107, 5107", "U2LLLMLR5107, 5107", "DOT1U2LLLMLR5107, 5107", "DOT U2LL LM12 5107, 5107",
        "DOTU2LLLMLR031, 031", "DOT 5107, 5107", "DOT5107, 5107", " 1307 , 1307"})
    void findsTheDateAtTheEndOfAMarking(String marking, String code) {
        assertThat(read(marking).code()).isEqualTo(code);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "DOT", "13", "12345", "U2LL1031", "DOTU2LLML12031", "120/90-18", "4.10-350", "5107 LMLR", "week 51", "१३०७"})
    void refusesToGuessWhichDigitsAreTheDate(String marking) {
        assertThatThrownBy(() -> read(marking)).isInstanceOf(BadFigureInput.class)
                .hasMessage("'" + marking + "' does not show which digits are the date; write the last group alone, four digits such as 1307 or three such as 031");
        assertThat(TyreDate.find(marking, AS_OF)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0013 | there is no week 00
            5413 | there is no week 54
            540  | there is no week 54
            001  | there is no week 00
            5399 | no year it can mean has a week 53 ([1999])
            533  | no year it can mean has a week 53 ([1973, 1983, 1993])
            4826 | that week had not begun on 2026-11-25
            1030 | four digits mean a year from 1997 to 2026, and '30' is none of them
            1096 | four digits mean a year from 1997 to 2026, and '96' is none of them
            """)
    void refusesAWeekThatCannotBe(String code, String reason) {
        assertThatThrownBy(() -> read(code)).isInstanceOf(BadFigureInput.class)
                .hasMessage("'" + code + "' is not a date code that can stand on a tyre: " + reason + ". Read it again on both sides");
    }

    @Test
    void knowsNothingOfWeeksAfterTheDayOfJudgement() {
        assertThat(TyreDate.read("031", LocalDate.of(1985, 6, 1)).weeks()).extracting(week -> week.from().getYear()).containsExactly(1981);
        assertThat(TyreDate.read("4726", LocalDate.of(2026, 11, 22)).earliest()).isEqualTo("2026-11-22");
        assertThat(TyreDate.find("4726", LocalDate.of(2026, 11, 21))).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"2020-11-25, 2026-11-25, 6.00", "2020-11-26, 2026-11-25, 6.00", "2020-11-24, 2026-11-25, 6.01", "2016-02-29, 2026-02-28, 10.00",
        "2026-11-25, 2026-11-25, 0.00", "2013-03-31, 2026-11-25, 13.66"})
    void neverRoundsAnAgeDown(LocalDate made, LocalDate asOf, BigDecimal years) {
        assertThat(TyreDate.years(made, asOf)).isEqualTo(years);
    }

    @Test
    void refusesAnAgeBeforeTheBeginning() {
        assertThatThrownBy(() -> TyreDate.years(AS_OF, AS_OF.minusDays(1))).isInstanceOf(BadFigureInput.class)
                .hasMessage("2026-11-24 is before 2026-11-25; an age needs the later day");
    }

    /** Two digits come round again; who judges in 2113 or later reads 1313 as that year's. */
    @Test
    void readsTheLatestCenturyThatHasBegun() {
        assertThat(TyreDate.read("1313", LocalDate.of(2114, 6, 1)).weeks()).containsExactly(TyreDate.week(13, 2113));
        assertThat(TyreDate.read("1397", LocalDate.of(2096, 6, 1)).weeks()).containsExactly(TyreDate.week(13, 1997));
        assertThat(TyreDate.find("1313", AS_OF)).contains(read("1313"));
    }

    /** 2028 has 53 Sundays, the last on 31 December; the first of 2026 is 4 January ({@code date +%U}). */
    @ParameterizedTest
    @CsvSource({"5328, 2028-12-30, that week had not begun on 2028-12-30", "0126, 2026-01-03, that week had not begun on 2026-01-03",
        "5327, 2027-12-31, no year it can mean has a week 53 ([2027])"})
    void tellsAWeekToComeFromOneThatNeverWas(String code, LocalDate asOf, String reason) {
        assertThatThrownBy(() -> TyreDate.read(code, asOf)).isInstanceOf(BadFigureInput.class).hasMessageContaining(": " + reason + ". ");
    }

    @Test
    void cutsALongMarkingInTheMessage() {
        String forty = "120/90-18 65H tubeless front, made there";
        assertThat(forty).hasSize(40);
        assertThatThrownBy(() -> read(forty)).isInstanceOf(BadFigureInput.class).hasMessageStartingWith("'" + forty + "' does");
        assertThatThrownBy(() -> read(forty + "!")).isInstanceOf(BadFigureInput.class).hasMessageStartingWith("'" + forty + "…' does");
    }

    /** The days on which another reading may begin: those years, and that week in them ({@code date +%U} for the Sundays). */
    @Test
    void knowsWhenAMarkingMayComeToBeReadOtherwise() {
        assertThat(TyreDate.readChanges("DOT U2LL LMLR 1313", AS_OF)).containsExactly(LocalDate.of(2113, 1, 1), TyreDate.week(13, 2113).from());
        assertThat(TyreDate.readChanges("4826", AS_OF)).as("a week to come this year, and a hundred years on")
                .containsExactly(LocalDate.of(2026, 11, 29), LocalDate.of(2126, 1, 1), TyreDate.week(48, 2126).from());
        assertThat(TyreDate.readChanges("4726", LocalDate.of(2026, 11, 22))).as("begun that day").doesNotContain(LocalDate.of(2026, 11, 22));
        assertThat(TyreDate.readChanges("5327", AS_OF)).as("2027 has no week 53").containsExactly(LocalDate.of(2027, 1, 1), LocalDate.of(2127, 1, 1));
        assertThat(TyreDate.readChanges("5328", AS_OF)).startsWith(LocalDate.of(2028, 1, 1), LocalDate.of(2028, 12, 31));
        assertThat(TyreDate.readChanges("0127", AS_OF)).startsWith(LocalDate.of(2027, 1, 1), LocalDate.of(2027, 1, 3));
        assertThat(TyreDate.readChanges("0027", AS_OF)).containsExactly(LocalDate.of(2027, 1, 1), LocalDate.of(2127, 1, 1));
        assertThat(TyreDate.readChanges("0176", AS_OF)).as("a hundred and fifty years on").contains(LocalDate.of(2176, 1, 1));
        assertThat(TyreDate.readChanges("031", AS_OF)).as("three digits are of the past").isEmpty();
        assertThat(TyreDate.readChanges("4.10-350", AS_OF)).isEmpty();
    }

    /** No day but those changes a reading: held against reading the marking on every day of some years. */
    @Test
    void changesAReadingOnNoOtherDay() {
        for (String code : new String[] {"5328", "0127", "4826", "5327", "031"}) {
            List<LocalDate> changes = TyreDate.readChanges(code, AS_OF);
            Optional<TyreDate> before = TyreDate.find(code, AS_OF);
            for (LocalDate day = AS_OF.plusDays(1); day.getYear() < 2030; day = day.plusDays(1)) {
                Optional<TyreDate> now = TyreDate.find(code, day);
                if (!now.equals(before)) {
                    assertThat(changes).as("%s on %s", code, day).contains(day);
                }
                before = now;
            }
        }
    }
}
