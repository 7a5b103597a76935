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

    /** @param bad what is written where */
    record Fault(String place, String aspect, String bad, HonestRecord record) {
        String words() {
            return place + " " + aspect + " " + bad;
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
                faults.add(new Fault(item.place(), item.want().aspect(), bad, good.with(good.lines().stream().map(l -> l == last ? l.saying(bad) : l).toList())));
            }
        }
        return faults;
    }

    static List<Gate> gates(HonestRecord record) {
        return record.gates().stream().map(g -> Gate.of(g).orElseThrow()).toList();
    }
}
