package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Kept;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.record.JobRecord;
import chock.record.RecordReader;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The list with 10,000 machines: the database sieves, sorts and pages it. */
class ManyMachinesTest {
    private static final int MACHINES = 10_000;
    /** Far above what is measured on an idle machine, so that a busy one does not fail the build. */
    private static final Duration NOTICED = Duration.ofSeconds(3);

    @TempDir
    Path folder;

    @Test
    void every_list_answers_before_anybody_notices() {
        try (Running running = new Running(folder)) {
            // Records with the verdicts of the examples and a few entries each: the list reads summaries alone.
            try (Store store = Store.open(folder.toString())) {
                fill(store);
            }
            Visit lead = running.lead();
            assertThat(lead.get("/").body()).contains("10000 machines");
            List<String> slow = new ArrayList<>();
            StringBuilder measured = new StringBuilder();
            for (String page : List.of("/", "/?page=250", "/?order=lapses", "/?order=latest&page=100", "/?gate=road-test&state=held", "/?gate=road-test&state=released&lapses=month", "/?q=lark+MM-00777", "/?check=" + commonest(lead), "/api/machines?size=200&page=50")) {
                long[] times = new long[5];
                for (int i = 0; i < times.length; i++) {
                    long start = System.nanoTime();
                    HttpResponse<String> answer = lead.get(page);
                    times[i] = (System.nanoTime() - start) / 1_000_000;
                    assertThat(answer.statusCode()).as(page).isEqualTo(200);
                    assertThat(answer.body().split("href=\"/machines/MM-[0-9]*\"", -1).length - 1).as("machines on " + page).isLessThanOrEqualTo(40);
                }
                Arrays.sort(times);
                measured.append(page).append(": ").append(times[2]).append(" ms; ");
                if (times[2] > NOTICED.toMillis()) {
                    slow.add(page + " " + times[2] + " ms");
                }
            }
            assertThat(slow).as(measured.toString()).isEmpty();
            org.junit.jupiter.api.Assertions.assertDoesNotThrow(() -> java.nio.file.Files.writeString(Path.of("target/board-list-times.txt"), measured.toString()));
        }
    }

    private static String commonest(Visit lead) {
        return lead.get("/api/blockers").body().replaceFirst("(?s).*?\"check\":\"([^\"]+)\".*", "$1");
    }

    private static void fill(Store store) {
        Judging judging = new Judging(Bench.book());
        List<ObjectNode> sheets = new ArrayList<>();
        List<List<ObjectNode>> entries = new ArrayList<>();
        List<Summary> summaries = new ArrayList<>();
        for (String example : List.of("lark-released", "lark-faults", "lark-worked-on-after", "merle-released", "lark-on-show", "lark-too-close")) {
            byte[] bytes = Bench.example(example + ".yaml");
            JobRecord record = RecordReader.read(example, bytes, Bench.book().vocabulary(), Bench.NOON);
            ObjectNode sheet = RecordReader.written(example, bytes);
            List<ObjectNode> few = new ArrayList<>();
            ((ArrayNode) sheet.remove("entries")).forEach(e -> few.add((ObjectNode) e));
            sheets.add(sheet);
            entries.add(few.subList(0, 3));
            summaries.add(judging.summary(record, Bench.NOON));
        }
        for (int from = 0; from < MACHINES; from += 2000) {
            int start = from;
            store.change(lines -> {
                for (int n = start; n < start + 2000; n++) {
                    int like = n % sheets.size();
                    assertThat(lines.records().add(new Kept("MM-%05d".formatted(n), 1, sheets.get(like), entries.get(like)), summaries.get(like), "lead", Bench.NOON.minusSeconds(n))).isTrue();
                }
            });
        }
    }
}
