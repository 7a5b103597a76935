package chock.archive;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Impact;
import chock.assess.State;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Counts over part of an archive; those of all parts add up to those of the whole. */
public final class Tally {
    private final Map<Counted, Long> counts = new HashMap<>();

    /** The counts, in no order. */
    public Map<Counted, Long> counts() {
        return counts;
    }

    private void add(String what, String gate, String check, String was, String is, VerdictRow.Kind of) {
        counts.merge(new Counted(what, gate, check, was, is, of), 1L, Long::sum);
    }

    /** A line of which nothing was judged: it could not be used, or the program failed on it. */
    public void without(Outcome<?> came) {
        counts.merge(Counted.plain(came.failed() == null ? "refused" : "failed"), 1L, Long::sum);
    }

    /** A record and its verdicts. */
    public void judged(Assessment assessment) {
        counts.merge(Counted.plain("record"), 1L, Long::sum);
        assessment.gates().forEach(gate -> add("verdict", gate.gate().id(), null, gate.verdict(), null, null));
    }

    /** A record and what holds it: once for each gate and check, and once for each check at whatever gate, by the worst it comes to. */
    public void held(Assessment assessment) {
        VerdictRow.Kind of = VerdictRow.Kind.of(assessment);
        Map<String, State> anywhere = new TreeMap<>();
        for (GateVerdict gate : assessment.gates()) {
            Map<String, State> here = new TreeMap<>();
            for (Finding finding : gate.open()) {
                here.merge(finding.check(), finding.state(), Tally::worse);
                anywhere.merge(finding.check(), finding.state(), Tally::worse);
            }
            here.forEach((check, state) -> add("held", gate.gate().id(), check, state.id(), null, of));
        }
        anywhere.forEach((check, state) -> add("held-at-all", null, check, state.id(), null, of));
    }

    private static State worse(State one, State other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    /** A record and what would change for it. */
    public void compared(List<Impact> impacts) {
        counts.merge(Counted.plain("record"), 1L, Long::sum);
        for (Impact impact : impacts) {
            add("verdict", impact.gate().id(), null, word(impact.before()), word(impact.after()), null);
            impact.findings().forEach(change -> add("change", impact.gate().id(), change.check(), id(change.before()), id(change.after()), null));
        }
    }

    /** As reports call a verdict. */
    public static String word(boolean released) {
        return released ? "released" : "blocked";
    }

    private static String id(State state) {
        return state == null ? "not asked" : state.id();
    }
}
