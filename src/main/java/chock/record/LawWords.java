package chock.record;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;

/**
 * What a record may say of the law where its machine will be ridden.
 *
 * @param sides limits that want a local law, each with what must be said of its number: {@code at-least}, {@code at-most} or both
 * @param held where the rule book has the law of the place itself
 * @param unions territories that leave law to their parts
 */
public record LawWords(SortedMap<String, List<String>> sides, List<Area> held, Set<String> unions) {

    /** Code of the law in the rule book that is the law of this territory itself. */
    public Optional<String> lawOf(String territory) {
        return held.stream().filter(area -> area.covers(territory)).map(Area::code).findFirst();
    }
}
