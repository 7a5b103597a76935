package chock.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Percentage.withPercentage;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomAirTest {

    private static Quantity q(String text) {
        return Quantity.parse(text);
    }

    private static RoomAir room(String volume, String airflow, String generation, String k) {
        return RoomAir.of(q(volume), q(airflow), q(generation), new BigDecimal(k), q("0 ppm"));
    }

    /** A hall in cubic feet with so many changes of air an hour. */
    private static RoomAir hall(int cubicFeet, int changes, String generation) {
        return RoomAir.of(q(cubicFeet + " ft³"), d(cubicFeet * changes / 60.0, Unit.CFM), q(generation), BigDecimal.ONE, q("0 ppm"));
    }

    /** ACGIH, Industrial Ventilation, chapter on dilution, methyl chloroform (from memory; computed 20.273, 419.28, 34.657, 60.24). */
    @Test
    void agreesWithTheHandbookOfVentilation() {
        RoomAir room = room("100000 ft³", "2000 cfm", "1.2 cfm", "1");
        assertThat(room.timeTo(q("200 ppm")).orElseThrow().rounded(1)).isEqualTo(q("20.3 min"));
        assertThat(room.after(q("60 min")).rounded(6)).isEqualTo(q("419.283473 ppm"));
        assertThat(RoomAir.purge(q("100000 ft³"), q("2000 cfm"), q("200 ppm"), q("100 ppm")).rounded(1)).isEqualTo(q("34.7 min"));
        assertThat(1e6 * room.after(200e-6, 60, false)).isCloseTo(60.238842, withPercentage(1e-5));
    }

    /** Documentation of an occupational-hygiene package: 171.90 ppm after 11 min, 175.0 ppm at 11.24 min (read). */
    @Test
    void agreesWithAHygienePackage() {
        RoomAir room = room("75000 ft³", "2500 cfm", "1.4 cfm", "1");
        assertThat(room.after(q("11 min")).rounded(2)).isEqualTo(q("171.90 ppm"));
        assertThat(room.after(q("11 min")).rounded(6)).isEqualTo(q("171.897253 ppm"));
        assertThat(room.timeTo(q("175.0 ppm")).orElseThrow().rounded(2)).isEqualTo(q("11.24 min"));
    }

    /** Table of an engineering site, q = 1, V = 1, n changes an hour (read); here a millionth of it, so ppm read as its shares. */
    @ParameterizedTest
    @CsvSource({"0.5, 10, 0.1599", "1, 10, 0.1535", "2, 10, 0.1417", "4, 10, 0.1216", "8, 10, 0.0921", "0.5, 40, 0.5669", "1, 40, 0.4866", "2, 40, 0.3682", "4, 40, 0.2326",
        "8, 40, 0.1244", "1, 160, 0.9305"})
    void agreesWithAPrintedTable(String changes, int minutes, String share) {
        RoomAir room = room("1000 m³", new BigDecimal(changes).multiply(BigDecimal.valueOf(1000)) + " m³/h", "0.001 m³/h", "1");
        assertThat(room.after(q(minutes + " min")).rounded(4)).isEqualTo(q(share + " ppm"));
    }

    /**
     * United States Bureau of Reclamation, design guide of 2006, page 106: 20 % to 1.4 % at 2 changes a minute with its
     * K = 0.2 takes 13.3 changes, 6.65 min (read). Its K multiplies where this one divides: 0.2 there is 5 here.
     */
    @Test
    void keepsTheTwoConventionsOfMixingApart() {
        Quantity airflow = new Quantity(new BigDecimal(2000).divide(new BigDecimal(5)), Unit.CFM);
        Quantity minutes = RoomAir.purge(q("1000 ft³"), airflow, q("20 %"), q("1.4 %"));
        assertThat(minutes.rounded(2)).isEqualTo(q("6.65 min"));
        assertThat(minutes.times(BigDecimal.valueOf(2)).rounded(1).value()).isEqualByComparingTo("13.3");
        RoomAir mixedBadly = room("1000 ft³", "2000 cfm", "0 cfm", "5");
        assertThat(mixedBadly.after(0.2, minutes.value().doubleValue(), false)).isCloseTo(0.014, withPercentage(1e-9));
        assertThatThrownBy(() -> room("1000 ft³", "2000 cfm", "0 cfm", "0.2")).isInstanceOf(BadFigureInput.class)
                .hasMessage("k-acgih is 0.2; it divides the airflow and is at least 1, for perfect mixing. Where a source multiplies by a factor below 1, write 1 ÷ that factor: 5 for 0.2");
    }

    /** The same guide's fill: G = 15 cfm with Q = 85 cfm into 1000 ft³ at K = 5 reaches 5 % after 19.6 min (inputs read, minutes computed). */
    @Test
    void fillsARoom() {
        assertThat(room("1000 ft³", "85 cfm", "15 cfm", "5").timeTo(q("5 %")).orElseThrow().value().doubleValue())
                .isCloseTo(-Math.log1p(-0.05 * 17 / 15) / 0.017, withPercentage(1e-9));
    }

    /**
     * The abstract of NIOSH's model of a 5-hp engine gives G = 0.818 cfm and also minutes to 1200 ppm (7 at 1 change an hour, 10
     * at 5) that do not follow from it: perfectly mixed it is 16.8 min and never. All values here are computed from 0.818.
     */
    @ParameterizedTest
    @CsvSource({"1000, 1, 200, 0.24", "1000, 20, 200, 0.26", "1000, 1, 1200, 1.49", "1000, 5, 1200, 1.56", "1000, 20, 1200, 2.01", "10000, 1, 200, 2.50", "10000, 20, 200, 5.06",
        "10000, 1, 1200, 16.82", "10000, 2, 1200, 20.14", "10000, 5, 1200, ", "10000, 10, 1200, ", "10000, 20, 1200, ", "100000, 1, 200, 31.40", "100000, 2, 200, 50.62", "100000, 5, 200, "})
    void takesTheRateOfTheSawNotItsMinutes(int cubicFeet, int changes, int ppm, String minutes) {
        RoomAir room = hall(cubicFeet, changes, "0.818 cfm");
        assertThat(room.timeTo(q(ppm + " ppm")).map(m -> m.rounded(2).value().toPlainString())).isEqualTo(java.util.Optional.ofNullable(minutes));
    }

    /** Settled values of the same engine in 10 000 ft³: 982, 491 and 245 ppm at 5, 10 and 20 changes (computed). */
    @ParameterizedTest
    @CsvSource({"5, 982", "10, 491", "20, 245"})
    void settles(int changes, int ppm) {
        Quantity steady = hall(10_000, changes, "0.818 cfm").steady().orElseThrow();
        assertThat(steady.rounded(0)).isEqualTo(q(ppm + " ppm"));
    }

    /** The printed minutes agree among themselves for 1.816 cfm, fitted to the first: 7; then 9.6 (printed 10), 0.11 (0.1), 0.75 (below 1). */
    @ParameterizedTest
    @CsvSource({"10000, 1, 1200, 7.00", "10000, 5, 1200, 9.60", "1000, 1, 200, 0.11", "1000, 20, 1200, 0.75"})
    void findsTheRateThePrintedMinutesMean(int cubicFeet, int changes, int ppm, String minutes) {
        RoomAir room = hall(cubicFeet, changes, "1.816 cfm");
        assertThat(room.timeTo(q(ppm + " ppm")).orElseThrow().rounded(2)).isEqualTo(q(minutes + " min"));
    }

    /** An 8-hp pump in 59 000 ft³, scaled to 1.31 cfm and sealed: 200 ppm at 9.0 min, 1200 at 54 (computed); the operator of the real one collapsed (joint alert, read). */
    @Test
    void remembersThePumpRoom() {
        RoomAir room = room("59000 ft³", "0 cfm", "1.31 cfm", "1");
        assertThat(room.timeTo(q("200 ppm")).orElseThrow().rounded(1)).isEqualTo(q("9.0 min"));
        assertThat(room.timeTo(q("1200 ppm")).orElseThrow().rounded(0)).isEqualTo(q("54 min"));
        assertThat(room.steady()).isEmpty();
    }

    /** A 250 cc two-stroke, 10.5 L/min, in 200 m³ at half a change an hour (computed): 100 ppm at 1.92 min, 257.106420 at 5; 257 to 20 ppm takes 5.1 h. */
    @Test
    void knowsTheSmallWorkshop() {
        RoomAir room = room("200 m³", "100 m³/h", "10.5 L/min", "1");
        assertThat(room.timeTo(q("100 ppm")).orElseThrow().rounded(2)).isEqualTo(q("1.92 min"));
        assertThat(room.after(q("5 min")).rounded(5)).isEqualTo(q("257.10642 ppm"));
        assertThat(1e6 * room.mean(0, 5, true)).isCloseTo(129.45, withPercentage(0.01));
        assertThat(RoomAir.purge(q("200 m³"), q("100 m³/h"), q("257 ppm"), q("20 ppm")).to(Unit.HOURS).rounded(1)).isEqualTo(q("5.1 h"));
        assertThat(room("200 m³", "31500 m³/h", "10.5 L/min", "1").steady().orElseThrow()).isEqualByComparingTo(q("20 ppm"));
    }

    @Test
    void risesWithTimeAndSourceAndFallsWithRoomAndAir() {
        Random random = new Random(20261125);
        for (int i = 0; i < 300; i++) {
            double v = 10 + 5000 * random.nextDouble();
            double air = 5000 * random.nextDouble();
            double g = 0.1 + 30 * random.nextDouble();
            double t = 1 + 200 * random.nextDouble();
            double k = 1 + 9 * random.nextDouble();
            Quantity here = after(v, air, g, t, k);
            assertThat(after(v, air, g, t * 1.1, k)).isGreaterThanOrEqualTo(here);
            assertThat(after(v, air, g * 1.1, t, k)).isGreaterThan(here);
            assertThat(after(v * 1.1, air, g, t, k)).isLessThanOrEqualTo(here);
            assertThat(after(v, air * 1.1, g, t, k)).isLessThanOrEqualTo(here);
            assertThat(after(v, air, g, t, k * 1.1)).isGreaterThanOrEqualTo(here);
            assertThat(after(v, 0, g, t, k)).isGreaterThanOrEqualTo(here);
        }
    }

    private static Quantity after(double v, double air, double g, double t, double k) {
        return RoomAir.of(d(v, Unit.CUBIC_METRES), d(air, Unit.CUBIC_METRES_PER_HOUR), d(g, Unit.LITRES_PER_MINUTE), new BigDecimal(k), q("0 ppm")).after(d(t, Unit.MINUTES));
    }

    private static Quantity d(double value, Unit unit) {
        return new Quantity(new BigDecimal(value, new java.math.MathContext(9)), unit);
    }

    @Test
    void endsWhereItSettles() {
        RoomAir room = RoomAir.of(q("50 m³"), q("500 m³/h"), q("5 L/min"), new BigDecimal("2"), q("3 ppm"));
        // 3 + 0.3 m³/h ÷ 250 m³/h
        assertThat(room.steady().orElseThrow()).isEqualByComparingTo(q("1203 ppm"));
        assertThat(room.after(q("24 h"))).isEqualByComparingTo(q("1203 ppm"));
        assertThat(room.timeTo(q("1203 ppm"))).isEmpty();
        assertThat(room.timeTo(q("1202.999 ppm"))).isPresent();
        assertThat(room.timeTo(q("3 ppm")).orElseThrow().value()).isZero();
    }

    /** As much gas as air comes in: it settles at nothing else, a million in a million, and that is still a room. */
    @Test
    void takesTheWholeAsTheMost() {
        assertThat(room("1 m³", "1 m³/min", "1 m³/min", "1").steady().orElseThrow()).isEqualByComparingTo(q("1000000 ppm"));
        RoomAir full = RoomAir.of(q("1 m³"), q("0 m³/h"), q("0 L/min"), BigDecimal.ONE, q("100 %"));
        assertThat(full.after(q("5 min"))).isEqualByComparingTo(q("1000000 ppm"));
    }

    @Test
    void isThereAlreadyAtItsBackgroundThoughNothingComesOut() {
        RoomAir dead = RoomAir.of(q("200 m³"), q("100 m³/h"), q("0 L/min"), BigDecimal.ONE, q("9 ppm"));
        assertThat(dead.timeTo(q("9 ppm")).orElseThrow().value()).isZero();
        assertThat(dead.timeTo(q("9.1 ppm"))).isEmpty();
    }

    /** (1 − (1 − e^(−x)) ÷ x) ÷ x to 60 digits outside this program; in double the formula itself loses seven of them here. */
    @ParameterizedTest
    @CsvSource({"0.0005, 0.499916677082291753466", "0.00075, 0.499875023433984814406"})
    void keepsItsDigitsWhereHardlyAnyAirIsChanged(String x, double mean) {
        RoomAir room = room("1 m³", x + " m³/min", "1 L/min", "1");
        assertThat(room.mean(0, 1, true)).isCloseTo(mean / 1000, withPercentage(1e-11));
    }

    /** No airflow: G t ÷ V, 0.0105 m³/min × 10 min ÷ 200 m³ = 525 ppm; a hair of airflow changes nothing. */
    @Test
    void isContinuousAtNoAirflow() {
        assertThat(room("200 m³", "0 m³/h", "10.5 L/min", "1").after(q("10 min"))).isEqualByComparingTo(q("525 ppm"));
        double sealed = room("200 m³", "0 m³/h", "10.5 L/min", "1").mean(1e-4, 10, true);
        for (String air : new String[] {"0.000000001 m³/h", "0.00001 m³/h", "0.01 m³/h"}) {
            RoomAir room = room("200 m³", air, "10.5 L/min", "1");
            assertThat(room.after(q("10 min")).value().doubleValue()).isCloseTo(525, withPercentage(1e-2));
            assertThat(room.mean(1e-4, 10, true)).isCloseTo(sealed, withPercentage(1e-2));
            assertThat(room.timeTo(q("525 ppm")).orElseThrow().value().doubleValue()).isCloseTo(10, withPercentage(1e-2));
        }
    }

    @Test
    void doesNotCareHowAnIntervalIsSplit() {
        Random random = new Random(4711);
        for (int i = 0; i < 200; i++) {
            RoomAir room = room("200 m³", random.nextInt(1000) + " m³/h", "7 L/min", "3");
            double start = 1e-3 * random.nextDouble();
            double first = 60 * random.nextDouble();
            double second = 60 * random.nextDouble();
            boolean running = random.nextBoolean();
            double middle = room.after(start, first, running);
            assertThat(room.after(middle, second, running)).isCloseTo(room.after(start, first + second, running), withPercentage(1e-9));
            assertThat(first * room.mean(start, first, running) + second * room.mean(middle, second, running))
                    .isCloseTo((first + second) * room.mean(start, first + second, running), withPercentage(1e-9));
        }
    }

    /** 66.03474 m³ is 2332 ft³: the bathroom of NIOSH's model, 836 cfm and 0.818 cfm. */
    @Test
    void givesTheSameInEveryUnit() {
        Quantity british = room("2332 ft³", "836 cfm", "0.818 cfm", "3").after(q("7 min"));
        Quantity metric = RoomAir.of(q("2332 ft³").to(Unit.CUBIC_METRES), q("836 cfm").to(Unit.CUBIC_METRES_PER_HOUR), q("0.818 cfm").to(Unit.LITRES_PER_MINUTE),
                new BigDecimal(3), q("0 %")).after(q("420 s"));
        assertThat(metric.rounded(8)).isEqualTo(british.rounded(8));
    }

    @Test
    void purgesAsItDecays() {
        RoomAir off = room("200 m³", "100 m³/h", "0 L/min", "1");
        double minutes = RoomAir.purge(q("200 m³"), q("100 m³/h"), q("257 ppm"), q("20 ppm")).value().doubleValue();
        assertThat(1e6 * off.after(257e-6, minutes, false)).isCloseTo(20, withPercentage(1e-9));
        // halving takes 0.693 V ÷ Q
        assertThat(RoomAir.purge(q("200 m³"), q("100 m³/h"), q("2 ppm"), q("1 ppm")).value().doubleValue()).isCloseTo(120 * Math.log(2), withPercentage(1e-9));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 m³   | 100 m³/h | 5 L/min  | 0 ppm      | volume is 0 m³; it must be above zero
            20 m   | 100 m³/h | 5 L/min  | 0 ppm      | volume is 20 m, which is not a unit of volume; write one of cc, mL, L, m³, ft³, US gal, imp gal
            20 m³  | -1 m³/h  | 5 L/min  | 0 ppm      | airflow is -1 m³/h; it must be at least zero
            20 m³  | 100 m³/h | -5 L/min | 0 ppm      | generation is -5 L/min; it must be at least zero
            20 m³  | 100 m³/h | 5 g/h    | 0 ppm      | generation is 5 g/h, which is not a unit of flow; write one of m³/h, m³/min, m³/s, L/min, ft³/min
            20 m³  | 100 m³/h | 5 L/min  | -1 ppm     | background is -1 ppm; it must be at least zero
            20 m³  | 100 m³/h | 5 L/min  | 101 %      | background is 101 %; there is no more than the whole
            20 m³  | 100 m³/h | 5 L/min  | 1 mg/m³    | background is 1 mg/m³, which is not a unit of ratio; write one of %, ppm
            """)
    void refuses(String volume, String airflow, String generation, String background, String message) {
        assertThatThrownBy(() -> RoomAir.of(q(volume), q(airflow), q(generation), BigDecimal.ONE, q(background))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }

    @Test
    void refusesMoreThanTheRoomHolds() {
        RoomAir can = room("1 L", "0 m³/h", "1 m³/min", "1");
        assertThatThrownBy(() -> can.after(q("1 min"))).isInstanceOf(BadFigureInput.class)
                .hasMessage("this gives more carbon monoxide than the room holds air; look at volume, generation and minutes again");
        assertThat(room("1 L", "0.1 m³/min", "1 m³/min", "1").steady()).isEmpty();
        assertThatThrownBy(() -> can.after(q("-1 min"))).isInstanceOf(BadFigureInput.class).hasMessage("minutes is -1 min; it must be at least zero");
        assertThatThrownBy(() -> can.after(q("1 m"))).isInstanceOf(BadFigureInput.class).hasMessageStartingWith("minutes is 1 m, which is not a unit of duration");
        assertThatThrownBy(() -> can.timeTo(q("101 %"))).isInstanceOf(BadFigureInput.class).hasMessage("level is 101 %; there is no more than the whole");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0 m³/h   | 257 ppm | 20 ppm  | airflow is 0 m³/h; it must be above zero
            100 m³/h | 20 ppm  | 20 ppm  | to is 20 ppm; it must be below from, 20 ppm
            100 m³/h | 257 ppm | 0 ppm   | to is 0 ppm; it must be above zero
            100 m³/h | 257 ppm | 300 ppm | to is 300 ppm; it must be below from, 257 ppm
            """)
    void refusesToPurge(String airflow, String from, String to, String message) {
        assertThatThrownBy(() -> RoomAir.purge(q("200 m³"), q(airflow), q(from), q(to))).isInstanceOf(BadFigureInput.class).hasMessage(message);
    }
}
