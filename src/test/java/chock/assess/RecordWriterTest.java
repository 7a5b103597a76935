package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.RecordWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written is read as the same record. */
class RecordWriterTest {

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            return files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".yaml")).sorted().toList();
        }
    }

    private static JobRecord again(JobRecord record) {
        return RecordReader.read("again.json", RecordWriter.write(record, Set.of()), Examples.BOOK.vocabulary(), Examples.DAY);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void everyExampleComesBack(String example) throws IOException {
        JobRecord read = Examples.read(example);
        assertThat(again(read).withoutLines()).isEqualTo(read.withoutLines());
    }

    @Test
    void anInspectionKeepsItsDocumentItsInspectorAndItsNote() throws IOException {
        String text = new String(Examples.bytes("lark-released.yaml"), StandardCharsets.UTF_8);
        String inspected = text.replaceFirst("(?m)^entries:$", "entries:\n  - {id: insp-1, at: 2026-11-24 15:00, by: ida, inspected: passed, licence: L-2231, document: certificate 4471, inspector: Ann Sorrel, note: horn mended on the day}");
        assertThat(inspected).isNotEqualTo(text);
        JobRecord read = RecordReader.read("r.yaml", inspected.getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), Examples.DAY);
        assertThat(again(read).withoutLines()).isEqualTo(read.withoutLines());
    }
}
