package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Wind chill of 2001 as used in the United States and Canada (both formulas read in copies; ranges from memory). Riding
 * speed is wind: give road speed plus headwind. At −18 °F or lower skin freezes within 30 min (read in a copy).
 */
public final class WindChill {
    private static final Quantity WARMEST = Quantity.of("10", Unit.DEGREES_CELSIUS);
    private static final Quantity COLDEST = Quantity.of("-50", Unit.DEGREES_CELSIUS);
    private static final Quantity SLOWEST = Quantity.of("3", Unit.MPH);
    private static final Quantity FASTEST = Quantity.of("200", Unit.KMH);

    private WindChill() { }

    /**
     * How cold it feels on bare skin. Air given in °F goes through the printed °F formula, any other through the °C one;
     * the two differ by less than 0.1 °C. Above the 60 mph of the printed charts it is an extrapolation.
     *
     * @param air temperature of the air, −50 °C to 10 °C
     * @param speed of the air over the rider, above 3 mph, at most 200 km/h
     * @return in the unit of {@code air}, to 12 significant digits (computed in double, a part in 10¹² at worst)
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity of(Quantity air, Quantity speed) {
        Amounts.in("air", air, Unit.DEGREES_CELSIUS);
        Amounts.in("speed", speed, Unit.KMH);
        if (air.compareTo(WARMEST) > 0 || air.compareTo(COLDEST) < 0) {
            throw new BadFigureInput("air is " + air + "; wind chill is defined from " + COLDEST + " to " + WARMEST);
        }
        if (speed.compareTo(SLOWEST) <= 0 || speed.compareTo(FASTEST) > 0) {
            throw new BadFigureInput("speed is " + speed + "; wind chill is defined above " + SLOWEST + ", and here up to " + FASTEST);
        }
        if (air.unit() == Unit.DEGREES_FAHRENHEIT) {
            return felt(air, speed, Unit.DEGREES_FAHRENHEIT, Unit.MPH, 35.74, 0.6215, 35.75, 0.4275);
        }
        return felt(air, speed, Unit.DEGREES_CELSIUS, Unit.KMH, 13.12, 0.6215, 11.37, 0.3965).to(air.unit());
    }

    private static Quantity felt(Quantity air, Quantity speed, Unit degrees, Unit perHour, double base, double ofAir, double ofWind, double ofBoth) {
        double t = air.to(degrees).value().doubleValue();
        double v = StrictMath.pow(speed.to(perHour).value().doubleValue(), 0.16);
        return new Quantity(new BigDecimal(base + ofAir * t - ofWind * v + ofBoth * t * v, new MathContext(12)), degrees);
    }
}
