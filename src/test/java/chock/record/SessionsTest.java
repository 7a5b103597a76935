package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A session is nothing but single entries written short. */
class SessionsTest {
    private static final String SESSION = """
            sessions:
              - id: s1
                at: 2026-11-21 09:40
                by: ida
                with: {thickness: cal-1}
                front-brake: {caliper/inner-pad thickness: 3.1 mm, hydraulic: {hose condition: sound, done: bled}, disc seen minimum-mark: 4.5 mm,
                  tried: {control feel: firm}, with wrench-1: {control done torqued: 24 N·m}, hydraulic/hose date-mark: 2022-05}
            """;

    private static JobRecord read(String sessions) {
        return Words.read(Words.good() + sessions);
    }

    private static List<Entry> lines(String sessions) {
        return read(sessions).entries().stream().filter(e -> e.id().startsWith("s")).toList();
    }

    private static String told(Entry e) {
        return e.deed().key() + " " + e.what() + " at " + e.point() + (e.is() == null ? "" : ": " + e.is()) + (e.with() == null ? "" : " with " + e.with());
    }

    @Test
    void eachLineIsAnEntryOfItsOwn() {
        assertThat(lines(SESSION)).extracting(SessionsTest::told).containsExactly("measured thickness at front-brake/caliper/inner-pad: 3.1 mm ± 0.1 mm with cal-1",
                "seen condition at front-brake/hydraulic/hose: sound", "done bled at front-brake/hydraulic", "seen minimum-mark at front-brake/disc: 4.5 mm",
                "tried feel at front-brake/control: firm", "done torqued at front-brake/control: 24 N·m ± 1.2 N·m with wrench-1", "seen date-mark at front-brake/hydraulic/hose: 2022-05");
        assertThat(lines(SESSION)).allSatisfy(e -> assertThat(e.at().toString()).isEqualTo("2026-11-21 09:40")).allSatisfy(e -> assertThat(e.at().seq()).isZero())
                .extracting(Entry::by).containsOnly("ida");
    }

    @Test
    void aLineStandsOnTheLineWhereItWasTyped() {
        int first = Words.good().split("\n").length + 1;
        assertThat(lines(SESSION).get(0).line()).isEqualTo(first + 5);
        assertThat(lines(SESSION).get(4).line()).isEqualTo(first + 6);
    }

    @Test
    void idsComeFromSessionPlaceAndAspectAndNeverFromTheOrder() {
        String other = SESSION.replace("front-brake: {caliper/inner-pad thickness: 3.1 mm, ", "rear-brake: {shoes condition: sound}\n    front-brake: {")
                .replace("date-mark: 2022-05}", "date-mark: 2022-05, caliper/outer-pad thickness: 3.1 mm, caliper/inner-pad thickness: 3.0 mm}");
        var before = lines(SESSION).stream().collect(Collectors.toMap(e -> e.point() + " " + e.what(), Entry::id));
        var after = lines(other).stream().collect(Collectors.toMap(e -> e.point() + " " + e.what(), Entry::id));
        assertThat(after).hasSize(before.size() + 2).containsAllEntriesOf(before);
        assertThat(lines(SESSION.replace("id: s1", "id: s2")).stream().map(Entry::id)).doesNotContainAnyElementsOf(before.values());
        // Written down once: an id that changed with the program would void signatures.
        assertThat(before).containsEntry("front-brake/caliper/inner-pad thickness", "s1.thickness-nygyce");
    }

    @Test
    void shortWaysOfSayingThePlaceAreTheLongOnes() {
        String longer = "sessions:\n  - {id: s1, at: 2026-11-21, by: ida, front-brake/hydraulic/hose seen condition: sound, front-brake/control tried feel: firm, front-brake/hydraulic done: bled}\n";
        String nested = "sessions:\n  - {id: s1, at: 2026-11-21, by: ida, front-brake: {hydraulic: {hose: {condition: sound}}, control: {tried: {feel: firm}}}, done: {bled: [front-brake/hydraulic]}}\n";
        assertThat(lines(nested)).extracting(SessionsTest::told).isEqualTo(lines(longer).stream().map(SessionsTest::told).toList());
        assertThat(lines(nested)).extracting(Entry::id).isEqualTo(lines(longer).stream().map(Entry::id).toList());
        assertThat(lines("sessions:\n  - {id: s1, at: 2026-11-21, by: ida, done: {front-brake/control torqued with wrench-1: 24 Nm}, front-brake: {caliper/inner-pad thickness with cal-1: 3.1 mm}}\n"))
                .extracting(SessionsTest::told).containsExactly("done torqued at front-brake/control: 24 N·m ± 1.2 N·m with wrench-1", "measured thickness at front-brake/caliper/inner-pad: 3.1 mm ± 0.1 mm with cal-1");
    }

    @Test
    void theNameOfThePlaceNeedNotBeWrittenTwice() throws Exception {
        Vocabulary words = chock.rulebook.RuleBook.shipped().vocabulary();
        String text = new String(java.nio.file.Files.readAllBytes(java.nio.file.Path.of("docs/examples/lark-gaps.yaml")), StandardCharsets.UTF_8)
                + "\nsessions:\n  - {id: s1, at: 2026-11-20, by: ida, rear-brake: {adjuster/: in-hand-and-locked, drum -condition: sound}, electrics: {tried horn/: loud}}\n";
        assertThat(RecordReader.read("r.yaml", text.getBytes(StandardCharsets.UTF_8), words, Words.AS_OF).entries()).filteredOn(e -> e.id().startsWith("s1.")).extracting(SessionsTest::told)
                .containsExactly("seen adjuster at rear-brake/adjuster: in-hand-and-locked", "seen drum-condition at rear-brake/drum: sound", "tried horn at electrics/horn: loud");
    }

    @Test
    void onlyASessionInOrderSaysWhatCameFirst() {
        List<Entry> lines = lines(SESSION.replace("by: ida\n", "by: ida\n    in-order: yes\n"));
        for (int i = 1; i < lines.size(); i++) {
            assertThat(lines.get(i).at().surelyAfter(lines.get(i - 1).at())).isTrue();
        }
        assertThat(lines(SESSION)).allSatisfy(one -> assertThat(lines(SESSION)).noneMatch(other -> one.at().surelyAfter(other.at())));
    }

    @Test
    void whatIsExpandedReadsAsTheSameEntries() {
        ObjectNode written = RecordReader.written("r.yaml", (Words.good() + SESSION).getBytes(StandardCharsets.UTF_8));
        assertThat(written.has("sessions")).isFalse();
        JobRecord expanded = Words.read(RecordText.yaml(written));
        assertThat(expanded.entries()).usingRecursiveFieldByFieldElementComparatorIgnoringFields("line").isEqualTo(read(SESSION).entries());
        assertThat(RecordReader.written("e.yaml", RecordText.yaml(written).getBytes(StandardCharsets.UTF_8))).isEqualTo(written);
    }

    @Test
    void valuesAreWrittenSoThatTheyReadAsTheyWere() {
        ObjectNode written = RecordReader.written("r.yaml", "{\"a\": {\"b\": \"x: y # z\"}, \"c\": [{\"d\": \"'quoted' \\\" and, {brackets}\"}], \"e\": [\"- dash\", \"no\", \"0301\", \"½ Zoll\"], \"f\": []}".getBytes(StandardCharsets.UTF_8));
        assertThat(RecordReader.written("s.yaml", RecordText.yaml(written).getBytes(StandardCharsets.UTF_8))).isEqualTo(written);
    }

    @Test
    void anEntryMayCorrectALineAndIsHeldAgainstIt() {
        String id = lines(SESSION).get(4).id();
        String entry = "  - {id: c1, at: 2026-11-22, by: tom, point: front-brake/control, tried: feel, is: spongy, corrects: " + id + ", reason: tried again}\n";
        String text = Words.good().replace("entries:\n", "entries:\n" + entry) + SESSION;
        assertThat(Words.read(text).entry("c1").orElseThrow().corrects()).isEqualTo(id);
        assertThatThrownBy(() -> Words.read(text.replace(id, "s1.feel-x"))).hasMessageContaining("there is no entry 's1.feel-x'");
    }
}
