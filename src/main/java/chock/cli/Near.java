package chock.cli;

import chock.record.Spelling;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/** The names most like a mistyped one. */
final class Near {
    private Near() { }

    /** {@code Did you mean tyres.age?}, with at most three of the known names: those spelled almost so, then those that contain its last word. */
    static String advice(String written, Collection<String> known) {
        String thing = written.substring(written.indexOf('.') + 1);
        List<String> near = Stream.concat(Spelling.nearest(written, known).stream(), known.stream().filter(name -> !thing.isBlank() && name.contains(thing)).sorted()).distinct().limit(3).toList();
        return near.isEmpty() ? "" : "Did you mean " + String.join(" or ", near) + "?";
    }
}
