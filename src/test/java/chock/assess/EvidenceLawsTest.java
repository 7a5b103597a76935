package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.rulebook.Assembly;
import chock.rulebook.Assembly.Kind;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.PropertyDefaults;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What evidence can do and what it cannot, whatever the machine and whatever happened to its record. */
@PropertyDefaults(edgeCases = EdgeCasesMode.NONE)
class EvidenceLawsTest {
    /** Work that closes what other work left open. */
    private static final Set<String> CLOSING = Set.of("refitted", "replaced", "left-off");

    @Provide
    Arbitrary<Life> untouched() {
        return Life.any(0);
    }

    @Provide
    Arbitrary<Life> releasable() {
        return Life.releasable();
    }

    @Provide
    Arbitrary<Life> oftenTouched() {
        return Life.any(6);
    }

    /** One reading of each thing: where there are two, a wider uncertainty may rightly end a disagreement. */
    @Provide
    Arbitrary<Life> readOnce() {
        return Life.lives(5, Mishap.of(Mishap.Kind.GONE, Mishap.Kind.OTHERWISE, Mishap.Kind.WIDER, Mishap.Kind.HEARD, Mishap.Kind.WORKED));
    }

    private static GateVerdict judged(JobRecord record) {
        return Examples.judge(record).gates().get(0);
    }

    /** The check and the place, and what came of it. */
    private static Map<String, State> states(JobRecord record) {
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        Map<String, State> states = new HashMap<>();
        for (String check : Examples.BOOK.cards().keySet()) {
            for (Required required : concluded.required(check)) {
                List<Outcome> outcomes = concluded.of(required, Outcome.class);
                assertThat(outcomes).as("%s", required).hasSize(1);
                states.put(check + " " + required.point(), outcomes.get(0).state());
            }
        }
        return states;
    }

    @Property
    void whereNothingIsWrittenNothingIsReleased(@ForAll("untouched") Life life) {
        Assessment judged = Assessor.assess(life.bare(), Examples.BOOK, Arrays.asList(Gate.values()), Examples.DAY);
        assertThat(judged.gates()).hasSize(Gate.values().length).allSatisfy(gate -> {
            assertThat(gate.released()).isFalse();
            assertThat(gate.holdsUntil()).isNull();
            assertThat(gate.findings()).anyMatch(f -> f.state() == State.MISSING);
        });
    }

    /** A release rests on every one of the entries its findings name. */
    @Property
    void withoutAnEntryThatItRestsOnNothingIsReleased(@ForAll("releasable") Life life, @ForAll @IntRange(max = 999) int which) {
        JobRecord ready = life.ready();
        GateVerdict before = judged(ready);
        Assume.that(before.released());
        List<String> named = before.findings().stream().flatMap(f -> f.evidence().stream()).distinct().sorted().toList();
        String taken = named.get(which % named.size());
        GateVerdict after = judged(without(ready, taken));
        assertThat(after.released()).as("without %s", ready.entry(taken)).isFalse();
    }

    private static JobRecord without(JobRecord record, String id) {
        return RandomRecords.with(record, record.entries().stream().filter(e -> !e.id().equals(id)).toList());
    }

    /**
     * Whatever line is left out, evidence or not: where that releases a gate, each of its open findings had named this line,
     * so what was hidden is what held the gate. Leaving out a line that nobody held against the machine helps nobody. A
     * correction is another matter: without it, what it put right counts as it was first written.
     */
    @Property
    void onlyAnEntryThatHoldsAGateCanReleaseItByBeingLeftOut(@ForAll("oftenTouched") Life life, @ForAll @IntRange(max = 999) int which) {
        JobRecord record = life.held(which);
        GateVerdict before = judged(record);
        Assume.that(!before.released());
        List<Finding> open = before.findings().stream().filter(f -> f.state() != State.MET).toList();
        Set<String> left = new TreeSet<>();
        open.forEach(f -> left.addAll(f.evidence()));
        life.mishaps().forEach(m -> left.add("x" + (life.mishaps().indexOf(m) + 1)));
        left.add(record.entries().get(which % record.entries().size()).id());
        List<String> some = left.stream().filter(id -> record.entry(id).isPresent() && record.entry(id).get().corrects() == null && record.entries().stream().noneMatch(e -> id.equals(e.corrects()))).toList();
        for (String id : some.subList(0, Math.min(3, some.size()))) {
            if (judged(without(record, id)).released()) {
                assertThat(open).as("open without naming %s", record.entry(id).get()).allMatch(f -> f.evidence().contains(id) || f.says().contains("(" + id + ")"));
            }
        }
    }

    /** Whatever a check works out from several readings: what was bad a minute ago is not good because it was read again; at most the two leave it open. */
    @Property(tries = 3)
    void whatWasWorkedOutBadIsNotMetByReadingAgain(@ForAll("releasable") Life life) {
        JobRecord ready = life.ready();
        Conclusions concluded = Assessor.conclude(ready, Examples.BOOK, Examples.DAY);
        int bad = 0;
        for (Required required : Examples.BOOK.cards().keySet().stream().flatMap(check -> concluded.required(check).stream()).toList()) {
            Set<String> keys = concluded.of(required, Wanted.class).stream().filter(Wanted::maySpoilOthers).map(Wanted::key).collect(Collectors.toSet());
            List<Entry> readings = ready.entries().stream().filter(e -> keys.contains(Entry.key(e.point(), e.what())) && e.at().time() != null).toList();
            for (Entry reading : readings) {
                for (String factor : List.of("0.2", "0.5", "2", "5")) {
                    List<Entry> before = readings.stream().map(e -> aMinuteBefore(e, e == reading ? new BigDecimal(factor) : BigDecimal.ONE)).toList();
                    List<Entry> others = ready.entries().stream().filter(e -> !readings.contains(e)).toList();
                    if (state(RandomRecords.with(ready, Stream.concat(others.stream(), before.stream()).toList()), required) == State.FAULT) {
                        bad++;
                        assertThat(state(RandomRecords.with(ready, Stream.concat(ready.entries().stream(), before.stream()).toList()), required))
                                .as("%s with %s times %s, and read again", required, reading, factor).isIn(State.FAULT, State.DOUBT);
                    }
                }
            }
        }
        Assume.that(bad > 0);
    }

    private static Entry aMinuteBefore(Entry e, BigDecimal factor) {
        Measured was = ((Value.Amount) e.is()).measured();
        Measured scaled = new Measured(was.value().times(factor), was.uncertainty());
        Moment at = new Moment(e.at().date(), e.at().time().minusMinutes(1), e.at().zone());
        return new Entry("before-" + e.id(), at, e.by(), e.deed(), e.point(), e.what(), new Value.Amount(scaled), e.with(), null, null, null, 0);
    }

    private static State state(JobRecord record, Required required) {
        return Assessor.conclude(record, Examples.BOOK, Examples.DAY).of(required, Outcome.class).get(0).state();
    }

    /** Only work that is itself asked for, or that closes what was left open, brings a gate nearer to its release: work takes a fault away and proves nothing. */
    @Property
    void laterWorkReleasesNothing(@ForAll("faulty") Life life, @ForAll @IntRange(max = 999) int which, @ForAll @IntRange(max = 9) int up, @ForAll @IntRange(max = 99) int what) {
        JobRecord record = life.held(which);
        GateVerdict before = judged(record);
        Assume.that(!before.released());
        List<String> open = before.findings().stream().flatMap(f -> f.places().stream()).filter(p -> p.state() != State.MET).map(Finding.AtPlace::point).distinct().sorted().toList();
        String point = above(open.get(which % open.size()), up);
        Set<String> asked = Assessor.conclude(record, Examples.BOOK, Examples.DAY).keysWanted();
        List<String> works = Examples.BOOK.vocabulary().works().keySet().stream().filter(w -> !CLOSING.contains(w) && !asked.contains(Entry.key(point, w))).sorted().toList();
        Entry done = work(record, point, works.get(what % works.size()));
        assertThat(judged(Mishap.and(record, done)).released()).as("after %s", done).isFalse();
    }

    @Provide
    Arbitrary<Life> faulty() {
        return Life.lives(2, Mishap.of(Mishap.Kind.OTHERWISE, Mishap.Kind.AGAIN, Mishap.Kind.WORKED));
    }

    /** The part itself, or one that carries it. */
    private static String above(String point, int steps) {
        String above = point;
        for (int i = steps % (1 + (int) point.chars().filter(c -> c == '/').count()); i > 0; i--) {
            above = above.substring(0, above.lastIndexOf('/'));
        }
        return above;
    }

    private static Entry work(JobRecord record, String point, String work) {
        return new Entry("later", ReadyMachine.ago(record, 0), "ida", Deed.DONE, point, work, null, null, null, null, null, 0);
    }

    /** Wear outlives taking off and putting back, a marking outlives all but another part, and the inside of a wheel or an engine outlives its coming out whole. */
    private static boolean outlives(Wanted proof, String work, String point) {
        Assembly assembly = Examples.BOOK.library().assembly();
        if (assembly.whole().getOrDefault(point, Set.of()).contains(work)) {
            return Set.of(Kind.WHOLE, Kind.DAY, Kind.MARKING).contains(proof.kind());
        }
        boolean asOne = List.of("removed", "refitted").contains(work) && assembly.units().contains(point) && !point.equals(proof.point());
        return asOne || proof.kind() != null && !assembly.takes().get(work).contains(proof.kind());
    }

    /** Work on the part, or on what carries it, that takes apart or puts together: whoever does it, what was proven there is proven no more. */
    @Property
    void laterWorkOnAPartOrAboveItUndoesWhatWasProven(@ForAll("releasable") Life life, @ForAll @IntRange(max = 999) int which, @ForAll @IntRange(max = 9) int up, @ForAll @IntRange(max = 99) int what) {
        JobRecord ready = life.ready();
        Conclusions concluded = Assessor.conclude(ready, Examples.BOOK, Examples.DAY);
        List<Wanted> proven = concluded.standing().stream().map(s -> s.wanted()).filter(w -> concluded.of(w.required(), Outcome.class).get(0).state() == State.MET)
                .sorted((a, b) -> (a.required() + a.name()).compareTo(b.required() + b.name())).toList();
        Assume.that(!proven.isEmpty());
        Wanted one = proven.get(which % proven.size());
        String point = above(one.point(), up);
        List<String> works = new ArrayList<>(new TreeSet<>(Examples.BOOK.library().disturbing()));
        String work = works.get(what % works.size());
        Assume.that(one.laid().survives().stream().noneMatch(s -> s.point().equals(point) && s.works().contains(work)));
        Assume.that(!outlives(one, work, point));
        Assume.that(one.want().weakest() != Deed.DONE || !one.key().equals(Entry.key(point, work)));
        Map<String, State> states = states(Mishap.and(ready, work(ready, point, work)));
        assertThat(states.get(one.required().check() + " " + one.required().point())).as("%s after '%s' on %s", one.required(), work, point).isNotEqualTo(State.MET);
    }

    /** The tenths of its uncertainty by which a reading lies inside its limit decide: none or less is a fault, up to ten is a doubt. */
    @Property
    void aReadingIsAPassOnlyWhereItsInstrumentCanTell(@ForAll("releasable") Life life, @ForAll @IntRange(max = 999) int which, @ForAll @IntRange(min = -15, max = 15) int tenths, @ForAll boolean upper) {
        JobRecord ready = life.ready();
        Conclusions concluded = Assessor.conclude(ready, Examples.BOOK, Examples.DAY);
        List<Wanted> held = concluded.standing().stream().filter(s -> s.wanted().judged() && s.evidence().entry().is() instanceof Value.Amount && s.evidence().entry().deed() == Deed.MEASURED).map(s -> s.wanted())
                .filter(w -> w.limit() != null && w.limit().applied() != null && concluded.of(w.required(), Outcome.class).get(0).state() == State.MET)
                .sorted((a, b) -> (a.required() + a.name()).compareTo(b.required() + b.name())).toList();
        Assume.that(!held.isEmpty());
        Wanted one = held.get(which % held.size());
        Bounds bounds = one.limit().applied().bounds();
        boolean fromAbove = bounds.low() == null || upper && bounds.high() != null;
        Quantity limit = fromAbove ? bounds.high() : bounds.low();
        // With both ends, an uncertainty of a hundredth of the way between them leaves room to see one end alone.
        BigDecimal u = bounds.low() == null || bounds.high() == null ? new BigDecimal("0.5") : bounds.high().to(limit.unit()).value().subtract(bounds.low().to(limit.unit()).value()).movePointLeft(2);
        Assume.that(u.signum() > 0);
        BigDecimal inside = u.multiply(BigDecimal.valueOf(tenths, 1));
        BigDecimal value = fromAbove ? limit.value().subtract(inside) : limit.value().add(inside);
        Entry first = ready.entries().stream().filter(e -> Entry.key(e.point(), e.what()).equals(one.key())).findFirst().orElseThrow();
        Value shown = new Value.Amount(new Measured(new Quantity(value, limit.unit()), new Quantity(u, limit.unit())));
        JobRecord record = Mishap.changed(ready, first, e -> new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), shown, e.with(), null, null, null, 0));
        boolean atLimitPasses = fromAbove ? bounds.highPasses() : bounds.lowPasses();
        State expected = tenths < 0 || tenths == 0 && !atLimitPasses ? State.FAULT : tenths <= 10 ? State.DOUBT : State.MET;
        Map<String, State> states = states(record);
        State state = states.get(one.required().check() + " " + one.required().point());
        if (expected == State.MET) {
            assertThat(state).as("%s %s, %s", one.required(), shown, bounds.words()).isIn(State.MET, State.FAULT, State.DOUBT);
        } else {
            assertThat(state).as("%s %s, %s", one.required(), shown, bounds.words()).isEqualTo(expected);
        }
    }

    /** A worse instrument proves no more than a better one. */
    @Property
    void aWiderUncertaintyProvesNothing(@ForAll("readOnce") Life life, @ForAll @IntRange(min = 1, max = 200) int tenths) {
        JobRecord record = life.record();
        Map<String, State> before = states(record);
        List<Entry> wider = record.entries().stream().map(e -> Mishap.wider(e, BigDecimal.ONE.add(BigDecimal.valueOf(tenths, 1)))).toList();
        Map<String, State> after = states(RandomRecords.with(record, wider));
        before.forEach((where, state) -> {
            if (state != State.MET) {
                assertThat(after.getOrDefault(where, state)).as(where + ", which was " + state).isNotEqualTo(State.MET);
            }
        });
    }
}
