package chock.record;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the rule book makes of one field of the description.
 *
 * @param field such as {@code front-brake.type}
 * @param at the place where the work that changes it is written
 * @param asBuilt whether it must be known what the machine was built with there
 * @param denies by value: the places that a machine described so does not have
 * @param deniedAspects by value: what cannot be found out on a machine described so
 * @param except what may be written at a denied place all the same, since a check asks it of machines without the part
 * @param unusual values that want showing, since they take checks away
 */
public record FieldRule(String field, String at, boolean asBuilt, Map<String, Set<String>> denies, Map<String, Set<String>> deniedAspects,
                        Set<String> except, List<Unusual> unusual) {

    /**
     * A value that is rare, and takes checks away or loosens a limit.
     *
     * @param is which values
     * @param usual machines on which it is not rare: each a set of fields that have to be so together
     * @param removes what falls away, in words that go on after a colon
     */
    public record Unusual(ValueTest is, List<Map<String, ValueTest>> usual, String removes) {

        boolean on(Map<String, String> machine, String field) {
            return is.holds(machine.get(field)) && usual.stream().noneMatch(all -> all.entrySet().stream().allMatch(one -> one.getValue().holds(machine.get(one.getKey()))));
        }
    }

    /** What falls away by an unusual value of this machine; empty when its value is usual. */
    public List<String> removedOn(Map<String, String> machine) {
        return unusual.stream().filter(u -> u.on(machine, field)).map(Unusual::removes).toList();
    }
}
