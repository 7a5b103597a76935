package chock.rulebook;

import java.util.List;

/**
 * A run under a roof as the rule book writes it down: what stands at the head of every verdict, and the run in its order.
 *
 * @param caution what everybody must know first
 * @param parts the parts of the plan, in order
 */
public record RunSheet(List<String> caution, List<Part> parts) {

    /** Which runs a line is for. */
    public enum Only {
        /** Exhaust led outdoors by a hose. */ HOSE,
        /** Exhaust into the room. */ ROOM,
        /** Exhaust into the room, in several runs. */ SERIES
    }

    /** The figures a line may name in braces. */
    public enum Figure {
        PLANNED_RUN, LONGEST_RUN, HIGHEST, BETWEEN, STOP_LEVEL, START_LEVEL, PURGE, HOSE_SLIPS;

        public String id() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }

        /** How a line names it. */
        public String inBraces() {
            return "{" + id() + "}";
        }
    }

    /**
     * @param numbered whether the order matters
     * @param whenRefused whether it is shown also where the people or the figures refuse the run
     */
    public record Part(String id, String title, boolean numbered, boolean whenRefused, List<Line> lines) { }

    /**
     * @param say the words, with names of figures in braces
     * @param only the runs it is for, or null for all
     */
    public record Line(String say, Only only) { }
}
