package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.record.JobRecord;
import chock.rulebook.Card;
import java.io.IOException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
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
        PlainJudge plain = new PlainJudge(record, Examples.DAY);
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
        assertThat(seen.values()).as("every state was compared: " + seen).allMatch(n -> n.sum() > 0);
    }

    @Test
    void randomRecordsAreJudgedAlike() {
        Map<State, LongAdder> seen = counters();
        RandomRecords.forSeeds(60, seed -> compare(new RandomRecords(seed).next(), seen));
        assertThat(seen.values()).as("every state was compared: " + seen).allMatch(n -> n.sum() > 0);
    }
}
