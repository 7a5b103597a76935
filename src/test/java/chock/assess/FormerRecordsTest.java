package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.JobRecord;
import chock.record.RecordReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The example records as they were in {@code job-record/1}: the form stays readable, and what it says is judged. */
class FormerRecordsTest {
    private static final Path FOLDER = Path.of("src/test/resources/record/v1");
    /** Weather and road were looked at soon after eight, and hold two hours. */
    private static final Instant MORNING = Instant.parse("2026-11-25T10:00:00Z");
    /** Checks that a released record of that form may lack today, because a law has asked for more since. */
    private static final Set<String> ASKED_FOR_SINCE = Set.of("air.other-engines");

    private static List<String> names() {
        return Stream.concat(Examples.RELEASED.stream(), Examples.BLOCKED.stream()).toList();
    }

    private static JobRecord read(String name) throws IOException {
        return RecordReader.read(name, Files.readAllBytes(FOLDER.resolve(name)), Examples.BOOK.vocabulary(), Examples.DAY);
    }

    @Test
    void every_example_is_kept() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            assertThat(files.map(f -> f.getFileName().toString())).hasSize(9).containsExactlyInAnyOrderElementsOf(names());
        }
    }

    @ParameterizedTest
    @MethodSource("names")
    void each_is_read_and_judged(String name) throws IOException {
        JobRecord record = read(name);
        assertThat(record.form()).isEqualTo(1);
        Assessment assessment = Assessor.assess(record, Examples.BOOK, record.seeks(), Examples.BLOCKED.contains(name) ? Examples.DAY : MORNING);
        assertThat(assessment.gates()).isNotEmpty().allSatisfy(gate -> assertThat(gate.ruleBookFaults()).isEmpty());
        List<String> open = new ArrayList<>(new TreeSet<>(assessment.gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.state() != State.MET).map(Finding::check).toList()));
        if (Examples.BLOCKED.contains(name)) {
            assertThat(open).isNotEmpty();
        } else {
            open.removeAll(ASKED_FOR_SINCE);
            assertThat(open).isEmpty();
        }
    }
}
