package chock.record;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everything found wrong in one file, each with its line. */
final class Faults {
    private static final int LONGEST_QUOTE = 60;

    private final String file;
    private final Map<String, Integer> lines;
    private final List<Fault> all = new ArrayList<>();
    private final Set<String> paths = new HashSet<>();

    /** @param lines line of each path written in the file; may grow while faults are added */
    Faults(String file, Map<String, Integer> lines) {
        this.file = file;
        this.lines = lines;
    }

    /** What was found so far, to go on from. */
    Faults(Faults sofar) {
        this(sofar.file, sofar.lines);
        all.addAll(sofar.all);
        paths.addAll(sofar.paths);
    }

    void add(String path, String what, String advice) {
        add(line(path), path, what, advice);
    }

    void add(int line, String path, String what, String advice) {
        paths.add(path);
        all.add(new Fault(file, line, printable(path, 200), what, advice));
    }

    /** Adds it unless something is already known to be wrong there or above: one mistake, one message. */
    void addIfNew(String path, String what, String advice) {
        for (String at = path; !at.isEmpty(); at = above(at)) {
            if (paths.contains(at)) {
                return;
            }
        }
        add(path, what, advice);
    }

    boolean any() {
        return !all.isEmpty();
    }

    boolean at(String path) {
        return paths.contains(path);
    }

    /** True when something is wrong in this part of the file, such as {@code instruments}. */
    boolean anyBelow(String part) {
        return paths.stream().anyMatch(path -> path.startsWith(part + "["));
    }

    /** The line of a path, or of the nearest thing above it that is written. */
    private int line(String path) {
        String at = path;
        while (!lines.containsKey(at) && !at.isEmpty()) {
            at = above(at);
        }
        return lines.getOrDefault(at, 0);
    }

    private static String above(String path) {
        return path.substring(0, Math.max(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['))));
    }

    UnusableInput toException() {
        return new UnusableInput(all);
    }

    /** What was written, in quotes, short and safe to print. */
    static String quoted(String text) {
        return "'" + printable(text, LONGEST_QUOTE) + "'";
    }

    private static String printable(String text, int longest) {
        String clean = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\u2028\\u2029]+", " ");
        return clean.length() > longest ? clean.substring(0, clean.offsetByCodePoints(0, clean.codePointCount(0, longest - 1))) + "…" : clean;
    }
}
