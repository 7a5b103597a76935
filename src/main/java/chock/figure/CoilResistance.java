package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Resistance of a copper winding brought to the 20 °C that limits are printed for. Temperature coefficient of annealed
 * copper 0.00393 per kelvin at 20 °C (read in an instrument maker's manual). Not for a secondary measured through its cap:
 * the resistor in the cap is not copper.
 */
public final class CoilResistance {
    private static final BigDecimal COPPER = new BigDecimal("0.00393");
    private static final BigDecimal TWENTY = BigDecimal.valueOf(20);
    private static final Quantity COLDEST = Quantity.of("-40", Unit.DEGREES_CELSIUS);
    private static final Quantity HOTTEST = Quantity.of("150", Unit.DEGREES_CELSIUS);
    private static final MathContext UP = new MathContext(16, RoundingMode.UP);

    private CoilResistance() { }

    /**
     * R ÷ (1 + 0.00393 × (t − 20 °C)), with the uncertainties of both readings carried through.
     *
     * @param resistance of the winding alone, leads subtracted, at least zero
     * @param temperature of the winding itself, −40 °C to 150 °C
     * @return in the unit of {@code resistance}, to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Measured at20(Measured resistance, Measured temperature) {
        BigDecimal celsius = Amounts.in("temperature", temperature.value(), Unit.DEGREES_CELSIUS);
        Amounts.atLeast0("resistance", resistance.value(), Unit.OHMS);
        if (temperature.value().compareTo(COLDEST) < 0 || temperature.value().compareTo(HOTTEST) > 0) {
            throw new BadFigureInput("temperature is " + temperature.value() + "; a coil's lies between " + COLDEST + " and " + HOTTEST);
        }
        Unit unit = resistance.value().unit();
        BigDecimal factor = BigDecimal.ONE.add(COPPER.multiply(celsius.subtract(TWENTY)));
        BigDecimal value = resistance.value().value().divide(factor, MathContext.DECIMAL128);
        // dR20/dR = 1 ÷ factor; dR20/dt = −R20 × 0.00393 ÷ factor
        BigDecimal fromResistance = resistance.uncertainty() == null ? BigDecimal.ZERO
                : resistance.uncertainty().differenceTo(unit).value().divide(factor, MathContext.DECIMAL128);
        BigDecimal fromTemperature = temperature.uncertainty() == null ? BigDecimal.ZERO
                : temperature.uncertainty().differenceTo(Unit.KELVINS).value().multiply(value).multiply(COPPER).divide(factor, MathContext.DECIMAL128);
        BigDecimal u = fromResistance.pow(2).add(fromTemperature.pow(2)).sqrt(UP);
        return new Measured(new Quantity(value.round(MathContext.DECIMAL64), unit), u.signum() == 0 ? null : new Quantity(u, unit));
    }
}
