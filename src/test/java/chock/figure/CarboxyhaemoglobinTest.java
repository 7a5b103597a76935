package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;
import static org.assertj.core.data.Percentage.withPercentage;

import chock.figure.Carboxyhaemoglobin.Activity;
import chock.quantity.Quantity;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarboxyhaemoglobinTest {

    private static double percent(double ppm, double minutes, Activity activity) {
        return Carboxyhaemoglobin.after(Quantity.parse(ppm + " ppm"), Quantity.parse(minutes + " min"), activity).value().doubleValue();
    }

    /** Bands of Stewart 1975 for 200 ppm at rest, as a simulator's validation table prints them (read); values computed with an integrator. */
    @ParameterizedTest
    @CsvSource({"10, 1.5760, 1, 2", "30, 3.1591, 3, 4", "60, 5.3661, 5, 6", "200, 13.2689, 12, 16"})
    void staysInThePublishedBands(int minutes, double computed, double low, double high) {
        assertThat(percent(200, minutes, Activity.REST)).isCloseTo(computed, offset(5e-5)).isBetween(low, high);
    }

    /** Regression at other breathing, computed: ventilation 12 L/min; and 20 L/min with diffusing capacity 40. 35 ppm over 8 h is about 5 % (from memory). */
    @ParameterizedTest
    @CsvSource({"200, 10, 1.58, 2.09, 2.77", "200, 30, 3.16, 4.58, 6.39", "200, 60, 5.37, 7.89, 10.85", "200, 200, 13.27, 17.7, 21.0", "35, 480, 4.26, 4.86, 5.12", "1200, 30, 15.4, 23.9, 34.2"})
    void keepsItsValues(int ppm, int minutes, double rest, double light, double heavy) {
        assertThat(percent(ppm, minutes, Activity.REST)).isCloseTo(rest, withPercentage(0.4));
        assertThat(percent(ppm, minutes, Activity.LIGHT)).isCloseTo(light, withPercentage(0.4));
        assertThat(percent(ppm, minutes, Activity.HEAVY)).isCloseTo(heavy, withPercentage(0.4));
    }

    /** The differential equation itself, written out anew and integrated. */
    @Test
    void agreesWithAnIntegrator() {
        double[][] breathing = {{30, 6000}, {30, 12_000}, {40, 20_000}};
        for (Activity activity : Activity.values()) {
            double b = 1 / breathing[activity.ordinal()][0] + 713 / breathing[activity.ordinal()][1];
            for (double ppm : new double[] {0, 9, 35, 100, 200, 1200, 5000}) {
                for (double minutes : new double[] {1, 15, 60, 480}) {
                    OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
                        @Override
                        public int getDimension() {
                            return 1;
                        }

                        @Override
                        public double[] computeDerivatives(double t, double[] x) {
                            return new double[] {0.007 / 5500 + (ppm * 713e-6 - x[0] * 100 / (218 * (0.2 - x[0]))) / (5500 * b)};
                        }
                    };
                    double end = new DormandPrince853Integrator(1e-9, 1, 1e-13, 1e-13).integrate(equation, new ODEState(0, new double[] {0.0015}), minutes).getPrimaryState()[0];
                    assertThat(percent(ppm, minutes, activity)).as("%s ppm, %s min, %s", ppm, minutes, activity).isCloseTo(500 * end, withPercentage(1e-6));
                }
            }
        }
    }

    @Test
    void startsAtThreeQuartersOfAPerCentAndRisesWithEverything() {
        assertThat(percent(200, 0, Activity.REST)).isEqualTo(0.75);
        for (int ppm = 50; ppm < 2000; ppm += 50) {
            assertThat(percent(ppm, 30, Activity.REST)).isLessThan(percent(ppm + 50, 30, Activity.REST)).isLessThan(percent(ppm, 31, Activity.REST)).isLessThan(percent(ppm, 30, Activity.LIGHT));
            assertThat(percent(ppm, 30, Activity.LIGHT)).isLessThan(percent(ppm, 30, Activity.HEAVY));
        }
        assertThat(percent(0, 600, Activity.REST)).isLessThan(0.75).isPositive();
        assertThat(percent(100_000, 1440, Activity.HEAVY)).isBetween(99.0, 100.0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            -1 ppm     | 10 min | ppm is -1 ppm; it must be at least zero
            100001 ppm | 10 min | ppm is 100001 ppm; the equation is used up to 100000 ppm
            200 ppm    | -1 min | minutes is -1 min; it must be at least zero
            200 ppm    | 25 h   | minutes is 25 h; the equation is used up to 24 h
            200 mm     | 10 min | ppm is 200 mm, which is not a unit of ratio; write one of %, ppm
            """)
    void refuses(String ppm, String minutes, String message) {
        assertThatThrownBy(() -> Carboxyhaemoglobin.after(Quantity.parse(ppm), Quantity.parse(minutes), Activity.REST)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
