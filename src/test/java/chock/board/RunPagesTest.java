package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A run under a roof is tried out by the rules alone, and nothing is kept of it. */
class RunPagesTest {
    private static final String ROOM = "goes=into-the-room&speed=idle&openings=shut&background=0&exhaust=not-measured";

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static String merle;
    private static String lark;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        merle = running.board.shop().take("merle", Bench.example("merle-released.yaml"), "lead", null).machine();
        lark = running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null).machine();
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private static String run(String machine, String query) {
        HttpResponse<String> answer = lead.get("/machines/" + machine + "/run?" + query);
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void it_starts_from_what_the_record_says() {
        String page = run(merle, "");
        assertThat(page).contains("value=\"210 m³\"").contains("value=\"5on\"").contains("outdoors-by-hose\" selected").contains("class=\"chart\"").contains("IF THE HOSE SLIPS");
    }

    @Test
    void a_larger_room_and_a_shorter_run_do_where_a_small_one_does_not() {
        assertThat(run(lark, ROOM + "&runs=20on&volume=40")).contains("This run would not do").contains("class=\"chart\"").contains("longest run");
        assertThat(run(lark, ROOM + "&runs=0.25on&volume=2000")).contains("As far as the air goes, this run would do.");
        assertThat(run(lark, ROOM + "&runs=0.25on&volume=2000 m³&goes=into-the-room".replace(" ", "%20"))).contains("this run would do.");
    }

    @Test
    void above_idle_or_where_nothing_is_known_there_is_no_prediction() {
        String page = run(lark, ROOM.replace("speed=idle", "speed=above-idle") + "&runs=2on&volume=300");
        assertThat(page).contains("This run would not do").contains("no run is proven to stay at idle").doesNotContain("class=\"chart\"");
        assertThat(run(lark, "runs=2on")).contains("Write how much air the room holds.").doesNotContain("this run would do.");
    }

    @Test
    void what_cannot_be_read_is_named_and_nothing_is_predicted() {
        for (String wrong : new String[] {"volume=sixty", "volume=60%20kg", "volume=60&openings=ajar", "volume=60&background=x"}) {
            String page = run(lark, ROOM.replaceAll(wrong.contains("openings") ? "openings=shut&" : wrong.contains("background") ? "background=0&" : "$^", "") + "&runs=2on&" + wrong);
            assertThat(page).as(wrong).contains("role=\"alert\"").doesNotContain("class=\"chart\"").doesNotContain("this run would do.");
        }
        assertThat(run(lark, ROOM + "&runs=forever&volume=60")).contains("This run would not do").doesNotContain("class=\"chart\"");
        String evil = URLEncoder.encode("x\"'><script>alert(1)</script>", StandardCharsets.UTF_8);
        for (String field : new String[] {"runs", "volume", "openings", "mixing", "share", "background", "speed"}) {
            assertThat(run(lark, field + "=" + evil + (field.equals("volume") ? "" : "&volume=60"))).as(field).doesNotContain("<script>");
        }
    }

    @Test
    void a_fan_and_a_measured_exhaust_count() {
        String shut = run(lark, ROOM + "&runs=1on&volume=400");
        String fan = run(lark, ROOM.replace("openings=shut", "openings=fan-running") + "&runs=1on&volume=400&airflow=9000");
        assertThat(fan).contains("a fan brings in 9000 m³/h").isNotEqualTo(shut);
        assertThat(run(lark, ROOM.replace("exhaust=not-measured", "exhaust=measured") + "&runs=1on&volume=400&share=4.5&rpm=1200")).contains("the exhaust was measured, 4.5 %");
    }

    @Test
    void trying_out_keeps_nothing_and_writing_the_plan_down_keeps_the_plan() {
        long before = running.board.shop().find(lark).orElseThrow().version();
        run(lark, ROOM + "&runs=3on&volume=300");
        assertThat(running.board.shop().find(lark).orElseThrow().version()).isEqualTo(before);
        HttpResponse<String> written = lead.post("/machines/" + lark + "/run", "seen", String.valueOf(before), "goes", "into-the-room", "runs", "3on", "speed", "idle", "volume", "300");
        assertThat(written.statusCode()).isEqualTo(303);
        var entries = running.board.shop().find(lark).orElseThrow().entries();
        assertThat(entries.subList(entries.size() - 3, entries.size()).toString()).contains("planned-runs").contains("3on").contains("exhaust-goes").contains("planned-speed").doesNotContain("trial").doesNotContain("volume");
        assertThat(lead.post("/machines/" + lark + "/run", "seen", String.valueOf(before), "goes", "into-the-room", "runs", "3on", "speed", "idle", "volume", "300").statusCode()).isEqualTo(409);
    }

    @Test
    void only_this_page_lets_a_script_run_and_only_ours() {
        String here = lead.get("/machines/" + lark + "/run").headers().firstValue("Content-Security-Policy").orElseThrow();
        assertThat(here).contains("default-src 'none'").contains("script-src 'self'").doesNotContain("unsafe");
        HttpResponse<String> refused = lead.post("/machines/" + lark + "/write", "seen", "1");
        assertThat(refused.headers().firstValue("Content-Security-Policy").orElseThrow()).doesNotContain("script-src");
        assertThat(lead.get("/").headers().firstValue("Content-Security-Policy").orElseThrow()).doesNotContain("script-src");
        assertThat(lead.get(RunPages.LIVE).body()).hasSizeGreaterThan(40_000).contains("2.0.4");
    }
}
