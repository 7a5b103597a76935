package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.figure.StoppingLimit.Control;
import chock.figure.StoppingLimit.Vehicle;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BrakingTest {

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    /** Directive 93/14/EEC, Annex, Appendix 1, 2.1 (read): 0.1 V + V² ÷ divisor, worked out by hand at the test speeds. */
    @ParameterizedTest
    @CsvSource({
        "MOTORCYCLE, FRONT, 60 km/h, 37.304, 4.4", "MOTORCYCLE, REAR, 60 km/h, 54.000, 2.9",
        "MOTORCYCLE_SIDECAR, FRONT, 60 km/h, 43.895, 3.6", "MOTORCYCLE_SIDECAR, REAR, 60 km/h, 43.895, 3.6",
        "MOPED, FRONT, 40 km/h, 21.778, 3.4", "MOPED, REAR, 40 km/h, 26.857, 2.7",
        "MOPED_3W, FRONT, 40 km/h, 26.857, 2.7", "MOPED_3W, REAR, 40 km/h, 26.857, 2.7"})
    void readsTheStoppingTable(Vehicle vehicle, Control control, String speed, BigDecimal distance, BigDecimal deceleration) {
        StoppingLimit limit = StoppingLimit.of(vehicle, control);
        assertThat(limit.distance(q(speed)).rounded(3)).isEqualTo(new Quantity(distance, Unit.M));
        assertThat(limit.deceleration()).isEqualTo(new Quantity(deceleration, Unit.MPS2));
    }

    /** The decimal form of UN R78 (k = 0.0087 and 0.0133, from memory) gives 37.32 m and 53.88 m: near, but not this table. */
    @Test
    void keepsTheFractionApartFromTheDecimalForm() {
        assertThat(StoppingLimit.of(Vehicle.MOTORCYCLE, Control.FRONT).distance(q("60 km/h")).rounded(2)).isNotEqualTo(q("37.32 m"));
        assertThat(StoppingLimit.of(Vehicle.MOTORCYCLE, Control.REAR).distance(q("60 km/h")).rounded(2)).isNotEqualTo(q("53.88 m"));
    }

    /** The two columns of the directive say the same within 3 %: 25.92 × deceleration against the divisor. */
    @Test
    void agreesBetweenDistanceAndDeceleration() {
        for (Vehicle vehicle : Vehicle.values()) {
            for (Control control : Control.values()) {
                StoppingLimit limit = StoppingLimit.of(vehicle, control);
                double implied = 25.92 * limit.deceleration().value().doubleValue();
                assertThat(implied / limit.divisor()).as("%s %s", vehicle, control).isBetween(0.97, 1.03);
            }
        }
    }

    @Test
    void growsWithSpeed() {
        StoppingLimit limit = StoppingLimit.of(Vehicle.MOTORCYCLE, Control.FRONT);
        for (int v = 2; v <= 150; v++) {
            assertThat(limit.distance(q(v + " km/h"))).isGreaterThan(limit.distance(q(v - 1 + " km/h")));
        }
        assertThat(limit.distance(q("37.28227153424 mph")).rounded(3)).isEqualTo(q("37.304 m"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 km/h | speed is 0 km/h; it must be above zero
            60 m   | speed is 60 m, which is not a unit of speed; write one of km/h, mph, m/s
            """)
    void refusesWhatIsNoSpeed(String speed, String message) {
        assertThatThrownBy(() -> StoppingLimit.of(Vehicle.MOPED, Control.REAR).distance(q(speed))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    /** Formula of UN R78 Annex 3 (from memory): (48² − 6²) ÷ (25.92 × 21) = 4.1667, under the front 4.4 and over the rear 2.9 of 93/14/EEC. */
    @Test
    void computesTheMeanFullyDevelopedDeceleration() {
        Quantity d = Deceleration.fullyDeveloped(q("48 km/h"), q("6 km/h"), q("21 m"));
        assertThat(d.rounded(4)).isEqualTo(q("4.1667 m/s²"));
        assertThat(d).isLessThan(StoppingLimit.of(Vehicle.MOTORCYCLE, Control.FRONT).deceleration())
                .isGreaterThan(StoppingLimit.of(Vehicle.MOTORCYCLE, Control.REAR).deceleration());
    }

    /** Maryland: 20 mph to rest within 30 ft (COMAR 11.14.03.04 A(1), read in a copy) is 4.371 m/s², 14.34 ft/s², 44.6 % of gravity. */
    @Test
    void computesAStopToRest() {
        Quantity d = Deceleration.fullyDeveloped(q("20 mph"), q("0 mph"), q("30 ft"));
        assertThat(d.rounded(3)).isEqualTo(q("4.371 m/s²"));
        assertThat(d.to(Unit.FTPS2).rounded(2)).isEqualTo(q("14.34 ft/s²"));
        assertThat(BrakeEfficiency.ofDeceleration(d).rounded(1)).isEqualTo(q("44.6 %"));
        assertThat(Deceleration.fullyDeveloped(q("20 mph"), q("0 mph"), q("30.1 ft"))).isLessThan(d);
    }

    /** A public function divides by twice the time instead of twice the distance. Evenly braked, 48 to 6 km/h over 21 m takes 2.8 s. */
    @Test
    void dividesByDistanceNotTime() {
        BigDecimal d = Deceleration.fullyDeveloped(q("48 km/h"), q("6 km/h"), q("21 m")).value();
        assertThat(d.doubleValue()).isCloseTo((48 - 6) / 3.6 / 2.8, org.assertj.core.data.Offset.offset(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            6 km/h  | 48 km/h | 21 m   | to is 48 km/h; it must be at least zero and below from, 6 km/h
            6 km/h  | 6 km/h  | 21 m   | to is 6 km/h; it must be at least zero and below from, 6 km/h
            48 km/h | -6 km/h | 21 m   | to is -6 km/h; it must be at least zero and below from, 48 km/h
            48 km/h | 6 km/h  | 0 m    | over is 0 m; it must be above zero
            48 km/h | 6 km/h  | 2.8 s  | over is 2.8 s, which is not a unit of length; write one of mm, cm, m, km, in, ft, thou, mi
            """)
    void refusesAnImpossibleStop(String from, String to, String over, String message) {
        assertThatThrownBy(() -> Deceleration.fullyDeveloped(q(from), q(to), q(over))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    /** Printed roller ticket (honestjohn.co.uk, thread 27828): 110 kg of force is 37 %, 105 kg is 35 %; 300 kg is the weight that fits both. */
    @ParameterizedTest
    @CsvSource({"110 kgf, 300 kg, 36.67, 37", "105 kgf, 300 kg, 35.00, 35"})
    void agreesWithAPrintedTicket(String force, String mass, BigDecimal exact, BigDecimal printed) {
        Quantity efficiency = BrakeEfficiency.of(q(force), q(mass));
        assertThat(efficiency.rounded(2).value()).isEqualByComparingTo(exact);
        assertThat(efficiency.rounded(0).value()).isEqualByComparingTo(printed);
    }

    /** 30 % and 25 % (GB inspection manual 3.3, read in a copy) are 2.942 and 2.452 m/s². */
    @ParameterizedTest
    @CsvSource({"2.941995 m/s², 30", "2.4516625 m/s², 25"})
    void turnsDecelerationIntoEfficiency(String deceleration, BigDecimal efficiency) {
        assertThat(BrakeEfficiency.ofDeceleration(q(deceleration)).value()).isEqualByComparingTo(efficiency);
    }

    /** Exactly 30 %: 882.5985 N of 300 kg. U: 30 % × √((9/882.5985)² + (3/300)²) = 0.42849 %. */
    @Test
    void carriesTheUncertaintyOfBothReadings() {
        Measured efficiency = BrakeEfficiency.of(Measured.parse("882.5985 N ± 9 N"), Measured.parse("300 kg ± 3 kg"));
        assertThat(efficiency.value().value()).isEqualByComparingTo("30");
        assertThat(efficiency.uncertainty().rounded(4)).isEqualTo(q("0.4285 %"));
        assertThat(BrakeEfficiency.of(Measured.parse("90 kgf ± 1 kgf"), new Measured(q("300 kg"), null)).uncertainty().rounded(6)).isEqualTo(q("0.333333 %"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            110 kg  | 300 kg | force is 110 kg, which is not a unit of force; write one of N, kgf, lbf (a roller tester that prints kg means kgf)
            110 kgf | 0 kg   | mass is 0 kg; it must be above zero
            -1 N    | 300 kg | force is -1 N; it must be at least zero
            """)
    void refusesAnImpossibleEfficiency(String force, String mass, String message) {
        assertThatThrownBy(() -> BrakeEfficiency.of(q(force), q(mass))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    @Test
    void refusesANegativeDeceleration() {
        assertThatThrownBy(() -> BrakeEfficiency.ofDeceleration(q("-1 m/s²"))).hasMessage("deceleration is -1 m/s²; it must be at least zero");
        assertThat(BrakeEfficiency.of(q("0 N"), q("300 kg")).value()).isZero();
    }
}
