package chock.assess.facts;

import chock.rulebook.Together;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Readings from which a check was worked out before one of them was read again.
 *
 * @param required the check
 * @param readings one or more of each want, as they were known then
 */
public record Earlier(Required required, List<Standing> readings) {
    private static final Comparator<Standing> NEWEST_FIRST = Comparator.comparing((Standing s) -> s.evidence().entry().at().latest()).thenComparing(s -> s.evidence().id()).reversed();

    /**
     * For each reading what was known when it was taken: the newest of each other want up to then, or the first after it where
     * there was none. Where a card takes nothing together also each reading with the newest others, for what was mended since may
     * be another part. What is known now is not among it.
     *
     * @param readings whatever was read for one check and shows something, in any order
     */
    public static Set<Earlier> of(Required required, Collection<Standing> readings) {
        Map<String, List<Standing>> byWant = new TreeMap<>();
        readings.stream().distinct().sorted(NEWEST_FIRST).forEach(s -> byWant.computeIfAbsent(s.wanted().name(), name -> new ArrayList<>()).add(s));
        Set<Earlier> sets = new LinkedHashSet<>();
        for (Standing then : byWant.values().stream().flatMap(List::stream).toList()) {
            List<Standing> set = new ArrayList<>();
            boolean complete = true;
            for (List<Standing> all : byWant.values()) {
                List<Standing> known = knownThen(then, all);
                complete &= !known.isEmpty();
                set.addAll(known);
            }
            if (complete && set.stream().anyMatch(s -> isReadAgain(s, byWant))) {
                sets.add(new Earlier(required, List.copyOf(set)));
            }
            if (then.wanted().card().together() == null && isReadAgain(then, byWant)) {
                List<Standing> now = new ArrayList<>(List.of(then));
                byWant.values().stream().filter(all -> !all.contains(then)).flatMap(List::stream).filter(s -> !isReadAgain(s, byWant)).forEach(now::add);
                sets.add(new Earlier(required, List.copyOf(now)));
            }
        }
        return sets;
    }

    private static boolean isReadAgain(Standing one, Map<String, List<Standing>> byWant) {
        return byWant.get(one.wanted().name()).stream().anyMatch(other -> other.laterThan(one));
    }

    private static List<Standing> knownThen(Standing then, List<Standing> newestFirst) {
        if (newestFirst.contains(then)) {
            return List.of(then);
        }
        List<Standing> near = newestFirst.stream().filter(s -> isNear(s, then)).toList();
        List<Standing> before = near.stream().filter(s -> !s.laterThan(then)).toList();
        if (!before.isEmpty()) {
            return before.stream().filter(s -> before.stream().noneMatch(o -> o.laterThan(s))).toList();
        }
        return near.stream().filter(s -> near.stream().noneMatch(s::laterThan)).toList();
    }

    private static boolean isNear(Standing one, Standing other) {
        Together together = one.wanted().card().together();
        return together == null || !one.wanted().countsTogether() || !other.wanted().countsTogether() || one.takenWith(other);
    }

    /** True when whatever it was worked out from of this check is among them. */
    public boolean shows(Derived derived) {
        return derived.from().stream().filter(c -> c.required().equals(required) && c.measured() != null).allMatch(c -> readings.stream().anyMatch(s -> s.wanted().equals(c.wanted()) && s.evidence().equals(c.evidence())));
    }

    // Equal ones have equal hashes; the readings need not be hashed for that.
    @Override
    public int hashCode() {
        return required.hashCode();
    }
}
