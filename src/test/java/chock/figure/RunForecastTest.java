package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chock.figure.RunForecast.Room;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RunForecastTest {
    private static Room room(String volume, String airflow, String generation, String mixing, String background) {
        return new Room(Measured.parse(volume), Measured.parse(airflow), Measured.parse(generation), Measured.parse(mixing), Measured.parse(background));
    }

    private static double in(Quantity amount) {
        return amount.value().doubleValue();
    }

    // Worked out outside this program three ways alike: closed form and two integrators. Perfect mixing, clean air outdoors.
    @ParameterizedTest
    @CsvSource(textBlock = """
            200 m³,   100 m³/h,   5.25 L/min, 128.55, 121.1, 32.2
            200 m³,   100 m³/h,   10.5 L/min, 257.11, 242.3, 64.4
            20000 m³, 20000 m³/h, 10.5 L/min, 2.52,   2.25,  0.33
            """)
    void five_minutes_in_a_workshop_and_in_a_hall(String volume, String airflow, String generation, double peak, double quarterHour, double shift) {
        RunForecast forecast = new RunForecast(room(volume, airflow, generation, "1 times", "0 ppm"), RunPlan.read("5on"));
        assertThat(in(forecast.peak().value())).isCloseTo(peak, within(0.005));
        assertThat(in(forecast.quarterHour().value())).isCloseTo(quarterHour, within(0.05));
        assertThat(in(forecast.shift().value())).isCloseTo(shift, within(0.05));
        assertThat(forecast.peak().uncertainty()).isNull();
    }

    @Test
    void the_workshop_needs_5_hours_from_257_to_20_ppm() {
        // from the same source: 5.1 h at half an air change an hour
        RunForecast forecast = new RunForecast(room("200 m³", "100 m³/h", "10.5 L/min", "1 times", "0 ppm"), RunPlan.read("5on"));
        assertThat(in(forecast.purge(Quantity.of("20", Unit.PPM)).orElseThrow()) / 60).isCloseTo(5.1, within(0.05));
        assertThat(in(forecast.timeTo(Quantity.of("100", Unit.PPM)).orElseThrow())).as("minutes to 100 ppm, same source").isCloseTo(1.92, within(0.005));
    }

    @Test
    void every_reading_is_taken_to_be_off_to_the_bad_side() {
        RunPlan plan = RunPlan.read("5on,10off,5on");
        Measured peak = new RunForecast(room("200 m³ ± 20 m³", "100 m³/h ± 10 m³/h", "10 L/min ± 1 L/min", "3 times ± 0.5 times", "2 ppm ± 1 ppm"), plan).peak();
        Measured worst = new RunForecast(room("180 m³", "90 m³/h", "11 L/min", "3.5 times", "3 ppm"), plan).peak();
        assertThat(peak.value().plus(peak.uncertainty())).isEqualByComparingTo(worst.value());
    }

    @Test
    void a_reading_above_the_prediction_is_explained_by_a_stronger_engine_and_one_below_is_not() {
        Room room = room("2000 m³ ± 100 m³", "1000 m³/h", "10 L/min", "3 times", "2 ppm ± 1 ppm");
        Room other = room.explaining(Measured.parse("60 ppm ± 5 ppm"), Quantity.parse("3 min")).orElseThrow();
        assertThat(in(other.likely().after(Quantity.parse("3 min")))).isCloseTo(60, within(1e-6));
        assertThat(in(new Room(other.volume(), other.airflow(), new Measured(other.generation().value().plus(other.generation().uncertainty()), null), other.mixing(), other.background())
                .likely().after(Quantity.parse("3 min")))).isCloseTo(65, within(1e-6));
        assertThat(room.explaining(Measured.parse("15 ppm ± 5 ppm"), Quantity.parse("3 min"))).isEmpty();
        assertThat(room.explaining(new Measured(room.likely().after(Quantity.parse("3 min")), null), Quantity.parse("3 min"))).as("just as predicted").isEmpty();
        assertThatThrownBy(() -> room.explaining(Measured.parse("60 ppm ± 5 ppm"), Quantity.parse("0 min"))).isInstanceOf(BadFigureInput.class);
        Room dead = room("2000 m³", "1000 m³/h", "0 L/min", "3 times", "2 ppm");
        assertThatThrownBy(() -> dead.explaining(Measured.parse("60 ppm ± 5 ppm"), Quantity.parse("3 min"))).isInstanceOf(BadFigureInput.class);
    }

    @Test
    void the_longest_run_passes_and_a_step_more_does_not() {
        Random random = new Random(7);
        for (int i = 0; i < 50; i++) {
            Room room = room(200 + random.nextInt(5000) + " m³ ± 10 m³", random.nextInt(500) + " m³/h", 1 + random.nextInt(20) + " L/min", 1 + random.nextInt(9) + " times", "1 ppm ± 1 ppm");
            double most = 10 + random.nextInt(100);
            Quantity longest = RunForecast.longest(room, Quantity.parse("480 min"), f -> in(f.peak().value()) < most);
            if (longest.value().signum() > 0) {
                assertThat(in(new RunForecast(room, RunPlan.read(longest.number() + "on")).peak().value())).isLessThan(most);
            }
            if (in(longest) < 480) {
                assertThat(in(new RunForecast(room, RunPlan.read(longest.value().add(new java.math.BigDecimal("0.25")) + "on")).peak().value())).isGreaterThanOrEqualTo(most);
            }
        }
        assertThat(RunForecast.longest(room("200 m³", "0 m³/h", "10 L/min", "1 times", "0 ppm"), Quantity.parse("480 min"), f -> false).value()).isEqualByComparingTo("0");
    }

    @Test
    void the_course_passes_through_the_figures() {
        RunForecast forecast = new RunForecast(room("200 m³ ± 20 m³", "100 m³/h", "10.5 L/min", "3 times", "1 ppm ± 1 ppm"), RunPlan.read("5on,20off,3on"));
        List<RunForecast.Point> course = forecast.course(60, 600);
        assertThat(course.stream().mapToDouble(RunForecast.Point::ppm).max().orElseThrow()).isCloseTo(in(forecast.peak().value().plus(forecast.peak().uncertainty())), within(1e-6));
        assertThat(course.stream().mapToDouble(RunForecast.Point::quarterHour).max().orElseThrow())
                .isCloseTo(in(forecast.quarterHour().value().plus(forecast.quarterHour().uncertainty())), within(0.05));
        assertThat(course).extracting(RunForecast.Point::minutes).contains(0.0, 5.0, 25.0, 28.0, 60.0).isSorted();
        assertThat(in(forecast.atTheEnd())).isCloseTo(course.stream().filter(p -> p.minutes() == 28).findFirst().orElseThrow().ppm(), within(1e-6));
    }

    @Test
    void the_air_a_later_run_begins_in_is_the_worst_of_them() {
        Room room = room("200 m³ ± 20 m³", "100 m³/h ± 10 m³/h", "10.5 L/min ± 1 L/min", "2 times ± 0.5 times", "0 ppm");
        // at its worst 90 m³/h over 2.5 in 180 m³: e^(−0.2 t) an hour, and 11.5 L/min
        double perMinute = 90 / 2.5 / 180 / 60;
        double settled = 0.0115 / (180 * perMinute) * 1e6;
        double afterFive = settled * -Math.expm1(-5 * perMinute);
        double second = afterFive * Math.exp(-20 * perMinute);
        double third = (second + (settled - second) * -Math.expm1(-3 * perMinute)) * Math.exp(-300 * perMinute);
        assertThat(third).isLessThan(second);
        assertThat(in(new RunForecast(room, RunPlan.read("5on,20off,3on")).beforeLaterRuns().orElseThrow())).isCloseTo(second, within(1e-6));
        assertThat(in(new RunForecast(room, RunPlan.read("5on,20off,3on,300off,1on")).beforeLaterRuns().orElseThrow())).isCloseTo(second, within(1e-6));
        assertThat(in(new RunForecast(room, RunPlan.read("5on,300off,5on,20off,5on")).beforeLaterRuns().orElseThrow())).isGreaterThan(second);
        assertThat(new RunForecast(room, RunPlan.read("5on,20off")).beforeLaterRuns()).isEmpty();
        assertThat(new RunForecast(room, RunPlan.read("20off,5on")).beforeLaterRuns()).as("the first run is none that comes later").isEmpty();
        Room dead = room("200 m³", "100 m³/h", "0 L/min", "1 times", "0 ppm");
        assertThat(new RunForecast(dead, RunPlan.read("5on,5off,5on")).beforeLaterRuns().orElseThrow().value()).as("in clean air").isZero();
    }

    @Test
    void the_longest_run_is_all_that_was_asked_and_never_one_that_fills_the_room() {
        Room hall = room("20000 m³", "20000 m³/h", "10.5 L/min", "1 times", "0 ppm");
        assertThat(RunForecast.longest(hall, Quantity.parse("480 min"), f -> true).value()).isEqualByComparingTo("480");
        assertThat(RunForecast.longest(hall, Quantity.parse("0.25 min"), f -> true).value()).isEqualByComparingTo("0.25");
        assertThat(RunForecast.longest(hall, Quantity.parse("0.2 min"), f -> true).value()).isZero();
        // 1 m³ sealed, 100 L/min: 10 min are the whole
        Room box = room("1 m³", "0 m³/h", "100 L/min", "1 times", "0 ppm");
        assertThat(in(RunForecast.longest(box, Quantity.parse("480 min"), f -> true))).isBetween(9.75, 10.0);
    }

    @Test
    void airing_ends_when_the_course_is_down_and_never_where_no_air_comes_in() {
        RunForecast forecast = new RunForecast(room("200 m³ ± 20 m³", "100 m³/h", "10.5 L/min", "3 times", "1 ppm ± 3 ppm"), RunPlan.read("5on"));
        double minutes = in(forecast.purge(Quantity.of("9", Unit.PPM)).orElseThrow());
        assertThat(forecast.course(5 + minutes, 10).get(11).ppm()).isCloseTo(9, within(1e-6));
        assertThat(forecast.purge(forecast.atTheEnd()).orElseThrow().value()).as("there already").isZero();
        assertThat(forecast.purge(Quantity.of("4", Unit.PPM))).as("no cleaner than the air outdoors may be").isEmpty();
        assertThat(new RunForecast(room("200 m³", "10 m³/h ± 10 m³/h", "10.5 L/min", "3 times", "0 ppm"), RunPlan.read("5on")).purge(Quantity.of("9", Unit.PPM))).isEmpty();
        assertThat(new RunForecast(room("200 m³", "100 m³/h", "0.1 L/min", "3 times", "0 ppm"), RunPlan.read("1on")).purge(Quantity.of("9", Unit.PPM)).orElseThrow().value()).isEqualByComparingTo("0");
    }

    @Test
    void a_closed_room_changes_its_air_in_the_time_given() {
        assertThat(RunForecast.closedRoom(Measured.parse("200 m³ ± 20 m³"), Quantity.parse("2 h"))).hasToString("100 m³/h ± 10 m³/h");
        assertThatThrownBy(() -> RunForecast.closedRoom(Measured.parse("0 m³ ± 20 m³"), Quantity.parse("2 h"))).isInstanceOf(BadFigureInput.class);
    }

    @Test
    void what_may_be_outside_the_range_of_an_idling_engine_is_refused() {
        Measured share = Measured.parse("4.5 % ± 0.3 %");
        // 0.25 L · 1300 rpm · 0.30 · 4.5 % = 4.3875 L/min
        assertThat(RunForecast.generation(Quantity.parse("250 cc"), CoSource.Cycle.TWO_STROKE, Measured.parse("1300 rpm ± 50 rpm"), share).value().value()).isEqualByComparingTo("4.3875");
        assertThatThrownBy(() -> RunForecast.generation(Quantity.parse("250 cc"), CoSource.Cycle.TWO_STROKE, Measured.parse("2480 rpm ± 50 rpm"), share)).isInstanceOf(BadFigureInput.class);
    }

    @Test
    void mass_carries_its_uncertainty() {
        // 28.010 g/mol over 24.055 L/mol at 20 °C: 1.1644 mg/m³ for 1 ppm, from memory
        Measured mass = RunForecast.byMass(Measured.parse("20 ppm ± 2 ppm"), Quantity.parse("20 °C"));
        assertThat(in(mass.value())).isCloseTo(23.29, within(0.005));
        assertThat(in(mass.uncertainty())).isCloseTo(2.329, within(0.0005));
    }
}
