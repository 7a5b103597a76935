package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Gates sought and instruments are seen by all and changed by inspectors and the lead. */
class SheetPagesTest {
    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static Visit tom;
    private static String lark;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        tom = running.person(lead, "tom", "Tom Fell", "technician");
        lark = running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null).machine();
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private static String seen() {
        return String.valueOf(running.board.shop().find(lark).orElseThrow().version());
    }

    private static HttpResponse<String> add(Visit who, String id, String kind, String uncertainty, String calibrated, String due) {
        return who.post("/machines/" + lark + "/instruments", "seen", seen(), "id", id, "kind", kind, "uncertainty", uncertainty, "calibrated", calibrated, "due", due);
    }

    @Test
    void an_instrument_is_added_and_offered_where_it_measures() {
        assertThat(tom.get("/machines/" + lark + "/sheet").body()).contains("Next due:").contains("Territory").doesNotContain("Add an instrument");
        assertThat(add(lead, "mic-9", "micrometer", "0.02 mm", "2026-10-01", "2027-10-01").statusCode()).isEqualTo(303);
        String page = tom.get("/machines/" + lark + "/sheet").body();
        assertThat(page).contains("<code>mic-9</code> micrometer").contains("counts to 2027-10-01").contains("U 0.02 mm");
        assertThat(tom.get("/machines/" + lark + "/write?check=brakes.pad-thickness&at=front-brake/caliper/inner-pad").body()).contains("value=\"mic-9\"");
    }

    @Test
    void a_record_of_the_first_form_is_moved_by_whoever_may_change_the_sheet() throws IOException {
        String former = Files.readString(Path.of("src/test/resources/record/v1/lark-on-show.yaml")).replace("HV-0158", "HV-1158");
        String id = running.board.shop().take("former", former.getBytes(StandardCharsets.UTF_8), "lead", null).machine();
        assertThat(tom.get("/machines/" + id + "/sheet").body()).contains("job-record/1").doesNotContain("Move the record");
        assertThat(lead.get("/machines/" + id + "/sheet").body()).contains("Move the record to job-record/2");
        assertThat(tom.post("/machines/" + id + "/form", "seen", "1").statusCode()).isEqualTo(403);
        assertThat(lead.post("/machines/" + id + "/form", "seen", "1").statusCode()).isEqualTo(303);
        assertThat(lead.get("/machines/" + id + "/sheet").body()).contains("job-record/2").doesNotContain("Move the record");
    }

    @Test
    void what_is_wrong_with_an_instrument_is_said_and_nothing_is_changed() {
        String before = seen();
        for (List<String> wrong : List.of(List.of("", "micrometer", "", "2026-10-01", "2027-10-01"), List.of("cal-1", "micrometer", "", "2026-10-01", "2027-10-01"), List.of("mic-7", "wand", "", "2026-10-01", "2027-10-01"),
                List.of("mic-7", "micrometer", "much", "2026-10-01", "2027-10-01"), List.of("mic-7", "micrometer", "", "2027-10-01", "2026-10-01"), List.of("<script>alert(1)</script>", "micrometer", "<script>", "\"><script>", ""))) {
            HttpResponse<String> answer = add(lead, wrong.get(0), wrong.get(1), wrong.get(2), wrong.get(3), wrong.get(4));
            assertThat(answer.statusCode()).as(wrong.toString()).isEqualTo(422);
            assertThat(answer.body()).as(wrong.toString()).contains("role=\"alert\"").doesNotContain("<script");
        }
        assertThat(seen()).isEqualTo(before);
    }

    @Test
    void an_instrument_whose_calibration_is_over_is_pointed_out() {
        assertThat(add(lead, "old-1", "caliper", "", "2024-01-01", "2025-01-01").statusCode()).isEqualTo(303);
        assertThat(tom.get("/machines/" + lark + "/sheet").body()).contains("Calibration over: old-1.").contains("what it reads now proves nothing");
    }

    @Test
    void gates_sought_are_set_and_no_form_overwrites_what_it_has_not_seen() {
        String before = seen();
        assertThat(lead.post("/machines/" + lark + "/seeks", "seen", before, "seeks", "road-test", "seeks", "on-show").statusCode()).isEqualTo(303);
        assertThat(lead.get("/api/machines/" + lark).body()).contains("\"seeks\":[\"road-test\",\"on-show\"]");
        assertThat(lead.post("/machines/" + lark + "/seeks", "seen", before, "seeks", "road-test").statusCode()).isEqualTo(409);
        assertThat(lead.post("/machines/" + lark + "/seeks", "seen", seen()).statusCode()).as("none at all").isEqualTo(422);
        assertThat(lead.post("/machines/" + lark + "/seeks", "seen", seen(), "seeks", "nowhere").statusCode()).isEqualTo(422);
        assertThat(tom.post("/machines/" + lark + "/seeks", "seen", seen(), "seeks", "road-test").statusCode()).isEqualTo(403);
        assertThat(lead.get("/journal").body()).contains("sheet changed: seeks");
    }
}
