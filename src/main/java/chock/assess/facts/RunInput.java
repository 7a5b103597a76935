package chock.assess.facts;

import chock.figure.BadFigureInput;
import chock.quantity.Measured;
import java.util.List;
import java.util.function.Supplier;

/**
 * One quantity that the prediction of a run under a roof rests on.
 *
 * @param kind which one
 * @param value the quantity, or null when it could not be worked out
 * @param says where it comes from, or why it could not be worked out
 * @param from what it was worked out from; empty when it is assumed
 */
public record RunInput(Kind kind, Measured value, String says, List<Current> from) {

    /** What a prediction takes besides volume, background and plan. */
    public enum Kind {
        /** Outdoor air into the room. */ AIRFLOW,
        /** The factor that divides the airflow. */ MIXING,
        /** Carbon monoxide from the engine. */ GENERATION
    }

    public static RunInput of(Kind kind, Measured value, String says, Current... from) {
        return new RunInput(kind, value, says, List.of(from));
    }

    /** From a computation; what it refuses is not known, and the refusal says why. */
    public static RunInput worked(Kind kind, Supplier<Measured> computation, String says, Current... from) {
        try {
            return of(kind, computation.get(), says, from);
        } catch (BadFigureInput refused) {
            return new RunInput(kind, null, refused.getMessage(), List.of(from));
        }
    }

    public boolean known() {
        return value != null;
    }

    /** Answers the check that asked for it: met when it is known, else missing. */
    public Derived answer(Required required) {
        Current[] all = from.toArray(Current[]::new);
        return known() ? Derived.met(required, says, all) : Derived.missing(required, says, all);
    }
}
