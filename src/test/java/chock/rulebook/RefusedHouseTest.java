package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A house that is not sound does not load, and says where, why and what to write. One folder for each kind of fault; beside it the message, renewed with {@code -Dchock.approve=true}. */
class RefusedHouseTest {
    private static final Path FOLDER = Path.of("src/test/resources/house/refused");
    private static final RuleBook SHIPPED = RuleBook.shipped();

    static List<String> faults() throws IOException {
        try (Stream<Path> list = Files.list(FOLDER)) {
            List<String> names = list.filter(Files::isDirectory).map(f -> f.getFileName().toString()).sorted().toList();
            assertThat(names).isNotEmpty();
            return names;
        }
    }

    @ParameterizedTest
    @MethodSource("faults")
    void says(String name) throws IOException {
        UnusableInput refused = catchThrowableOfType(UnusableInput.class, () -> SHIPPED.with(HouseBook.read(FOLDER.resolve(name))));
        assertThat(refused).as(name + " is refused").isNotNull();
        String said = refused.getMessage().replace(FOLDER.resolve(name).toString(), "HOUSE") + "\n";
        // Where a shipped card stands moves with every line above it.
        said = said.replaceAll("(rules/[a-z-]+/[a-z-]+\\.(?:yaml|drl)|rules/[a-z]+/[A-Z-]+\\.yaml):[1-9]\\d*", "$1:LINE");
        Path approved = FOLDER.resolve(name + ".txt");
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(approved, said);
        }
        assertThat(said).isEqualTo(Files.readString(approved));
    }

    @Test
    void whatIsNoHouseFolderIsRefused() {
        UnusableInput none = catchThrowableOfType(UnusableInput.class, () -> HouseBook.read(Path.of("no-such-house")));
        assertThat(none).hasMessage("no-such-house: there is no such folder. Name a folder with house.yaml, and limits.yaml or checks.yaml, in it");
        UnusableInput file = catchThrowableOfType(UnusableInput.class, () -> HouseBook.read(Path.of("pom.xml")));
        assertThat(file).hasMessageStartingWith("pom.xml: this is a file. Name a folder");
    }

    @Test
    void theShippedRulesStayWholeAfterARefusal() {
        assertThat(SHIPPED.cards().keySet()).noneMatch(id -> id.startsWith("house."));
        assertThat(SHIPPED.vocabulary().aspects()).doesNotContainKey("cam-lever-photo");
        assertThat(SHIPPED.tightened()).isEmpty();
    }
}
