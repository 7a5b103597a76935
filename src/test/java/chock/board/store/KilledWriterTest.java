package chock.board.store;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.Bench;
import java.io.BufferedReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A real program is killed in the middle of writing, again and again, on one store: what it acknowledged stays. */
class KilledWriterTest {
    /** {@code -Dchock.board.kills=100} for the long run. */
    private static final int KILLS = Integer.getInteger("chock.board.kills", 5);

    @TempDir
    Path folder;

    @Test
    void loses_no_acknowledged_entry() throws Exception {
        String where = folder.toString();
        int before;
        try (Store store = Store.open(where)) {
            Bench.shop(store).take("lark", Bench.example("lark-released.yaml"), "ida", null);
            before = Bench.shop(store).find("HV-0142").orElseThrow().entries().size();
        }
        Random random = new Random(8);
        List<String> acknowledged = new ArrayList<>();
        int killedWhileWriting = 0;
        for (int kill = 0; kill < KILLS; kill++) {
            Process writer = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto",
                    "-cp", System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")), Writer.class.getName(), where)
                    .redirectError(folder.resolve("errors").toFile()).start();
            int wanted = 1 + random.nextInt(20);
            try (BufferedReader out = writer.inputReader(StandardCharsets.UTF_8)) {
                int heard = 0;
                for (String line = out.readLine(); line != null; line = out.readLine()) {
                    acknowledged.add(line);
                    if (++heard == wanted) {
                        writer.toHandle().destroyForcibly();
                    }
                }
                killedWhileWriting += heard >= wanted ? 1 : 0;
            }
            assertThat(writer.waitFor(10, TimeUnit.SECONDS)).isTrue();
            assertThat(writer.exitValue()).as("killed by signal 9").isEqualTo(128 + 9);
            try (Store store = Store.open(where)) {
                List<String> kept = store.read(lines -> lines.records().find("HV-0142")).orElseThrow().entries().stream().map(e -> e.get("id").textValue()).toList();
                assertThat(kept).containsAll(acknowledged).doesNotHaveDuplicates();
                assertThat(kept.size() - before - acknowledged.size()).as("at most the one in hand each time it was killed").isBetween(0, kill + 1);
            }
        }
        assertThat(killedWhileWriting).isEqualTo(KILLS);
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(KILLS).doesNotHaveDuplicates();
    }
}
