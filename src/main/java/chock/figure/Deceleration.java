package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** Deceleration from two speeds and the distance between them. */
public final class Deceleration {
    /** 2 × 3.6²: turns km/h squared over metres into m/s². */
    private static final BigDecimal TWICE_KMH_SQUARED = new BigDecimal("25.92");

    private Deceleration() { }

    /**
     * Mean fully developed deceleration (from² − to²) ÷ (25.92 × over), speeds in km/h and distance in m (UN R78 Annex 3,
     * from memory). The standard takes {@code from} at 0.8 and {@code to} at 0.1 of the initial speed; with {@code to} at
     * standstill it is the mean over the whole stop.
     *
     * @param from higher speed, above {@code to}
     * @param to lower speed, at least zero
     * @param over distance covered between the two, above zero
     * @return m/s², to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity fullyDeveloped(Quantity from, Quantity to, Quantity over) {
        BigDecimal fast = Amounts.above0("from", from, Unit.KMH);
        BigDecimal slow = Amounts.in("to", to, Unit.KMH);
        BigDecimal metres = Amounts.above0("over", over, Unit.M);
        if (slow.signum() < 0 || slow.compareTo(fast) >= 0) {
            throw new BadFigureInput("to is " + to + "; it must be at least zero and below from, " + from);
        }
        BigDecimal squares = fast.multiply(fast).subtract(slow.multiply(slow));
        return new Quantity(squares.divide(TWICE_KMH_SQUARED.multiply(metres), MathContext.DECIMAL64), Unit.MPS2);
    }
}
