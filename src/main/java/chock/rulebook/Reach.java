package chock.rulebook;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The places from which something may reach certain places of the machine.
 *
 * @param carrying what carries them
 * @param carried they themselves; whatever these carry may reach them too
 */
public record Reach(List<String> carrying, List<String> carried) {

    /** Everything that may reach one of these places. */
    public static Reach of(Collection<String> places) {
        Set<String> carrying = new LinkedHashSet<>();
        for (String place : places) {
            for (String above = above(place); above != null; above = above(above)) {
                carrying.add(above);
            }
        }
        return new Reach(List.copyOf(carrying), List.copyOf(new LinkedHashSet<>(places)));
    }

    /** What carries a place, or null when nothing does. */
    public static String above(String place) {
        int slash = place.lastIndexOf('/');
        return slash < 0 ? null : place.substring(0, slash);
    }
}
