package chock.rulebook;

import chock.record.Area;
import chock.record.Machine;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * What one territory's law says.
 *
 * @param code ISO 3166 code
 * @param name the territory in words
 * @param union whether its parts make law beside it: what a union leaves open, the law of a part may settle
 * @param members territories it covers besides its own
 * @param except parts of its own territory where it does not hold
 * @param limits numbers it sets
 * @param setsNone limits it was searched for without finding a number, with the source searched
 */
public record LocalCode(String code, String name, boolean union, List<String> members, List<String> except, List<Limit> limits,
                        Map<String, Source> setsNone) {

    /** True for the territory itself, a part of it, or a member. */
    public boolean covers(String territory) {
        return area().covers(territory);
    }

    /** Where it holds. */
    Area area() {
        return new Area(code, members, except);
    }

    /** True when this code settles that limit: by a number, or by having none where nobody else could set it. */
    public boolean settles(String limit) {
        return !union && setsNone.containsKey(limit) || limits.stream().anyMatch(l -> l.id().equals(limit));
    }

    /** What it says of this limit for a machine on a day; of one document, the latest. */
    List<Limit> inForce(String limit, Machine machine, LocalDate day) {
        List<Limit> rows = limits.stream().filter(l -> l.id().equals(limit) && !l.from().isAfter(day) && l.meets(machine)).toList();
        return rows.stream().filter(l -> rows.stream().noneMatch(later -> later.from().isAfter(l.from()) && Conflicts.sameDocument(l, later))).toList();
    }

    LocalCode with(UnaryOperator<Limit> change) {
        return new LocalCode(code, name, union, members, except, limits.stream().map(change).toList(), setsNone);
    }
}
