package chock.assess;

import chock.record.Gate;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * The decision at one gate.
 *
 * @param gate the gate
 * @param released true only when every check that applies is met and no known fault closes the gate
 * @param holdsUntil last instant the release is good for if nobody touches the machine; null when blocked
 * @param findings one for each check that applies, worst first
 * @param notApplicable checks of this gate that were not asked, with the reason
 * @param ruleBookFaults checks the rule book failed to decide; any of these blocks
 * @param run what the plan of a run under a roof is made of; null at every other gate
 * @param changes what changes by itself, and when; null when nobody asked
 * @param closedBy known faults that close the gate though it does not ask for them
 */
public record GateVerdict(Gate gate, boolean released, Instant holdsUntil, List<Finding> findings,
                          List<NotApplicable> notApplicable, List<String> ruleBookFaults, IndoorRun run, Changes changes, List<ClosedBy> closedBy) {

    /** A verdict of which nobody asked what changes by itself. */
    public GateVerdict(Gate gate, boolean released, Instant holdsUntil, List<Finding> findings, List<NotApplicable> notApplicable, List<String> ruleBookFaults, IndoorRun run) {
        this(gate, released, holdsUntil, findings, notApplicable, ruleBookFaults, run, null, List.of());
    }

    /** A verdict at a gate without a run under a roof. */
    public GateVerdict(Gate gate, boolean released, Instant holdsUntil, List<Finding> findings, List<NotApplicable> notApplicable, List<String> ruleBookFaults) {
        this(gate, released, holdsUntil, findings, notApplicable, ruleBookFaults, null, null, List.of());
    }

    /** A check that was not asked of this machine. */
    public record NotApplicable(String check, String why) { }

    /** The same, with what changes by itself; a release is good for no longer than that. */
    GateVerdict with(Changes found) {
        boolean sooner = released && found.at() != null && !found.at().isAfter(holdsUntil);
        return new GateVerdict(gate, released, sooner ? found.at().minusSeconds(1) : holdsUntil, findings, notApplicable, ruleBookFaults, run, found, closedBy);
    }

    /** Everything that holds the gate, worst first: what is asked and not met, and known faults that close it unasked. */
    public List<Finding> open() {
        Stream<Finding> asked = findings.stream().filter(f -> f.state() != State.MET);
        return Stream.concat(asked, closedBy.stream().map(ClosedBy::fault)).sorted(Comparator.comparing(Finding::state)).toList();
    }

    public String verdict() {
        return released ? "released" : "blocked";
    }
}
