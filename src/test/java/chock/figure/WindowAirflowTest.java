package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindowAirflowTest {

    private static Quantity airflow(String area, String height, String inside, String outside, String wind) {
        return WindowAirflow.of(Quantity.parse(area), Quantity.parse(height), Quantity.parse(inside), Quantity.parse(outside), Quantity.parse(wind));
    }

    /** 1 m² and 1 m high, 15 °C against −10 °C, still air: formulas read, numbers computed. The formula for two openings, used naively, gives 0.4727. */
    @Test
    void knowsTheModels() {
        assertThat(WindowAirflow.warrenParkins(1, 1, 288.15, 263.15, 0)).isCloseTo(0.1918, offset(5e-5));
        assertThat(WindowAirflow.europeanStandard(1, 1, 288.15, 263.15, 0)).isCloseTo(0.1479, offset(5e-5));
        assertThat(WindowAirflow.largeOpening(1, 1, 288.15, 263.15)).isCloseTo(0.1576, offset(5e-5));
        assertThat(WindowAirflow.germanStandard(1, 1, 288.15, 263.15, 0)).isCloseTo(0.61 / 3 * Math.sqrt(9.80665 * 25 / 263.15), offset(1e-12));
        assertThat(3 * WindowAirflow.largeOpening(1, 1, 288.15, 263.15)).isCloseTo(0.4727, offset(5e-5));
    }

    /**
     * 2 m² and 1.5 m high, 15 °C against −10 °C: twice the area, √1.5 of the height. Wind of 30 m/s by the formulas as read:
     * 0.025 × 2 × 30 = 1.5 m³/s; √(0.48074² + (0.05 × 2 × 30)²) = 3.03827; 2 ÷ 2 × √(0.001 × 900) = 0.94868 m³/s.
     */
    @Test
    void knowsTheModelsInWindAndAtAnotherSize() {
        double larger = 2 * Math.sqrt(1.5);
        assertThat(WindowAirflow.warrenParkins(2, 1.5, 288.15, 263.15, 0)).isCloseTo(0.1918 * larger, offset(2e-4));
        assertThat(WindowAirflow.europeanStandard(2, 1.5, 288.15, 263.15, 0)).isCloseTo(0.1479 * larger, offset(2e-4));
        assertThat(WindowAirflow.largeOpening(2, 1.5, 288.15, 263.15)).isCloseTo(0.1576 * larger, offset(2e-4));
        assertThat(WindowAirflow.germanStandard(2, 1.5, 288.15, 263.15, 0)).isCloseTo(0.48074, offset(5e-6));
        assertThat(WindowAirflow.warrenParkins(2, 1.5, 288.15, 263.15, 30)).isCloseTo(1.5, offset(1e-12));
        assertThat(WindowAirflow.germanStandard(2, 1.5, 288.15, 263.15, 30)).isCloseTo(3.03827, offset(5e-6));
        assertThat(WindowAirflow.europeanStandard(2, 1.5, 288.15, 263.15, 30)).isCloseTo(0.94868, offset(5e-6));
        // √(0.0035 × 1.5 × 25) is more than √(0.001 × 4): there a light wind adds nothing
        assertThat(WindowAirflow.europeanStandard(2, 1.5, 288.15, 263.15, 2)).isEqualTo(WindowAirflow.europeanStandard(2, 1.5, 288.15, 263.15, 0));
    }

    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(airflow("100 m²", "10 m", "60 °C", "-60 °C", "30 m/s").value()).isPositive();
        assertThat(airflow("100 m²", "10 m", "-60 °C", "60 °C", "30 m/s").value()).isPositive();
    }

    /** Smallest of the four: 0.1479 m³/s. At −10 °C the European code's factor for shut windows would make it nothing; here the window is held open. */
    @Test
    void takesTheSmallest() {
        assertThat(airflow("1 m²", "1 m", "15 °C", "-10 °C", "0 m/s").to(Unit.CUBIC_METRES_PER_SECOND).rounded(4)).isEqualTo(Quantity.parse("0.1479 m³/s"));
        assertThat(airflow("1 m²", "1 m", "59 °F", "14 °F", "0 m/s").rounded(6)).isEqualTo(airflow("1 m²", "100 cm", "15 °C", "-10 °C", "0 km/h").rounded(6));
    }

    /** Wind only helps as far as every model says so; the handbook's coefficient gives it no credit: never above 0.1576 m³/s here. */
    @Test
    void givesWindLittleCredit() {
        assertThat(airflow("1 m²", "1 m", "15 °C", "-10 °C", "2 m/s")).isEqualTo(airflow("1 m²", "1 m", "15 °C", "-10 °C", "0 m/s"));
        assertThat(airflow("1 m²", "1 m", "15 °C", "-10 °C", "30 m/s").to(Unit.CUBIC_METRES_PER_SECOND).rounded(4)).isEqualTo(Quantity.parse("0.1576 m³/s"));
    }

    @Test
    void growsWithAreaHeightAndDifferenceOnly() {
        Quantity here = airflow("1 m²", "1 m", "15 °C", "5 °C", "0 m/s");
        assertThat(airflow("1.1 m²", "1 m", "15 °C", "5 °C", "0 m/s")).isGreaterThan(here);
        assertThat(airflow("1 m²", "1.1 m", "15 °C", "5 °C", "0 m/s")).isGreaterThan(here);
        assertThat(airflow("1 m²", "1 m", "15 °C", "4 °C", "0 m/s")).isGreaterThan(here);
        assertThat(airflow("1 m²", "1 m", "5 °C", "15 °C", "0 m/s").rounded(9)).isEqualTo(here.rounded(9));
        assertThat(airflow("1 m²", "1 m", "15 °C", "15 °C", "0 m/s").value()).isZero();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 m²   | 1 m  | 15 °C | -10 °C | 0 m/s  | area is 0 m²; it must be above zero
            101 m² | 1 m  | 15 °C | -10 °C | 0 m/s  | area is 101 m²; it is at most 100 m²
            1 m²   | 11 m | 15 °C | -10 °C | 0 m/s  | height is 11 m; it is at most 10 m
            1 m²   | 1 m  | 61 °C | -10 °C | 0 m/s  | inside is 61 °C; it lies between -60 °C and 60 °C
            1 m²   | 1 m  | 15 °C | -61 °C | 0 m/s  | outside is -61 °C; it lies between -60 °C and 60 °C
            1 m²   | 1 m  | 15 °C | -10 °C | -1 m/s | wind is -1 m/s; it must be at least zero
            1 m²   | 1 m  | 15 °C | -10 °C | 31 m/s | wind is 31 m/s; it is at most 30 m/s
            1 m    | 1 m  | 15 °C | -10 °C | 0 m/s  | area is 1 m, which is not a unit of area; write one of m²
            """)
    void refuses(String area, String height, String inside, String outside, String wind, String message) {
        assertThatThrownBy(() -> airflow(area, height, inside, outside, wind)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
