package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a machine was built with, and what changed since, as it is read and as it is refused. */
class PastReadingTest {
    private static final String BUILT = "  as-built: {document: Lark 250 rider's handbook, page: 4, by: ida, facts: {front-brake.type: drum, top-speed: 75 mph}}\n";
    private static final List<String> DISC_IN = List.of("field: front-brake.type, from: drum, to: disc", "field: front-brake.worked-by, from: cable, to: hydraulic", "field: front-brake.discs, from: 0, to: 1");

    private static String changes(String... rows) {
        return List.of(rows).stream().map(row -> "    - {at: 2026-11-20 10:10, by: tom, " + row + ", because: e4}\n").collect(Collectors.joining("", "  changes:\n", ""));
    }

    private static String changes() {
        return changes(DISC_IN.toArray(String[]::new));
    }

    private static String with(String more) {
        return Words.good().replace("\nmaker:\n", "\n" + more + "maker:\n");
    }

    private static void refused(String more, String... says) {
        assertThatThrownBy(() -> Words.read(with(more))).isInstanceOf(UnusableInput.class).hasMessageContainingAll(says);
    }

    @Test
    void aMachineThatWasAlteredIsReadBackwards() {
        Machine machine = Words.read(with(BUILT + changes())).machine();
        assertThat(machine.fields()).containsEntry("front-brake.type", "disc");
        Past past = machine.past();
        assertThat(past.rebuilds()).hasSize(1);
        assertThat(past.rebuilds().get(0).before()).containsEntry("front-brake.type", "drum").containsEntry("front-brake.discs", "0").containsEntry("rear-brake.type", "drum");
        assertThat(past.changes()).extracting(DescriptionChange::because).containsOnly("e4");
        assertThat(past.asBuilt().facts()).containsEntry("front-brake.type", "drum").containsEntry("top-speed", "75 mph");
        assertThat(past.asBuilt().shownBy()).isEqualTo("Lark 250 rider's handbook, page 4");
        assertThat(past.lines()).containsEntry("front-brake.type", 19);
    }

    @Test
    void severalChangesOfOneFieldFollowOneAnother() {
        String twice = "  changes:\n    - {at: 2026-11-22, by: tom, field: volts, from: 12, to: 6, because: e4}\n    - {at: 2026-11-21, by: tom, field: volts, from: 6, to: 12, because: e4}\n";
        Past past = Words.read(with(twice)).machine().past();
        assertThat(past.rebuilds()).extracting(r -> r.before().get("volts")).containsExactly("6", "12");
    }

    @Test
    void speedsInTwoUnitsAgreeWhenOneIsTheOtherRounded() {
        assertThat(DescriptionField.agree("top-speed", "75 mph", "120 km/h")).isTrue();
        assertThat(DescriptionField.agree("top-speed", "75 mph", "118 km/h")).isFalse();
        assertThat(DescriptionField.agree("top-speed", "74.6 mph", "120 km/h")).isTrue();
        assertThat(DescriptionField.agree("top-speed", "120 km/h", "120.0 km/h")).isTrue();
        assertThat(DescriptionField.agree("engine.displacement", "246 cc", "247 cc")).isFalse();
        assertThat(DescriptionField.agree("drive", "chain", "belt")).isFalse();
    }

    @Test
    void aChangeHasToLeadToWhatTheDescriptionSays() {
        refused(changes("field: drive, from: chain, to: belt"), ":29: machine.changes[0].to: to belt, but the description after it says drive: chain. Write what it became; the fields above the changes say how the machine is now");
    }

    @Test
    void whatItWasBeforeHasToBePossible() {
        refused(changes(DISC_IN.get(0)), "machine.changes[0]: before this change the machine could not have been: front-brake.discs: a drum brake with 1 disc. Write every field that changed with it, at the same time");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "field: front-brake.typ, from: drum, to: disc | machine.changes[0].field: 'front-brake.typ' is not a field of the description that work can change. Nearest: front-brake.type",
            "field: built, from: 1973, to: 1974           | machine.changes[0].field: 'built' is not a field of the description that work can change",
            "field: front-brake.type, from: shoe, to: disc | machine.changes[0].from: 'shoe' cannot stand here",
            "field: drive, from: chain, to: chain         | machine.changes[0].to: from chain to chain is no change. Write what it was before and after, or take the change out",
            "field: volts, from: none, to: 6              | machine.changes[0].from: 'none' cannot stand here. Write a whole number from 0 to",
            "field: drive, from: belt                     | machine.changes[0].to: this is missing. Write its value after"})
    void aChangeIsRefused(String row, String says) {
        refused(changes(row), says);
    }

    @Test
    void aChangeRestsOnAnEntryAndIsOfADayThatHasBeen() {
        refused(changes("field: volts, from: 12, to: 6").replace("because: e4", "because: e99"), "machine.changes[0].because: 'e99' is not one of the entries of this record");
        refused(changes("field: volts, from: 12, to: 6").replace("2026-11-20 10:10", "2026-12-20"), "machine.changes[0].at: 2026-12-20 lies after the moment judged");
        refused(changes("field: volts, from: 12, to: 6").replace("by: tom", "by: wat"), "machine.changes[0].by: 'wat' is not one of the people of this record");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "document: handbook, by: ida, facts: {volts: 6}                          | machine.as-built.page: the page is missing. Write the page or section",
            "document: none, page: 4, by: ida, facts: {volts: 6}                     | machine.as-built.page: a page, but no document. Write the document, or leave the page out",
            "document: none, by: ida, seconded-by: ida, facts: {volts: 6}            | machine.as-built.seconded-by: ida seconds what ida wrote. Let a second person compare it with the machine, or leave the key out",
            "document: none, by: wat, facts: {volts: 6}                              | machine.as-built.by: 'wat' is not one of the people of this record",
            "document: handbook, page: 4, by: ida, facts: {volt: 6}                  | machine.as-built.facts.volt: 'volt' is not a field of the description that work can change. Nearest: volts",
            "document: handbook, page: 4, by: ida, facts: {volts: six}               | machine.as-built.facts.volts: 'six' cannot stand here",
            "document: handbook, page: 4, by: ida, facts: {top-speed: 120}           | machine.as-built.facts.top-speed: '120' is not an amount",
            "document: handbook, page: 4, by: ida, facts: {}                         | machine.as-built.facts: the list is empty. Write fields of the description and what they were, such as front-brake.type: disc",
            "document: handbook, page: 4, by: ida, facts: [volts]                    | machine.as-built.facts: a list stands here. Write fields of the description and their values, such as front-brake.type: disc",
            "document: handbook, page: 4, by: ida                                    | machine.as-built.facts: this is missing",
            "page: 4, by: ida, facts: {volts: 6}                                     | machine.as-built.document: this is missing. Write the title of the document about this model, or none"})
    void whatItWasBuiltWithIsRefused(String row, String says) {
        refused("  as-built: {" + row + "}\n", says);
    }

    @Test
    void withoutADocumentTwoPeopleShowIt() {
        String two = "  as-built: {document: none, by: ida, seconded-by: tom, facts: {volts: 6}}\n";
        assertThat(Words.read(with(two)).machine().past().asBuilt().shownBy()).isEqualTo("ida and tom");
        assertThat(Words.read(with(two.replace(", seconded-by: tom", ""))).machine().past().asBuilt().shownBy()).isNull();
    }

    @Test
    void theFirstFormCarriesNeither() {
        String former = with(BUILT + changes()).replace("job-record/2", "job-record/1").replaceAll(", seq: \\d+", "");
        assertThatThrownBy(() -> Words.read(former)).hasMessageContainingAll("machine.as-built: 'as-built' is a key of job-record/2, and this file is job-record/1. Write job-record/2 on the first line to use this",
                "machine.changes: 'changes' is a key of job-record/2");
    }
}
