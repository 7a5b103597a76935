package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.record.UnusableInput;
import chock.rehearse.Spoken;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.Tree;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A new check is begun by one command: what it writes holds together, says what is open, and runs once that is filled in. */
class NewCheckTest {
    @TempDir private Path root;

    @BeforeEach
    void copyTheTree() throws IOException {
        for (String folder : List.of("rules", "features")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                for (Path file : files.toList()) {
                    Path to = root.resolve(file.toString());
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(to);
                    } else {
                        Files.copy(file, to);
                    }
                }
            }
        }
    }

    private static void fillIn(Path file, Map<String, String> answers) throws IOException {
        String text = Files.readString(file);
        for (Map.Entry<String, String> answer : answers.entrySet()) {
            assertThat(text).as(file.toString()).containsPattern(answer.getKey());
            text = text.replaceAll(answer.getKey(), answer.getValue());
        }
        Files.writeString(file, text);
    }

    @Test
    void aMeasuredCheckRunsOnceItIsFilledIn() throws IOException {
        Run run = Run.of("new", "check", "show.plinth-height", "--into", root.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("limits.yaml", "checks.yaml", "show.drl", "plinth-height.feature", "docs/topics.yaml");
        UnusableInput open = catchThrowableOfType(UnusableInput.class, () -> Tree.load(root.resolve("rules"), "show"));
        assertThat(open.faults()).hasSizeGreaterThan(12).allMatch(f -> f.line() > 0 && f.what().startsWith("still to be filled in: "));
        assertThat(open.faults().stream().map(f -> f.file()).distinct()).containsExactly("rules/show/checks.yaml", "rules/show/limits.yaml", "rules/show/show.drl");

        Path show = root.resolve("rules/show");
        fillIn(show.resolve("limits.yaml"), Map.of("FILL IN what the number.*", "height of the plinth", "FILL IN at-least.*", "at-most", "FILL IN the number.*", "300 mm", "FILL IN passes.*", "passes",
                "FILL IN the smallest.*", "1 mm", "  # FILL IN law.*", "", "FILL IN replaces.*", "none"));
        fillIn(show.resolve("checks.yaml"), Map.of("FILL IN what it asks.*", "Is the plinth low enough?", "FILL IN what it is asked.*", "every machine", "FILL IN what a known fault can do", "crush", "  # FILL IN.*", "", "unit: FILL IN", "unit: mm",
                "FILL IN until.*", "until undone", "FILL IN what clears.*", "Use a lower plinth."));
        fillIn(show.resolve("show.drl"), Map.of("// FILL IN.*\n", ""));
        Path feature = root.resolve("features/show/plinth-height.feature");
        RuleBook book = Tree.load(root.resolve("rules"), "show");
        assertThat(book.cards()).containsKey("show.plinth-height");
        assertThat(Spoken.against(book, feature)).as("scenarios nobody finished fail").hasSize(3);
        fillIn(feature, Map.of("FILL IN 1.4 mm ± 0.1 mm", "301 mm ± 2 mm", "FILL IN 1.5 mm ± 0.1 mm", "300 mm ± 2 mm", "FILL IN 1.7 mm ± 0.1 mm", "290 mm ± 2 mm", "FILL IN the thing.*", "Plinth", "FILL IN what must.*", "It is low"));
        assertThat(Spoken.against(book, feature)).isEmpty();
    }

    @Test
    void aHouseCheckNeedsNoRule() throws IOException {
        Path house = Files.createDirectory(root.resolve("shop"));
        Files.writeString(house.resolve("house.yaml"), "name: Test shop\n");
        Run run = Run.of("new", "check", "house.plinth-dust", "--seen", "--house", house.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).doesNotContain("limits.yaml", ".drl", "topics");
        UnusableInput open = catchThrowableOfType(UnusableInput.class, () -> RuleBook.shipped().with(HouseBook.read(house)));
        assertThat(open.faults()).hasSizeGreaterThan(6).allMatch(f -> f.what().startsWith("still to be filled in: "));
        fillIn(house.resolve("checks.yaml"), Map.of("FILL IN what it asks.*", "Is the plinth free of dust?", "FILL IN what it is asked.*", "every machine", "FILL IN what a known fault can do", "none", "asked-with: FILL IN.*", "asked-of: every machine", "  # FILL IN.*", "",
                "FILL IN what is good", "clean", "FILL IN what is bad", "dusty", "FILL IN until.*", "same day", "FILL IN what clears.*", "Dust it."));
        fillIn(house.resolve("features/plinth-dust.feature"), Map.of("FILL IN what is good", "clean", "FILL IN what is bad ", "dusty", "FILL IN the thing.*", "Plinth", "FILL IN what must.*", "It is clean"));
        assertThat(Spoken.against(RuleBook.shipped().with(HouseBook.read(house)), house.resolve("features"))).isEmpty();
    }

    @Test
    void nothingIsOverwrittenAndNothingHalfWritten() throws IOException {
        Path limits = root.resolve("rules/brakes/limits.yaml");
        String before = Files.readString(limits);
        Run twice = Run.of("new", "check", "brakes.cam-angle", "--into", root.toString());
        assertThat(twice.status()).isEqualTo(2);
        assertThat(twice.err()).contains("'brakes.cam-angle' stands there already, and nothing is overwritten. Choose another id");
        assertThat(Files.readString(limits)).isEqualTo(before);
        assertThat(root.resolve("features/brakes/cam-angle.feature")).doesNotExist();
        Run feature = Run.of("new", "check", "brakes.linkage", "--into", root.toString());
        assertThat(feature.err()).contains("linkage.feature: it is there already, and nothing is overwritten");
        assertThat(Files.readString(limits)).isEqualTo(before);
    }

    @Test
    void wrongUseSaysWhatToWrite() {
        assertThat(Run.of("new", "check", "Brakes.Disc").err()).contains("'Brakes.Disc' is not an id; write system, dot, thing, in small letters with dashes, such as brakes.disc-colour");
        assertThat(Run.of("new", "check", "house.dust").err()).contains("Ids that begin with house. belong to a house; add --house DIR.");
        assertThat(Run.of("new", "check", "show.dust", "--house", root.toString()).err()).contains("In a house the id begins with house.; write house.dust");
        assertThat(Run.of("new", "check", "house.dust", "--house", root.toString()).err()).contains("house.yaml: there is no such file, so this is not a house folder");
        Run nowhere = Run.of("new", "check", "show.dust", "--into", root.resolve("features").toString());
        assertThat(nowhere.status()).isEqualTo(2);
        assertThat(nowhere.err()).contains("there is no folder rules in it. Name the folder that holds rules and features");
    }
}
