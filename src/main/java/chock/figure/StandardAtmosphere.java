package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The standard atmosphere up to 11 000 m: 1013.25 hPa and 15 °C at sea level, 6.5 K less per kilometre, dry air (constants
 * read in copies; exponent 5.25588 from memory). Weather moves the true pressure by a few per cent.
 */
final class StandardAtmosphere {
    static final double SEA_LEVEL_HPA = 1013.25;
    private static final double SEA_LEVEL_KELVINS = 288.15;
    private static final double KELVINS_PER_METRE = 0.0065;
    private static final double EXPONENT = 5.25588;
    private static final Quantity LOWEST = Quantity.of("-500", Unit.M);
    private static final Quantity HIGHEST = Quantity.of("11000", Unit.M);

    private StandardAtmosphere() { }

    /**
     * Pressure in hPa, computed in double: a part in 10¹² at worst, rounded to 12 significant digits.
     *
     * @param altitude above sea level, −500 m to 11 000 m
     * @throws BadFigureInput when it is no length or outside its range
     */
    static Quantity pressure(Quantity altitude) {
        double ratio = kelvins(altitude) / SEA_LEVEL_KELVINS;
        return new Quantity(new BigDecimal(SEA_LEVEL_HPA * StrictMath.pow(ratio, EXPONENT), new MathContext(12)), Unit.HPA);
    }

    /** Temperature in kelvins; range as for the pressure. */
    static double kelvins(Quantity altitude) {
        BigDecimal metres = Amounts.in("altitude", altitude, Unit.M);
        if (altitude.compareTo(LOWEST) < 0 || altitude.compareTo(HIGHEST) > 0) {
            throw new BadFigureInput("altitude is " + altitude + "; it lies between " + LOWEST + " and " + HIGHEST);
        }
        return SEA_LEVEL_KELVINS - KELVINS_PER_METRE * metres.doubleValue();
    }
}
