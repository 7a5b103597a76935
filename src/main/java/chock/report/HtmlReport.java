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

/**
 * The report as one page that needs nothing else: no script, no picture, no font from elsewhere. Each state has its
 * word, its sign and its kind of border, so that it reads the same in black on paper.
 */
public final class HtmlReport {
    private static final String STYLE = """
            body{font:16px/1.45 Georgia,"Times New Roman",serif;color:#111;background:#fff;max-width:46rem;margin:2rem auto;padding:0 1rem}
            h1{font-size:1.5rem;margin:0 0 .3rem}h2{font-size:1.25rem;margin:2rem 0 .5rem}h3{font-size:1.05rem;margin:1.4rem 0 .4rem}
            p{margin:.3rem 0}code{font-family:"DejaVu Sans Mono",Consolas,monospace;font-size:.9em;overflow-wrap:anywhere}
            .verdict{border:.3rem double #111;padding:.6rem .9rem;margin:1rem 0}.verdict strong{letter-spacing:.08em}
            .finding{padding:.5rem .9rem;margin:.6rem 0;border:0 solid #111;border-left-width:.4rem;overflow-wrap:anywhere}
            .fault{border-width:.18rem;border-left-width:.7rem}.doubt{border-left-style:dotted}.stale{border-left-style:dashed}
            .missing{border-left-style:double;border-left-width:.5rem}.met{border-left-width:.08rem}
            .sign{display:inline-block;min-width:1.4em;text-align:center;border:1px solid #111;margin-right:.5em;font-family:monospace}
            .small{font-size:.88rem;color:#333}.notice{border-top:1px solid #111;margin-top:2rem;padding-top:.5rem}
            section+section{margin-top:4rem}
            @media print{body{max-width:none;margin:0;font-size:11pt}.finding,.verdict{break-inside:avoid}h2,h3{break-after:avoid}section+section{break-before:page}}
            """;

    private HtmlReport() { }

    /** All of them on one page, in UTF-8. */
    public static String of(List<Assessment> assessments) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        html.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">\n");
        html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        html.append("<title>").append(escape(title(assessments))).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
        assessments.forEach(assessment -> record(assessment, html));
        if (assessments.isEmpty()) {
            paragraph(html, "", "No record was judged.");
        }
        return html.append("</body>\n</html>\n").toString();
    }

    private static String title(List<Assessment> assessments) {
        return "Findings: " + String.join(", ", assessments.stream().map(a -> a.record().id()).toList());
    }

    private static void record(Assessment assessment, StringBuilder html) {
        html.append("<section>\n<h1>").append(escape(assessment.record().id() + ": " + Wording.machine(assessment.record().machine()))).append("</h1>\n");
        paragraph(html, "", Wording.judged(assessment));
        Optional<RunPlan> run = RunPlan.of(assessment.record(), assessment);
        if (assessment.recordedLaw() != null) {
            html.append("<div class=\"verdict\">\n");
            paragraph(html, "Law not checked here: ", assessment.recordedLaw());
            html.append("</div>\n");
        }
        run.ifPresent(plan -> caution(plan, html));
        assessment.gates().forEach(gate -> verdict(assessment, gate, html));
        if (assessment.gates().isEmpty()) {
            html.append("<p class=\"verdict\"><strong>BLOCKED</strong>: no gate was judged</p>\n");
        }
        for (GateVerdict gate : assessment.gates()) {
            details(gate, html);
            if (gate.gate() == Gate.ROAD_TEST) {
                RidePlan.of(assessment.record(), assessment).ifPresent(plan -> plan(plan, html));
            }
            if (gate.gate() == Gate.INDOOR_RUN) {
                run.ifPresent(plan -> plan(plan, html));
            }
        }
        claims(assessment, html);
        footer(assessment, html);
        html.append("</section>\n");
    }

    private static void verdict(Assessment assessment, GateVerdict gate, StringBuilder html) {
        html.append("<p class=\"verdict\"><strong>").append(gate.verdict().toUpperCase(Locale.ROOT)).append("</strong> at ").append(gate.gate());
        html.append(escape(gate.released() ? " " + Wording.until(assessment, gate) + ", " + Wording.UNTOUCHED : ": " + Wording.tally(gate))).append("</p>\n");
    }

    private static void details(GateVerdict gate, StringBuilder html) {
        html.append("<h2>").append(gate.gate()).append("</h2>\n");
        if (!gate.ruleBookFaults().isEmpty()) {
            html.append("<h3>Undecided: the rule book is at fault, not the machine; nothing passes on that</h3>\n");
            gate.ruleBookFaults().forEach(fault -> html.append("<div class=\"finding fault\"><p><span class=\"sign\">!</span>").append(escape(fault)).append("</p></div>\n"));
        }
        for (State state : State.values()) {
            List<Finding> findings = (state == State.MET ? gate.findings() : gate.open()).stream().filter(f -> f.state() == state).toList();
            if (!findings.isEmpty()) {
                String word = state.id();
                html.append("<h3>").append(Character.toUpperCase(word.charAt(0))).append(word.substring(1)).append(": ").append(Wording.meaning(state)).append("</h3>\n");
                findings.forEach(finding -> finding(finding, html));
            }
        }
        if (!gate.notApplicable().isEmpty()) {
            html.append("<h3>").append(Wording.notAsked(gate)).append("</h3>\n<ul class=\"small\">\n");
            gate.notApplicable().forEach(n -> html.append("<li><code>").append(escape(n.check())).append("</code>: ").append(escape(n.why())).append("</li>\n"));
            html.append("</ul>\n");
        }
    }

    private static void finding(Finding finding, StringBuilder html) {
        html.append("<div class=\"finding ").append(finding.state().id()).append("\">\n<p><span class=\"sign\">").append(Wording.sign(finding.state()));
        html.append("</span><strong>").append(finding.state().id()).append("</strong> <code>").append(escape(finding.check())).append("</code>");
        html.append(finding.critical() ? " (critical)" : "").append("</p>\n");
        paragraph(html, "", finding.says());
        Wording.elsewhere(finding).forEach(also -> paragraph(html, "", also));
        Wording.notes(finding).forEach(note -> paragraph(html, "Note: ", note));
        if (!Wording.basis(finding).isEmpty()) {
            html.append("<p class=\"small\">").append(escape(Wording.basis(finding))).append("</p>\n");
        }
        if (finding.remedy() != null && finding.state() != State.MET) {
            paragraph(html, Wording.toDo(finding.state()), finding.remedy());
        }
        if (finding.caution() != null) {
            paragraph(html, "Caution: ", finding.caution());
        }
        html.append("</div>\n");
    }

    private static void caution(RunPlan plan, StringBuilder html) {
        if (!plan.caution().isEmpty()) {
            html.append("<div class=\"verdict\">\n");
            paragraph(html, "Caution: carbon monoxide", "");
            list(html, "ul", plan.caution());
            html.append("</div>\n");
        }
    }

    private static void plan(RunPlan plan, StringBuilder html) {
        html.append("<h3>Run plan</h3>\n");
        paragraph(html, "", plan.says());
        list(html, "ul", plan.figures().stream().map(Wording::figure).toList());
        if (!plan.restsOn().isEmpty()) {
            paragraph(html, "These figures take as given: ", String.join("; ", plan.restsOn()) + ".");
        }
        for (RunPlan.Part part : plan.parts()) {
            paragraph(html, part.title() + ":", "");
            list(html, part.numbered() ? "ol" : "ul", part.lines());
        }
    }

    private static void plan(RidePlan plan, StringBuilder html) {
        html.append("<h3>Ride plan</h3>\n");
        paragraph(html, "", plan.says());
        for (RidePlan.Restraint restraint : plan.restraints()) {
            paragraph(html, "Held back: ", Wording.because(restraint));
            list(html, Wording.restraint(restraint));
        }
        List<RidePlan.Step> ridden = plan.steps().stream().filter(step -> step.leftOut() == null).toList();
        if (!ridden.isEmpty()) {
            html.append("<ol>\n");
            for (RidePlan.Step step : ridden) {
                html.append("<li>");
                paragraph(html, "", Wording.step(step));
                list(html, step.doing().stream().map(Wording::line).toList());
                paragraph(html, "Feel for: ", Wording.list(step.feel()));
                html.append("</li>\n");
            }
            html.append("</ol>\n");
        }
        plan.steps().stream().filter(step -> step.leftOut() != null)
                .forEach(step -> paragraph(html, "Left out: ", step.title() + ": " + step.leftOut() + "."));
        if (!plan.stop().isEmpty()) {
            paragraph(html, "Stop at once: ", Wording.list(plan.stop()));
            paragraph(html, "On return:", "");
            list(html, plan.back().stream().map(Wording::line).toList());
        }
    }

    private static void list(StringBuilder html, List<String> lines) {
        list(html, "ul", lines);
    }

    private static void list(StringBuilder html, String kind, List<String> lines) {
        html.append("<").append(kind).append(">\n");
        lines.forEach(line -> html.append("<li>").append(escape(line)).append("</li>\n"));
        html.append("</").append(kind).append(">\n");
    }

    private static void claims(Assessment assessment, StringBuilder html) {
        if (!assessment.claims().isEmpty()) {
            html.append("<h2>Claims: ").append(Wording.CLAIMS).append("</h2>\n<ul>\n");
            assessment.claims().forEach(c -> html.append("<li><strong>").append(c.standing().id()).append("</strong>, ").append(escape(Wording.claim(c) + ": " + c.says())).append(".</li>\n"));
            html.append("</ul>\n");
        }
    }

    private static void footer(Assessment assessment, StringBuilder html) {
        html.append("<div class=\"notice small\">\n");
        Disclosures told = assessment.disclosures();
        section(html, "Open defects", told.defects().stream().map(Disclosures.Told::says).toList());
        section(html, "Faults and defects lifted without work", told.lifted().stream().map(Disclosures.Told::says).toList());
        section(html, "Entries that no check reads", told.unread().stream().map(one -> one.says() + ". " + one.fate()).toList());
        paragraph(html, "Local code: ", assessment.localCode());
        html.append("<p><strong>Rule book: </strong>").append(escape(assessment.ruleBookVersion())).append(", <code>").append(escape(assessment.ruleBookDigest())).append("</code></p>\n");
        html.append("<p><strong>Register: </strong>").append(escape(Wording.register(assessment))).append("</p>\n");
        html.append("<p><strong>House: </strong>").append(escape(Wording.house(assessment)));
        html.append(assessment.house() == null ? "" : ", <code>" + escape(assessment.house().digest()) + "</code>").append("</p>\n");
        if (!Wording.overdue(assessment).isEmpty()) {
            paragraph(html, "Review: ", Wording.overdue(assessment));
        }
        html.append("<p><strong>").append(Wording.NOTICE).append("</strong></p>\n</div>\n");
    }

    private static void section(StringBuilder html, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            paragraph(html, title + ":", "");
            list(html, lines);
        }
    }

    private static void paragraph(StringBuilder html, String lead, String words) {
        html.append("<p>");
        if (!lead.isEmpty()) {
            html.append("<strong>").append(lead).append("</strong>");
        }
        html.append(escape(words)).append("</p>\n");
    }

    private static String escape(String words) {
        return Page.clean(words).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("'", "&#39;");
    }
}
