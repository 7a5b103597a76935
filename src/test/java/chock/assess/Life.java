package chock.assess;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import java.time.ZoneId;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** A machine, where it stands and will be ridden, what it is wanted for, and what happened to its record since all of it was good. */
record Life(Machine machine, ZoneId zone, String territory, boolean onePerson, ReadyMachine.Manual manual, Gate gate, List<Mishap> mishaps) {

    /** Any machine, and anything that may happen to its record, up to so many times. */
    static Arbitrary<Life> any(int mishaps) {
        return lives(mishaps, Mishap.any());
    }

    /** Nothing of it keeps a gate shut by itself: the law of the place is known, the manual was read, there are limits for its battery, and it has a brake. */
    static Arbitrary<Life> releasable() {
        return any(0).map(l -> new Life(l.machine, l.zone, List.of("ZA", "UK").contains(l.territory) ? "GB" : l.territory, l.onePerson, ReadyMachine.Manual.WHAT_IS_NEEDED, l.gate, l.mishaps))
                .filter(l -> l.machine.volts() != 24 && l.machine.ends().stream().anyMatch(end -> end.brake().type() != Machine.BrakeType.NONE));
    }

    static Arbitrary<Life> lives(int mishaps, Arbitrary<Mishap> mishap) {
        Arbitrary<ZoneId> zone = Arbitraries.of("Europe/London", "America/New_York", "Asia/Kolkata", "Pacific/Auckland").map(ZoneId::of);
        Arbitrary<String> territory = Arbitraries.frequency(Tuple.of(4, "GB"), Tuple.of(2, "DE"), Tuple.of(2, "US-VA"), Tuple.of(2, "US-MD"), Tuple.of(1, "IT"), Tuple.of(1, "ZA"), Tuple.of(1, "UK"));
        Arbitrary<ReadyMachine.Manual> manual = Arbitraries.frequency(Tuple.of(8, ReadyMachine.Manual.WHAT_IS_NEEDED), Tuple.of(1, ReadyMachine.Manual.NOTHING_FOUND), Tuple.of(1, ReadyMachine.Manual.NOT_LOOKED_UP));
        Arbitrary<Boolean> alone = Arbitraries.frequency(Tuple.of(4, false), Tuple.of(1, true));
        return Combinators.combine(AnyMachine.machine(), zone, territory, alone, manual, Arbitraries.of(Gate.class), mishap.list().ofMaxSize(mishaps)).as(Life::new);
    }

    /** Nothing written. */
    JobRecord bare() {
        return ReadyMachine.bare(machine, zone, territory, onePerson, manual, gate);
    }

    /** Everything written and good. */
    JobRecord ready() {
        return ReadyMachine.ready(bare());
    }

    /** After all that happened; and where that left everything good, one entry was never written. */
    JobRecord held(int which) {
        JobRecord record = record();
        return Examples.judge(record).allReleased() ? new Mishap(Mishap.Kind.GONE, which, 0, 0, 0).befalls(record, "") : record;
    }

    /** After all that happened. */
    JobRecord record() {
        JobRecord record = ready();
        for (int i = 0; i < mishaps.size(); i++) {
            record = mishaps.get(i).befalls(record, "x" + (i + 1));
        }
        return record;
    }
}
