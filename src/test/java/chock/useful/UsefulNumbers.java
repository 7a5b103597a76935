package chock.useful;

import chock.assess.GateVerdict;
import chock.record.Gate;
import chock.rulebook.Look;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Counts. Everything is drawn from fixed numbers, so that two counts of one rule book are the same. */
final class UsefulNumbers {
    /** How many times the least an order may ask for. */
    static final double TIMES = 1.3;
    /** Most entries the complete record of the two-stroke single of 1972 may need at the road test. */
    static final int MOST_ENTRIES = 301;

    private UsefulNumbers() { }

    /** One thing that was tried, and what came of it in words; no words when it came out as it must. */
    record Tried(String what, List<String> wrong) {
        boolean fine() {
            return wrong.isEmpty();
        }
    }

    static List<Tried> honest() {
        return IntStream.range(0, ModelSheets.COUNT).parallel().mapToObj(i -> new Tried("sheet " + i + " " + Intents.of(i), Intents.record(i).blockedBy())).toList();
    }

    /** @param every tried on every so manieth record */
    static Map<HarmlessChange, List<Tried>> harmless(int every) {
        Map<HarmlessChange, List<Tried>> all = new EnumMap<>(HarmlessChange.class);
        for (HarmlessChange change : HarmlessChange.values()) {
            // Another record each time, where not all are taken.
            all.put(change, IntStream.range(0, ModelSheets.COUNT).filter(i -> (i + change.ordinal()) % every == 0).parallel().mapToObj(i -> {
                HonestRecord changed = change.to(Intents.record(i), new Random(1000L * change.ordinal() + i));
                return new Tried(change.words() + ", sheet " + i, changed.blockedBy());
            }).toList());
        }
        return all;
    }

    static HonestRecord single(String... gates) {
        return HonestHistory.of(ModelSheets.singleOf1972(), List.of(gates), false);
    }

    static Map<Comeback, Orders.Outcome> comebacks(boolean least) {
        HonestRecord single = single("road-test");
        Map<Comeback, Orders.Outcome> all = new EnumMap<>(Comeback.class);
        Arrays.stream(Comeback.values()).parallel().map(c -> Map.entry(c, Orders.carriedOut(c.done(single), Gate.ROAD_TEST, least))).sequential().forEach(e -> all.put(e.getKey(), e.getValue()));
        return all;
    }

    /**
     * What came of one bad result in an otherwise good record.
     *
     * @param closed gates it closes, of those the record seeks
     * @param orders the order for each of these gates, carried out
     */
    record Cured(SingleFaults.Fault fault, List<Gate> closed, Map<Gate, Orders.Outcome> orders) {
        List<String> words() {
            return orders.entrySet().stream().filter(e -> !e.getValue().released() || !e.getValue().within(TIMES))
                    .map(e -> fault.words() + " at " + e.getKey().id() + ": " + (e.getValue().released() ? e.getValue().written() + " entries, where " + e.getValue().least() + " are enough" : "still blocked by " + e.getValue().open())).toList();
        }
    }

    /** Every bad result of the single of 1972 at all its gates. */
    static List<SingleFaults.Fault> faults() {
        List<SingleFaults.Fault> faults = new ArrayList<>(SingleFaults.of(single("road-test")));
        faults.addAll(SingleFaults.of(single("first-start", "indoor-run")));
        List<String> keys = faults.stream().map(SingleFaults.Fault::key).distinct().toList();
        SingleFaults.of(single("hand-over")).stream().filter(f -> !keys.contains(f.key())).forEach(faults::add);
        return faults;
    }

    /** What comes of them; @param every only every so manieth of them */
    static List<Cured> faults(int every, boolean least) {
        List<SingleFaults.Fault> faults = faults();
        return IntStream.range(0, faults.size()).filter(i -> i % every == 0).parallel().mapToObj(i -> cured(faults.get(i), least)).toList();
    }

    private static Cured cured(SingleFaults.Fault fault, boolean least) {
        List<Gate> closed = fault.closed().stream().map(GateVerdict::gate).toList();
        // The first gate that is closed is the one the shop wants to open.
        Map<Gate, Orders.Outcome> orders = closed.stream().limit(1).collect(Collectors.toMap(g -> g, g -> Orders.carriedOutInTurns(fault.record(), g, least)));
        return new Cured(fault, closed, orders);
    }

    /** Answers and pieces of work in that record. */
    static int net() {
        return single("road-test").lines().size();
    }

    /** Looks and pieces of work in it: what one person finds in one look on one day is one. */
    static int netLooks() {
        Map<String, Look> looks = HonestRecord.BOOK.library().looks();
        return (int) single("road-test").lines().stream()
                .map(line -> line.isWork() || !looks.containsKey(line.key()) ? line.id()
                        : looks.get(line.key()).name() + " " + looks.get(line.key()).point() + " " + line.by() + " " + line.at().toLocalDate())
                .distinct().count();
    }

    static List<String> wrong(List<Tried> tried) {
        return tried.stream().filter(t -> !t.fine()).map(t -> t.what() + ": " + t.wrong()).sorted(Comparator.naturalOrder()).toList();
    }
}
