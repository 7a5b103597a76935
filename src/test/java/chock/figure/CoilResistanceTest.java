package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CoilResistanceTest {

    private static Measured at20(String resistance, String temperature) {
        return CoilResistance.at20(Measured.parse(resistance), Measured.parse(temperature));
    }

    /** Formula and 0.00393 per kelvin: an instrument maker's manual (read). 4.5 ÷ (1 + 0.00393 × 40) = 3.8887 Ω. */
    @Test
    void bringsAWarmCoilTo20() {
        assertThat(at20("4.5 Ω", "60 °C").value().rounded(4)).isEqualTo(Quantity.parse("3.8887 Ω"));
        assertThat(at20("4.5 Ω", "140 °F").value().rounded(4)).isEqualTo(Quantity.parse("3.8887 Ω"));
        assertThat(at20("12 kΩ", "20 °C").value()).isEqualByComparingTo(Quantity.parse("12 kΩ"));
    }

    /** The other form in use, R × 254.5 ÷ (234.5 + t) (from memory), within 0.01 % from −10 °C to 100 °C. IEC 60028: +28 % at 90 °C (read). */
    @Test
    void agreesWithTheOtherForm() {
        for (int t = -10; t <= 100; t += 5) {
            assertThat(at20("4.5 Ω", t + " °C").value().value().doubleValue()).isCloseTo(4.5 * 254.5 / (234.5 + t), withPercentage(0.01));
        }
        assertThat(1 / at20("1 Ω", "90 °C").value().value().doubleValue()).isCloseTo(1.2751, withPercentage(0.01));
    }

    /** 0.1 Ω ÷ 1.1572 = 0.086415; 5 K × 3.8887 × 0.00393 ÷ 1.1572 = 0.066032; together √(…² + …²) = 0.108756 Ω. */
    @Test
    void carriesBothUncertainties() {
        assertThat(at20("4.5 Ω ± 0.1 Ω", "60 °C ± 5 °C").uncertainty().rounded(5)).isEqualTo(Quantity.parse("0.10876 Ω"));
        assertThat(at20("4.5 Ω ± 0.1 Ω", "60 °C ± 9 °F").uncertainty().rounded(5)).isEqualTo(Quantity.parse("0.10876 Ω"));
        assertThat(at20("4.5 Ω ± 0.1 Ω", "60 °C").uncertainty().rounded(5)).isEqualTo(Quantity.parse("0.08642 Ω"));
        assertThat(at20("4.5 Ω", "60 °C").uncertainty()).isNull();
    }

    /** 1 + 0.00393 × (−60) = 0.7642 and 1 + 0.00393 × 130 = 1.5109. */
    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(at20("7.642 Ω", "-40 °C").value()).isEqualByComparingTo(Quantity.parse("10 Ω"));
        assertThat(at20("15.109 Ω", "150 °C").value()).isEqualByComparingTo(Quantity.parse("10 Ω"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            4.5 V  | 60 °C   | resistance is 4.5 V, which is not a unit of resistance; write one of Ω, kΩ
            -1 Ω   | 60 °C   | resistance is -1 Ω; it must be at least zero
            4.5 Ω  | 151 °C  | temperature is 151 °C; a coil's lies between -40 °C and 150 °C
            4.5 Ω  | -41 °F  | temperature is -41 °F; a coil's lies between -40 °C and 150 °C
            4.5 Ω  | 60 %    | temperature is 60 %, which is not a unit of temperature; write one of °C, °F, K
            """)
    void refuses(String resistance, String temperature, String message) {
        assertThatThrownBy(() -> at20(resistance, temperature)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
