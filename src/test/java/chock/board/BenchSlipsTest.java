package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.useful.PrintedMachine;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Twenty slips of a hand at the bench, each made on the page that was sent. Shown counts what is refused with a reason, drawn
 * outside its limit, or done once though it was sent twice, before anything wrong is in the record; the rest is written, and can
 * only be seen in the foot line.
 */
class BenchSlipsTest {
    private static final String INNER = "front-brake/caliper/inner-pad thickness";
    private static final String OUTER = "front-brake/caliper/outer-pad thickness";

    @TempDir
    private Path folder;
    private Running running;
    private Visit ida;
    private Visit tom;
    private String machine;
    private final List<String> table = new ArrayList<>();
    private int shown;

    @BeforeEach
    void start() {
        running = new Running(folder);
        running.pass(Duration.between(Bench.NOON, PrintedMachine.moment()));
        Visit lead = running.lead();
        ida = running.person(lead, "ida", "Ida Marrow", "inspector");
        tom = running.person(lead, "tom", "Tom Fell", "technician");
        machine = take("HV-7301");
    }

    @AfterEach
    void stop() {
        running.close();
    }

    private String take(String number) {
        String text = new String(PrintedMachine.blank(), StandardCharsets.UTF_8).replaceFirst("record: \"[^\"]*\"", "record: \"" + number + "\"")
                .replaceFirst("\\{\"id\":\"micrometer\",\"kind\":\"micrometer\"", "{\"id\":\"old\",\"kind\":\"micrometer\",\"uncertainty\":\"by-kind\",\"calibrated\":\"2025-03-02\",\"due\":\"2026-03-02\"},$0");
        return running.board.shop().take(number, text.getBytes(StandardCharsets.UTF_8), "lead", null).machine();
    }

    private String at() {
        return "/machines/" + machine + "/bench";
    }

    private void begin(Visit who, String part) {
        assertThat(who.post(at(), "gate", "road-test", "way", "order", "part", part).statusCode()).isEqualTo(303);
    }

    private String page() {
        return ida.get(at() + "/step").body();
    }

    private int entries() {
        return running.board.shop().find(machine).orElseThrow().entries().size();
    }

    private HttpResponse<String> send(String page, String... fields) {
        List<String> all = new ArrayList<>();
        Map<String, String> hidden = Hand.hidden(page);
        hidden.remove("form");
        hidden.forEach((name, value) -> all.addAll(List.of(name, value)));
        all.addAll(List.of(fields));
        if (!all.contains("do")) {
            all.addAll(List.of("do", "save"));
        }
        return ida.post(at() + "/step", all.toArray(new String[0]));
    }

    private HttpResponse<String> pads(String page, String inner, String unit, String outer, String with) {
        return send(page, "is-" + INNER, inner, "unit-" + INNER, unit, "with-" + INNER, with, "is-" + OUTER, outer, "unit-" + OUTER, "mm", "with-" + OUTER, "micrometer");
    }

    /** Whether it was refused with a reason on the page, and nothing written. */
    private void slip(String what, boolean expected, Runnable deed, String mustSay) {
        int before = entries();
        String[] said = new String[1];
        deed.run();
        said[0] = lastBody;
        boolean refused = entries() == before && said[0].contains(mustSay);
        assertThat(refused).as(what + ": " + said[0].replaceAll("(?s).*role=\"alert\">(.*?)</div>.*", "$1")).isEqualTo(expected);
        note(what, refused);
    }

    private void note(String what, boolean isShown) {
        shown += isShown ? 1 : 0;
        table.add((isShown ? "shown    " : "not shown") + " " + what);
    }

    private String lastBody = "";

    private void last(HttpResponse<String> answer) {
        lastBody = answer.body();
    }

    @Test
    void twenty_slips_and_what_is_shown_of_them_before_they_are_written() throws Exception {
        begin(ida, "front-brake");
        String page = page();
        assertThat(page).contains(INNER).doesNotContain(" checked required");
        String alert = "role=\"alert\"";
        slip("a digit too many: 42 mm of pad", true, () -> last(pads(page, "42", "mm", "4.2", "micrometer")), alert);
        slip("the point forgotten: 420 mm", true, () -> last(pads(page, "420", "mm", "4.2", "micrometer")), alert);
        slip("the wrong unit: 4.2 in", true, () -> last(pads(page, "4.2", "in", "4.2", "micrometer")), alert);
        slip("two points: 4..2", true, () -> last(pads(page, "4..2", "mm", "4.2", "micrometer")), alert);
        slip("a minus: -4.2", true, () -> last(pads(page, "-4.2", "mm", "4.2", "micrometer")), alert);
        slip("Save before anything is typed", true, () -> last(pads(page, "", "mm", "4.2", "micrometer")), "no answer yet");
        slip("a reading, and that it could not be read", true, () -> last(send(page, "is-" + INNER, "4.2", "left-" + INNER, "-", "is-" + OUTER, "4.2", "with-" + OUTER, "micrometer")), "Keep one of the two");
        slip("no instrument named", true, () -> last(pads(page, "4.2", "mm", "4.2", "")), "name the instrument");
        slip("an instrument whose calibration is over", true, () -> last(pads(page, "4.2", "mm", "4.2", "old")), "calibration is over");
        assertThat(pads(page, "4.2", "mm", "4.2", "scale").body()).contains("does not read it");
        // What is typed is drawn on the limit while it is typed, and again on the page of a refusal.
        String drawn = pads(page, "1.2", "mm", "", "micrometer").body();
        String band = drawn.replaceAll("(?s).*?class=\"band\"[^>]* x=\"([0-9.]+)\" width=\"([0-9.]+)\".*", "$1");
        String tick = drawn.replaceAll("(?s).*?class=\"line\" d=\"M([0-9.]+),.*", "$1");
        assertThat(Double.parseDouble(band)).as("the block lies on the hatched side").isLessThan(Double.parseDouble(tick));
        note("a wrong digit that falls under the limit: 1.2 for 4.2", true);

        int before = entries();
        assertThat(pads(page, "4.2", "mm", "4.2", "micrometer").statusCode()).isEqualTo(303);
        assertThat(pads(page, "4.2", "mm", "4.2", "micrometer").statusCode()).isEqualTo(303);
        assertThat(entries()).as("written once").isEqualTo(before + 2);
        note("Save tapped twice", true);
        slip("back, and another reading sent", true, () -> last(send(page.replaceFirst("name=\"turn\" value=\"[^\"]*\"", "name=\"turn\" value=\"old.0\""), "is-" + INNER, "3.2", "is-" + OUTER, "3.2")), "no longer the one on the screen");

        String friction = page();
        String first = machine;
        machine = take("HV-7302");
        begin(ida, "front-brake");
        slip("the form of another machine, sent to this one", true, () -> last(send(friction, "is-front-brake friction-material", "whole-and-dry")), "no longer the one on the screen");
        machine = first;
        slip("Save without an answer", true, () -> last(send(friction)), "no answer yet");
        slip("an answer that is not one of the question's", true, () -> last(send(friction, "is-front-brake friction-material", "sound-as-a-bell")), alert);
        // Somebody else answers it first.
        begin(tom, "front-brake");
        String toms = tom.get(at() + "/step").body();
        Map<String, String> his = Hand.hidden(toms);
        tom.post(at() + "/step", "turn", his.get("turn"), "keys", his.get("keys"), "is-" + his.get("keys"), "whole-and-dry", "do", "save");
        slip("a question somebody else has answered meanwhile", true, () -> last(send(friction, "is-front-brake friction-material", "whole-and-dry")), "no longer the one on the screen");

        // These are written: nothing on the page can know better.
        String next = page();
        begin(ida, "rear-brake");
        String rear = page();
        int sofar = entries();
        assertThat(rear).contains("rear-brake/clevis");
        assertThat(send(rear, "is-rear-brake/clevis unworn-diameter", "5.00", "with-rear-brake/clevis unworn-diameter", "micrometer", "is-rear-brake/clevis worn-diameter", "4.92", "with-rear-brake/clevis worn-diameter", "micrometer").statusCode()).isEqualTo(303);
        note("the answer beside the one that was meant", false);
        note("a wrong digit that stays plausible: 5.00 for 6.00", entries() == sofar);
        note("standing at another machine than the one on the screen, whose number stands above each step", false);
        sofar = entries();
        assertThat(send(page(), "do", "skip").statusCode()).isEqualTo(303);
        assertThat(entries()).isEqualTo(sofar);
        assertThat(page()).contains("Skipped, nothing written");
        note("Skip for Save: nothing is written, and the foot line says so", true);
        assertThat(next).isNotEmpty();

        assertThat(table).hasSize(20);
        Files.createDirectories(Path.of("target/bench"));
        Files.write(Path.of("target/bench/slips.txt"), table);
        table.forEach(System.out::println);
        assertThat(shown).as("of 20").isEqualTo(17);
    }
}
