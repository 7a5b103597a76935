package chock.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.2 mm ± 0.1 mm    | 1.2 mm ± 0.1 mm
            1.2 ± 0.1 mm       | 1.2 mm ± 0.1 mm
            1.2 mm ± 0.1       | 1.2 mm ± 0.1 mm
            1.2 mm +/- 0.1 mm  | 1.2 mm ± 0.1 mm
            1.2mm±0.1mm        | 1.2 mm ± 0.1 mm
            3/64 in ± 1/64 in  | 0.046875 in ± 0.015625 in
            -10 °C ± 1 K       | -10 °C ± 1 K
            -10 ± 1 °C         | -10 °C ± 1 °C
            2.4 mm ± 0.004 in  | 2.4 mm ± 0.004 in
            1.2 mm             | 1.2 mm
            """)
    void reads(String text, String read) {
        assertThat(Measured.parse(text)).hasToString(read);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            1.2 mm ± 0 mm          | '1.2 mm ± 0 mm': the uncertainty is above zero; no instrument reads exactly
            1.2 mm ± -0.1 mm       | '1.2 mm ± -0.1 mm': the uncertainty is above zero; no instrument reads exactly
            1.2 mm ± 5 %           | '1.2 mm ± 5 %': the uncertainty is of another kind than the value
            1.2 mm ± 0.1 ± 0.1 mm  | '1.2 mm ± 0.1 ± 0.1 mm': one ± only
            1.2 mm ±               | '1.2 mm ±': a number stands on both sides of ±, such as 1.2 mm ± 0.1 mm
            ± 0.1 mm               | '± 0.1 mm': a number stands on both sides of ±, such as 1.2 mm ± 0.1 mm
            1.2 ± 0.1              | '1.2': the unit is missing; write it behind the number, such as 1.2 mm
            """)
    void refusesAndSaysWhatToWrite(String text, String message) {
        assertThatThrownBy(() -> Measured.parse(text)).isInstanceOf(UnreadableQuantity.class).hasMessage(message);
    }

    @Test
    void leavesTheUncertaintyOpenWhenNoneIsWritten() {
        assertThat(Measured.parse("1.2 mm").uncertainty()).isNull();
    }
}
