package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Expanded uncertainty (k = 2) carried through a difference and a quotient of two independent readings: root sum of
 * squares (JCGM 100 5.1.2, from memory). Two readings with one instrument share part of its error, which a difference and
 * a ratio cancel and a sum doubles: the first two then err on the safe side as they are, and the sum takes the plain sum
 * of the uncertainties, the worst case (JCGM 100 5.2.2, from memory). A reading without an uncertainty counts as exact.
 * Uncertainties of differences and quotients are rounded up to 16 significant digits.
 */
public final class Uncertainty {
    private static final MathContext FINE = MathContext.DECIMAL128;
    private static final MathContext UP = new MathContext(16, RoundingMode.UP);

    private Uncertainty() { }

    /**
     * The first less the second, in the unit of the first.
     *
     * @throws BadFigureInput when the units are not of one kind
     */
    public static Measured difference(Measured first, Measured second) {
        requireOneKind(first.value(), second.value());
        Unit unit = first.value().unit();
        Quantity value = first.value().minus(second.value().to(unit));
        BigDecimal u = rootOfSquares(in(unit, first.uncertainty()), in(unit, second.uncertainty()));
        return new Measured(value, u.signum() == 0 ? null : new Quantity(u, unit));
    }

    /**
     * The two together, in the unit of the first. Not for temperatures, whose zero is a convention.
     *
     * @throws BadFigureInput when the units are not of one kind, or are temperatures
     */
    public static Measured sum(Measured first, Measured second) {
        requireOneKind(first.value(), second.value());
        requireTrueZero(first.value(), "temperatures have no sum; compare their difference");
        Unit unit = first.value().unit();
        BigDecimal u = in(unit, first.uncertainty()).add(in(unit, second.uncertainty()));
        return new Measured(first.value().plus(second.value()), u.signum() == 0 ? null : new Quantity(u, unit));
    }

    /**
     * The first over the second, in per cent. Not for temperatures, whose zero is a convention.
     *
     * @throws BadFigureInput when the units are not of one kind, are temperatures, or the second is not above zero
     */
    public static Measured ratio(Measured first, Measured second) {
        requireOneKind(first.value(), second.value());
        requireTrueZero(first.value(), "temperatures have no ratio; compare their difference");
        Unit unit = first.value().unit();
        return quotient(first, new Measured(second.value().to(unit), second.uncertainty() == null ? null : second.uncertainty().differenceTo(unit)),
                new BigDecimal(100), Unit.PER_CENT);
    }

    /**
     * The first over the second, both taken in their own units, times a factor without uncertainty, in the unit that results.
     *
     * @throws BadFigureInput when the second is not above zero
     */
    public static Measured quotient(Measured first, Measured second, BigDecimal factor, Unit unit) {
        BigDecimal below = second.value().value();
        if (below.signum() <= 0) {
            throw new BadFigureInput(second.value() + " cannot be divided by; it must be above zero");
        }
        BigDecimal value = first.value().value().multiply(factor).divide(below, FINE);
        // U² = (f·ua/b)² + (q·ub/b)²: the relative form would divide by a reading that may be zero
        BigDecimal fromFirst = in(first.value().unit(), first.uncertainty()).multiply(factor).divide(below, FINE);
        BigDecimal fromSecond = in(second.value().unit(), second.uncertainty()).multiply(value).divide(below, FINE);
        BigDecimal u = rootOfSquares(fromFirst, fromSecond);
        return new Measured(new Quantity(value.round(MathContext.DECIMAL64), unit), u.signum() == 0 ? null : new Quantity(u, unit));
    }

    private static BigDecimal rootOfSquares(BigDecimal a, BigDecimal b) {
        return a.multiply(a).add(b.multiply(b)).sqrt(UP);
    }

    private static BigDecimal in(Unit unit, Quantity uncertainty) {
        return uncertainty == null ? BigDecimal.ZERO : uncertainty.differenceTo(unit).value();
    }

    private static void requireTrueZero(Quantity amount, String otherwise) {
        if (amount.unit().dimension() == Unit.Dimension.TEMPERATURE) {
            throw new BadFigureInput(otherwise);
        }
    }

    private static void requireOneKind(Quantity first, Quantity second) {
        if (first.unit().dimension() != second.unit().dimension()) {
            throw new BadFigureInput(first + " and " + second + " are not of one kind; give both as " + first.unit().dimension().words());
        }
    }
}
