package chock.assess;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * What another rule book would make of one machine at one gate.
 *
 * @param record the record
 * @param asOf the moment of judgement
 * @param before whether the gate is released under the rule book in force
 * @param after whether it would be
 * @param findings the checks whose finding would be another, in order of id
 */
public record Impact(JobRecord record, Gate gate, Instant asOf, boolean before, boolean after, List<Change> findings) {

    /**
     * @param before null when it is not asked now and closes nothing
     * @param after null when it would no longer be asked and would close nothing
     * @param says the finding under the other rule book, or as it is now where it would no longer be asked
     */
    public record Change(String check, State before, State after, String says) { }

    public boolean changesVerdict() {
        return before != after;
    }

    /** For every gate: the record judged twice, once under each rule book. */
    public static List<Impact> of(JobRecord record, RuleBook now, RuleBook other, List<Gate> gates, Instant asOf) {
        List<GateVerdict> before = Assessor.assess(record, now, gates, asOf).gates();
        List<GateVerdict> after = Assessor.assess(record, other, gates, asOf).gates();
        List<Impact> impacts = new ArrayList<>();
        for (int i = 0; i < before.size(); i++) {
            impacts.add(new Impact(record, before.get(i).gate(), asOf, before.get(i).released(), after.get(i).released(), changes(before.get(i), after.get(i))));
        }
        return impacts;
    }

    private static List<Change> changes(GateVerdict before, GateVerdict after) {
        Map<String, Finding> was = byCheck(before);
        Map<String, Finding> is = byCheck(after);
        TreeSet<String> checks = new TreeSet<>(was.keySet());
        checks.addAll(is.keySet());
        List<Change> changes = new ArrayList<>();
        for (String check : checks) {
            Finding a = was.get(check);
            Finding b = is.get(check);
            if (a == null || b == null || a.state() != b.state() || !places(a).equals(places(b))) {
                changes.add(new Change(check, a == null ? null : a.state(), b == null ? null : b.state(), (b == null ? a : b).says()));
            }
        }
        return changes;
    }

    private static Map<String, State> places(Finding finding) {
        Map<String, State> places = new LinkedHashMap<>();
        finding.places().stream().sorted((a, b) -> a.point().compareTo(b.point())).forEach(p -> places.put(p.point(), p.state()));
        return places;
    }

    private static Map<String, Finding> byCheck(GateVerdict verdict) {
        Map<String, Finding> all = new LinkedHashMap<>();
        verdict.findings().forEach(f -> all.put(f.check(), f));
        verdict.open().forEach(f -> all.put(f.check(), f));
        return all;
    }
}
