package chock.rulebook;

import chock.quantity.Quantity;
import chock.record.Machine;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The road test as a ride, as the rule book writes it down: for every machine, before anything is known of one.
 *
 * @param steps in the order they are ridden
 * @param restraints what holds the ride back on some machines
 * @param stop when the rider stops at once
 * @param back what is looked at on return
 */
public record RideSheet(List<Step> steps, List<Restraint> restraints, List<Line> stop, List<Line> back) {

    /** A machine to which a line or a restraint belongs. */
    public enum Only {
        COMBUSTION(m -> m.engine().cycle() != Machine.Cycle.ELECTRIC, end -> true),
        ELECTRIC(m -> m.engine().cycle() == Machine.Cycle.ELECTRIC, end -> true),
        TWO_STROKE(m -> m.engine().cycle() == Machine.Cycle.TWO_STROKE, end -> true),
        CHAIN_OR_BELT(m -> m.drive() == Machine.Drive.CHAIN || m.drive() == Machine.Drive.BELT, end -> true),
        NO_CHAIN(m -> !CHAIN_OR_BELT.fits(m), end -> true),
        SPOKES(m -> true, end -> end.wheel().spoked()),
        DISC_BRAKE(m -> true, end -> end.brake().type() == Machine.BrakeType.DISC),
        DRUM_BRAKE(m -> true, end -> end.brake().type() == Machine.BrakeType.DRUM),
        FLUID_BRAKE(m -> true, end -> end.brake().workedBy() == Machine.WorkedBy.HYDRAULIC);

        private final Predicate<Machine> whole;
        private final Predicate<Machine.End> end;

        Only(Predicate<Machine> whole, Predicate<Machine.End> end) {
            this.whole = whole;
            this.end = end;
        }

        public boolean fits(Machine machine) {
            return whole.test(machine) && machine.ends().stream().anyMatch(end);
        }

        /** True when what stands at this point is of this kind; a point that belongs to neither end goes with the machine. */
        public boolean fitsAt(String point, Machine machine) {
            return whole.test(machine) && machine.ends().stream().filter(e -> point.startsWith(e.name() + "-")).allMatch(end);
        }
    }

    /**
     * One thing to do or to look for.
     *
     * @param say what, with {@code {amount}} where the number goes; no figures in it
     * @param amount the number, or null when there is none
     * @param source where the number comes from; null exactly when there is none
     * @param only the machines it is for, or null for all
     * @param step of a restraint: the step at which it is done, or null when it holds for the whole ride
     */
    public record Line(String say, Quantity amount, Source source, Only only, String step) { }

    /** A speed not to be passed. */
    public record Ceiling(Quantity speed, Source source) { }

    /**
     * @param upTo null when nothing is ridden at this step
     * @param feel what to feel for
     */
    public record Step(String id, String title, Ceiling upTo, List<Line> doing, List<Line> feel) { }

    /**
     * What holds the ride back: fresh work that no later work of the kind {@code until} has settled, or a check that is
     * not met without one aspect.
     *
     * @param because in a sentence without full stop
     * @param only machines that can have it, or null for all
     * @param after the work, or empty
     * @param until the work that settles it, or null
     * @param check id of the check, or null
     * @param metWithout the aspect the check must be met without, or null
     * @param upTo the speed it allows, or null when it sets none
     * @param lines what it asks of the rider
     * @param back what it asks for on return
     */
    public record Restraint(String id, String because, Only only, List<After> after, String until, String check, String metWithout,
                            Ceiling upTo, List<Line> lines, List<Line> back) { }

    /** Work of these kinds on one of these points, above it or below it. */
    public record After(Set<String> works, Set<String> points) { }
}
