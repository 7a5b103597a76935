package chock.useful;

import chock.assess.GateVerdict;
import chock.record.Gate;
import chock.useful.HonestHistory.Item;
import chock.useful.HonestRecord.Line;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Every single bad result that can stand in an otherwise good record, in place of the last good one. */
final class SingleFaults {
    private SingleFaults() { }

    /**
     * @param system the system of the first check that reads it, such as {@code brakes}
     * @param bad what is written where
     * @param line the good entry it stands in place of
     */
    record Fault(String system, String place, String aspect, String bad, Line line, HonestRecord record) {
        String words() {
            return place + " " + aspect + " " + bad;
        }

        String key() {
            return place + " " + aspect;
        }

        /** The same record with another bad result besides. */
        HonestRecord and(Fault other) {
            return record.with(record.lines().stream().map(l -> l == other.line ? l.saying(other.bad) : l).toList());
        }

        /** Gates of the record that it closes. */
        List<GateVerdict> closed() {
            return record.judged().gates().stream().filter(g -> !g.released()).toList();
        }
    }

    static List<Fault> of(HonestRecord good) {
        List<Fault> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Item item : HonestHistory.wanted(good.sheet(), good.gates())) {
            if (item.want().isWork() || !seen.add(item.key())) {
                continue;
            }
            Line last = good.last(item.place(), item.want().aspect());
            for (String bad : Bench.bad(good.sheet(), item.want(), item.place())) {
                faults.add(new Fault(item.card().id().replaceFirst("\\..*", ""), item.place(), item.want().aspect(), bad, last, good.with(good.lines().stream().map(l -> l == last ? l.saying(bad) : l).toList())));
            }
        }
        return faults;
    }

    static List<Gate> gates(HonestRecord record) {
        return record.gates().stream().map(g -> Gate.of(g).orElseThrow()).toList();
    }
}
