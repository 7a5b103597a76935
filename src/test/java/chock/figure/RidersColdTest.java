package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;

class RidersColdTest {
    private static final BigDecimal FINE = new BigDecimal("0.01");

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    /** 40 + 20 km/h at −10 °C by hand: 13.12 − 6.215 − 11.37 × 1.92533 − 3.965 × 1.92533 = −22.62 °C. */
    @Test
    void gustsAddToTheRoadSpeed() {
        assertThat(RidersCold.felt(Measured.parse("-10 °C"), q("40 km/h"), q("20 km/h")).value().value()).isCloseTo(new BigDecimal("-22.62"), within(FINE));
        assertThat(RidersCold.felt(Measured.parse("-10 °C"), q("60 km/h"), q("0 mph")).value().value()).isCloseTo(new BigDecimal("-22.62"), within(FINE));
    }

    /** One kelvin of air is 0.6215 + 0.3965 × 1.92533 = 1.385 K on the skin at 60 km/h. */
    @Test
    void theWindMagnifiesTheUncertainty() {
        Measured felt = RidersCold.felt(Measured.parse("-10 °C ± 1 K"), q("60 km/h"), q("0 km/h"));
        assertThat(felt.uncertainty().value()).isCloseTo(new BigDecimal("1.385"), within(new BigDecimal("0.001")));
        assertThat(felt.uncertainty().unit()).isEqualTo(Unit.DEGREES_CELSIUS);
        assertThat(RidersCold.felt(Measured.parse("-10 °C"), q("60 km/h"), q("0 km/h")).uncertainty()).isNull();
    }

    @Test
    void warmAirDoesNotMatter() {
        assertThat(RidersCold.matters(Measured.parse("10 °C ± 1 K"))).isTrue();
        assertThat(RidersCold.matters(Measured.parse("50 °F"))).as("50 °F is 10 °C").isTrue();
        assertThat(RidersCold.matters(Measured.parse("10.1 °C ± 1 K"))).isFalse();
    }

    @Test
    void whatIsOutsideTheRangeIsRefused() {
        assertThatThrownBy(() -> RidersCold.felt(Measured.parse("12 °C"), q("60 km/h"), q("0 km/h"))).isInstanceOf(BadFigureInput.class).hasMessageContaining("air is 12 °C");
        assertThatThrownBy(() -> RidersCold.felt(Measured.parse("0 °C"), q("0 km/h"), q("0 km/h"))).isInstanceOf(BadFigureInput.class).hasMessageContaining("speed is 0");
        assertThatThrownBy(() -> RidersCold.felt(Measured.parse("0 °C"), q("60 km"), q("0 km/h"))).isInstanceOf(BadFigureInput.class).hasMessageContaining("road speed");
    }
}
