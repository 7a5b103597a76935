package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A machine like another begins with its description, read anew, and with nothing that was found on the other. */
class NewMachinePagesTest {
    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    /** What the form has in its fields, with these changed. */
    private static HttpResponse<String> send(String... changed) {
        Map<String, String> fields = new LinkedHashMap<>();
        Hand.controls(lead.get("/new-machine?like=HV-0142").body()).stream().filter(one -> !one.name().isEmpty() && !one.name().equals("form")).forEach(one -> fields.put(one.name(), one.value()));
        for (int i = 0; i < changed.length; i += 2) {
            fields.put(changed[i], changed[i + 1]);
        }
        List<String> all = new ArrayList<>();
        fields.forEach((name, value) -> all.addAll(List.of(name, value)));
        return lead.post("/new-machine", all.toArray(new String[0]));
    }

    @Test
    void what_is_of_one_machine_alone_is_asked_and_not_taken_over() {
        List<Hand.Control> controls = Hand.controls(lead.get("/new-machine?like=HV-0142").body());
        assertThat(controls).filteredOn(one -> one.name().matches("frame-number|engine-number|built|first-registered|history|laid-up-since")).hasSize(6).allMatch(one -> one.value().isEmpty());
        assertThat(controls).anyMatch(one -> one.name().equals("engine.displacement") && one.value().equals("246 cc"));
        assertThat(send("number", "HV-8001").statusCode()).as("numbers, year and history are blank").isEqualTo(422);
        assertThat(running.board.shop().find("HV-8001")).isEmpty();
    }

    @Test
    void the_new_machine_has_no_entry_and_its_bench_begins() {
        assertThat(send("number", "HV-8002", "frame-number", "TB25-20001", "engine-number", "TB25E-20002", "built", "1974", "first-registered", "1974-08-01", "history", "unknown", "laid-up-since", "unknown").statusCode()).isEqualTo(303);
        var kept = running.board.shop().find("HV-8002").orElseThrow();
        assertThat(kept.entries()).isEmpty();
        assertThat(kept.sheet().get("claims")).isEmpty();
        assertThat(kept.sheet().at("/machine/as-built/seconded-by").isMissingNode()).isTrue();
        assertThat(kept.sheet().at("/maker/figures").size()).as("the same model has the same figures, each with who read it").isGreaterThan(5);
        assertThat(lead.post("/machines/HV-8002/bench", "gate", "road-test", "way", "order").statusCode()).isEqualTo(303);
        assertThat(lead.get("/machines/HV-8002/bench/step").body()).contains("id=\"step\"");
    }

    @Test
    void another_model_takes_no_figure_of_this_one() {
        assertThat(send("number", "HV-8003", "model", "Lark 350", "frame-number", "TB35-1", "engine-number", "TB35E-1", "built", "1974", "first-registered", "1974-08-01", "history", "unknown", "laid-up-since", "no").statusCode()).isEqualTo(303);
        var kept = running.board.shop().find("HV-8003").orElseThrow();
        assertThat(kept.sheet().at("/maker/figures")).isEmpty();
        assertThat(kept.sheet().at("/machine/as-built").isMissingNode()).isTrue();
    }

    @Test
    void a_frame_number_that_is_here_already_is_asked_about() {
        String[] fields = {"number", "HV-8004", "frame-number", " tb25-10382", "engine-number", "TB25E-9", "built", "1974", "first-registered", "1974-08-01", "history", "known", "laid-up-since", "no"};
        HttpResponse<String> asked = send(fields);
        assertThat(asked.statusCode()).isEqualTo(409);
        assertThat(asked.body()).contains("This frame number is here already").contains("/machines/HV-0142").contains("value=\"TB25E-9\"");
        assertThat(running.board.shop().find("HV-8004")).isEmpty();
        String[] all = java.util.Arrays.copyOf(fields, fields.length + 2);
        all[fields.length] = "another";
        all[fields.length + 1] = "yes";
        assertThat(send(all).statusCode()).isEqualTo(303);
    }
}
