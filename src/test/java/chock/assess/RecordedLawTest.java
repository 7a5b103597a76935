package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordedLawText;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A machine to be ridden where the rule book has no law, judged by the law in its record. */
class RecordedLawTest {
    private static final RuleBook BOOK = RuleBook.shipped();

    private static Assessment judged(String text, Instant asOf) {
        return judged(RecordedLawText.read(text), asOf);
    }

    private static Assessment judged(JobRecord record, Instant asOf) {
        return Assessor.assess(record, BOOK, List.of(Gate.ROAD_TEST), asOf);
    }

    private static Finding finding(Assessment assessment, String check) {
        return assessment.gates().get(0).findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow();
    }

    @Test
    void with_all_of_the_law_there_it_is_released_and_says_whose_word_that_is() throws IOException {
        Assessment assessment = judged(RecordedLawText.whole(), RecordedLawText.NOON);
        assertThat(assessment.gates().get(0).open()).isEmpty();
        assertThat(assessment.gates().get(0).released()).isTrue();
        assertThat(assessment.localCode()).isEqualTo("EU (European Union); of FR itself none in this rule book; as the record has it: Vehicle Order 1967 (text of 2024-12-31), "
                + "read by Ida Marrow, seconded by Tom Fell; not checked here");
        assertThat(assessment.recordedLaw()).isEqualTo("The law of FR is not in this rule book. It is taken as this record has it: Vehicle Order 1967 (text of 2024-12-31), read by Ida Marrow, "
                + "seconded by Tom Fell. Nobody has checked it here; the licensed inspector there decides.");
        assertThat(finding(assessment, "tyres.tread-depth").limit().source().words()).isEqualTo("Vehicle Order 1967, § 4 (4), text of 2024-12-31, read by Ida Marrow and Tom Fell, as the record has it, not checked here");
    }

    @Test
    void nowhere_else_does_an_assessment_speak_of_it() throws IOException {
        Assessment there = judged(RecordedLawText.without("FR"), RecordedLawText.NOON);
        assertThat(there.gates().get(0).released()).isFalse();
        assertThat(there.localCode()).isEqualTo("EU (European Union)");
        assertThat(there.recordedLaw()).isNull();
        // A rule book that has the law itself takes the record's for nothing.
        Assessment here = judged(RecordedLawText.whole().replace("\nterritory: FR", "\nterritory: GB"), RecordedLawText.NOON);
        assertThat(here.localCode()).isEqualTo("GB (Great Britain)");
        assertThat(here.recordedLaw()).isNull();
    }

    /** What a description asks is kept for the next machine of that description: the law in a record is none of it. */
    @Test
    void nothing_of_the_law_in_one_record_gets_into_the_judgement_of_another() throws IOException {
        String with = RecordedLawText.whole();
        List<String> texts = List.of(with, RecordedLawText.without("FR"), with.replace("Ida Marrow", "Ada Sorrel"), with.replace("at-least: 1.6 mm", "at-least: 2.5 mm"),
                with.replace("as-of: 2024-12-31, by: ida, seconded-by: tom", "as-of: 2024-12-31, by: ida"), with.replace("§ 4 (4)", "§ 5"));
        // In another territory each time, of which nothing is kept yet, and in another order.
        List<String> territories = List.of("FR", "ES", "IT", "BE", "NL", "PT");
        List<List<String>> said = new ArrayList<>();
        for (int turn = 0; turn < territories.size(); turn++) {
            String territory = territories.get(turn);
            String[] words = new String[texts.size()];
            for (int i = 0; i < texts.size(); i++) {
                int which = (i + turn) % texts.size();
                words[which] = judged(texts.get(which).replace("\nterritory: FR", "\nterritory: " + territory), RecordedLawText.NOON).gates().toString().replaceAll("\\b" + territory + "\\b", "FR");
            }
            said.add(List.of(words));
        }
        assertThat(said).allSatisfy(words -> assertThat(words).isEqualTo(said.get(0)));
        assertThat(said.get(0)).doesNotHaveDuplicates();
        assertThat(finding(judged(texts.get(0), RecordedLawText.NOON), "record.territory").state()).isEqualTo(State.MET);
        assertThat(finding(judged(texts.get(1), RecordedLawText.NOON), "record.territory").state()).isEqualTo(State.MISSING);
        assertThat(finding(judged(texts.get(1), RecordedLawText.NOON), "tyres.tread-depth").says()).contains("no local code for it in this rule book (territory FR)");
        assertThat(finding(judged(texts.get(2), RecordedLawText.NOON), "tyres.tread-depth").says()).contains("read by Ada Sorrel and Tom Fell").doesNotContain("Ida Marrow");
        assertThat(finding(judged(texts.get(4), RecordedLawText.NOON), "record.territory").state()).isEqualTo(State.MISSING);
    }

    @Test
    void each_limit_left_out_or_read_by_one_person_holds_it_where_it_is_asked() throws IOException {
        List<String> held = new ArrayList<>();
        String whole = RecordedLawText.whole();
        for (String limit : RecordedLawText.limits()) {
            Assessment left = judged(RecordedLawText.but(List.of(limit)), RecordedLawText.NOON);
            Assessment alone = judged(whole.replaceAll("(limit: " + limit.replace(".", "\\.") + ",.*), seconded-by: tom", "$1"), RecordedLawText.NOON);
            assertThat(RecordedLawText.read(whole).localLaw().of(limit)).as(limit).isPresent();
            if (!left.gates().get(0).released()) {
                held.add(limit);
                assertThat(finding(left, "record.territory").says()).as(limit).contains("the record does not settle all of the law of FR: open for " + limit);
                assertThat(alone.gates().get(0).released()).as(limit).isFalse();
            }
        }
        assertThat(held).contains("tyres.tread-depth", "tyres.alignment", "tyres.cut", "brakes.pad-thickness", "brakes.shoe-lining", "electrics.headlamps-fitted").doesNotContain("tyres.tread-depth-moped", "brakes.efficiency-both-moped");
    }

    /** However loose, what the record has of a law lets nothing through that is held without it. */
    @Test
    void it_lets_no_fault_through() throws IOException {
        String shallow = RecordedLawText.whole().replace("at-least: 1.6 mm", "at-least: 0.1 mm").replaceAll("(measured: tread-depth, is: )[0-9.]+ mm", "$10.5 mm");
        assertThat(shallow).contains("is: 0.5 mm");
        Finding tread = finding(judged(shallow, RecordedLawText.NOON), "tyres.tread-depth");
        assertThat(tread.state()).isEqualTo(State.FAULT);
    }

    @Test
    void a_number_that_no_law_can_set_settles_nothing() throws IOException {
        Finding tread = finding(judged(RecordedLawText.whole().replace("at-least: 1.6 mm", "at-least: 160 mm"), RecordedLawText.NOON), "tyres.tread-depth");
        assertThat(tread.state()).isEqualTo(State.MISSING);
        assertThat(tread.says()).contains("the local law of the record cannot be right: 160 mm is not possible for tyres.tread-depth").contains("look it up again in Vehicle Order 1967, § 4 (4)");
    }

    @Test
    void the_order_of_work_says_what_to_write() throws IOException {
        JobRecord record = RecordedLawText.read(RecordedLawText.but(List.of("tyres.alignment")));
        OrderOfWork order = OrderOfWork.of(record, BOOK, Gate.ROAD_TEST, RecordedLawText.NOON);
        assertThat(order.toString()).contains("write what it says of tyres.alignment under local-law: limits:, or under sets-none:").contains("with document, section, as-of, by and seconded-by");
    }
}
