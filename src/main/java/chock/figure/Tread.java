package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/** How much of the usable tread is left (common practice; no standard defines it). */
public final class Tread {

    private Tread() { }

    /**
     * Share of the usable depth that is left: (measured − limit) ÷ (new − limit), never below 0 % or above 100 %.
     *
     * @param measured depth at the shallowest point, a length of at least zero
     * @param asNew depth of this tyre when new, a length above the limit
     * @param limit depth at which the tyre is worn out, a length of at least zero
     * @return per cent, to 16 significant digits
     * @throws BadFigureInput when an amount is not a length, is below zero, or the new depth is not above the limit
     */
    public static Quantity left(Quantity measured, Quantity asNew, Quantity limit) {
        BigDecimal now = depth("measured", measured);
        BigDecimal full = depth("new", asNew);
        BigDecimal least = depth("limit", limit);
        if (full.compareTo(least) <= 0) {
            throw new BadFigureInput("new is " + asNew + ", which is not above limit " + limit + "; write the depth of the new tyre");
        }
        BigDecimal share = now.subtract(least).multiply(BigDecimal.valueOf(100)).divide(full.subtract(least), MathContext.DECIMAL64);
        return new Quantity(share.max(BigDecimal.ZERO).min(BigDecimal.valueOf(100)), Unit.PER_CENT);
    }

    private static BigDecimal depth(String what, Quantity depth) {
        BigDecimal mm = Amounts.in(what, depth, Unit.MM);
        if (mm.signum() < 0) {
            throw new BadFigureInput(what + " is " + depth + "; a depth is not below zero");
        }
        return mm;
    }
}
