package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WindChillTest {

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    /** Chart of the United States weather service (read in a copy; another copy labels its −15 °F row as −10). */
    @ParameterizedTest
    @CsvSource({"40, 5, 36", "20, 15, 6", "0, 15, -19", "0, 30, -26", "-10, 20, -35", "-20, 30, -53", "-40, 60, -91"})
    void agreesWithTheChart(int air, int mph, int chart) {
        assertThat(WindChill.of(q(air + " °F"), q(mph + " mph")).rounded(0)).isEqualTo(q(chart + " °F"));
    }

    /** −10 °C at 60 km/h by hand: 13.12 − 6.215 − 11.37 × 1.92533 − 3.965 × 1.92533 = −22.62 °C. */
    @Test
    void usesThePrintedFormulaForCelsius() {
        assertThat(WindChill.of(q("-10 °C"), q("60 km/h")).rounded(2)).isEqualTo(q("-22.62 °C"));
        assertThat(WindChill.of(q("263.15 K"), q("60 km/h")).rounded(2)).isEqualTo(q("250.53 K"));
    }

    @Test
    void agreesBetweenTheTwoFormulas() {
        for (int celsius = -45; celsius <= 10; celsius += 5) {
            for (int kmh = 5; kmh <= 120; kmh += 5) {
                Quantity air = q(celsius + " °C");
                double one = WindChill.of(air, q(kmh + " km/h")).value().doubleValue();
                double other = WindChill.of(air.to(Unit.DEGREES_FAHRENHEIT), q(kmh + " km/h")).to(Unit.DEGREES_CELSIUS).value().doubleValue();
                assertThat(one).as("%s °C, %s km/h", celsius, kmh).isCloseTo(other, offset(0.1));
            }
        }
    }

    @Test
    void feelsColderTheFasterAndTheColder() {
        for (int kmh = 6; kmh <= 200; kmh++) {
            assertThat(WindChill.of(q("5 °C"), q(kmh + " km/h"))).isLessThan(WindChill.of(q("5 °C"), q(kmh - 1 + " km/h"))).isLessThan(q("5 °C"))
                    .isGreaterThan(WindChill.of(q("4 °C"), q(kmh + " km/h")));
        }
    }

    /** By hand: 13.12 + 6.215 + (3.965 − 11.37) × 60^0.16, and 13.12 − 31.075 − (11.37 + 19.825) × 200^0.16; 60^0.16 = 1.92533, 200^0.16 = 2.33434. */
    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(WindChill.of(q("10 °C"), q("60 km/h")).value().doubleValue()).isCloseTo(5.078, offset(0.001));
        assertThat(WindChill.of(q("-50 °C"), q("200 km/h")).value().doubleValue()).isCloseTo(-90.775, offset(0.002));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            11 °C  | 60 km/h  | air is 11 °C; wind chill is defined from -50 °C to 10 °C
            -51 °C | 60 km/h  | air is -51 °C; wind chill is defined from -50 °C to 10 °C
            0 °C   | 3 mph    | speed is 3 mph; wind chill is defined above 3 mph, and here up to 200 km/h
            0 °C   | 201 km/h | speed is 201 km/h; wind chill is defined above 3 mph, and here up to 200 km/h
            0 °C   | 60 m     | speed is 60 m, which is not a unit of speed; write one of km/h, mph, m/s
            0 m    | 60 km/h  | air is 0 m, which is not a unit of temperature; write one of °C, °F, K
            """)
    void refuses(String air, String speed, String message) {
        assertThatThrownBy(() -> WindChill.of(q(air), q(speed))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
