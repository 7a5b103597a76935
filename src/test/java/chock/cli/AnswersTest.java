package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Why, what next, until when, what if and how sure, as they are asked at the terminal. */
class AnswersTest {
    private static final String NOON = "2026-11-25T12:00";
    private static final String FAULTS = "docs/examples/lark-faults.yaml";
    private static final String RELEASED = "docs/examples/lark-released.yaml";
    @TempDir private static Path folder;

    private static JsonNode json(Run run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void why_goes_with_text_and_json_and_names_the_nearest_check() throws IOException {
        Run text = Run.of("assess", "--as-of", NOON, "--why", "brakes.pad-thickness", FAULTS);
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out()).contains("WHY brakes.pad-thickness\n", "Limit that decides: at least 1.5 mm", "outside by 0.3 mm", "So it is fault").doesNotContain("RIDE PLAN");
        JsonNode why = json(Run.of("assess", "--as-of", NOON, "--why", "brakes.pad-thickness", "--format", "json", FAULTS)).get(0);
        assertThat(why.at("/gates/road-test/findings")).isNotEmpty();
        assertThat(why.at("/why/0/places/0/compared/0/margin").asText()).isEqualTo("outside by 0.3 mm, uncertainty 0.06 mm");
        Run unknown = Run.of("assess", "--why", "brakes.padthickness", FAULTS);
        assertThat(unknown.status()).isEqualTo(2);
        assertThat(unknown.err()).startsWith("There is no check 'brakes.padthickness'. Did you mean brakes.pad-thickness");
        assertThat(Run.of("assess", "--why", "all", "--format", "html", FAULTS).status()).isEqualTo(2);
    }

    @Test
    void not_asked_lists_each_with_its_reason() {
        assertThat(Run.of("assess", "--as-of", NOON, "--not-asked", RELEASED).out()).contains("NOT ASKED at road-test: ", "- transmission.belt: asked of ");
    }

    @Test
    void closest_lists_the_least_sure_first() {
        assertThat(Run.of("assess", "--as-of", NOON, "--closest", "docs/examples/lark-too-close.yaml").out()).containsSubsequence("84.1 %  tyres.tread-depth", "95.2 %  brakes.pad-thickness", "more, no less sure");
    }

    @Test
    void json_carries_the_first_change_of_every_verdict() throws IOException {
        JsonNode gate = json(Run.of("assess", "--as-of", NOON, "--format", "json", FAULTS)).at("/0/gates/road-test");
        assertThat(gate.get("holdsUntil").isNull()).isTrue();
        assertThat(gate.at("/changes/at").asText()).isEqualTo("2026-11-25T13:51:00Z");
        assertThat(gate.at("/changes/checks")).extracting(JsonNode::asText).contains("roadtest.air-temperature");
    }

    @Test
    void order_is_0_when_nothing_remains_and_1_when_something_does() throws IOException {
        assertThat(Run.of("order", "--as-of", NOON, "--gate", "road-test", RELEASED)).satisfies(r -> {
            assertThat(r.status()).isZero();
            assertThat(r.out()).startsWith("NOTHING REMAINS for road-test\n");
        });
        Run faults = Run.of("order", "--as-of", NOON, "--gate", "road-test", "--format", "json", FAULTS);
        assertThat(faults.status()).isEqualTo(1);
        assertThat(json(faults).get("steps")).hasSizeGreaterThan(5);
        assertThat(json(faults).at("/steps/0/number").asInt()).isEqualTo(1);
        assertThat(json(faults).get("cycle")).isEmpty();
        assertThat(Run.of("order", RELEASED).status()).isEqualTo(2);
    }

    @Test
    void minutes_are_added_up_and_refused_where_they_name_nothing() throws IOException {
        Path good = Files.writeString(folder.resolve("good.yaml"), "put-right: 60\nmeasure: 4\ntry: 3\nlook: 2\nask: 1\ndo: 20\nreplaced: 45\n");
        assertThat(Run.of("order", "--as-of", NOON, "--gate", "road-test", "--minutes", good.toString(), FAULTS).out()).contains("put right, 45 min", "Together ", " for one person, ", " for two.");
        Path bad = Files.writeString(folder.resolve("bad.yaml"), "bleed: 30\n");
        Run refused = Run.of("order", "--gate", "road-test", "--minutes", bad.toString(), FAULTS);
        assertThat(refused.status()).isEqualTo(2);
        assertThat(refused.err()).contains("'bleed' is no aspect, work or kind of step", "Did you mean bled");
        Path words = Files.writeString(folder.resolve("words.yaml"), "bled: long\n");
        assertThat(Run.of("order", "--gate", "road-test", "--minutes", words.toString(), FAULTS).err()).contains("it is not a list of names with whole minutes");
        Path less = Files.writeString(folder.resolve("less.yaml"), "bled: -1\n");
        assertThat(Run.of("order", "--gate", "road-test", "--minutes", less.toString(), FAULTS).err()).contains("'bled' has -1 minutes. Write 0 to 10000");
    }

    @Test
    void impact_is_1_when_a_release_would_be_lost() throws IOException {
        Run lost = Run.of("impact", "--as-of", NOON, "--set", "tyres.age=2y", RELEASED, FAULTS);
        assertThat(lost.status()).isEqualTo(1);
        assertThat(lost.out()).contains("> HV-0142 at road-test: released, then blocked", "tyres.age: met, then fault", "In sum, over 2 machines and 2 verdicts: 1 is blocked that is released now");
        assertThat(Run.of("impact", "--as-of", NOON, "--set", "tyres.age=9y", RELEASED).status()).isZero();
        JsonNode json = json(Run.of("impact", "--as-of", NOON, "--set", "tyres.age=2y", "--format", "json", RELEASED));
        assertThat(json.at("/impacts/0/after").asText()).isEqualTo("blocked");
        List<Map<String, String>> rows = new CsvMapper().readerForMapOf(String.class).with(CsvSchema.emptySchema().withHeader())
                .<Map<String, String>>readValues(Run.of("impact", "--as-of", NOON, "--set", "tyres.age=2y", "--format", "csv", RELEASED).out()).readAll();
        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row).containsEntry("check", "tyres.age").containsEntry("verdict", "released").containsEntry("verdict-then", "blocked").containsEntry("state-then", "fault");
            assertThat(row.get("says")).startsWith("Front wheel, tyre: made 2024-04-14, age 2.5 y");
        });
    }

    @Test
    void a_record_cannot_put_a_formula_into_a_table(@TempDir Path folder) throws IOException {
        Path evil = Files.writeString(folder.resolve("evil.yaml"), Files.readString(Path.of(RELEASED)).replace("record: HV-0142", "record: =HYPERLINK(1)"));
        Run run = Run.of("impact", "--as-of", NOON, "--set", "tyres.age=2y", "--format", "csv", evil.toString());
        assertThat(run.out()).as(run.err()).contains("'=HYPERLINK(1)").doesNotContain("\n=").doesNotContain("\"=");
    }

    @Test
    void impact_lists_what_lapses_and_looks_ahead() throws IOException {
        Run soon = Run.of("impact", "--as-of", NOON, "--within", "30", "docs/examples/lark-on-show.yaml");
        assertThat(soon.status()).isEqualTo(1);
        assertThat(soon.out()).contains("WHAT CHANGES BY ITSELF within 30 days", "2026-12-19 00:00 Europe/London, HV-0158 at on-show:", "show.stand-firm (met, then stale)");
        assertThat(Run.of("impact", "--as-of", NOON, "--within", "5", "docs/examples/lark-on-show.yaml")).satisfies(r -> {
            assertThat(r.status()).isZero();
            assertThat(r.out()).contains("Nothing.");
        });
        Run ahead = Run.of("impact", "--as-of", "2026-12-20T09:00", "--set", "tyres.age=2y", "--format", "json", RELEASED);
        assertThat(json(ahead).at("/impacts/0/before").asText()).as("on 20 December the readings of one day are long stale").isEqualTo("blocked");
    }

    @Test
    void impact_refuses_what_cannot_be_tried() {
        assertThat(Run.of("impact", RELEASED).err()).startsWith("What is to be tried? Give --set LIMIT=VALUE, --house DIR, --rule-book FILE or --within DAYS.");
        assertThat(Run.of("impact", "--set", "tyres.agee=8y", RELEASED).err()).startsWith("--set: there is no limit 'tyres.agee'. Did you mean tyres.age?");
        assertThat(Run.of("impact", "--within", "0", RELEASED).status()).isEqualTo(2);
        Run partly = Run.of("impact", "--as-of", NOON, "--set", "tyres.age=9y", "no-such.yaml", RELEASED);
        assertThat(partly.status()).isEqualTo(2);
        assertThat(partly.err()).contains("no-such.yaml: there is no such file");
        assertThat(partly.out()).contains("HV-0142 at road-test: released as now");
    }
}
