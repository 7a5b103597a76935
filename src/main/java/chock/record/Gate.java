package chock.record;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** A decision about a machine. */
public enum Gate {
    FIRST_START, INDOOR_RUN, ROAD_TEST, ON_SHOW, HAND_OVER, NON_RUNNER;

    /** The id used in records, cards and reports, such as {@code road-test}. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<Gate> of(String id) {
        return Arrays.stream(values()).filter(g -> g.id().equals(id)).findFirst();
    }

    @Override
    public String toString() {
        return id();
    }
}
