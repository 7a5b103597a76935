package chock.report;

import chock.assess.Assessment;
import chock.assess.Disclosures;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.RidePlan;
import chock.assess.RunPlan;
import chock.assess.State;
import chock.record.Gate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The report for a terminal or a sheet of paper: the verdict, what holds the machine and what clears it, then the rest. */
public final class TextReport {

    private TextReport() { }

    /**
     * All of them, one below the other, in lines of at most 80 columns that end in {@code \n}.
     *
     * @param bold whether headings are bold; only for a terminal
     */
    public static String of(List<Assessment> assessments, boolean bold) {
        Page page = new Page(bold);
        for (int i = 0; i < assessments.size(); i++) {
            if (i > 0) {
                page.gap().put(0, "-".repeat(Page.WIDTH)).gap();
            }
            write(assessments.get(i), page);
        }
        return page.toString();
    }

    /** Only the verdicts of one assessment, each with the sentence about the worst that holds it. */
    public static String verdicts(Assessment assessment, boolean bold) {
        Page page = new Page(bold);
        law(assessment, page);
        for (GateVerdict gate : assessment.gates()) {
            verdict(assessment, gate, page);
            gate.ruleBookFaults().forEach(fault -> page.put(2, "! ", fault));
            gate.open().stream().findFirst().ifPresent(f -> page.put(2, Wording.sign(f.state()) + " " + f.state().id() + ": ", f.says()));
        }
        return page.toString();
    }

    private static void write(Assessment assessment, Page page) {
        Optional<RunPlan> run = RunPlan.of(assessment.record(), assessment);
        law(assessment, page);
        run.ifPresent(plan -> caution(plan, page));
        assessment.gates().forEach(gate -> verdict(assessment, gate, page));
        if (assessment.gates().isEmpty()) {
            page.heading("BLOCKED: no gate was judged");
        }
        page.gap().put(0, assessment.record().id() + ": " + Wording.machine(assessment.record().machine()));
        page.put(0, Wording.judged(assessment));
        for (GateVerdict gate : assessment.gates()) {
            details(gate, page, assessment.gates().size() > 1);
            if (gate.gate() == Gate.ROAD_TEST) {
                RidePlan.of(assessment.record(), assessment).ifPresent(plan -> plan(plan, page));
            }
            if (gate.gate() == Gate.INDOOR_RUN) {
                run.ifPresent(plan -> plan(plan, page));
            }
        }
        claims(assessment, page);
        footer(assessment, page);
    }

    private static void law(Assessment assessment, Page page) {
        if (assessment.recordedLaw() != null) {
            page.heading("LAW NOT CHECKED HERE").put(2, assessment.recordedLaw()).gap();
        }
    }

    private static void verdict(Assessment assessment, GateVerdict gate, Page page) {
        if (gate.released()) {
            page.heading("RELEASED at " + gate.gate() + " " + Wording.until(assessment, gate)).put(2, Wording.UNTOUCHED);
        } else {
            page.heading("BLOCKED at " + gate.gate() + ": " + Wording.tally(gate));
        }
        if (gate.changes() != null) {
            page.put(2, Wording.changes(assessment, gate));
        }
    }

    private static void details(GateVerdict gate, Page page, boolean several) {
        if (several) {
            page.gap().heading("At " + gate.gate());
        }
        if (!gate.ruleBookFaults().isEmpty()) {
            page.gap().heading("UNDECIDED: the rule book is at fault, not the machine; nothing passes on that");
            gate.ruleBookFaults().forEach(fault -> page.put(2, "! ", fault));
        }
        for (State state : State.values()) {
            List<Finding> open = gate.open().stream().filter(f -> f.state() == state).toList();
            if (!open.isEmpty()) {
                page.gap().heading(state.id().toUpperCase(Locale.ROOT) + ": " + Wording.meaning(state));
                open.forEach(finding -> open(finding, page));
            }
        }
        notes(gate, page);
        rest(gate, page);
    }

    private static void open(Finding finding, Page page) {
        page.put(2, Wording.sign(finding.state()) + " ", finding.check() + (finding.critical() ? " (critical)" : ""));
        page.put(4, finding.says());
        Wording.elsewhere(finding).forEach(also -> page.put(4, also));
        if (!Wording.basis(finding).isEmpty()) {
            page.put(4, Wording.basis(finding));
        }
        if (finding.remedy() != null) {
            page.put(4, Wording.toDo(finding.state()), finding.remedy());
        }
        if (finding.caution() != null) {
            page.put(4, "Caution: ", finding.caution());
        }
    }

    private static void notes(GateVerdict gate, Page page) {
        if (gate.findings().stream().anyMatch(f -> !Wording.notes(f).isEmpty())) {
            page.gap().heading("NOTES: to be known; they change no verdict");
            gate.findings().forEach(f -> Wording.notes(f).forEach(note -> page.put(2, "- ", f.check() + ": " + note)));
        }
    }

    private static void claims(Assessment assessment, Page page) {
        if (!assessment.claims().isEmpty()) {
            page.gap().heading("CLAIMS: " + Wording.CLAIMS);
            assessment.claims().forEach(c -> page.put(2, "- ", c.standing().id() + ", " + Wording.claim(c) + ": " + c.says() + "."));
        }
    }

    private static void rest(GateVerdict gate, Page page) {
        long met = gate.findings().stream().filter(f -> f.state() == State.MET).count();
        page.gap().put(0, met + " of " + gate.findings().size() + " checks are met. " + Wording.notAsked(gate));
    }

    private static void caution(RunPlan plan, Page page) {
        if (!plan.caution().isEmpty()) {
            page.heading("CAUTION: carbon monoxide");
            plan.caution().forEach(words -> page.put(2, "! ", words));
            page.gap();
        }
    }

    private static void plan(RunPlan plan, Page page) {
        page.gap().heading("RUN PLAN").put(2, plan.says());
        plan.figures().forEach(figure -> page.put(2, "- ", Wording.figure(figure)));
        if (!plan.restsOn().isEmpty()) {
            page.put(2, "These figures take as given: " + String.join("; ", plan.restsOn()) + ".");
        }
        for (RunPlan.Part part : plan.parts()) {
            page.put(2, part.title() + ":");
            int number = 1;
            for (String line : part.lines()) {
                page.put(4, part.numbered() ? number++ + ". " : "- ", line);
            }
        }
    }

    private static void plan(RidePlan plan, Page page) {
        page.gap().heading("RIDE PLAN").put(2, plan.says());
        for (RidePlan.Restraint restraint : plan.restraints()) {
            page.put(2, "! ", Wording.because(restraint));
            Wording.restraint(restraint).forEach(line -> page.put(4, "- ", line));
        }
        int number = 1;
        for (RidePlan.Step step : plan.steps()) {
            if (step.leftOut() != null) {
                page.put(2, "Left out: ", step.title() + ": " + step.leftOut() + ".");
                continue;
            }
            page.put(2, number++ + ". ", Wording.step(step));
            step.doing().forEach(line -> page.put(5, "- ", Wording.line(line)));
            page.put(5, "Feel for: ", Wording.list(step.feel()));
        }
        if (!plan.stop().isEmpty()) {
            page.put(2, "Stop at once: ", Wording.list(plan.stop()));
            page.put(2, "On return:");
            plan.back().forEach(line -> page.put(4, "- ", Wording.line(line)));
        }
    }

    private static void section(Page page, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            page.gap().put(0, title + ":");
            lines.forEach(line -> page.put(2, "- ", line));
        }
    }

    private static void footer(Assessment assessment, Page page) {
        Disclosures told = assessment.disclosures();
        section(page, "Open defects", told.defects().stream().map(Disclosures.Told::says).toList());
        section(page, "Faults and defects lifted without work", told.lifted().stream().map(Disclosures.Told::says).toList());
        section(page, "Entries that no check reads", told.unread().stream().map(one -> one.says() + ". " + one.fate()).toList());
        page.gap().put(0, "Local code: ", assessment.localCode());
        page.put(0, "Rule book:  ", assessment.ruleBookVersion()).put(2, assessment.ruleBookDigest());
        page.put(0, "Register:   ", Wording.register(assessment));
        page.put(0, "House:      ", Wording.house(assessment));
        if (assessment.house() != null) {
            page.put(2, assessment.house().digest());
        }
        if (!Wording.overdue(assessment).isEmpty()) {
            page.put(0, "Review:     ", Wording.overdue(assessment));
        }
        page.gap().put(0, Wording.NOTICE);
    }
}
