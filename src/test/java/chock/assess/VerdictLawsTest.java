package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Outcome;
import chock.quantity.Bounds;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.PlausibleReading;
import chock.record.RecordReader;
import chock.record.RecordWriter;
import chock.record.Vocabulary.Form;
import chock.report.JsonReport;
import chock.rulebook.Card;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What a verdict says, how long it holds, and what it does not depend on, whatever the machine and whatever happened to its record. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class VerdictLawsTest {

    @Provide
    Arbitrary<Life> oftenTouched() {
        return Life.any(6);
    }

    @Provide
    Arbitrary<Life> releasable() {
        return Life.releasable();
    }

    private static String told(JobRecord record) {
        return JsonReport.of(List.of(Examples.judge(record)));
    }

    @Property
    void everyCheckComesToOneOutcome(@ForAll("oftenTouched") Life life) {
        JobRecord record = life.record();
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        Examples.BOOK.cards().keySet().stream().flatMap(c -> concluded.required(c).stream()).forEach(r -> assertThat(concluded.of(r, Outcome.class)).as("%s", r).hasSize(1));
        assertThat(Assessor.judged(record, Examples.BOOK, record.seeks(), Examples.DAY, concluded).gates()).allSatisfy(g -> assertThat(g.ruleBookFaults()).isEmpty());
    }

    @Property
    void everyFindingSaysWhatWasMeasuredAgainstWhatAndWhatClearsIt(@ForAll("oftenTouched") Life life) {
        GateVerdict gate = Examples.judge(life.record()).gates().get(0);
        assertThat(gate.findings()).hasSizeGreaterThan(3);
        assertThat(gate.released()).isEqualTo(gate.closedBy().isEmpty() && gate.findings().stream().allMatch(f -> f.state() == State.MET));
        for (Finding finding : gate.findings()) {
            Card card = Examples.BOOK.cards().get(finding.check());
            assertThat(finding.places()).as(finding.check()).isNotEmpty();
            assertThat(finding.state()).as(finding.check()).isEqualTo(finding.places().stream().map(Finding.AtPlace::state).min(State::compareTo).orElseThrow());
            assertThat(finding.remedy() == null).as(finding.check() + " has a remedy unless it is met").isEqualTo(finding.state() == State.MET);
            finding.places().forEach(place -> says(card, place));
        }
    }

    private static void says(Card card, Finding.AtPlace place) {
        String where = card.id() + " at " + place.point() + ": " + place.says();
        assertThat(place.says()).as(where).matches("(?s).+: .+\\.").doesNotContain("null");
        boolean amount = card.wants().size() == 1 && card.wants().get(0).judged() && card.wants().get(0).form() == Form.AMOUNT;
        if (amount && place.state() == State.MET) {
            assertThat(place.measured()).as(where).isNotNull();
        }
        if (place.state() == State.MET && !card.wants().isEmpty()) {
            assertThat(place.evidence()).as(where).isNotEmpty();
        }
        if (place.measured() == null) {
            return;
        }
        assertThat(place.limit()).as(where).isNotNull();
        assertThat(place.limit().source().words()).as(where).isNotBlank();
        assertThat(place.says()).as(where).contains(place.limit().bounds().words(), place.limit().source().words());
        assertThat(place.evidence()).as(where).isNotEmpty();
        Bounds bounds = place.limit().bounds();
        assertThat(place.margin().unit().dimension()).as(where).isEqualTo(place.measured().value().unit().dimension());
        int margin = place.margin().value().signum();
        boolean aged = card.wants().stream().anyMatch(w -> w.form() == Form.DAYS || w.aspect().equals("date-code"));
        if (!aged) {
            assertThat(place.state()).as(where).isEqualTo(switch (bounds.standing(place.measured())) {
                case INSIDE -> State.MET;
                case TOO_CLOSE -> State.DOUBT;
                case OUTSIDE -> State.FAULT;
            });
            assertThat(place.state() == State.FAULT ? -margin : margin).as(where + " margin " + place.margin()).isGreaterThanOrEqualTo(0);
        }
    }

    /** To the last second it is what it is now; with the next one something has changed, or thirty days have passed. */
    @Property
    void aReleaseHoldsAsLongAsItSaysAndNoLonger(@ForAll("releasable") Life life, @ForAll @IntRange(max = 1000) int thousandths) {
        JobRecord record = life.record();
        GateVerdict now = Examples.judge(record).gates().get(0);
        Assume.that(now.released());
        Instant until = now.holdsUntil();
        Instant longest = Examples.DAY.plus(Examples.BOOK.longestRelease());
        assertThat(until).isBetween(Examples.DAY, longest);
        Instant between = Examples.DAY.plusSeconds((until.getEpochSecond() - Examples.DAY.getEpochSecond()) * thousandths / 1000);
        assertThat(states(record, between)).as("between").isEqualTo(states(record, Examples.DAY));
        assertThat(states(record, until)).as("at the end").isEqualTo(states(record, Examples.DAY));
        if (until.isBefore(longest)) {
            assertThat(states(record, until.plusSeconds(1))).as("a second later").isNotEqualTo(states(record, Examples.DAY));
        }
    }

    @Property
    void aFindingChangesByItselfWhenItSaysAndNotBefore(@ForAll("releasable") Life life, @ForAll @IntRange(max = 999) int which) {
        JobRecord record = life.ready();
        List<Finding> lapsing = Examples.judge(record).gates().get(0).findings().stream().filter(f -> f.lapses() != null).toList();
        assertThat(lapsing).isNotEmpty();
        Finding one = lapsing.get(which % lapsing.size());
        assertThat(one.state()).isEqualTo(State.MET);
        assertThat(state(record, one.check(), one.lapses().minusSeconds(1))).as("%s a second before %s", one.check(), one.lapses()).isEqualTo(State.MET);
        assertThat(state(record, one.check(), one.lapses())).as("%s at %s", one.check(), one.lapses()).isNotEqualTo(State.MET);
    }

    private static State state(JobRecord record, String check, Instant at) {
        return Assessor.assess(record, Examples.BOOK, record.seeks(), at).gates().get(0).findings().stream().filter(f -> f.check().equals(check)).map(Finding::state).findFirst().orElseThrow();
    }

    private static Map<String, State> states(JobRecord record, Instant at) {
        Map<String, State> states = new LinkedHashMap<>();
        Assessor.assess(record, Examples.BOOK, record.seeks(), at).gates().get(0).findings().forEach(f -> f.places().forEach(p -> states.put(f.check() + " " + p.point(), p.state())));
        return states;
    }

    @Property
    void theOrderOfTheLinesSaysNothing(@ForAll("oftenTouched") Life life, @ForAll long seed) {
        JobRecord record = life.record();
        List<Entry> shuffled = new ArrayList<>(record.entries());
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(told(RandomRecords.with(record, shuffled))).isEqualTo(told(record));
    }

    /** What the lines are called says nothing either: called by other names, even turned round by the alphabet, they come to the same. */
    @Property
    void theNamesOfTheLinesSayNothing(@ForAll("oftenTouched") Life life, @ForAll long seed) {
        JobRecord record = life.record();
        List<Integer> numbers = new ArrayList<>(IntStream.range(0, record.entries().size()).boxed().toList());
        Collections.shuffle(numbers, new Random(seed));
        Map<String, String> names = new LinkedHashMap<>();
        record.entries().forEach(e -> names.put(e.id(), "n" + (1000 + numbers.get(names.size()))));
        List<Entry> renamed = record.entries().stream().map(e -> new Entry(names.get(e.id()), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(),
                e.corrects() == null ? null : names.get(e.corrects()), e.reason(), e.note(), e.line())).toList();
        GateVerdict one = Examples.judge(record).gates().get(0);
        GateVerdict other = Examples.judge(RandomRecords.with(record, renamed)).gates().get(0);
        assertThat(other.released()).isEqualTo(one.released());
        assertThat(other.holdsUntil()).isEqualTo(one.holdsUntil());
        assertThat(places(other)).isEqualTo(places(one));
    }

    private static Map<String, String> places(GateVerdict gate) {
        Map<String, String> places = new TreeMap<>();
        gate.findings().forEach(f -> f.places().forEach(p -> places.put(f.check() + " " + p.point(), p.state().toString())));
        return places;
    }

    private static JobRecord readAgain(JobRecord record) {
        return RecordReader.read("written.json", RecordWriter.write(record, Set.of()), Examples.BOOK.vocabulary(), Examples.DAY);
    }

    @Property
    void whatIsWrittenAndReadAgainIsJudgedAlike(@ForAll("oftenTouched") Life life) {
        JobRecord record = life.record();
        // Some mishaps make figures that cannot be; reading marks them.
        JobRecord marked = RandomRecords.with(record, PlausibleReading.marked(record.entries(), record.machine(), record.instruments(), Examples.BOOK.vocabulary(), Examples.TODAY));
        // Only what was read from a file has a line to name.
        assertThat(told(readAgain(record).withoutLines())).isEqualTo(told(marked));
    }
}
