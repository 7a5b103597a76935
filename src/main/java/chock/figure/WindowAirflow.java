package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.stream.DoubleStream;

/**
 * Outdoor air through one open window or door: the smallest that four published models allow, none of them with credit for
 * more than they say. Air goes out at the top and in at the bottom of one opening, which leaves a third of what the
 * formula for two openings gives (read in the source of two building libraries); that formula used naively is three times
 * too generous. An open window is no proof of air: wind turns, people shut it.
 */
public final class WindowAirflow {
    private static final double GRAVITY = 9.80665;
    private static final BigDecimal LARGEST = BigDecimal.valueOf(100);
    private static final BigDecimal HIGHEST = BigDecimal.TEN;
    private static final BigDecimal STORM = BigDecimal.valueOf(30);
    private static final Quantity COLDEST = Quantity.of("-60", Unit.DEGREES_CELSIUS);
    private static final Quantity HOTTEST = Quantity.of("60", Unit.DEGREES_CELSIUS);

    private WindowAirflow() { }

    /**
     * The airflow to count on.
     *
     * @param area of the opening, above zero, at most 100 m²
     * @param height of the opening, above zero, at most 10 m
     * @param inside temperature of the room, −60 °C to 60 °C
     * @param outside temperature outdoors, −60 °C to 60 °C
     * @param wind speed, 0 to 30 m/s; zero where nobody vouches for it
     * @return in m³/h, to 12 significant digits (computed in double)
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity of(Quantity area, Quantity height, Quantity inside, Quantity outside, Quantity wind) {
        double a = within("area", area, Unit.SQUARE_METRES, LARGEST);
        double h = within("height", height, Unit.M, HIGHEST);
        double in = kelvins("inside", inside);
        double out = kelvins("outside", outside);
        BigDecimal speed = Amounts.atLeast0("wind", wind, Unit.MPS);
        if (speed.compareTo(STORM) > 0) {
            throw new BadFigureInput("wind is " + wind + "; it is at most " + STORM + " m/s");
        }
        double smallest = models(a, h, in, out, speed.doubleValue()).min().orElseThrow();
        return new Quantity(new BigDecimal(smallest * 3600, new MathContext(12)), Unit.CUBIC_METRES_PER_HOUR);
    }

    /** Each model in m³/s; area in m², height in m, temperatures in kelvins, wind in m/s. */
    private static DoubleStream models(double area, double height, double inside, double outside, double wind) {
        return DoubleStream.of(warrenParkins(area, height, inside, outside, wind), germanStandard(area, height, inside, outside, wind),
                europeanStandard(area, height, inside, outside, wind), largeOpening(area, height, inside, outside));
    }

    /** Warren and Parkins 1984, the larger of warmth and wind (read in the source of a building library). */
    static double warrenParkins(double area, double height, double inside, double outside, double wind) {
        double warmth = 0.61 / 3 * area * StrictMath.sqrt(GRAVITY * height * Math.abs(inside - outside) / ((inside + outside) / 2));
        return Math.max(warmth, 0.025 * area * wind);
    }

    /** DIN/TS 4108-8:2022 (read in the same place). */
    static double germanStandard(double area, double height, double inside, double outside, double wind) {
        double warmth = 0.61 / 3 * area * StrictMath.sqrt(GRAVITY * height * Math.abs(inside - outside) / outside);
        return StrictMath.hypot(warmth, 0.05 * area * wind);
    }

    /**
     * EN 16798-7 (read in the same place), air as dense as the reference. Its factor for people who shut windows, zero at
     * −5 °C and below, is left out: here the window is held open.
     */
    static double europeanStandard(double area, double height, double inside, double outside, double wind) {
        return area / 2 * StrictMath.sqrt(Math.max(0.001 * wind * wind, 0.0035 * height * Math.abs(inside - outside)));
    }

    /** A handbook's discharge coefficient for one large opening, 0.40 + 0.0045 × difference (read), with the third; no credit for wind. */
    static double largeOpening(double area, double height, double inside, double outside) {
        double difference = Math.abs(inside - outside);
        return (0.40 + 0.0045 * difference) / 3 * area * StrictMath.sqrt(GRAVITY * height * difference / Math.max(inside, outside));
    }

    private static double within(String what, Quantity amount, Unit unit, BigDecimal most) {
        BigDecimal number = Amounts.above0(what, amount, unit);
        if (number.compareTo(most) > 0) {
            throw new BadFigureInput(what + " is " + amount + "; it is at most " + most + " " + unit);
        }
        return number.doubleValue();
    }

    private static double kelvins(String what, Quantity temperature) {
        BigDecimal kelvins = Amounts.in(what, temperature, Unit.KELVINS);
        if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(HOTTEST) > 0) {
            throw new BadFigureInput(what + " is " + temperature + "; it lies between " + COLDEST + " and " + HOTTEST);
        }
        return kelvins.doubleValue();
    }
}
