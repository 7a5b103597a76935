package chock.assess.facts;

import chock.record.Listing;
import chock.record.Moment;
import chock.rulebook.Together;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * The newest readings of a check that were taken together, where its card puts several together.
 *
 * @param required the check
 * @param readings one reading of each want; empty when there are none that belong together
 * @param apart what stands and does not belong together; empty when something was not read at all, which says enough
 */
public record TakenTogether(Required required, List<Standing> readings, List<Standing> apart) {

    /**
     * Picks the newest. A reading that has no companion yet takes nothing away from older ones that have: where it differs from
     * them, that is a disagreement of its own. What is held against the limit by itself is taken at its newest.
     *
     * @param standing whatever stands of the wants that belong together, in any order
     */
    public static TakenTogether newest(Required required, Collection<Standing> standing) {
        Map<String, List<Standing>> byWant = new TreeMap<>();
        standing.forEach(s -> byWant.computeIfAbsent(s.wanted().name(), name -> new ArrayList<>()).add(s));
        Together together = standing.isEmpty() ? null : standing.iterator().next().wanted().card().together();
        if (together == null || byWant.size() < together.wants().size()) {
            return new TakenTogether(required, List.of(), List.of());
        }
        byWant.replaceAll((want, all) -> all.stream().filter(s -> !s.wanted().judged() || all.stream().noneMatch(o -> o.laterThan(s)))
                .sorted(Comparator.comparing((Standing s) -> s.evidence().entry().at().latest()).thenComparing(s -> s.evidence().id()).reversed()).toList());
        List<Standing> newestFirst = byWant.values().stream().flatMap(List::stream)
                .sorted(Comparator.comparing((Standing s) -> s.evidence().entry().at().latest()).thenComparing(s -> s.evidence().id()).reversed()).toList();
        for (Standing last : newestFirst) {
            Map<String, Standing> set = new LinkedHashMap<>();
            byWant.forEach((want, all) -> (want.equals(last.wanted().name()) ? List.of(last) : all).stream()
                    .filter(s -> !s.laterThan(last) && !surelyApart(s, last, together.apart())).findFirst().ifPresent(s -> set.put(want, s)));
            if (set.size() == byWant.size()) {
                // Of several that may be the newest, each counts.
                return new TakenTogether(required, set.values().stream().flatMap(one -> byWant.get(one.wanted().name()).stream()
                        .filter(s -> !s.laterThan(one) && !one.laterThan(s) && !surelyApart(s, last, together.apart()))).toList(), List.of());
            }
        }
        return new TakenTogether(required, List.of(), byWant.values().stream().map(all -> all.get(0)).toList());
    }

    /** The newest readings that were once taken together, of those that stand and those that are spent. */
    public static List<Standing> once(Required required, Collection<Standing> standing, Collection<SpentReading> spent) {
        return newest(required, all(standing, spent)).readings();
    }

    /** What was known of a check before it was read again, from the readings that stand and those that are spent. */
    public static Set<Earlier> before(Required required, Collection<Standing> standing, Collection<SpentReading> spent) {
        return Earlier.of(required, all(standing, spent));
    }

    private static List<Standing> all(Collection<Standing> standing, Collection<SpentReading> spent) {
        List<Standing> all = new ArrayList<>(standing);
        spent.forEach(reading -> all.add(new Standing(reading.wanted(), reading.evidence())));
        return all;
    }

    private static boolean surelyApart(Standing one, Standing other, Duration most) {
        return surelyApart(one.evidence().entry().at(), other.evidence().entry().at(), most);
    }

    /** True when they lie further apart than that, whatever their times of day were. */
    static boolean surelyApart(Moment one, Moment other, Duration most) {
        return one.earliest().isAfter(other.latest().plus(most)) || other.earliest().isAfter(one.latest().plus(most));
    }

    /** {@code winding (e3) and temperature (e2)}. */
    public String words() {
        List<String> named = apart.stream().map(s -> s.wanted().want().aspect().replace('-', ' ') + " of " + s.evidence().entry().at() + " (" + s.evidence().id() + ")").toList();
        return Listing.and(named);
    }

    // Equal ones have equal hashes; the readings need not be hashed for that.
    @Override
    public int hashCode() {
        return required.hashCode();
    }
}
