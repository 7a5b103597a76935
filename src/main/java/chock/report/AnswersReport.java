package chock.report;

import chock.assess.Assessment;
import chock.assess.Closest;
import chock.assess.Explanation;
import chock.assess.GateVerdict;
import chock.assess.Points;
import chock.quantity.Quantity;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/**
 * What was asked about an assessment besides the verdict: why, what was not asked, and how sure the readings are.
 *
 * @param why explanations; empty when nobody asked
 * @param notAsked whether the checks that do not apply are listed
 * @param closest how sure each reading is, or null when nobody asked
 */
public record AnswersReport(Assessment assessment, List<Explanation> why, boolean notAsked, List<Closest> closest) {
    private static final int SHOWN = 10;

    /** Verdicts and answers, in lines of at most 80 columns. */
    public String text(boolean bold) {
        Page page = new Page(bold);
        page.gap().put(0, assessment.record().id() + ": " + Wording.machine(assessment.record().machine())).put(0, Wording.judged(assessment));
        why.forEach(explanation -> explain(explanation, page));
        if (notAsked) {
            assessment.gates().forEach(gate -> notAsked(gate, page));
        }
        if (closest != null) {
            closest(page);
        }
        return TextReport.verdicts(assessment, bold) + page.gap().put(0, Wording.NOTICE);
    }

    private static void explain(Explanation explanation, Page page) {
        WhyWords why = WhyWords.of(explanation);
        page.gap().heading("WHY " + why.check()).put(2, why.question());
        if (!why.none().isEmpty()) {
            page.put(2, why.none());
        }
        for (WhyWords.Place place : why.places()) {
            page.put(2, place.title() + ": " + place.state().id());
            for (WhyWords.Said said : place.lines()) {
                page.put(4, said.lead(), said.words());
                said.below().forEach(one -> page.put(6, "- ", one));
            }
        }
        if (!why.remedy().isEmpty()) {
            page.put(2, why.toDo(), why.remedy());
        }
    }

    private static void notAsked(GateVerdict gate, Page page) {
        page.gap().heading("NOT ASKED at " + gate.gate() + ": " + gate.notApplicable().size());
        gate.notApplicable().forEach(n -> page.put(2, "- ", n.check() + ": " + n.why() + "."));
    }

    private void closest(Page page) {
        page.gap().heading("HOW SURE: chance that the value really lies within its limit, least first");
        page.put(2, "Normal distribution, standard uncertainty half of the U written (JCGM 106:2012, 7). It changes no verdict.");
        for (Closest one : closest.subList(0, Math.min(SHOWN, closest.size()))) {
            page.put(2, String.format(Locale.ROOT, "%8s  ", percent(one.conformity())), one.check() + (assessment.gates().size() > 1 ? " at " + one.gate() : "") + ", " + Points.words(one.point()) + ": "
                    + Wording.shown(one.measured()) + ", " + one.limit().words() + "; " + (one.margin() == null ? "" : Wording.margin(one.margin()) + "; ") + one.state().id() + ".");
        }
        if (closest.size() > SHOWN) {
            page.put(2, "And " + (closest.size() - SHOWN) + " more, no less sure; --format json lists all.");
        }
        if (closest.isEmpty()) {
            page.put(2, "No reading with an uncertainty was held against a limit.");
        }
    }

    /** Rounded down, so that nothing is called surer than it is; a hundred per cent only where no tenth is missing. */
    private static String percent(Quantity conformity) {
        BigDecimal value = conformity.value().setScale(1, RoundingMode.DOWN);
        return value.compareTo(new BigDecimal("99.9")) >= 0 ? "> 99.9 %" : value.compareTo(new BigDecimal("0.1")) < 0 ? "< 0.1 %" : value + " %";
    }

    /** Adds the answers to the report for scripts, under keys of their own. */
    void addTo(ObjectNode node) {
        if (!why.isEmpty()) {
            ArrayNode all = node.putArray("why");
            why.forEach(explanation -> all.add(json(explanation)));
        }
        if (closest != null) {
            ArrayNode all = node.putArray("closest");
            closest.forEach(one -> {
                ObjectNode row = all.addObject().put("gate", one.gate().id()).put("check", one.check()).put("point", one.point()).put("state", one.state().id());
                row.set("measured", JsonReport.measured(one.measured()));
                row.set("limit", JsonReport.limit(one.limit()));
                row.set("margin", JsonReport.quantity(one.margin()));
                row.set("conformity", JsonReport.quantity(one.conformity()));
            });
        }
    }

    /** One explanation, as {@code assess --why} prints it for scripts. */
    public static ObjectNode json(Explanation explanation) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("check", explanation.check()).put("question", explanation.question()).put("askedOf", explanation.applies());
        ArrayNode places = node.putArray("places");
        for (Explanation.AtPlace place : explanation.places()) {
            ObjectNode at = places.addObject().put("point", place.point()).put("state", place.state().id()).put("rule", place.rule());
            at.set("because", JsonReport.texts(place.because()));
            ArrayNode wants = at.putArray("wants");
            for (Explanation.WantedHere want : place.wants()) {
                ObjectNode one = wants.addObject().put("asks", want.asks()).put("holds", want.holds());
                ArrayNode considered = one.putArray("considered");
                want.considered().forEach(c -> considered.addObject().put("entry", c.entry()).put("fate", c.fate().name().toLowerCase(Locale.ROOT).replace('_', '-')).put("says", c.says()).set("why", JsonReport.texts(c.why())));
            }
            at.put("limit", place.limit());
            at.set("otherLimits", JsonReport.texts(place.others()));
            at.set("lacks", JsonReport.texts(place.lacks()));
            at.set("closes", JsonReport.texts(place.closes()));
            ArrayNode compared = at.putArray("compared");
            place.compared().forEach(c -> compared.addObject().put("state", c.state().id()).put("says", c.says()).put("margin", c.margin()).put("rule", c.how()).set("evidence", JsonReport.texts(c.evidence())));
        }
        return node;
    }
}
