package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.GateVerdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever was found, honest work leads on: the program's own order, carried out, opens every gate that one bad result closes,
 * or two of one system. Taking back an entry that was true is no step. A share is tried in every build, all with
 * {@code -Dchock.ways=single} and {@code -Dchock.ways=pairs}; {@code -Dchock.pairs=25} tries every 25th pair.
 */
@Tag("slow")
class WayOutTest {
    private static final String WAYS = System.getProperty("chock.ways", "");
    private static final int OF_SINGLE = WAYS.equals("single") ? 1 : 40;
    private static final int OF_PAIRS = Integer.getInteger("chock.pairs", WAYS.equals("pairs") ? 1 : 1500);

    private static final List<SingleFaults.Fault> FAULTS = UsefulNumbers.faults();

    /** What keeps a gate closed after all, or was taken back though it was true; empty when there is an honest way to every gate. */
    private static Stream<String> stuck(String words, HonestRecord record, List<String> found) {
        return record.judged().gates().stream().filter(gate -> !gate.released()).map(GateVerdict::gate).flatMap(gate -> {
            Orders.Outcome outcome = Orders.carriedOutInTurns(record, gate, false);
            List<String> wrong = new ArrayList<>();
            if (!outcome.released()) {
                wrong.add(words + " at " + gate.id() + ": still blocked by " + outcome.open());
            }
            outcome.lines().stream().filter(line -> found.contains(line.more().get("corrects"))).forEach(line -> wrong.add(words + " at " + gate.id() + ": the order takes back what was found"));
            return wrong.stream();
        });
    }

    /** The entry, where what was found is an answer: a number or an amount may be read again and prove a slip. */
    private static Stream<String> answer(SingleFaults.Fault fault) {
        return fault.bad().matches("[a-z][a-z-]*") ? Stream.of(fault.line().id()) : Stream.empty();
    }

    @Test
    void everyBadResultHasItsWayOut() {
        List<SingleFaults.Fault> tried = IntStream.range(0, FAULTS.size()).filter(i -> i % OF_SINGLE == 0).mapToObj(FAULTS::get).toList();
        assertThat(tried).hasSizeGreaterThan(10);
        assertThat(tried.parallelStream().flatMap(f -> stuck(f.words(), f.record(), answer(f).toList())).toList()).isEmpty();
    }

    @Test
    void everyTwoBadResultsOfOneSystemHaveTheirWayOut() {
        Map<String, List<SingleFaults.Fault>> systems = FAULTS.stream().collect(Collectors.groupingBy(f -> f.system() + " " + f.record().gates(), TreeMap::new, Collectors.toList()));
        List<List<SingleFaults.Fault>> pairs = systems.values().stream().flatMap(WayOutTest::pairs).toList();
        assertThat(pairs).hasSizeGreaterThan(5000);
        List<List<SingleFaults.Fault>> tried = IntStream.range(0, pairs.size()).filter(i -> i % OF_PAIRS == 0).mapToObj(pairs::get).toList();
        assertThat(tried.parallelStream().flatMap(pair -> stuck(pair.get(0).words() + " and " + pair.get(1).words(), pair.get(0).and(pair.get(1)), pair.stream().flatMap(WayOutTest::answer).toList())).toList()).isEmpty();
    }

    private static Stream<List<SingleFaults.Fault>> pairs(List<SingleFaults.Fault> faults) {
        Function<Integer, Stream<List<SingleFaults.Fault>>> later = i -> faults.subList(i + 1, faults.size()).stream().filter(other -> !other.key().equals(faults.get(i).key())).map(other -> List.of(faults.get(i), other));
        return IntStream.range(0, faults.size()).boxed().flatMap(later);
    }
}
