package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Gate;
import chock.rulebook.Applied;
import chock.rulebook.Limit;
import chock.rulebook.Source;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonReportTest {

    private static JsonNode parse(String json) throws Exception {
        return new JsonMapper().readTree(json);
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void it_is_always_an_array() throws Exception {
        assertThat(parse(JsonReport.of(List.of())).isArray()).isTrue();
        assertThat(parse(JsonReport.of(List.of(Sample.assessment(Sample.blocked()))))).hasSize(1);
        assertThat(parse(JsonReport.of(List.of(Sample.assessment(), Sample.assessment())))).hasSize(2);
    }

    @Test
    void every_key_of_the_contract_is_there_in_its_order() throws Exception {
        JsonNode record = parse(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).get(0);
        assertThat(keys(record)).containsExactly("record", "asOf", "rulebook", "gates", "unasked", "unread", "openDefects", "lifted", "claims", "overdue", "register");
        assertThat(keys(record.get("rulebook"))).containsExactly("version", "digest", "house");
        assertThat(keys(record.get("gates"))).containsExactly("road-test");
        JsonNode gate = record.at("/gates/road-test");
        assertThat(keys(gate)).containsExactly("verdict", "holdsUntil", "findings", "closedBy", "notApplicable", "ruleBookFaults");
        assertThat(gate.get("findings")).allSatisfy(finding -> assertThat(keys(finding)).containsExactly("check", "state", "notes", "says",
                "measured", "limit", "remedy", "caution", "evidence", "margin", "critical", "places"));
        JsonNode finding = gate.get("findings").get(0);
        assertThat(keys(finding.get("measured"))).containsExactly("value", "unit", "uncertainty");
        assertThat(keys(finding.get("limit"))).containsExactly("id", "value", "unit", "sense", "source");
        assertThat(keys(gate.get("notApplicable").get(0))).containsExactly("check", "why");
    }

    @Test
    void claims_are_told_with_what_became_of_them() throws Exception {
        assertThat(parse(JsonReport.of(List.of(Sample.claimed("new in May")))).at("/0/claims").toString()).isEqualTo(
                "[{\"claim\":\"new\",\"about\":\"rear-wheel/tyre\",\"says\":\"new in May\",\"by\":\"seller\",\"supportedBy\":[\"e3\"],"
                        + "\"standing\":\"contradicted\",\"why\":\"date code 1009 (e4)\",\"evidence\":[\"e4\"]}]");
        assertThat(parse(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).at("/0/claims")).isEmpty();
    }

    @Test
    void numbers_are_strings_with_the_digits_as_written() throws Exception {
        JsonNode finding = parse(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).at("/0/gates/road-test/findings/0");
        assertThat(finding.at("/measured/value").isTextual()).isTrue();
        assertThat(finding.at("/measured/value").textValue()).isEqualTo("1.20");
        assertThat(finding.at("/measured/uncertainty").textValue()).isEqualTo("0.10");
        assertThat(finding.at("/limit/value").textValue()).isEqualTo("1.50");
        assertThat(finding.at("/limit/sense").textValue()).isEqualTo("at-least");
        assertThat(finding.at("/limit/source/kind").textValue()).isEqualTo("law");
        assertThat(finding.at("/limit/source/document").textValue()).isEqualTo("Example code");
        assertThat(finding.at("/limit/source/others/0").textValue()).isEqualTo("also at least 1.0 mm (common practice)");
        assertThat(finding.at("/margin/value").textValue()).isEqualTo("-0.30");
        assertThat(finding.at("/critical").booleanValue()).isTrue();
        assertThat(finding.at("/places/1/point").textValue()).isEqualTo("front-brake/caliper/outer-pad");
        assertThat(finding.at("/places/1/measured").isNull()).isTrue();
    }

    @Test
    void each_state_has_its_word_and_what_is_unknown_is_null() throws Exception {
        JsonNode gate = parse(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).at("/0/gates/road-test");
        assertThat(gate.get("findings")).extracting(f -> f.get("state").textValue()).containsExactly("fault", "doubt", "stale", "missing", "met");
        assertThat(gate.get("verdict").textValue()).isEqualTo("blocked");
        assertThat(gate.get("holdsUntil").isNull()).isTrue();
        JsonNode met = gate.get("findings").get(4);
        assertThat(List.of("measured", "limit", "remedy", "caution", "margin")).allSatisfy(key -> assertThat(met.get(key).isNull()).as(key).isTrue());
    }

    @Test
    void times_carry_the_offset_of_the_workshops_clock_and_are_never_shown_later_than_they_are() throws Exception {
        JsonNode record = parse(JsonReport.of(List.of(Sample.assessment(Sample.released())))).get(0);
        assertThat(record.get("asOf").textValue()).isEqualTo("2026-07-25T12:00:30+01:00");
        assertThat(record.at("/gates/first-start/verdict").textValue()).isEqualTo("released");
        assertThat(record.at("/gates/first-start/holdsUntil").textValue()).isEqualTo("2026-08-24T23:59:59+01:00");
    }

    @Test
    void a_range_is_given_with_both_ends_in_one_unit_and_an_uncertainty_in_the_unit_of_its_value() throws Exception {
        Applied limit = new Applied("tyres.pressure", new Bounds(Quantity.parse("1.5 bar"), true, Quantity.parse("200 kPa"), true),
                Limit.Sense.WITHIN, new Source(Source.Kind.PRACTICE, null, null, Source.Known.PRACTICE), List.of());
        Measured measured = new Measured(Quantity.parse("1.8 bar"), Quantity.parse("10 kPa"));
        Finding finding = new Finding("tyres.pressure", State.MET, "Front tyre: 1.8 bar.", measured, limit, Quantity.parse("0.2 bar"),
                null, null, List.of(), List.of("e1"), false, List.of(), null);
        GateVerdict gate = new GateVerdict(Gate.ROAD_TEST, false, null, List.of(finding), List.of(), List.of());
        JsonNode node = parse(JsonReport.of(List.of(Sample.assessment(gate)))).at("/0/gates/road-test/findings/0");
        assertThat(node.at("/limit/value").toString()).isEqualTo("{\"from\":\"1.5\",\"to\":\"2\",\"unit\":\"bar\"}");
        assertThat(node.at("/limit/sense").textValue()).isEqualTo("between");
        assertThat(node.at("/measured/uncertainty").textValue()).isEqualTo("0.1");
    }

    @Test
    void the_same_assessment_gives_the_same_bytes() {
        assertThat(JsonReport.of(List.of(Sample.assessment(Sample.blocked())))).isEqualTo(JsonReport.of(List.of(Sample.assessment(Sample.blocked()))))
                .endsWith("]\n").doesNotContain("\r");
    }
}
