package chock.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Bounds.Standing;
import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import org.apache.commons.math3.fraction.BigFraction;
import org.junit.jupiter.api.Test;

/** Amounts against fractions worked out by hand from the definitions of the units, whatever the numbers and the units. */
@PropertyDefaults(tries = 200, edgeCases = EdgeCasesMode.NONE)
class QuantityLawsTest {
    /** What one of each unit is in the first of its kind, as a fraction; behind a plus, where its zero lies. From memory. */
    private static final Map<String, String> WORTH = new TreeMap<>();

    static {
        for (String line : List.of("mm 1", "cm 10", "m 1000", "km 1000000", "in 254/10", "ft 3048/10", "thou 254/10000", "mi 1609344", "cc 1", "mL 1", "L 1000", "m³ 1000000", "ft³ 28316846592/1000000",
                "US_gal 3785411784/1000000", "imp_gal 454609/100", "g 1", "kg 1000", "lb 45359237/100000", "N 1", "kgf 980665/100000", "lbf 44482216152605/10000000000000", "N·m 1",
                "lbf·ft 135581794833140040/100000000000000000", "lbf·in 11298482902761670/100000000000000000", "kgf·m 980665/100000", "kgf·cm 980665/10000000", "kPa 1000", "Pa 1", "hPa 100", "inHg 33863788/10000", "bar 100000",
                "psi 44482216152605/6451600000", "kgf/cm² 980665/10", "km/h 10/36", "mph 1609344/3600000", "m/s 1", "m/s² 1", "ft/s² 3048/10000", "°C 1+27315/100", "°F 5/9+45967/180", "K 1", "V 1", "A 1000", "mA 1",
                "Ω 1", "kΩ 1000", "W 1", "% 10000", "ppm 1", "mg/m³ 1", "s 1", "min 60", "h 3600", "d 86400", "m³/h 1", "m³/min 60", "m³/s 3600", "L/min 6/100", "ft³/min 169901079552/100000000000", "g/h 1",
                "rpm 1", "m² 1", "° 1", "months 1", "y 12", "times 1")) {
            String[] parts = line.split(" ");
            WORTH.put(parts[0].replace('_', ' '), parts[1]);
        }
    }

    private static BigFraction fraction(String text) {
        String[] parts = text.split("/");
        return new BigFraction(new BigInteger(parts[0]), parts.length == 1 ? BigInteger.ONE : new BigInteger(parts[1]));
    }

    private static BigFraction fraction(BigDecimal number) {
        BigDecimal plain = number.scale() < 0 ? number.setScale(0) : number;
        return new BigFraction(plain.unscaledValue(), BigInteger.TEN.pow(plain.scale()));
    }

    private static BigFraction step(Unit unit) {
        return fraction(WORTH.get(unit.symbol()).split("\\+")[0]);
    }

    private static BigFraction zero(Unit unit) {
        String[] parts = WORTH.get(unit.symbol()).split("\\+");
        return parts.length == 1 ? BigFraction.ZERO : fraction(parts[1]);
    }

    private static BigFraction amount(Quantity q) {
        return fraction(q.value()).multiply(step(q.unit())).add(zero(q.unit()));
    }

    private static BigFraction interval(Quantity q) {
        return fraction(q.value()).multiply(step(q.unit()));
    }

    private static BigDecimal sixteenDigits(BigFraction number) {
        return new BigDecimal(number.getNumerator()).divide(new BigDecimal(number.getDenominator()), MathContext.DECIMAL64);
    }

    @Test
    void everyUnitIsInTheList() {
        assertThat(WORTH.keySet()).containsExactlyInAnyOrderElementsOf(Arrays.stream(Unit.values()).map(Unit::symbol).toList());
    }

    private static Arbitrary<Unit> unitOf(Unit.Dimension dimension) {
        return Arbitraries.of(Arrays.stream(Unit.values()).filter(u -> u.dimension() == dimension).toList());
    }

    private static Arbitrary<BigDecimal> number() {
        return Arbitraries.bigDecimals().between(new BigDecimal("-100000"), new BigDecimal("100000")).ofScale(6)
                .flatMap(wide -> Arbitraries.integers().between(0, 6).map(places -> wide.setScale(places, RoundingMode.HALF_UP)));
    }

    private static Arbitrary<Quantity> of(Unit.Dimension dimension) {
        return Combinators.combine(number(), unitOf(dimension)).as(Quantity::new);
    }

    /** Three amounts of one kind; the second often the first in another unit, or a last digit beside it. */
    record Three(Quantity one, Quantity two, Quantity three) { }

    @Provide
    Arbitrary<Three> three() {
        return Arbitraries.of(Unit.Dimension.class).flatMap(kind -> Combinators.combine(of(kind), of(kind), of(kind), Arbitraries.integers().between(-2, 2)).as((one, two, three, beside) ->
                new Three(one, beside == 2 ? two : beside(one.to(two.unit()), beside), three)));
    }

    private static Quantity beside(Quantity q, int digits) {
        return new Quantity(q.value().add(BigDecimal.valueOf(digits).scaleByPowerOfTen(-q.value().scale())), q.unit());
    }

    @Property
    void comparesAsTheFractionsDo(@ForAll("three") Three q) {
        assertThat(Integer.signum(q.one.compareTo(q.two))).isEqualTo(amount(q.one).compareTo(amount(q.two)));
        assertThat(Integer.signum(q.two.compareTo(q.one))).isEqualTo(-amount(q.one).compareTo(amount(q.two)));
    }

    @Property
    void isInOneOrderWhateverTheUnits(@ForAll("three") Three q) {
        assertThat(q.one.compareTo(q.one)).isZero();
        Quantity low = q.one.compareTo(q.two) <= 0 ? q.one : q.two;
        Quantity high = q.one.compareTo(q.two) <= 0 ? q.two : q.one;
        if (high.compareTo(q.three) <= 0) {
            assertThat(low.compareTo(q.three)).isNotPositive();
        }
        if (q.three.compareTo(low) <= 0) {
            assertThat(q.three.compareTo(high)).isNotPositive();
        }
    }

    @Property
    void goesToAnotherUnitAndBack(@ForAll("three") Three q) {
        Unit other = q.two.unit();
        Quantity there = q.one.to(other);
        assertThat(there.value()).isEqualByComparingTo(other == q.one.unit() ? q.one.value() : sixteenDigits(amount(q.one).subtract(zero(other)).divide(step(other))));
        if (amount(there).equals(amount(q.one))) {
            assertThat(there.to(q.one.unit()).value()).isEqualByComparingTo(q.one.value());
        }
        // Each way costs at most half of the sixteenth digit of what stands there.
        BigFraction lost = amount(there.to(q.one.unit())).subtract(amount(q.one)).abs();
        BigFraction allowed = amount(q.one).abs().add(zero(other)).add(zero(q.one.unit())).multiply(fraction("1/1000000000000000"));
        assertThat(lost).isLessThanOrEqualTo(allowed);
        assertThat(q.one.differenceTo(other).value()).isEqualByComparingTo(other == q.one.unit() ? q.one.value() : sixteenDigits(interval(q.one).divide(step(other))));
    }

    @Property
    void addsAndTakesAway(@ForAll("three") Three q) {
        Quantity step = new Quantity(q.two.value(), q.one.unit());
        assertThat(q.one.plus(step).minus(step).value()).isEqualByComparingTo(q.one.value());
        assertThat(q.one.plus(q.two).compareTo(q.one)).isEqualTo(q.two.value().signum());
        assertThat(q.one.minus(q.two).compareTo(q.one)).isEqualTo(-q.two.value().signum());
    }

    /** A count is printed as the bare number, and has to be read with its word. */
    @Property
    void readsWhatItPrints(@ForAll("three") Three q) {
        String printed = q.one.unit() == Unit.TIMES ? q.one + " times" : q.one.toString();
        assertThat(Quantity.parse(printed)).isEqualTo(q.one);
        assertThat(Quantity.parse(q.one.number() + q.one.unit().symbol())).isEqualByComparingTo(q.one);
        Assume.that(q.two.value().signum() != 0 && q.one.unit() != Unit.TIMES && q.two.value().scale() <= 12 && q.two.value().precision() <= 12 && q.two.value().precision() - q.two.value().scale() <= 12);
        Measured measured = new Measured(q.one, q.two.abs());
        assertThat(Measured.parse(measured.toString())).isEqualTo(measured);
    }

    /** A range, a reading and its uncertainty, of one kind and in units of their own. */
    record Held(Bounds bounds, Measured reading, Bounds other) { }

    @Provide
    Arbitrary<Held> held() {
        return Arbitraries.of(Unit.Dimension.class).flatMap(kind -> {
            Arbitrary<Quantity> narrow = Combinators.combine(Arbitraries.integers().between(-40, 40), unitOf(kind)).as((tenths, unit) -> new Quantity(BigDecimal.valueOf(tenths, 1), unit));
            Arbitrary<Quantity> uncertainty = Combinators.combine(Arbitraries.integers().between(1, 30), unitOf(kind)).as((tenths, unit) -> new Quantity(BigDecimal.valueOf(tenths, 1), unit)).injectNull(0.1);
            Arbitrary<Bounds> bounds = Combinators.combine(narrow, Arbitraries.of(false, true), narrow, Arbitraries.of(false, true), Arbitraries.integers().between(1, 3))
                    .as((low, lowPasses, high, highPasses, ends) -> new Bounds(ends == 2 ? null : low, lowPasses, ends == 1 ? null : high, highPasses));
            return Combinators.combine(bounds, Combinators.combine(narrow, uncertainty).as(Measured::new), bounds, Arbitraries.integers().between(0, 9)).as(QuantityLawsTest::near);
        });
    }

    /** Now and then the reading lies on an end, or the other range has the same ends and allows what this one does not. */
    private static Held near(Bounds bounds, Measured reading, Bounds other, int how) {
        Quantity end = bounds.low() == null || how % 2 == 1 && bounds.high() != null ? bounds.high() : bounds.low();
        return new Held(bounds, how < 6 ? reading : new Measured(end, reading.uncertainty()), how < 8 ? other : new Bounds(bounds.low(), !bounds.lowPasses(), bounds.high(), !bounds.highPasses()));
    }

    @Property
    void standsWhereTheFractionsStand(@ForAll("held") Held h) {
        BigFraction value = amount(h.reading.value());
        BigFraction u = h.reading.uncertainty() == null ? null : interval(h.reading.uncertainty());
        BigFraction low = h.bounds.low() == null ? null : value.subtract(amount(h.bounds.low()));
        BigFraction high = h.bounds.high() == null ? null : amount(h.bounds.high()).subtract(value);
        boolean in = within(low, h.bounds.lowPasses()) && within(high, h.bounds.highPasses());
        boolean clear = u == null || (low == null || low.compareTo(u) > 0) && (high == null || high.compareTo(u) > 0);
        assertThat(h.bounds.contains(h.reading.value())).isEqualTo(in);
        assertThat(h.bounds.standing(h.reading)).isEqualTo(!in ? Standing.OUTSIDE : clear ? Standing.INSIDE : Standing.TOO_CLOSE);
        int margin = h.bounds.margin(h.reading.value()).value().signum();
        assertThat(in ? margin : -margin).isGreaterThanOrEqualTo(0);
    }

    private static boolean within(BigFraction distance, boolean atLimitPasses) {
        return distance == null || distance.compareTo(BigFraction.ZERO) > 0 || atLimitPasses && distance.equals(BigFraction.ZERO);
    }

    @Property
    void aWiderUncertaintyIsNeverABetterStanding(@ForAll("held") Held h) {
        Assume.that(h.reading.uncertainty() != null);
        Standing before = h.bounds.standing(h.reading);
        Standing after = h.bounds.standing(new Measured(h.reading.value(), h.reading.uncertainty().times(new BigDecimal("3"))));
        assertThat(after).isGreaterThanOrEqualTo(before);
        assertThat(before == Standing.OUTSIDE).isEqualTo(after == Standing.OUTSIDE);
    }

    @Property
    void allowsTogetherWhatBothAllow(@ForAll("held") Held h) {
        Bounds both = h.bounds.and(h.other);
        assertThat(both.contains(h.reading.value())).isEqualTo(h.bounds.contains(h.reading.value()) && h.other.contains(h.reading.value()));
        assertThat(both.standing(h.reading) == Standing.INSIDE).isEqualTo(h.bounds.standing(h.reading) == Standing.INSIDE && h.other.standing(h.reading) == Standing.INSIDE);
        if (h.bounds.within(h.other) && h.bounds.contains(h.reading.value())) {
            assertThat(h.other.contains(h.reading.value())).isTrue();
        }
    }
}
