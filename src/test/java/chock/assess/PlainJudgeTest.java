package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Value;
import chock.rulebook.Card;
import chock.rulebook.LimitFor;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.LongAdder;
import org.junit.jupiter.api.Test;

/** The rules against the same reasoning written by hand in plain Java: for every check that its card alone settles, both say the same. */
class PlainJudgeTest {
    /** Checks without a rule of their own besides the one that says when they are asked: what evidence means to them is general. */
    static final Set<String> GENERAL = general();

    private static Set<String> general() {
        Set<String> general = new TreeSet<>();
        Set<String> rules = Examples.BOOK.ruleNames();
        for (Card card : Examples.BOOK.cards().values()) {
            boolean own = rules.stream().anyMatch(rule -> rule.startsWith(card.id() + "-") && Examples.BOOK.cards().keySet().stream().noneMatch(longer -> longer.length() > card.id().length() && (rule.equals(longer) || rule.startsWith(longer + "-"))));
            if (!own && !card.wants().isEmpty() && card.wants().stream().allMatch(PlainJudge::decides)) {
                general.add(card.id());
            }
        }
        return general;
    }

    static int compare(JobRecord record, Map<State, LongAdder> seen) {
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        PlainJudge plain = new PlainJudge(record, Examples.DAY, concluded.wanted());
        int compared = 0;
        for (String check : GENERAL) {
            for (Required required : concluded.required(check)) {
                List<Outcome> outcomes = concluded.of(required, Outcome.class);
                assertThat(outcomes).as(required.toString()).hasSize(1);
                State byHand = plain.state(required, concluded.requirements().wantedFor(required), concluded.requirements().limitFor(required));
                assertThat(byHand).as(required.toString()).isEqualTo(outcomes.get(0).state());
                seen.get(byHand).increment();
                compared++;
            }
        }
        return compared;
    }

    private static Map<State, LongAdder> counters() {
        Map<State, LongAdder> seen = new EnumMap<>(State.class);
        for (State state : State.values()) {
            seen.put(state, new LongAdder());
        }
        return seen;
    }

    @Test
    void mostChecksAreSettledByTheirCardAlone() {
        assertThat(GENERAL).hasSizeGreaterThan(Examples.BOOK.cards().size() / 2);
    }

    @Test
    void everyExampleIsJudgedAlike() throws IOException {
        Map<State, LongAdder> seen = counters();
        for (String name : Examples.RELEASED) {
            assertThat(compare(Examples.read(name), seen)).isGreaterThan(20);
        }
        for (String name : Examples.BLOCKED) {
            compare(Examples.read(name), seen);
        }
        assertThat(compared(seen)).contains(State.MET, State.FAULT, State.STALE, State.MISSING);
    }

    private static Set<State> compared(Map<State, LongAdder> seen) {
        Set<State> states = new TreeSet<>();
        seen.forEach((state, times) -> {
            if (times.sum() > 0) {
                states.add(state);
            }
        });
        return states;
    }

    /** Every reading that is held against a limit, moved onto it and a tenth beyond: which side that is, and whether the instrument can tell. */
    @Test
    void readingsAtTheLimitAreJudgedAlike() throws IOException {
        Map<State, LongAdder> seen = counters();
        JobRecord record = Examples.read("merle-released.yaml");
        int moved = 0;
        for (Standing standing : Assessor.conclude(record, Examples.BOOK, Examples.DAY).standing()) {
            LimitFor limit = standing.wanted().limit();
            Entry e = standing.evidence().entry();
            if (standing.wanted().judged() && limit != null && limit.applied() != null && e.is() instanceof Value.Amount amount) {
                boolean low = limit.applied().bounds().low() != null;
                Quantity bound = low ? limit.applied().bounds().low() : limit.applied().bounds().high();
                for (String share : List.of("1", low ? "0.9" : "1.1")) {
                    Quantity moves = bound.to(amount.measured().value().unit()).times(new BigDecimal(share));
                    Value there = new Value.Amount(new Measured(moves, amount.measured().uncertainty()));
                    List<Entry> entries = record.entries().stream().map(o -> o != e ? o : new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), there, e.with(), null, null, null, 0)).toList();
                    compare(RandomRecords.with(record, entries), seen);
                }
                moved++;
            }
        }
        assertThat(moved).isGreaterThan(20);
        assertThat(compared(seen)).contains(State.DOUBT, State.FAULT);
    }

    /** Entries that slipped to another place: bad ones count at the nearest check, good ones nowhere. */
    @Test
    void entriesAtOtherPlacesAreJudgedAlike() {
        Map<State, LongAdder> seen = counters();
        List<String> points = List.copyOf(Examples.BOOK.vocabulary().points());
        RandomRecords.forSeeds(90, seed -> {
            Random random = new Random(seed);
            JobRecord record = new RandomRecords(seed).next();
            compare(record.withEntries(record.entries().stream().map(e -> !e.deed().isEvidence() || random.nextInt(4) > 0 ? e
                    : moved(e, random.nextBoolean() && e.point().contains("/") ? e.point().substring(0, e.point().lastIndexOf('/')) : points.get(random.nextInt(points.size())))).toList()), seen);
        });
        assertThat(compared(seen)).contains(State.MET, State.FAULT, State.STALE, State.MISSING, State.DOUBT);
    }

    private static Entry moved(Entry e, String point) {
        return new Entry(e.id(), e.at(), e.by(), e.deed(), point, e.what(), e.is(), e.with(), e.corrects(), e.reason(), e.note(), e.line());
    }

    @Test
    void randomRecordsAreJudgedAlike() {
        Map<State, LongAdder> seen = counters();
        RandomRecords.forSeeds(60, seed -> compare(new RandomRecords(seed).next(), seen));
        assertThat(compared(seen)).contains(State.MET, State.FAULT, State.STALE, State.MISSING);
    }
}
