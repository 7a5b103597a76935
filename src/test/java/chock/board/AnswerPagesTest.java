package chock.board;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Explainer;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.report.AnswersReport;
import chock.report.OrderReport;
import chock.report.WhyWords;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page says what the command line says, and each step leads to the form that asks for it. */
class AnswerPagesTest {
    private static final Pattern WRITE = Pattern.compile("href=\"([^\"]*/write[?][^\"]*)\">Write th(?:is|ese)");

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static String machine;
    private static JobRecord record;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        byte[] worked = Bench.example("lark-worked-on-after.yaml");
        machine = running.board.shop().take("lark", worked, "lead", null).machine();
        record = RecordReader.read("lark", worked, Bench.book().vocabulary(), Bench.NOON);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    /** What a reader sees of a page. */
    private static String read(String page) {
        return page.replaceAll("(?s)<head>.*</head>", "").replaceAll("<[^>]+>", "").replace("&#34;", "\"").replace("&#39;", "'").replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&").replaceAll("\\s+", " ");
    }

    @Test
    void the_order_on_the_page_is_that_of_the_command_line() {
        OrderReport report = new OrderReport(OrderOfWork.of(record, Bench.book(), Gate.ROAD_TEST, Bench.NOON), Map.of());
        assertThat(report.lines()).hasSizeGreaterThan(3);
        String page = read(lead.get("/machines/" + machine + "/order?gate=road-test").body());
        assertThat(page).contains(report.title());
        int at = 0;
        for (OrderReport.Line line : report.lines()) {
            if (line.look() != null) {
                at = page.indexOf(line.step().number() + " " + line.look().title() + line.look().says(), at);
                assertThat(at).as("step " + line.step().number() + ": " + line.look()).isPositive();
            }
            int next = page.indexOf((line.step().look() == null ? line.step().number() + " " : "") + line.step().says(), at);
            assertThat(next).as("step " + line.step().number() + ": " + line.step().says()).isGreaterThan(at);
            at = next;
            line.notes().forEach(note -> assertThat(page).contains(note));
            assertThat(page).contains(line.caution());
        }
        assertThat(lead.get("/api/machines/" + machine + "/order?gate=road-test").body()).isEqualTo(report.json());
    }

    @Test
    void each_step_leads_to_the_form_that_asks_for_it() {
        List<MatchResult> links = WRITE.matcher(lead.get("/machines/" + machine + "/order?gate=road-test").body()).results().toList();
        List<List<OrderOfWork.Step>> steps = OrderOfWork.of(record, Bench.book(), Gate.ROAD_TEST, Bench.NOON).together().stream()
                .filter(look -> look.get(0).kind() != OrderOfWork.Kind.SETTLE).toList();
        assertThat(links).hasSameSizeAs(steps);
        assertThat(steps).as("some of them looks with several answers").anyMatch(look -> look.size() > 2);
        for (int i = 0; i < steps.size(); i++) {
            var form = lead.get(links.get(i).group(1).replace("&amp;", "&"));
            assertThat(form.statusCode()).as(links.get(i).group(1)).isEqualTo(200);
            for (OrderOfWork.Step step : steps.get(i)) {
                String what = step.what();
                if (step.kind().compareTo(OrderOfWork.Kind.DO) > 0) {
                    assertThat(form.body()).as(step.says()).containsPattern("<legend>[^<]*" + Pattern.quote(what.replace('-', ' ')) + "</legend>");
                } else if (what != null) {
                    assertThat(form.body()).as(step.says()).containsPattern("value=\"" + what + "\" selected|<span>" + what);
                }
            }
        }
    }

    /** One look, one form; each question keeps an answer of its own, and what is left open is not written. */
    @Test
    void what_one_look_answers_is_written_on_one_form() throws Exception {
        String other = running.board.shop().take("lark-released", Bench.example("lark-released.yaml"), "lead", null).machine();
        String at = "/machines/" + other + "/write?look=" + Query.encoded("rock and turn the wheel") + "&at=front-wheel&gate=road-test";
        String form = lead.get(at).body();
        assertThat(Pattern.compile("<legend>").matcher(form).results().count()).isEqualTo(3);
        assertThat(form).doesNotContain("checked");
        List<String> before = written(other);
        int seen = Integer.parseInt(form.replaceAll("(?s).*name=\"seen\" value=\"(\\d+)\".*", "$1"));
        var sent = lead.post("/machines/" + other + "/write", "look", "rock and turn the wheel", "at", "front-wheel", "seen", String.valueOf(seen), "is-front-wheel/bearings wheel-rock", "no-play", "is-front-wheel/tyre clearance", "touches");
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        List<String> after = written(other);
        assertThat(after.subList(before.size(), after.size())).containsExactly("front-wheel/bearings tried wheel-rock no-play", "front-wheel/tyre tried clearance touches");
        assertThat(lead.get(at.replace("rock", "rack")).statusCode()).isEqualTo(404);
    }

    /** The form may be an hour old: what is asked can have changed by then, with the day or the rule book. */
    @Test
    void an_answer_never_comes_to_stand_at_another_question() throws Exception {
        String other = running.board.shop().take("lark-later", new String(Bench.example("lark-released.yaml"), UTF_8).replace("HV-0142", "HV-3142").getBytes(UTF_8), "lead", null).machine();
        String form = lead.get("/machines/" + other + "/write?look=" + Query.encoded("rock and turn the wheel") + "&at=front-wheel&gate=road-test").body();
        List<String> before = written(other);
        String seen = form.replaceAll("(?s).*name=\"seen\" value=\"(\\d+)\".*", "$1");
        assertThat(form).contains("name=\"is-front-wheel/bearings wheel-rock\"").doesNotContain("name=\"is-0\"");
        for (String former : List.of("is-0", "is-front-wheel/bearings wheel-spin", "is-rear-wheel/bearings wheel-rock")) {
            var sent = lead.post("/machines/" + other + "/write", "look", "rock and turn the wheel", "at", "front-wheel", "seen", seen, former, "no-play", "is-front-wheel/tyre clearance", "touches");
            assertThat(sent.statusCode()).as(sent.body()).isEqualTo(409);
            assertThat(sent.body()).contains("no-play' for " + former.substring(3)).containsPattern("value=\"touches\" checked");
            assertThat(Pattern.compile(" checked").matcher(sent.body()).results().count()).as("nothing else is chosen").isEqualTo(1);
        }
        assertThat(written(other)).isEqualTo(before);
    }

    private static List<String> written(String id) throws Exception {
        List<String> entries = new ArrayList<>();
        new ObjectMapper().readTree(lead.get("/api/machines/" + id).body()).get("entries").forEach(e -> entries.add(e.path("point").asText() + " tried " + e.path("tried").asText() + " " + e.path("is").asText()));
        return entries;
    }

    @Test
    void why_on_the_page_is_in_the_words_of_the_command_line() throws Exception {
        for (String check : List.of("brakes.pad-thickness", "record.second-person", "tyres.age")) {
            var answer = lead.get("/machines/" + machine + "/why?check=" + check);
            var explanation = Explainer.explain(record, Bench.book(), List.of(check), Bench.NOON).get(0);
            WhyWords why = WhyWords.of(explanation);
            String page = read(answer.body());
            assertThat(page).contains(why.question(), why.none(), why.remedy());
            why.places().forEach(place -> {
                assertThat(page).contains(place.title() + ": " + place.state().id());
                place.lines().forEach(said -> {
                    assertThat(page).contains(read(said.lead() + said.words()));
                    said.below().forEach(one -> assertThat(page).contains(read(one)));
                });
            });
            assertThat(new ObjectMapper().readTree(lead.get("/api/machines/" + machine + "/why?check=" + check).body())).isEqualTo(new ObjectMapper().readTree(AnswersReport.json(explanation).toString()));
        }
        assertThat(lead.get("/machines/" + machine + "/why?check=no.such").statusCode()).isEqualTo(404);
        assertThat(lead.get("/api/machines/" + machine + "/why?check=no.such").statusCode()).isEqualTo(422);
    }

    @Test
    void every_finding_of_a_machine_leads_to_its_why() {
        String page = lead.get("/machines/" + machine + "?gate=road-test").body();
        List<String> links = Pattern.compile("href=\"([^\"]*/why[?][^\"]*)\"").matcher(page).results().map(m -> m.group(1).replace("&amp;", "&")).toList();
        assertThat(links).hasSizeGreaterThan(40);
        assertThat(lead.get(links.get(0)).body()).contains("So it is").contains("To do:");
    }
}
