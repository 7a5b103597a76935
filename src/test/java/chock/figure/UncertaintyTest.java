package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class UncertaintyTest {

    private static Measured m(String text) {
        return Measured.parse(text);
    }

    /** Root sum of squares (JCGM 100 5.1.2, from memory): √(0.3² + 0.4²) = 0.5. */
    @Test
    void addsSquaresInADifference() {
        Measured difference = Uncertainty.difference(m("3.1 mm ± 0.3 mm"), m("2.0 mm ± 0.4 mm"));
        assertThat(difference.value().value()).isEqualByComparingTo("1.1");
        assertThat(difference.uncertainty().value()).isEqualByComparingTo("0.5");
    }

    /** One roller tester reads both wheels, so its error counts twice: 10 N + 2 kgf (19.6133 N) = 29.6133 N, not √(10² + 19.6133²) = 22.0 N. */
    @Test
    void addsPlainlyInASum() {
        Measured sum = Uncertainty.sum(m("500 N ± 10 N"), m("100 kgf ± 2 kgf"));
        assertThat(sum.value().value()).isEqualByComparingTo("1480.665");
        assertThat(sum.uncertainty().value()).isEqualByComparingTo("29.6133");
        assertThat(Uncertainty.sum(m("500 N"), m("100 N")).uncertainty()).isNull();
    }

    @Test
    void takesTheDifferenceInTheUnitOfTheFirst() {
        Measured difference = Uncertainty.difference(m("1 in ± 0.01 in"), m("12.7 mm ± 0.254 mm"));
        assertThat(difference.value()).isEqualByComparingTo(Quantity.parse("0.5 in"));
        // √(0.01² + 0.01²) in
        assertThat(difference.uncertainty().rounded(6)).isEqualTo(Quantity.parse("0.014142 in"));
    }

    /** 30 °C − 50 °F (10 °C) = 20 °C of difference. */
    @Test
    void takesTemperaturesFromTheirOwnZero() {
        Measured difference = Uncertainty.difference(m("30 °C ± 3 °C"), m("50 °F ± 7.2 °F"));
        assertThat(difference.value().value()).isEqualByComparingTo("20");
        assertThat(difference.uncertainty().value()).isEqualByComparingTo("5");
    }

    @Test
    void roundsUp() {
        BigDecimal u = Uncertainty.difference(m("2 mm ± 1 mm"), m("1 mm ± 1 mm")).uncertainty().value();
        assertThat(u.multiply(u)).isGreaterThan(new BigDecimal(2));
        assertThat(u).isEqualByComparingTo("1.414213562373096");
    }

    @Test
    void countsAReadingWithoutOneAsExact() {
        assertThat(Uncertainty.difference(m("2 mm ± 0.1 mm"), m("1 mm")).uncertainty().value()).isEqualByComparingTo("0.1");
        assertThat(Uncertainty.difference(m("2 mm"), m("1 mm")).uncertainty()).isNull();
    }

    /** 50 % × √((0.3/5)² + (0.8/10)²) = 50 % × 0.1 = 5 %. */
    @Test
    void addsRelativeSquaresInARatio() {
        Measured ratio = Uncertainty.ratio(m("5 bar ± 0.3 bar"), m("1000 kPa ± 80 kPa"));
        assertThat(ratio.value()).isEqualByComparingTo(Quantity.parse("50 %"));
        assertThat(ratio.uncertainty().value()).isEqualByComparingTo("5");
    }

    @Test
    void keepsAnUncertaintyAroundZero() {
        Measured ratio = Uncertainty.ratio(m("0 mm ± 0.1 mm"), m("10 mm ± 1 mm"));
        assertThat(ratio.value().value()).isZero();
        assertThat(ratio.uncertainty().value()).isEqualByComparingTo("1");
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> Uncertainty.difference(m("1 mm"), m("1 kg"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("1 mm and 1 kg are not of one kind; give both as length");
        assertThatThrownBy(() -> Uncertainty.sum(m("1 N"), m("1 kg"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("1 N and 1 kg are not of one kind; give both as force");
        assertThatThrownBy(() -> Uncertainty.ratio(m("1 N"), m("1 kg"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("1 N and 1 kg are not of one kind; give both as force");
        assertThatThrownBy(() -> Uncertainty.sum(m("1 °C"), m("2 °C"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("temperatures have no sum; compare their difference");
        assertThatThrownBy(() -> Uncertainty.ratio(m("1 mm"), m("0 mm"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("0 mm cannot be divided by; it must be above zero");
        assertThatThrownBy(() -> Uncertainty.ratio(m("1 °C"), m("2 °C"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("temperatures have no ratio; compare their difference");
    }
}
