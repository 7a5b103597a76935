package chock.record;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that was written about one machine.
 *
 * @param id the record's own id
 * @param workshop name of the workshop
 * @param zone the workshop's time zone; dates without a time mean that day there
 * @param territory ISO 3166 code of where the machine will be ridden, such as {@code GB} or {@code US-VA}
 * @param onePerson whether the workshop declares that one person works alone
 * @param seeks the gates it asks for
 * @param claims what is said of the machine, not by what was done to it
 * @param form of the file: 1, or 2 with what {@code job-record/2} asks for besides
 * @param register the workshop's register it was held against, or null
 * @param localLaw the law where the machine will be ridden, as the record has it
 */
public record JobRecord(String id, String workshop, ZoneId zone, String territory, boolean onePerson, List<Gate> seeks,
                        Machine machine, MakerFigures maker, List<Person> people, List<Instrument> instruments,
                        List<Entry> entries, List<Claim> claims, int form, Registered register, LocalLaw localLaw) {

    public JobRecord {
        entries = EntryList.of(entries);
    }

    /** A record that was held against no register and says nothing of the law where the machine will be ridden. */
    public JobRecord(String id, String workshop, ZoneId zone, String territory, boolean onePerson, List<Gate> seeks, Machine machine, MakerFigures maker,
                     List<Person> people, List<Instrument> instruments, List<Entry> entries, List<Claim> claims, int form) {
        this(id, workshop, zone, territory, onePerson, seeks, machine, maker, people, instruments, entries, claims, form, null, LocalLaw.NONE);
    }

    /** The same record, held against a register. */
    public JobRecord heldAgainst(Registered by) {
        return new JobRecord(id, workshop, zone, territory, onePerson, seeks, machine, maker, people, instruments, entries, claims, form, by, localLaw);
    }

    /** The same record with other entries. */
    public JobRecord withEntries(List<Entry> others) {
        return new JobRecord(id, workshop, zone, territory, onePerson, seeks, machine, maker, people, instruments, others, claims, form, register, localLaw);
    }

    /** The same record, of which no line of a file is known. */
    public JobRecord withoutLines() {
        Past past = machine.past();
        AsBuilt built = past.asBuilt();
        List<Past.Rebuild> rebuilds = past.rebuilds().stream().map(one -> new Past.Rebuild(one.at(), one.changes().stream()
                .map(c -> new DescriptionChange(c.at(), c.by(), c.field(), c.from(), c.to(), c.because(), 0)).toList(), one.before())).toList();
        Machine without = machine.with(new Past(rebuilds, built == null ? null : new AsBuilt(built.document(), built.page(), built.by(), built.secondedBy(), built.facts(), Map.of(), 0), Map.of()));
        List<Entry> unnumbered = entries.stream().map(e -> new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), e.reason(), e.note(), e.noteIs(), e.dangers(), 0)).toList();
        return new JobRecord(id, workshop, zone, territory, onePerson, seeks, without, maker, people, instruments, unnumbered, claims, form, register, localLaw);
    }

    /** The same record with the law where the machine will be ridden. */
    public JobRecord with(LocalLaw law) {
        return new JobRecord(id, workshop, zone, territory, onePerson, seeks, machine, maker, people, instruments, entries, claims, form, register, law);
    }

    /** The same record with other instruments. */
    public JobRecord withInstruments(List<Instrument> others) {
        return new JobRecord(id, workshop, zone, territory, onePerson, seeks, machine, maker, people, others, entries, claims, form, register, localLaw);
    }

    public Optional<Instrument> instrument(String instrumentId) {
        return instruments.stream().filter(i -> i.id().equals(instrumentId)).findFirst();
    }

    public Optional<Entry> entry(String entryId) {
        return Optional.ofNullable(((EntryList) entries).byId(entryId));
    }

    /** The last word on an entry that was corrected: its correction, or where that was corrected as well, the last of them. */
    public Optional<Entry> lastCorrectionOf(String entryId) {
        return Optional.ofNullable(((EntryList) entries).lastCorrections().get(entryId));
    }

    public String nameOf(String personId) {
        return people.stream().filter(p -> p.id().equals(personId)).map(Person::name).findFirst().orElse(personId);
    }
}
