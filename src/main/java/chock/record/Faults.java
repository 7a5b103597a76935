package chock.record;

import java.util.ArrayList;
import java.util.HashMap;
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
    private final Map<String, String> origins;
    private final Set<String> told = new HashSet<>();

    /** @param lines line of each path written in the file; may grow while faults are added */
    Faults(String file, Map<String, Integer> lines) {
        this(file, lines, new HashMap<>());
    }

    private Faults(String file, Map<String, Integer> lines, Map<String, String> origins) {
        this.file = file;
        this.lines = lines;
        this.origins = origins;
    }

    /** What was found so far, to go on from. */
    Faults(Faults sofar) {
        this(sofar.file, sofar.lines, sofar.origins);
        all.addAll(sofar.all);
        paths.addAll(sofar.paths);
        told.addAll(sofar.told);
    }

    /** What is wrong at a path that the program wrote out is told at the place where somebody typed it. */
    void origin(String path, String typed) {
        origins.put(path, typed);
    }

    private String typed(String path) {
        String at = path;
        while (!origins.containsKey(at) && at.startsWith("entries[") && at.contains(".")) {
            at = above(at);
        }
        return origins.getOrDefault(at, path);
    }

    void add(String path, String what, String advice) {
        add(line(path), path, what, advice);
    }

    void add(int line, String path, String what, String advice) {
        paths.add(path);
        String typed = typed(path);
        // The head of a session is written once, and what is wrong with it told once.
        if (typed.equals(path) || told.add(typed + " " + what)) {
            all.add(new Fault(file, line, printable(typed, 200), what, advice));
        }
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

    /** True when something is wrong at this path or below it. */
    boolean anyUnder(String path) {
        return paths.stream().anyMatch(at -> at.equals(path) || at.startsWith(path + "."));
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
