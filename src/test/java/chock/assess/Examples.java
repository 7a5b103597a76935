package chock.assess;

import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** The demo records, judged on the day they were written for. */
final class Examples {
    static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final RuleBook BOOK = RuleBook.shipped();
    static final List<String> BLOCKED = List.of("lark-faults.yaml", "lark-gaps.yaml", "lark-worked-on-after.yaml", "lark-too-close.yaml");
    static final List<String> RELEASED = List.of("lark-released.yaml", "harrow-prewar-single.yaml", "merle-released.yaml", "lark-on-show.yaml", "lark-non-runner.yaml");

    private Examples() { }

    static byte[] bytes(String name) throws IOException {
        return Files.readAllBytes(Path.of("docs/examples", name));
    }

    static JobRecord read(String name) throws IOException {
        return RecordReader.read(name, bytes(name), BOOK.vocabulary(), DAY);
    }

    static Assessment judge(JobRecord record) {
        return Assessor.assess(record, BOOK, record.seeks(), DAY);
    }
}
