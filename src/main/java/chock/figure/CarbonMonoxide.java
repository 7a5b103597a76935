package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Carbon monoxide by mass instead of by volume, at 101.325 kPa: 28.010 g/mol, 22.414 L/mol at 0 °C (from memory). Official
 * pairs are rounded, and some at 20 °C, some at 25 °C: a limit printed in one unit is never worked out from the other.
 */
public final class CarbonMonoxide {
    private static final BigDecimal GRAMS_PER_MOL = new BigDecimal("28.010");
    private static final BigDecimal LITRES_PER_MOL = new BigDecimal("22.414");
    private static final BigDecimal ZERO_CELSIUS = new BigDecimal("273.15");
    private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);
    private static final Quantity COLDEST = Quantity.of("-60", Unit.DEGREES_CELSIUS);
    private static final Quantity HOTTEST = Quantity.of("60", Unit.DEGREES_CELSIUS);

    private CarbonMonoxide() { }

    /**
     * ppm × 28.010 ÷ (22.414 × T ÷ 273.15).
     *
     * @param concentration 0 ppm to 1 000 000 ppm
     * @param temperature of the air, −60 °C to 60 °C
     * @return in mg/m³, to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity byMass(Quantity concentration, Quantity temperature) {
        BigDecimal ppm = Amounts.atLeast0("concentration", concentration, Unit.PPM);
        BigDecimal kelvins = Amounts.in("temperature", temperature, Unit.KELVINS);
        if (ppm.compareTo(MILLION) > 0) {
            throw new BadFigureInput("concentration is " + concentration + "; there is no more than the whole");
        }
        if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(HOTTEST) > 0) {
            throw new BadFigureInput("temperature is " + temperature + "; it lies between " + COLDEST + " and " + HOTTEST);
        }
        BigDecimal milligrams = ppm.multiply(GRAMS_PER_MOL).multiply(ZERO_CELSIUS).divide(LITRES_PER_MOL.multiply(kelvins), MathContext.DECIMAL64);
        return new Quantity(milligrams, Unit.MG_PER_M3);
    }
}
