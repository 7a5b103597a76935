package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AssessCommandTest {
    private static final String NOON = "2026-11-25T12:00";
    @TempDir private static Path folder;
    private static List<Path> examples;

    @BeforeAll
    static void listExamples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            examples = files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
        assertThat(examples).isNotEmpty();
    }

    @Test
    void a_file_that_is_not_there_is_2_and_nothing_is_judged() {
        Run run = Run.of("assess", "no-such.yaml");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo("no-such.yaml: there is no such file\n");
        assertThat(Run.of("assess", "no-such.yaml", "--format", "json").out()).isEqualToIgnoringWhitespace("[]");
    }

    @Test
    void a_folder_and_a_file_too_large_are_refused_before_they_are_read_as_records() throws IOException {
        assertThat(Run.of("assess", folder.toString()).err()).contains("it is a folder");
        Path large = Files.write(folder.resolve("large.yaml"), new byte[5_000_001]);
        assertThat(Run.of("assess", large.toString()).err()).contains("larger than 5 MB");
        assertThat(Run.of("assess", large.toString()).status()).isEqualTo(2);
    }

    @Test
    void every_example_is_judged_and_the_status_is_that_of_the_worst_verdict() {
        for (Path example : examples) {
            Run run = Run.of("assess", "--as-of", NOON, example.toString());
            boolean blocked = run.out().lines().anyMatch(line -> line.startsWith("BLOCKED at "));
            assertThat(run.err()).as(example.toString()).isEmpty();
            assertThat(run.status()).as(example.toString()).isEqualTo(blocked ? 1 : 0);
            assertThat(run.out().lines()).as(example.toString()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        }
    }

    @Test
    void a_record_that_cannot_be_used_keeps_no_other_from_being_judged() {
        String good = examples.get(0).toString();
        Run run = Run.of("assess", "--as-of", NOON, "no-such.yaml", good);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("no-such.yaml");
        assertThat(run.out()).isEqualTo(Run.of("assess", "--as-of", NOON, good).out()).isNotEmpty();
    }

    @Test
    void standard_input_is_a_record_like_any_other() throws IOException {
        String yaml = Files.readString(examples.get(0), StandardCharsets.UTF_8);
        Run run = Run.with(yaml, "assess", "--as-of", NOON, "-");
        assertThat(run).isEqualTo(Run.of("assess", "--as-of", NOON, examples.get(0).toString()));
        assertThat(Run.with("chock: no", "assess", "-").err()).contains("standard input");
    }

    @Test
    void a_time_without_a_zone_is_on_the_records_own_clock() throws IOException {
        String yaml = Files.readString(examples.get(0), StandardCharsets.UTF_8).replaceFirst("(?m)^zone: .*$", "zone: Asia/Tokyo");
        assertThat(yaml).contains("zone: Asia/Tokyo");
        assertThat(Run.with(yaml, "assess", "--as-of", "2026-11-28T12:00", "--format", "json", "-").out()).contains("\"asOf\" : \"2026-11-28T12:00:00+09:00\"");
    }

    @Test
    void gates_asked_for_take_the_place_of_those_the_record_seeks() {
        Run run = Run.of("assess", "--as-of", NOON, "--gate", "hand-over", "--gate", "road-test", "--gate", "hand-over", examples.get(0).toString());
        assertThat(run.out().lines().filter(line -> line.matches("(BLOCKED|RELEASED) at .*")).map(line -> line.split("[ :]+")[2]))
                .containsExactly("hand-over", "road-test");
    }

    @Test
    void html_is_one_page_for_all_records() {
        Run run = Run.of("assess", "--as-of", NOON, "--format", "html", examples.get(0).toString(), examples.get(0).toString());
        assertThat(run.out()).startsWith("<!DOCTYPE html>").containsOnlyOnce("</html>");
    }
}
