package chock.record;

import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** A machine with other values in its description, read as a file would be. */
public final class OtherMachine {
    private OtherMachine() { }

    /** @return empty when a reader refuses such a machine */
    public static Optional<Machine> with(JobRecord record, Map<String, String> values, Vocabulary words, Instant asOf) {
        Map<String, String> all = new HashMap<>(record.machine().fields());
        all.putAll(values);
        Machine m = record.machine();
        Raw.Machine raw = new Raw.Machine(m.marque(), m.model(), m.frameNumber(), m.engineNumber(), null, String.valueOf(m.built()), String.valueOf(m.firstRegistered()), null, null,
                new Raw.Engine(null, null, null, null, null, null), new Raw.Brake(null, null, null, null, null), new Raw.Brake(null, null, null, null, null), null,
                new Raw.Wheel(null, null, null), new Raw.Wheel(null, null, null), null, null,
                new Raw.Equipment(null, null, null, null, null, null, null, null, null, null, null, null), Reading.spelled(m.history()), null, null, null, null, null, null).with(all);
        Faults faults = new Faults("machine", Map.of());
        Reading read = new Reading(faults, words, asOf, java.util.Set.of(), ReadAs.STORED);
        read.zone("zone", record.zone().getId());
        Machine other = new MachineReading(read).machine(raw);
        return faults.any() ? Optional.empty() : Optional.of(other);
    }

    /** The record of another machine, with no line about it. */
    public static JobRecord bare(JobRecord record, Machine machine) {
        return new JobRecord(record.id(), record.workshop(), record.zone(), record.territory(), record.onePerson(), record.seeks(), machine, record.maker(), record.people(), record.instruments(),
                java.util.List.of(), java.util.List.of(), record.form());
    }
}
