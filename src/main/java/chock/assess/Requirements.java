package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Correction;
import chock.assess.facts.Current;
import chock.assess.facts.Defect;
import chock.assess.facts.Derived;
import chock.assess.facts.Differing;
import chock.assess.facts.Evidence;
import chock.assess.facts.ImpliedWork;
import chock.assess.facts.Judgement;
import chock.assess.facts.MachineFact;
import chock.assess.facts.NothingWritten;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Standing;
import chock.assess.facts.Unwritten;
import chock.assess.facts.Wanted;
import chock.assess.facts.Work;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.NoteIs;
import chock.record.PlausibleDescription;
import chock.record.RareReadings;
import chock.record.RecordForm;
import chock.record.Value;
import chock.record.Vocabulary;
import chock.record.Vocabulary.Form;
import chock.rulebook.Assembled;
import chock.rulebook.Card;
import chock.rulebook.Dangers;
import chock.rulebook.LaidOut;
import chock.rulebook.Limit;
import chock.rulebook.LimitFor;
import chock.rulebook.RuleBook;
import chock.rulebook.Source;
import chock.rulebook.Touch;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The cards and limits as they stand for one machine on one day: what the rules ask when a check is required. */
public final class Requirements {
    private static final int MOST_NAMED = 6;
    private static final Comparator<Work> BY_TIME = Comparator.comparing((Work work) -> work.entry().at().earliest())
            .thenComparing(work -> work.entry().id());

    private final RuleBook book;
    private final JobRecord record;
    private final LocalDate day;
    private final Places<Work> works;
    private final Places<Evidence> evidence;
    private final List<Work> leftOff;
    private final Assembled machine;
    private final List<Work> onEverything;
    private final AskedChecks asked;
    private final Map<Required, LimitFor> limits;
    private final Map<Wanted, List<Work>> undoing = new HashMap<>();
    private final Map<Wanted, LatestWork<Work>> touching = new HashMap<>();
    private final Map<Wanted, LatestWork<ImpliedWork>> implied = new HashMap<>();
    private final Map<Wanted, LatestWork<Work>> mending = new HashMap<>();
    private final Map<String, List<Evidence>> looks = new HashMap<>();
    private final Map<String, Correction> corrections;
    private final List<Evidence> statements;
    private Map<String, List<Evidence>> byKey;
    private Map<String, Long> readElsewhere;
    private Map<String, String> rare;

    /**
     * @param facts what the rules are told of the record
     * @param asked what is asked by the description of the machine
     */
    Requirements(RuleBook book, JobRecord record, LocalDate day, List<Object> facts, AskedChecks asked) {
        this(book, record, day, facts, asked, asked.machine());
    }

    /** For questions about cards and limits alone. */
    Requirements(RuleBook book, JobRecord record, LocalDate day) {
        this(book, record, day, book.library().assembly().of(record.machine().fields()));
    }

    /** The same of a machine whose assembly is known. */
    Requirements(RuleBook book, JobRecord record, LocalDate day, Assembled machine) {
        this(book, record, day, List.of(), AskedChecks.NONE, machine);
    }

    private Requirements(RuleBook book, JobRecord record, LocalDate day, List<Object> facts, AskedChecks asked,
                         Assembled machine) {
        this.book = book;
        this.record = record;
        this.day = day;
        this.asked = asked;
        this.machine = machine;
        this.limits = new HashMap<>(asked.limits());
        this.works = new Places<>(every(Work.class, facts), work -> work.entry().point(), work -> machine.reached(work.entry().what(), work.entry().point()).places());
        this.onEverything = every(Work.class, facts).stream().filter(work -> machine.isEverything(work.entry().what(), work.entry().point())).toList();
        this.leftOff = every(Work.class, facts).stream().filter(work -> work.entry().what().equals("left-off")).toList();
        this.corrections = every(Correction.class, facts).stream().collect(Collectors.toMap(Correction::corrects, correction -> correction));
        List<Evidence> all = every(Evidence.class, facts);
        this.statements = all.stream().filter(Evidence::isStatement).toList();
        this.evidence = new Places<>(all, one -> one.entry().point());
    }

    private static <T> List<T> every(Class<T> kind, List<Object> facts) {
        return facts.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    Card card(Required required) {
        Card card = book.cards().get(required.check());
        if (card == null) {
            throw new IllegalStateException("a rule requires '" + required.check() + "', which has no card");
        }
        return card;
    }

    /** What in the description of the machine cannot be true, each in words without a full stop. */
    public List<String> impossibleDescription() {
        return new PlausibleDescription(book.vocabulary().plausible()).impossible(record.machine()).stream().map(field -> field.says() + ". " + field.advice()).toList();
    }

    /** True when this reading can be true and is rare, and nobody has said yet that it is as read. */
    public boolean isRare(Evidence one) {
        return rare().containsKey(one.id());
    }

    /** The question to put about a rare reading. */
    public String whyRare(Evidence one) {
        return rare().get(one.id());
    }

    private Map<String, String> rare() {
        if (rare == null) {
            rare = RareReadings.of(book.vocabulary(), record.machine(), record.entries());
        }
        return rare;
    }

    /** What in the description can be true and is rare, each as a question. */
    public List<String> rareDescription() {
        return new PlausibleDescription(book.vocabulary().plausible()).rare(record.machine()).stream().map(field -> field.says() + ". " + field.advice()).toList();
    }

    /** Everything the card wants, at the places that belong to this one. */
    public List<Wanted> wantedFor(Required required) {
        List<Wanted> known = asked.wanted(required);
        return known != null ? known : laidOut(required);
    }

    private List<Wanted> laidOut(Required required) {
        Card card = card(required);
        LaidOut laid = book.laidOut(card, required.point());
        LimitFor limit = limitFor(required);
        List<Wanted> wanted = new ArrayList<>(card.wants().size());
        for (int i = 0; i < card.wants().size(); i++) {
            wanted.add(new Wanted(required, card, card.wants().get(i), laid.points().get(i), laid.keys().get(i), laid, book.library().disturbing(), book.library().mendsNothing(),
                    book.library().ofTheDay().has(laid.points().get(i)), book.position(), limit, laid.kinds().get(i), machine));
        }
        return wanted;
    }

    /** True when the card of a check counts some of its readings only when they were taken together. */
    public boolean putsTogether(Required required) {
        return card(required).together() != null;
    }

    /** All work that takes away what was proven there before it, in order of time. */
    public List<Work> worksUndoing(Wanted wanted) {
        return undoing.computeIfAbsent(wanted, w -> {
            List<String> places = new ArrayList<>();
            places.add(w.point());
            if (w.countsTogether()) {
                places.addAll(w.laid().points());
            }
            w.laid().undoneBy().forEach(undoer -> places.add(undoer.point()));
            Set<Work> near = new LinkedHashSet<>(works.touchingOrReaching(places));
            near.addAll(onEverything);
            List<Work> found = new ArrayList<>(near.stream().filter(work -> w.isUndoneBy(work.entry())).toList());
            found.sort(BY_TIME);
            return found;
        });
    }

    /** The last of it that was done there or at a place the card names, and that nobody withdrew. */
    public List<Work> worksTouching(Wanted wanted, Evidence evidence) {
        LatestWork<Work> there = touching.get(wanted);
        if (there == null) {
            there = new LatestWork<>(worksUndoing(wanted).stream().filter(work -> wanted.isTouchedBy(work.entry()))
                    .toList(), work -> work);
            touching.put(wanted, there);
        }
        return there.mayFollow(evidence, wanted, this::isWithdrawn);
    }

    /** The last of the rest: what work elsewhere implies. */
    public List<ImpliedWork> impliedUndoing(Wanted wanted, Evidence evidence) {
        LatestWork<ImpliedWork> elsewhere = implied.get(wanted);
        if (elsewhere == null) {
            elsewhere = new LatestWork<>(worksUndoing(wanted).stream().filter(work -> !wanted.isTouchedBy(work.entry()))
                    .map(work -> new ImpliedWork(work, wanted.impliedBy(work.entry()).orElseThrow())).toList(),
                    ImpliedWork::work);
            implied.put(wanted, elsewhere);
        }
        return elsewhere.mayFollow(evidence, wanted, this::isWithdrawn);
    }

    /** The last reading, certainly later, that cannot have been taken while this was closed; putting one's own slip right is no reading. */
    public List<Evidence> openedSince(Wanted wanted, Evidence closed) {
        List<Evidence> last = new ArrayList<>();
        // A record of the first form has no remark to say how it was read assembled; it is judged as it was.
        if (record.form() < RecordForm.NEWEST) {
            return last;
        }
        for (String key : wanted.openedFor()) {
            for (Evidence reading : byKey().getOrDefault(key, List.of())) {
                boolean later = reading.laterThan(closed) && (last.isEmpty() || reading.newerThan(last.get(0)));
                if (later && wanted.isOpenedFor(reading) && !isOwnSlip(reading)) {
                    last = List.of(reading);
                }
            }
        }
        return last;
    }

    private boolean isOwnSlip(Evidence reading) {
        String first = reading.entry().corrects();
        return first != null && record.entry(first).filter(entry -> entry.by().equals(reading.entry().by())).isPresent();
    }

    private Map<String, List<Evidence>> byKey() {
        if (byKey == null) {
            byKey = statements.stream().collect(Collectors.groupingBy(Evidence::key));
        }
        return byKey;
    }

    private boolean isWithdrawn(Work work) {
        Correction last = corrections.get(work.entry().id());
        return last != null && last.mayReplace(work);
    }

    /** The last work that ends a fault found there and certainly came after it. */
    public List<Work> worksMendingAfter(Wanted wanted, Evidence fault) {
        Moment found = fault.entry().at();
        return mending(wanted).last(found.earliest(), work -> work.entry().at().surelyAfter(found)
                && !corrections.containsKey(work.entry().id()) && wanted.isMendedBy(work.entry(), fault));
    }

    private LatestWork<Work> mending(Wanted wanted) {
        return mending.computeIfAbsent(wanted, w -> {
            List<String> places = new ArrayList<>();
            places.add(w.point());
            w.laid().undoneBy().forEach(undoer -> places.add(undoer.point()));
            w.laid().clearedBy().forEach(cure -> places.add(cure.point()));
            return new LatestWork<>(works.touching(places), work -> work);
        });
    }

    /** All work that may end a fault found there, in order of time. */
    public List<Work> worksMending(Wanted wanted, Evidence fault) {
        List<String> places = new ArrayList<>();
        places.add(wanted.point());
        wanted.laid().undoneBy().forEach(undoer -> places.add(undoer.point()));
        wanted.laid().clearedBy().forEach(cure -> places.add(cure.point()));
        List<Work> near = works.touching(places);
        near.removeIf(work -> !wanted.isMendedBy(work.entry(), fault));
        return near;
    }

    /** True when more than one entry may be read there, so that they may differ: what nobody asks for at its own place is read at the nearest. */
    public boolean isWrittenOfAgain(Wanted wanted) {
        int there = byKey().getOrDefault(wanted.key(), List.of()).size();
        return there > 1 || there + readElsewhere().getOrDefault(wanted.aspect(), 0L) > 1;
    }

    private Map<String, Long> readElsewhere() {
        if (readElsewhere == null) {
            readElsewhere = statements.stream().filter(one -> !asked.areReadAt(one.key())).collect(Collectors.groupingBy(Evidence::aspect, Collectors.counting()));
        }
        return readElsewhere;
    }

    /** Of all that stands of one want, those that cannot both be right, the newest first. */
    public List<Differing> differing(List<Standing> standing) {
        return Differing.among(standing, this::changedBetween);
    }

    /** True when work between two readings of one thing changed what was read: then both may be right. */
    private boolean changedBetween(Standing older, Standing newer) {
        Entry before = older.evidence().entry();
        return worksMending(older.wanted(), older.evidence()).stream().map(Work::entry)
                .anyMatch(work -> !corrections.containsKey(work.id()) && Entry.shared(work.point(), before.point()) > 0 && work.at().surelyAfter(before.at()) && newer.evidence().entry().at().surelyAfter(work.at()));
    }

    /** True of a fault that was worked out from readings of parts. */
    public boolean isOfParts(Judgement fault) {
        return !readingsOfParts(fault).isEmpty();
    }

    /** Ids of the readings of parts that a fault was worked out from; what was read of the machine as a whole no work on a part can end. */
    public List<String> readingsOfParts(Judgement fault) {
        return fault.evidence().stream().filter(id -> !record.entry(id).orElseThrow().point().equals("machine")).toList();
    }

    /** All work that ends the fault as far as one part goes: it undid that reading and mends something, or the card names it, and it certainly came after every reading. */
    public List<Work> worksEnding(Judgement fault, String reading) {
        List<Entry> read = fault.evidence().stream().map(id -> record.entry(id).orElseThrow()).toList();
        List<Work> mending = worksMending(fault, reading);
        mending.removeIf(work -> read.stream().anyMatch(e -> !work.entry().at().surelyAfter(e.at())));
        return mending;
    }

    /** All work that undid one reading of a fault and mends something, or that the card names, and that certainly came after that reading. */
    public List<Work> worksMending(Judgement fault, String reading) {
        Entry entry = record.entry(reading).orElseThrow();
        Evidence one = new Evidence(entry, Entry.key(entry.point(), entry.what()), null);
        Wanted wanted = wantedFor(fault.required()).stream().filter(w -> w.key().equals(one.key())).findFirst().orElse(null);
        if (wanted == null) {
            return new ArrayList<>();
        }
        List<Work> mending = worksMending(wanted, one);
        mending.removeIf(work -> Entry.shared(work.entry().point(), entry.point()) == 0 || !work.entry().at().surelyAfter(entry.at()));
        return mending;
    }

    /** All examinations after the last reading of a fault that name a cause which is no defect, at a part that was read. */
    public List<Work> examinedSince(Judgement fault) {
        List<Entry> read = fault.evidence().stream().map(id -> record.entry(id).orElseThrow()).toList();
        return readingsOfParts(fault).stream().map(id -> record.entry(id).orElseThrow().point()).distinct().flatMap(point -> worksAround(point).stream())
                .filter(work -> work.entry().what().equals("examined") && namesNoDefect(work) && read.stream().allMatch(e -> work.entry().at().surelyAfter(e.at()))).toList();
    }

    /** All work elsewhere that cannot be done without work at this place or on something it carries, in order of time. */
    public List<Work> worksReaching(String place) {
        List<Work> near = works.touchingOrReaching(List.of(place));
        near.removeIf(work -> Entry.covers(place, work.entry().point()) || !machine.reached(work.entry().what(), work.entry().point()).places().contains(place));
        return near;
    }

    /** All work on this place, on what carries it or on something it carries, in order of time. */
    public List<Work> worksAround(String point) {
        return works.touching(List.of(point));
    }

    /** All work that left off for good what this check looks at, or what carries it, in order of time. */
    public List<Work> leftOff(Required required) {
        if (leftOff.isEmpty()) {
            return leftOff;
        }
        Set<String> places = new HashSet<>(Set.of(required.point()));
        places.addAll(book.laidOut(card(required), required.point()).points());
        return leftOff.stream().filter(off -> places.stream().anyMatch(place -> Entry.covers(off.entry().point(), place))).toList();
    }

    /** The last look by somebody else after the work, at this part, at what carries it or at something on it. */
    public List<Evidence> looksAgain(Work work, String part) {
        for (Evidence look : looks.computeIfAbsent(part, this::looksAround)) {
            if (look.entry().at().earliest().isBefore(work.entry().at().latest())) {
                break;
            }
            if (!corrections.containsKey(look.id()) && look.looksAgainAt(work, part)) {
                return List.of(look);
            }
        }
        return List.of();
    }

    private List<Evidence> looksAround(String part) {
        return evidence.touching(List.of(part)).stream().filter(Evidence::isFirstHand)
                .sorted(Comparator.comparing((Evidence look) -> look.entry().at().earliest()).reversed()).toList();
    }

    /** The limit in force for a requirement, or null when its check has none. */
    public LimitFor limitFor(Required required) {
        String id = limitOf(required);
        return id == null ? null : limits.computeIfAbsent(required, r -> book.limitFor(id, r.point(), record, day));
    }

    private String limitOf(Required required) {
        return required.limit() == null ? card(required).limit() : required.limit();
    }

    /** The range in force for a requirement, or null when nothing is in force: a rule that takes its value from it then stays silent. */
    public Bounds boundsFor(Required required) {
        LimitFor limit = limitFor(required);
        return limit == null || limit.lacks() ? null : limit.applied().bounds();
    }

    /**
     * True when a machine that stood since a day stood longer than a limit allows before this was written. It counts to the
     * entry and not to today, so that nothing comes to be asked by the mere lapse of time.
     */
    public boolean stoodLonger(Required required, LocalDate since, Evidence entry) {
        LimitFor limit = limitFor(required);
        if (limit == null || limit.applied() == null) {
            return false;
        }
        Bounds bounds = limit.applied().bounds();
        LocalDate last = since.plus(Judge.period(bounds.high()));
        LocalDate day = entry.entry().at().date();
        return day.isAfter(last) || !bounds.highPasses() && day.equals(last);
    }

    /** The same of a machine, and true of one of which nobody knows since when it stood, as soon as anything was written about it. */
    public boolean stoodLonger(Required required, MachineFact machine, Evidence entry) {
        return machine.laidUpUnknown() || machine.laidUpSince() != null && stoodLonger(required, machine.laidUpSince(), entry);
    }

    /** Every limit that was asked for so far. */
    Map<Required, LimitFor> limits() {
        return limits;
    }

    /** What becomes of checks of which nothing was written. */
    public NothingWritten nothingWritten(Unwritten these) {
        Map<Required, List<Object>> found = new HashMap<>();
        these.checks().forEach(required -> found.put(required, asked.unwritten(required)));
        return new NothingWritten(found);
    }

    /** The checks asked by the description of the machine. */
    AskedChecks asked() {
        return asked;
    }

    boolean hasPartsLeftOff() {
        return !leftOff.isEmpty();
    }

    /** Every limit that the checks required at these gates were held against. */
    Set<Limit> restedOn(Collection<Gate> gates) {
        Set<Limit> rested = new LinkedHashSet<>();
        limits.forEach((required, limit) -> {
            if (card(required).gates().stream().anyMatch(gates::contains)) {
                rested.addAll(limit.rests());
            }
        });
        return rested;
    }

    /** Which further gates this fault closes, and what would keep them open all the same. */
    public List<Card.AlsoCloses> closings(Judgement fault) {
        return book.closings(card(fault.required())).stream().filter(row -> closes(row, fault)).toList();
    }

    private boolean closes(Card.AlsoCloses row, Judgement fault) {
        if (!row.at().isEmpty() && fault.evidence().stream().map(record::entry).flatMap(Optional::stream).noneMatch(e -> row.at().stream().anyMatch(part -> Entry.covers(part, e.point())))) {
            return false;
        }
        if (!row.only().isEmpty()) {
            return fault.evidence().stream().map(record::entry).flatMap(Optional::stream).anyMatch(e -> e.is() instanceof Value.Answer answer && row.only().contains(answer.word()));
        }
        if (row.over() != null) {
            return fault.measured() != null && highest(fault.measured()).compareTo(row.over()) > 0;
        }
        return !row.below() || fault.measured() != null && fault.applied() != null && fault.applied().bounds().low() != null
                && fault.measured().value().compareTo(fault.applied().bounds().low()) <= 0;
    }

    /** What it may be at most, as far as the instrument tells. */
    private static Quantity highest(Measured measured) {
        return measured.uncertainty() == null ? measured.value() : measured.value().plus(measured.uncertainty().differenceTo(measured.value().unit()));
    }

    /** What an open defect can do: what was named with it, and of an answer that is asked of other machines alone, what a fault of those checks can do. */
    public List<String> dangersOfDefect(Judgement defect) {
        Set<String> dangers = new LinkedHashSet<>();
        for (String id : defect.evidence()) {
            Entry entry = record.entry(id).orElseThrow();
            entry.dangers().forEach(danger -> dangers.add(danger.id()));
            if (entry.deed().isEvidence()) {
                book.cards().values().stream().filter(card -> card.wants().stream().anyMatch(want -> want.aspect().equals(entry.what()))).forEach(card -> dangers.addAll(book.dangersOf(card)));
            }
        }
        return List.copyOf(dangers);
    }

    /** The gates that an open defect closes besides those that ask for open defects. */
    public Set<Gate> gatesClosedByDefect(Judgement defect) {
        Set<Gate> gates = book.library().dangers().closes(dangersOfDefect(defect));
        gates.removeAll(card(defect.required()).gates());
        return gates;
    }

    /** What a fault of this check can do, by name. */
    public List<String> dangersOf(Required required) {
        return book.dangersOf(card(required));
    }

    /** Names of the exceptions that this evidence proves. */
    public List<String> exceptionsShownBy(Current current) {
        return book.library().dangers().exceptions().keySet().stream().filter(name -> shows(name, current)).toList();
    }

    /** True when this evidence proves that exception. */
    public boolean shows(String name, Current current) {
        return book.library().dangers().exceptions().get(name).shown().stream().anyMatch(proof -> current.want().equals(proof.want()) && current.required().check().equals(proof.check())
                && (proof.atMost() == null ? proof.answers().contains(current.answer()) : current.measured() != null && current.measured().value().compareTo(proof.atMost()) <= 0));
    }

    /** Names of the exceptions that are proven when this check is met. */
    public List<String> exceptionsMetBy(Required required) {
        return book.library().dangers().exceptions().values().stream().filter(one -> one.shown().stream().anyMatch(proof -> proof.want() == null && proof.check().equals(required.check())))
                .map(Dangers.Exemption::name).toList();
    }

    /** True when a house asks something wherever this is asked. */
    public boolean bringsUp(Required required) {
        return !book.askedWith(required.check(), required.point()).isEmpty();
    }

    /** What a house asks because this is asked. */
    public List<Required> broughtUpBy(Required required) {
        return book.askedWith(required.check(), required.point()).stream().map(asked -> new Required(asked.check(), asked.point())).toList();
    }

    /** What a house asks of every machine. */
    public List<Required> ofEveryMachine() {
        return book.askedOfEveryMachine().stream().map(asked -> new Required(asked.check(), asked.point())).toList();
    }

    /** {@code front brake, hose: refitted 2026-11-20 10:10 by Tom Fell (e4)}. */
    public String wordsFor(Work work) {
        Entry e = work.entry();
        return Points.words(e.point()) + ": " + e.what() + " " + e.at() + " by " + record.nameOf(e.by()) + " (" + e.id() + ")";
    }

    /** True in the room and of the day, where what was found later stands in the place of what was found before. */
    public boolean latestDecidesAt(Evidence said) {
        return book.library().ofTheDay().has(said.entry().point());
    }

    /** True when a check calls this answer bad, or its writer calls the note on it a defect. */
    public boolean isBad(Evidence said) {
        return said.isNotedAsDefect() || said.entry().is() instanceof Value.Answer answer && book.isBad(said.aspect(), answer.word());
    }

    /** {@code front brake: "soft after a minute", reported 2026-11-20 10:10 by Tom Fell (e4)}. */
    public String wordsFor(Defect defect) {
        return Disclosures.words(defect.entry(), record);
    }

    /**
     * True when an entry was corrected soon enough to be a slip of the pen, and nothing else was written about that part
     * in between. Only the program's own numbers prove that.
     */
    public boolean isAtOnce(Correction correction, Evidence slip) {
        Entry first = slip.entry();
        Entry second = correction.entry();
        boolean soon = first.at().seq() > 0 && second.at().seq() > 0 && !second.at().earliest().isAfter(first.at().latest().plus(book.library().withdrawWithin()));
        return soon && record.entries().stream().filter(e -> !e.id().equals(first.id()) && !e.id().equals(second.id()))
                .filter(e -> Entry.covers(e.point(), first.point()) || Entry.covers(first.point(), e.point()))
                .noneMatch(e -> !first.at().surelyAfter(e.at()) && !e.at().surelyAfter(second.at()));
    }

    /** True when it is good evidence of a check whose fault can hurt somebody, with a note that may be a defect. */
    public boolean asksAboutNote(Current current) {
        return current.evidence().hasOpenNote() && isGoodAndCanHurt(current);
    }

    /**
     * True when it is such evidence, corrects another entry, and the reason may tell of the machine: its writer does not say what it is, and
     * it is none of those that tell of the writing alone.
     */
    public boolean asksAboutReason(Current current) {
        Entry entry = current.evidence().entry();
        return entry.corrects() != null && entry.reason() != null && entry.noteIs() == null && !book.library().plainReasons().holds(entry.reason()) && isGoodAndCanHurt(current);
    }

    private boolean isGoodAndCanHurt(Current current) {
        Card card = current.wanted().card();
        return (card.critical() || !book.library().dangers().closes(card.dangers()).isEmpty()) && !current.wanted().faulty(current.evidence());
    }

    /** True when its writer says that what was found, named under reason, is no defect. */
    public boolean namesNoDefect(Work examined) {
        return examined.entry().noteIs() == NoteIs.REMARK;
    }

    /** What an examination leaves open, as a sentence without a full stop. */
    public String whatItLeavesOpen(Work examined) {
        Entry entry = examined.entry();
        return "examined by " + record.nameOf(entry.by()) + " " + entry.at() + " (" + entry.id() + "), cause \"" + entry.reason() + "\": "
                + (entry.noteIs() == NoteIs.DEFECT ? "the writer calls this a defect" : "this ends no fault until its writer says that it is no defect; correct the entry, with note-is: remark");
    }

    /** {@code front brake, control: lever feel sinks, tried 2026-11-20 10:10 by Tom Fell (e4)}. */
    public String wordsFor(Evidence evidence) {
        return Disclosures.words(evidence.entry(), record);
    }

    /** True when this is work that an instrument is used for, of a day from which it counts only with the instrument and what was set. */
    public boolean lacksInstrument(Evidence evidence) {
        return tooledFrom(evidence) && !lacking(evidence).isEmpty();
    }

    /** True when this is such work of an earlier day, or in a record of the first form, and names no instrument: it counts, with a note. */
    public boolean namesNoInstrument(Evidence evidence) {
        return tooled(evidence.entry()) != null && evidence.entry().with() == null && !tooledFrom(evidence);
    }

    /** {@code torqued 2026-11-18 10:00 (e11) names no torque wrench}. */
    public String namesNone(Evidence evidence) {
        Entry e = evidence.entry();
        return e.what() + " " + e.at() + " (" + e.id() + ") names no " + tooled(e).with().replace('-', ' ');
    }

    /** What work lacks to count, in a sentence. */
    public String whatLacks(SetAside aside) {
        Entry e = record.entry(aside.entry()).orElseThrow();
        return e.what() + " " + e.at() + " (" + e.id() + ") names " + String.join(" and ", lacking(new Evidence(e, aside.wanted().key(), null)));
    }

    private List<String> lacking(Evidence evidence) {
        Entry e = evidence.entry();
        Vocabulary.Tooled tooled = tooled(e);
        List<String> lacking = new ArrayList<>();
        if (e.with() == null) {
            lacking.add("no " + tooled.with().replace('-', ' '));
        }
        if (e.is() == null && !record.maker().saysNone(tooled.noneFound(), e.point())) {
            lacking.add("no " + tooled.unit().dimension().words() + ", and the record does not say under none-found that the maker gives none");
        }
        return lacking;
    }

    private Vocabulary.Tooled tooled(Entry entry) {
        return entry.deed() == Deed.DONE ? book.vocabulary().tooled().get(entry.what()) : null;
    }

    private boolean tooledFrom(Evidence evidence) {
        Vocabulary.Tooled tooled = tooled(evidence.entry());
        return tooled != null && record.form() >= RecordForm.NEWEST && !evidence.entry().at().date().isBefore(tooled.from());
    }

    /** What a word in braces stands for in the places of cards. */
    public List<String> placesNamed(String word) {
        return book.library().places().get(word);
    }

    /** The local codes that cover where the machine will be ridden, in words; empty when there is none. */
    public String localCodes() {
        return book.codesOf(record.territory()).stream().map(c -> c.name() + " (" + c.code() + ")").collect(Collectors.joining(", "));
    }

    /** True when one of them is the law of that place itself, not of a union which leaves things open to its parts. */
    public boolean hasLocalCode() {
        return book.codesOf(record.territory()).stream().anyMatch(code -> !code.union());
    }

    /** True when the record has the law of the place, and no code here is that law. */
    public boolean hasRecordedLaw() {
        return book.recordedLaw(record).isPresent();
    }

    /** True when the record has a law of its own though a code here is the law of that place. */
    public boolean hasIdleLaw() {
        return !record.localLaw().isEmpty() && hasLocalCode();
    }

    /** The law of the place as the record has it: documents, days and readers. */
    public String recordedLaw() {
        return book.recordedLaw(record).orElse("");
    }

    /** True when the limit of a check wants the law of the place, and neither a code nor the record settles it. */
    public boolean lacksLaw(Required required) {
        String id = limitOf(required);
        return id != null && book.lacksLaw(id, record, day);
    }

    /** The limits asked of a machine described so of which the law of the place is not known, in words; empty when there is none. */
    public String withoutLaw() {
        List<String> ids = asked.all().stream().filter(this::lacksLaw).map(this::limitOf).distinct().sorted().toList();
        return String.join(", ", ids.subList(0, Math.min(ids.size(), MOST_NAMED))) + (ids.size() > MOST_NAMED ? " and " + (ids.size() - MOST_NAMED) + " more" : "");
    }

    /** True when the card of a check says that this work undoes that evidence: for a check asked only while such evidence stands. */
    public boolean undone(String check, String point, Work work, Evidence evidence) {
        return wantedFor(new Required(check, point)).stream().anyMatch(wanted -> wanted.key().equals(evidence.key()) && work.undoes(wanted, evidence)
                && (!wanted.faulty(evidence) || wanted.isMendedBy(work.entry(), evidence)));
    }

    /** True when this is what was seen last of a thing that decides which limit is asked, and the part was not replaced since. */
    public boolean lastSaw(String point, String aspect, String word) {
        return lastSeen(point, aspect).filter(is -> is instanceof Value.Answer answer && answer.word().equals(word)).isPresent();
    }

    // Empty where nobody saw it at first hand, where the part was replaced since, and where two that may be the last differ.
    private Optional<Value> lastSeen(String point, String aspect) {
        List<Evidence> seen = statements.stream().filter(one -> one.entry().point().equals(point) && one.aspect().equals(aspect) && one.isFirstHand())
                .filter(one -> !corrections.containsKey(one.id()) && !one.impossible()).toList();
        List<Value> last = seen.stream().filter(one -> seen.stream().noneMatch(other -> other.laterThan(one))).filter(one -> worksAround(point).stream()
                .noneMatch(work -> work.entry().what().equals("replaced") && Entry.covers(work.entry().point(), point) && work.mayFollow(one))).map(one -> one.entry().is()).distinct().toList();
        return last.size() == 1 ? Optional.of(last.get(0)) : Optional.empty();
    }

    /**
     * By which of the bands for kinds and heights of headlamps the beam is judged: {@code cut-off low} and its like, or empty where the
     * local code sets no such bands, and where kind or height of the lamp was not seen or the height is too close to tell.
     *
     * @param height id of the limit up to which a lamp counts as low
     */
    public String lampSeen(String height) {
        Bounds low = boundsFor(new Required("electrics.headlamp-aim", "headlamp", height));
        LimitFor band = limitFor(new Required("electrics.headlamp-aim", "headlamp", "electrics.headlamp-aim-cut-off-low"));
        Measured measured = lastSeen("headlamp", "lamp-height").map(is -> is instanceof Value.Amount amount ? amount.measured() : null).orElse(null);
        String kind = lastSaw("headlamp", "beam-pattern", "cut-off") ? "cut-off" : lastSaw("headlamp", "beam-pattern", "hot-spot") ? "hot-spot" : null;
        if (low == null || measured == null || kind == null || band.applied() == null || band.applied().source().kind() == Source.Kind.PRACTICE) {
            return "";
        }
        Bounds high = new Bounds(low.high(), !low.highPasses(), null, false);
        return low.standing(measured) == Bounds.Standing.INSIDE || low.high().equals(measured.value()) && measured.uncertainty() == null ? kind + " low"
                : high.standing(measured) == Bounds.Standing.INSIDE ? kind + " high" : "";
    }

    /** True when the record says that the maker's book was searched for this limit in vain. */
    public boolean makerSaysNone(String limit, String point) {
        return record.maker().figure(limit, point).isEmpty() && record.maker().saysNone(limit, point);
    }

    /** True when there is a maker's figure for this limit, and one person alone has read it. */
    public boolean makerReadByOne(String limit, String point) {
        return record.maker().figure(limit, point).filter(figure -> figure.secondedBy() == null).isPresent();
    }

    /** True when the local code sets this limit for other machines only: registered later, or faster. */
    public boolean exemptByLaw(String limit) {
        return book.exemptByLaw(limit, record);
    }

    /** True when what a rule worked out is a fault, though its limit is not known whole: by itself, or outside of what is known. */
    public boolean isFaultAllTheSame(Derived derived, AsOf now) {
        LimitFor limit = limitFor(derived.required());
        return derived.state() == State.FAULT
                || derived.state() == null && limit != null && limit.applied() != null && Judge.derived(derived, limit, now).state() == State.FAULT;
    }

    /** True of what can be judged by itself: while its limit is not known whole, only what is bad by all that is known. */
    public boolean isJudged(Current current) {
        LimitFor limit = limitFor(current.required());
        return limit == null || !limit.lacks() || current.wanted().faulty(current.evidence())
                && (current.answer() != null || current.measured() != null && limit.applied() != null);
    }

    public boolean lacksLimit(Required required) {
        LimitFor limit = limitFor(required);
        return limit != null && limit.lacks();
    }

    /** What its limit lacks, in a sentence; empty when it has one or needs none. */
    Optional<String> gap(Required required) {
        return lacksLimit(required) ? Optional.of(whyNoLimit(required)) : Optional.empty();
    }

    public String whyNoLimit(Required required) {
        return limitFor(required).gap();
    }

    /** True when this judgement is of the kind that closes the check: a derived one where a rule has to derive it. */
    public boolean settledBy(Judgement judgement) {
        return judgement.want() == null || card(judgement.required()).wants().stream().allMatch(w -> decidesAlone(w));
    }

    private static boolean decidesAlone(Card.Want want) {
        return want.judged() || want.weakest() == Deed.DONE || want.form() == Form.ANSWER;
    }
}
