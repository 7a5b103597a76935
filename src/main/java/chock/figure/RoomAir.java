package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;

/**
 * Carbon monoxide in one well-defined room while an engine runs and after: V dC/dt = G + Q' (Cb − C), with Q' = Q ÷ K
 * (mass balance and K read at a university's ventilation course and in a handbook of ventilation). All in closed form, in
 * double: about 10⁻¹² of the result.
 *
 * <p>K is the mixing factor in the American convention, 1 for perfect mixing and 3 to 10 in ordinary rooms (range from
 * memory); it divides the airflow. Another convention multiplies by 1/K and writes K = 0.2 where this one writes 5: below
 * 1 is refused. The source is constant, which holds only while the engine still breathes fresh air, and the plume beside
 * the silencer is worse than any K.
 */
public final class RoomAir {
    private static final BigDecimal MILLION = BigDecimal.valueOf(1_000_000);

    private final double volume;
    private final double airflow;
    private final double generation;
    private final double background;

    private RoomAir(double volume, double airflow, double generation, double background) {
        this.volume = volume;
        this.airflow = airflow;
        this.generation = generation;
        this.background = background;
    }

    /**
     * A room with an engine in it.
     *
     * @param volume of air in the room, above zero
     * @param airflow of outdoor air, at least zero
     * @param generation of carbon monoxide, as a volume at room temperature, at least zero
     * @param kAcgih mixing factor, at least 1
     * @param background concentration in the outdoor air and in the room at the start, 0 ppm to 1 000 000 ppm
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static RoomAir of(Quantity volume, Quantity airflow, Quantity generation, BigDecimal kAcgih, Quantity background) {
        if (kAcgih.compareTo(BigDecimal.ONE) < 0) {
            throw new BadFigureInput("k-acgih is " + kAcgih + "; it divides the airflow and is at least 1, for perfect mixing."
                    + " Where a source multiplies by a factor below 1, write 1 ÷ that factor: 5 for 0.2");
        }
        return new RoomAir(Amounts.above0("volume", volume, Unit.CUBIC_METRES).doubleValue(),
                Amounts.atLeast0("airflow", airflow, Unit.CUBIC_METRES_PER_MINUTE).doubleValue() / kAcgih.doubleValue(),
                Amounts.atLeast0("generation", generation, Unit.CUBIC_METRES_PER_MINUTE).doubleValue(), fraction("background", background));
    }

    /**
     * Concentration after the engine ran this long, from the background.
     *
     * @param time at least zero
     * @return in ppm, to 12 significant digits
     * @throws BadFigureInput when the time is of the wrong kind or below zero, or more carbon monoxide than room came out
     */
    public Quantity after(Quantity time) {
        return ppm(after(background, Amounts.atLeast0("minutes", time, Unit.MINUTES).doubleValue(), true));
    }

    /** Concentration it settles at when the engine runs on, in ppm; empty when that is more carbon monoxide than room, or it never settles. */
    public Optional<Quantity> steady() {
        double settled = settled();
        return settled <= 1 ? Optional.of(ppm(settled)) : Optional.empty();
    }

    /**
     * How long the engine may run from the background until this concentration is reached.
     *
     * @param level 0 ppm to 1 000 000 ppm
     * @return minutes, zero when the background is there already; empty when it is never reached
     * @throws BadFigureInput when the level is of the wrong kind or outside its range
     */
    public Optional<Quantity> timeTo(Quantity level) {
        double target = fraction("level", level);
        if (target <= background) {
            return Optional.of(new Quantity(BigDecimal.ZERO, Unit.MINUTES));
        }
        double rise = target - background;
        // rise = (G ÷ Q') × (1 − e^(−λt)); without airflow rise = G t ÷ V
        double shareOfSettled = rise * airflow / generation;
        if (generation == 0 || shareOfSettled >= 1) {
            return Optional.empty();
        }
        return Optional.of(minutes(airflow == 0 ? rise * volume / generation : -StrictMath.log1p(-shareOfSettled) * volume / airflow));
    }

    /**
     * How long outdoor air without carbon monoxide takes to bring a concentration down: V ÷ Q × ln(from ÷ to), perfectly mixed.
     *
     * @param volume above zero
     * @param airflow of outdoor air, above zero; divide it by the mixing factor first
     * @param from concentration at the start, above {@code to}
     * @param to concentration wanted, above zero
     * @return minutes
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Quantity purge(Quantity volume, Quantity airflow, Quantity from, Quantity to) {
        double room = Amounts.above0("volume", volume, Unit.CUBIC_METRES).doubleValue();
        double flow = Amounts.above0("airflow", airflow, Unit.CUBIC_METRES_PER_MINUTE).doubleValue();
        Amounts.above0("to", to, Unit.PPM);
        double high = fraction("from", from);
        double low = fraction("to", to);
        if (low >= high) {
            throw new BadFigureInput("to is " + to + "; it must be below from, " + from);
        }
        return minutes(room / flow * StrictMath.log(high / low));
    }

    /** Concentration as a fraction after some minutes, from any other, with the engine running or not. */
    double after(double start, double minutes, boolean running) {
        double x = airflow * minutes / volume;
        return start + (background - start) * -StrictMath.expm1(-x) + (running ? generation * minutes / volume * mean(x) : 0);
    }

    /** Mean of the same over these minutes. */
    double mean(double start, double minutes, boolean running) {
        double x = airflow * minutes / volume;
        return start + (background - start) * (1 - mean(x)) + (running ? generation * minutes / volume * meanOfMean(x) : 0);
    }

    /** Share of the air exchanged per minute, λ. */
    double exchanged() {
        return airflow / volume;
    }

    double background() {
        return background;
    }

    /** (1 − e^(−x)) ÷ x, which is 1 for no airflow: so the sealed room needs no formula of its own. */
    private static double mean(double x) {
        return x == 0 ? 1 : -StrictMath.expm1(-x) / x;
    }

    /** (1 − mean(x)) ÷ x, which is 1/2 for no airflow; by its series where the difference would lose digits. */
    private static double meanOfMean(double x) {
        return x < 1e-3 ? 0.5 - x / 6 + x * x / 24 - x * x * x / 120 : (1 - mean(x)) / x;
    }

    private double settled() {
        return generation == 0 ? background : airflow == 0 ? Double.POSITIVE_INFINITY : background + generation / airflow;
    }

    private static double fraction(String what, Quantity concentration) {
        BigDecimal ppm = Amounts.atLeast0(what, concentration, Unit.PPM);
        if (ppm.compareTo(MILLION) > 0) {
            throw new BadFigureInput(what + " is " + concentration + "; there is no more than the whole");
        }
        return ppm.doubleValue() / 1e6;
    }

    static Quantity ppm(double fraction) {
        if (fraction > 1) {
            throw new BadFigureInput("this gives more carbon monoxide than the room holds air; look at volume, generation and minutes again");
        }
        return new Quantity(new BigDecimal(fraction * 1e6, new MathContext(12)), Unit.PPM);
    }

    private static Quantity minutes(double minutes) {
        return new Quantity(new BigDecimal(minutes, new MathContext(12)), Unit.MINUTES);
    }
}
