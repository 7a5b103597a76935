package chock.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantityTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.2 mm    | 1.2      | MM
            3/64 in   | 0.046875 | INCH
            3 / 64 in | 0.046875 | INCH
            1 1/4 in  | 1.25     | INCH
            -1 1/4 in | -1.25    | INCH
            1/4"      | 0.25     | INCH
            36psi     | 36       | PSI
            95 %      | 95       | PER_CENT
            14°F      | 14       | DEGREES_FAHRENHEIT
            -10°C     | -10      | DEGREES_CELSIUS
            −10 °C    | -10      | DEGREES_CELSIUS
            +5C       | 5        | DEGREES_CELSIUS
            68 F      | 68       | DEGREES_FAHRENHEIT
            60km/h    | 60       | KMH
            2°        | 2        | DEGREES
            3 times   | 3        | TIMES
            18 ft lb  | 18       | POUND_FOOT
            0.0 mm    | 0.0      | MM
            """)
    void reads(String text, BigDecimal value, Unit unit) {
        assertThat(Quantity.parse(text)).isEqualTo(new Quantity(value, unit));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            thick        | 'thick': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi
            ''           | '': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi
            mm 1.2       | 'mm 1.2': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi
            .5 mm        | '.5 mm': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi
            1234567890123 mm | '1234567890123 mm': write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi
            1.2          | '1.2': the unit is missing; write it behind the number, such as 1.2 mm
            1,2 mm       | '1,2 mm': write the decimals behind a point, such as 1.2 mm, and leave out commas between thousands
            1.2 furlong  | '1.2 furlong': 'furlong' is not a unit this program knows
            36 PSI       | '36 PSI': 'PSI' is not a unit this program knows; perhaps psi
            5 gal        | '5 gal': 'gal' is not a unit this program knows
            1e3 mm       | '1e3 mm': 'e3 mm' is not a unit this program knows
            1/3 in       | '1/3 in': a fraction is in halves, quarters, eighths … of an inch; write other numbers as decimals
            1/0 in       | '1/0 in': a fraction is in halves, quarters, eighths … of an inch; write other numbers as decimals
            1.5 1/4 in   | '1.5 1/4 in': write either decimals or a fraction, not both
            """)
    void refusesAndSaysWhatToWrite(String text, String message) {
        assertThatThrownBy(() -> Quantity.parse(text)).isInstanceOf(UnreadableQuantity.class).hasMessage(message);
    }

    @Test
    void cutsALongTextInTheMessage() {
        assertThatThrownBy(() -> Quantity.parse("x".repeat(40))).hasMessageStartingWith("'" + "x".repeat(40) + "': ");
        assertThatThrownBy(() -> Quantity.parse("x".repeat(500))).hasMessageStartingWith("'" + "x".repeat(40) + "…': ");
    }

    /** 2/32 in is 1.5875 mm exactly; 36 psi is 248.21126255406100… kPa without end. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            2/32 in  | 1.5875 mm        | 0
            2/32 in  | 1.587500000001 mm | -1
            2/32 in  | 1.587499999999 mm | 1
            14 °F    | -10 °C           | 0
            14.5 °F  | -9.7222222222 °C | -1
            14.5 °F  | -9.722222222223 °C | 1
            1 bar    | 100 kPa          | 0
            36 psi   | 248.211262554061 kPa | 1
            36 psi   | 248.211262554062 kPa | -1
            """)
    void comparesExactly(String one, String other, int order) {
        assertThat(Integer.signum(Quantity.parse(one).compareTo(Quantity.parse(other)))).isEqualTo(order);
        assertThat(Integer.signum(Quantity.parse(other).compareTo(Quantity.parse(one)))).isEqualTo(-order);
    }

    /** A step of 18 °F is a step of 10 °C, though 18 °F itself is below freezing. */
    @Test
    void turnsADifferenceWithoutShiftingZero() {
        assertThat(Quantity.parse("18 °F").differenceTo(Unit.DEGREES_CELSIUS).value()).isEqualByComparingTo("10");
        assertThat(Quantity.parse("20 °C").plus(Quantity.parse("18 °F")).value()).isEqualByComparingTo("30");
        assertThat(Quantity.parse("20 °C").minus(Quantity.parse("18 °F")).value()).isEqualByComparingTo("10");
        assertThat(Quantity.parse("2 in").minus(Quantity.parse("25.4 mm")).value()).isEqualByComparingTo("1");
    }

    @ParameterizedTest
    @CsvSource({"1.50 mm, 1.5", "100 mm, 100", "0.0 mm, 0", "-10.0 °C, -10"})
    void writesTheNumberPlainly(String text, String number) {
        assertThat(Quantity.parse(text).number()).isEqualTo(number);
    }

    @Test
    void roundsHalfUp() {
        assertThat(Quantity.parse("1.25 mm").rounded(1)).hasToString("1.3 mm");
        assertThat(Quantity.parse("-1.25 mm").abs()).hasToString("1.25 mm");
        assertThat(Quantity.parse("1.25 mm").times(new BigDecimal("2"))).hasToString("2.50 mm");
    }
}
