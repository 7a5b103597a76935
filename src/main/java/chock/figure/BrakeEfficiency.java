package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Braking force of one control as a share of the weight of machine and rider (GB inspection manual for motorcycles, 3.3;
 * read in a copy). Standard gravity 9.80665 m/s² (exact by definition, from memory).
 */
public final class BrakeEfficiency {
    private static final BigDecimal GRAVITY = new BigDecimal("9.80665");
    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

    private BrakeEfficiency() { }

    /**
     * Force ÷ (mass × 9.80665 m/s²).
     *
     * @param force total braking force of one control, at least zero; linked brakes: both wheels together
     * @param mass machine with rider as tested, above zero
     * @return per cent, to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity of(Quantity force, Quantity mass) {
        return of(new Measured(force, null), new Measured(mass, null)).value();
    }

    /** The same with the uncertainties of both readings carried through, see {@link Uncertainty}. */
    public static Measured of(Measured force, Measured mass) {
        BigDecimal newtons = Amounts.atLeast0("force", force.value(), Unit.NEWTONS);
        Measured weight = weight(mass);
        Quantity u = force.uncertainty() == null ? null : force.uncertainty().differenceTo(Unit.NEWTONS);
        return Uncertainty.quotient(new Measured(new Quantity(newtons, Unit.NEWTONS), u), weight, HUNDRED, Unit.PER_CENT);
    }

    private static Measured weight(Measured mass) {
        BigDecimal kg = Amounts.above0("mass", mass.value(), Unit.KG);
        Quantity u = mass.uncertainty() == null ? null : new Quantity(mass.uncertainty().differenceTo(Unit.KG).value().multiply(GRAVITY), Unit.NEWTONS);
        return new Measured(new Quantity(kg.multiply(GRAVITY), Unit.NEWTONS), u);
    }

    /**
     * Efficiency that a measured deceleration amounts to: deceleration ÷ 9.80665 m/s².
     *
     * @param deceleration at least zero
     * @return per cent, to 16 significant digits
     * @throws BadFigureInput when it is not a deceleration of at least zero
     */
    public static Quantity ofDeceleration(Quantity deceleration) {
        BigDecimal mps2 = Amounts.atLeast0("deceleration", deceleration, Unit.MPS2);
        return new Quantity(mps2.multiply(HUNDRED).divide(GRAVITY, MathContext.DECIMAL64), Unit.PER_CENT);
    }
}
