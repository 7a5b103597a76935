package chock.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Bounds.Standing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoundsTest {

    private static Bounds atLeast(String low) {
        return new Bounds(Quantity.parse(low), true, null, false);
    }

    private static Bounds moreThan(String low) {
        return new Bounds(Quantity.parse(low), false, null, false);
    }

    private static Bounds atMost(String high) {
        return new Bounds(null, false, Quantity.parse(high), true);
    }

    private static Bounds between(String low, String high) {
        return new Bounds(Quantity.parse(low), true, Quantity.parse(high), true);
    }

    /** Guard band w = U (ILAC-G8:09/2019 4.2.3, read in a copy): a pass lies strictly beyond the acceptance limit. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.4 mm ± 0.1 mm           | OUTSIDE
            1.499999 mm ± 0.1 mm      | OUTSIDE
            1.5 mm ± 0.1 mm           | TOO_CLOSE
            1.6 mm ± 0.1 mm           | TOO_CLOSE
            1.600000000001 mm ± 0.1 mm | INSIDE
            1.7 mm ± 0.1 mm           | INSIDE
            1.5 mm                    | INSIDE
            """)
    void needsMoreThanTheUncertaintyAboveALowerLimit(String reading, Standing standing) {
        assertThat(atLeast("1.5 mm").standing(Measured.parse(reading))).isEqualTo(standing);
    }

    /**
     * Upper limit, four states: on the acceptance limit AL = TL − U it is a conditional pass, not a pass; on TL itself both
     * printed intervals are closed, and this side is the safe one (ILAC-G8:09/2019 4.2.3, read in a copy).
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.199 mm ± 0.1 mm | INSIDE
            0.2 mm ± 0.1 mm   | TOO_CLOSE
            0.3 mm ± 0.1 mm   | TOO_CLOSE
            0.301 mm ± 0.1 mm | OUTSIDE
            """)
    void needsMoreThanTheUncertaintyBelowAnUpperLimit(String reading, Standing standing) {
        assertThat(atMost("0.3 mm").standing(Measured.parse(reading))).isEqualTo(standing);
        Bounds below = new Bounds(null, false, Quantity.parse("0.3 mm"), false);
        assertThat(below.standing(Measured.parse(reading))).isEqualTo(reading.startsWith("0.3 ") ? Standing.OUTSIDE : standing);
    }

    /** 1/16 in is 1.5875 mm: exactly 0.0875 mm above the limit, which no decimal of an inch can say. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1/16 in ± 0.0875 mm       | TOO_CLOSE
            1/16 in ± 0.087499999999 mm | INSIDE
            1.5875 mm ± 0.0875 mm     | TOO_CLOSE
            0.05 in ± 0.1 mm          | OUTSIDE
            """)
    void keepsTheGuardBandExactAcrossUnits(String reading, Standing standing) {
        assertThat(atLeast("1.5 mm").standing(Measured.parse(reading))).isEqualTo(standing);
    }

    /** 230 °C is 446 °F (49 CFR 571.116, read in two copies); 18 °F of uncertainty is 10 °C, not −7.8 °C. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            445.9 °F ± 18 °F | OUTSIDE
            464 °F ± 18 °F   | TOO_CLOSE
            464.1 °F ± 18 °F | INSIDE
            240 °C ± 18 °F   | TOO_CLOSE
            240.1 °C ± 10 K  | INSIDE
            """)
    void takesAnUncertaintyOfTemperatureAsAnInterval(String reading, Standing standing) {
        assertThat(atLeast("230 °C").standing(Measured.parse(reading))).isEqualTo(standing);
    }

    @Test
    void staysTooCloseWhereTheUncertaintyFillsTheRange() {
        assertThat(between("2 mm", "3 mm").standing(Measured.parse("2.5 mm ± 0.5 mm"))).isEqualTo(Standing.TOO_CLOSE);
        assertThat(between("2 mm", "3 mm").standing(Measured.parse("2.5 mm ± 0.49 mm"))).isEqualTo(Standing.INSIDE);
    }

    @Test
    void measuresTheMarginToTheNearerEnd() {
        assertThat(between("2 mm", "3 mm").margin(Quantity.parse("2.7 mm"))).hasToString("0.3 mm");
        assertThat(atLeast("1.5 mm").margin(Quantity.parse("1.2 mm"))).hasToString("-0.3 mm");
        assertThat(atMost("10 °C").margin(Quantity.parse("41 °F")).value()).isEqualByComparingTo("9");
    }

    @Test
    void combinesToWhatBothAllow() {
        List<Bounds> all = List.of(atLeast("1.5 mm"), moreThan("1.5 mm"), atLeast("1/16 in"), atMost("3 mm"), between("1 mm", "2 mm"),
                new Bounds(Quantity.parse("1 mm"), false, Quantity.parse("3 mm"), false));
        List<Quantity> values = List.of("0.9 mm", "1 mm", "1.4 mm", "1.5 mm", "1.55 mm", "1/16 in", "2 mm", "2.1 mm", "3 mm", "3.1 mm").stream().map(Quantity::parse).toList();
        for (Bounds one : all) {
            for (Bounds other : all) {
                for (Quantity value : values) {
                    assertThat(one.and(other).contains(value)).as("%s and %s: %s", one.words(), other.words(), value)
                            .isEqualTo(one.contains(value) && other.contains(value));
                }
            }
        }
    }

    @Test
    void knowsWhichOfTwoIsTighter() {
        assertThat(atLeast("1/16 in").within(atLeast("1.5 mm"))).isTrue();
        assertThat(atLeast("1.5 mm").within(atLeast("1/16 in"))).isFalse();
        assertThat(moreThan("1.5 mm").within(atLeast("1.5 mm"))).isTrue();
        assertThat(atLeast("1.5 mm").within(moreThan("1.5 mm"))).isFalse();
        assertThat(atLeast("1.50 mm").within(atLeast("1.5 mm"))).isTrue();
        assertThat(atLeast("1.5 mm").within(atMost("3 mm"))).isFalse();
    }

    @Test
    void saysItInWords() {
        assertThat(atLeast("1.5 mm").words()).isEqualTo("at least 1.5 mm");
        assertThat(moreThan("1.5 mm").words()).isEqualTo("more than 1.5 mm");
        assertThat(atMost("3 mm").words()).isEqualTo("at most 3 mm");
        assertThat(between("2 mm", "3 mm").words()).isEqualTo("between 2 mm and 3 mm");
        assertThat(new Bounds(Quantity.parse("2 mm"), true, Quantity.parse("3 mm"), false).words()).isEqualTo("at least 2 mm and less than 3 mm");
    }

    @Test
    void needsAnEnd() {
        assertThatThrownBy(() -> new Bounds(null, true, null, true)).hasMessage("a bound is needed");
    }

    /** Codes differ on whether the printed value itself still passes; a bound says which, at either end. */
    @Test
    void leavesTheLimitItselfToTheBound() {
        Quantity limit = Quantity.parse("1.5 mm");
        assertThat(atLeast("1.5 mm").contains(limit)).isTrue();
        assertThat(moreThan("1.5 mm").contains(limit)).isFalse();
        assertThat(atMost("1.5 mm").contains(limit)).isTrue();
        assertThat(new Bounds(null, false, limit, false).contains(limit)).isFalse();
        assertThat(moreThan("1.5 mm").standing(Measured.parse("1.5 mm ± 0.1 mm"))).isEqualTo(Standing.OUTSIDE);
        assertThat(moreThan("1.5 mm").standing(Measured.parse("1.5 mm"))).isEqualTo(Standing.OUTSIDE);
    }
}
