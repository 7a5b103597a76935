package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** A line that is read without the library means the same as with it, and what it would refuse is left to it. */
class PlainLineTest {
    private static final Bench BENCH = Run.bench("", new ByteArrayOutputStream(), new ByteArrayOutputStream(), null);

    @ParameterizedTest
    @ValueSource(strings = {"assess a.yaml", "assess a.yaml - b.yaml", "assess --as-of 2026-11-25T12:00 a.yaml",
        "assess a.yaml --gate road-test --gate hand-over --format json", "assess --gate road-test --gate road-test a"})
    void a_plain_line_means_what_the_library_makes_of_it(String line) {
        String[] words = line.split(" ");
        assertThat(PlainLine.of(BENCH, words)).get().usingRecursiveComparison().ignoringFields("spec", "help")
                .isEqualTo(byTheLibrary(words));
    }

    @ParameterizedTest
    @ValueSource(strings = {"assess", "assess --gate road-test", "assess a --gate", "assess a --gate roadtest",
        "assess a --as-of today", "assess a --as-of 2026-11-25T12:00 --as-of 2026-11-25T12:00", "assess - -",
        "assess a --format csv", "assess a --format text --format text", "assess a --house h", "assess -h",
        "assess a --why all", "assess --bulk a", "assess -- a", "assess --format=json a", "rules", "--version", ""})
    void any_other_line_is_left_to_the_library(String line) {
        assertThat(PlainLine.of(BENCH, line.split(" "))).isEmpty();
    }

    @Property(tries = 2000)
    void whatever_stands_on_the_line(@ForAll("lines") List<String> line) {
        List<String> words = new ArrayList<>(line);
        words.add(0, "assess");
        Optional<AssessCommand> plain = PlainLine.of(BENCH, words.toArray(String[]::new));
        if (plain.isPresent()) {
            assertThat(plain.get()).usingRecursiveComparison().ignoringFields("spec", "help")
                    .isEqualTo(byTheLibrary(words.toArray(String[]::new)));
        }
    }

    @Provide
    Arbitrary<List<String>> lines() {
        return Arbitraries.of("a.yaml", "b c.yaml", "-", "--", "-h", "--gate", "road-test", "hand-over", "gate", "--as-of",
                "2026-11-25T12:00", "2026-11-25 12:00Z", "--format", "json", "html", "csv", "--format=json", "--not-asked",
                "\"quoted\"", "${x}", "@file", "").list().ofMinSize(1).ofMaxSize(6);
    }

    private static AssessCommand byTheLibrary(String... words) {
        CommandLine line = Chock.line(BENCH, words);
        line.parseArgs(words);
        return (AssessCommand) line.getSubcommands().get("assess").getCommandSpec().userObject();
    }
}
