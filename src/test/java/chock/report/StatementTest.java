package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Claim;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.Value;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.InputSource;

/** The statement says what the record carries, and nothing else. */
class StatementTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final RuleBook BOOK = RuleBook.shipped();

    /** The only words that rest on nothing in the record: headings, labels and the sentences about the paper itself. */
    private static final Set<String> FIXED = Set.of("·", "Condition statement for whoever takes it over", "NOT TO BE RIDDEN", "Law not checked here.", "What is still open", "What was made safe", "The machine",
            "Frame number", "Engine number", "Built", "First registered", "Kind", "Engine", "History", "For the law of", "Numbers compared",
            "Deviations and parts that are not original", "Nothing is written down.", "sheets of the list that go with this statement", "To be known", "Remarks in the record",
            "What was said of it", "Contradicted by the record", "Unproven: do not rely on it", "Borne out by the record", "Licensed inspections", "Riding it in", "Stop at once when there is",
            "Next due", "Good to the end of", "Of", "Then to be asked again", "Cautions", "What was done", "Part", "Work, with its day and its entry in the record", "What was measured",
            "Where and what", "Reading", "Allowed", "Day", "Where the limits come from", "Handed over", "handed over by", "taken over by", "place and day", "odometer",
            Wording.NOTICE, "· " + Wording.NOTICE, "This statement says what the record carries and no more. Small figures such as e12 are entries of the record. It is no sign-off.", "Local code:", "Rule book:");

    private static JobRecord read(String name) throws IOException {
        return RecordReader.read(name, Files.readAllBytes(Path.of("docs/examples", name)), BOOK.vocabulary(), DAY);
    }

    private static JobRecord with(JobRecord r, List<Gate> seeks, boolean onePerson, List<Entry> entries, List<Claim> claims) {
        return new JobRecord(r.id(), r.workshop(), r.zone(), r.territory(), onePerson, seeks, r.machine(), r.maker(), r.people(), r.instruments(), entries, claims, r.form());
    }

    private static JobRecord with(JobRecord r, List<Entry> entries) {
        return with(r, r.seeks(), r.onePerson(), entries, r.claims());
    }

    private static List<Entry> plus(JobRecord r, Entry entry) {
        List<Entry> entries = new ArrayList<>(r.entries());
        entries.add(entry);
        return entries;
    }

    private static Entry like(JobRecord r, String id, Deed deed, String point, String what, Value is, String note) {
        return new Entry(id, r.entries().get(0).at(), r.people().get(0).id(), deed, point, what, is, null, null, null, note, 1);
    }

    private static String text(JobRecord record) {
        return StatementText.of(Statement.of(record, BOOK, DAY), false).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"merle-released.yaml", "lark-non-runner.yaml", "lark-faults.yaml", "lark-on-show.yaml", "harrow-prewar-single.yaml"})
    void everyWordOnThePageRestsOnTheRecordOrTheRuleBook(String name) throws Exception {
        JobRecord record = read(name);
        Set<String> sources = new HashSet<>();
        record.entries().forEach(e -> sources.add(e.id()));
        BOOK.cards().keySet().forEach(id -> sources.add("check/" + id));
        record.claims().forEach(c -> sources.add("claims/" + c.about()));
        for (Gate gate : Gate.values()) {
            sources.add("gate/" + gate);
        }
        sources.addAll(List.of("check/plan", "record/id", "record/workshop", "record/territory", "record/seeks", "judged/as-of", "judged/rule-book", "machine/marque", "machine/model",
                "machine/frame-number", "machine/engine-number", "machine/built", "machine/first-registered", "machine/kind", "machine/engine", "machine/history"));
        DocumentBuilderFactory xml = DocumentBuilderFactory.newInstance();
        String html = Papers.html(Statement.of(record, BOOK, DAY), PaperSize.A4).replaceFirst("<!DOCTYPE html>", "");
        Element page = xml.newDocumentBuilder().parse(new InputSource(new StringReader(html))).getDocumentElement();
        List<String> traced = new ArrayList<>();
        walk(page.getElementsByTagName("body").item(0), "", sources, traced);
        assertThat(traced).hasSizeGreaterThan(20);
    }

    private static void walk(Node node, String from, Set<String> sources, List<String> traced) {
        if (node.getNodeType() == Node.TEXT_NODE && !node.getTextContent().isBlank()) {
            String words = node.getTextContent().strip();
            if (from.isEmpty()) {
                assertThat(FIXED).as("words without a source").contains(words);
            } else {
                assertThat(sources).as(words).containsAll(List.of(from.split(" ")));
                traced.add(words);
            }
        }
        String here = node instanceof Element element && element.hasAttribute("data-from") ? element.getAttribute("data-from") : from;
        for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
            walk(child, here, sources, traced);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"lark-non-runner.yaml", "merle-released.yaml"})
    void withoutAnEntryThereIsNoSentenceOfIt(String name) throws IOException {
        JobRecord record = read(name);
        int step = Math.max(1, record.entries().size() / 40);
        int told = 0;
        String whole = withoutDigest(text(record));
        for (int i = 0; i < record.entries().size(); i += step) {
            Entry gone = record.entries().get(i);
            List<Entry> entries = new ArrayList<>(record.entries());
            entries.remove(i);
            String named = "\\b" + Pattern.quote(gone.id()) + "\\b(?! \\(|: hearsay| does)";
            String less = withoutDigest(text(with(record, entries))).replaceAll("there is no entry " + gone.id(), "");
            assertThat(Pattern.compile(named).matcher(less).find()).as(gone.id()).isFalse();
            told += Pattern.compile(named).matcher(whole).find() ? 1 : 0;
        }
        assertThat(told).as("entries the statement tells of").isGreaterThan(5);
    }

    // The last figures of a digest stand on a line of their own, where they can look like the id of an entry.
    private static String withoutDigest(String statement) {
        String without = statement.replaceAll("sha256:[0-9a-f]+(\\s+[0-9a-f]+)?", "sha256");
        assertThat(without).as("a statement names its rule book by digest").isNotEqualTo(statement);
        return without;
    }

    @Test
    void aNonRunnerIsNotToBeRiddenAndSaysWhatWasMadeSafe() throws IOException {
        JobRecord record = read("lark-non-runner.yaml");
        assertThat(text(record)).contains("NOT TO BE RIDDEN", "It may leave, not to be ridden, until 18 December 2026, 23:59", "Fuel, tank, cap: filler cap sealed. (e6)", "It leaves on a trailer.")
                .doesNotContain("Riding it in", "Stop at once");
        List<Entry> connected = plus(record, like(record, "e99", Deed.DONE, "fuel/petrol", "filled", null, null));
        assertThat(text(with(record, connected))).contains("NOT TO BE RIDDEN", "It may not leave: non-runner is blocked by", "What is still open", "2026-11-18 filled (e99)");
    }

    @Test
    void aFaultThatClosesAGateWhichDoesNotAskForItIsToldAsOpen() throws IOException {
        JobRecord record = read("lark-non-runner.yaml");
        List<Entry> bulging = plus(record, like(record, "e99", Deed.SEEN, "front-wheel/tyre", "bulge", new Value.Answer("bulge"), null));
        assertThat(text(record)).doesNotContain("What is still open");
        assertThat(text(with(record, bulging))).contains("It may not leave: non-runner is blocked by", "What is still open", "bulge");
    }

    @Test
    void aMachineNobodyReleasedIsNeverShownAsOneToRide() throws IOException {
        for (String name : List.of("lark-faults.yaml", "lark-released.yaml", "lark-on-show.yaml")) {
            assertThat(text(read(name))).as(name).contains("NOT TO BE RIDDEN", "neither hand-over nor non-runner").doesNotContain("may leave to be ridden");
        }
        JobRecord merle = read("merle-released.yaml");
        assertThat(text(merle)).contains("It may leave to be ridden, until").doesNotContain("NOT TO BE RIDDEN");
        assertThat(text(with(merle, List.of(Gate.HAND_OVER, Gate.NON_RUNNER), false, merle.entries(), merle.claims()))).contains("NOT TO BE RIDDEN", "It may not leave: non-runner is blocked by");
    }

    @Test
    void whatIsUnprovenIsNamedSoAndWhatHoldsTheRideBackIsTold() throws IOException {
        assertThat(text(read("merle-released.yaml"))).containsSubsequence("unproven: do not rely on it", "mileage (\"18,400 miles from new\", by the last owner): no entry is named for it.")
                .containsSubsequence("Riding it in", "The top end is fresh", "up to 50 mph (80 km/h) (common practice)");
    }

    @Test
    void whoWorksAloneAndWhatALicensedInspectorSaidAreOnIt() throws IOException {
        JobRecord merle = read("merle-released.yaml");
        assertThat(text(merle)).doesNotContain("one person", "Licensed inspections");
        JobRecord alone = with(merle, merle.seeks(), true, plus(merle, like(merle, "e900", Deed.INSPECTED, "machine", "passed", new Value.Code("L-77"), "document D-5, inspector Ola Brandt")), merle.claims());
        assertThat(text(alone)).contains("Licensed inspections", "passed by a licensed inspector; licence L-77; document D-5, inspector Ola Brandt (e900)").containsIgnoringCase("one person");
    }

    @Test
    void deviationsAndPartsOfAnotherYearAreListedOrSaidToBeUnwritten() throws IOException {
        JobRecord merle = read("merle-released.yaml");
        JobRecord other = with(merle, plus(merle, like(merle, "e901", Deed.SEEN, "front-fork", "part-of-another-year", new Value.Code("fork of 1975"), null)));
        assertThat(text(other)).contains("Front fork: part of another year: fork of 1975 (e901)");
        List<Entry> none = merle.entries().stream().filter(e -> !e.what().equals("deviations")).toList();
        assertThat(text(with(merle, none))).contains("Deviations and parts that are not original Nothing is written down.");
    }

    @Test
    void aCorrectedEntryIsToldWithItsCorrection() throws IOException {
        JobRecord merle = read("merle-released.yaml");
        Entry wrong = merle.entries().stream().filter(e -> e.id().equals("e3")).findFirst().orElseThrow();
        Entry right = new Entry("e902", wrong.at(), "ida", Deed.DONE, wrong.point(), "stripped", null, null, "e3", "it was only cleaned", null, 1);
        assertThat(text(with(merle, plus(merle, right)))).contains("2026-10-21 bored: both barrels to the first oversize with new pistons [corrected by e902: it was only cleaned] (e3, e902)");
    }

    @Test
    void whatARecordSaysCannotBecomePartOfThePage() throws Exception {
        JobRecord lark = read("lark-non-runner.yaml");
        String evil = "</p><script>alert('x')</script> & \"\u202Eturned\"";
        JobRecord hostile = with(lark, plus(lark, like(lark, "e903", Deed.DONE, "frame", "cleaned", null, evil)));
        String html = Papers.html(Statement.of(hostile, BOOK, DAY), PaperSize.A4);
        assertThat(html).contains("&lt;/p&gt;&lt;script").doesNotContain("<script", "\u202E");
        assertThat(Papers.pdf(html, DAY)).isNotEmpty();
    }
}
