package chock.assess;

import chock.assess.facts.Wanted;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.AsBuilt;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.MakerFigure;
import chock.record.MakerFigures;
import chock.record.Past;
import chock.record.Moment;
import chock.record.Person;
import chock.record.RecordForm;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Limit;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** Records of a machine: with nothing written yet, and with a good result for everything that is then asked. */
final class ReadyMachine {
    static final List<Person> PEOPLE = List.of(new Person("ida", "Ida Marrow", "inspector"), new Person("tom", "Tom Fell", "technician"), new Person("wat", "Wat Orrin", "lead"));
    private static final Map<String, Value> BY_PLACE = new HashMap<>();
    private static final Map<String, Value> BY_ASPECT = new HashMap<>();
    private static final Map<String, MakerFigure> FIGURES = new HashMap<>();
    /** Work that is itself asked for: what comes later here undoes nothing that comes before. */
    private static final List<String> TURNS = List.of("drained", "filled", "bled", "heat-cycled", "ridden", "torqued");
    /** Minutes before the moment of judgement at which everything was looked at and measured. */
    static final int PROVEN = 10;
    /** Minutes before it at which was read what cannot be read assembled: before the work that closes it. */
    private static final int APART = 58;
    private static final int ROUNDS = 5;
    private static final int KEPT = 200;
    private static final Map<JobRecord, JobRecord> READY = new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<JobRecord, JobRecord> eldest) {
            return size() > KEPT;
        }
    };

    static {
        for (String name : Examples.RELEASED) {
            try {
                JobRecord example = Examples.read(name);
                example.entries().stream().filter(e -> e.is() != null).forEach(e -> {
                    BY_PLACE.put(Entry.key(e.point(), e.what()), e.is());
                    BY_PLACE.putIfAbsent(alike(Entry.key(e.point(), e.what())), e.is());
                    BY_ASPECT.put(e.what(), e.is());
                });
                example.maker().figures().forEach(f -> FIGURES.putIfAbsent(f.limit(), f));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private ReadyMachine() { }

    /** The front is as the rear, left as right, and one cylinder as the other. */
    private static String alike(String key) {
        return key.replaceAll("left-|right-", "").replace("rear", "front").replaceAll("cylinder-\\d", "cylinder-1");
    }

    /** What the manual says: nothing looked up, nothing found, or a figure for each limit that cannot do without. */
    enum Manual { NOT_LOOKED_UP, NOTHING_FOUND, WHAT_IS_NEEDED }

    /** Nothing is written yet; there is one instrument of every kind, inside its calibration. */
    static JobRecord bare(Machine machine, ZoneId zone, String territory, boolean onePerson, Manual manual, Gate gate) {
        List<Instrument> instruments = Examples.BOOK.vocabulary().instruments().keySet().stream().sorted().map(k -> new Instrument(k, k, null, LocalDate.of(2026, 3, 2), LocalDate.of(2027, 3, 2))).toList();
        // What it was built with is known, and it was built as it is now.
        Machine known = machine.with(new Past(List.of(), AsBuilt.asDescribed(machine, "Merle owner's book", "6", "ida"), Map.of()));
        return new JobRecord("HV-0300", "Hollow Vale Motor Works", zone, territory, onePerson, List.of(gate), known, maker(manual), onePerson ? PEOPLE.subList(0, 1) : PEOPLE,
                instruments, List.of(), List.of(), RecordForm.NEWEST);
    }

    private static MakerFigures maker(Manual manual) {
        if (manual == Manual.NOT_LOOKED_UP) {
            return new MakerFigures(List.of(), List.of());
        }
        List<MakerFigure> figures = new ArrayList<>();
        List<String> none = new ArrayList<>();
        for (String limit : Examples.BOOK.vocabulary().limits().keySet()) {
            boolean needed = Examples.BOOK.limitsNamed(limit).stream().anyMatch(l -> l.maker() == Limit.Maker.NEEDED);
            if (needed && manual == Manual.WHAT_IS_NEEDED && limit.endsWith("-voltage-other")) {
                figures.add(new MakerFigure(limit, null, Quantity.parse("24 V"), null, null, "Merle workshop manual", "12", "ida", null));
            } else if (needed && manual == Manual.WHAT_IS_NEEDED && limit.endsWith("-unmarked")) {
                boolean disc = limit.startsWith("brakes.disc");
                figures.add(new MakerFigure(limit, null, disc ? Quantity.parse("4 mm") : null, disc ? null : Quantity.parse("161 mm"), null, "Merle workshop manual", "12", "ida", null));
            } else if (needed && manual == Manual.WHAT_IS_NEEDED) {
                MakerFigure known = FIGURES.get(limit);
                figures.add(new MakerFigure(limit, null, null, null, known == null ? Quantity.parse("4 %") : known.nominal(), "Merle workshop manual", "12", "ida", null));
            } else {
                none.add(limit);
            }
        }
        return new MakerFigures(List.copyOf(figures), List.copyOf(none));
    }

    /** The bare record with a good entry for everything it is asked, and for what that brings up. Work comes an hour before the proofs. */
    static synchronized JobRecord ready(JobRecord bare) {
        return READY.computeIfAbsent(bare, ReadyMachine::written);
    }

    private static JobRecord written(JobRecord bare) {
        JobRecord record = bare;
        Map<String, Entry> byKey = new TreeMap<>();
        for (int round = 0, before = -1; round < ROUNDS && before < byKey.size(); round++) {
            before = byKey.size();
            for (List<Wanted> wanted : wanted(record).values()) {
                byKey.computeIfAbsent(wanted.get(0).key(), key -> entry("e" + (byKey.size() + 1), bare, wanted));
            }
            byKey.values().removeIf(e -> e.deed() != Deed.DONE && e.is() == null);
            record = RandomRecords.with(bare, List.copyOf(byKey.values()));
        }
        return record;
    }

    private static boolean isReadApart(Wanted wanted) {
        return wanted.card().wants().stream().filter(want -> want.aspect().equals(wanted.aspect()) || wanted.countsTogether())
                .anyMatch(want -> Examples.BOOK.library().assembly().isReadApart(wanted.card(), want.aspect()));
    }

    private static Map<String, List<Wanted>> wanted(JobRecord record) {
        Conclusions concluded = Assessor.conclude(record, Examples.BOOK, Examples.DAY);
        Map<String, List<Wanted>> byKey = new TreeMap<>();
        Examples.BOOK.cards().values().stream().filter(c -> record.seeks().stream().anyMatch(c.gates()::contains)).flatMap(c -> concluded.required(c.id()).stream()).flatMap(r -> concluded.of(r, Wanted.class).stream())
                .sorted(Comparator.comparing((Wanted w) -> w.card().id()).thenComparing(Wanted::name)).forEach(w -> byKey.computeIfAbsent(w.key(), k -> new ArrayList<>()).add(w));
        return byKey;
    }

    private static Entry entry(String id, JobRecord record, List<Wanted> wanted) {
        Wanted first = wanted.get(0);
        String aspect = first.want().aspect();
        Deed deed = wanted.stream().map(w -> w.want().weakest()).min(Comparator.naturalOrder()).orElseThrow();
        if (first.want().weakest() == Deed.DONE) {
            int turn = TURNS.indexOf(aspect);
            return new Entry(id, ago(record, 55 - turn), "ida", Deed.DONE, first.point(), aspect, null, null, null, null, null, 0);
        }
        Value good = good(record.machine(), wanted);
        String with = deed == Deed.MEASURED && good instanceof Value.Amount amount ? instrument(amount.measured().value()).orElse(null) : null;
        Value is = good instanceof Value.Amount amount ? new Value.Amount(new Measured(amount.measured().value(), with == null ? null : least(with, amount.measured().value()))) : good;
        return new Entry(id, ago(record, wanted.stream().anyMatch(ReadyMachine::isReadApart) ? APART : PROVEN), record.people().get(record.onePerson() ? 0 : 1).id(), deed, first.point(), aspect, is, with, null, null, null, 0);
    }

    /** So many minutes before the moment of judgement, as the clock of the workshop shows it. */
    static Moment ago(JobRecord record, int minutes) {
        LocalDateTime then = LocalDateTime.ofInstant(Examples.DAY.minusSeconds(60L * minutes), record.zone());
        return new Moment(then.toLocalDate(), then.toLocalTime(), record.zone());
    }

    private static Value good(Machine machine, List<Wanted> wanted) {
        Wanted first = wanted.get(0);
        if (Set.of("number", "number-in-papers").contains(first.want().aspect())) {
            return new Value.Code(first.point().equals("engine") ? machine.engineNumber() : machine.frameNumber());
        }
        Value made = GoodResult.of(wanted);
        String besides = GoodEntries.BESIDES.get(first.want().aspect());
        Value other = besides == null ? BY_ASPECT.get(first.want().aspect()) : new Value.Amount(Measured.parse(besides));
        Value seen = BY_PLACE.getOrDefault(first.key(), BY_PLACE.getOrDefault(alike(first.key()), other));
        boolean fits = seen instanceof Value.Amount amount && wanted.stream().filter(Wanted::judged).map(Wanted::limit).filter(l -> l != null && l.applied() != null)
                .allMatch(l -> l.applied().bounds().standing(amount.measured()) == Bounds.Standing.INSIDE);
        return made == null || fits ? forItsBattery(machine, seen) : made;
    }

    /** The examples have batteries of 12 V. */
    private static Value forItsBattery(Machine machine, Value value) {
        return value instanceof Value.Amount amount && amount.measured().value().unit() == Unit.VOLTS && machine.volts() == 6
                ? new Value.Amount(new Measured(amount.measured().value().times(new BigDecimal("0.5")), null)) : value;
    }

    /** The kind of instrument that reads this most closely. */
    static Optional<String> instrument(Quantity value) {
        return Examples.BOOK.vocabulary().instruments().keySet().stream().sorted().filter(k -> least(k, value) != null && least(k, value).value().signum() > 0)
                .min(Comparator.comparing((String k) -> least(k, value).differenceTo(value.unit()).value()));
    }

    /** The least uncertainty the table believes of an instrument for this reading, or null when it cannot read it. */
    static Quantity least(String kind, Quantity value) {
        Vocabulary.InstrumentKind table = Examples.BOOK.vocabulary().instruments().get(kind);
        Quantity least = table.leastUncertainty().get(value.unit().dimension());
        if (least == null || least.unit().dimension() != Unit.Dimension.RATIO || value.unit().dimension() == Unit.Dimension.RATIO) {
            return least;
        }
        BigDecimal part = value.value().abs().multiply(least.value()).movePointLeft(2).stripTrailingZeros();
        return new Quantity(part.scale() < 0 ? part.setScale(0) : part, value.unit());
    }
}
