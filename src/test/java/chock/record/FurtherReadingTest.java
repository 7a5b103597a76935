package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What only a record of the second form says of a machine: its battery, its generator, and since when it stood. */
class FurtherReadingTest {
    private static String with(String lines) {
        return Words.good().replace("  history: known\n", "  history: known\n" + lines);
    }

    private static Machine read(String lines) {
        return Words.read(with(lines)).machine();
    }

    @Test
    void whatIsLeftOutIsNotKnown() {
        assertThat(read("").further()).isEqualTo(new Machine.Further(Machine.Battery.UNKNOWN, true, null));
    }

    @ParameterizedTest
    @CsvSource({"front-springing, telescopic-fork, leading-link", "front-springing, telescopic-fork, leaf-spring", "rear-springing, twin-dampers, sprung-hub"})
    void aWordOfTheSecondFormIsRefusedInTheFirst(String key, String before, String word) {
        String second = Words.good().replace(key + ": " + before, key + ": " + word);
        assertThat(Words.read(second).machine().fields()).containsEntry("equipment." + key, word);
        assertThatThrownBy(() -> Words.read(second.replace("job-record/2", "job-record/1").replaceAll(", seq: \\d+", "").replaceAll("(?m)^.*done: torqued.*\n", ""))).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("machine.equipment." + key + ": '" + word + "' is a word of job-record/2, and this file is job-record/1. Write job-record/2 on the first line to use this");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "cycle: two-stroke; cycle: diesel; machine.engine.cycle: 'diesel': a diesel engine is outside what this rule book judges",
        "cycle: two-stroke; cycle: wankel; machine.engine.cycle: 'wankel': a rotary engine is outside what this rule book judges",
        "kind: motorcycle; kind: trike; machine.kind: 'trike': a tricycle is outside what this rule book judges. Do not describe it as another machine",
        "kind: motorcycle; kind: Quad; machine.kind: 'Quad': a machine on four wheels is outside what this rule book judges"})
    void whatIsOutOfScopeIsRefusedWithASentence(String before, String after, String says) {
        assertThatThrownBy(() -> Words.read(Words.good().replaceFirst(before + "\\b", after))).isInstanceOf(UnusableInput.class).hasMessageContaining(says);
    }

    @Test
    void partsAreReadAndKept() {
        assertThat(read("  parts: {reverse-gear: yes, parking-brake: no}\n").further().parts()).isEqualTo(java.util.Map.of(Machine.Part.REVERSE_GEAR, true, Machine.Part.PARKING_BRAKE, false));
        assertThat(read("  parts: {reverse-gear: yes}\n").fields()).containsEntry("parts.reverse-gear", "yes").containsEntry("parts.decompressor", "no");
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "reverse: yes; machine.parts.reverse: 'reverse' cannot stand here",
        "reverse-gear: perhaps; machine.parts.reverse-gear: 'perhaps' is neither yes nor no",
        "twin-leading-shoes: yes; machine.parts.twin-leading-shoes: two leading shoes, but the front brake is no drum"})
    void aPartThatCannotBeIsRefused(String part, String says) {
        assertThatThrownBy(() -> read("  parts: {" + part + "}\n")).isInstanceOf(UnusableInput.class).hasMessageContaining(says);
    }

    @Test
    void whatIsWrittenIsRead() {
        assertThat(read("  battery: sealed\n  generator: no\n  laid-up-since: 1998\n").further())
                .isEqualTo(new Machine.Further(Machine.Battery.SEALED, false, new Machine.LaidUp(true, LocalDate.of(1998, 1, 1))));
        assertThat(read("  laid-up-since: unknown\n").further().laidUp()).isEqualTo(new Machine.LaidUp(false, null));
        assertThat(read("  laid-up-since: no\n").further().laidUp()).isEqualTo(new Machine.LaidUp(true, null));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "battery: gel | machine.battery: 'gel' cannot stand here",
            "battery: none | machine.battery: no battery, but 6 volts. Write which kind it is, or 0 volts",
            "generator: perhaps | machine.generator: 'perhaps' is neither yes nor no",
            "laid-up-since: long ago | machine.laid-up-since: 'long ago' is not a day, month or year",
            "laid-up-since: 2027 | machine.laid-up-since: 2027 lies after the moment judged",
            "battery: | machine.battery: this is empty"})
    void whatCannotBeIsRefused(String line, String says) {
        assertThatThrownBy(() -> read("  " + line + "\n")).isInstanceOf(UnusableInput.class).hasMessageContaining(says);
    }

    @Test
    void aBatteryOfNoVoltsIsNone() {
        String bare = with("  battery: lithium\n").replaceFirst("volts: \\d+", "volts: 0");
        assertThatThrownBy(() -> Words.read(bare)).hasMessageContaining("machine.battery: a lithium battery of 0 volts. Write none, or the volts of the battery");
    }

    @Test
    void theFirstFormHasNoneOfIt() {
        String former = with("  battery: wet\n").replace("job-record/2", "job-record/1").replaceAll(", seq: \\d+|, is: 24 N·m, with: wrench-1", "");
        assertThatThrownBy(() -> Words.read(former)).hasMessageContaining("machine.battery: 'battery' is a key of job-record/2");
    }
}
