package chock.signoff;

import chock.record.Entry;
import chock.record.JobRecord;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Holds a record against what the ledger saw of it: entries are only ever added, with the time at which they are written. */
final class Continuity {
    private Continuity() { }

    /**
     * @return what differs, when the record is a continuation
     * @throws NotSigned naming the first thing taken out, edited or back-dated
     */
    static RecordVersion.Difference check(JobRecord record, RecordVersion version, History.Seen seen) {
        RecordVersion.Difference difference = version.since(seen.items());
        if (seen.frame() != null && !(seen.frame().equals(record.machine().frameNumber()) && seen.engine().equals(record.machine().engineNumber()))) {
            throw new NotSigned("record " + record.id() + " was signed for frame " + seen.frame() + ", engine " + seen.engine() + "; now it says frame "
                    + record.machine().frameNumber() + ", engine " + record.machine().engineNumber() + ". Another machine, or another engine, gets a record of its own");
        }
        if (!difference.keptRemoved().isEmpty()) {
            throw new NotSigned(difference.keptRemoved().get(0) + " was taken out of record " + record.id() + " since the ledger saw it. Put it back as it was; a wrong entry is followed by one that corrects it");
        }
        if (!difference.keptChanged().isEmpty()) {
            throw new NotSigned(edited(difference.keptChanged().get(0), record));
        }
        backDated(record, Set.copyOf(difference.addedEntries()), seen.lastSigned()).ifPresent(entry -> {
            throw new NotSigned("entry " + entry.id() + " of " + entry.at() + " was added since, but is dated before the last sign-off of " + record.id() + " (" + seen.lastSigned().atZone(record.zone()).toLocalDateTime()
                    + " " + record.zone() + "). Write it with the day and time at which it is written, and say in its note when it was");
        });
        return difference;
    }

    private static String edited(String item, JobRecord record) {
        String was = item + " of record " + record.id() + " says something else than when the ledger saw it. Put it back as it was";
        if (item.startsWith("entry ")) {
            return was + "; a wrong entry is followed by one that corrects it";
        }
        return was + (item.startsWith("instrument ") ? "; after a new calibration it gets a new id" : "; another person gets another id");
    }

    // Times are written in minutes, so what is written within the minute of the sign-off is not before it. A day alone may
    // have been before it.
    private static Optional<Entry> backDated(JobRecord record, Set<String> added, Instant lastSigned) {
        if (lastSigned == null) {
            return Optional.empty();
        }
        Instant from = lastSigned.truncatedTo(ChronoUnit.MINUTES);
        List<Entry> entries = record.entries();
        return entries.stream().filter(entry -> added.contains(entry.id()) && entry.at().earliest().isBefore(from)).findFirst();
    }
}
