package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;

/**
 * Carbon monoxide taken up by the blood: the non-linear equation of Coburn, Forster and Kane with the constants of
 * Peterson and Stewart 1970 (from memory), starting at 0.75 %. It describes a healthy adult; a child or a sick heart is
 * hurt earlier.
 */
public final class Carboxyhaemoglobin {
    private static final double START = 0.0075;
    /** Blood's capacity for oxygen or carbon monoxide, mL/mL. */
    private static final double CAPACITY = 0.2;
    /** How much rather blood binds carbon monoxide than oxygen. */
    private static final double PREFERENCE = 218;
    private static final double OXYGEN_MMHG = 100;
    /** Atmosphere less the water vapour of the lung, mmHg. */
    private static final double DRY_LUNG_MMHG = 713;
    private static final double BLOOD_ML = 5500;
    /** What the body makes itself, mL/min. */
    private static final double OWN_ML_PER_MINUTE = 0.007;
    private static final BigDecimal MOST = BigDecimal.valueOf(100_000);
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1440);

    /** How hard somebody breathes: diffusing capacity in mL/min/mmHg and ventilation in mL/min. */
    public enum Activity {
        /** Sitting. */ REST(30, 6_000),
        /** Standing at the bench. */ LIGHT(30, 12_000),
        /** Pushing a machine. */ HEAVY(40, 20_000);

        private final double resistance;

        Activity(double diffusing, double ventilation) {
            this.resistance = 1 / diffusing + DRY_LUNG_MMHG / ventilation;
        }
    }

    private Carboxyhaemoglobin() { }

    /**
     * Share of haemoglobin bound to carbon monoxide after breathing it.
     *
     * @param concentration 0 ppm to 100 000 ppm
     * @param time 0 to 24 h
     * @param activity meanwhile
     * @return per cent, to 10 significant digits (solved in double, a part in 10¹¹ at worst)
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity after(Quantity concentration, Quantity time, Activity activity) {
        BigDecimal ppm = Amounts.atLeast0("ppm", concentration, Unit.PPM);
        BigDecimal minutes = Amounts.atLeast0("minutes", time, Unit.MINUTES);
        if (ppm.compareTo(MOST) > 0) {
            throw new BadFigureInput("ppm is " + concentration + "; the equation is used up to " + MOST + " ppm");
        }
        if (minutes.compareTo(LONGEST) > 0) {
            throw new BadFigureInput("minutes is " + time + "; the equation is used up to 24 h");
        }
        double inhaled = ppm.doubleValue() * 1e-6 * DRY_LUNG_MMHG;
        double uptake = OWN_ML_PER_MINUTE / BLOOD_ML + inhaled / (BLOOD_ML * activity.resistance);
        double release = OXYGEN_MMHG / (PREFERENCE * BLOOD_ML * activity.resistance);
        return new Quantity(new BigDecimal(100 * bound(uptake, release, minutes.doubleValue()) / CAPACITY, new MathContext(10)), Unit.PER_CENT);
    }

    /**
     * The equation is dx/dt = uptake − release × x ÷ (capacity − x). With k = uptake + release and the settled value
     * s = capacity × uptake ÷ k it becomes dx/dt = k (s − x) ÷ (capacity − x), whose integral is
     * (x − x₀) + (capacity − s) × q = k t, q = −ln((s − x) ÷ (s − x₀)). The left side only grows with q, so halving finds it.
     */
    private static double bound(double uptake, double release, double minutes) {
        double start = START * CAPACITY;
        double k = uptake + release;
        double settled = CAPACITY * uptake / k;
        double low = 0;
        double high = k * minutes / (CAPACITY - Math.max(settled, start));
        for (int halving = 0; halving < 100; halving++) {
            double q = (low + high) / 2;
            if ((start - settled) * StrictMath.expm1(-q) + (CAPACITY - settled) * q < k * minutes) {
                low = q;
            } else {
                high = q;
            }
        }
        return settled - (settled - start) * StrictMath.exp(-low);
    }
}
