package chock.rulebook;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What one territory's law says.
 *
 * @param code ISO 3166 code
 * @param name the territory in words
 * @param members territories it covers besides its own
 * @param limits numbers it sets
 * @param setsNone limits it was searched for without finding a number, with the source searched
 */
public record LocalCode(String code, String name, List<String> members, List<Limit> limits, Map<String, Source> setsNone) {

    /** True for the territory itself, a part of it, or a member. */
    public boolean covers(String territory) {
        int dash = territory.indexOf('-');
        String country = dash < 0 ? territory : territory.substring(0, dash);
        return code.equals(territory) || code.equals(country) || members.contains(territory) || members.contains(country);
    }

    /** True when this code has been searched for that limit, whether or not it sets a number. */
    public boolean speaksOf(String limit) {
        return setsNone.containsKey(limit) || limits.stream().anyMatch(l -> l.id().equals(limit));
    }

    /** What it says of this limit on a day, for a machine first registered on another; of one document, the latest. */
    List<Limit> inForce(String limit, LocalDate registered, LocalDate day) {
        List<Limit> rows = limits.stream().filter(l -> l.id().equals(limit) && !l.from().isAfter(day) && l.meets(registered)).toList();
        return rows.stream().filter(l -> rows.stream().noneMatch(later -> later.from().isAfter(l.from()) && Conflicts.sameDocument(l, later))).toList();
    }

    LocalCode with(UnaryOperator<Limit> change) {
        return new LocalCode(code, name, members, limits.stream().map(change).toList(), setsNone);
    }
}
