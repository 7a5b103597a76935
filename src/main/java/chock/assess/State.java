package chock.assess;

import java.util.Locale;

/** The outcome of a check, worst first. */
public enum State {
    /** Outside the limit, or in bad condition. */ FAULT,
    /** Inside the limit by no more than the measuring uncertainty, or readings that disagree. */ DOUBT,
    /** Proven once; since undone, too old, or its instrument was not in calibration. */ STALE,
    /** Nothing that counts was recorded. */ MISSING,
    /** Current evidence proves it. */ MET;

    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }
}
