package chock.useful;

import chock.useful.HonestRecord.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Everyday work on a released machine, and in how many entries it must be possible to release it again: made by hand, and approved. */
enum Comeback {
    PLUG("a plug out and in again", 4, "ignition/plugs removed", "ignition/plugs refitted"),
    TYRE("a tyre inflated", 1, "front-wheel/tyre inflated"),
    CHAIN("the chain adjusted", 12, "rear-wheel/spindle adjusted", "transmission/chain adjusted"),
    PADS("front pads replaced", 14, "front-brake/caliper/inner-pad replaced", "front-brake/caliper/outer-pad replaced"),
    TUBE("the rear tube replaced", 25, "rear-wheel removed", "rear-wheel/tube replaced", "rear-wheel refitted"),
    TANK("the tank off and on again", 10, "fuel/tank removed", "fuel/tank refitted");

    private final String words;
    private final int most;
    private final List<String> work;

    Comeback(String words, int most, String... work) {
        this.words = words;
        this.most = most;
        this.work = List.of(work);
    }

    String words() {
        return words;
    }

    /** The most entries it may take, the work itself not counted. */
    int most() {
        return most;
    }

    /** The record with the work written after everything else, by the technician. */
    HonestRecord done(HonestRecord record) {
        List<Line> lines = new ArrayList<>();
        work.forEach(w -> {
            Bench.Result written = Bench.done(w.split(" ")[1]);
            lines.add(new Line("", null, "tom", w.split(" ")[0], "done", w.split(" ")[1], written.is(), written.with(), Map.of()));
        });
        return renamed(HarmlessChange.later(record, lines));
    }

    /** So that the entries of the order may be named in the same way. */
    private static HonestRecord renamed(HonestRecord record) {
        return record.with(record.lines().stream().map(l -> l.id().startsWith("x") ? l.named("w" + l.id().substring(1)) : l).toList());
    }
}
