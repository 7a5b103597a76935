package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Danger;
import chock.record.Deed;
import chock.record.DescriptionChange;
import chock.record.DescriptionField;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Inspection;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.LocalLaw;
import chock.record.MakerFigure;
import chock.record.MakerFigures;
import chock.record.Moment;
import chock.record.NoteIs;
import chock.record.Person;
import chock.record.RecordForm;
import chock.record.RecordReader;
import chock.record.RecordWriter;
import chock.record.Spelling;
import chock.record.UnusableInput;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.rulebook.Limit;
import chock.rulebook.Coordinates;
import chock.rulebook.RuleBook;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Year;
import java.time.YearMonth;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The machine and the record a scenario puts together, and the judgement passed on them. One for each scenario. */
final class Bench {
    static final String INSPECTOR = "ida";
    /** Work that nobody may enter without the cause that was found. */
    private static final String EXAMINED = "examined";
    /** With a certificate no less is believed than this share of what the table gives an instrument. */
    private static final BigDecimal FINEST_BELIEVED = new BigDecimal("0.1");
    static final ZoneId ZONE = ZoneId.of("Europe/London");

    private final RuleBook book;
    private final Map<String, Ready> readyBefore;
    private final List<Entry> entries = new ArrayList<>();
    private final List<MakerFigure> figures = new ArrayList<>();
    private final Set<String> noneFound = new TreeSet<>();
    private final List<LocalLaw.Line> law = new ArrayList<>();
    private final List<Instrument> instruments = new ArrayList<>();
    private static final LocalTime FIRST_ENTRY = LocalTime.of(9, 0);
    /** Late enough to be good still at noon, where two hours are the most. */
    private static final LocalTime FIRST_ENTRY_TODAY = LocalTime.of(10, 30);
    /** Behind everything that was written to make it ready. */
    private static final LocalTime FIRST_ENTRY_OF_A_READY_MACHINE = LocalTime.of(11, 50);
    /** Entries that made the machine ready. */
    private int writtenBefore;
    LocalTime time = LocalTime.NOON;
    Coordinates workshop;
    LocalDate today = LocalDate.of(2026, 11, 25);
    String territory = "GB";
    boolean onePerson;
    int form = RecordForm.NEWEST;

    final Draft draft = new Draft();
    private LocalDate lastDayOfCalibration;
    /** What readings are taken with is named after: the first set of instruments, or the second. */
    private String set = "";
    private Instrument tool;
    /** What is measured with, where a scenario says it; then the table gives the uncertainty of a reading that has none. */
    private Vocabulary.InstrumentKind kind;
    private final Set<String> byTable = new HashSet<>();
    private LocalDate lastDayOfTool;
    private JobRecord record;
    private final Map<Gate, Assessment> judged = new EnumMap<>(Gate.class);
    private final List<Expected> expected = new ArrayList<>();

    Bench(RuleBook book) {
        this(book, new ConcurrentHashMap<>());
    }

    /** @param readyBefore what other scenarios of this rehearsal made ready already, by what they described */
    Bench(RuleBook book, Map<String, Ready> readyBefore) {
        this.book = book;
        this.readyBefore = readyBefore;
        book.limits().stream().filter(l -> l.maker() != Limit.Maker.NONE).map(Limit::id).forEach(noneFound::add);
    }

    /** Writes a good result for everything that is asked of the machine as it is described so far. */
    void ready(List<Gate> gates) {
        if (!entries.isEmpty()) {
            throw new NotUnderstood("make the machine ready before the first entry");
        }
        String described = gates + " " + today + " " + territory + " " + onePerson + " " + form + " " + figures + " " + law + " " + draft.machine();
        Ready ready = readyBefore.computeIfAbsent(described, key -> new Ready(book, record(), judgedAt()).madeFor(gates));
        record = null;
        entries.addAll(ready.record().entries());
        instruments.addAll(ready.record().instruments());
        figures.clear();
        figures.addAll(ready.record().maker().figures());
        ready.record().maker().figures().forEach(figure -> noneFound.remove(figure.limit()));
        writtenBefore = entries.size();
    }

    /** Takes away everything that was written for a check. */
    void takeAway(String check) {
        known(check);
        Set<String> keys = Ready.keysOf(book, book.cards().get(check), record(), judgedAt());
        record = null;
        int all = entries.size();
        entries.removeIf(entry -> keys.contains(Entry.key(entry.point(), entry.what())));
        writtenBefore = Math.max(0, writtenBefore - (all - entries.size()));
        if (all == entries.size()) {
            throw new NotUnderstood("nothing was written for " + check);
        }
    }

    /** Adds evidence: the verb is the kind of evidence. */
    void evidence(String by, String point, Deed deed, String aspect, String written, Ago ago) {
        Vocabulary.Aspect known = book.vocabulary().aspects().get(aspect);
        if (known == null) {
            throw unknown("no check asks for", aspect, book.vocabulary().aspects().keySet());
        }
        checkPoint(point);
        Value value = switch (known.form()) {
            case AMOUNT -> new Value.Amount(deed == Deed.MEASURED ? reading(written) : Measured.parse(written));
            case ANSWER -> answer(known, written);
            case DAYS -> days(written);
            case CODE -> new Value.Code(written);
        };
        add(by, deed, point, aspect, value, deed == Deed.MEASURED ? instrument(((Value.Amount) value).measured()) : null, ago);
    }

    void work(String by, String point, String work, Ago ago) {
        if (!book.vocabulary().works().containsKey(work)) {
            throw unknown("nobody here knows the work", work, book.vocabulary().works().keySet());
        }
        checkPoint(point);
        add(by, Deed.DONE, point, work, null, null, ago);
        if (work.equals(EXAMINED)) {
            Entry e = entries.remove(entries.size() - 1);
            entries.add(new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), null, null, null, "the noise came from the stand", null, NoteIs.REMARK, Set.of(), e.line()));
        }
    }

    /** @param set what the instrument was set to, or null when that was not written */
    void work(String by, String point, String work, Quantity set, Ago ago) {
        Vocabulary.Tooled tooled = book.vocabulary().tooled().get(work);
        if (tooled == null) {
            throw unknown("no instrument is used for the work", work, book.vocabulary().tooled().keySet());
        }
        checkPoint(point);
        if (tool == null) {
            tool = new Instrument("tool", tooled.with(), null, today.minusYears(1), lastDayOfTool == null ? today.plusYears(1) : lastDayOfTool);
        }
        add(by, Deed.DONE, point, work, set == null ? null : new Value.Amount(new Measured(set, null)), tool.id(), ago);
    }

    void toolFoundOut(Ago ago) {
        if (tool == null) {
            throw new NotUnderstood("say first what work was done with it");
        }
        add(INSPECTOR, Deed.FOUND_OUT, tool.id(), "reads low at the master", null, null, ago);
    }

    void toolRanOutOfCalibration(Ago ago) {
        if (tool != null) {
            throw new NotUnderstood("say when its calibration ran out before the first work done with it");
        }
        lastDayOfTool = today.minus(ago.days());
    }

    void makerGivesNone(String id) {
        Set<String> known = new TreeSet<>(book.vocabulary().limits().keySet());
        book.vocabulary().tooled().values().forEach(tooled -> known.add(tooled.noneFound()));
        if (!known.contains(id)) {
            throw unknown("no figure of a maker is asked for", id, known);
        }
        noneFound.add(id);
    }

    /** The last entry made the machine what it is; until then this field was something else. */
    void changed(String field, String from) {
        checkField(field, from);
        Entry because = entries.get(entries.size() - 1);
        draft.changes.add(new DescriptionChange(because.at(), because.by(), field, from, draft.machine().fields().get(field), because.id(), 0));
    }

    void builtWith(String field, String value) {
        checkField(field, value);
        draft.builtWith.put(field, value);
    }

    void checkField(String field, String value) {
        if (!DescriptionField.names().contains(field)) {
            throw unknown("the description has no field", field, DescriptionField.names());
        }
        List<String> known = DescriptionField.valuesOf(field);
        if (value != null && !known.isEmpty() && !known.contains(value)) {
            throw new NotUnderstood("'" + value + "' is no value of " + field + "; write one of " + String.join(", ", known));
        }
    }

    void inspected(String result, Ago ago) {
        add(INSPECTOR, Deed.INSPECTED, "machine", result, new Value.Code("L-2231"), null, ago);
        note(new Inspection("test certificate 4471", "Ann Sorrel", null).toString(), null);
    }

    private void checkPoint(String point) {
        if (!book.vocabulary().points().contains(point)) {
            throw unknown("no machine has the place", point, book.vocabulary().points());
        }
    }

    private Measured reading(String written) {
        Measured measured = Measured.parse(written);
        if (measured.uncertainty() != null) {
            return measured;
        }
        if (kind == null) {
            throw new NotUnderstood("'" + written + "': write the uncertainty, such as 3.1 mm ± 0.1 mm, or say before what kind of instrument is taken");
        }
        Quantity least = kind.leastOf(measured.value()).orElseThrow(() -> new NotUnderstood("a " + kind.name() + " does not measure '" + written + "'"));
        byTable.add(nextId());
        return new Measured(measured.value(), least);
    }

    private static Value answer(Vocabulary.Aspect aspect, String written) {
        if (!aspect.answers().contains(written)) {
            throw new NotUnderstood("'" + written + "' is no answer to " + aspect.name() + "; write one of " + String.join(", ", aspect.answers()));
        }
        return new Value.Answer(written);
    }

    static Value days(String written) {
        if (written.matches("\\d{4}")) {
            return new Value.Days(Year.parse(written).atDay(1), Year.parse(written).atMonth(12).atEndOfMonth(), written);
        }
        if (written.matches("\\d{4}-\\d{2}")) {
            return new Value.Days(YearMonth.parse(written).atDay(1), YearMonth.parse(written).atEndOfMonth(), written);
        }
        return new Value.Days(LocalDate.parse(written), LocalDate.parse(written), written);
    }

    /**
     * Readings are taken with the coarsest kind of instrument that can give them; where none is fine enough, with the finest and
     * a certificate. All are in calibration unless a scenario says otherwise.
     */
    private String instrument(Measured reading) {
        if (kind != null) {
            return instruments.get(instruments.size() - 1).id();
        }
        Unit.Dimension dimension = reading.value().unit().dimension();
        List<Vocabulary.InstrumentKind> able = book.vocabulary().kindsFor(reading);
        if (able.isEmpty()) {
            throw new NotUnderstood("no instrument reads '" + reading + "'");
        }
        Vocabulary.InstrumentKind coarsest = able.stream().filter(one -> !isFiner(reading, one)).reduce((one, other) -> other).orElse(null);
        Vocabulary.InstrumentKind taken = coarsest == null ? able.get(0) : coarsest;
        String id = set + taken.name() + (coarsest == null ? "-with-certificate-" + dimension.name().toLowerCase(Locale.ROOT) : "");
        if (instruments.stream().noneMatch(one -> one.id().equals(id))) {
            instruments.add(new Instrument(id, taken.name(), coarsest == null ? taken.leastUncertainty().get(dimension).times(FINEST_BELIEVED) : null, null, set.isEmpty() ? lastDayOfCalibration : null, List.of(), coarsest == null ? "C-118" : null));
        }
        return id;
    }

    private static boolean isFiner(Measured reading, Vocabulary.InstrumentKind kind) {
        return reading.uncertainty().differenceTo(reading.value().unit()).value().compareTo(kind.leastOf(reading.value()).orElseThrow().differenceTo(reading.value().unit()).value()) < 0;
    }

    /** Readings without an uncertainty have from now on the one the table gives for this kind. */
    void takeInstrument(String name) {
        kind = book.vocabulary().instruments().get(name);
        if (kind == null) {
            throw unknown("there is no instrument", name, book.vocabulary().instruments().keySet());
        }
        instruments.add(new Instrument(name + "-" + (instruments.size() + 1), name, null, null, null));
    }

    void takeAnotherInstrument() {
        kind = null;
        set = "second-";
    }

    void ranOutOfCalibration(Ago ago) {
        if (!instruments.isEmpty()) {
            throw new NotUnderstood("say when its calibration ran out before the first reading");
        }
        lastDayOfCalibration = today.minus(ago.days());
    }

    void foundOut(Ago ago) {
        String used = entries.stream().filter(entry -> entry.deed() == Deed.MEASURED).reduce((one, other) -> other).map(Entry::with).orElseThrow(() -> new NotUnderstood("say first what was measured with it"));
        add(INSPECTOR, Deed.FOUND_OUT, used, "reads high at the master", null, null, ago);
    }

    /**
     * Replaces the last entry by one with another value.
     *
     * @param deed what kind of entry it is; null for the kind of the one it replaces
     */
    void correct(String by, Deed deed, String written) {
        Entry wrong = entries.get(entries.size() - 1);
        if (wrong.deed() == Deed.DONE) {
            work(by, wrong.point(), written, Ago.ON_THE_DAY);
        } else {
            evidence(by, wrong.point(), deed == null ? wrong.deed() : deed, wrong.what(), written, Ago.ON_THE_DAY);
        }
        correctsWith(wrong);
    }

    /** Replaces the last entry, whatever it was, by evidence. */
    void correct(String by, String point, Deed deed, String aspect, String written) {
        Entry wrong = entries.get(entries.size() - 1);
        evidence(by, point, deed, aspect, written, Ago.ON_THE_DAY);
        correctsWith(wrong);
    }

    private void correctsWith(Entry wrong) {
        Entry right = entries.remove(entries.size() - 1);
        entries.add(new Entry(right.id(), right.at(), right.by(), right.deed(), right.point(), right.what(), right.is(), right.with(), wrong.id(), "read wrongly", null, 0));
    }

    /** Corrects the last entry within the same hour, both of them numbered by the program. */
    void withdraw(String by, String written, int minutes) {
        Entry wrong = entries.remove(entries.size() - 1);
        Moment then = wrong.at();
        entries.add(at(wrong, new Moment(then.date(), then.time(), then.zone(), entries.size() + 1)));
        correct(by, null, written);
        Entry right = entries.remove(entries.size() - 1);
        entries.add(at(right, new Moment(then.date(), then.time().plusMinutes(minutes), then.zone(), entries.size() + 1)));
    }

    private static Entry at(Entry e, Moment at) {
        return new Entry(e.id(), at, e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), e.reason(), e.note(), e.noteIs(), e.dangers(), e.line());
    }

    /** Reports a defect in free words. */
    void defect(String by, String point, String words, Ago ago) {
        checkPoint(point);
        add(by, Deed.DEFECT, point, words, null, null, ago);
    }

    /** What the defect reported last can do. */
    void danger(String word) {
        Danger danger = Arrays.stream(Danger.values()).filter(d -> d.id().equals(word)).findFirst()
                .orElseThrow(() -> unknown("there is no danger", word, Arrays.stream(Danger.values()).map(Danger::id).toList()));
        Entry e = entries.remove(entries.size() - 1);
        entries.add(new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), e.reason(), e.note(), e.noteIs(), Set.of(danger), e.line()));
    }

    /** Closes the defect reported last. */
    void close(String by, Ago ago) {
        Entry defect = entries.stream().filter(e -> e.deed() == Deed.DEFECT).reduce((a, b) -> b).orElseThrow(() -> new NotUnderstood("report a defect before it is closed"));
        add(by, Deed.CLOSED, defect.point(), defect.id(), null, null, ago);
        Entry closed = entries.remove(entries.size() - 1);
        entries.add(new Entry(closed.id(), closed.at(), closed.by(), closed.deed(), closed.point(), closed.what(), null, null, null, "looked at, nothing found", null, closed.line()));
    }

    /** Gives the last entry, a correction or an examination, this reason; the writer says what it is, or null. */
    void reason(String words, NoteIs is) {
        Entry e = entries.isEmpty() ? null : entries.get(entries.size() - 1);
        if (e == null || e.reason() == null) {
            throw new NotUnderstood("correct an entry, or examine something, before the reason for it");
        }
        entries.set(entries.size() - 1, new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), words, e.note(), is, e.dangers(), e.line()));
    }

    /** Leaves the time of day out of the last entry. */
    void forgetTheTime() {
        if (entries.isEmpty()) {
            throw new NotUnderstood("write an entry before its time is left out");
        }
        Entry e = entries.remove(entries.size() - 1);
        entries.add(at(e, new Moment(e.at().date(), null, ZONE)));
    }

    /** Puts a note on the last entry. */
    void note(String words, NoteIs is) {
        if (entries.isEmpty()) {
            throw new NotUnderstood("write an entry before the note on it");
        }
        Entry e = entries.remove(entries.size() - 1);
        entries.add(new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), e.reason(), words, is, e.dangers(), e.line()));
    }

    private void add(String by, Deed deed, String point, String what, Value is, String with, Ago ago) {
        LocalDateTime exactly = ago.before(today.atTime(time));
        LocalDateTime at = exactly == null ? LocalDateTime.of(today.minus(ago.days()), ago.days().isZero() ? writtenBefore > 0 ? FIRST_ENTRY_OF_A_READY_MACHINE : FIRST_ENTRY_TODAY : FIRST_ENTRY).plusMinutes(entries.size() - writtenBefore) : exactly;
        entries.add(new Entry(nextId(), new Moment(at.toLocalDate(), at.toLocalTime(), ZONE), by, deed, point, what, is, with, null, null, null, 0));
    }

    private String nextId() {
        return "e" + (entries.size() + 1);
    }

    void maker(String limit, String point, String sense, Quantity quantity) {
        if (!book.vocabulary().limits().containsKey(limit)) {
            throw unknown("there is no limit", limit, book.vocabulary().limits().keySet());
        }
        figures.add(new MakerFigure(limit, point, sense.equals("at least") ? quantity : null, sense.equals("at most") ? quantity : null,
                sense.equals("is") ? quantity : null, "Lark 250 workshop manual", "61", "ida", "tom"));
        noneFound.remove(limit);
    }

    void makerReadByOne() {
        figures.replaceAll(f -> new MakerFigure(f.limit(), f.point(), f.atLeast(), f.atMost(), f.nominal(), f.document(), f.page(), f.by(), null));
    }

    void noWordFromMaker(String limit) {
        if (!noneFound.remove(limit)) {
            throw unknown("no maker's figure is asked for", limit, noneFound);
        }
    }

    /** @param sense {@code at least} or {@code at most}, or null where that law sets no number */
    void localLaw(String limit, String sense, Quantity quantity, String document) {
        if (!book.vocabulary().law().sides().containsKey(limit)) {
            throw unknown("no local law is asked for", limit, book.vocabulary().law().sides().keySet());
        }
        law.add(new LocalLaw.Line(limit, "at least".equals(sense) ? quantity : null, "at most".equals(sense) ? quantity : null, document, sense == null ? "whole" : "§ 4 (4)",
                today.minusYears(1), INSPECTOR, "tom"));
    }

    void localLawSetsNoOther(String document) {
        book.vocabulary().law().sides().keySet().stream().filter(limit -> law.stream().noneMatch(line -> line.limit().equals(limit))).toList().forEach(limit -> localLaw(limit, null, null, document));
    }

    void noLocalLaw(String limit) {
        if (!law.removeIf(line -> line.limit().equals(limit))) {
            throw new NotUnderstood("say first what the local law sets for " + limit);
        }
    }

    void localLawReadByOne(String limit) {
        if (law.stream().noneMatch(line -> line.limit().equals(limit))) {
            throw new NotUnderstood("say first what the local law sets for " + limit);
        }
        law.replaceAll(line -> line.limit().equals(limit) ? new LocalLaw.Line(limit, line.atLeast(), line.atMost(), line.document(), line.section(), line.asOf(), line.by(), null) : line);
    }

    private NotUnderstood unknown(String what, String word, Collection<String> known) {
        List<String> near = Spelling.nearest(word, known);
        return new NotUnderstood(what + " '" + word + "'" + (near.isEmpty() ? "" : "; did you mean " + near.get(0) + "?"));
    }

    /** Expects something of the judgement, and says at once when it is otherwise. */
    void expect(Expected one) {
        expected.add(one);
        one.otherwise(judgedFor(one), book).ifPresent(found -> {
            throw new AssertionError(found);
        });
    }

    /** Expects something more of the check spoken of last. */
    void expectOfTheSame(Function<String, Expected> more) {
        if (expected.isEmpty() || expected.get(expected.size() - 1).check() == null) {
            throw new NotUnderstood("say first which check it is about, such as: Then brakes.pad-thickness is fault");
        }
        expect(more.apply(expected.get(expected.size() - 1).check()));
    }

    void known(String check) {
        if (!book.cards().containsKey(check)) {
            throw unknown("there is no check", check, book.cards().keySet());
        }
    }

    // A finding is the same at every gate that asks for it; judging one of them is enough.
    private Gate gateFor(Expected one) {
        if (one instanceof Expected.AtOneGate at) {
            return at.gate();
        }
        if (one instanceof Expected.RunEndsAt) {
            return Gate.INDOOR_RUN;
        }
        Set<Gate> asking = book.cards().get(one.check()).gates();
        return judged.keySet().stream().filter(asking::contains).findFirst().orElseGet(() -> asking.stream().min(Comparator.naturalOrder()).orElseThrow());
    }

    // Where a check holds the machine is seen at all gates only; they are judged in one go.
    private Assessment judgedFor(Expected one) {
        if (one instanceof Expected.Holding) {
            Assessment everywhere = Assessor.assess(record(), book.at(workshop), List.of(Gate.values()), judgedAt());
            for (Gate gate : Gate.values()) {
                judged.put(gate, everywhere);
            }
            return everywhere;
        }
        return judged(gateFor(one));
    }

    private Assessment judged(Gate gate) {
        return judged.computeIfAbsent(gate, g -> Assessor.assess(record(), book.at(workshop), List.of(g), judgedAt()));
    }

    JobRecord record() {
        if (record == null) {
            record = readAgain(asPutTogether());
        }
        return record;
    }

    /** As it is read from the file that somebody would have written, so that no scenario rests on a record that {@code assess} refuses. */
    private JobRecord readAgain(JobRecord together) {
        try {
            return RecordReader.read("the record of this scenario", RecordWriter.write(together, byTable), book.vocabulary(), judgedAt()).withoutLines();
        } catch (UnusableInput refused) {
            throw NotUnderstood.refused(refused, together.entries());
        }
    }

    private JobRecord asPutTogether() {
        Person inspector = new Person(INSPECTOR, "Ida Marrow", "inspector");
        return new JobRecord("scenario", "Hollow Vale Motor Works", ZONE, territory, onePerson, List.of(Gate.values()), draft.machine(), new MakerFigures(figures, List.copyOf(noneFound)),
                onePerson ? List.of(inspector) : List.of(inspector, new Person("tom", "Tom Fell", "technician")), tools(), List.copyOf(entries), List.of(), form)
                .with(new LocalLaw(law.stream().filter(line -> line.atLeast() != null || line.atMost() != null).toList(), law.stream().filter(line -> line.atLeast() == null && line.atMost() == null).toList()));
    }

    // Where nothing is said of it, an instrument was calibrated a month before what was first read with it, and due a month after the last.
    private List<Instrument> tools() {
        List<Instrument> all = new ArrayList<>();
        for (Instrument one : instruments) {
            List<LocalDate> days = entries.stream().filter(entry -> one.id().equals(entry.with())).map(entry -> entry.at().date()).sorted().toList();
            LocalDate from = one.calibrated() == null ? (days.isEmpty() ? today : days.get(0)).minusMonths(1) : one.calibrated();
            LocalDate due = one.due() == null ? (days.isEmpty() ? today : days.get(days.size() - 1)).plusMonths(1) : one.due();
            all.add(new Instrument(one.id(), one.kind(), one.uncertainty(), from.isBefore(due) ? from : due.minusMonths(6), due, List.of(), one.certificate()));
        }
        if (tool != null) {
            all.add(tool);
        }
        return List.copyOf(all);
    }

    Instant judgedAt() {
        return today.atTime(time).atZone(ZONE).toInstant();
    }

    /** True until the first expectation: then the record is judged, and what is said later would count for nothing. */
    boolean isOpen() {
        return record == null;
    }

    /** The scenario as it was put together, or null when it expects nothing. */
    Scenario scenario(String place, String name) {
        return expected.isEmpty() ? null : new Scenario(place, name, record(), Set.copyOf(byTable), judgedAt(), workshop, Set.copyOf(judged.keySet()), List.copyOf(expected), found());
    }

    private List<Scenario.Place> found() {
        Set<String> spokenOf = expected.stream().map(Expected::check).filter(Objects::nonNull).collect(Collectors.toSet());
        return judged.values().stream().flatMap(a -> a.gates().stream()).flatMap(g -> g.findings().stream()).filter(f -> spokenOf.contains(f.check()))
                .flatMap(f -> f.places().stream().filter(p -> p.measured() != null).map(p -> new Scenario.Place(f.check(), p))).distinct().toList();
    }
}
