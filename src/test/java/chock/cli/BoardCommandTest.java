package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records into a store and out of it. Without {@code --store} it lies in the current folder, so a wrong folder must be noticed. */
class BoardCommandTest {
    @TempDir
    Path folder;

    @Test
    void nothingIsReadFromAStoreThatIsNotThere() {
        Path nowhere = folder.resolve("nowhere");
        Path copy = folder.resolve("copy.sqlite");
        String says = nowhere + ": there is no store in this folder. Name the folder of the store with --store\n";
        for (List<String> command : List.of(List.of("board", "give", "--store", nowhere.toString()), List.of("board", "copy", "--store", nowhere.toString(), copy.toString()))) {
            Run run = Run.of(command.toArray(String[]::new));
            assertThat(run).as(command.toString()).isEqualTo(new Run(2, "", says));
            assertThat(nowhere).as("an empty store would look like one whose machines are gone").doesNotExist();
        }
        assertThat(copy).as("a backup of nothing").doesNotExist();
    }

    @Test
    void aStoreMadeAnewIsNamedWithItsWholePath() throws Exception {
        String store = folder.resolve("shop").toString();
        Run first = Run.of("board", "take", "--store", store, "docs/examples/lark-released.yaml");
        assertThat(first).isEqualTo(new Run(0, "HV-0142\n", "New store, empty: " + store + "\n"));
        Run second = Run.of("board", "take", "--store", store, "docs/examples/merle-released.yaml");
        assertThat(second.status()).isZero();
        assertThat(second.err()).isEmpty();
        Run given = Run.of("board", "give", "--store", store);
        assertThat(given.status()).isZero();
        assertThat(given.out().lines()).hasSize(2).anyMatch(line -> line.contains("\"HV-0142\""));
        Path copy = folder.resolve("copy/board.sqlite");
        Files.createDirectories(copy.getParent());
        assertThat(Run.of("board", "copy", "--store", store, copy.toString())).isEqualTo(new Run(0, "", ""));
        assertThat(Run.of("board", "give", "--store", copy.getParent().toString()).out()).isEqualTo(given.out());
    }
}
