package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every file under {@code refused} is refused with exactly the words that stand beside it, reviewed by eye. */
class RefusedRecordTest {
    private static final Path FOLDER = Words.FOLDER.resolve("refused");

    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".yaml")).map(n -> n.substring(0, n.length() - ".yaml".length())).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void saysWhatIsApproved(String name) throws IOException {
        UnusableInput refusal = catchThrowableOfType(UnusableInput.class,
                () -> RecordReader.read(name + ".yaml", Files.readAllBytes(FOLDER.resolve(name + ".yaml")), Words.VOCABULARY, Words.AS_OF));
        assertThat(refusal).as("%s is accepted", name).isNotNull();
        Path approved = FOLDER.resolve(name + ".txt");
        assertThat(approved).as("approve this: %s", refusal.getMessage()).exists();
        assertThat(refusal.getMessage() + "\n").isEqualTo(Files.readString(approved));
    }

    @Test
    void thereAreFilesAndEachHasItsWords() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<String> approved = files.map(f -> f.getFileName().toString()).filter(n -> n.endsWith(".txt")).map(n -> n.substring(0, n.length() - ".txt".length())).sorted().toList();
            assertThat(names()).hasSizeGreaterThanOrEqualTo(100).isEqualTo(approved);
        }
    }

    @Test
    void everyFaultSaysWhatToWriteInstead() throws IOException {
        for (String name : names()) {
            UnusableInput refusal = catchThrowableOfType(UnusableInput.class, () -> Words.read(Files.readAllBytes(FOLDER.resolve(name + ".yaml"))));
            assertThat(refusal.faults()).as(name).isNotEmpty().allSatisfy(f -> assertThat(f.advice()).isNotBlank());
        }
    }
}
