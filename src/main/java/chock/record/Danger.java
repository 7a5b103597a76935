package chock.record;

import java.util.Locale;

/** What a defect can do, in the words of a record. Which gates a danger closes is a matter of the rule book. */
public enum Danger {
    FIRE, GAS, RUNAWAY, SEIZURE, BRAKE_LOSS, STEERING_LOSS, WHEEL_LOSS, LOCK_UP, GRIP_LOSS, RIDER_OFF, NOT_SEEN, SHOCK_BURN, CRUSH, STRANDED, PROOF, LEGAL, NONE;

    /** The word in a record, such as {@code brake-loss}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String toString() {
        return id();
    }
}
