package chock.rulebook;

import java.util.List;
import java.util.Locale;

/**
 * Where a limit comes from.
 *
 * @param kind what gives it its weight
 * @param document title, or null for common practice
 * @param section section or page, or null
 * @param known how the value is known
 */
public record Source(Kind kind, String document, String section, Known known) {

    /** What gives a limit its weight. */
    public enum Kind {
        LAW, STANDARD, MAKER, HOUSE, PRACTICE;

        public String words() {
            return this == PRACTICE ? "common practice" : name().toLowerCase(Locale.ROOT);
        }
    }

    /** How a value is known. */
    public enum Known {
        READ("read in the official text"), READ_COPY("read in a copy"), MEMORY("from memory"), PRACTICE("common practice"),
        /** Only of a record, for the law of a place that is not in the rule book. */ RECORDED("as the record has it, not checked here");

        /** Those that a rule book may say of its own sources. */
        static final List<Known> OF_A_RULE_BOOK = List.of(READ, READ_COPY, MEMORY, PRACTICE);

        private final String words;

        Known(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** In one phrase: {@code 19VAC30-70-340 B 4, read in the official text}. */
    public String words() {
        if (kind == Kind.PRACTICE && document == null) {
            return "common practice";
        }
        String place = section == null ? document : document + ", " + section;
        return kind == Kind.MAKER || kind == Kind.HOUSE ? kind.words() + ": " + place : place + ", " + known.words();
    }
}
