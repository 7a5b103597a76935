package chock.archive;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Impact;
import chock.bench.RecordMill;
import chock.record.Gate;
import chock.report.JsonReport;
import chock.rulebook.RuleBook;
import chock.rulebook.Trial;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One line of an archive, by itself. */
class JudgingTest {
    private static final AsOf NOON = AsOf.read("2026-11-25T12:00").orElseThrow();
    private final RuleBook book = RuleBook.shipped();
    private final Judging judging = new Judging(book, NOON, null);

    private static byte[] record() throws IOException {
        return new RecordMill("lark-released.yaml", 60, 7).next().getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void the_same_line_comes_to_the_same_every_time() throws IOException {
        Outcome<Assessment> once = judging.assess("line 1", record());
        assertThat(once.refused()).isNull();
        assertThat(once.failed()).isNull();
        assertThat(once.result().gates()).isNotEmpty();
        String line = JsonReport.line(1, once.result());
        assertThat(JsonReport.line(1, judging.assess("line 9", record()).result())).isEqualTo(line);
        assertThat(JsonReport.line(1, new Judging(book, NOON, null).assess("x", record()).result())).isEqualTo(line);
    }

    @Test
    void a_time_without_a_zone_is_on_the_clock_of_the_record() throws IOException {
        Assessment local = judging.assess("line 1", record()).result();
        assertThat(local.asOf()).isEqualTo(NOON.in(local.record().zone()));
    }

    @Test
    void the_gates_asked_for_are_judged_once_each() throws IOException {
        Assessment judged = new Judging(book, NOON, List.of(Gate.ROAD_TEST, Gate.FIRST_START, Gate.ROAD_TEST)).assess("line 1", record()).result();
        assertThat(judged.gates()).extracting(gate -> gate.gate()).containsExactly(Gate.ROAD_TEST, Gate.FIRST_START);
    }

    @Test
    void what_is_no_record_is_refused_with_its_name_and_judged_as_nothing() {
        assertRefused("".getBytes(StandardCharsets.UTF_8), "here: it is empty. Write one job record a line");
        assertRefused(" \t\r".getBytes(StandardCharsets.UTF_8), "here: it is empty. Write one job record a line");
        assertRefused(null, "here: it is longer than 5 MB. Write one job record a line");
        assertRefused(new byte[Judging.LONGEST_LINE + 1], "here: it is longer than 5 MB. Write one job record a line");
        assertRefused("{\"chock\": \"job-record/2\"".getBytes(StandardCharsets.UTF_8), "here:");
    }

    @Test
    void text_that_is_not_UTF_8_is_refused_and_not_repaired() throws IOException {
        byte[] broken = record();
        int at = new String(broken, StandardCharsets.ISO_8859_1).indexOf("\"marque\":\"") + 11;
        broken[at] = (byte) 0xff;
        assertRefused(broken, "UTF-8");
    }

    private void assertRefused(byte[] line, String why) {
        Outcome<Assessment> came = judging.assess("here", line);
        assertThat(came.result()).isNull();
        assertThat(came.failed()).isNull();
        assertThat(came.refused()).hasMessageContaining(why);
    }

    @Test
    void another_limit_is_compared_gate_by_gate() throws IOException {
        byte[] whole = Files.readAllBytes(Path.of("docs/examples/lark-released.yaml"));
        RuleBook stricter = book.with(Trial.read("tyres.age=1y", book).change());
        List<Impact> impacts = judging.compare("line 1", whole, stricter).result();
        Assessment now = judging.assess("line 1", whole).result();
        Assessment then = new Judging(stricter, NOON, null).assess("line 1", whole).result();
        assertThat(impacts).hasSameSizeAs(now.gates());
        assertThat(impacts).extracting(Impact::before).containsExactlyElementsOf(now.gates().stream().map(gate -> gate.released()).toList());
        assertThat(impacts).extracting(Impact::after).containsExactlyElementsOf(then.gates().stream().map(gate -> gate.released()).toList());
        assertThat(impacts).anySatisfy(impact -> assertThat(impact.findings()).extracting(Impact.Change::check).contains("tyres.age"));
        assertThat(judging.compare("here", null, stricter).refused()).hasMessageContaining("it is longer than 5 MB");
    }
}
