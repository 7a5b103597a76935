package chock.archive;

import chock.assess.Assessment;
import chock.assess.ClosedBy;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.report.JsonReport;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * The verdict on one record at one gate, as a row of a table.
 *
 * @param asOf moment of judgement, and {@code holdsUntil} the last one the release is good for (null when blocked), both in
 *        ISO 8601 on the clock of the record's workshop
 * @param met how many of the checks asked came to this, and so on
 * @param notMet the checks that are not met, by id, with what they came to
 * @param closedBy known faults that close the gate though it does not ask for them
 * @param house name of the house in force, or null
 */
public record VerdictRow(String record, String gate, String asOf, String verdict, String holdsUntil, int met, int fault, int doubt, int stale, int missing,
                         SortedMap<String, String> notMet, List<String> closedBy, List<String> ruleBookFaults, String ruleBook, String digest, String house, Kind of) {

    /** What machines are counted by. */
    public record Kind(String marque, int built, String kind, String territory) {
        static Kind of(Assessment assessment) {
            return new Kind(assessment.record().machine().marque(), assessment.record().machine().built().getValue(),
                    assessment.record().machine().kind().name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'), assessment.record().territory());
        }
    }

    /** One row for each gate judged. */
    public static List<VerdictRow> of(Assessment assessment) {
        List<VerdictRow> rows = new ArrayList<>();
        for (GateVerdict gate : assessment.gates()) {
            SortedMap<String, String> notMet = new TreeMap<>();
            gate.findings().stream().filter(f -> f.state() != State.MET).forEach(f -> notMet.put(f.check(), f.state().id()));
            rows.add(new VerdictRow(assessment.record().id(), gate.gate().id(), JsonReport.moment(assessment.asOf(), assessment.record()), gate.verdict(),
                    gate.holdsUntil() == null ? null : JsonReport.moment(gate.holdsUntil(), assessment.record()),
                    count(gate, State.MET), count(gate, State.FAULT), count(gate, State.DOUBT), count(gate, State.STALE), count(gate, State.MISSING),
                    notMet, gate.closedBy().stream().map(ClosedBy::check).toList(), gate.ruleBookFaults(), assessment.ruleBookVersion(), assessment.ruleBookDigest(),
                    assessment.house() == null ? null : assessment.house().name(), Kind.of(assessment)));
        }
        return rows;
    }

    private static int count(GateVerdict gate, State state) {
        return (int) gate.findings().stream().map(Finding::state).filter(state::equals).count();
    }
}
