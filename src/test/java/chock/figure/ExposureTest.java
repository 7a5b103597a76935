package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExposureTest {
    private static final double TOLERANCE = 1e-6;

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    private static RoomAir room(String volume, String airflow, String generation) {
        return RoomAir.of(q(volume), q(airflow), q(generation), BigDecimal.ONE, q("0 ppm"));
    }

    /**
     * Regression: a 250 cc four-stroke and two-stroke for 5 min in 200 m³ at half a change an hour, the two-stroke in a hall of
     * 20 000 m³ at one change (values computed by closed form and by two integrators, which agreed).
     */
    @ParameterizedTest
    @CsvSource({"200 m³, 100 m³/h, 5.25 L/min, 128.55, 121.1, 102.0, 32.2", "200 m³, 100 m³/h, 10.5 L/min, 257.11, 242.3, 204.0, 64.4",
        "20000 m³, 20000 m³/h, 10.5 L/min, 2.52, 2.25, 1.63, 0.33"})
    void keepsTheScenarios(String volume, String airflow, String generation, String peak, String quarter, String hour, String shift) {
        Exposure exposure = Exposure.of(room(volume, airflow, generation), RunPlan.read("5on"));
        assertThat(rounded(exposure.peak(), peak)).isEqualTo(q(peak + " ppm"));
        assertThat(rounded(exposure.max15Min(), quarter)).isEqualTo(q(quarter + " ppm"));
        assertThat(rounded(exposure.max1H(), hour)).isEqualTo(q(hour + " ppm"));
        assertThat(rounded(exposure.twa8H(), shift)).isEqualTo(q(shift + " ppm"));
    }

    private static Quantity rounded(Quantity value, String like) {
        return value.rounded(new BigDecimal(like).scale());
    }

    /** 150 ppm for 2 h, 75 for 2 h and 50 for 4 h are 81.25 ppm over 8 h (29 CFR 1910.1000(d)(1)(ii), from memory); always over 8 h, whatever the plan. */
    @Test
    void sumsOverEightHours() {
        // so much air that each level stands at once: 60 000 m³/h through 1 m³
        double sum = Stream.of("9 m³/h;120on", "4.5 m³/h;120on", "3 m³/h;240on").map(part -> part.split(";"))
                .mapToDouble(part -> Exposure.of(room("1 m³", "60000 m³/h", part[0]), RunPlan.read(part[1])).twa8H().value().doubleValue()).sum();
        assertThat(sum).isCloseTo(81.25, withPercentage(1e-3));
        assertThat(Exposure.of(room("1 m³", "60000 m³/h", "3 m³/h"), RunPlan.read("960on")).twa8H().value().doubleValue()).isCloseTo(100, withPercentage(1e-3));
    }

    /** Two integrators and a grid of windows, over rooms and plans drawn at random. */
    @Test
    void agreesWithTwoIntegrators() {
        Random random = new Random(1972);
        for (int i = 0; i < 40; i++) {
            double volume = 20 + 2000 * random.nextDouble();
            double airflow = i % 8 == 0 ? 0 : volume * (0.05 + 6 * random.nextDouble());
            double generation = 0.5 + 15 * random.nextDouble();
            double k = 1 + 9 * random.nextDouble();
            double background = i % 2 == 0 ? 0 : 9 * random.nextDouble();
            List<RunPlan.Phase> phases = new ArrayList<>();
            phases.add(phase(random, true));
            for (int n = random.nextInt(5); n > 0; n--) {
                phases.add(phase(random, random.nextBoolean()));
            }
            RunPlan plan = new RunPlan(phases);
            RoomAir room = RoomAir.of(d(volume, Unit.CUBIC_METRES), d(airflow, Unit.CUBIC_METRES_PER_HOUR), d(generation, Unit.LITRES_PER_MINUTE), new BigDecimal(k), d(background, Unit.PPM));
            Exposure exposure = Exposure.of(room, plan);
            Balance balance = new Balance(d(airflow, Unit.CUBIC_METRES_PER_HOUR).value().doubleValue() / 60 / k / d(volume, Unit.CUBIC_METRES).value().doubleValue(),
                    d(generation, Unit.LITRES_PER_MINUTE).value().doubleValue() / 1000 / d(volume, Unit.CUBIC_METRES).value().doubleValue() * 1e6, d(background, Unit.PPM).value().doubleValue());
            for (double[][] course : List.of(balance.byHipparchus(plan), balance.byCommonsMath(plan))) {
                assertThat(exposure.twa8H().value().doubleValue()).as("8 h in room %s", i).isCloseTo(course[course.length - 1][1] / 480, withPercentage(100 * TOLERANCE));
                double peak = Stream.of(course).mapToDouble(state -> state[0]).max().orElseThrow();
                assertThat(exposure.peak().value().doubleValue()).as("peak in room %s", i).isCloseTo(peak, withPercentage(100 * TOLERANCE));
            }
            assertWindow(exposure.max15Min(), balance, plan, 15);
            assertWindow(exposure.max1H(), balance, plan, 60);
        }
    }

    /** The exact highest mean is never below any window of a 3-s grid, and above the best of them by next to nothing. */
    private static void assertWindow(Quantity exact, Balance balance, RunPlan plan, double window) {
        double end = plan.phases().stream().mapToDouble(p -> p.minutes().doubleValue()).sum();
        double best = 0;
        for (double from = 0; from <= end; from += 0.05) {
            best = Math.max(best, (balance.integral(plan, from + window) - balance.integral(plan, from)) / window);
        }
        assertThat(exact.value().doubleValue()).isGreaterThanOrEqualTo(best * (1 - 1e-11)).isCloseTo(best, withPercentage(0.01));
    }

    private static RunPlan.Phase phase(Random random, boolean running) {
        return new RunPlan.Phase(BigDecimal.valueOf(1 + random.nextInt(running ? 15_000 : 60_000), 3), running);
    }

    private static Quantity d(double value, Unit unit) {
        return new Quantity(new BigDecimal(value, new java.math.MathContext(9)), unit);
    }

    /**
     * The same room, handed to integrators: state is concentration in ppm and its integral.
     *
     * @param exchanged share of the air per minute
     * @param source ppm per minute
     * @param background ppm
     */
    private record Balance(double exchanged, double source, double background) {

        private double[] slope(double concentration, boolean running) {
            return new double[] {(running ? source : 0) + exchanged * (background - concentration), concentration};
        }

        private List<RunPlan.Phase> wholeShift(RunPlan plan) {
            double end = plan.phases().stream().mapToDouble(p -> p.minutes().doubleValue()).sum();
            List<RunPlan.Phase> all = new ArrayList<>(plan.phases());
            if (end < 480) {
                all.add(new RunPlan.Phase(BigDecimal.valueOf(480 - end), false));
            }
            return all;
        }

        double[][] byHipparchus(RunPlan plan) {
            List<double[]> course = new ArrayList<>(List.of(new double[] {background, 0}));
            for (RunPlan.Phase phase : wholeShift(plan)) {
                var integrator = new org.hipparchus.ode.nonstiff.DormandPrince853Integrator(1e-9, 10, 1e-12, 1e-12);
                var equation = new OrdinaryDifferentialEquation() {
                    @Override
                    public int getDimension() {
                        return 2;
                    }

                    @Override
                    public double[] computeDerivatives(double t, double[] y) {
                        return slope(y[0], phase.running());
                    }
                };
                course.add(integrator.integrate(equation, new ODEState(0, course.get(course.size() - 1)), phase.minutes().doubleValue()).getPrimaryState());
            }
            return course.toArray(double[][]::new);
        }

        double[][] byCommonsMath(RunPlan plan) {
            List<double[]> course = new ArrayList<>(List.of(new double[] {background, 0}));
            for (RunPlan.Phase phase : wholeShift(plan)) {
                var integrator = new org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator(1e-9, 10, 1e-12, 1e-12);
                double[] end = new double[2];
                integrator.integrate(new FirstOrderDifferentialEquations() {
                    @Override
                    public int getDimension() {
                        return 2;
                    }

                    @Override
                    public void computeDerivatives(double t, double[] y, double[] slopes) {
                        System.arraycopy(slope(y[0], phase.running()), 0, slopes, 0, 2);
                    }
                }, 0, course.get(course.size() - 1), phase.minutes().doubleValue(), end);
                course.add(end);
            }
            return course.toArray(double[][]::new);
        }

        /** Integral up to a moment by the textbook form C = Css + (C0 − Css) e^(−λt), written out anew. */
        double integral(RunPlan plan, double until) {
            double left = until;
            double concentration = background;
            double sum = 0;
            List<RunPlan.Phase> all = new ArrayList<>(plan.phases());
            all.add(new RunPlan.Phase(BigDecimal.valueOf(10_000), false));
            for (RunPlan.Phase phase : all) {
                double t = Math.min(left, phase.minutes().doubleValue());
                double g = phase.running() ? source : 0;
                if (exchanged == 0) {
                    sum += concentration * t + g * t * t / 2;
                    concentration += g * t;
                } else {
                    double settled = background + g / exchanged;
                    sum += settled * t + (concentration - settled) * (1 - Math.exp(-exchanged * t)) / exchanged;
                    concentration = settled + (concentration - settled) * Math.exp(-exchanged * t);
                }
                left -= t;
            }
            return sum;
        }
    }

    /** Sealed, 2 min on in 200 m³: 105 ppm for good, so every window that starts later has 105, and 8 h have 105 × (479 ÷ 480). */
    @Test
    void findsTheBestWindowInASealedRoom() {
        Exposure exposure = Exposure.of(room("200 m³", "0 m³/h", "10.5 L/min"), RunPlan.read("2on"));
        assertThat(exposure.peak()).isEqualByComparingTo(q("105 ppm"));
        assertThat(exposure.max15Min().value().doubleValue()).isCloseTo(105, withPercentage(1e-9));
        assertThat(exposure.max1H().value().doubleValue()).isCloseTo(105, withPercentage(1e-9));
        assertThat(exposure.twa8H().value().doubleValue()).isCloseTo(105 * 479 / 480.0, withPercentage(1e-9));
    }

    @Test
    void neverFallsWhenTheEngineRunsLonger() {
        Quantity before = q("0 ppm");
        for (int minutes = 1; minutes <= 40; minutes++) {
            Exposure exposure = Exposure.of(room("200 m³", "300 m³/h", "5 L/min"), RunPlan.read("3on,10off," + minutes + "on,5off,1on"));
            assertThat(exposure.max15Min()).isGreaterThan(before).isLessThanOrEqualTo(exposure.peak());
            assertThat(exposure.max1H()).isLessThanOrEqualTo(exposure.max15Min());
            before = exposure.max15Min();
        }
    }

    @Test
    void splitsAPhaseWithoutATrace() {
        RoomAir room = room("200 m³", "300 m³/h", "5 L/min");
        Exposure whole = Exposure.of(room, RunPlan.read("6on,20off"));
        Exposure split = Exposure.of(room, RunPlan.read("1.5on, 2.25on, 2.25on, 20off"));
        assertThat(split.peak().rounded(7)).isEqualTo(whole.peak().rounded(7));
        assertThat(split.max15Min().rounded(7)).isEqualTo(whole.max15Min().rounded(7));
        assertThat(split.max1H().rounded(7)).isEqualTo(whole.max1H().rounded(7));
        assertThat(split.twa8H().rounded(7)).isEqualTo(whole.twa8H().rounded(7));
    }

    @Test
    void refusesMoreThanTheRoomHolds() {
        assertThatThrownBy(() -> Exposure.of(room("1 L", "0 m³/h", "1 m³/min"), RunPlan.read("1on"))).isInstanceOf(BadFigureInput.class).hasMessageContaining("more carbon monoxide than the room");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            30off         | plan never runs the engine; write its minutes, such as 2on,28off,2on
            2on,0off,2on  | plan has a phase of no minutes; leave it out
            2on,28,2on    | plan '28' is not minutes and on or off; write such as 2on,28off,2on
            2 on          | plan '2 on' is not minutes and on or off; write such as 2on,28off,2on
            -2on          | plan '-2on' is not minutes and on or off; write such as 2on,28off,2on
            2on,          | plan '' is not minutes and on or off; write such as 2on,28off,2on
            1000on,441off | plan is 1441 minutes long; it covers a day at most
            """)
    void refusesAPlan(String plan, String message) {
        assertThatThrownBy(() -> RunPlan.read(plan)).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    @Test
    void coversADayToItsLastMinute() {
        assertThat(RunPlan.read("1000on,440off").phases()).extracting(RunPlan.Phase::minutes).containsExactly(new BigDecimal(1000), new BigDecimal(440));
    }
}
