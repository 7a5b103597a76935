package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong and belongs to no check, and what is written at a place where no check asks. */
class DefectTest {
    private static final String MACHINE = "/machines/HV-0142";

    @TempDir
    Path folder;
    private Running running;
    private Visit lead;
    private Visit technician;

    @BeforeEach
    void start() {
        running = new Running(folder);
        lead = running.lead();
        technician = running.person(lead, "tom", "Tom Fell", "technician");
        String record = new String(Bench.example("lark-released.yaml"), StandardCharsets.UTF_8).replace("job-record/1", "job-record/2");
        running.board.shop().take("lark", record.getBytes(StandardCharsets.UTF_8), "lead", null);
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private static HttpResponse<String> write(Visit by, String... more) {
        String page = by.get(MACHINE + "/write").body();
        String[] fields = new String[more.length + 4];
        fields[0] = "form";
        fields[1] = Visit.token(page);
        fields[2] = "seen";
        fields[3] = page.replaceAll("(?s).*name=\"seen\" value=\"(\\d+)\".*", "$1");
        System.arraycopy(more, 0, fields, 4, more.length);
        return by.post(MACHINE + "/write", fields);
    }

    @Test
    void a_defect_is_reported_holds_the_machine_and_is_closed_by_another() {
        assertThat(write(technician, "defect-point", "frame", "defect", "weld beside the swing arm is open", "dangers", "steering-loss").statusCode()).isEqualTo(303);
        String page = lead.get(MACHINE + "?gate=road-test").body();
        assertThat(page).contains("Open defects", "weld beside the swing arm is open", "(steering-loss)", "road-test: held", "Close it");
        String id = page.replaceAll("(?s).*closes=([A-Za-z0-9-]+)\".*", "$1");
        assertThat(lead.get(MACHINE + "/write?closes=" + id).body()).contains("Close the defect " + id, "why the defect is closed");
        running.pass(Duration.ofMinutes(1));
        HttpResponse<String> own = write(technician, "closes", id, "reason", "only paint");
        assertThat(own.statusCode()).isEqualTo(422);
        assertThat(own.body()).contains(id + " was reported by the same person. Have another person look, and close the defect under their own name.");
        assertThat(write(lead, "closes", id, "reason", "only a run in the paint").statusCode()).isEqualTo(303);
        assertThat(lead.get(MACHINE + "?gate=road-test").body()).contains("Faults and defects lifted without work", "only a run in the paint").doesNotContain("Open defects");
    }

    @Test
    void an_entry_where_no_check_of_any_machine_asks_is_refused_with_the_nearest_places() {
        HttpResponse<String> refused = lead.json("POST", "/api" + MACHINE + "/entries", "[{\"point\":\"front-wheel\",\"seen\":\"cord\",\"is\":\"covered\"}]", "If-Match", "\"1\"");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("no check asks for cord at 'front-wheel'", "Write it at front-wheel/tyre; ", "write defect");
    }

    @Test
    void an_entry_that_only_another_machine_is_asked_for_is_kept_and_counts_as_a_defect() {
        HttpResponse<String> kept = lead.json("POST", "/api" + MACHINE + "/entries", "[{\"point\":\"fuel/carburettors\",\"tried\":\"throttle-lift\",\"is\":\"one-sticks\"}]", "If-Match", "\"1\"");
        assertThat(kept.statusCode()).isEqualTo(201);
        assertThat(lead.get(MACHINE + "?gate=road-test").body()).contains("Open defects", "throttle lift one sticks",
                "No check of this machine asks for it, so it counts as an open defect.");
    }

    @Test
    void an_examination_is_written_with_the_cause_that_was_found() {
        assertThat(technician.get(MACHINE + "/write").body()).contains("When examined: the cause that was found", "the machine may not stop", "petrol, vapour, hydrogen or wiring can burn");
        HttpResponse<String> without = write(technician, "point", "engine", "work", "examined");
        assertThat(without.statusCode()).isEqualTo(422);
        assertThat(without.body()).contains("an examination without its cause");
        HttpResponse<String> other = write(technician, "point", "engine", "work", "cleaned", "reason", "the stand rattled");
        assertThat(other.statusCode()).isEqualTo(422);
        assertThat(other.body()).contains("a reason, but nothing is corrected", "value=\"the stand rattled\"");
        assertThat(write(technician, "point", "engine", "work", "examined", "reason", "the stand rattled").statusCode()).isEqualTo(303);
    }
}
