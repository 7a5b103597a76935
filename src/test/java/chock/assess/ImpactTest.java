package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import chock.rulebook.Trial;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ImpactTest {
    private static final List<String> TRIALS = List.of("tyres.age=2y", "brakes.pad-thickness=4.1 mm", "tyres.tread-depth=0.5 mm", "transmission.chain-slack=22 mm to 26 mm", "brakes.hose-age=18 months");

    private static RuleBook tried(String set) {
        return Examples.BOOK.with(Trial.read(set, Examples.BOOK).change());
    }

    @Test
    void aTighterLimitClosesAGate() throws IOException {
        Impact impact = Impact.of(Examples.read("lark-released.yaml"), Examples.BOOK, tried("tyres.age=2y"), List.of(Gate.ROAD_TEST), Examples.DAY).get(0);
        assertThat(impact.before()).isTrue();
        assertThat(impact.after()).isFalse();
        assertThat(impact.findings()).extracting(Impact.Change::check, Impact.Change::before, Impact.Change::after).containsExactly(tuple("tyres.age", State.MET, State.FAULT));
        assertThat(impact.findings().get(0).says()).contains("less than 2 y");
    }

    @Test
    void whatALawSetsStays() throws IOException {
        // 1.5 mm is the law in Great Britain: nothing below it can help.
        Impact impact = Impact.of(Examples.read("lark-faults.yaml"), Examples.BOOK, tried("brakes.pad-thickness=0.5 mm"), List.of(Gate.ROAD_TEST), Examples.DAY).get(0);
        assertThat(impact.findings()).isEmpty();
    }

    @Test
    void anUnchangedBookChangesNothing() throws IOException {
        assertThat(Impact.of(Examples.read("lark-faults.yaml"), Examples.BOOK, Examples.BOOK, List.of(Gate.ROAD_TEST), Examples.DAY).get(0).findings()).isEmpty();
    }

    @Test
    void isJudgingTwice() {
        Map<String, RuleBook> books = new HashMap<>();
        TRIALS.forEach(t -> books.put(t, tried(t)));
        AtomicInteger changed = new AtomicInteger();
        RandomRecords.forSeeds(20, seed -> {
            JobRecord record = new RandomRecords(seed).next();
            RuleBook other = books.get(TRIALS.get(seed % TRIALS.size()));
            List<Impact> impacts = Impact.of(record, Examples.BOOK, other, record.seeks(), Examples.DAY);
            Assessment before = Assessor.assess(record, Examples.BOOK, record.seeks(), Examples.DAY);
            Assessment after = Assessor.assess(record, other, record.seeks(), Examples.DAY);
            assertThat(impacts).hasSize(before.gates().size());
            for (int i = 0; i < impacts.size(); i++) {
                Map<String, State> was = states(before.gates().get(i));
                Map<String, State> is = states(after.gates().get(i));
                assertThat(impacts.get(i).before()).isEqualTo(before.gates().get(i).released());
                assertThat(impacts.get(i).after()).isEqualTo(after.gates().get(i).released());
                List<String> differ = Stream.concat(was.keySet().stream(), is.keySet().stream()).filter(k -> was.get(k) != is.get(k)).map(k -> k.split(" ")[0]).distinct().sorted().toList();
                assertThat(impacts.get(i).findings()).extracting(Impact.Change::check).isEqualTo(differ);
                changed.addAndGet(differ.size());
            }
        });
        assertThat(changed.get()).as("findings that a trial changes").isPositive();
    }

    private static Map<String, State> states(GateVerdict gate) {
        Map<String, State> states = new HashMap<>();
        gate.findings().forEach(f -> f.places().forEach(p -> states.put(f.check() + " " + p.point(), p.state())));
        return states;
    }
}
