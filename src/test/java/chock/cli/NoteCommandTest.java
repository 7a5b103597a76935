package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NoteCommandTest {
    private static final String AS_OF = "--as-of=2026-11-25T12:00";
    private static final String NOTE = "front brake: new pads, 4.2 and 4.1 millimetres, bled, lever firm, no leaks; rear tyre 28 psi cold";
    @TempDir Path folder;
    private Path record;

    @BeforeEach
    void copied() throws IOException {
        record = folder.resolve("r.yaml");
        Files.copy(Path.of("docs/examples/lark-gaps.yaml"), record);
    }

    private Run note(String words, String... more) {
        List<String> args = new ArrayList<>(List.of("note", AS_OF, record.toString(), words));
        args.addAll(List.of(more));
        return Run.of(args.toArray(String[]::new));
    }

    private static List<String> keys(JsonNode node) {
        List<String> keys = new ArrayList<>();
        node.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    @Test
    void jsonHasTheseKeysAndNoOthersAndWritesNothing() throws IOException {
        byte[] before = Files.readAllBytes(record);
        Run run = note(NOTE + ". The dog sat", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertThat(keys(json)).containsExactly("proposals", "choices", "unknown");
        JsonNode asked = new ObjectMapper().readTree(note(NOTE, "--format", "json").out());
        assertThat(asked.get("proposals")).hasSize(6);
        assertThat(keys(asked.get("proposals").get(0))).containsExactlyInAnyOrder("point", "kind", "what", "is", "with", "said");
        assertThat(asked.get("proposals").get(0).toString()).isEqualTo("{\"point\":\"front-brake/caliper/inner-pad\",\"kind\":\"done\",\"what\":\"replaced\",\"is\":null,\"with\":null,\"said\":\"new pads\"}");
        assertThat(keys(asked.get("choices").get(0))).containsExactly("said", "candidates");
        assertThat(keys(asked.get("choices").get(0).get("candidates").get(0))).containsExactlyInAnyOrder("point", "kind", "what", "is");
        assertThat(asked.get("unknown")).isEmpty();
        assertThat(json.get("unknown").get(0).asText()).isEqualTo("The dog sat");
        assertThat(json.get("proposals")).isEmpty();
        assertThat(Files.readAllBytes(record)).isEqualTo(before);
        assertThat(run.status()).isEqualTo(1);
        assertThat(note("front brake lever firm").status()).isZero();
    }

    @Test
    void whatIsConfirmedIsAddedWithItsWordsAndNothingElse() throws IOException {
        String before = Files.readString(record);
        // pads twice, bled, lever, leaks, tyre with its gauge; then which pad the choice is about: none
        Run run = Run.with("n\nn\ny\ny\n\ny\ngauge-1\n\n", "note", AS_OF, record.toString(), NOTE, "--write", "--by", "tom");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("3 entries added").contains("TO PROVE after this work:").contains("front-brake/control lever-feel");
        String after = Files.readString(record);
        before.lines().forEach(line -> assertThat(after).contains(line));
        assertThat(after.substring(0, before.indexOf("  - {id: e1,"))).isEqualTo(before.substring(0, before.indexOf("  - {id: e1,")));
        assertThat(after).contains("at: 2026-11-25 12:00, seq: 1, by: tom, point: front-brake/hydraulic, done: bled, note: bled, note-is: remark}")
                .contains("seq: 2, by: tom, point: front-brake/control, tried: lever-feel, is: firm, note: lever firm, note-is: remark}")
                .contains("seq: 3, by: tom, point: rear-wheel/tyre, measured: pressure, is: 28 psi, with: gauge-1, note: rear tyre 28 psi cold, note-is: remark}").doesNotContain("done: replaced, note", "id: n4");
        assertThat(Run.of("assess", AS_OF, record.toString()).status()).isEqualTo(1);
    }

    @Test
    void nothingIsConfirmedBySilence() throws IOException {
        byte[] before = Files.readAllBytes(record);
        Run run = Run.with("", "note", AS_OF, record.toString(), NOTE, "--write", "--by", "tom");
        assertThat(run.out()).contains("Nothing was added");
        assertThat(Files.readAllBytes(record)).isEqualTo(before);
    }

    @Test
    void whatARecordWouldRefuseIsRefused() throws IOException {
        byte[] before = Files.readAllBytes(record);
        Run run = Run.with("y\ngauge-1\ny\ncal-1\n", "note", AS_OF, record.toString(), "rear tyre 280 psi; front brake inner pad 420 mm", "--write", "--by", "tom");
        assertThat(run.err()).contains("280 psi").contains("420 mm");
        assertThat(run.out()).contains("Nothing was added");
        assertThat(Run.with("y\n", "note", AS_OF, record.toString(), "horn loud", "--write", "--by", "nobody").err()).contains("'nobody' is not one of the people of this record");
        assertThat(Files.readAllBytes(record)).isEqualTo(before);
    }

    @Test
    void workOfAnotherDayIsToldAndNotWritten() throws IOException {
        byte[] before = Files.readAllBytes(record);
        Run told = note("Last winter the rear brake shoes were replaced and the front brake was bled");
        assertThat(told.out()).contains("ASKED").contains("told: replaced").contains("TO PROVE after this work:").doesNotContain("PROPOSED");
        Run run = Run.with("1\n1\n", "note", AS_OF, record.toString(), "Last winter the rear brake shoes were replaced", "--write", "--by", "tom");
        assertThat(run.out()).contains("Work of another day: write it with its day").contains("Nothing was added").contains("TO PROVE");
        assertThat(Files.readAllBytes(record)).isEqualTo(before);
    }

    @Test
    void usage() {
        assertThat(note("horn loud", "--format", "xml").status()).isEqualTo(2);
        assertThat(note("horn loud", "--format", "json", "--write").status()).isEqualTo(2);
        assertThat(note("x".repeat(5000)).err()).contains("5000 letters");
        assertThat(Run.with("chock: job-record/2\n", "note", "-", "horn loud").status()).isEqualTo(2);
    }
}
