package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.GateVerdict;
import chock.assess.State;
import chock.record.Gate;
import java.util.List;
import org.junit.jupiter.api.Test;

class HtmlReportTest {
    private final String page = HtmlReport.of(List.of(Sample.assessment(Sample.blocked())));

    @Test
    void what_a_record_says_is_never_markup() {
        String nasty = "<script>alert('x')</script> & \"Sons\"\u0000";
        GateVerdict gate = new GateVerdict(Gate.ROAD_TEST, false, null, List.of(Sample.plain("a<b", State.FAULT, nasty)),
                List.of(new GateVerdict.NotApplicable("c.d", nasty)), List.of(nasty));
        String html = HtmlReport.of(List.of(Sample.of(Sample.record(nasty), gate)));
        assertThat(html).doesNotContain("<script", "\"Sons\"", "a<b", "\u0000");
        assertThat(html.split("&lt;script&gt;alert\\(&#39;x&#39;\\)&lt;/script&gt; &amp; &quot;Sons&quot;\\?", -1)).hasSize(5);
    }

    @Test
    void it_needs_nothing_from_elsewhere() {
        assertThat(page).contains("default-src 'none'").doesNotContain("src=", "href=", "url(", "@import", "http:", "https:", "<script");
    }

    @Test
    void every_state_is_told_in_a_word_and_by_a_sign() {
        for (State state : State.values()) {
            assertThat(page).contains("<span class=\"sign\">" + Wording.sign(state) + "</span><strong>" + state.id() + "</strong>");
        }
        assertThat(List.of(State.values())).extracting(Wording::sign).doesNotHaveDuplicates();
    }

    @Test
    void verdict_faults_notes_reasons_and_notice_are_all_there_in_this_order() {
        assertThat(page).containsSubsequence("<strong>BLOCKED</strong> at road-test: 1 fault", "brakes.pad-thickness", "Also missing: ",
                "<strong>Note: </strong>The set is a replica.", "Outside by 0.30 mm", "<strong>To clear: </strong>", "<strong>Caution: </strong>",
                "brakes.drum-bore", "the linings are bonded", "Open defects", "Faults and defects lifted without work", "Entries that no check reads", "Write it at: front wheel, tyre.", "Great Britain (GB)", Sample.DIGEST, Wording.NOTICE);
        assertThat(HtmlReport.of(List.of(Sample.assessment(Sample.released())))).contains("<strong>RELEASED</strong> at first-start until 2026-08-24 23:59 Europe/London");
    }

    @Test
    void a_claim_is_told_in_words_and_is_never_markup() {
        String html = HtmlReport.of(List.of(Sample.claimed("<b>new</b>")));
        assertThat(html).contains("<li><strong>contradicted</strong>, rear wheel, tyre: new (&quot;&lt;b&gt;new&lt;/b&gt;&quot;, by seller): date code 1009 (e4).</li>");
        assertThat(page).doesNotContain("<h2>Claims");
    }

    @Test
    void nothing_judged_is_not_a_release() {
        assertThat(HtmlReport.of(List.of(Sample.assessment()))).contains("BLOCKED").doesNotContain("RELEASED");
        assertThat(HtmlReport.of(List.of())).contains("No record was judged.");
    }
}
