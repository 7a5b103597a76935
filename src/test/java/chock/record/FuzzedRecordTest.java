package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import chock.fuzz.Fuzz;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whatever is done to a job record, it is read or refused; nothing else happens. */
class FuzzedRecordTest {
    @Test
    void isReadOrRefused() throws IOException {
        List<byte[]> good = new ArrayList<>();
        good.add(Words.good().getBytes(StandardCharsets.UTF_8));
        good.add(Files.readAllBytes(Path.of("docs/examples/lark-gaps.yaml")));
        good.add("{\"chock\": \"job-record/2\", \"record\": \"A\", \"entries\": [{\"id\": \"e1\", \"at\": \"2026-11-20\"}]}".getBytes(StandardCharsets.UTF_8));
        int[] refused = {0};
        int all = Fuzz.run(good, bytes -> {
            try {
                Words.read(bytes);
            } catch (UnusableInput e) {
                assertThat(e.faults()).isNotEmpty();
                refused[0]++;
            }
        });
        assertThat(refused[0]).as("refused, of " + all).isBetween(1, all);
    }
}
