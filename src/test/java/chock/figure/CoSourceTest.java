package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.figure.CoSource.Cycle;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoSourceTest {

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    /** 21 and 42 L/min per litre (ours): 7 % at 1500 rpm, 40 % filled. */
    @ParameterizedTest
    @CsvSource({"50 cc, 1.05, 2.10", "125 cc, 2.63, 5.25", "175 cc, 3.68, 7.35", "250 cc, 5.25, 10.5", "350 cc, 7.35, 14.7", "500 cc, 10.5, 21.0", "1 L, 21.0, 42.0"})
    void assumesTheWorstOfAnUnknownEngine(String displacement, BigDecimal fourStroke, BigDecimal twoStroke) {
        assertThat(CoSource.unknown(q(displacement), Cycle.FOUR_STROKE).value().setScale(2, java.math.RoundingMode.HALF_UP)).isEqualByComparingTo(fourStroke);
        assertThat(CoSource.unknown(q(displacement), Cycle.TWO_STROKE).value()).isEqualByComparingTo(twoStroke);
    }

    /** 4.5 % (the idle limit of many old laws, read) from 250 cc: 2.0 L/min at 1200 rpm as a four-stroke, 4.4 at 1300 as a two-stroke (computed). */
    @Test
    void takesTheExhaustAsMeasured() {
        assertThat(CoSource.measured(q("250 cc"), Cycle.FOUR_STROKE, q("1200 rpm"), q("4.5 %"))).isEqualByComparingTo(q("2.025 L/min"));
        assertThat(CoSource.measured(q("250 cc"), Cycle.TWO_STROKE, q("1300 rpm"), q("4.5 %"))).isEqualByComparingTo(q("4.3875 L/min"));
        assertThat(CoSource.measured(q("0.25 L"), Cycle.TWO_STROKE, q("1300 rpm"), q("45000 ppm"))).isEqualByComparingTo(q("4.3875 L/min"));
    }

    /** 1 L/min at 20 °C is 69.9 g/h, so 250 cc make 367 and 734 g/h; a 5-hp saw under load makes 1590 g/h, a generator 500 (both read). */
    @Test
    void liesOnTheSafeSideOfMeasuredEngines() {
        BigDecimal gramsPerHour = CarbonMonoxide.byMass(q("1000000 ppm"), q("20 °C")).value().multiply(new BigDecimal("0.00006"));
        assertThat(gramsPerHour.doubleValue()).isBetween(69.85, 69.95);
        double fourStroke = CoSource.unknown(q("250 cc"), Cycle.FOUR_STROKE).to(Unit.LITRES_PER_MINUTE).value().multiply(gramsPerHour).doubleValue();
        assertThat(fourStroke).isBetween(366.0, 368.0);
    }

    /** What nobody measured counts for more than any idling engine with up to 12 % (the richest that still runs, computed) at 1100 rpm. */
    @Test
    void neverRewardsNotMeasuring() {
        for (Cycle cycle : Cycle.values()) {
            assertThat(CoSource.unknown(q("250 cc"), cycle)).isGreaterThan(CoSource.measured(q("250 cc"), cycle, q("1100 rpm"), q("12 %")));
        }
    }

    /** Displacement × rpm × 30 % × share, halved for a four-stroke: 0.01 L × 500 × 0.3 × 15 % ÷ 2, and 3 L × 2500 × 0.3 × 15 %. */
    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(CoSource.measured(q("10 cc"), Cycle.FOUR_STROKE, q("500 rpm"), q("15 %"))).isEqualByComparingTo(q("0.1125 L/min"));
        assertThat(CoSource.measured(q("3 L"), Cycle.TWO_STROKE, q("2500 rpm"), q("15 %"))).isEqualByComparingTo(q("337.5 L/min"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            250 cc  | 2501 rpm | 4.5 % | rpm is 2501 rpm; this is for an idling engine, 500 to 2500 rpm. Above that, catch the exhaust at its source
            250 cc  | 499 rpm  | 4.5 % | rpm is 499 rpm; this is for an idling engine, 500 to 2500 rpm. Above that, catch the exhaust at its source
            250 cc  | 1200 rpm | 0 %   | co is 0 %; it must be above zero
            250 cc  | 1200 rpm | 16 %  | co is 16 %; no exhaust has more than 15 %
            250 cc  | 1200 mm  | 4.5 % | rpm is 1200 mm, which is not a unit of revolutions; write one of rpm
            9 cc    | 1200 rpm | 4.5 % | displacement is 9 cc; it lies between 10 and 3000 cc
            3.1 L   | 1200 rpm | 4.5 % | displacement is 3.1 L; it lies between 10 and 3000 cc
            """)
    void refuses(String displacement, String rpm, String share, String message) {
        assertThatThrownBy(() -> CoSource.measured(q(displacement), Cycle.FOUR_STROKE, q(rpm), q(share))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
