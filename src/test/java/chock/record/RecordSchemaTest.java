package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordSchemaTest {
    private final ObjectNode written = RecordSchema.schema(Words.VOCABULARY);
    private final Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(written);

    private List<Error> errors(String yaml) throws IOException {
        return schema.validate(new YAMLMapper().readTree(yaml));
    }

    @Test
    void goodRecordFits() throws IOException {
        assertThat(errors(Words.good())).isEmpty();
        JsonNode json = new ObjectMapper().readTree(Words.bytes("good.json"));
        assertThat(schema.validate(json)).isEmpty();
    }

    @Test
    void recordOfTheFirstFormFits() throws IOException {
        String former = Words.good().replace("job-record/2", "job-record/1").replaceAll(", seq: \\d+|, is: 24 N·m, with: wrench-1", "");
        assertThat(Words.read(former).form()).isEqualTo(1);
        assertThat(errors(former)).isEmpty();
    }

    @Test
    void sessionsFitWhereTheReaderTakesThem() throws IOException {
        String session = "sessions:\n  - {id: s1, at: 2026-11-21, by: ida, with: {thickness: cal-1}, front-brake: {caliper/inner-pad thickness: 3.1 mm, hydraulic: {hose condition: sound, done: [bled, cleaned]}}, rear-brake tried feel: firm}\n";
        assertThat(Words.read(Words.good() + session)).isNotNull();
        assertThat(errors(Words.good() + session)).isEmpty();
        for (String[] bad : new String[][] {{"id: s1, ", ""}, {"by: ida, ", ""}, {"at: 2026-11-21", "at: today"}, {"{thickness: cal-1}", "{}"}, {"{thickness: cal-1}", "cal-1"}, {"hose condition: sound", "hose condition: ''"}}) {
            String text = Words.good() + session.replace(bad[0], bad[1]);
            assertThat(catchThrowable(() -> Words.read(text))).as(bad[0]).isInstanceOf(UnusableInput.class);
            assertThat(errors(text)).as(bad[0]).isNotEmpty();
        }
    }

    @Test
    void localLawFitsWhereTheReaderTakesIt() throws IOException {
        String law = """
                local-law:
                  limits:
                    - {limit: brakes.disc-thickness, at-least: 4.0 mm, document: Vehicle Order 1967, section: "§ 4 (4)", as-of: 2024-12-31, by: ida, seconded-by: tom}
                  sets-none:
                    - {limit: brakes.disc-runout, document: Vehicle Order 1967, section: whole, as-of: 2024-12-31, by: ida}
                """;
        assertThat(Words.read(Words.good() + law)).isNotNull();
        assertThat(errors(Words.good() + law)).isEmpty();
        for (String[] bad : new String[][] {{", at-least: 4.0 mm", ""}, {"brakes.disc-runout", "tyres.pressure"}, {"as-of: 2024-12-31, by: ida}", "as-of: 2024, by: ida}"}, {"section: whole, ", ""}, {"  limits:", "  numbers:"}, {"document: Vehicle", "page: 4, document: Vehicle"}}) {
            String text = Words.good() + law.replace(bad[0], bad[1]);
            assertThat(catchThrowable(() -> Words.read(text))).as(bad[0]).isInstanceOf(UnusableInput.class);
            assertThat(errors(text)).as(bad[0]).isNotEmpty();
        }
        assertThat(errors((Words.good() + law).replace("job-record/2", "job-record/1"))).isNotEmpty();
    }

    @Test
    void schemaIsItselfASchema() {
        Schema meta = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertThat(meta.validate(written)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "chock: job-record/2|chock: job-record/1", "seq: 7|seq: 0", "volts: 6|volts: six", "volts: 6|vlots: 6", "kind: motorcycle|kind: motorbike", "territory: GB|territory: Great Britain",
        "seeks: [road-test, hand-over]|seeks: []", "seeks: [road-test, hand-over]|seeks: road-test", "engine-number: none|engine-number:", "built: 1974|built: 74",
        "top-speed: 120 km/h|top-speed: 120", "at-least: 4.5 mm, |'' ", "at-least: 4.5 mm|at-least: 4.5 mm, is: 5 mm", "for: tyres.pressure|for: tyres.presure",
        "point: front-brake/control|point: front-brake/leaver", "tried: feel|tried: fell", "is: firm|is: fine", "is: 2023-05|is: May 2023", "is: 3.1 mm ± 0.2 mm|is: three",
        ", with: cal-1|'' ", "done: bled|done: bleed", "done: bled|'done: bled, is: good'", "seen: condition|'seen: condition, done: bled'", "seen: condition, |'' ",
        "'corrects: e3, '|''", "inspected: refused|inspected: failed", "'licence: L-2231, '|''", "instrument: meter-1|point: front-wheel", "'is: sound}'|'is: sound, with: cal-1}'",
        "horn: yes|horn: bulb", "stands: 2|stands: 4", "', speedometer: yes'|''", "history: known|history: lost", "'  history: known\n'|''", "claim: new|claim: genuine", "done: torqued, is: 24 N·m|done: bled, is: 24 N·m", "done: torqued, is: 24 N·m, with: wrench-1|done: torqued, is: 24 N·m", "done: torqued, is: 24 N·m|done: torqued, is: tight",
        "'supported-by: [e6, e15]'|'supported-by: [e6, e6]'", "', supported-by: [e6, e15]'|''", "'by: seller, '|''"})
    void whatTheReaderRefusesUnderlines(String good, String bad) throws IOException {
        String text = Words.good().replaceFirst(Pattern.quote(good), Matcher.quoteReplacement(bad.isBlank() ? "" : bad));
        assertThat(text).isNotEqualTo(Words.good());
        assertThat(catchThrowable(() -> Words.read(text))).isInstanceOf(UnusableInput.class);
        assertThat(errors(text)).isNotEmpty();
    }

    /** The reader decides; an editor must never underline what it accepts. These are shapes it accepts. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"frame-number: TB25-10382|frame-number: 10382", "one-person: no|one-person: false", "volts: 6|volts: '6'", "is: 24 psi|is: 24psi",
        "is: 3.1 mm ± 0.2 mm|is: 1/8 in ± 1/64 in", "is: 3.1 mm ± 0.2 mm|is: 3.1 ± 0.2 mm", "is: 3.1 mm ± 0.2 mm|is: 1 1/4 in +/- 0.2 mm", "is: yes|is: true", "id: cal-1|id: 0", "uncertainty: by-kind|uncertainty: 0.1 mm", "point: front-brake/control|point: front-brake/lever"})
    void whatTheReaderAcceptsFits(String one, String other) throws IOException {
        String text = Words.good().replaceFirst(Pattern.quote(one), other);
        if (one.equals("id: cal-1")) {
            text = text.replace("with: cal-1", "with: 0");
        }
        assertThat(text).isNotEqualTo(Words.good());
        assertThat(Words.read(text)).isNotNull();
        assertThat(errors(text)).isEmpty();
    }

    @Test
    void everyKeyOfTheReaderIsThere() {
        assertThat(Set.copyOf(Binding.keysOf(Raw.Job.class))).isEqualTo(keys(written));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Machine.class))).isEqualTo(keys(written.at("/properties/machine")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Figure.class))).isEqualTo(keys(written.at("/properties/maker/properties/figures/items")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Person.class))).isEqualTo(keys(written.at("/properties/people/items")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Instrument.class))).isEqualTo(keys(written.at("/properties/instruments/items")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Entry.class))).isEqualTo(keys(written.at("/properties/entries/items")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Claim.class))).isEqualTo(keys(written.at("/properties/claims/items")));
        assertThat(Set.copyOf(Binding.keysOf(Raw.Equipment.class))).isEqualTo(keys(written.at("/properties/machine/properties/equipment")));
    }

    private static Set<String> keys(JsonNode form) {
        Set<String> keys = new HashSet<>();
        form.get("properties").fieldNames().forEachRemaining(keys::add);
        return keys;
    }
}
