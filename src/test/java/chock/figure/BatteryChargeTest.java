package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BatteryChargeTest {

    private static BatteryCharge charge(String voltage, int nominal) {
        return BatteryCharge.of(Quantity.parse(voltage), nominal);
    }

    /**
     * The rows of four published tables (each read in a copy) disagree: 75 % is 12.4, 12.40–12.45, 12.45 or 12.6 V. At 12.33 V
     * the first gives 66.25 % by a straight line, the last 50 + 25 × 0.03/0.3 = 52.5 %.
     */
    @ParameterizedTest
    @CsvSource({"12.33 V, 52.5, 66.25", "12.4 V, 58.333, 75", "12.2 V, 33.333, 50", "12.0 V, 14.286, 25", "12.6 V, 75, 100", "12.7 V, 100, 100", "11.8 V, 0, 12.5", "11.6 V, 0, 0",
        "13.5 V, 100, 100", "0 V, 0, 0"})
    void spansTheTables(String voltage, BigDecimal from, BigDecimal to) {
        BatteryCharge charge = charge(voltage, 12);
        assertThat(charge.from().rounded(3)).isEqualByComparingTo(new Quantity(from, Unit.PER_CENT));
        assertThat(charge.to().rounded(3)).isEqualByComparingTo(new Quantity(to, Unit.PER_CENT));
    }

    /** A printed 6 V table: 6.3, 6.2, 6.1, 6.0 V for 100, 75, 50, 25 % (read in a copy). Each lies in the span of the halved ones. */
    @ParameterizedTest
    @CsvSource({"6.3 V, 100", "6.2 V, 75", "6.1 V, 50", "6.0 V, 25"})
    void halvesThemForSixVolts(String voltage, BigDecimal printed) {
        BatteryCharge charge = charge(voltage, 6);
        assertThat(charge.to().value()).isEqualByComparingTo(printed);
        assertThat(charge.from().value()).isLessThan(printed);
        assertThat(charge).isEqualTo(charge(new BigDecimal(voltage.replace(" V", "")).multiply(BigDecimal.valueOf(2)) + " V", 12));
    }

    /** A meter good to 1 % at 12 V, ± 0.12 V, is worth about 15 % of charge either way (read in a mailing list of instrument makers). */
    @Test
    void showsWhatAMeterIsWorth() {
        assertThat(charge("12.32 V", 12).to().minus(charge("12.20 V", 12).to()).value()).isEqualByComparingTo("15");
        assertThat(charge("12.40 V", 12).to().minus(charge("12.28 V", 12).to()).value()).isEqualByComparingTo("15");
    }

    @Test
    void isNotFoundWhereTheTablesEnd() {
        assertThat(BatteryCharge.find(Quantity.parse("12.5 V"), 12)).contains(charge("12.5 V", 12));
        assertThat(BatteryCharge.find(Quantity.parse("126 V"), 12)).isEmpty();
        assertThat(BatteryCharge.find(Quantity.parse("25.2 V"), 24)).isEmpty();
    }

    @Test
    void neverFallsWithRisingVoltage() {
        BatteryCharge below = charge("11.5 V", 12);
        for (int millivolts = 11_500; millivolts <= 13_000; millivolts += 5) {
            BatteryCharge here = charge(BigDecimal.valueOf(millivolts, 3) + " V", 12);
            assertThat(here.from()).isBetween(below.from(), Quantity.parse("100 %")).isLessThanOrEqualTo(here.to());
            assertThat(here.to()).isBetween(below.to(), Quantity.parse("100 %"));
            below = here;
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            14.4 V | 12 | voltage is 14.4 V; a battery of 12 V at rest shows 0 V to 13.5 V; take the charger off, let it rest and measure again
            12.6 V | 6  | voltage is 12.6 V; a battery of 6 V at rest shows 0 V to 6.75 V; take the charger off, let it rest and measure again
            -12 V  | 12 | voltage is -12 V; a battery of 12 V at rest shows 0 V to 13.5 V; swap the leads of the meter and look at the polarity
            12 A   | 12 | voltage is 12 A, which is not a unit of voltage; write one of V
            25 V   | 24 | nominal is 24 V; the tables are for lead-acid batteries of 6 V and 12 V
            0 V    | 0  | nominal is 0 V; the tables are for lead-acid batteries of 6 V and 12 V
            """)
    void refuses(String voltage, int nominal, String message) {
        assertThatThrownBy(() -> charge(voltage, nominal)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    /** The span for a sentence is in whole per cent and never narrower than the tables leave it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            12.33 V | between 52 % and 67 %, depending on whose table is read
            12.6 V  | between 75 % and 100 %, depending on whose table is read
            12.7 V  | 100 %, whoever's table is read
            11.6 V  | 0 %, whoever's table is read
            """)
    void saysTheSpanInWords(String voltage, String words) {
        assertThat(charge(voltage, 12).words()).isEqualTo(words);
    }
}
