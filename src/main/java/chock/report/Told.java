package chock.report;

import java.util.ArrayList;
import java.util.List;

/**
 * One thing a paper says of a machine, with what it rests on. A paper says nothing else.
 *
 * @param says the words
 * @param from ids of entries, fields of the record ({@code machine/built}) or checks of the rule book ({@code check/brakes.bled}); never empty
 */
public record Told(String says, List<String> from) {

    public Told {
        if (from.isEmpty()) {
            throw new IllegalArgumentException("'" + says + "' rests on nothing");
        }
        from = List.copyOf(from);
    }

    static Told of(String says, String from) {
        return new Told(says, List.of(from));
    }

    /** From a field of the record. */
    static Told field(String path, Object value) {
        return of(String.valueOf(value), path);
    }

    /** From a check and the entries it rests on. */
    static Told check(String says, String check, List<String> entries) {
        List<String> from = new ArrayList<>(entries);
        from.add("check/" + check);
        return new Told(says, from);
    }

    /** What it rests on, in one word for a page. */
    public String trace() {
        return String.join(" ", from);
    }

    /** The entries among it, in words, or empty. */
    public String entries() {
        return String.join(", ", from.stream().filter(source -> !source.contains("/")).toList());
    }
}
