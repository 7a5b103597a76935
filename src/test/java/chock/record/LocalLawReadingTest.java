package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.rulebook.RuleBook;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The law of a place that is not in the rule book, as a record has it; refusals of a file stand in {@code refused} as well. */
class LocalLawReadingTest {
    private static final String LAW = """
            local-law:
              limits:
                - {limit: brakes.disc-thickness, at-least: 4.0 mm, document: Vehicle Order 1967, section: "§ 4 (4)", as-of: 2024-12-31, by: ida, seconded-by: tom, note: "looked up twice"}
              sets-none:
                - {limit: brakes.disc-runout, document: Vehicle Order 1967, section: whole, as-of: 2024-12-31, by: ida}
            """;

    private static String with(String territory, String law) {
        return Words.good().replace("territory: GB", "territory: " + territory).replace("\npeople:", "\n" + law + "people:");
    }

    private static JobRecord read(String text, Vocabulary words, ReadAs as) {
        return RecordReader.read("record.yaml", text.getBytes(StandardCharsets.UTF_8), words, Words.AS_OF, as);
    }

    @Test
    void a_record_has_each_line_with_its_readers() {
        LocalLaw law = Words.read(with("FR", LAW)).localLaw();
        assertThat(law.limits()).containsExactly(new LocalLaw.Line("brakes.disc-thickness", Quantity.parse("4.0 mm"), null, "Vehicle Order 1967", "§ 4 (4)", LocalDate.of(2024, 12, 31), "ida", "tom"));
        assertThat(law.setsNone()).containsExactly(new LocalLaw.Line("brakes.disc-runout", null, null, "Vehicle Order 1967", "whole", LocalDate.of(2024, 12, 31), "ida", null));
        assertThat(law.lines()).extracting(LocalLaw.Line::isSeconded).containsExactly(true, false);
        assertThat(Words.read(Words.good()).localLaw()).isEqualTo(LocalLaw.NONE);
    }

    @Test
    void it_is_written_as_it_was_read() {
        JobRecord read = Words.read(with("FR", LAW));
        JobRecord again = RecordReader.read("again", RecordWriter.write(read, Set.of()), Words.VOCABULARY, Words.AS_OF);
        assertThat(again.localLaw()).isEqualTo(read.localLaw());
        assertThat(again.territory()).isEqualTo("FR");
    }

    @Test
    void a_file_that_comes_in_may_not_have_a_law_that_the_rule_book_has() {
        assertThatThrownBy(() -> read(with("GB", LAW), Words.VOCABULARY, ReadAs.WRITTEN)).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("local-law: the law of GB is in this rule book. Leave local-law out");
        assertThatThrownBy(() -> read(with("GB-SCT", LAW), Words.VOCABULARY, ReadAs.WRITTEN)).hasMessageContaining("the law of GB-SCT is in this rule book, as GB.");
        assertThat(read(with("GB-NIR", LAW), Words.VOCABULARY, ReadAs.WRITTEN).localLaw().isEmpty()).isFalse();
        // Stored before a rule book brought that law, it stays readable.
        assertThat(read(with("GB", LAW), Words.VOCABULARY, ReadAs.STORED).localLaw().limits()).hasSize(1);
    }

    @Test
    void a_number_that_no_law_can_set_is_refused_when_it_comes_in() {
        String impossible = LAW.replace("brakes.disc-thickness, at-least: 4.0 mm", "tyres.tread-depth, at-least: 160 mm").replace("brakes.disc-runout", "tyres.alignment");
        Vocabulary shipped = RuleBook.shipped().vocabulary();
        String record = new String(RecordWriter.write(Words.read(Words.good()), Set.of()), StandardCharsets.UTF_8);
        assertThat(record).contains("\"territory\":\"GB\"");
        assertThat(shipped.plausible().refuses("tyres.tread-depth", Quantity.parse("160 mm"))).isPresent();
        assertThatThrownBy(() -> read(with("FR", impossible), shipped, ReadAs.WRITTEN)).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("local-law.limits[0].at-least: 160 mm is not possible for tyres.tread-depth").hasMessageContaining("Look at the law again");
    }

    @Test
    void every_limit_of_the_rule_book_that_wants_a_local_law_can_be_written_and_no_other() {
        LawWords law = RuleBook.shipped().vocabulary().law();
        assertThat(law.sides().keySet()).contains("tyres.tread-depth", "tyres.alignment", "controls.mirrors").doesNotContain("brakes.disc-thickness");
        assertThat(law.sides().get("tyres.tread-depth")).containsExactly("at-least");
        assertThat(law.sides().get("tyres.alignment")).containsExactly("at-most");
        assertThat(law.lawOf("GB-SCT")).contains("GB");
        assertThat(law.lawOf("FR")).isEmpty();
        assertThat(law.lawOf("US-NY")).isEmpty();
        assertThat(law.unions()).containsExactlyInAnyOrder("EU", "US");
    }
}
