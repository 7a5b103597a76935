package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.ObjectNode;
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

/** Whoever writes that something was torqued is asked for the wrench and the torque. */
class TorqueFormTest {
    private static final String CHECK = "?check=brakes.caliper-bolts&at=front-brake/caliper/bolts";
    private static final String BOLTS = "-front-brake/caliper/bolts torqued";
    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static String lark;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        lark = running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null).machine();
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private static List<ObjectNode> entries() {
        return running.board.shop().find(lark).orElseThrow().entries();
    }

    private static ObjectNode written(String... form) {
        String[] whole = java.util.Arrays.copyOf(form, form.length + 2);
        whole[form.length] = "seen";
        whole[form.length + 1] = String.valueOf(running.board.shop().find(lark).orElseThrow().version());
        HttpResponse<String> answer = lead.post("/machines/" + lark + "/write", whole);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        return entries().get(entries().size() - 1);
    }

    @Test
    void the_form_of_a_check_asks_for_both_and_takes_a_bare_number_in_newton_metres() {
        assertThat(lead.get("/machines/" + lark + "/write" + CHECK).body()).contains("With which torque wrench").contains("To which torque").contains("wrench-1, torque wrench");
        ObjectNode entry = written("check", "brakes.caliper-bolts", "at", "front-brake/caliper/bolts", "is" + BOLTS, "done", "with" + BOLTS, "wrench-1", "set" + BOLTS, "31,5");
        assertThat(entry.get("done").textValue()).isEqualTo("torqued");
        assertThat(entry.get("with").textValue()).isEqualTo("wrench-1");
        assertThat(entry.get("is").textValue()).isEqualTo("31.5 N·m");
    }

    @Test
    void so_does_the_form_for_any_work() {
        assertThat(lead.get("/machines/" + lark + "/write?at=front-wheel/spindle").body()).contains("When torqued: with which torque wrench").contains("When torqued: to which torque");
        ObjectNode entry = written("point", "front-wheel/spindle", "work", "torqued", "with-torqued", "wrench-1", "set-torqued", "38 lbf·ft");
        assertThat(entry.get("is").textValue()).isEqualTo("38 lbf·ft");
        assertThat(written("point", "front-wheel/spindle", "work", "cleaned", "with-torqued", "wrench-1").has("with")).as("the wrench chosen beforehand is not sent with other work").isFalse();
    }

    @Test
    void a_torque_beside_other_work_is_refused_and_not_lost() {
        int before = entries().size();
        HttpResponse<String> answer = lead.post("/machines/" + lark + "/write", "seen", String.valueOf(running.board.shop().find(lark).orElseThrow().version()), "point", "front-wheel/spindle", "work", "tightened", "with-torqued", "wrench-1", "set-torqued", "52");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("does not go with tightened").contains("value=\"52\"");
        assertThat(entries()).hasSize(before);
    }

    @Test
    void a_record_of_the_first_form_is_not_asked() throws IOException {
        String former = Files.readString(Path.of("src/test/resources/record/v1/lark-released.yaml")).replace("HV-0142", "HV-1142");
        String id = running.board.shop().take("former", former.getBytes(StandardCharsets.UTF_8), "lead", null).machine();
        assertThat(lead.get("/machines/" + id + "/write" + CHECK).body()).contains("torqued").doesNotContain("With which torque wrench");
    }
}
