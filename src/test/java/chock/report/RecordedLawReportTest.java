package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordedLawText;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Wherever a verdict stands that rests on the law in a record, that stands above it. */
class RecordedLawReportTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final String LAW = "The law of FR is not in this rule book. It is taken as this record has it: Vehicle Order 1967 (text of 2024-12-31), read by Ida Marrow, seconded by Tom Fell. "
            + "Nobody has checked it here; the licensed inspector there decides.";

    private static JobRecord record(boolean law) throws IOException {
        return RecordedLawText.read(law ? RecordedLawText.whole() : RecordedLawText.without("FR"));
    }

    private static Assessment assessment(boolean law) throws IOException {
        return Assessor.assess(record(law), BOOK, List.of(Gate.ROAD_TEST), RecordedLawText.NOON);
    }

    @Test
    void the_text_report_begins_with_it() throws IOException {
        String text = TextReport.of(List.of(assessment(true)), false);
        assertThat(text).startsWith("LAW NOT CHECKED HERE\n  The law of FR is not in this rule book.");
        assertThat(text.replaceAll("\\s+", " ")).containsSubsequence(LAW, "RELEASED at road-test");
        assertThat(TextReport.verdicts(assessment(true), false)).startsWith("LAW NOT CHECKED HERE");
        assertThat(TextReport.of(List.of(assessment(false)), false)).doesNotContain("LAW NOT CHECKED HERE");
    }

    @Test
    void the_html_report_and_the_json_say_it_first() throws IOException {
        assertThat(HtmlReport.of(List.of(assessment(true)))).containsSubsequence("Law not checked here: ", LAW, "<strong>RELEASED</strong> at road-test");
        assertThat(HtmlReport.of(List.of(assessment(false)))).doesNotContain("Law not checked here");
        assertThat(JsonReport.line(1, assessment(true))).containsSubsequence("\"recordedLaw\":\"" + LAW, "\"verdict\":\"released\"");
        assertThat(JsonReport.line(1, assessment(false))).doesNotContain("recordedLaw");
    }

    @Test
    void the_statement_says_it_above_whether_the_machine_may_leave() throws IOException {
        String html = Papers.html(Statement.of(record(true), BOOK, RecordedLawText.NOON), PaperSize.A4);
        assertThat(html).containsSubsequence("Condition statement", "Law not checked here.", LAW, "class=\"standing");
        assertThat(html).contains("data-from=\"record/local-law\"");
        String text = StatementText.of(Statement.of(record(true), BOOK, RecordedLawText.NOON), false);
        assertThat(text.replaceAll("\\s+", " ")).containsSubsequence("Condition statement", "LAW NOT CHECKED HERE", LAW, "NOT TO BE RIDDEN");
        assertThat(Papers.html(Statement.of(record(false), BOOK, RecordedLawText.NOON), PaperSize.A4)).doesNotContain("Law not checked here");
    }

    @Test
    void the_tag_says_it_above_open_and_stays_one_page() throws IOException {
        for (List<Gate> gates : List.of(List.of(Gate.ROAD_TEST), List.of(Gate.FIRST_START, Gate.ROAD_TEST), List.of(Gate.values()))) {
            String html = Papers.html(Tag.of(Assessor.assess(record(true), BOOK, gates, RecordedLawText.NOON)), PaperSize.A4);
            assertThat(html).containsSubsequence("Law not checked here.", LAW, "<p class=\"word\">OPEN</p>");
            assertThat(TagText.of(Tag.of(Assessor.assess(record(true), BOOK, gates, RecordedLawText.NOON)), false).replaceAll("\\s+", " ")).containsSubsequence("LAW NOT CHECKED HERE", LAW, "OPEN");
            try (PDDocument pdf = Loader.loadPDF(Papers.pdf(html, RecordedLawText.NOON))) {
                assertThat(pdf.getNumberOfPages()).as(gates.toString()).isEqualTo(1);
            }
        }
    }
}
