package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** What a tyre's pressure becomes at another temperature: gas law at fixed volume, on gauge plus atmosphere. */
public final class TyrePressure {
    /** Standard atmosphere in kPa (exact by definition, from memory). A gauge shows what is above it. */
    private static final BigDecimal ATMOSPHERE = new BigDecimal("101.325");
    private static final BigDecimal HIGHEST = new BigDecimal("1000");
    private static final Quantity COLDEST = Quantity.of("-60", Unit.DEGREES_CELSIUS);
    private static final Quantity HOTTEST = Quantity.of("150", Unit.DEGREES_CELSIUS);

    private TyrePressure() { }

    /**
     * Gauge pressure after the air in the tyre went from one temperature to another without a leak:
     * (p₂ + atmosphere) ÷ (p₁ + atmosphere) = T₂ ÷ T₁.
     *
     * @param pressure gauge pressure at {@code from}, 0 to 1000 kPa
     * @param from temperature of the air in the tyre then, −60 °C to 150 °C
     * @param to temperature of the air in the tyre afterwards, −60 °C to 150 °C
     * @return gauge pressure in the unit of {@code pressure}, to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range, or the tyre would be left flat
     */
    public static Quantity at(Quantity pressure, Quantity from, Quantity to) {
        BigDecimal gauge = Amounts.in("pressure", pressure, Unit.KPA);
        if (gauge.signum() < 0 || gauge.compareTo(HIGHEST) > 0) {
            throw new BadFigureInput("pressure is " + pressure + "; a tyre's gauge pressure lies between 0 and " + HIGHEST + " kPa");
        }
        BigDecimal after = gauge.add(ATMOSPHERE).multiply(kelvins("to", to)).divide(kelvins("from", from), MathContext.DECIMAL128).subtract(ATMOSPHERE);
        if (after.signum() < 0) {
            throw new BadFigureInput("at " + to + " no pressure above the atmosphere would be left in a tyre of " + pressure + " at " + from
                    + "; it would be flat and the law for a fixed volume no longer holds");
        }
        Quantity inUnit = new Quantity(after, Unit.KPA).to(pressure.unit());
        return new Quantity(inUnit.value().round(MathContext.DECIMAL64), pressure.unit());
    }

    private static BigDecimal kelvins(String what, Quantity temperature) {
        BigDecimal kelvins = Amounts.in(what, temperature, Unit.KELVINS);
        if (temperature.compareTo(COLDEST) < 0 || temperature.compareTo(HOTTEST) > 0) {
            throw new BadFigureInput(what + " is " + temperature + "; a tyre's temperature lies between " + COLDEST + " and " + HOTTEST);
        }
        return kelvins;
    }
}
