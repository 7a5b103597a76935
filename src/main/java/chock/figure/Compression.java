package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;

/**
 * Compression readings, made comparable. Three rules are called "spread" in manuals and are not the same test: lowest over
 * highest, highest less lowest, and highest less lowest over highest; 1050 and 800 kPa pass a limit of 75 % for the first
 * and fail 10 % for the third.
 */
public final class Compression {
    private static final BigDecimal SEA_LEVEL = new BigDecimal("1013.25");
    private static final MathContext UP = new MathContext(16, RoundingMode.UP);

    private Compression() { }

    /**
     * What the gauge would show at sea level: reading × 1013.25 hPa ÷ pressure of the standard atmosphere at the altitude.
     * The end pressure is a multiple of the ambient pressure, so the gauge reading is too: (pg + p₀) × p/p₀ − p = pg × p/p₀.
     * No temperature enters: an ideal adiabatic end pressure does not depend on it.
     *
     * @param reading gauge pressure, at least zero
     * @param altitude above sea level, −500 m to 11 000 m; the uncertainty of the weather is not in the result
     * @return in the unit of {@code reading}, to 12 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Measured atSeaLevel(Measured reading, Quantity altitude) {
        requireReading(reading);
        BigDecimal there = StandardAtmosphere.pressure(altitude).value();
        Unit unit = reading.value().unit();
        BigDecimal value = reading.value().value().multiply(SEA_LEVEL).divide(there, new MathContext(12));
        Quantity u = reading.uncertainty() == null ? null
                : new Quantity(reading.uncertainty().differenceTo(unit).value().multiply(SEA_LEVEL).divide(there, UP), unit);
        return new Measured(new Quantity(value, unit), u);
    }

    /**
     * Highest less lowest, with the uncertainties of these two (see {@link Uncertainty#difference}).
     *
     * @param readings one per cylinder, two at least, each at least zero
     * @return in the unit of the highest reading
     * @throws BadFigureInput when there are fewer than two, or one is of the wrong kind or below zero
     */
    public static Measured spread(List<Measured> readings) {
        requireReadings(readings);
        return Uncertainty.difference(highest(readings), lowest(readings));
    }

    /**
     * Lowest over highest in per cent, with the uncertainties of these two (see {@link Uncertainty#ratio}).
     *
     * @param readings one per cylinder, two at least, each at least zero and one of them above it
     * @throws BadFigureInput when there are fewer than two, one is of the wrong kind or below zero, or all are zero
     */
    public static Measured lowestOfHighest(List<Measured> readings) {
        requireReadings(readings);
        return Uncertainty.ratio(lowest(readings), highest(readings));
    }

    private static Measured lowest(List<Measured> readings) {
        return readings.stream().min(Comparator.comparing(Measured::value)).orElseThrow();
    }

    private static Measured highest(List<Measured> readings) {
        return readings.stream().max(Comparator.comparing(Measured::value)).orElseThrow();
    }

    private static void requireReadings(List<Measured> readings) {
        if (readings.size() < 2) {
            throw new BadFigureInput("readings are " + readings.size() + "; a spread needs two cylinders or more");
        }
        readings.forEach(Compression::requireReading);
    }

    private static void requireReading(Measured reading) {
        Amounts.atLeast0("reading", reading.value(), Unit.KPA);
    }
}
