package chock.assess.facts;

import chock.figure.BadFigureInput;
import chock.figure.RunForecast;
import chock.figure.RunPlan;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Everything known of the air at a planned run: one room, one engine, one plan.
 *
 * @param room the room with the engine in it
 * @param plan minutes on and off, as written
 * @param basis where the assumed and measured quantities come from, in words
 * @param replaced the sentence about a reading that took the place of the prediction, or null
 * @param from what it rests on
 */
public record RunAir(RunForecast.Room room, String plan, List<String> basis, String replaced, List<Current> from) {

    public static RunAir predicted(Current volume, Current background, Current runs, RunInput airflow, RunInput mixing, RunInput generation) {
        List<Current> from = new ArrayList<>(List.of(volume, background, runs));
        Stream.of(airflow, mixing, generation).flatMap(input -> input.from().stream()).filter(current -> !from.contains(current)).forEach(from::add);
        return new RunAir(new RunForecast.Room(volume.measured(), airflow.value(), generation.value(), mixing.value(), background.measured()), runs.code(),
                Stream.of(airflow, mixing, generation).map(RunInput::says).toList(), null, List.copyOf(from));
    }

    /** The same, with the engine that explains a reading where that is above the prediction for the run it was taken in. */
    public RunAir after(Current peak, Current minutes) {
        List<Current> all = new ArrayList<>(from);
        all.add(peak);
        all.add(minutes);
        Optional<RunForecast.Room> explained;
        try {
            explained = room.explaining(peak.measured(), minutes.measured().value());
        } catch (BadFigureInput refused) {
            // A reading nobody can make sense of is no ground for the lower figure: nothing is predicted from it.
            return new RunAir(null, plan, basis, refused.getMessage(), List.copyOf(all));
        }
        String seen = peak.measured() + " at the end of a run of " + minutes.measured().value() + " (" + peak.id() + ")";
        return explained.map(other -> new RunAir(other, plan, basis, "The meter showed " + seen + ", more than predicted for it. The reading takes the place of the prediction.", List.copyOf(all)))
                .orElse(new RunAir(room, plan, basis, null, List.copyOf(all)));
    }

    /**
     * What the room does.
     *
     * @throws BadFigureInput when the plan is unreadable, or an amount cannot be
     */
    public RunForecast forecast() {
        if (room == null) {
            throw new BadFigureInput(replaced);
        }
        return new RunForecast(room, RunPlan.read(plan));
    }

    /** Whether it is a prediction alone, for the head of a finding. */
    public String how() {
        return replaced == null ? "predicted" : "carried over from a measured run, in place of the prediction";
    }

    /** The highest concentration, or empty when it cannot be predicted. */
    public Optional<Measured> peak() {
        try {
            return Optional.of(forecast().peak());
        } catch (BadFigureInput refused) {
            return Optional.empty();
        }
    }

    /** True unless the peak lies outside; what cannot be predicted lies nowhere. */
    public boolean staysWithin(Bounds bounds) {
        return peak().map(highest -> bounds.contains(highest.value())).orElse(true);
    }

    public Current[] sources() {
        return from.toArray(Current[]::new);
    }

    /** True when the engine ran for so long, on the day of the plan, and no run of the plan is as long. What cannot be read says nothing. */
    public static boolean isLongerThanPlanned(Evidence ran, Current runs) {
        if (!(ran.entry().is() instanceof Value.Amount amount) || !ran.entry().at().date().equals(runs.moment().date())) {
            return false;
        }
        try {
            return amount.measured().value().compareTo(new Quantity(RunPlan.read(runs.code()).longestRun(), Unit.MINUTES)) > 0;
        } catch (BadFigureInput unreadable) {
            return false;
        }
    }

    /** The fault of such a run. */
    public static Derived longerThanPlanned(Required required, Evidence ran, Current runs) {
        return Derived.faultIn(required, "the engine ran for " + ran.says() + " today, and no run of the plan " + runs.code() + " is as long", ran.id(), runs.id());
    }

    /** Answers whether the planned runs can be read. */
    public static Derived readable(Required required, Current runs) {
        try {
            RunPlan.read(runs.code());
            return Derived.met(required, "planned " + runs.code(), runs);
        } catch (BadFigureInput unreadable) {
            return Derived.missing(required, unreadable.getMessage(), runs);
        }
    }
}
