package chock.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tech.units.indriya.function.Calculus;
import tech.units.indriya.function.RationalNumber;

/**
 * A number with its unit, kept in the unit it was written in. Compares exactly, whatever the units.
 *
 * @param value the number as written
 * @param unit its unit
 */
public record Quantity(BigDecimal value, Unit unit) implements Comparable<Quantity> {

    private static final Pattern WRITTEN = Pattern.compile(
            "([+-]?)\\s*(?:(\\d{1,9})\\s*/\\s*(\\d{1,6})|(\\d{1,12}(?:\\.\\d{1,12})?)(?:\\s+(\\d{1,6})\\s*/\\s*(\\d{1,6}))?)\\s*(\\D.*)?");
    private static final MathContext EXACT_ENOUGH = MathContext.DECIMAL64;

    public Quantity {
        Objects.requireNonNull(value);
        Objects.requireNonNull(unit);
    }

    public static Quantity of(String value, Unit unit) {
        return new Quantity(new BigDecimal(value), unit);
    }

    /**
     * Reads {@code 1.2 mm}, {@code 3/64 in}, {@code 1 1/4 in}, {@code 36psi}, {@code 14°F}, {@code 95 %}: at most twelve
     * digits before and after the point.
     *
     * @throws UnreadableQuantity when it is not a number and a known unit; the message says what to write
     */
    public static Quantity parse(String text) {
        String tidy = text.strip().replace('\u2212', '-').replace('\u00a0', ' ');
        Matcher m = WRITTEN.matcher(tidy);
        if (!m.matches()) {
            throw new UnreadableQuantity(text, "write a number and a unit, such as 1.2 mm, 3/64 in or 36 psi");
        }
        String spelled = m.group(7) == null ? "" : m.group(7);
        Unit unit = Unit.spelled(spelled).orElseThrow(() -> new UnreadableQuantity(text, unitAdvice(tidy, spelled.strip())));
        BigDecimal number = m.group(2) != null ? fraction(m.group(2), m.group(3), text) : new BigDecimal(m.group(4));
        if (m.group(5) != null) {
            if (number.scale() > 0) {
                throw new UnreadableQuantity(text, "write either decimals or a fraction, not both");
            }
            number = number.add(fraction(m.group(5), m.group(6), text));
        }
        return new Quantity(m.group(1).equals("-") ? number.negate() : number, unit);
    }

    private static String unitAdvice(String tidy, String spelled) {
        if (spelled.isEmpty()) {
            return "the unit is missing; write it behind the number, such as " + tidy + " mm";
        }
        if (spelled.matches(",\\d.*")) {
            return "write the decimals behind a point, such as 1.2 mm, and leave out commas between thousands";
        }
        return "'" + spelled + "' is not a unit this program knows" + Unit.almostSpelled(spelled).map(u -> "; perhaps " + u.symbol()).orElse("");
    }

    private static BigDecimal fraction(String above, String below, String text) {
        long divisor = Long.parseLong(below);
        if (divisor == 0 || Long.bitCount(divisor) != 1) {
            throw new UnreadableQuantity(text, "a fraction is in halves, quarters, eighths … of an inch; write other numbers as decimals");
        }
        return new BigDecimal(above).divide(BigDecimal.valueOf(divisor));
    }

    /** The same amount in another unit, to 16 significant digits. */
    public Quantity to(Unit other) {
        return unit == other ? this : new Quantity(decimal(exactIn(other)), other);
    }

    /** The same amount as a difference (an interval, an uncertainty) in another unit: no zero-point shift. */
    public Quantity differenceTo(Unit other) {
        if (unit == other) {
            return this;
        }
        return new Quantity(decimal(exactDifferenceIn(other)), other);
    }

    /** A ratio or a whole number, never rounded: the library rounds decimals on the way and keeps ratios exact. */
    private Number exactIn(Unit other) {
        return unit.converterTo(other).convert((Number) ratio(value));
    }

    private static RationalNumber ratio(BigDecimal number) {
        return number.scale() > 0 ? RationalNumber.of(number.unscaledValue(), BigInteger.TEN.pow(number.scale()))
                : RationalNumber.ofInteger(number.toBigIntegerExact());
    }

    private Number exactDifferenceIn(Unit other) {
        return Calculus.currentNumberSystem().subtract(exactIn(other), new Quantity(BigDecimal.ZERO, unit).exactIn(other));
    }

    private static BigDecimal decimal(Number number) {
        return number instanceof RationalNumber ratio
                ? new BigDecimal(ratio.getDividend()).divide(new BigDecimal(ratio.getDivisor()), EXACT_ENOUGH)
                : new BigDecimal(number.toString());
    }

    /** True when this lies above the other by more than the interval; exact, whatever the three units. */
    boolean isAboveByMoreThan(Quantity other, Quantity interval) {
        if (unit == other.unit && unit == interval.unit) {
            return value.subtract(other.value).compareTo(interval.value) > 0;
        }
        Number gap = Calculus.currentNumberSystem().subtract(exactIn(other.unit), ratio(other.value));
        return Calculus.currentNumberSystem().compare(gap, interval.exactDifferenceIn(other.unit)) > 0;
    }

    /** The sum in this unit; the other is taken as an interval. */
    public Quantity plus(Quantity other) {
        return new Quantity(value.add(other.differenceTo(unit).value), unit);
    }

    /** The difference in this unit; the other is taken as an interval where the units differ. A temperature in other degrees is brought {@link #to} this unit first. */
    public Quantity minus(Quantity other) {
        return new Quantity(value.subtract(other.differenceTo(unit).value), unit);
    }

    public Quantity times(BigDecimal factor) {
        return new Quantity(value.multiply(factor), unit);
    }

    public Quantity abs() {
        return new Quantity(value.abs(), unit);
    }

    /** This quantity with its number rounded to so many decimal places, half up. */
    public Quantity rounded(int places) {
        return new Quantity(value.setScale(places, RoundingMode.HALF_UP), unit);
    }

    /**
     * Exact, whatever the two units. 1.0 mm and 1.00 mm compare as the same amount and are not equal as records.
     *
     * @throws IllegalArgumentException when the units are not of one kind
     */
    @Override
    public int compareTo(Quantity other) {
        if (unit == other.unit) {
            return value.compareTo(other.value);
        }
        return Calculus.currentNumberSystem().compare(exactIn(other.unit), ratio(other.value));
    }

    /** The number without trailing zeros and without an exponent. */
    public String number() {
        BigDecimal plain = value.stripTrailingZeros();
        return (plain.scale() < 0 ? plain.setScale(0) : plain).toPlainString();
    }

    @Override
    public String toString() {
        String number = value.toPlainString();
        return switch (unit) {
            case DEGREES -> number + "°";
            case TIMES -> number;
            default -> number + " " + unit.symbol();
        };
    }
}
