package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.RunCourse;
import chock.assess.RunRecord;
import chock.record.Machine.Cycle;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** How the plan of a run under a roof is shown and drawn. */
class RunPlanReportTest {
    private static final Assessment SERIES = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("2000 m³ ± 200 m³", "2on,28off,2on").judged();
    private static final Assessment REFUSED = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("200 m³ ± 20 m³", "5on").judged();
    private static final Assessment HOSE = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().byHose("200 m³ ± 20 m³", "15on").judged();

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void the_caution_stands_before_the_verdict_released_or_not() {
        for (Assessment assessment : List.of(SERIES, REFUSED, HOSE)) {
            String text = TextReport.of(List.of(assessment), false);
            assertThat(text).startsWith("CAUTION: carbon monoxide\n");
            assertThat(text).containsSubsequence("call the emergency services", "never a permission", " at indoor-run", "\nRUN PLAN\n", "Who may be in the room:", "Stop at once and leave:", "Local code:");
            assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
            assertThat(HtmlReport.of(List.of(assessment))).containsSubsequence("Caution: carbon monoxide", "call the emergency services", " at indoor-run", "<h3>Run plan</h3>");
        }
    }

    @Test
    void the_text_numbers_what_has_an_order() {
        assertThat(TextReport.of(List.of(SERIES), false)).contains("    1. Ask whether it can be done outdoors.", "    - when the meter shows 100 ppm", "  - longest single run: 4 min 30 s\n");
        assertThat(HtmlReport.of(List.of(SERIES))).containsSubsequence("<strong>Before the start:</strong>", "<ol>", "Ask whether", "</ol>", "<strong>Stop at once and leave:</strong>", "<ul>");
    }

    @Test
    void scripts_find_every_figure_with_its_unit_at_this_gate_alone() throws Exception {
        JsonNode plan = new JsonMapper().readTree(JsonReport.of(List.of(SERIES))).at("/0/gates/indoor-run/runPlan");
        assertThat(keys(plan)).containsExactly("mayRun", "says", "caution", "figures", "restsOn", "parts");
        assertThat(plan.get("mayRun").booleanValue()).isTrue();
        assertThat(plan.get("caution")).hasSize(4);
        assertThat(plan.get("figures")).extracting(figure -> figure.get("id").textValue())
                .containsExactly("planned-run", "longest-run", "highest", "between", "stop-level", "start-level", "purge");
        assertThat(keys(plan.at("/figures/0"))).containsExactly("id", "name", "says", "amount", "source");
        assertThat(plan.at("/figures/1/amount/value").textValue()).isEqualTo("4.50");
        assertThat(plan.at("/figures/1/amount/unit").textValue()).isEqualTo("min");
        assertThat(plan.at("/figures/1/source").isNull()).isTrue();
        assertThat(plan.at("/figures/4/source/says").textValue()).contains("OSHA");
        assertThat(keys(plan.at("/parts/0"))).containsExactly("id", "title", "numbered", "lines");
        assertThat(new JsonMapper().readTree(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).at("/0/gates/road-test").has("runPlan")).isFalse();
        assertThat(TextReport.of(List.of(Sample.assessment(Sample.blocked())), false)).doesNotContain("CAUTION: carbon").doesNotContain("RUN PLAN");
    }

    private static String chart(Assessment assessment) {
        return RunChart.svg(RunCourse.of(assessment).orElseThrow(), RunChart.about(assessment));
    }

    @Test
    void the_chart_is_one_sound_document_in_black_white_and_grey() throws Exception {
        for (Assessment assessment : List.of(SERIES, REFUSED, HOSE)) {
            String svg = chart(assessment);
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            assertThat(factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg))).getDocumentElement().getTagName()).isEqualTo("svg");
            Set<String> coloured = new TreeSet<>();
            for (Matcher m = Pattern.compile("(?:rgb\\((\\d+),(\\d+),(\\d+)\\)|(?:fill|stroke)=\"(?!rgb)([a-z]+)\")").matcher(svg); m.find(); ) {
                boolean grey = m.group(1) != null ? m.group(1).equals(m.group(2)) && m.group(2).equals(m.group(3)) : Set.of("none", "black", "white", "gray", "silver").contains(m.group(4));
                if (!grey) {
                    coloured.add(m.group());
                }
            }
            assertThat(svg).contains("fill=\"white\"", "stroke-dasharray=\"9,6\"");
            assertThat(coloured).isEmpty();
            assertThat(chart(assessment)).as("drawn again").isEqualTo(svg);
        }
    }

    @Test
    void the_chart_names_its_lines_and_says_what_it_is_not() {
        assertThat(chart(REFUSED)).contains("<title>Carbon monoxide in the room, as predicted at its worst. HV-0142, Tarnbeck Lark 250: indoor-run blocked",
                "STOP AND LEAVE, most for the dashed line 100 ppm", "ceiling 200 ppm", "start, and come back, at 9 ppm", "minutes from the start: the run", "hours from its end: airing",
                "come back, if the meter agrees", "An aid, never a permission: the meter decides.");
        assertThat(chart(HOSE)).contains("IF THE HOSE SLIPS").doesNotContain("off the scale");
        // worst: 21 L/min into 90 m³ with 45 m³/h ÷ 3, for 30 min, from 5 ppm: 84 000 ppm · (1 − e^(−0.0833)) and 5 = 6721 ppm
        assertThat(chart(RunRecord.of("500 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("100 m³ ± 10 m³", "30on").judged())).contains("off the scale, up to 6721 ppm");
    }
}
