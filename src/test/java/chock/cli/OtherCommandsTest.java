package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rehearse.Scenarios;
import chock.report.CatalogueJson;
import chock.report.CheckInWords;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class OtherCommandsTest {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void the_catalogue_names_every_check_and_each_can_be_explained() throws Exception {
        RuleBook book = RuleBook.shipped();
        String catalogue = Run.of("rules").out();
        Scenarios scenarios = Scenarios.shipped();
        assertThat(book.cards()).isNotEmpty();
        for (Card card : book.cards().values()) {
            assertThat(catalogue).contains("\n  " + card.id());
            String explained = Catalogue.of(CheckInWords.of(card, book, scenarios.of(card.id())), false);
            assertThat(explained).startsWith(card.id()).contains("Asked of:", "Evidence:", "Holds:", "Undone by:", "To clear:", "Written:", "Shown in:");
            assertThat(explained.contains("Limit:")).as(card.id()).isEqualTo(card.limit() != null);
            assertThat(explained.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
            JsonNode node = CatalogueJson.of(card, book);
            assertThat(node.get("limits").isEmpty()).as(card.id()).isEqualTo(card.limit() == null);
            assertThat(node.get("limits")).allSatisfy(limit -> assertThat(limit.get("value").isNumber()).isFalse());
        }
        assertThat(JSON.readTree(Run.of("rules", "--format", "json").out()).get("checks")).hasSize(book.cards().size());
        assertThat(JSON.readTree(Run.of("rules", "brakes.pad-thickness", "--format", "json").out()).get("check").textValue()).isEqualTo("brakes.pad-thickness");
    }

    @Test
    void a_limit_is_shown_with_its_source_and_its_dates() {
        String flowing = Run.of("rules", "brakes.pad-thickness").out().replaceAll("\\s+", " ");
        assertThat(flowing).contains("at least 1.5 mm (common practice), looked up 20");
        assertThat(Run.of("rules", "air.quarter-hour").out().replaceAll("\\s+", " ")).contains("EH40, workplace exposure limits", ", from 2018-08-21, looked up 20");
    }

    @Test
    void a_figure_gives_its_result_with_unit_inputs_and_source() throws Exception {
        // load index 58 carries 236 kg: UN R75 Annex 4, read in copies that agree
        JsonNode node = JSON.readTree(Run.of("figure", "load-index", "index=58", "--format", "json").out());
        assertThat(node.fieldNames()).toIterable().containsExactly("figure", "inputs", "results", "source");
        assertThat(node.at("/inputs/index").textValue()).isEqualTo("58");
        assertThat(node.at("/results/load").toString()).isEqualTo("{\"value\":\"236\",\"unit\":\"kg\"}");
        assertThat(Run.of("figure", "load-index", "index=58").out()).contains("load: 236 kg", "Source: ");
    }

    @Test
    void a_value_that_cannot_be_known_is_null_with_the_reason() throws Exception {
        JsonNode results = JSON.readTree(Run.of("figure", "tyre-date", "code=137", "as-of=2026-11-25", "--format", "json").out()).get("results");
        assertThat(results.at("/from/value").isNull()).isTrue();
        assertThat(results.at("/from/why").textValue()).contains("decade");
        assertThat(results.at("/age-years/value/from").isTextual()).isTrue();
    }

    @Test
    void every_figure_listed_works_with_its_own_example() throws Exception {
        JsonNode list = JSON.readTree(Run.of("figure", "--format", "json").out());
        assertThat(list).isNotEmpty();
        for (JsonNode figure : list) {
            String[] example = ("figure " + figure.get("example").textValue()).split(" ");
            assertThat(Run.of(example).status()).as(String.join(" ", example)).isZero();
            assertThat(Run.of("figure").out()).contains(figure.get("figure").textValue());
        }
    }

    @Test
    void schema_and_skeleton_are_printed_and_nothing_beside_them() throws Exception {
        assertThat(JSON.readTree(Run.of("schema").out()).has("$schema")).isTrue();
        Run skeleton = Run.of("new", "record");
        assertThat(skeleton.out()).contains("chock: job-record/2");
        assertThat(skeleton.err()).isEmpty();
    }

    @Test
    void the_demo_walks_through_every_example_and_ends_well_whatever_the_verdicts() throws Exception {
        Run run = Run.of("demo");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(Files.readAllLines(Path.of("docs/examples/index.txt"))).isNotEmpty()
                .allSatisfy(name -> assertThat(run.out()).contains("\n" + name.strip() + "\n  "));
        assertThat(run.out()).contains("RELEASED at ", "BLOCKED at ");
    }

    @Test
    void recordExpandPrintsARecordThatIsJudgedAlike() {
        String file = "src/test/resources/record/sessions/lark-too-close.yaml";
        Run expanded = Run.of("record", "expand", file);
        assertThat(expanded.status()).isZero();
        assertThat(expanded.out()).startsWith("chock: job-record/2\n").doesNotContain("sessions:");
        Run asSessions = Run.of("assess", "--format", "json", "--as-of", "2026-11-25T12:00", file);
        Run single = Run.with(expanded.out(), "assess", "--format", "json", "--as-of", "2026-11-25T12:00", "-");
        assertThat(single.out()).isEqualTo(asSessions.out()).isNotBlank();
        assertThat(single.status()).isEqualTo(asSessions.status());
        assertThat(Run.with("chock: job-record/2\n", "record", "expand", "-").status()).isEqualTo(2);
        assertThat(Run.of("record").status()).isEqualTo(2);
    }
}
