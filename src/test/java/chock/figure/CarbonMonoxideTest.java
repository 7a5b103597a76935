package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonMonoxideTest {

    private static Quantity byMass(String ppm, String temperature) {
        return CarbonMonoxide.byMass(Quantity.parse(ppm), Quantity.parse(temperature));
    }

    /** Official pairs 35/40 and 200/229 (NIOSH, read) and 9/10 mg/m³ (40 CFR 50.8, read) are 40.1, 229.0 and 10.3 at 25 °C, rounded. With the old
     * handbook volume of 24.45 L/mol, which is 0.06 % short of the gas law, the second is 229.1. */
    @ParameterizedTest
    @CsvSource({"35, 40.1, 40", "200, 229.0, 229", "9, 10.3, 10"})
    void agreesWithOfficialPairs(int ppm, BigDecimal exact, BigDecimal official) {
        assertThat(byMass(ppm + " ppm", "25 °C").rounded(1).value()).isEqualByComparingTo(exact);
        assertThat(byMass(ppm + " ppm", "25 °C").rounded(0).value()).isEqualByComparingTo(official);
    }

    /** Not every pair follows from the formula: OSHA prints 50 ppm with 55 mg/m³ (57.2 at 25 °C), the EU 100 with 117 (116.4 at 20 °C) (both read). */
    @Test
    void doesNotExplainEveryPair() {
        assertThat(byMass("50 ppm", "25 °C").rounded(1)).isEqualTo(Quantity.parse("57.2 mg/m³"));
        assertThat(byMass("100 ppm", "20 °C").rounded(1)).isEqualTo(Quantity.parse("116.4 mg/m³"));
    }

    /** 1.145 mg/m³ at 25 °C in a compilation (read, cut); the others computed. Cold air holds more. */
    @ParameterizedTest
    @CsvSource({"25 °C, 1.1449", "20 °C, 1.1644", "0 °C, 1.2497", "-10 °C, 1.2972", "14 °F, 1.2972"})
    void dependsOnTemperature(String temperature, String milligrams) {
        assertThat(byMass("1 ppm", temperature).rounded(4)).isEqualTo(Quantity.of(milligrams, Unit.MG_PER_M3));
    }

    /** 28.010 g/mol and 22.414 L/mol: 1.249665 mg/m³ for 1 ppm at 0 °C, × 273.15 K ÷ 213.15 K and ÷ 333.15 K. */
    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(byMass("100 %", "-60 °C").rounded(0)).isEqualTo(Quantity.parse("1601436 mg/m³"));
        assertThat(byMass("100 %", "60 °C").rounded(0)).isEqualTo(Quantity.parse("1024602 mg/m³"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            -1 ppm  | 25 °C | concentration is -1 ppm; it must be at least zero
            101 %   | 25 °C | concentration is 101 %; there is no more than the whole
            35 ppm  | 61 °C | temperature is 61 °C; it lies between -60 °C and 60 °C
            35 ppm  | 25 mm | temperature is 25 mm, which is not a unit of temperature; write one of °C, °F, K
            """)
    void refuses(String concentration, String temperature, String message) {
        assertThatThrownBy(() -> byMass(concentration, temperature)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
