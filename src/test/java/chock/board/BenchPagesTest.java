package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.useful.PrintedMachine;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The bench offers no answer, takes none for what is not on the screen, and says what each entry did. */
class BenchPagesTest {
    @TempDir
    static Path folder;
    private static Running running;
    private static Visit ida;
    private static int number = 7400;

    private String machine;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        running.pass(Duration.between(Bench.NOON, PrintedMachine.moment()));
        ida = running.person(running.lead(), "ida", "Ida Marrow", "inspector");
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    private void begin(String way, String... parts) {
        beginOn("[]", way, parts);
    }

    /** @param entries what the record holds already, in YAML */
    private void beginOn(String entries, String way, String... parts) {
        String text = new String(PrintedMachine.blank(), StandardCharsets.UTF_8).replaceFirst("record: \"[^\"]*\"", "record: \"HV-" + ++number + "\"").replace("entries: []", "entries: " + entries);
        machine = running.board.shop().take("blank", text.getBytes(StandardCharsets.UTF_8), "lead", null).machine();
        List<String> fields = new ArrayList<>(List.of("gate", "road-test", "way", way));
        for (String part : parts) {
            fields.addAll(List.of("part", part));
        }
        assertThat(ida.post("/machines/" + machine + "/bench", fields.toArray(new String[0])).headers().firstValue("Location")).contains("/machines/" + machine + "/bench/step");
    }

    private HttpResponse<String> page() {
        return ida.get("/machines/" + machine + "/bench/step");
    }

    private HttpResponse<String> send(String page, String... fields) {
        List<String> all = new ArrayList<>();
        Map<String, String> hidden = Hand.hidden(page);
        all.addAll(List.of("turn", hidden.get("turn"), "keys", hidden.get("keys")));
        all.addAll(Arrays.asList(fields));
        return ida.post("/machines/" + machine + "/bench/step", all.toArray(new String[0]));
    }

    private List<String> entries() {
        return running.board.shop().find(machine).orElseThrow().entries().stream().map(Object::toString).toList();
    }

    private JobRecord record() {
        return new Judging(Bench.book()).read(running.board.shop().find(machine).orElseThrow(), running.now());
    }

    @Test
    void no_answer_is_chosen_before_somebody_chooses_it_and_no_spot_means_good() {
        begin("order");
        OrderOfWork order = OrderOfWork.of(record(), Bench.book(), Gate.ROAD_TEST, running.now());
        Map<Integer, Integer> good = new TreeMap<>();
        int asked = 0;
        for (OrderOfWork.Step step : order.steps()) {
            BenchQuestion question = BenchQuestion.of(step, Bench.book());
            if (question.answers().size() > 1) {
                Set<String> sound = step.checks().stream().flatMap(check -> Bench.book().cards().get(check).wants().stream()).filter(want -> want.aspect().equals(step.what())).flatMap(want -> want.good().stream()).collect(Collectors.toSet());
                for (int spot = 0; spot < question.answers().size(); spot++) {
                    if (sound.contains(question.answers().get(spot))) {
                        good.merge(spot, 1, Integer::sum);
                    }
                }
                asked++;
            }
        }
        assertThat(asked).isGreaterThan(150);
        int most = asked * 6 / 10;
        assertThat(good.values()).as("of " + asked + ", how often a good answer is first, second …: " + good).allMatch(often -> often < most);
        List<Hand.Control> controls = Hand.controls(page().body());
        assertThat(controls).filteredOn(one -> one.name().startsWith("is-")).isNotEmpty().noneMatch(Hand.Control::isChosen).allMatch(one -> !one.attributes().getOrDefault("type", "text").equals("text") || one.value().isEmpty());
    }

    @Test
    void a_look_is_answered_question_by_question_and_what_could_not_be_seen_stays_missing() {
        begin("order", "front-fork");
        String page = page().body();
        assertThat(page).contains("Look over the fork legs");
        assertThat(send(page, "is-front-fork fork-condition", "straight").statusCode()).as("some questions are open").isEqualTo(422);
        assertThat(entries()).isEmpty();
        assertThat(send(page, "is-front-fork fork-condition", "straight", "is-front-fork/left-leg leg-play", "-", "is-front-fork/left-leg leg-surface", "smooth", "is-front-fork/right-leg leg-play", "none", "is-front-fork/right-leg leg-surface", "-").statusCode()).isEqualTo(303);
        assertThat(entries()).hasSize(3).noneMatch(entry -> entry.contains("\"-\"")).allMatch(entry -> entry.contains("\"by\":\"ida\""));
        assertThat(page().body()).contains("Left out, stays missing: 2.");
    }

    @Test
    void what_an_entry_did_is_at_the_foot_and_a_fault_brings_its_work_into_the_round() {
        begin("order", "front-brake");
        String page = page().body();
        assertThat(page).contains("Nothing written yet in this round.").contains("at least 1.5");
        assertThat(send(page, "is-front-brake/caliper/inner-pad thickness", "1.2", "with-front-brake/caliper/inner-pad thickness", "micrometer", "is-front-brake/caliper/outer-pad thickness", "4.2", "with-front-brake/caliper/outer-pad thickness", "micrometer").statusCode()).isEqualTo(303);
        String after = page().body();
        assertThat(after).contains("class=\"told bad\"").contains("fault: ").containsPattern("e1, e2: road-test held by \\d+, (now|still) by \\d+").contains("Work: replaced");
    }

    @Test
    void work_is_asked_for_without_the_word_to_write() {
        beginOn("\n  - {id: off, at: 2026-11-24 10:00, by: tom, point: front-brake/caliper, done: removed}", "order", "front-brake");
        assertThat(OrderOfWork.of(record(), Bench.book(), Gate.ROAD_TEST, running.now()).steps()).anyMatch(step -> step.kind() == OrderOfWork.Kind.PUT_TOGETHER);
        List<String> works = new ArrayList<>();
        for (String page = page().body(); page.contains("Save and next"); page = page().body()) {
            if (page.contains("<span>Done</span>")) {
                works.add(page.replaceFirst("(?s).*<h1>Work: ", "").replaceFirst("(?s)<p class=\"told.*", ""));
            }
            send(page, "do", "skip");
        }
        assertThat(works).anyMatch(work -> work.contains("Put it together again.</p>")).noneMatch(work -> work.contains("write '")).noneMatch(work -> work.contains("Write '"));
    }

    @Test
    void the_wrong_machine_is_told_of_by_a_later_entry_and_nothing_is_taken_away() {
        begin("order", "rear-brake");
        String page = page().body();
        assertThat(page).doesNotContain("Wrong machine?");
        send(page, "is-rear-brake/clevis unworn-diameter", "6.00", "with-rear-brake/clevis unworn-diameter", "micrometer", "is-rear-brake/clevis worn-diameter", "5.92", "with-rear-brake/clevis worn-diameter", "micrometer");
        List<String> before = entries();
        assertThat(page().body()).contains("Wrong machine?");
        assertThat(ida.get("/machines/" + machine + "/bench/wrong").body()).contains("Nothing is deleted").contains("e1: rear brake, clevis, unworn diameter 6.00 mm");
        assertThat(ida.post("/machines/" + machine + "/bench/wrong", "reason", " ").statusCode()).isEqualTo(422);
        assertThat(entries()).isEqualTo(before);
        assertThat(ida.post("/machines/" + machine + "/bench/wrong", "reason", "these were read at HV-7000").statusCode()).isEqualTo(303);
        assertThat(entries()).hasSize(5).startsWith(before.toArray(new String[0]));
        assertThat(entries().get(2)).contains("\"told\":\"unworn-diameter\"", "\"corrects\":\"e1\"", "made at the wrong machine: these were read at HV-7000");
        assertThat(entries().get(3)).contains("\"told\":\"worn-diameter\"", "\"corrects\":\"e2\"");
        assertThat(entries().get(4)).contains("Entries e1, e2 were made at the wrong machine: these were read at HV-7000");
        assertThat(ida.get("/machines/" + machine).body()).contains("made at the wrong machine");
        assertThat(page().statusCode()).as("the round is over").isEqualTo(303);
    }

    @Test
    void only_a_step_may_run_a_script_and_only_from_the_board() {
        begin("order");
        assertThat(page().headers().firstValue("Content-Security-Policy")).hasValueSatisfying(policy -> assertThat(policy).contains("script-src 'self'").doesNotContain("unsafe"));
        assertThat(ida.get("/machines/" + machine + "/bench").headers().firstValue("Content-Security-Policy")).hasValueSatisfying(policy -> assertThat(policy).doesNotContain("script-src"));
        assertThat(page().body()).doesNotContain("onclick").doesNotContain("style=");
    }
}
