package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TyrePressureTest {

    private static Quantity at(String pressure, String from, String to) {
        return TyrePressure.at(Quantity.parse(pressure), Quantity.parse(from), Quantity.parse(to));
    }

    /** (35 + 14.696) × 479.67 ÷ 539.67 − 14.696 = 29.47 psi; published: about 6 psi for 60 °F (classbforum.com, read in a copy). */
    @Test
    void losesAboutOnePsiForTenDegreesFahrenheit() {
        BigDecimal psi = at("35 psi", "80 °F", "20 °F").value();
        assertThat(psi).isBetween(new BigDecimal("29.465"), new BigDecimal("29.475"));
        assertThat(psi.subtract(new BigDecimal("29.0")).abs()).isLessThan(new BigDecimal("0.5"));
    }

    /** 202.65 kPa absolute × 300 ÷ 400 is 151.9875 kPa absolute, 50.6625 kPa on the gauge. */
    @Test
    void countsTheAtmosphere() {
        assertThat(at("101.325 kPa", "400 K", "300 K").value()).as("with gauge pressure alone it would be 75.99 kPa").isEqualByComparingTo("50.6625");
    }

    /** 135.1 kPa absolute × 300 ÷ 400 is one atmosphere: nothing is left on the gauge, and the tyre keeps its volume still. */
    @Test
    void mayEndAtTheAtmosphere() {
        assertThat(at("33.775 kPa", "400 K", "300 K").value()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"35 psi, 80 °F, 20 °F", "2.3 bar, 20 °C, -10 °C", "250 kPa, -20 °C, 60 °C", "1.8 kgf/cm², 5 °C, 35 °C"})
    void isReversible(String pressure, String from, String to) {
        Quantity there = at(pressure, from, to);
        Quantity back = TyrePressure.at(there, Quantity.parse(to), Quantity.parse(from));
        assertThat(back.unit()).isEqualTo(Quantity.parse(pressure).unit());
        assertThat(back.value().subtract(Quantity.parse(pressure).value()).abs()).isLessThan(new BigDecimal("1e-11"));
    }

    @Test
    void staysWhereTheTemperatureStays() {
        assertThat(at("36 psi", "20 °C", "68 °F").value().subtract(new BigDecimal(36)).abs()).isLessThan(new BigDecimal("1e-12"));
        assertThat(at("36 psi", "20 °C", "68 °F").unit()).isEqualTo(Unit.PSI);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            36 kg     | 20 °C   | 0 °C   | pressure is 36 kg, which is not a unit of pressure; write one of kPa, Pa, hPa, bar, psi, kgf/cm², inHg
            -1 psi    | 20 °C   | 0 °C   | pressure is -1 psi; a tyre's gauge pressure lies between 0 and 1000 kPa
            36 bar    | 20 °C   | 0 °C   | pressure is 36 bar; a tyre's gauge pressure lies between 0 and 1000 kPa
            36 psi    | -274 °C | 0 °C   | from is -274 °C; a tyre's temperature lies between -60 °C and 150 °C
            36 psi    | 20 °C   | 151 °C | to is 151 °C; a tyre's temperature lies between -60 °C and 150 °C
            36 psi    | 20 mm   | 0 °C   | from is 20 mm, which is not a unit of temperature; write one of °C, °F, K
            1 psi     | 20 °C   | -50 °C | at -50 °C no pressure above the atmosphere would be left in a tyre of 1 psi at 20 °C; it would be flat and the law for a fixed volume no longer holds
            """)
    void refuses(String pressure, String from, String to, String message) {
        assertThatThrownBy(() -> at(pressure, from, to)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    @Test
    void takesTheEndsOfItsRanges() {
        assertThat(at("0 kPa", "20 °C", "150 °C").value()).isPositive();
        assertThat(at("1000 kPa", "-60 °C", "20 °C").value()).isPositive();
    }
}
