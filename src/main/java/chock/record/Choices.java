package chock.record;

import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/** Says which words could stand in the place of an unknown one. */
final class Choices {
    private static final int SHORT = 8;
    private static final int MOST = 60;

    private Choices() { }

    /** {@code Write one of a, b, c} for a short list, the nearest of a long one, else how the long one begins. */
    static String advice(String verb, String word, Collection<String> known) {
        if (known.isEmpty()) {
            return "None is known here";
        }
        List<String> near = Spelling.nearest(word, known);
        if (known.size() == 1) {
            return verb + " " + known.iterator().next();
        }
        if (known.size() <= SHORT) {
            return verb + " one of " + String.join(", ", known);
        }
        if (!near.isEmpty()) {
            return "Nearest: " + String.join(", ", near);
        }
        List<String> sorted = new TreeSet<>(known).stream().toList();
        return verb + " one of " + String.join(", ", sorted.subList(0, Math.min(MOST, sorted.size()))) + (sorted.size() > MOST ? ", …" : "");
    }

    /** The places nearest to one that is not known: a slip of the pen, else others on the same part of the machine. */
    static String places(String word, Collection<String> points) {
        List<String> near = Spelling.nearest(word, points);
        for (String part = word; near.isEmpty() && part.contains("/");) {
            part = part.substring(0, part.lastIndexOf('/'));
            String start = part + "/";
            near = Spelling.within(word, points.stream().filter(p -> p.startsWith(start)).toList(), Integer.MAX_VALUE);
        }
        List<String> ends = points.stream().filter(p -> !p.contains("/")).sorted().toList();
        return near.isEmpty() ? "Places begin with " + String.join(", ", ends) : "Nearest: " + String.join(", ", near);
    }
}
