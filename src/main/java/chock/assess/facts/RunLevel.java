package chock.assess.facts;

import chock.rulebook.LimitFor;

/**
 * A limit that the plan of a run under a roof is made by.
 *
 * @param name what it limits
 * @param limit the limit in force
 */
public record RunLevel(Name name, LimitFor limit) {

    /** What the levels limit. */
    public enum Name {
        CEILING, QUARTER_HOUR, QUARTER_HOUR_MASS, SHIFT, SHIFT_MASS,
        /** Temperature at which milligrams are counted. */ MASS_AT,
        /** The reading at which a run ends. */ STOP,
        /** The reading to start from and to come back at. */ START
    }
}
