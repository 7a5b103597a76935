package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.GateVerdict;
import chock.assess.State;
import chock.quantity.Quantity;
import chock.record.Gate;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextReportTest {
    private final String blocked = TextReport.of(List.of(Sample.assessment(Sample.blocked())), false);

    @Test
    void the_verdict_is_the_first_line() {
        assertThat(blocked.lines().findFirst()).hasValue("BLOCKED at road-test: 1 fault, 1 in doubt, 1 stale, 1 missing; 1 met");
        assertThat(TextReport.of(List.of(Sample.assessment(Sample.released())), false).lines().limit(2))
                .containsExactly("RELEASED at first-start until 2026-08-24 23:59 Europe/London", "  if nobody touches the machine before that");
    }

    @Test
    void no_line_is_wider_than_80_columns() {
        String wide = TextReport.of(List.of(Sample.of(Sample.record("W".repeat(300)), Sample.blocked())), false);
        assertThat(wide.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(wide.lines()).contains("W".repeat(80));
        assertThat(blocked.lines()).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(80));
        assertThat(blocked.lines().mapToInt(String::length).max().orElseThrow()).isGreaterThan(70);
    }

    @Test
    void what_blocks_is_told_apart_in_words_worst_first_then_notes_then_what_is_met() {
        assertThat(blocked).containsSubsequence("\nFAULT: outside", "X brakes.pad-thickness (critical)", "\nDOUBT: inside", "? tyres.tread-depth",
                "\nSTALE: proven once", "~ brakes.bled", "\nMISSING: nothing", "_ brakes.hose-age", "\nNOTES: ", "The set is a replica.",
                "1 of 5 checks are met. 1 check does not apply", "Open defects:", "transmission, chain: chain condition stiff link", "Faults and defects lifted without work:", "lifted by e6: a slip",
                "Entries that no check reads:", "(e7).", "Write it at: front wheel, tyre.", "It counts as fault at: front brake, control.", "Local code: Great Britain (GB)",
                "Rule book:  0.1.0\n  " + Sample.DIGEST + "\n", Wording.NOTICE.substring(0, 40));
        assertThat(blocked).doesNotContain("brakes.drum-bore");
    }

    @Test
    void a_finding_says_what_was_measured_what_it_rests_on_and_what_clears_it() {
        String flowing = blocked.replaceAll("\\s+", " ");
        assertThat(flowing).contains("1.20 mm ± 0.10 mm, at least 1.50 mm (Example code, section 4, read in the official text).",
                "Outside by 0.30 mm; entry e1; also at least 1.0 mm (common practice).",
                "To clear: Fit new pads as a set, bed them in, and measure again.",
                "Caution: Old friction material can contain asbestos.");
    }

    @Test
    void a_margin_is_said_with_its_side_and_no_more_digits_than_a_reader_needs() {
        assertThat(Wording.margin(Quantity.parse("0.3 mm"))).isEqualTo("inside by 0.3 mm");
        assertThat(Wording.margin(Quantity.parse("-0.300 mm"))).isEqualTo("outside by 0.300 mm");
        assertThat(Wording.margin(Quantity.parse("0.333333333333 mm"))).isEqualTo("inside by 0.3333 mm");
        assertThat(Wording.margin(Quantity.parse("12345 N"))).isEqualTo("inside by 12350 N");
        assertThat(Wording.margin(Quantity.parse("0.0 mm"))).isEqualTo("exactly at the limit");
    }

    @Test
    void a_worse_place_hides_no_other_place() {
        assertThat(blocked).contains("Also missing: Front brake, caliper, outer pad: nobody measured its");
        assertThat(blocked).contains("- brakes.pad-thickness: The pin was seized.");
        assertThat(blocked.split("inner pad: 1.20 mm", -1)).as("said once").hasSize(2);
    }

    @Test
    void a_claim_stands_below_the_findings_with_what_became_of_it() {
        String claimed = TextReport.of(List.of(Sample.claimed("new in May")), false);
        assertThat(claimed).containsSubsequence("NOTES: ", "of 5 checks are met", "\nCLAIMS: what was said of the machine", "Entries that no check reads:");
        assertThat(claimed.replaceAll("\\s+", " ")).contains("- contradicted, rear wheel, tyre: new (\"new in May\", by seller): date code 1009 (e4).");
        assertThat(blocked).doesNotContain("CLAIMS");
    }

    @Test
    void each_gate_has_its_verdict_on_top_and_its_own_part_below() {
        String both = TextReport.of(List.of(Sample.assessment(Sample.released(), Sample.blocked())), false);
        assertThat(both).containsSubsequence("RELEASED at first-start", "BLOCKED at road-test", "HV-0142: Tarnbeck Lark 250", "\nAt first-start\n", "1 of 1 checks are met", "\nAt road-test\n", "FAULT");
    }

    @Test
    void a_rule_book_that_cannot_decide_blocks_and_is_not_blamed_on_the_machine() {
        GateVerdict undecided = new GateVerdict(Gate.ROAD_TEST, false, null, List.of(Sample.plain("a.b", State.MET, "Fine.")), List.of(), List.of("brakes.bled: two findings"));
        String text = TextReport.of(List.of(Sample.assessment(undecided)), false);
        assertThat(text).startsWith("BLOCKED at road-test: 1 left undecided by the rule book; 1 met\n");
        assertThat(text).containsSubsequence("UNDECIDED: the rule book is at fault", "! brakes.bled: two findings", "1 of 1 checks are met");
    }

    @Test
    void nothing_judged_is_not_a_release() {
        assertThat(TextReport.of(List.of(Sample.assessment()), false)).startsWith("BLOCKED: no gate was judged\n").doesNotContain("RELEASED");
    }

    @Test
    void bold_is_for_terminals_only_and_changes_no_word() {
        String bold = TextReport.of(List.of(Sample.assessment(Sample.blocked())), true);
        assertThat(blocked).doesNotContain("\u001b");
        assertThat(bold).startsWith("\u001b[1mBLOCKED");
        assertThat(bold.replaceAll("\u001b\\[[01]m", "")).isEqualTo(blocked);
    }

    @Test
    void a_record_cannot_steer_the_terminal_or_fake_a_verdict() {
        String text = TextReport.of(List.of(Sample.of(Sample.record("Hollow\u001b[2J\nRELEASED at road-test\u202e"), Sample.blocked())), false);
        assertThat(text).contains("Hollow?[2J RELEASED at road-test?;").doesNotContain("\u001b", "\u202e", "\nRELEASED");
    }
}
