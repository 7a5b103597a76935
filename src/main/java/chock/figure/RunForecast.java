package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * What a room does while an engine runs in it by a plan, and after. Every value is the one from the readings as they are,
 * and its uncertainty is how much worse it gets when each reading is off by its whole uncertainty to the bad side at once:
 * the worst case, since nobody knows how the errors of one workshop hang together. The room itself is {@link RoomAir}.
 */
public final class RunForecast {
    private static final double QUARTER_HOUR = 15;
    private static final BigDecimal STEP = new BigDecimal("0.25");
    private static final MathContext FINE = MathContext.DECIMAL64;

    private final Room room;
    private final RunPlan plan;
    private final Exposure likely;
    private final Exposure worst;

    /** @throws BadFigureInput when an amount of the room is of the wrong kind or outside its range */
    public RunForecast(Room room, RunPlan plan) {
        this.room = room;
        this.plan = plan;
        this.likely = Exposure.of(room.likely(), plan);
        this.worst = Exposure.of(room.worst(), plan);
    }

    /**
     * A room with an engine in it, each value with its uncertainty; without one it counts as exact.
     *
     * @param volume of air, above zero also when it is less by its uncertainty
     * @param airflow of outdoor air, at least zero
     * @param generation of carbon monoxide, as a volume at room temperature
     * @param mixing factor that divides the airflow, at least 1
     * @param background concentration outdoors and at the start
     */
    public record Room(Measured volume, Measured airflow, Measured generation, Measured mixing, Measured background) {

        RoomAir likely() {
            return RoomAir.of(volume.value(), airflow.value(), generation.value(), mixing.value().value(), background.value());
        }

        RoomAir worst() {
            return RoomAir.of(less(volume), less(airflow), more(generation), more(mixing).value(), more(background));
        }

        /**
         * The room with the engine that explains a reading, or empty when the prediction for that run is as high as the
         * reading or higher. Concentration above the background grows in proportion to what the engine gives, so the
         * rate is scaled by the two.
         *
         * @param peak what the meter showed at the end of a run from the background
         * @param minutes how long that run was, above zero
         * @throws BadFigureInput when an amount is of the wrong kind or outside its range
         */
        public Optional<Room> explaining(Measured peak, Quantity minutes) {
            Amounts.above0("run-minutes", minutes, Unit.MINUTES);
            Quantity predicted = likely().after(minutes);
            BigDecimal start = background.value().to(Unit.PPM).value();
            BigDecimal rise = predicted.value().subtract(start);
            BigDecimal seen = Amounts.atLeast0("peak", peak.value(), Unit.PPM).subtract(start);
            if (seen.compareTo(rise) <= 0) {
                return Optional.empty();
            }
            if (rise.signum() <= 0) {
                throw new BadFigureInput("the meter rose in a run that gives nothing by these figures; look at the engine's data again");
            }
            Quantity rate = generation.value().times(seen.divide(rise, FINE));
            Quantity most = more(generation).times(more(peak).to(Unit.PPM).value().subtract(start).divide(rise, FINE));
            return Optional.of(new Room(volume, airflow, new Measured(rate, above(most, rate)), mixing, background));
        }
    }

    /**
     * Outdoor air that leaks into a room with everything shut.
     *
     * @param volume of the room
     * @param change time in which its air changes once, above zero
     * @return in m³/h
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range
     */
    public static Measured closedRoom(Measured volume, Quantity change) {
        BigDecimal hours = Amounts.above0("change", change, Unit.HOURS);
        BigDecimal cubicMetres = Amounts.above0("volume", volume.value(), Unit.CUBIC_METRES);
        Quantity flow = new Quantity(cubicMetres.divide(hours, FINE), Unit.CUBIC_METRES_PER_HOUR);
        return new Measured(flow, volume.uncertainty() == null ? null
                : new Quantity(volume.uncertainty().differenceTo(Unit.CUBIC_METRES).value().divide(hours, FINE), Unit.CUBIC_METRES_PER_HOUR));
    }

    /**
     * Carbon monoxide from an idling engine whose exhaust was measured ({@link CoSource#measured}).
     *
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range, its uncertainty included
     */
    public static Measured generation(Quantity displacement, CoSource.Cycle cycle, Measured revolutions, Measured share) {
        Quantity rate = CoSource.measured(displacement, cycle, revolutions.value(), share.value());
        return new Measured(rate, above(CoSource.measured(displacement, cycle, more(revolutions), more(share)), rate));
    }

    /** A concentration by mass at this temperature ({@link CarbonMonoxide#byMass}). */
    public static Measured byMass(Measured concentration, Quantity temperature) {
        Quantity mass = CarbonMonoxide.byMass(concentration.value(), temperature);
        return new Measured(mass, concentration.uncertainty() == null ? null : CarbonMonoxide.byMass(concentration.uncertainty(), temperature));
    }

    /** Highest concentration at any moment. */
    public Measured peak() {
        return measured(likely.peak(), worst.peak());
    }

    /** Highest mean over 15 min. */
    public Measured quarterHour() {
        return measured(likely.max15Min(), worst.max15Min());
    }

    /** Mean over 8 h for somebody who stays in the room. */
    public Measured shift() {
        return measured(likely.twa8H(), worst.twa8H());
    }

    /** Concentration at the end of the last run, at its worst. */
    public Quantity atTheEnd() {
        return RoomAir.ppm(new Walk(plan).concentration);
    }

    /** Highest concentration at which a later run of the plan begins, at its worst; empty when there is one run only. */
    public Optional<Quantity> beforeLaterRuns() {
        double highest = -1;
        double at = 0;
        boolean ran = false;
        for (RunPlan.Phase phase : plan.phases()) {
            if (phase.running() && ran) {
                highest = Math.max(highest, new Walk(at).concentration);
            }
            ran |= phase.running();
            at += phase.minutes().doubleValue();
        }
        return highest < 0 ? Optional.empty() : Optional.of(RoomAir.ppm(highest));
    }

    /**
     * How long the room needs after the last run to come down to a level with the engine stopped, at its worst: badly mixed,
     * with the least air, and that air no cleaner than it was at the start. Zero when it is there already; empty when it
     * never gets there.
     */
    public Optional<Quantity> purge(Quantity level) {
        Quantity from = atTheEnd();
        if (from.compareTo(level) <= 0) {
            return Optional.of(new Quantity(BigDecimal.ZERO, Unit.MINUTES));
        }
        BigDecimal mixed = Amounts.atLeast0("airflow", less(room.airflow), Unit.CUBIC_METRES_PER_MINUTE).divide(more(room.mixing).value(), FINE);
        Quantity outdoors = more(room.background).to(Unit.PPM);
        if (mixed.signum() == 0 || outdoors.compareTo(level) >= 0) {
            return Optional.empty();
        }
        // what is above the outdoor air is carried off, as if that were clean
        return Optional.of(RoomAir.purge(less(room.volume), new Quantity(mixed, Unit.CUBIC_METRES_PER_MINUTE), from.minus(outdoors), level.to(Unit.PPM).minus(outdoors)));
    }

    /** How long the engine may run on from the start until this level is reached, at its worst; empty when it never is. */
    public Optional<Quantity> timeTo(Quantity level) {
        return room.worst().timeTo(level);
    }

    /**
     * The longest single run, in steps of a quarter of a minute, for which a condition holds that a longer run never
     * meets where a shorter one fails.
     *
     * @param atMost the longest looked at
     * @return minutes, zero when not even the shortest step will do
     */
    public static Quantity longest(Room room, Quantity atMost, Predicate<RunForecast> allowed) {
        int good = 0;
        int bad = Amounts.above0("at-most", atMost, Unit.MINUTES).divideToIntegralValue(STEP).intValueExact() + 1;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (holds(room, STEP.multiply(BigDecimal.valueOf(middle)), allowed)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return new Quantity(STEP.multiply(BigDecimal.valueOf(good)), Unit.MINUTES);
    }

    private static boolean holds(Room room, BigDecimal minutes, Predicate<RunForecast> allowed) {
        try {
            return allowed.test(new RunForecast(room, new RunPlan(List.of(new RunPlan.Phase(minutes, true)))));
        } catch (BadFigureInput tooMuch) {
            return false;
        }
    }

    /**
     * One moment of the course, at its worst.
     *
     * @param minutes from the start
     * @param ppm concentration
     * @param quarterHour mean over the 15 min before
     */
    public record Point(double minutes, double ppm, double quarterHour) { }

    /**
     * The course at its worst, for drawing, from the start through the plan and on without the engine.
     *
     * @param until minutes from the start, above zero
     * @param steps number of equal steps, at least one; the moments of switching come on top
     */
    public List<Point> course(double until, int steps) {
        List<Double> moments = new ArrayList<>();
        for (int i = 0; i <= steps; i++) {
            moments.add(until * i / steps);
        }
        double end = 0;
        for (RunPlan.Phase phase : plan.phases()) {
            end += phase.minutes().doubleValue();
            if (end < until) {
                moments.add(end);
            }
        }
        return moments.stream().distinct().sorted().map(this::at).toList();
    }

    private Point at(double minutes) {
        Walk now = new Walk(minutes);
        Walk before = new Walk(Math.max(0, minutes - QUARTER_HOUR));
        // before the start there was only the background
        double earlier = Math.max(0, QUARTER_HOUR - minutes) * room.worst().background();
        return new Point(minutes, now.concentration * 1e6, (earlier + now.breathed - before.breathed) / QUARTER_HOUR * 1e6);
    }

    /** The plan walked through up to some moment: the concentration there, and all that was breathed till then in minutes times concentration. */
    private final class Walk {
        private final RoomAir air = room.worst();
        private double concentration = air.background();
        private double breathed;

        Walk(double until) {
            double left = until;
            for (RunPlan.Phase phase : plan.phases()) {
                double minutes = Math.min(left, phase.minutes().doubleValue());
                go(minutes, phase.running());
                left -= minutes;
            }
            go(left, false);
        }

        /** Up to the end of the last run. */
        Walk(RunPlan plan) {
            int last = 0;
            for (int i = 0; i < plan.phases().size(); i++) {
                last = plan.phases().get(i).running() ? i : last;
            }
            plan.phases().subList(0, last + 1).forEach(phase -> go(phase.minutes().doubleValue(), phase.running()));
        }

        private void go(double minutes, boolean running) {
            breathed += minutes * air.mean(concentration, minutes, running);
            concentration = air.after(concentration, minutes, running);
        }
    }

    private static Measured measured(Quantity value, Quantity worse) {
        return new Measured(value, above(worse, value));
    }

    private static Quantity above(Quantity most, Quantity value) {
        Quantity difference = most.minus(value);
        return difference.value().signum() > 0 ? difference : null;
    }

    private static Quantity less(Measured measured) {
        Quantity least = measured.uncertainty() == null ? measured.value() : measured.value().minus(measured.uncertainty());
        // an airflow that may be less than nothing is nothing; a volume of nothing is refused where it is used
        return least.value().signum() < 0 ? new Quantity(BigDecimal.ZERO, least.unit()) : least;
    }

    private static Quantity more(Measured measured) {
        return measured.uncertainty() == null ? measured.value() : measured.value().plus(measured.uncertainty());
    }
}
