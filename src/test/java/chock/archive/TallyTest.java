package chock.archive;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.GateVerdict;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Rows of verdicts and counts over them, held against the assessment they are made of. */
class TallyTest {
    private static final Judging JUDGING = new Judging(RuleBook.shipped(), AsOf.read("2026-11-25T12:00").orElseThrow(), null);

    private static Assessment of(String example) throws IOException {
        return JUDGING.assess(example, Files.readAllBytes(Path.of("docs/examples", example))).result();
    }

    @Test
    void a_verdict_becomes_a_row_with_what_is_not_met_and_how_many() throws IOException {
        Assessment assessment = of("lark-faults.yaml");
        List<VerdictRow> rows = VerdictRow.of(assessment);
        assertThat(rows).hasSameSizeAs(assessment.gates());
        VerdictRow row = rows.get(0);
        GateVerdict gate = assessment.gates().get(0);
        assertThat(row.verdict()).isEqualTo("blocked");
        assertThat(row.holdsUntil()).isNull();
        assertThat(row.digest()).isEqualTo(RuleBook.shipped().digest());
        assertThat(row.fault()).isPositive();
        assertThat(row.met() + row.notMet().size()).isEqualTo(gate.findings().size());
        assertThat(row.fault() + row.doubt() + row.stale() + row.missing()).isEqualTo(row.notMet().size());
        assertThat(row.of()).isEqualTo(new VerdictRow.Kind("Tarnbeck", 1974, "motorcycle", "GB"));
        assertThat(VerdictRow.of(of("lark-released.yaml")).get(0).holdsUntil()).startsWith("2026-11-25T");
    }

    @Test
    void a_machine_is_held_by_a_check_once_at_each_gate_and_once_at_all() throws IOException {
        Assessment assessment = of("lark-faults.yaml");
        Tally tally = new Tally();
        tally.judged(assessment);
        tally.held(assessment);
        tally.held(assessment);
        TreeSet<String> anywhere = new TreeSet<>();
        assessment.gates().forEach(gate -> gate.open().forEach(finding -> anywhere.add(finding.check())));
        assertThat(anywhere).isNotEmpty();
        TreeSet<String> counted = new TreeSet<>();
        tally.counts().forEach((key, times) -> {
            if (key.what().equals("held-at-all")) {
                counted.add(key.check());
                assertThat(times).as("twice the same machine").isEqualTo(2);
                assertThat(key.gate()).isNull();
            }
        });
        assertThat(counted).isEqualTo(anywhere);
        assertThat(tally.counts()).containsEntry(Counted.plain("record"), 1L);
    }

    @Test
    void a_line_that_is_no_record_is_counted_apart_from_one_the_program_failed_on() {
        Tally tally = new Tally();
        tally.without(JUDGING.assess("here", "no record".getBytes(StandardCharsets.UTF_8)));
        tally.without(Outcome.failed(new IllegalStateException("broken")));
        assertThat(tally.counts()).containsOnly(java.util.Map.entry(Counted.plain("refused"), 1L), java.util.Map.entry(Counted.plain("failed"), 1L));
    }

    @Test
    void what_other_limits_change_is_counted_from_and_to() throws IOException {
        byte[] record = Files.readAllBytes(Path.of("docs/examples/lark-released.yaml"));
        RuleBook stricter = new Terms("2026-11-25T12:00", List.of(), null, null, List.of("tyres.age=1y")).inForce().book();
        Tally tally = new Tally();
        tally.compared(JUDGING.compare("here", record, stricter).result());
        assertThat(tally.counts()).containsEntry(new Counted("verdict", "road-test", null, "released", "blocked", null), 1L)
                .containsEntry(new Counted("change", "road-test", "tyres.age", "met", "fault", null), 1L);
    }
}
