package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Kept;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An engine that was run in the room fills it for every other machine there. */
class RunBesideTest {
    private static final String RUN = "[{\"point\":\"room/run\",\"measured\":\"peak\",\"is\":\"4 ppm\",\"with\":\"co-1\"},{\"point\":\"room/run\",\"seen\":\"run-minutes\",\"is\":\"5 min\"}]";

    @TempDir
    Path folder;
    private Running running;
    private Visit lead;

    @BeforeEach
    void start() {
        running = new Running(folder);
        lead = running.lead();
        String twin = new String(Bench.example("merle-released.yaml"), StandardCharsets.UTF_8);
        String id = twin.replaceAll("(?s).*\nrecord: (\\S+)\n.*", "$1");
        take(twin.replace("record: " + id, "record: HV-0901"));
        take(twin.replace("record: " + id, "record: HV-0902"));
        take(new String(Bench.example("lark-released.yaml"), StandardCharsets.UTF_8).replaceAll("record: HV-\\d+", "record: HV-0903"));
    }

    private void take(String record) {
        running.board.shop().take("record.yaml", record.getBytes(StandardCharsets.UTF_8), "lead", null);
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private HttpResponse<String> write(String machine, String entries) {
        Kept kept = running.board.shop().find(machine).orElseThrow();
        return lead.json("POST", "/api/machines/" + machine + "/entries", entries, "If-Match", "\"" + kept.version() + "\"");
    }

    private List<String> told(String machine) {
        return running.board.shop().find(machine).orElseThrow().entries().stream().filter(e -> e.path("done").asText().equals("run-beside")).map(e -> e.path("note").asText()).toList();
    }

    @Test
    void a_run_makes_the_air_that_others_read_stale() {
        assertThat(lead.get("/machines/HV-0902?gate=indoor-run").body()).contains("indoor-run: released");
        assertThat(write("HV-0901", RUN).statusCode()).isEqualTo(201);
        assertThat(told("HV-0902")).containsExactly("HV-0901 was run in this room");
        assertThat(told("HV-0901")).isEmpty();
        assertThat(told("HV-0903")).as("nothing was read of the room for it").isEmpty();
        assertThat(lead.get("/machines/HV-0902?gate=indoor-run").body()).contains("indoor-run: held", "air.background", "air.other-engines").doesNotContain("indoor-run: released");
        assertThat(lead.get("/machines/HV-0901?gate=indoor-run").body()).doesNotContain("run-beside");

        // A second run tells nothing new to a machine that has read nothing since; one that has is told again.
        running.pass(Duration.ofMinutes(1));
        assertThat(write("HV-0901", RUN).statusCode()).isEqualTo(201);
        assertThat(told("HV-0902")).hasSize(1);
        assertThat(write("HV-0902", "[{\"point\":\"room/co-instrument\",\"measured\":\"background\",\"is\":\"1 ppm\",\"with\":\"co-1\"}]").statusCode()).isEqualTo(201);
        running.pass(Duration.ofMinutes(1));
        assertThat(write("HV-0901", RUN).statusCode()).isEqualTo(201);
        assertThat(told("HV-0902")).hasSize(2);
    }

    @Test
    void a_run_is_told_under_another_id_where_the_writers_stands_for_somebody_else() {
        String twin = new String(Bench.example("merle-released.yaml"), StandardCharsets.UTF_8);
        String id = twin.replaceAll("(?s).*\nrecord: (\\S+)\n.*", "$1");
        take(twin.replace("record: " + id, "record: HV-0904").replaceFirst("people:\n", "people:\n  - {id: lead, name: Somebody Else, role: technician}\n"));
        assertThat(write("HV-0901", RUN).statusCode()).isEqualTo(201);
        assertThat(told("HV-0904")).hasSize(1);
        Kept other = running.board.shop().find("HV-0904").orElseThrow();
        assertThat(other.entries().get(other.entries().size() - 1).path("by").asText()).isEqualTo("lead-2");
    }

    @Test
    void what_is_no_run_tells_nobody() {
        assertThat(write("HV-0901", "[{\"point\":\"room\",\"seen\":\"people\",\"is\":\"staff-only\"}]").statusCode()).isEqualTo(201);
        assertThat(told("HV-0902")).isEmpty();
    }
}
