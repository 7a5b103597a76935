package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChockTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''                                    | Which command?",
        "asess x.yaml                          | Did you mean 'assess'?",
        "assess                                | RECORD",
        "assess x.yaml --gate garden           | 'garden' is not one of first-start, indoor-run, road-test",
        "assess x.yaml --format pdf            | 'pdf' is not one of text, json, html",
        "assess x.yaml --as-of tomorrow        | write 2026-11-25T12:00",
        "assess - -                            | Standard input can be read only once",
        "rules --format html                   | 'html' is not one of text, json",
        "rules nothing.such                    | There is no check 'nothing.such'",
        "figure no-such-figure                 | there is no figure 'no-such-figure'",
        "figure load-index 58                  | '58' is not key=value, such as load-index index=58",
        "figure load-index index=58 index=59   | index is given twice",
        "figure load-index                     | index=58",
        "new                                   | New what?",
        "schema --gate road-test               | Try 'chock schema --help'",
    })
    void wrong_usage_is_2_with_advice_on_stderr_and_nothing_on_stdout(String line, String says) {
        Run run = Run.of(line.isEmpty() ? new String[0] : line.split(" "));
        assertThat(run.err()).contains(says).doesNotContain("Exception", "\tat ");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
    }

    @Test
    void help_is_a_result_and_names_every_command_in_80_columns_without_colour() {
        Run run = Run.of("--help");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("assess", "rules", "figure", "schema", "new", "demo", "Exit status: 0 released").doesNotContain("\u001b");
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(Run.of("assess", "--help").out()).contains("--as-of", "--gate", "--format");
    }

    @Test
    void an_argument_that_begins_with_an_at_sign_is_a_file_name_and_nothing_else(@TempDir Path folder) throws IOException {
        Path arguments = Files.writeString(folder.resolve("arguments"), "--help");
        assertThat(Run.of("assess", "@" + arguments).err()).contains("@" + arguments);
        assertThat(Run.of("assess", "@" + arguments).status()).isEqualTo(2);
    }

    @Test
    void the_programs_own_failure_is_3_in_one_sentence_and_leaves_its_details_where_asked(@TempDir Path folder) throws IOException {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Path trace = folder.resolve("trace.txt");
        int status = Run.bench("", new ByteArrayOutputStream(), err, trace.toString()).failed(new IllegalStateException("two\nlines \u001b[31m"));
        assertThat(status).isEqualTo(3);
        assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("chock itself failed: two lines ?[31m\n");
        assertThat(trace).content().contains("java.lang.IllegalStateException", "at chock.cli.ChockTest");
    }

    @Test
    void a_failure_without_words_is_named_by_its_kind_and_an_unwritable_trace_is_said(@TempDir Path folder) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Run.bench("", new ByteArrayOutputStream(), err, folder.toString()).failed(new NullPointerException());
        assertThat(err.toString(StandardCharsets.UTF_8)).startsWith("chock itself failed: NullPointerException\n")
                .contains("could not be written to " + folder).doesNotContain("\tat ");
    }

    @Test
    void a_reader_that_has_read_enough_is_no_failure_and_a_full_disk_is_one() {
        for (String why : List.of("Broken pipe", "No space left on device")) {
            OutputStream to = new OutputStream() {
                @Override
                public void write(int b) throws IOException {
                    throw new IOException(why);
                }
            };
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(new Outlet(to), false, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), Clock.systemUTC(), false, null);
            int status = Chock.run(bench, "figure");
            if (why.equals("Broken pipe")) {
                assertThat(status).isZero();
                assertThat(err.size()).isZero();
            } else {
                assertThat(status).isEqualTo(3);
                assertThat(err.toString(StandardCharsets.UTF_8)).isEqualTo("chock itself failed: the result could not be written\n");
            }
        }
    }

    @Test
    void a_result_that_could_not_be_written_is_not_a_success() {
        OutputStream full = new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException("no space");
            }
        };
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(full, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), Clock.systemUTC(), false, null);
        assertThat(Chock.run(bench, "figure")).isEqualTo(3);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("could not be written");
    }
}
