package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Carbon monoxide from a small carburetted engine at idle or warming up: displacement × revolutions ÷ (2 for a
 * four-stroke) × filling × share of carbon monoxide. The form and its assumed values are ours, no standard has them; they
 * lie on the safe side of the few measurements that were found.
 */
public final class CoSource {
    private static final BigDecimal SMALLEST = BigDecimal.valueOf(10);
    private static final BigDecimal LARGEST = BigDecimal.valueOf(3000);
    private static final BigDecimal CC_PER_LITRE = BigDecimal.valueOf(1000);
    private static final BigDecimal SLOWEST = BigDecimal.valueOf(500);
    private static final BigDecimal FASTEST = BigDecimal.valueOf(2500);
    private static final BigDecimal RICHEST = BigDecimal.valueOf(15);
    private static final BigDecimal FILLING_AT_IDLE = new BigDecimal("0.30");
    private static final BigDecimal FILLING_UNKNOWN = new BigDecimal("0.40");
    private static final BigDecimal REVOLUTIONS_UNKNOWN = BigDecimal.valueOf(1500);
    private static final BigDecimal SHARE_UNKNOWN = new BigDecimal("0.07");

    /** How often a cylinder fires. */
    public enum Cycle {
        TWO_STROKE(1), FOUR_STROKE(2);

        private final BigDecimal turnsPerCharge;

        Cycle(int turnsPerCharge) {
            this.turnsPerCharge = BigDecimal.valueOf(turnsPerCharge);
        }
    }

    private CoSource() { }

    /**
     * An engine nobody measured, cold, choked or blipped: 7 % at 1500 rpm with 40 % filling, which is 21 L/min per litre
     * for a four-stroke and 42 for a two-stroke.
     *
     * @param displacement of all cylinders together, 10 cc to 3000 cc
     * @return in L/min
     * @throws BadFigureInput when it is no volume or outside its range
     */
    public static Quantity unknown(Quantity displacement, Cycle cycle) {
        return of(displacement, cycle, REVOLUTIONS_UNKNOWN, FILLING_UNKNOWN, SHARE_UNKNOWN);
    }

    /**
     * An idling engine with its exhaust measured, 30 % filling. Above 2500 rpm this is refused: there the exhaust must be
     * caught at its source.
     *
     * @param displacement of all cylinders together, 10 cc to 3000 cc
     * @param revolutions while measured, 500 rpm to 2500 rpm
     * @param share of carbon monoxide in the dry exhaust, above zero, at most 15 %
     * @return in L/min
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity measured(Quantity displacement, Cycle cycle, Quantity revolutions, Quantity share) {
        BigDecimal rpm = Amounts.in("rpm", revolutions, Unit.RPM);
        if (rpm.compareTo(SLOWEST) < 0 || rpm.compareTo(FASTEST) > 0) {
            throw new BadFigureInput("rpm is " + revolutions + "; this is for an idling engine, " + SLOWEST + " to " + FASTEST + " rpm. Above that, catch the exhaust at its source");
        }
        BigDecimal percent = Amounts.above0("co", share, Unit.PER_CENT);
        if (percent.compareTo(RICHEST) > 0) {
            throw new BadFigureInput("co is " + share + "; no exhaust has more than " + RICHEST + " %");
        }
        return of(displacement, cycle, rpm, FILLING_AT_IDLE, percent.movePointLeft(2));
    }

    private static Quantity of(Quantity displacement, Cycle cycle, BigDecimal rpm, BigDecimal filling, BigDecimal share) {
        BigDecimal cc = Amounts.above0("displacement", displacement, Unit.CC);
        if (cc.compareTo(SMALLEST) < 0 || cc.compareTo(LARGEST) > 0) {
            throw new BadFigureInput("displacement is " + displacement + "; it lies between " + SMALLEST + " and " + LARGEST + " cc");
        }
        BigDecimal litres = cc.multiply(rpm).multiply(filling).multiply(share).divide(CC_PER_LITRE.multiply(cycle.turnsPerCharge), MathContext.DECIMAL64);
        return new Quantity(litres, Unit.LITRES_PER_MINUTE);
    }
}
