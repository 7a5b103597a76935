package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConformityTest {

    private static Bounds bounds(String low, String high) {
        return new Bounds(low == null ? null : Quantity.parse(low), true, high == null ? null : Quantity.parse(high), true);
    }

    /**
     * Worked examples of JCGM 106:2012, 7.3 and 7.4 (from memory), which print 0.92, 0.99 and 0.66. They state the standard
     * uncertainty u = 0.05, 8.6 and 1.8; here U = 2u is written.
     */
    @ParameterizedTest
    @CsvSource({"-5.47 V ± 0.10 V, , -5.40 V, 91.92, 92", "509.7 kPa ± 17.2 kPa, 490 kPa, , 98.90, 99", "13.6 mm ± 3.6 mm, 12.5 mm, 16.3 mm, 66.26, 66",
        "13600 mm ± 360 cm, 12.5 m, 1630 cm, 66.26, 66"})
    void agreesWithTheStandardsExamples(String measured, String low, String high, String exact, String printed) {
        Quantity probability = Conformity.probability(Measured.parse(measured), bounds(low, high));
        assertThat(probability.rounded(2).value()).isEqualByComparingTo(exact);
        assertThat(probability.rounded(0).value()).isEqualByComparingTo(printed);
    }

    /** Φ(1.96) = 0.9750 (printed in a numerical library's example results, read); quantiles of JCGM 106 as 0.8416 … 3.0902. */
    @ParameterizedTest
    @CsvSource({"1.96, 0.9750", "0, 0.5", "0.8416, 0.80", "1.2816, 0.90", "1.6449, 0.95", "2.3263, 0.99", "3.0902, 0.999", "-1.6449, 0.05"})
    void agreesWithPrintedQuantiles(double z, double share) {
        assertThat(Conformity.normal(z)).isCloseTo(share, offset(5e-5));
    }

    @Test
    void agreesWithAnotherImplementation() {
        NormalDistribution other = new NormalDistribution(0, 1);
        for (double z = -12; z <= 12; z += 0.037) {
            assertThat(Conformity.normal(z)).as("Φ(%s)", z).isCloseTo(other.cumulativeProbability(z), offset(1e-14));
        }
    }

    /** Guard band of one U: 2.275 % risk of a false pass at its edge (ILAC-G8:09/2019, "< 2.5 %", read); at the limit itself even odds. */
    @Test
    void showsWhatTheGuardBandIsWorth() {
        assertThat(Conformity.probability(Measured.parse("1.6 mm ± 0.1 mm"), bounds("1.5 mm", null)).rounded(3)).isEqualTo(Quantity.parse("97.725 %"));
        assertThat(Conformity.probability(Measured.parse("1.5 mm ± 0.1 mm"), bounds("1.5 mm", null)).value()).isEqualByComparingTo("50");
        assertThat(Conformity.probability(Measured.parse("1.5 mm ± 0.1 mm"), bounds(null, "1.5 mm")).value()).isEqualByComparingTo("50");
    }

    @Test
    void addsUpToCertainty() {
        for (int tenths = -30; tenths <= 30; tenths++) {
            Measured measured = Measured.parse(tenths / 10.0 + " mm ± 1.3 mm");
            double below = Conformity.probability(measured, bounds(null, "0.2 mm")).value().doubleValue();
            double above = Conformity.probability(measured, bounds("0.2 mm", null)).value().doubleValue();
            double between = Conformity.probability(measured, bounds("-0.9 mm", "0.2 mm")).value().doubleValue();
            double under = Conformity.probability(measured, bounds(null, "-0.9 mm")).value().doubleValue();
            assertThat(below + above).isCloseTo(100, offset(1e-10));
            assertThat(between + under).isCloseTo(below, offset(1e-10));
        }
    }

    @Test
    void takesTemperaturesAsTheyAre() {
        assertThat(Conformity.probability(Measured.parse("20 °C ± 2 °C"), bounds("66.2 °F", null)).rounded(2))
                .isEqualTo(Conformity.probability(Measured.parse("20 °C ± 3.6 °F"), bounds("19 °C", null)).rounded(2)).isEqualTo(Quantity.parse("84.13 %"));
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> Conformity.probability(Measured.parse("1 mm"), bounds("1 mm", null))).isInstanceOf(BadFigureInput.class)
                .hasMessage("1 mm has no uncertainty; write the expanded one (k = 2)");
        assertThatThrownBy(() -> Conformity.probability(new Measured(Quantity.parse("1 mm"), Quantity.parse("0 mm")), bounds("1 mm", null)))
                .isInstanceOf(BadFigureInput.class).hasMessage("uncertainty is 0 mm; it must be above zero");
        assertThatThrownBy(() -> Conformity.probability(Measured.parse("1 mm ± 1 mm"), bounds("1 kg", null))).isInstanceOf(BadFigureInput.class)
                .hasMessageStartingWith("limit is 1 kg, which is not a unit of length");
    }
}
