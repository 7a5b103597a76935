package chock.rehearse;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * What came of a rehearsal.
 *
 * @param files how many feature files were read
 * @param shown every scenario that ran, in the order of files and lines
 */
public record Rehearsed(int files, List<Shown> shown) {

    /** Why a step did not hold. */
    public enum Kind {
        /** The judgement is otherwise than expected. */ OTHERWISE,
        /** It names something nobody knows, or cannot be read. */ NOT_UNDERSTOOD,
        /** No step is written like this. */ UNKNOWN_STEP
    }

    /**
     * A step that did not hold.
     *
     * @param file its file
     * @param line its line
     * @param step the step with its keyword
     * @param kind why
     * @param found what was found instead, or what is wrong
     * @param instead lines that may stand there instead, the nearest first
     */
    public record Slip(String file, int line, String step, Kind kind, String found, List<String> instead) { }

    /**
     * One scenario that ran; of an outline, one row.
     *
     * @param slips the steps that did not hold
     * @param kept what it put together, or null when it did not hold or expects nothing
     */
    public record Shown(String file, int line, String name, List<Slip> slips, Scenario kept) implements Comparable<Shown> {
        /** True when every step held and at least one expected something. */
        public boolean holds() {
            return slips.isEmpty() && kept != null;
        }

        @Override
        public int compareTo(Shown other) {
            return Comparator.comparing(Shown::file).thenComparingInt(Shown::line).compare(this, other);
        }
    }

    /** True when something ran and all of it held. */
    public boolean holds() {
        return !shown.isEmpty() && shown.stream().allMatch(Shown::holds);
    }

    /** True when a step could not be made sense of. */
    public boolean hasUnreadable() {
        return shown.stream().flatMap(s -> s.slips.stream()).anyMatch(s -> s.kind != Kind.OTHERWISE);
    }

    /** The scenarios that held, as they were put together. */
    List<Scenario> scenarios() {
        return shown.stream().map(Shown::kept).filter(Objects::nonNull).toList();
    }
}
