package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.figure.BoltTorque.StrengthClass;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BoltTorqueTest {

    private static BoltTorque torque(String size, String pitch, String strength, String factor) {
        return BoltTorque.of(size, Quantity.parse(pitch), StrengthClass.read(strength), new BigDecimal(factor));
    }

    /** A printed table of class 8.8, dry (0.20) and oiled (0.15), in lbf·in and lbf·ft (read in a copy; it cuts M6 and rounds the rest). */
    @ParameterizedTest
    @CsvSource({"M6, 1 mm, POUND_INCH, 92, 69", "M8, 1.25 mm, POUND_INCH, 225, 169", "M10, 1.5 mm, POUND_FOOT, 37, 28", "M12, 1.75 mm, POUND_FOOT, 65, 49"})
    void agreesWithAPrintedTable(String size, String pitch, Unit unit, String dry, String oiled) {
        assertThat(torque(size, pitch, "8.8", "0.20").torque().to(unit).rounded(0).value()).isEqualByComparingTo(dry);
        assertThat(torque(size, pitch, "8.8", "0.15").torque().to(unit).rounded(0).value()).isEqualByComparingTo(oiled);
    }

    /** 0.75 × 21 200 N (ISO 898-1, from memory) = 15 900 N; 0.2 × 8 mm × 15 900 N = 25.44 N·m. */
    @Test
    void givesTorqueAndPreload() {
        BoltTorque m8 = torque("M8", "1.25 mm", "8.8", "0.2");
        assertThat(m8.preload()).isEqualByComparingTo(Quantity.parse("15900 N"));
        assertThat(m8.torque()).isEqualByComparingTo(Quantity.parse("25.44 Nm"));
    }

    /** Stress areas 20.1, 36.6, 58.0, 84.3, 157 mm² and 61.2 mm² for M10 × 1.25 (from memory; a text works M12 out as 580 × 84.3, read). */
    @ParameterizedTest
    @CsvSource({"6, 1, 20.1", "8, 1.25, 36.6", "10, 1.5, 58.0", "12, 1.75, 84.3", "16, 2, 157", "10, 1.25, 61.2"})
    void knowsTheStressArea(int diameter, BigDecimal pitch, BigDecimal area) {
        assertThat(BoltTorque.stressArea(diameter, pitch)).isEqualByComparingTo(area);
    }

    /** 8.8 gives 600 MPa above M16, 580 up to it (read in a copy): M16 580 × 157 = 91 100 N, M20 600 × 245 = 147 000 N. 10.9: 830 × 36.6 = 30 400 N (from memory). */
    @ParameterizedTest
    @CsvSource({"M16, 2 mm, 8.8, 68325", "M20, 2.5 mm, 8.8, 110250", "M8, 1.25 mm, 10.9, 22800", "M10, 1.25 mm, 8.8, 26625"})
    void fallsBackOnStressAndArea(String size, String pitch, String strength, String preload) {
        assertThat(torque(size, pitch, strength, "0.2").preload().value()).isEqualByComparingTo(preload);
    }

    /** In proportion to the nut factor, up to and including the ends of its range: 0.1 and 0.3 of 127.2 N·m. */
    @ParameterizedTest
    @CsvSource({"0.10, 12.72", "0.30, 38.16"})
    void takesTheEndsOfTheNutFactor(String factor, BigDecimal torque) {
        assertThat(torque("M8", "1.25 mm", "8.8", factor).torque().value()).isEqualByComparingTo(torque);
    }

    /** The standard's rounded proof loads stay within 1 % of stress × area. */
    @Test
    void keepsTheTableNearTheFormula() {
        for (String thread : new String[] {"M6/1", "M8/1.25", "M10/1.5", "M12/1.75"}) {
            BigDecimal pitch = new BigDecimal(thread.split("/")[1]);
            double proof = torque(thread.split("/")[0], pitch + " mm", "8.8", "0.2").preload().value().doubleValue() / 0.75;
            double formula = 580 * BoltTorque.stressArea(Integer.parseInt(thread.substring(1, thread.indexOf('/'))), pitch).doubleValue();
            assertThat(proof / formula).as(thread).isBetween(0.99, 1.01);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            M9   | 1.25 mm | 8.8 | 0.2  | size 'M9' is not a thread of the table; write one of M4, M5, M6, M7, M8, M10, M12, M14, M16, M18, M20, M22, M24
            1/4  | 1.25 mm | 8.8 | 0.2  | size '1/4' is not a thread of the table; write one of M4, M5, M6, M7, M8, M10, M12, M14, M16, M18, M20, M22, M24
            M8   | 1.5 mm  | 8.8 | 0.2  | pitch is 1.5 mm; M8 is cut with 1.25, 1, 0.75 mm
            M8   | 1.25 V  | 8.8 | 0.2  | pitch is 1.25 V, which is not a unit of length; write one of mm, cm, m, km, in, ft, thou, mi
            M8   | 1.25 mm | 8.9 | 0.2  | class '8.9' is not known; write what stands on the head, one of 4.6, 5.6, 5.8, 6.8, 8.8, 10.9, 12.9
            M8   | 1.25 mm | 8.8 | 2    | nut-factor is 2; it lies between 0.10 and 0.30, 0.20 dry, 0.15 oiled
            M8   | 1.25 mm | 8.8 | 0.09 | nut-factor is 0.09; it lies between 0.10 and 0.30, 0.20 dry, 0.15 oiled
            """)
    void refuses(String size, String pitch, String strength, String factor, String message) {
        assertThatThrownBy(() -> torque(size, pitch, strength, factor)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
