package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.ReadAs;
import chock.record.RecordReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Released records of which only the description is changed, so that checks fall away: none is released for the road. And honest ones that are. */
class DescriptionStoriesTest {
    private static final String FRONT = "front-brake: {type: disc, worked-by: hydraulic, discs: 1, lining: bonded, stop-lamp-switch: yes}";
    private static final String REAR = "rear-brake: {type: drum, worked-by: rod, discs: 0, lining: bonded, stop-lamp-switch: yes}";
    private static final String NONE = "{type: none, worked-by: none, discs: 0, lining: none, stop-lamp-switch: no}";
    private static final Path FIRST_FORM = Path.of("src/test/resources/record/v1");
    private static final Path SECOND_FORM = Path.of("docs/examples");

    private static String text(Path folder, String name) {
        try {
            return Files.readString(folder.resolve(name));
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static GateVerdict roadTest(String text) {
        // Weather and road were looked at early in the records of the first form, and not again.
        Instant now = text.contains("chock: job-record/1") ? Instant.parse("2026-11-25T09:45:00Z") : Examples.DAY;
        JobRecord record = RecordReader.read("record.yaml", text.getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), now);
        return Assessor.assess(record, Examples.BOOK, List.of(Gate.ROAD_TEST), now).gates().get(0);
    }

    private static String without(String text, String... places) {
        return text.lines().filter(line -> Arrays.stream(places).noneMatch(place -> line.matches(".* point: " + place + "[/,].*"))).collect(Collectors.joining("\n", "", "\n"));
    }

    private static String changed(String text, String from, String to) {
        assertThat(text).contains(from);
        return text.replaceFirst(java.util.regex.Pattern.quote(from), java.util.regex.Matcher.quoteReplacement(to));
    }

    private static Finding finding(GateVerdict gate, String check) {
        return gate.findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow();
    }

    /** The same story told of the old form and of the new, where as-built stays as it was. */
    private static void neverReleased(String name, UnaryOperator<String> story, String... says) {
        for (Path form : List.of(FIRST_FORM, SECOND_FORM)) {
            assertThat(roadTest(text(form, name)).released()).as("%s of %s before", name, form).isTrue();
            GateVerdict gate = roadTest(story.apply(text(form, name)));
            assertThat(gate.released()).as("%s of %s", name, form).isFalse();
            List<String> findings = gate.findings().stream().filter(f -> f.check().startsWith("record.")).flatMap(f -> f.places().stream()).map(Finding.AtPlace::says).toList();
            for (String one : says) {
                assertThat(findings).as(form.toString()).anySatisfy(said -> assertThat(said).contains(one));
            }
        }
    }

    @Test
    void bothBrakesNoneAndTheirEntriesGone() {
        neverReleased("lark-released.yaml", text -> without(changed(changed(text, FRONT, "front-brake: " + NONE), REAR, "rear-brake: " + NONE), "front-brake", "rear-brake"),
                "described with no brake at all");
    }

    @Test
    void frontBrakeNoneWithItsEntries() {
        neverReleased("lark-released.yaml", text -> changed(text, FRONT, "front-brake: " + NONE), "do not go with front-brake.type: none (line 22)");
    }

    @Test
    void frontBrakeNoneAndItsEntriesGone() {
        neverReleased("lark-released.yaml", text -> without(changed(text, FRONT, "front-brake: " + NONE), "front-brake"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "drive: chain | drive: none | transmission/chain | drive: none",
            "front-springing: telescopic-fork | front-springing: rigid | front-fork | equipment.front-springing: rigid",
            "rear-springing: twin-dampers | rear-springing: rigid | rear-fork | equipment.rear-springing: rigid",
            "volts: 6 | volts: 0 | electrics/battery | volts: 0",
            "lamps: yes | lamps: no | headlamp | equipment.lamps: no",
            "fuel-tap: manual | fuel-tap: none | fuel/tap | equipment.fuel-tap: none",
            "clutch: cable | clutch: none | controls/clutch | equipment.clutch: none",
            "starter: kick | starter: none | controls/kick-starter | equipment.starter: none",
            "stands: 2 | stands: 0 | frame/stands | equipment.stands: 0"})
    void aPartDescribedAway(String from, String to, String place, String field) {
        neverReleased("lark-released.yaml", text -> described(text, from, to), " not go with " + field);
        neverReleased("lark-released.yaml", text -> without(described(text, from, to), place), field);
    }

    /** No battery is of no kind. */
    private static String described(String text, String from, String to) {
        return changed(text, from, to).replace("battery: wet", to.equals("volts: 0") ? "battery: none" : "battery: wet");
    }

    @Test
    void aTopSpeedThatATyreOfALowerSymbolWouldDo() {
        neverReleased("lark-released.yaml", text -> changed(text, "top-speed: 120 km/h", "top-speed: 50 km/h").replace("54P", "54B").replace("60P", "60B"));
    }

    @Test
    void aTwinDescribedAsASingle() {
        neverReleased("merle-released.yaml", text -> changed(text, "cylinders: 2", "cylinders: 1"), "do not go with engine.cylinders: 1 (line 21)");
        neverReleased("merle-released.yaml", text -> without(changed(text, "cylinders: 2", "cylinders: 1"), "engine/cylinder-2", "ignition/cylinder-2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"front-brake", "rear-wheel/spindle", "controls/throttle", "steering/head/stem-nut", "transmission/guard"})
    void leftOffAndStillDescribed(String place) {
        for (Path form : List.of(FIRST_FORM, SECOND_FORM)) {
            GateVerdict gate = roadTest(text(form, "lark-released.yaml") + "  - {id: off, at: 2026-11-25 09:30, by: tom, point: " + place + ", done: left-off}\n");
            assertThat(gate.released()).isFalse();
            List<Finding.AtPlace> at = gate.findings().stream().flatMap(f -> f.places().stream()).filter(p -> p.point().equals(place) || p.point().startsWith(place + "/")).toList();
            assertThat(at).as("checks at or below %s", place).isNotEmpty().allSatisfy(p -> assertThat(p.state()).as("%s", p).isIn(State.FAULT, State.MISSING));
            assertThat(at).anySatisfy(p -> assertThat(p.says()).contains("left-off 2026-11-25 09:30 by Tom Fell (off), and the description still has the part"));
        }
    }

    @Test
    void bothLinesAreNamed() {
        GateVerdict gate = roadTest(changed(text(FIRST_FORM, "lark-released.yaml"), "drive: chain", "drive: none"));
        Finding finding = finding(gate, "record.description");
        assertThat(finding.state()).isEqualTo(State.DOUBT);
        assertThat(finding.says()).contains("Machine: 'torqued' at transmission/sprockets/front (e15, line 93), 'torqued' at transmission/sprockets/rear (e16, line 94), 'chain-condition' at transmission/chain (e87, line 165) and 14 more"
                + " do not go with drive: none (line 27), the description of that day.");
    }

    // Honest histories.

    private static final String DISC_IN = """
              changes:
                - {at: 2026-11-01 10:00, by: tom, field: front-brake.type, from: drum, to: disc, because: old2}
                - {at: 2026-11-01 10:00, by: tom, field: front-brake.worked-by, from: cable, to: hydraulic, because: old2}
                - {at: 2026-11-01 10:00, by: tom, field: front-brake.discs, from: 0, to: 1, because: old2}
            """;
    private static final String OLD_DRUM = """
              - {id: old1, at: 2026-10-20 09:00, by: ida, point: front-brake/drum, seen: drum-condition, is: scored}
              - {id: old2, at: 2026-11-01 10:00, by: tom, point: front-brake, done: replaced}
            """;

    private static String drumOutDiscIn(String text) {
        String built = text.replace("front-brake.type: disc", "front-brake.type: drum").replace("front-brake.worked-by: hydraulic", "front-brake.worked-by: cable").replace("front-brake.discs: 1", "front-brake.discs: 0");
        return changed(built, "\nmaker:", DISC_IN + "\nmaker:") + OLD_DRUM;
    }

    @Test
    void drumOutDiscIn() {
        GateVerdict gate = roadTest(drumOutDiscIn(text(SECOND_FORM, "lark-released.yaml")));
        assertThat(gate.findings()).filteredOn(f -> f.state() != State.MET).isEmpty();
        assertThat(gate.released()).isTrue();
    }

    @Test
    void drumOutDiscInWithoutItsChange() {
        String undated = drumOutDiscIn(text(SECOND_FORM, "lark-released.yaml")).replace(DISC_IN, "");
        Finding finding = finding(roadTest(undated), "record.description");
        assertThat(finding.state()).isEqualTo(State.DOUBT);
        assertThat(finding.says()).contains("front-brake.type: built drum (line ", "), described as disc (line 22), with no dated change", "'drum-condition' at front-brake/drum (old1, line ");
    }

    @Test
    void thePrewarSingleNeedsNoMoreThanItHad() {
        for (Path form : List.of(FIRST_FORM, SECOND_FORM)) {
            assertThat(roadTest(text(form, "harrow-prewar-single.yaml")).released()).as(form.toString()).isTrue();
        }
    }

    @Test
    void aMachineForTrialsWithoutLamps() {
        for (Path form : List.of(FIRST_FORM, SECOND_FORM)) {
            String dark = without(changed(text(form, "lark-released.yaml"), "lamps: yes", "lamps: no").replace("equipment.lamps: yes", "equipment.lamps: no"),
                    "headlamp", "electrics/tail-lamp", "electrics/plate-lamp") + "  - {id: dark1, at: 2026-11-25 09:00, by: ida, point: headlamp, seen: lamps, is: blanked}\n";
            String shown = form == SECOND_FORM ? dark : dark + "  - {id: dark2, at: 2026-11-25 09:01, by: tom, point: headlamp, seen: as-built, is: yes}\n";
            GateVerdict gate = roadTest(shown);
            assertThat(gate.findings()).as(form.toString()).filteredOn(f -> f.state() != State.MET).isEmpty();
            assertThat(finding(gate, "record.description").notes()).anySatisfy(note -> assertThat(note).contains("equipment.lamps: no (line 29)", "not asked because of it: every check of lamps"));
        }
    }

    // Writing.

    private static void refused(String text, ReadAs as, String... says) {
        assertThatThrownBy(() -> RecordReader.read("record.yaml", text.getBytes(StandardCharsets.UTF_8), Examples.BOOK.vocabulary(), Examples.DAY, as)).hasMessageContainingAll(says);
    }

    @Test
    void whatIsWrittenNowAboutAPartThatIsNotThereIsRefused() {
        String text = text(SECOND_FORM, "lark-released.yaml");
        int entries = (int) text.substring(text.indexOf("\nentries:")).lines().filter(line -> line.startsWith("  - {id: ")).count();
        String more = text + "  - {id: more, at: 2026-11-25 09:30, by: tom, point: front-brake/drum, done: cleaned}\n";
        refused(more, ReadAs.withEntriesFrom(entries), "entries[" + entries + "].point: 'cleaned' at front-brake/drum (more, line ", "does not go with front-brake.type: disc (line 22), the description of that day."
                + " Write the place where it was, or put the description right; where work changed the machine, write the change with its day under machine.changes");
        refused(more, ReadAs.WRITTEN, "entries[" + entries + "].point");
        // What is stored stays readable.
        assertThat(roadTest(more).released()).isFalse();
    }
}
