package chock.report;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Judge;
import chock.assess.Points;
import chock.assess.RidePlan;
import chock.assess.RunPlan;
import chock.assess.State;
import chock.record.Gate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The tag on the handlebar: which gates are open, until when, and what holds the machine. A sheet folded once along its
 * length, so that both sides can be read.
 *
 * @param defects defects that are open, whichever gates are judged; at most what fits
 */
public record Tag(Heading heading, List<Panel> gates, List<Told> defects, List<Told> cautions) {
    /** What the back of the tag holds in lines of a few words each. */
    private static final int LINES = 10;

    /**
     * One gate.
     *
     * @param open whether it is released
     * @param means what that allows or forbids
     * @param until how long it is open, or by how much it is closed
     * @param holding what holds it; at most what fits
     * @param more how many further things hold it
     * @param heldBack what must be heeded while it is open
     */
    public record Panel(Told gate, boolean open, Told means, Told until, List<Told> holding, int more, List<Told> heldBack) {
        public String word() {
            return open ? "OPEN" : "CLOSED";
        }
    }

    /** How large the words may be. */
    public String crowd() {
        return gates.size() == 1 ? "one" : gates.size() == 2 ? "few" : gates.size() <= 4 ? "some" : "many";
    }

    /** What stands above everything, so that a large OPEN is never read as leave to ride or to start; null when nothing needs to. */
    public String warning() {
        if (gates.stream().anyMatch(gate -> gate.gate().from().contains("gate/" + Gate.NON_RUNNER))) {
            return "NOT TO BE RIDDEN";
        }
        return gates.stream().anyMatch(gate -> gate.gate().from().contains("gate/" + Gate.ON_SHOW)) ? "NOT TO BE STARTED" : null;
    }

    public static Tag of(Assessment assessment) {
        long closed = assessment.gates().stream().filter(gate -> !gate.released()).count();
        List<Told> cautions = RunPlan.of(assessment.record(), assessment).map(plan -> plan.caution().stream().map(words -> Told.of(words, "check/plan")).toList()).orElse(List.of());
        int room = (int) Math.max(1, (cautions.isEmpty() ? LINES : LINES / 2) / Math.max(1, closed));
        return new Tag(Heading.of(assessment), assessment.gates().stream().map(gate -> panel(assessment, gate, room)).toList(),
                assessment.disclosures().defects().stream().limit(LINES / 2).map(one -> new Told(one.says(), one.entries())).toList(), cautions);
    }

    private static Panel panel(Assessment assessment, GateVerdict gate, int room) {
        List<Holding> holding = holding(gate);
        String id = "gate/" + gate.gate();
        String until = gate.released() ? "until " + Wording.dayAndTime(gate.holdsUntil(), assessment.record().zone()) : counted(holding);
        return new Panel(Told.of(gate.gate().id().replace('-', ' '), id), gate.released(), Told.of(means(gate.gate(), gate.released()), id), Told.of(until, id),
                holding.stream().limit(room).map(Holding::told).toList(), Math.max(0, holding.size() - room), heldBack(assessment, gate));
    }

    /** One thing that holds a gate; its state is null where the rule book left it undecided. */
    private record Holding(Told told, State state) { }

    /** As many in all as the back lists and leaves out: a check may hold at several places, and one place for several checks. */
    private static String counted(List<Holding> holding) {
        List<String> counts = new ArrayList<>();
        long undecided = holding.stream().filter(one -> one.state() == null).count();
        if (undecided > 0) {
            counts.add(undecided + " left undecided by the rule book");
        }
        for (State state : State.values()) {
            long n = holding.stream().filter(one -> one.state() == state).count();
            if (n > 0) {
                counts.add(Wording.counted(state, n));
            }
        }
        return "held by " + holding.size() + ": " + String.join(", ", counts);
    }

    /** What a gate allows when it is released, or forbids when it is not. */
    public static String means(Gate gate, boolean released) {
        return switch (gate) {
            case FIRST_START -> released ? "The engine may be run on the stand, outdoors." : "Do not start the engine.";
            case INDOOR_RUN -> released ? "The engine may be run in here, by the run plan only." : "Do not run the engine in here.";
            case ROAD_TEST -> released ? "May be ridden to try it, by the ride plan only." : "Do not ride.";
            case ON_SHOW -> released ? "May be displayed. Not to be started." : "Not to be displayed.";
            case HAND_OVER -> released ? "May leave to be ridden." : "May not leave to be ridden.";
            case NON_RUNNER -> released ? "May leave. Not to be ridden." : "Not to be ridden. May not leave.";
        };
    }

    /** What holds a gate, worst first; of what must only be proven again, each place once. */
    private static List<Holding> holding(GateVerdict gate) {
        Map<String, Holding> all = new LinkedHashMap<>();
        gate.ruleBookFaults().forEach(fault -> all.put(fault, new Holding(Told.of(fault, "gate/" + gate.gate()), null)));
        for (Finding finding : gate.open()) {
            for (Finding.AtPlace place : finding.places()) {
                if (place.state() != State.MET) {
                    String says = brief(place);
                    all.putIfAbsent(says, new Holding(Told.check(says, finding.check(), place.evidence()), place.state()));
                }
            }
            if (finding.places().isEmpty() && finding.state() != State.MET) {
                all.putIfAbsent(finding.says(), new Holding(Told.check(finding.says(), finding.check(), finding.evidence()), finding.state()));
            }
        }
        return List.copyOf(all.values());
    }

    private static String brief(Finding.AtPlace place) {
        String title = Points.title(place.point());
        if (place.state() == State.STALE) {
            return title + ": to be proven again";
        }
        return place.measured() == null || place.limit() == null ? place.says()
                : title + ": " + Judge.shown(place.measured()) + ", " + place.limit().bounds().words() + (place.state() == State.DOUBT ? "; too close to tell" : "");
    }

    private static List<Told> heldBack(Assessment assessment, GateVerdict gate) {
        List<Told> all = new ArrayList<>();
        if (gate.gate() == Gate.ROAD_TEST && gate.released()) {
            RidePlan.of(assessment.record(), assessment).ifPresent(plan -> plan.restraints().forEach(r -> all.add(
                    Told.check(r.because() + (r.upTo() == null ? "" : ": " + r.upTo().says()), "plan", r.evidence()))));
        }
        return all;
    }
}
