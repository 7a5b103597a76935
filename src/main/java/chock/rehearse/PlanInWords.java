package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.RidePlan;
import chock.assess.RunPlan;
import chock.record.Gate;
import java.util.ArrayList;
import java.util.List;

/** The plan of a ride or of a run under a roof, line by line, as a scenario writes it. */
final class PlanInWords {
    private PlanInWords() { }

    /** No line where there is no plan. */
    static List<String> of(Assessment judged, Gate gate) {
        List<String> lines = new ArrayList<>();
        if (gate == Gate.INDOOR_RUN) {
            RunPlan.of(judged.record(), judged).ifPresent(plan -> run(plan, lines));
        } else {
            RidePlan.of(judged.record(), judged).ifPresent(plan -> ride(plan, lines));
        }
        return lines;
    }

    private static void ride(RidePlan plan, List<String> lines) {
        lines.add(plan.says());
        for (RidePlan.Restraint held : plan.restraints()) {
            lines.add(held.because() + upTo(held.upTo()) + ": " + String.join(", ", held.points()));
            held.lines().forEach(line -> lines.add("- " + line.says()));
        }
        for (RidePlan.Step step : plan.steps()) {
            lines.add(step.title() + upTo(step.upTo()) + (step.leftOut() == null ? "" : ", left out: " + step.leftOut()));
            step.doing().forEach(line -> lines.add("- " + line.says()));
            step.feel().forEach(line -> lines.add("- feel for " + line.says()));
        }
        plan.stop().forEach(line -> lines.add("Stop at once: " + line.says()));
        plan.back().forEach(line -> lines.add("On return: " + line.says()));
    }

    private static String upTo(RidePlan.Line speed) {
        return speed == null ? "" : ", " + speed.says();
    }

    private static void run(RunPlan plan, List<String> lines) {
        lines.add(plan.says());
        plan.caution().forEach(words -> lines.add("Caution: " + words));
        for (RunPlan.Part part : plan.parts()) {
            lines.add(part.title());
            for (int i = 0; i < part.lines().size(); i++) {
                lines.add((part.numbered() ? i + 1 + ". " : "- ") + part.lines().get(i));
            }
        }
    }
}
