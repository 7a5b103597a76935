package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Store;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The board as programs use it. */
class ApiTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;

    @BeforeAll
    static void start() {
        running = new Running(folder.resolve("store"));
        lead = running.lead();
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private static JsonNode json(HttpResponse<String> answer) throws Exception {
        return JSON.readTree(answer.body());
    }

    private static void take(String example) {
        HttpResponse<String> taken = lead.send("POST", "/api/machines", "application/yaml", Bench.example(example), "X-Form-Token", lead.form);
        assertThat(taken.statusCode()).isIn(201, 409);
    }

    private static HttpResponse<String> write(String id, String seen, String entry, String... more) {
        String[] headers = java.util.Arrays.copyOf(more, more.length + 2);
        headers[more.length] = "If-Match";
        headers[more.length + 1] = seen;
        return lead.json("POST", "/api/machines/" + id + "/entries", "[" + entry + "]", headers);
    }

    @Test
    void two_benches_never_overwrite_each_other() throws Exception {
        take("lark-released.yaml");
        String off = "{\"point\":\"front-brake/caliper\",\"done\":\"removed\",\"at\":\"2026-11-25 11:00\"}";
        String tag = lead.get("/api/machines/HV-0142").headers().firstValue("ETag").orElseThrow();
        assertThat(lead.json("POST", "/api/machines/HV-0142/entries", "[" + off + "]").statusCode()).isEqualTo(428);
        HttpResponse<String> twice = write("HV-0142", tag, off.replace("\"done\"", "\"point\":\"rear-wheel\",\"done\""));
        assertThat(twice.statusCode()).isEqualTo(400);
        assertThat(json(twice).get("detail").textValue()).isEqualTo("Duplicate key in one object: line 1. Send it once.");
        HttpResponse<String> first = write("HV-0142", tag, off);
        assertThat(first.statusCode()).isEqualTo(201);
        assertThat(json(first).at("/gates/road-test/verdict").textValue()).isEqualTo("blocked");
        HttpResponse<String> second = write("HV-0142", tag, off);
        assertThat(second.statusCode()).isEqualTo(412);
        assertThat(second.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(json(second).get("detail").textValue()).contains("Somebody else has written to HV-0142");
        String fresh = first.headers().firstValue("ETag").orElseThrow();
        assertThat(lead.get("/api/machines/HV-0142", "If-None-Match", fresh).statusCode()).isEqualTo(304);
        assertThat(write("HV-0142", fresh, off).statusCode()).isEqualTo(201);
        String form = "\"seen\" value=\"3\"";
        HttpResponse<String> late = lead.post("/machines/HV-0142/write", "seen", "1", "work", "removed", "point", "rear-wheel", "note", "kept words");
        assertThat(late.statusCode()).isEqualTo(409);
        assertThat(late.body()).as("the form comes back with what was typed, on the newest state").contains("in the meantime").contains("kept words").contains(form);
    }

    @Test
    void the_same_write_sent_twice_is_done_once() throws Exception {
        take("lark-faults.yaml");
        String id = json(lead.get("/api/machines?q=lark&state=held")).at("/machines/0/id").textValue();
        String tag = lead.get("/api/machines/" + id).headers().firstValue("ETag").orElseThrow();
        String entry = "{\"point\":\"front-brake/caliper/bolts\",\"done\":\"torqued\"}";
        HttpResponse<String> first = write(id, tag, entry, "Idempotency-Key", "k-1");
        HttpResponse<String> again = write(id, tag, entry, "Idempotency-Key", "k-1");
        assertThat(first.statusCode()).isEqualTo(201);
        assertThat(again.statusCode()).isEqualTo(201);
        assertThat(again.body()).isEqualTo(first.body());
        assertThat(write(id, tag, entry.replace("torqued", "tightened"), "Idempotency-Key", "k-1").statusCode()).as("another write under the same key").isEqualTo(422);
        String written = json(first).at("/entries/0").textValue();
        assertThat(json(lead.get("/api/machines/" + id)).get("entries")).filteredOn(e -> e.get("id").textValue().equals(written)).hasSize(1);
        assertThat(lead.get("/api/machines/" + id).headers().firstValue("ETag")).isEqualTo(first.headers().firstValue("ETag"));
    }

    @Test
    void what_is_wrong_is_said_with_its_place() throws Exception {
        HttpResponse<String> refused = lead.send("POST", "/api/machines", "application/yaml", new String(Bench.example("lark-gaps.yaml"), StandardCharsets.UTF_8).replaceFirst("drive: chain", "drive: cain").getBytes(StandardCharsets.UTF_8), "X-Form-Token", lead.form);
        assertThat(refused.statusCode()).isEqualTo(422);
        JsonNode fault = json(refused).at("/faults/0");
        assertThat(fault.get("path").textValue()).isEqualTo("machine.drive");
        assertThat(fault.get("line").intValue()).isPositive();
        assertThat(fault.get("advice").textValue()).contains("chain");
        assertThat(lead.json("POST", "/api/session", "{" + " ".repeat(200)).statusCode()).isEqualTo(400);
        assertThat(lead.get("/api/nothing").statusCode()).isEqualTo(404);
        assertThat(lead.json("PUT", "/api/machines", "{}").statusCode()).isIn(404, 405);
    }

    @Test
    void the_sheet_changes_what_is_sought_and_nothing_that_decides() throws Exception {
        take("harrow-prewar-single.yaml");
        String id = json(lead.get("/api/machines?q=harrow")).at("/machines/0/id").textValue();
        String tag = lead.get("/api/machines/" + id).headers().firstValue("ETag").orElseThrow();
        assertThat(lead.json("PATCH", "/api/machines/" + id, "{\"machine\":{}}", "If-Match", tag).statusCode()).isEqualTo(422);
        HttpResponse<String> changed = lead.json("PATCH", "/api/machines/" + id, "{\"seeks\":[\"on-show\"]}", "If-Match", tag);
        assertThat(changed.statusCode()).isEqualTo(201);
        assertThat(json(changed).get("gates").has("on-show")).isTrue();
        assertThat(json(lead.get("/api/machines/" + id)).get("seeks").get(0).textValue()).isEqualTo("on-show");
    }

    @Test
    void what_is_given_out_is_taken_in_again_with_the_same_verdicts() throws Exception {
        take("merle-released.yaml");
        take("lark-on-show.yaml");
        String all = lead.get("/api/records").body();
        assertThat(all.lines().count()).isGreaterThanOrEqualTo(2);
        try (Store other = Store.open(folder.resolve("other").toString())) {
            Shop shop = Bench.shop(other);
            for (String line : all.lines().toList()) {
                Shop.Done done = shop.take("line", line.getBytes(StandardCharsets.UTF_8), "lead", null);
                JsonNode here = json(lead.get("/api/machines?q=" + done.machine())).at("/machines/0/gates");
                done.after().gates().forEach(gate -> {
                    assertThat(here.at("/" + gate.gate() + "/verdict").textValue()).isEqualTo(gate.released() ? "released" : "blocked");
                    assertThat(here.at("/" + gate.gate() + "/faults").intValue()).isEqualTo(gate.faults());
                    assertThat(here.at("/" + gate.gate() + "/met").intValue()).isEqualTo(gate.mets());
                });
            }
        }
    }

    @Test
    void pages_follow_each_other_without_gap() throws Exception {
        take("lark-released.yaml");
        take("lark-too-close.yaml");
        take("lark-non-runner.yaml");
        List<String> seen = new ArrayList<>();
        for (String next = "/api/machines?size=2&order=id"; next != null; ) {
            JsonNode page = json(lead.get(next));
            page.get("machines").forEach(m -> seen.add(m.get("id").textValue()));
            next = page.get("next").isNull() ? null : page.get("next").textValue();
        }
        assertThat(seen).isSorted().doesNotHaveDuplicates().hasSize(json(lead.get("/api/machines")).get("all").intValue());
        assertThat(lead.get("/api/machines?size=0").statusCode()).isEqualTo(422);
        assertThat(lead.get("/api/machines?size=9999").statusCode()).isEqualTo(422);
    }

    @Test
    void the_description_speaks_of_every_route_and_every_name_in_it_is_there() throws Exception {
        JsonNode described = json(running.visitor().get("/api/openapi.json"));
        assertThat(described.get("openapi").textValue()).isEqualTo("3.1.0");
        Set<String> told = new TreeSet<>();
        described.get("paths").fields().forEachRemaining(path -> path.getValue().fieldNames().forEachRemaining(method -> told.add(method.toUpperCase() + " " + path.getKey())));
        Set<String> served = new TreeSet<>();
        running.board.routes().filter(e -> e.path.startsWith("/api/") && !e.path.equals("/api/openapi.json")).forEach(e -> served.add(e.method.name() + " " + e.path));
        assertThat(told).isEqualTo(served).isNotEmpty();
        List<String> names = described.findValuesAsText("$ref");
        assertThat(names).isNotEmpty().allSatisfy(name -> assertThat(described.at(name.substring(1)).isMissingNode()).as(name).isFalse());
        assertThat(described.findValuesAsText("operationId")).doesNotHaveDuplicates();
    }

    @Test
    void it_tells_whether_it_runs_and_how_it_fares() {
        assertThat(running.visitor().get("/health").body()).isEqualTo("running\n");
        assertThat(running.visitor().get("/ready").body()).startsWith("ready");
        assertThat(lead.get("/metrics").body()).contains("chock_requests_seconds_count{").contains("jvm_memory_used_bytes");
    }

    @Test
    void a_release_that_ran_out_is_shown_as_held_until_it_is_judged_again() throws Exception {
        try (Running later = new Running(folder.resolve("later"))) {
            Visit visit = later.lead();
            later.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            assertThat(json(visit.get("/api/machines")).at("/machines/0/gates/road-test/verdict").textValue()).isEqualTo("released");
            // Longer than any release, shorter than a session.
            later.pass(Duration.ofHours(11));
            later.pass(Duration.ofDays(40));
            Visit again = later.visitor();
            again.signIn("lead", "own words of " + later.leadSecret);
            assertThat(json(again.get("/api/machines")).at("/machines/0/gates/road-test/verdict").textValue()).isEqualTo("blocked");
            assertThat(json(again.get("/api/machines")).at("/machines/0/judged").booleanValue()).isFalse();
            assertThat(again.get("/").body()).contains("waits to be judged again");
            assertThat(later.board.shop().judgeAgain(10, new java.util.TreeMap<>())).isEqualTo(1);
            assertThat(json(again.get("/api/machines")).at("/machines/0/judged").booleanValue()).isTrue();
        }
    }
}
