package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;

/** What every computation here first asks of its amounts. */
final class Amounts {

    private Amounts() { }

    /** The number in this unit, when it is of the right kind and above zero. */
    static BigDecimal above0(String what, Quantity amount, Unit unit) {
        BigDecimal number = in(what, amount, unit);
        if (number.signum() <= 0) {
            throw new BadFigureInput(what + " is " + amount + "; it must be above zero");
        }
        return number;
    }

    /** The number in this unit, when it is of the right kind and not below zero. */
    static BigDecimal atLeast0(String what, Quantity amount, Unit unit) {
        BigDecimal number = in(what, amount, unit);
        if (number.signum() < 0) {
            throw new BadFigureInput(what + " is " + amount + "; it must be at least zero");
        }
        return number;
    }

    /** The number in this unit, when it is of the right kind. */
    static BigDecimal in(String what, Quantity amount, Unit unit) {
        if (amount.unit().dimension() != unit.dimension()) {
            throw new BadFigureInput(wrongKind(what, amount, unit.dimension()));
        }
        return amount.to(unit).value();
    }

    /** As {@link #in}, for an uncertainty or another interval: no zero-point shift. */
    static BigDecimal difference(String what, Quantity interval, Unit unit) {
        if (interval.unit().dimension() != unit.dimension()) {
            throw new BadFigureInput(wrongKind(what, interval, unit.dimension()));
        }
        return interval.differenceTo(unit).value();
    }

    static String wrongKind(String what, Quantity amount, Unit.Dimension wanted) {
        return what + " is " + amount + ", which is not a unit of " + wanted.words() + "; write one of " + String.join(", ", Unit.symbolsOf(wanted))
                + (wanted == Unit.Dimension.FORCE && amount.unit().dimension() == Unit.Dimension.MASS ? " (a roller tester that prints kg means kgf)" : "");
    }
}
