package chock.figure;

import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Probability that what was measured really lies within its limits, for a normal distribution about the reading (JCGM 106,
 * section 7, from memory). The four-state rule of this program does not use it; it shows how much a doubt is worth.
 */
public final class Conformity {

    private Conformity() { }

    /**
     * Φ((high − y) ÷ u) − Φ((low − y) ÷ u), an open end counting as 1 and 0.
     *
     * @param measured the reading with its expanded uncertainty U; the standard uncertainty u is half of it
     * @param bounds the limits, of the same kind
     * @return per cent, to 12 decimal places (computed in double, 10⁻¹³ at worst)
     * @throws BadFigureInput when the reading has no uncertainty above zero, or reading and bounds are not of one kind
     */
    public static Quantity probability(Measured measured, Bounds bounds) {
        Unit unit = measured.value().unit();
        if (measured.uncertainty() == null) {
            throw new BadFigureInput(measured.value() + " has no uncertainty; write the expanded one (k = 2)");
        }
        double u = Amounts.difference("uncertainty", measured.uncertainty(), unit).doubleValue() / 2;
        if (u <= 0) {
            throw new BadFigureInput("uncertainty is " + measured.uncertainty() + "; it must be above zero");
        }
        double above = bounds.low() == null ? 1 : normal(measured.value().value().subtract(Amounts.in("limit", bounds.low(), unit)).doubleValue() / u);
        double below = bounds.high() == null ? 1 : normal(Amounts.in("limit", bounds.high(), unit).subtract(measured.value().value()).doubleValue() / u);
        // P(above low and below high) = P(above) + P(below) − 1, since it is always one or the other
        double probability = bounds.low() == null ? below : bounds.high() == null ? above : Math.max(0, above + below - 1);
        return new Quantity(new BigDecimal(100 * probability).setScale(12, RoundingMode.HALF_EVEN), Unit.PER_CENT);
    }

    /**
     * Φ: share of a standard normal distribution below z, by the series φ(z) × (z + z³/3 + z⁵/(3·5) + …) (from memory),
     * to 10⁻¹⁵. Beyond 8 nothing is left of it at this accuracy.
     */
    static double normal(double z) {
        if (z > 8 || z < -8) {
            return z > 0 ? 1 : 0;
        }
        double sum = z;
        double term = z;
        for (int odd = 3; Math.abs(term) > 1e-18 * Math.abs(sum); odd += 2) {
            term *= z * z / odd;
            sum += term;
        }
        return 0.5 + sum * StrictMath.exp(-z * z / 2) / StrictMath.sqrt(2 * Math.PI);
    }
}
