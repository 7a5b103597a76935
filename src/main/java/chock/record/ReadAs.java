package chock.record;

import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Which part of a record is being written at this moment. What is written now is refused when it cannot be true, for its
 * writer still stands beside the machine. What is stored already stays readable under every later rule book: what cannot be
 * true in it is kept, marked, and counts for nothing.
 */
public final class ReadAs {
    /** A record that was stored before: nothing in it is refused for what it says. */
    public static final ReadAs STORED = new ReadAs(path -> false);

    /** A record that comes in as a whole, as an import does. */
    public static final ReadAs WRITTEN = new ReadAs(path -> true);

    private static final Pattern ENTRY = Pattern.compile("entries\\[(\\d+)].*");

    private final Predicate<String> written;

    private ReadAs(Predicate<String> written) {
        this.written = written;
    }

    /** A stored record with entries added: those from this one on, counted from 0, are being written. */
    public static ReadAs withEntriesFrom(int first) {
        return new ReadAs(path -> {
            Matcher entry = ENTRY.matcher(path);
            return entry.matches() && Integer.parseInt(entry.group(1)) >= first;
        });
    }

    /** A stored record with so many entries added among those it has, from this one on, counted from 0. */
    public static ReadAs withEntries(int first, int count) {
        return new ReadAs(path -> {
            Matcher entry = ENTRY.matcher(path);
            return entry.matches() && Integer.parseInt(entry.group(1)) >= first && Integer.parseInt(entry.group(1)) < first + count;
        });
    }

    /** A stored record of which these parts, such as {@code maker}, are being written anew. */
    public static ReadAs withParts(Set<String> parts) {
        Set<String> own = Set.copyOf(parts);
        return new ReadAs(path -> own.contains(path.split("[.\\[]", 2)[0]));
    }

    /** True when what stands at this path, such as {@code entries[12].is}, is being written now. */
    boolean isWritten(String path) {
        return written.test(path);
    }
}
