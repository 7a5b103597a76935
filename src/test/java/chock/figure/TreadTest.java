package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import java.math.BigDecimal;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TreadTest {

    /** Common practice: 100 × (3.4 − 1.0) ÷ (7.0 − 1.0) = 40; clamped at both ends. */
    @ParameterizedTest
    @CsvSource({"3.4 mm, 7.0 mm, 1.0 mm, 40", "7 mm, 7 mm, 1 mm, 100", "7.2 mm, 7 mm, 1 mm, 100", "1 mm, 7 mm, 1 mm, 0", "0.4 mm, 7 mm, 1 mm, 0",
        "6/32 in, 10/32 in, 2/32 in, 50", "0 mm, 7 mm, 0 mm, 0"})
    void tellsWhatIsLeft(String measured, String asNew, String limit, BigDecimal left) {
        assertThat(Tread.left(Quantity.parse(measured), Quantity.parse(asNew), Quantity.parse(limit)).value()).isEqualByComparingTo(left);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            3 mm  | 1 mm | 1 mm | new is 1 mm, which is not above limit 1 mm; write the depth of the new tyre
            -3 mm | 7 mm | 1 mm | measured is -3 mm; a depth is not below zero
            3 kg  | 7 mm | 1 mm | measured is 3 kg, which is not a unit of length; write one of mm, cm, m, km, in, ft, thou, mi
            """)
    void refuses(String measured, String asNew, String limit, String message) {
        assertThatThrownBy(() -> Tread.left(Quantity.parse(measured), Quantity.parse(asNew), Quantity.parse(limit)))
                .isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
