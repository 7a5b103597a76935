package chock.record;

import chock.quantity.Quantity;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Reads job records, YAML or JSON (JSON when the first sign is an opening brace). First the file as written, then every
 * value in its place, then whether it makes sense. A file with anything wrong in it is refused as a whole, with
 * everything that is wrong.
 */
public final class RecordReader {

    private RecordReader() { }

    /**
     * A record that was stored before.
     *
     * @param fileName how the file is called in messages
     * @param bytes UTF-8 text, with or without a byte order mark, up to 5 MB
     * @param words the words the rule book in force knows
     * @param asOf the moment judged; nothing in the record may be later
     * @return the record; every measured amount in it has an uncertainty above zero
     * @throws UnusableInput with every fault, each with its line, its path and what to write instead
     */
    public static JobRecord read(String fileName, byte[] bytes, Vocabulary words, Instant asOf) {
        return read(fileName, bytes, words, asOf, ReadAs.STORED);
    }

    /**
     * The same, of a record of which some or all is being written now.
     *
     * @param as what of it is being written; that is refused where a stored record is only marked
     */
    public static JobRecord read(String fileName, byte[] bytes, Vocabulary words, Instant asOf, ReadAs as) {
        return open(fileName, bytes).read(words, asOf, as);
    }

    /**
     * The first part of reading, which needs no rule book: the file as written, every value in its place. What is wrong in
     * it is told with all the rest by {@link Opened#read}.
     *
     * @param fileName how the file is called in messages
     * @param bytes UTF-8 text, with or without a byte order mark, up to 5 MB
     */
    public static Opened open(String fileName, byte[] bytes) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(fileName, lines);
        JsonNode written = Written.read(bytes, faults, lines);
        if (written instanceof ObjectNode keys) {
            Sessions.expand(keys, lines, faults);
        }
        return new Opened(lines, faults, written == null ? null : new Binding(faults, lines).bind(written));
    }

    /** What was opened in another way, such as a record with lines of a sheet behind its own. */
    static Opened opened(Map<String, Integer> lines, Faults faults, Raw.Job raw) {
        return new Opened(lines, faults, raw);
    }

    /** A file that was opened and not yet held against the words of a rule book. */
    public static final class Opened {
        private final Map<String, Integer> lines;
        private final Faults faults;
        private final Raw.Job raw;

        private Opened(Map<String, Integer> lines, Faults faults, Raw.Job raw) {
            this.lines = lines;
            this.faults = faults;
            this.raw = raw;
        }

        /** The time zone the record is kept in; empty when it names none, and then it is refused. */
        public Optional<ZoneId> zone() {
            return Optional.ofNullable(raw).map(Raw.Job::zone).filter(ZoneId.getAvailableZoneIds()::contains).map(ZoneId::of);
        }

        /**
         * The record, as one that was stored before.
         *
         * @param words the words the rule book in force knows
         * @param asOf the moment judged; nothing in the record may be later
         * @return the record; every measured amount in it has an uncertainty above zero
         * @throws UnusableInput with every fault, each with its line, its path and what to write instead
         */
        public JobRecord read(Vocabulary words, Instant asOf) {
            return read(words, asOf, ReadAs.STORED);
        }

        /**
         * The same, of a record of which some or all is being written now.
         *
         * @param as what of it is being written; that is refused where a stored record is only marked
         */
        public JobRecord read(Vocabulary words, Instant asOf, ReadAs as) {
            Faults all = new Faults(faults);
            JobRecord record = raw == null ? null : record(raw, new Reading(all, words, asOf, lines.keySet(), as), lines);
            if (all.any()) {
                throw all.toException();
            }
            return record;
        }
    }

    /**
     * The file as it is written: every value a text, in the order it stands, with its sessions written out as single entries. Whether
     * it makes sense is not looked at.
     *
     * @param fileName how the file is called in messages
     * @throws UnusableInput when it is not YAML or JSON with one mapping, a key stands twice, or a session cannot be written out
     */
    public static ObjectNode written(String fileName, byte[] bytes) {
        Map<String, Integer> lines = new HashMap<>();
        Faults faults = new Faults(fileName, lines);
        JsonNode written = Written.read(bytes, faults, lines);
        if (written instanceof ObjectNode keys) {
            Sessions.expand(keys, lines, faults);
        }
        if (faults.any()) {
            throw faults.toException();
        }
        return (ObjectNode) written;
    }

    private static JobRecord record(Raw.Job raw, Reading read, Map<String, Integer> lines) {
        ZoneId zone = read.zone("zone", raw.zone());
        Machine described = raw.machine() == null ? null : new MachineReading(read).machine(raw.machine());
        if (described != null) {
            RecordForm.refuseLaterWords(raw.chock(), described, read.faults);
        }
        List<Person> people = people(orNone(raw.people()), read);
        Boolean onePerson = read.yesNo("one-person", raw.onePerson());
        if (Boolean.TRUE.equals(onePerson) && people.size() > 1) {
            read.faults.add("one-person", "one person works alone, but " + people.size() + " people stand in this record", "Write no");
        }
        Set<String> writers = known(raw.people(), Raw.Person::id);
        Machine machine = described == null ? null : described.with(new PastReading(read, writers, known(raw.entries(), Raw.Entry::id), lines).past(raw.machine(), described));
        MakerFigures maker = raw.maker() == null ? null : new MakerReading(read, writers).maker(raw.maker());
        LocalLaw law = new LocalLawReading(read, writers).law(raw.localLaw(), raw.territory());
        Map<String, Instrument> instruments = instruments(orNone(raw.instruments()), read);
        List<Entry> entries = new EntryReading(read, writers, known(raw.instruments(), Raw.Instrument::id), instruments, machine == null ? null : machine.built(), RecordForm.of(raw.chock()), lines).entries(orNone(raw.entries()));
        entries = PlausibleReading.of(read, entries, machine, instruments, orNone(raw.instruments()));
        List<Claim> claims = new ClaimReading(read, known(raw.entries(), Raw.Entry::id)).claims(orNone(raw.claims()));
        List<Gate> seeks = gates(orNone(raw.seeks()), read);
        if (machine != null && !read.faults.any()) {
            refuseContradictions(machine, entries, RecordForm.of(raw.chock()), read);
        }
        return read.faults.any() ? null : new JobRecord(raw.record(), raw.workshop(), zone, raw.territory(), onePerson, seeks,
                machine, maker, people, List.copyOf(instruments.values()), List.copyOf(entries), List.copyOf(claims), RecordForm.of(raw.chock())).with(law);
    }

    /** What is being written about a part that the machine does not have by its description of that day. */
    private static void refuseContradictions(Machine machine, List<Entry> entries, int form, Reading read) {
        DescribedTimes times = new DescribedTimes(machine, entries, read.words.fields(), form);
        Set<String> corrected = entries.stream().map(Entry::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        for (int i = 0; i < entries.size(); i++) {
            String path = "entries[" + i + "]";
            if (read.isNew(path) && !corrected.contains(entries.get(i).id())) {
                times.contradiction(entries.get(i)).ifPresent(c -> read.faults.add(path + ".point", c.entered() + " does not go with " + c.described() + ", the description of that day",
                        "Write the place where it was, or put the description right; where work changed the machine, write the change with its day under machine.changes"));
            }
        }
    }

    private static List<Gate> gates(List<String> seeks, Reading read) {
        List<Gate> gates = new ArrayList<>();
        for (int i = 0; i < seeks.size(); i++) {
            String path = "seeks[" + i + "]";
            Gate gate = read.choice(path, seeks.get(i), Gate.class);
            if (gate != null && gates.contains(gate)) {
                read.faults.add(path, gate + " stands here twice", "Keep one");
            }
            gates.add(gate);
        }
        return Collections.unmodifiableList(gates);
    }

    private static List<Person> people(List<Raw.Person> raw, Reading read) {
        List<Person> people = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            Raw.Person one = raw.get(i);
            if (one != null) {
                isUsed("people[" + i + "].id", one.id(), ids, read);
                ids.add(one.id());
                if (!Reading.blank(one.name())) {
                    name("people[" + i + "].name", one.name(), names, read);
                }
                people.add(new Person(one.id(), one.name(), one.role()));
            }
        }
        return List.copyOf(people);
    }

    /** Whoever stands here twice could look at their own work as somebody else. */
    private static void name(String path, String name, List<String> names, Reading read) {
        Optional<String> same = names.stream().filter(other -> PersonName.isSame(name, other)).findFirst();
        if (same.isPresent()) {
            boolean letters = name.strip().replaceAll("\\s+", " ").equalsIgnoreCase(same.get().strip().replaceAll("\\s+", " "));
            read.faults.add(path, "the name " + Faults.quoted(name) + (letters ? " is a duplicate" : " looks like " + Faults.quoted(same.get())), "Keep one of the two, or write what tells them apart");
        }
        PersonName.complaint(name).ifPresent(wrong -> read.faults.add(path, "the name " + Faults.quoted(name) + " cannot be used: " + wrong, "Write it in one alphabet"));
        names.add(name);
    }

    private static Map<String, Instrument> instruments(List<Raw.Instrument> raw, Reading read) {
        Map<String, Instrument> instruments = new LinkedHashMap<>();
        for (int i = 0; i < raw.size(); i++) {
            Raw.Instrument one = raw.get(i);
            if (one != null) {
                Instrument instrument = instrument("instruments[" + i + "]", one, read);
                if (!isUsed("instruments[" + i + "].id", one.id(), instruments.keySet(), read)) {
                    instruments.put(one.id(), instrument);
                }
            }
        }
        instruments.remove(null);
        return instruments;
    }

    private static Instrument instrument(String path, Raw.Instrument raw, Reading read) {
        String kind = read.known(path + ".kind", raw.kind(), "a kind of instrument this rule book knows", read.words.instruments().keySet());
        Quantity stated = "by-kind".equals(raw.uncertainty()) ? null : read.amount(path + ".uncertainty", raw.uncertainty(), null);
        if (stated != null && kind != null && !new Uncertainty(read).isCredible(path + ".uncertainty", stated, read.words.instruments().get(kind), raw.certificate() != null)) {
            stated = null;
        }
        LocalDate calibrated = read.pastDay(path + ".calibrated", raw.calibrated());
        LocalDate due = read.day(path + ".due", raw.due());
        if (calibrated != null && due != null && due.isBefore(calibrated)) {
            read.faults.add(path + ".due", "due " + due + ", before it was calibrated (" + calibrated + ")", "Look at both again on the certificate");
        }
        return new Instrument(raw.id(), kind, stated, calibrated, due, List.of(), raw.certificate());
    }

    private static boolean isUsed(String path, String id, Set<String> ids, Reading read) {
        boolean used = id != null && ids.contains(id);
        if (used) {
            read.faults.add(path, "the id " + Faults.quoted(id) + " is used twice", "Give each an id of its own");
        }
        return used;
    }

    /** The ids of a list, or null when one of them could not be read: then a stranger may be somebody after all. */
    private static <T> Set<String> known(List<T> list, Function<T, String> id) {
        Set<String> ids = new LinkedHashSet<>();
        for (T one : orNone(list)) {
            if (one == null || Reading.blank(id.apply(one))) {
                return null;
            }
            ids.add(id.apply(one));
        }
        return list == null ? null : ids;
    }

    private static <T> List<T> orNone(List<T> list) {
        return list == null ? List.of() : list;
    }
}
