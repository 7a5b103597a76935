package chock.record;

import chock.quantity.Quantity;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The law of the place where the machine will be ridden, as the record has it. Nobody but its readers vouches for it.
 *
 * @param limits numbers it sets
 * @param setsNone limits it was searched for without finding a number
 */
public record LocalLaw(List<Line> limits, List<Line> setsNone) {
    /** What a record has that says nothing of it. */
    public static final LocalLaw NONE = new LocalLaw(List.of(), List.of());

    /**
     * What it says of one limit.
     *
     * @param limit id of the limit
     * @param atLeast lowest allowed, or null
     * @param atMost highest allowed, or null; both are null where it sets no number
     * @param document title
     * @param section section, or where it was searched
     * @param asOf day of the text that was read
     * @param by id of the person who read it
     * @param secondedBy id of the person who read it as well, or null
     */
    public record Line(String limit, Quantity atLeast, Quantity atMost, String document, String section, LocalDate asOf, String by, String secondedBy) {
        /** True when two people have read it; else it settles nothing. */
        public boolean isSeconded() {
            return secondedBy != null;
        }
    }

    public boolean isEmpty() {
        return limits.isEmpty() && setsNone.isEmpty();
    }

    /** Every line, numbers first. */
    public List<Line> lines() {
        return Stream.concat(limits.stream(), setsNone.stream()).toList();
    }

    /** What it says of a limit. */
    public Optional<Line> of(String limit) {
        return lines().stream().filter(line -> line.limit().equals(limit)).findFirst();
    }
}
