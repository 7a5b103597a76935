package chock.assess;

import chock.record.Gate;
import java.time.Instant;
import java.util.List;

/**
 * The decision at one gate.
 *
 * @param gate the gate
 * @param released true only when every check that applies is met
 * @param holdsUntil last instant the release is good for if nobody touches the machine; null when blocked
 * @param findings one for each check that applies, worst first
 * @param notApplicable checks of this gate that were not asked, with the reason
 * @param ruleBookFaults checks the rule book failed to decide; any of these blocks
 * @param run what the plan of a run under a roof is made of; null at every other gate
 */
public record GateVerdict(Gate gate, boolean released, Instant holdsUntil, List<Finding> findings,
                          List<NotApplicable> notApplicable, List<String> ruleBookFaults, IndoorRun run) {

    /** A verdict at a gate without a run under a roof. */
    public GateVerdict(Gate gate, boolean released, Instant holdsUntil, List<Finding> findings, List<NotApplicable> notApplicable, List<String> ruleBookFaults) {
        this(gate, released, holdsUntil, findings, notApplicable, ruleBookFaults, null);
    }

    /** A check that was not asked of this machine. */
    public record NotApplicable(String check, String why) { }

    public String verdict() {
        return released ? "released" : "blocked";
    }
}
