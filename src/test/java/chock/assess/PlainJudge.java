package chock.assess;

import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.NoteIs;
import chock.record.Value;
import chock.record.Vocabulary.Form;
import chock.rulebook.Assembly;
import chock.rulebook.Assembly.Kind;
import chock.rulebook.Assembly.Level;
import chock.rulebook.Assembly.Reach;
import chock.rulebook.Card;
import chock.rulebook.Holds;
import chock.rulebook.LimitFor;
import chock.rulebook.Touch;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The general reasoning about evidence, written by hand in plain Java without an engine: a second opinion on what the rules
 * say, and the floor under what they may cost. It knows the checks that are settled by what a card says alone; which of them
 * are asked, and the limits in force, it is told.
 */
final class PlainJudge {
    private static final Assembly ASSEMBLY = Examples.BOOK.library().assembly();
    private final JobRecord record;
    private final Instant asOf;
    private final LocalDate today;
    private final Map<String, List<Entry>> evidence = new HashMap<>();
    private final List<Entry> works = new ArrayList<>();
    private final List<Entry> foundOut = new ArrayList<>();
    private final Map<String, List<Entry>> corrections = new HashMap<>();

    private final Map<String, Set<Map.Entry<Level, String>>> implied = new HashMap<>();
    private final List<Wanted> asked;
    private final Set<String> keysAsked = new HashSet<>();

    /** @param asked everything that some check wants of this machine */
    PlainJudge(JobRecord record, Instant asOf, List<Wanted> asked) {
        this.asked = asked;
        asked.forEach(w -> keysAsked.add(w.point() + " " + w.want().aspect()));
        this.record = record;
        this.asOf = asOf;
        this.today = asOf.atZone(record.zone()).toLocalDate();
        for (Entry e : record.entries()) {
            if (e.deed().isEvidence() || e.deed() == Deed.DONE) {
                evidence.computeIfAbsent(e.point() + " " + e.what(), k -> new ArrayList<>()).add(e);
            }
            if (e.deed() == Deed.DONE) {
                works.add(e);
            }
            if (e.deed() == Deed.FOUND_OUT) {
                foundOut.add(e);
            }
            if (e.corrects() != null) {
                corrections.computeIfAbsent(e.corrects(), k -> new ArrayList<>()).add(e);
            }
        }
    }

    /** The state of one check at one place. */
    State state(Required required, List<Wanted> wants, LimitFor limit) {
        Set<State> said = EnumSet.noneOf(State.class);
        if (isLeftOff(required, wants)) {
            return State.FAULT;
        }
        boolean lacksLimit = limit != null && limit.applied() == null;
        boolean missing = lacksLimit;
        boolean stale = false;
        for (Wanted wanted : wants) {
            Card.Want want = wanted.want();
            List<Entry> own = evidence.getOrDefault(wanted.point() + " " + want.aspect(), List.of());
            List<Entry> all = new ArrayList<>(own);
            for (Entry e : astray(wanted)) {
                if (faulty(e, want, limit)) {
                    all.add(e);
                } else if (e.is() instanceof Value.Days && !tooWeak(e, want) && own.stream().noneMatch(o -> o.at().surelyAfter(e.at())) && !isCorrected(e, wanted, limit) && !isUndone(e, wanted)) {
                    said.add(!lacksLimit && decides(want) && alone(e, want, limit) == State.FAULT ? State.FAULT : State.DOUBT);
                }
            }
            List<Entry> stands = new ArrayList<>();
            boolean proof = false;
            boolean unnamed = false;
            for (Entry e : all) {
                boolean corrected = isCorrected(e, wanted, limit);
                boolean weak = tooWeak(e, want) && (!faulty(e, want, limit) || all.stream().anyMatch(o -> !tooWeak(o, want) && o.at().surelyAfter(e.at())));
                boolean bad = faulty(e, want, limit);
                boolean undone = bad ? isMended(e, wanted, all, limit) : isUndone(e, wanted) || wasOpenedToRead(e, wanted);
                boolean old = isTooOld(e, wanted, limit) && (!bad || wanted.card().endsBy() == Card.EndsBy.TIME || wanted.latestDecides());
                boolean dead = undone || old || !bad && (wasOutOfCalibration(e) || wasFoundOut(e));
                boolean settled = bad && isSettled(e, wanted, all, limit);
                proof |= dead;
                boolean names = namesWhatItWasDoneWith(e);
                unnamed |= !names && !corrected && !weak && !dead;
                if (names && !corrected && !weak && !dead && !settled) {
                    stands.add(e);
                }
            }
            missing |= own.isEmpty() || stands.isEmpty() && (!proof || unnamed);
            stale |= stands.isEmpty() && proof;
            for (Entry e : stands) {
                boolean newest = stands.stream().noneMatch(o -> o.at().surelyAfter(e.at()));
                if ((newest || faulty(e, want, limit) && !changesByItself(wanted)) && !lacksLimit && decides(want)) {
                    said.add(alone(e, want, limit));
                }
                for (Entry o : stands) {
                    if (newer(o, e) && !(changesByItself(wanted) && (o.at().surelyAfter(e.at()) || e.at().surelyAfter(o.at()))) && disagree(o, e, want) && !changedBetween(e, o, wanted)) {
                        said.add(State.DOUBT);
                    }
                }
            }
        }
        if (said.contains(State.FAULT)) {
            return State.FAULT;
        }
        return missing ? State.MISSING : stale ? State.STALE : said.contains(State.DOUBT) ? State.DOUBT : said.contains(State.MET) ? State.MET : null;
    }

    /** The part, or what carries it, was left off for good and not fitted since, and the description still has it. */
    private boolean isLeftOff(Required required, List<Wanted> wants) {
        Set<String> places = new HashSet<>(Set.of(required.point()));
        wants.forEach(w -> places.add(w.point()));
        return works.stream().anyMatch(off -> off.what().equals("left-off") && places.stream().anyMatch(place -> carries(off.point(), place))
                && corrections.getOrDefault(off.id(), List.of()).stream().allMatch(c -> c.by().equals(off.by()))
                && works.stream().noneMatch(back -> (back.what().equals("refitted") || back.what().equals("replaced")) && carries(back.point(), off.point())
                        && back.at().surelyAfter(off.at()) && !corrections.containsKey(back.id())));
    }

    /** What was written at places where nothing is asked, and is nearer to this want than to any other of the kind. */
    private List<Entry> astray(Wanted wanted) {
        List<Entry> near = new ArrayList<>();
        for (Entry e : record.entries()) {
            if (e.deed().isEvidence() && e.what().equals(wanted.want().aspect()) && !keysAsked.contains(e.point() + " " + e.what())
                    && asked.stream().noneMatch(w -> w.want().aspect().equals(e.what()) && steps(w.point(), e.point()) > steps(wanted.point(), e.point()))) {
                near.add(e);
            }
        }
        return near;
    }

    /** How far two paths run together. */
    private static int steps(String one, String other) {
        int same = 0;
        String up = one;
        while (!up.isEmpty()) {
            int depth = up.split("/").length;
            if (other.equals(up) || other.startsWith(up + "/")) {
                same = Math.max(same, depth);
            }
            up = up.contains("/") ? up.substring(0, up.lastIndexOf('/')) : "";
        }
        return same;
    }

    /** From December 2026 a torque counts only with the wrench, and with the figure unless the maker gives none. */
    private boolean namesWhatItWasDoneWith(Entry e) {
        if (e.deed() != Deed.DONE || !e.what().equals("torqued") || record.form() == 1 || e.at().date().isBefore(LocalDate.of(2026, 12, 1))) {
            return true;
        }
        return e.with() != null && (e.is() != null || record.maker().saysNone("fasteners.torque", e.point()));
    }

    private static boolean newer(Entry a, Entry b) {
        int order = a.at().earliest().compareTo(b.at().earliest());
        return order > 0 || order == 0 && a.id().compareTo(b.id()) > 0;
    }

    static boolean decides(Card.Want want) {
        return want.form() == Form.ANSWER || want.weakest() == Deed.DONE || want.judged();
    }

    private static boolean tooWeak(Entry e, Card.Want want) {
        return want.weakest() == Deed.DONE ? e.deed() != Deed.DONE : !e.deed().atLeast(want.weakest());
    }

    private static boolean faulty(Entry e, Card.Want want, LimitFor limit) {
        if (want.form() == Form.ANSWER && e.is() instanceof Value.Answer answer) {
            return !want.good().contains(answer.word());
        }
        return want.judged() && want.form() == Form.AMOUNT && e.is() instanceof Value.Amount amount && limit != null && limit.applied() != null
                && (above(amount.measured().value(), limit.applied().bounds()) || below(amount.measured().value(), limit.applied().bounds()));
    }

    private static boolean above(Quantity value, Bounds bounds) {
        int order = bounds.high() == null ? -1 : value.compareTo(bounds.high());
        return order > 0 || order == 0 && !bounds.highPasses();
    }

    private static boolean below(Quantity value, Bounds bounds) {
        int order = bounds.low() == null ? 1 : value.compareTo(bounds.low());
        return order < 0 || order == 0 && !bounds.lowPasses();
    }

    private boolean isCorrected(Entry e, Wanted wanted, LimitFor limit) {
        for (Entry c : corrections.getOrDefault(e.id(), List.of())) {
            boolean asStrong = c.deed().ordinal() <= e.deed().ordinal();
            boolean another = !c.by().equals(e.by());
            boolean bad = faulty(e, wanted.want(), limit);
            if (asStrong && (!bad && e.deed() != Deed.DONE || another && !(bad && wanted.card().critical()))) {
                return true;
            }
            boolean again = asStrong && c.deed().ordinal() <= Deed.SEEN.ordinal() && c.what().equals(e.what()) && (c.point().equals(e.point()) || c.point().equals(wanted.point()));
            if (bad && again && (another || record.onePerson() && triedOnAnotherDay(e, c, wanted, limit))) {
                return true;
            }
        }
        return false;
    }

    private boolean triedOnAnotherDay(Entry bad, Entry correction, Wanted wanted, LimitFor limit) {
        return evidence.getOrDefault(wanted.point() + " " + wanted.want().aspect(), List.of()).stream().anyMatch(o -> o.at().surelyAfter(bad.at()) && !o.at().date().equals(correction.at().date())
                && o.deed().ordinal() <= Math.min(Deed.SEEN.ordinal(), bad.deed().ordinal()) && !faulty(o, wanted.want(), limit));
    }

    private boolean isUndone(Entry e, Wanted wanted) {
        for (Entry work : works) {
            boolean withdrawn = corrections.getOrDefault(work.id(), List.of()).stream().anyMatch(c -> !c.by().equals(work.by()));
            if (!withdrawn && !work.id().equals(e.id()) && mayFollow(work, e, wanted.want()) && undoes(work, wanted)) {
                return true;
            }
        }
        return false;
    }

    /** Something was read later that nobody can read with this closed, and no remark says how. */
    private boolean wasOpenedToRead(Entry closed, Wanted wanted) {
        if (record.form() == 1) {
            return false;
        }
        List<Assembly.ReadApart> rows = ASSEMBLY.apart().getOrDefault(wanted.card().id() + " " + wanted.name(), ASSEMBLY.apart().getOrDefault(wanted.card().id(), List.of()));
        Map<String, String> named = wanted.card().place().match(wanted.required().point(), Examples.BOOK.library().places()).orElseThrow();
        for (Assembly.ReadApart row : rows) {
            for (String place : row.place().points(named, Examples.BOOK.library().places())) {
                for (Entry read : evidence.getOrDefault(place + " " + row.aspect(), List.of())) {
                    boolean such = row.only().isEmpty() || row.only().contains(String.valueOf(read.is()));
                    boolean slip = record.entries().stream().anyMatch(first -> first.id().equals(read.corrects()) && first.by().equals(read.by()));
                    boolean told = read.note() != null && read.noteIs() != NoteIs.DEFECT && read.note().strip().toLowerCase(Locale.ROOT).matches(ASSEMBLY.readAssembled() + "[\\s,;:.-]+\\w.*");
                    if (such && !slip && !told && read.deed().atLeast(Deed.SEEN) && !(read.is() instanceof Value.Impossible) && read.at().surelyAfter(closed.at())) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** A fault: work that mends came certainly later; or the times leave it open, and it was found good since. */
    private boolean isMended(Entry e, Wanted wanted, List<Entry> all, LimitFor limit) {
        for (Entry work : works) {
            if (corrections.containsKey(work.id()) || work.id().equals(e.id()) || e.at().surelyAfter(work.at()) || !mends(work, e, wanted)) {
                continue;
            }
            if (work.at().surelyAfter(e.at()) || goodSince(wanted, all, limit).stream().anyMatch(o -> o.at().surelyAfter(e.at()) && o.at().surelyAfter(work.at()))) {
                return true;
            }
        }
        return false;
    }

    /** The same end was worked on since the older reading and before the newer one, with work that mends. */
    private boolean changedBetween(Entry older, Entry newer, Wanted wanted) {
        return works.stream().anyMatch(work -> !corrections.containsKey(work.id()) && work.at().surelyAfter(older.at()) && newer.at().surelyAfter(work.at()) && Entry.shared(work.point(), older.point()) > 0
                && mends(work, older, wanted));
    }

    private static boolean mends(Entry work, Entry fault, Wanted wanted) {
        for (Touch row : wanted.laid().clearedBy()) {
            boolean near = carries(work.point(), row.point()) || carries(row.point(), work.point());
            if (near && row.works().contains(work.what()) && (row.only().isEmpty() || row.only().contains(String.valueOf(fault.is())))) {
                return true;
            }
        }
        String within = ASSEMBLY.mendsOnlyItself().get(work.point());
        boolean elsewhere = within != null && !carries(within, wanted.point()) || ASSEMBLY.mendsInPlace().contains(work.what()) && !carries(wanted.point(), work.point());
        boolean there = names(work, wanted) && !elsewhere || wanted.disturbing().contains(work.what()) && onOrIn(work, wanted.point());
        return !wanted.mendsNothing().contains(work.what()) && !spares(work.what(), work.point(), wanted) && there;
    }

    /** Good evidence that counts by itself. */
    private List<Entry> goodSince(Wanted wanted, List<Entry> all, LimitFor limit) {
        return all.stream().filter(o -> !faulty(o, wanted.want(), limit) && !isCorrected(o, wanted, limit) && !tooWeak(o, wanted.want()) && !isUndone(o, wanted) && !wasOpenedToRead(o, wanted) && !isTooOld(o, wanted, limit)
                && !wasOutOfCalibration(o) && !wasFoundOut(o)).toList();
    }

    /** A fault that a look or an answer with its document ends, or one whose cause was examined and that another person found good since. */
    private boolean isSettled(Entry e, Wanted wanted, List<Entry> all, LimitFor limit) {
        for (Entry good : goodSince(wanted, all, limit)) {
            Card.EndsBy ends = wanted.card().endsBy();
            boolean documented = good.note() != null && !good.note().isBlank();
            if (good.at().surelyAfter(e.at()) && (ends == Card.EndsBy.LOOK || ends == Card.EndsBy.DOCUMENT && documented)) {
                return true;
            }
            for (Entry look : works) {
                boolean here = look.what().equals("examined") && (carries(look.point(), wanted.point()) || carries(wanted.point(), look.point()));
                boolean another = !good.by().equals(look.by()) && good.at().surelyAfter(look.at()) || record.onePerson() && good.at().date().isAfter(look.at().date());
                if (here && another && look.at().surelyAfter(e.at()) && !corrections.containsKey(look.id())) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean undoes(Entry work, Wanted wanted) {
        return !spares(work.what(), work.point(), wanted) && (takes(work, wanted) || names(work, wanted)) || reaches(work, wanted);
    }

    private static boolean spares(String what, String at, Wanted wanted) {
        return wanted.laid().survives().stream().anyMatch(s -> s.works().contains(what) && s.point().equals(at));
    }

    /** What the table says of such work on the part itself, on what carries it, or on the whole machine. */
    private static boolean takes(Entry work, Wanted wanted) {
        boolean disturbing = wanted.disturbing().contains(work.what());
        boolean on = onOrIn(work, wanted.point());
        boolean whole = ASSEMBLY.whole().containsKey(work.point()) && ASSEMBLY.whole().get(work.point()).contains(work.what());
        if (wanted.kind() == null) {
            return disturbing && (on || whole);
        }
        Set<Kind> taken = ASSEMBLY.takes().getOrDefault(work.what(), Set.of());
        if (whole) {
            return (taken.contains(wanted.kind()) || ASSEMBLY.takes().get("stripped").contains(wanted.kind())) && !Set.of(Kind.WHOLE, Kind.DAY, Kind.MARKING).contains(wanted.kind());
        }
        return taken.contains(wanted.kind()) && (work.point().equals(wanted.point()) || disturbing && on);
    }

    /** A wheel that comes off whole is no work on its tyre. */
    private static boolean onOrIn(Entry work, String place) {
        boolean asOne = ASSEMBLY.units().contains(work.point()) && (work.what().equals("removed") || work.what().equals("refitted"));
        return work.point().equals(place) || !asOne && carries(work.point(), place);
    }

    private static boolean names(Entry work, Wanted wanted) {
        boolean disturbing = wanted.disturbing().contains(work.what());
        for (Touch row : wanted.laid().undoneBy()) {
            if ((row.only().isEmpty() || row.only().contains(wanted.name())) && (row.works().isEmpty() ? disturbing : row.works().contains(work.what())) && (onOrIn(work, row.point()) || carries(row.point(), work.point()))) {
                return true;
            }
        }
        return false;
    }

    /** Work elsewhere that cannot be done without work here: each row is gone over again until no new place turns up. */
    private boolean reaches(Entry work, Wanted wanted) {
        return implied.computeIfAbsent(work.point() + " " + work.what(), key -> implied(work)).stream().anyMatch(d -> takes(d.getKey(), d.getValue(), wanted));
    }

    private Set<Map.Entry<Level, String>> implied(Entry work) {
        Map<String, String> fields = record.machine().fields();
        Set<Map.Entry<Level, String>> done = new HashSet<>();
        if (ASSEMBLY.like().containsKey(work.what())) {
            done.add(Map.entry(ASSEMBLY.like().get(work.what()), work.point()));
        }
        for (int before = -1; before < done.size();) {
            before = done.size();
            Set<String> places = new HashSet<>(Set.of(work.point()));
            done.forEach(d -> places.add(d.getValue()));
            for (String place : places) {
                for (Reach row : ASSEMBLY.reach().getOrDefault(place, List.of())) {
                    boolean begun = place.equals(work.point()) && row.works().contains(work.what())
                            || done.stream().anyMatch(d -> d.getValue().equals(place) && ASSEMBLY.actsLike().get(d.getKey()).stream().anyMatch(row.works()::contains));
                    if (begun && row.when().entrySet().stream().allMatch(w -> w.getValue().contains(fields.get(w.getKey())))) {
                        row.implies().forEach((level, others) -> others.forEach(other -> done.add(Map.entry(level, other))));
                    }
                }
            }
        }
        return done;
    }

    private static boolean takes(Level level, String at, Wanted wanted) {
        Set<String> like = ASSEMBLY.actsLike().get(level);
        if (like.stream().allMatch(what -> spares(what, at, wanted))) {
            return false;
        }
        boolean disturbing = like.stream().anyMatch(wanted.disturbing()::contains);
        boolean lasting = wanted.kind() == Kind.SUBSTANCE || wanted.kind() == Kind.MARKING;
        if (at.equals(wanted.point()) && (wanted.kind() == null ? disturbing : ASSEMBLY.acts().get(level).contains(wanted.kind()))) {
            return true;
        }
        return !(lasting && level != Level.NEW) && wanted.laid().undoneBy().stream().anyMatch(row -> (row.only().isEmpty() || row.only().contains(wanted.name())) && carries(row.point(), at)
                && (row.works().isEmpty() ? disturbing : like.stream().anyMatch(row.works()::contains)));
    }

    private static boolean carries(String above, String below) {
        return below.equals(above) || below.startsWith(above + "/");
    }

    private boolean isTooOld(Entry e, Wanted wanted, LimitFor limit) {
        Holds holds = holds(wanted);
        if (holds.hours() != null) {
            return !asOf.isBefore((faulty(e, wanted.want(), limit) ? e.at().latest() : e.at().earliest()).plus(holds.hours()));
        }
        Instant lapse = holds.lapse(e.at(), e.at().earliest(), Optional.empty());
        return lapse != null && !asOf.isBefore(lapse);
    }

    private static Holds holds(Wanted wanted) {
        return wanted.want().holds() == null ? wanted.card().holds() : wanted.want().holds();
    }

    /** The weather and the like: as it was found last. */
    private static boolean changesByItself(Wanted wanted) {
        return wanted.point().matches("(outdoors|ride|rider|room|bay|run-plan)(/.*)?") && !wanted.point().matches("room/run(/.*)?")
                && (holds(wanted).sameDay() || holds(wanted).hours() != null);
    }

    /** True when the work may have come after what the entry speaks of, or while that was still being watched. */
    private static boolean mayFollow(Entry work, Entry e, Card.Want want) {
        Instant began = e.at().earliest();
        if (want.covers() && e.is() instanceof Value.Amount watched) {
            began = began.minusSeconds(watched.measured().value().to(Unit.SECONDS).value().longValue());
        }
        return !e.at().surelyAfter(work.at()) || want.covers() && !began.isAfter(work.at().latest());
    }

    private Instrument instrument(Entry e) {
        return e.with() == null ? null : record.instrument(e.with()).orElseThrow();
    }

    private boolean wasOutOfCalibration(Entry e) {
        Instrument with = instrument(e);
        return with != null && (e.at().date().isBefore(with.calibrated()) || e.at().date().isAfter(with.due()));
    }

    private boolean wasFoundOut(Entry e) {
        Instrument with = instrument(e);
        for (Entry f : foundOut) {
            boolean mended = with != null && with.calibrated().isAfter(f.at().date()) && !e.at().date().isBefore(with.calibrated());
            if (with != null && with.id().equals(f.point()) && !mended) {
                return true;
            }
        }
        return false;
    }

    private State alone(Entry e, Card.Want want, LimitFor limit) {
        if (want.weakest() == Deed.DONE) {
            return State.MET;
        }
        if (e.is() instanceof Value.Answer answer) {
            return want.good().contains(answer.word()) ? State.MET : State.FAULT;
        }
        Bounds bounds = limit.applied().bounds();
        if (e.is() instanceof Value.Days days) {
            LocalDate last = days.from().plus(Period.ofMonths(bounds.high().to(Unit.MONTHS).value().intValueExact()));
            return today.isAfter(last) || today.equals(last) && !bounds.highPasses() ? State.FAULT : State.MET;
        }
        Measured measured = ((Value.Amount) e.is()).measured();
        if (above(measured.value(), bounds) || below(measured.value(), bounds)) {
            return State.FAULT;
        }
        boolean tooClose = withinUncertainty(measured, bounds.high()) || withinUncertainty(measured, bounds.low());
        return tooClose ? State.DOUBT : State.MET;
    }

    private static boolean withinUncertainty(Measured measured, Quantity bound) {
        if (bound == null || measured.uncertainty() == null) {
            return false;
        }
        BigDecimal apart = measured.value().to(bound.unit()).value().subtract(bound.value()).abs();
        return apart.compareTo(measured.uncertainty().differenceTo(bound.unit()).value()) <= 0;
    }

    private static boolean disagree(Entry first, Entry second, Card.Want want) {
        if (want.varies() || want.weakest() == Deed.DONE || !(first.is() instanceof Value.Amount a) || !(second.is() instanceof Value.Amount b)) {
            return false;
        }
        Quantity apart = a.measured().value().minus(b.measured().value().to(a.measured().value().unit())).abs();
        BigDecimal both = square(a.measured(), apart).add(square(b.measured(), apart));
        return apart.value().pow(2).compareTo(both) > 0;
    }

    private static BigDecimal square(Measured measured, Quantity in) {
        return measured.uncertainty() == null ? BigDecimal.ZERO : measured.uncertainty().differenceTo(in.unit()).value().pow(2);
    }
}
