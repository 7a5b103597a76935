package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.rulebook.RideSheet;
import chock.rulebook.Source;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How the plan of a ride is shown. */
class RidePlanReportTest {
    private static final Source PRACTICE = new Source(Source.Kind.PRACTICE, null, null, Source.Known.PRACTICE);

    private static RideSheet.Line line(String say) {
        return new RideSheet.Line(say, null, null, null, null);
    }

    private static final RideSheet SHEET = new RideSheet(
            List.of(new RideSheet.Step("yard", "Walking pace", new RideSheet.Ceiling(Quantity.parse("5 mph"), PRACTICE), List.of(line("Try each brake <alone>.")), List.of(line("drag"), line("play"))),
                    new RideSheet.Step("road", "Road", new RideSheet.Ceiling(Quantity.parse("60 mph"), PRACTICE), List.of(line("Go.")), List.of(line("weave")))),
            List.of(new RideSheet.Restraint("new-tyres", "A tyre is new", null, List.of(new RideSheet.After(Set.of("replaced"), Set.of("rear-wheel/tyre"))), "bedded", null, null,
                    new RideSheet.Ceiling(Quantity.parse("5 mph"), PRACTICE),
                    List.of(new RideSheet.Line("slippery for {amount}", Quantity.parse("100 mi"), PRACTICE, null, null)), List.of(line("Look at the bead.")))),
            List.of(line("any wobble")), List.of(line("Look for leaks.")));

    private static Assessment assessment(GateVerdict... gates) {
        JobRecord r = Sample.record("Hollow Vale Motor Works");
        Entry tyre = new Entry("e4", new Moment(LocalDate.of(2026, 7, 20), null, Sample.LONDON), "ida", Deed.DONE, "rear-wheel/tyre", "replaced", null, null, null, null, null, 1);
        JobRecord record = r.withEntries(List.of(tyre));
        return new Assessment(record, Sample.NOON, "0.1.0", Sample.DIGEST, "Great Britain (GB)", null, List.of(gates), List.of(), chock.assess.Disclosures.NONE, List.of(), SHEET, null, List.of());
    }

    @Test
    void the_text_has_it_below_the_findings_of_the_road_test() {
        String text = TextReport.of(List.of(assessment(Sample.blocked())), false);
        assertThat(text).containsSubsequence("1 of 5 checks are met.", "\nRIDE PLAN\n  Not to be ridden while road-test is blocked.",
                "  ! A tyre is new (rear wheel, tyre; entry e4)\n    - up to 5 mph (8 km/h) (common practice)\n    - slippery for 100 mi (161 km) (common practice)\n",
                "  1. Walking pace: up to 5 mph (8 km/h) (common practice)\n     - Try each brake <alone>.\n     Feel for: drag; play.\n",
                "  Left out: Road: a tyre is new (up to 5 mph (8 km/h)).\n", "  Stop at once: any wobble.\n", "  On return:\n    - Look for leaks.\n    - Look at the bead.\n", "Local code:");
        assertThat(text.lines()).allSatisfy(l -> assertThat(l.length()).isLessThanOrEqualTo(80));
    }

    @Test
    void the_page_has_it_with_its_words_escaped() {
        String page = HtmlReport.of(List.of(assessment(Sample.blocked())));
        assertThat(page).containsSubsequence("<h3>Ride plan</h3>", "Not to be ridden", "<strong>Held back: </strong>A tyre is new (rear wheel, tyre; entry e4)", "<ul>", "slippery for 100 mi (161 km) (common practice)",
                "<ol>", "Walking pace: up to 5 mph", "Try each brake &lt;alone&gt;.", "<strong>Feel for: </strong>drag; play.", "</ol>", "<strong>Left out: </strong>Road", "<strong>Stop at once: </strong>any wobble.", "Look at the bead.");
        assertThat(page).doesNotContain("<alone>");
    }

    @Test
    void scripts_find_every_number_with_its_unit_and_source() throws Exception {
        JsonNode plan = new JsonMapper().readTree(JsonReport.of(List.of(assessment(Sample.blocked())))).at("/0/gates/road-test/ridePlan");
        assertThat(keys(plan)).containsExactly("rideable", "says", "limits", "steps", "stopWhen", "onReturn");
        assertThat(plan.get("rideable").booleanValue()).isFalse();
        assertThat(keys(plan.at("/limits/0"))).containsExactly("id", "because", "points", "evidence", "upTo", "lines");
        assertThat(plan.at("/limits/0/lines/0/amount/value").textValue()).isEqualTo("100");
        assertThat(plan.at("/limits/0/lines/0/amount/unit").textValue()).isEqualTo("mi");
        assertThat(plan.at("/limits/0/lines/0/source/kind").textValue()).isEqualTo("practice");
        assertThat(keys(plan.at("/steps/0"))).containsExactly("id", "title", "upTo", "leftOut", "do", "feelFor");
        assertThat(plan.at("/steps/0/upTo/amount/value").textValue()).isEqualTo("5");
        assertThat(plan.at("/steps/0/leftOut").isNull()).isTrue();
        assertThat(plan.at("/steps/1/upTo").isNull()).isTrue();
        assertThat(plan.at("/steps/1/leftOut").textValue()).startsWith("a tyre is new");
        assertThat(plan.at("/onReturn/1/says").textValue()).isEqualTo("Look at the bead.");
        assertThat(plan.at("/onReturn/1/amount").isNull()).isTrue();
    }

    @Test
    void no_other_gate_has_one() throws Exception {
        Assessment other = assessment(Sample.released());
        assertThat(TextReport.of(List.of(other), false)).doesNotContain("RIDE PLAN");
        assertThat(HtmlReport.of(List.of(other))).doesNotContain("Ride plan");
        assertThat(new JsonMapper().readTree(JsonReport.of(List.of(other))).at("/0/gates/first-start").has("ridePlan")).isFalse();
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
