package chock.assess;

import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.facts.Current;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Vocabulary.Form;
import chock.rulebook.Card;
import chock.rulebook.Look;
import chock.rulebook.RuleBook;
import chock.rulebook.Touch;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds the order of work. What remains is learnt by writing the steps found so far into a trial copy of the record, with
 * good results supposed, and asking the rules again: work kills proofs, and those come back as steps. When nothing new
 * turns up, the steps are sorted so that work comes before every proof it would undo.
 */
final class Planner {
    /** Each round adds what the work of the one before undoes; the point tree is four deep. */
    private static final int ROUNDS = 12;
    /** Everything that putting right a part can come to. */
    private static final List<String> ANY_WORK = List.of("removed", "opened", "stripped", "repaired", "replaced", "refitted");
    /** What it is supposed to come to where nobody knows: when it takes more, such as another part, more is asked for once that is written. */
    private static final List<String> MENDED = List.of("removed", "repaired", "refitted");

    /** The work that ends what was begun, where putting back is not it. */
    private static final Map<String, String> CLOSING = Map.of("loosened", "tightened", "drained", "filled");

    private final JobRecord record;
    private final RuleBook book;
    private final Gate gate;
    private final Instant asOf;
    private final Map<String, Task> tasks = new LinkedHashMap<>();
    /** What can be settled by a step that is there anyway, and so is settled last. */
    private final List<Runnable> besides = new ArrayList<>();
    private Set<String> provenNow = Set.of();
    private List<Task> tried = List.of();

    Planner(JobRecord record, RuleBook book, Gate gate, Instant asOf) {
        this.record = record;
        this.book = book;
        this.gate = gate;
        this.asOf = asOf;
    }

    OrderOfWork plan() {
        Conclusions now = Assessor.conclude(record, book, asOf);
        provenNow = now.standing().stream().filter(s -> !s.faulty()).map(s -> s.wanted().key()).collect(Collectors.toSet());
        collect(now, record);
        List<Task> sorted = sorted();
        for (int round = 0; round < ROUNDS && sorted != null; round++) {
            int before = size();
            JobRecord trial = trial(sorted);
            collect(Assessor.conclude(trial, book, asOf.plusSeconds(trial.entries().size())), trial);
            if (size() == before) {
                break;
            }
            sorted = sorted();
        }
        Disclosures told = Disclosures.of(record, book, now);
        return sorted == null ? new OrderOfWork(record, gate, asOf, List.of(), told, ring()) : new OrderOfWork(record, gate, asOf, steps(sorted), told, List.of());
    }

    private int size() {
        return tasks.values().stream().mapToInt(t -> 1 + t.wanted.size() + t.corrects.size() + t.follows.size()).sum();
    }

    private JobRecord trial(List<Task> sorted) {
        tried = sorted;
        List<Entry> entries = new ArrayList<>(record.entries());
        ZonedDateTime time = asOf.atZone(record.zone());
        for (int i = 0; i < sorted.size(); i++) {
            List<Moment> moments = new ArrayList<>();
            for (int line = 0; line < Math.max(1, sorted.get(i).works.size()); line++) {
                time = time.plusSeconds(1);
                moments.add(new Moment(time.toLocalDate(), time.toLocalTime(), record.zone()));
            }
            entries.addAll(sorted.get(i).supposed("~" + i, moments, book.vocabulary().tooled()));
        }
        return record.withEntries(entries).withInstruments(instruments(time.toLocalDate()));
    }

    /** Those of the record, and for work that an instrument is used for one of each kind, in calibration. */
    private List<Instrument> instruments(LocalDate last) {
        List<Instrument> all = new ArrayList<>(record.instruments());
        book.vocabulary().tooled().values().forEach(tooled -> all.add(new Instrument(Task.supposed(tooled), tooled.with(), null, asOf.atZone(record.zone()).toLocalDate(), last)));
        return all;
    }

    // What the findings leave open.

    private void collect(Conclusions concluded, JobRecord judged) {
        Set<String> standing = new HashSet<>();
        concluded.standing().stream().filter(s -> !s.faulty() || firstHand(s)).filter(s -> belongs(concluded, s.wanted())).forEach(s -> standing.add(s.wanted().required() + " " + s.wanted().name()));
        for (Card card : book.cards().values()) {
            if (card.gates().contains(gate)) {
                concluded.required(card.id()).stream().sorted(Comparator.comparing(Required::point)).forEach(required -> {
                    List<Outcome> outcomes = concluded.of(required, Outcome.class);
                    if (outcomes.size() != 1 || outcomes.get(0).state() != State.MET) {
                        open(new Open(card, required, concluded, judged, concluded.of(required, Wanted.class)), standing);
                    }
                });
            }
        }
        // A known fault that closes this gate is put right though the gate asks for no proof of it.
        for (Card card : book.cards().values()) {
            if (!card.gates().contains(gate)) {
                concluded.closing(card.id(), gate).stream().sorted(Comparator.comparing(Required::point)).forEach(required -> {
                    Open open = new Open(card, required, concluded, judged, concluded.of(required, Wanted.class));
                    open.judged(State.FAULT).stream().filter(j -> !open.restsOnSupposed(j)).forEach(fault -> fault(open, fault));
                });
            }
        }
        besides.forEach(Runnable::run);
        besides.clear();
        // A reading of which no good value can be supposed opens what it opens all the same, and that is closed again after it.
        List<String> unsupposed = tasks.values().stream().filter(t -> !t.isWork() && !t.wanted.isEmpty() && GoodResult.of(t.wanted) == null)
                .map(t -> Entry.key(t.point, t.what)).toList();
        wantedAt(concluded).filter(w -> w.openedFor().stream().anyMatch(unsupposed::contains)).toList().forEach(this::prove);
        // A step answers every want of its kind there, whichever check has it.
        wantedAt(concluded).filter(w -> tasks.containsKey(step(w))).forEach(w -> answer(tasks.get(step(w)), w));
    }

    /** Everything that this gate wants. */
    private Stream<Wanted> wantedAt(Conclusions concluded) {
        return book.cards().values().stream().filter(card -> card.gates().contains(gate))
                .flatMap(card -> concluded.required(card.id()).stream()).flatMap(required -> concluded.of(required, Wanted.class).stream());
    }

    /** Of readings that count only together, none is proven while they were not taken together, or one of them is spent. */
    private static boolean belongs(Conclusions concluded, Wanted wanted) {
        if (!wanted.countsTogether()) {
            return true;
        }
        List<Current> deciding = concluded.of(wanted.required(), Current.class).stream().filter(c -> c.wanted().countsTogether()).toList();
        return deciding.stream().anyMatch(c -> c.wanted().equals(wanted))
                && deciding.stream().allMatch(c -> concluded.standing().contains(new Standing(c.wanted(), c.evidence())));
    }

    private static boolean firstHand(Standing standing) {
        return standing.evidence().isFirstHand();
    }

    private record Open(Card card, Required required, Conclusions concluded, JobRecord judged, List<Wanted> wanted) {
        Entry entry(String id) {
            return judged.entry(id).orElseThrow();
        }

        List<Judgement> judged(State state) {
            return concluded.of(required, Judgement.class).stream().filter(j -> j.state() == state && !concluded.isEnded(j)).sorted(Comparator.comparing(Judgement::says)).toList();
        }

        /** False of work, and of what no check reads where it was written: to look there again settles nothing. */
        boolean isAsked(String id) {
            Entry entry = entry(id);
            return entry.deed() != Deed.DONE && concluded.keysWanted().contains(Entry.key(entry.point(), entry.what()));
        }

        boolean restsOnSupposed(Judgement judgement) {
            return judgement.evidence().stream().anyMatch(id -> id.startsWith("~"));
        }

        List<Wanted> of(String id) {
            Entry entry = entry(id);
            String key = Entry.key(entry.point(), entry.what());
            return wanted.stream().filter(w -> w.key().equals(key) || concluded.readsFor(w, id)).toList();
        }
    }

    private void open(Open open, Set<String> standing) {
        Set<String> before = Set.copyOf(tasks.keySet());
        int pending = besides.size();
        open.wanted().stream().filter(w -> !standing.contains(w.required() + " " + w.name())).forEach(this::prove);
        Requirements requirements = new Requirements(book, record, asOf.atZone(record.zone()).toLocalDate());
        requirements.gap(open.required()).ifPresent(gap -> settle(open, gap, requirements.limitFor(open.required()).toDo()));
        open.judged(State.FAULT).stream().filter(j -> !open.restsOnSupposed(j)).forEach(fault -> fault(open, fault));
        open.judged(State.DOUBT).forEach(j -> again(open, j.evidence().stream().allMatch(open::isAsked) ? j.evidence() : List.of(), j.says()));
        open.judged(State.MISSING).forEach(j -> again(open, j.evidence(), j.says()));
        open.concluded().of(open.required(), Lack.class).stream().filter(l -> !l.entries().isEmpty()).forEach(l -> lacking(open, l));
        if (open.wanted().stream().anyMatch(w -> w.countsTogether() && tasks.containsKey(step(w)))) {
            open.wanted().stream().filter(Wanted::countsTogether).forEach(this::prove);
        }
        if (open.concluded().of(open.required(), Judgement.class).stream().anyMatch(open.concluded()::isEnded)) {
            open.wanted().stream().filter(w -> !w.decidesAlone()).forEach(this::prove);
        }
        boolean supposed = open.concluded().of(open.required(), Judgement.class).stream().anyMatch(j -> j.state() != State.MET && open.restsOnSupposed(j));
        boolean known = supposed || besides.size() > pending || !before.equals(tasks.keySet()) || tasks.values().stream().anyMatch(t -> t.checks.contains(open.card().id()));
        if (!known) {
            settle(open, open.card().question());
        }
    }

    /** What a step is known by. The same work once more with the engine warm, or after the ride, is a step of its own: a head is torqued before the first start and again after it. */
    private static String step(Wanted want) {
        boolean later = want.want().weakest() == Deed.DONE && want.card().needs() != Card.Needs.STANDING;
        return later ? want.key() + " " + want.card().needs() : want.key();
    }

    private void prove(Wanted want) {
        Task task = tasks.computeIfAbsent(step(want), k -> new Task(Task.kindOf(want), want.point(), want.want().aspect(),
                want.want().weakest() == Deed.DONE ? List.of(want.want().aspect()) : List.of()));
        answer(task, want);
    }

    private void answer(Task task, Wanted want) {
        task.answers(want);
        told(task, want.card());
    }

    private void told(Task task, Card card) {
        task.checks.add(card.id());
        task.critical |= card.critical();
        task.caution = task.caution == null ? card.caution() : task.caution;
        if (task.isWork()) {
            task.remedies.add(card.remedy());
        }
    }

    private void settle(Open open, String why) {
        settle(open, why, open.card().remedy());
    }

    private void settle(Open open, String why, String says) {
        Task task = tasks.computeIfAbsent("settle " + open.card().id() + " " + open.required().point(), k -> new Task(Kind.SETTLE, open.required().point(), null, List.of()));
        told(task, open.card());
        task.remedies.add(says);
        task.because.add(why);
    }

    private void fault(Open open, Judgement fault) {
        List<String> ids = fault.evidence();
        if (open.card().id().equals(Disclosures.OPEN_DEFECTS) && !ids.isEmpty() && ids.stream().allMatch(id -> isLookOfTheDay(open.entry(id)))) {
            ids.forEach(id -> lookAgain(open, open.entry(id), fault));
            return;
        }
        if (ids.isEmpty() || open.card().id().equals(Disclosures.OPEN_DEFECTS) || open.card().wants().isEmpty() && ids.stream().noneMatch(id -> open.entry(id).deed() == Deed.DONE)) {
            settle(open, fault.says());
            return;
        }
        if (fault.want() == null && open.required().point().equals("machine") && !open.wanted().isEmpty() && open.wanted().stream().noneMatch(Wanted::decidesAlone)) {
            // Which of its parts is at fault no reading of the whole can tell: what clears it is done to each, or what the remedy says, and everything is read again.
            List<Touch> named = open.wanted().get(0).laid().clearedBy();
            if (named.isEmpty()) {
                settle(open, fault.says());
            }
            named.forEach(touch -> putRight(open, touch.point(), touch.works().stream().limit(1).toList(), fault));
            open.wanted().forEach(this::prove);
            return;
        }
        for (String id : ids) {
            Entry entry = open.entry(id);
            if (entry.deed() == Deed.DONE && (open.card().wants().isEmpty() || entry.what().equals("left-off"))) {
                String closing = CLOSING.getOrDefault(entry.what(), "refitted");
                Task together = tasks.computeIfAbsent("together " + entry.point() + " " + closing, k -> new Task(Kind.PUT_TOGETHER, entry.point(), closing, List.of(closing)));
                told(together, open.card());
                together.because.add(fault.says());
            }
            open.of(id).forEach(want -> cure(open, want, entry, fault));
        }
    }

    /** What was found in the room or on the day: there the latest look decides, though no check of this machine asks for it. */
    private boolean isLookOfTheDay(Entry entry) {
        return entry.deed().isEvidence() && book.library().ofTheDay().has(entry.point());
    }

    private void lookAgain(Open open, Entry entry, Judgement fault) {
        Task task = tasks.computeIfAbsent(Entry.key(entry.point(), entry.what()), k -> new Task(kind(entry.deed()), entry.point(), entry.what(), List.of()));
        told(task, open.card());
        task.because.add(fault.says());
    }

    /** What takes a fault away: looking again, where it was hearsay or where the latest look decides; the work the card names; another look, where no part is at fault; or any work there. */
    private void cure(Open open, Wanted want, Entry entry, Judgement fault) {
        List<Touch> named = want.laid().clearedBy().stream().filter(touch -> touch.only().isEmpty() || touch.only().contains(entry.is().toString())).toList();
        boolean anyWorkThere = ANY_WORK.stream().filter(w -> !w.equals("replaced")).anyMatch(work -> undoes(want, want.point(), work));
        if (want.latestDecides() || !entry.deed().atLeast(want.want().weakest())) {
            prove(want);
            tasks.get(step(want)).because.add(fault.says());
        } else if (named.isEmpty() && want.want().form() == Form.CODE && !anyWorkThere) {
            again(open, List.of(entry.id()), fault.says());
        } else if (want.card().endsBy() == Card.EndsBy.LOOK || want.card().endsBy() == Card.EndsBy.DOCUMENT) {
            prove(want);
            tasks.get(step(want)).because.add(fault.says());
        } else if (want.point().equals("machine") && named.stream().map(Touch::point).distinct().count() > 1) {
            putRight(open, want.point(), MENDED, fault);
        } else if (!named.isEmpty()) {
            Touch touch = named.get(0);
            putRight(open, touch.point(), touch.works().stream().limit(1).toList(), fault);
        } else if (want.holds().sameDay() && want.card().endsBy() != Card.EndsBy.WORK) {
            again(open, List.of(entry.id()), fault.says());
        } else {
            somewhere(want).forEach(point -> putRight(open, point, endsBy(want, point), fault));
        }
    }

    /** Mending, or where that leaves what is wrong as it is, such as the date on a part, another part. */
    private static List<String> endsBy(Wanted want, String point) {
        return MENDED.stream().anyMatch(work -> undoes(want, point, work)) || !undoes(want, point, "replaced") ? MENDED : List.of("replaced");
    }

    /** Where any work can cure it: at the place itself; of the machine as a whole, at the parts whose work bears on it, where the card names them. */
    private static Collection<String> somewhere(Wanted want) {
        Set<String> parts = want.laid().undoneBy().stream().filter(touch -> touch.works().isEmpty()).map(Touch::point).collect(Collectors.toCollection(TreeSet::new));
        return want.point().equals("machine") && !parts.isEmpty() ? parts : List.of(want.point());
    }

    private static boolean undoes(Wanted want, String point, String work) {
        return want.isUndoneBy(new Entry("", null, "", Deed.DONE, point, work, null, null, null, null, null, 0));
    }

    private void putRight(Open open, String point, List<String> works, Judgement fault) {
        Task task = tasks.computeIfAbsent("right " + point + " " + works, k -> new Task(Kind.PUT_RIGHT, point, works.size() == 1 ? works.get(0) : null, works));
        told(task, open.card());
        task.because.add(fault.says());
    }

    /** What was read, or done, with an instrument that was not good for it, is read or done again. */
    private void lacking(Open open, Lack lack) {
        Set<String> works = lack.entries().stream().filter(id -> open.entry(id).deed() == Deed.DONE).collect(Collectors.toSet());
        for (String id : works) {
            Entry work = open.entry(id);
            if (!id.startsWith("~")) {
                Task task = tasks.computeIfAbsent(Entry.key(work.point(), work.what()), k -> new Task(Kind.DO, work.point(), work.what(), List.of(work.what())));
                told(task, open.card());
                task.because.add(lack.says());
            }
        }
        List<String> others = lack.entries().stream().filter(id -> !works.contains(id)).toList();
        if (!others.isEmpty()) {
            again(open, others, lack.says());
        }
    }

    /** The same again, better; where it does not bear out what was written, that is corrected. Work is looked at by somebody else. */
    private void again(Open open, List<String> ids, String why) {
        if (ids.isEmpty()) {
            settle(open, why);
            return;
        }
        for (String id : ids) {
            Entry entry = open.entry(id);
            if (entry.deed() == Deed.DONE) {
                besides.add(() -> anotherPerson(open, entry, why));
            }
            if (entry.deed() == Deed.DONE || ids.stream().anyMatch(i -> i.startsWith("~"))) {
                continue;
            }
            // What was written at a place where no check asks is written again where one does.
            String point = open.of(id).stream().map(Wanted::point).findFirst().orElse(entry.point());
            String key = Entry.key(point, entry.what());
            List<Wanted> wants = anywhere(open.concluded(), key);
            Task task = tasks.computeIfAbsent(key, k -> new Task(kind(entry.deed()), point, entry.what(), List.of()));
            wants.forEach(w -> answer(task, w));
            told(task, open.card());
            task.corrects.add(id);
            task.because.add(why);
        }
    }

    private static Kind kind(Deed deed) {
        return switch (deed) {
            case MEASURED -> Kind.MEASURE;
            case TRIED -> Kind.TRY;
            case SEEN -> Kind.LOOK;
            default -> Kind.ASK;
        };
    }

    private List<Wanted> anywhere(Conclusions concluded, String key) {
        return book.cards().values().stream().filter(c -> c.gates().contains(gate)).flatMap(c -> concluded.required(c.id()).stream())
                .flatMap(r -> concluded.of(r, Wanted.class).stream()).filter(w -> w.key().equals(key)).toList();
    }

    /** A proof at that part, already among the steps or repeated, done by somebody who did not do the work. */
    private void anotherPerson(Open open, Entry work, String why) {
        // Where the work reached the part from elsewhere, the part is looked at, not the place of the work.
        String at = open.card().id().equals("record.second-person") && !Entry.covers(open.required().point(), work.point()) ? open.required().point() : work.point();
        Wanted look = book.cards().values().stream().filter(c -> c.gates().contains(gate)).flatMap(c -> open.concluded().required(c.id()).stream())
                .flatMap(r -> open.concluded().of(r, Wanted.class).stream())
                .filter(w -> w.want().weakest() != Deed.DONE && (Entry.covers(w.point(), at) || Entry.covers(at, w.point())))
                // Not what takes the part to pieces again: somebody else looks at it as it is now.
                .filter(w -> !book.library().assembly().isReadApart(w.card(), w.aspect()))
                .min(Comparator.comparing((Wanted w) -> !tasks.containsKey(step(w))).thenComparing(w -> w.card().needs()).thenComparing(w -> w.want().weakest() != Deed.SEEN)
                        .thenComparing(w -> Math.abs(w.point().length() - at.length())).thenComparing(Wanted::key)).orElse(null);
        if (look == null) {
            settle(open, why);
            return;
        }
        prove(look);
        Task task = tasks.get(step(look));
        told(task, open.card());
        if (work.id().startsWith("~")) {
            task.follows.add(tried.get(Integer.parseInt(work.id().replaceAll("~(\\d+).*", "$1"))));
            task.notBy = "";
        } else {
            task.notBy = record.nameOf(work.by());
            task.because.add(why);
        }
    }

    // The order.

    /** Work first, before every proof it undoes; null when steps undo each other in a ring. */
    private List<Task> sorted() {
        Map<Task, Set<Task>> after = new HashMap<>();
        Map<Task, Integer> waits = new HashMap<>();
        Collection<Task> all = tasks.values();
        for (Task earlier : all) {
            after.put(earlier, all.stream().filter(earlier::comesBefore).collect(Collectors.toSet()));
            after.get(earlier).forEach(later -> waits.merge(later, 1, Integer::sum));
        }
        Turns turns = new Turns(all, Task.order(book.library().order()), this::lookAt);
        all.stream().filter(t -> !waits.containsKey(t)).forEach(turns::free);
        List<Task> sorted = new ArrayList<>();
        for (Task next = turns.next(); next != null; next = turns.next()) {
            sorted.add(next);
            for (Task later : after.get(next)) {
                if (waits.merge(later, -1, Integer::sum) == 0) {
                    turns.free(later);
                }
            }
        }
        return sorted.size() == all.size() ? sorted : null;
    }

    /** The look that answers a step together with others, or null. */
    private Look lookAt(Task task) {
        boolean looks = !task.isWork() && task.kind != Kind.SETTLE && task.corrects.isEmpty();
        return looks ? book.library().looks().get(Entry.key(task.point, task.what)) : null;
    }

    /** One ring of steps that undo each other, each named with the next. */
    private List<String> ring() {
        for (Task start : tasks.values().stream().sorted(Task.order(book.library().order())).toList()) {
            List<Task> path = new ArrayList<>();
            if (leadsBack(start, start, path, new HashSet<>())) {
                List<String> names = new ArrayList<>();
                for (int i = 0; i < path.size(); i++) {
                    Task next = path.get((i + 1) % path.size());
                    names.add("'" + path.get(i).what + "' on " + Points.words(path.get(i).point) + " undoes '" + next.what + "' on " + Points.words(next.point) + " (" + String.join(", ", next.checks) + ")");
                }
                return names;
            }
        }
        throw new IllegalStateException("steps cannot be ordered and no ring was found");
    }

    private boolean leadsBack(Task from, Task start, List<Task> path, Set<Task> seen) {
        path.add(from);
        for (Task next : tasks.values().stream().filter(from::comesBefore).sorted(Task.order(book.library().order())).toList()) {
            if (next == start || seen.add(next) && leadsBack(next, start, path, seen)) {
                return true;
            }
        }
        path.remove(from);
        return false;
    }

    private List<Step> steps(List<Task> sorted) {
        List<List<Task>> looks = together(sorted);
        Map<Integer, Integer> besides = besides(looks);
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < looks.size(); i++) {
            for (Task task : looks.get(i)) {
                boolean again = !task.wanted.isEmpty() && task.because.isEmpty() && task.corrects.isEmpty()
                        && provenNow.contains(task.wanted.get(0).key());
                Look look = looks.get(i).size() > 1 ? lookAt(task) : null;
                steps.add(new Step(i + 1, task.kind, task.point, task.what, StepWords.doing(task), StepWords.writing(task), task.kind.compareTo(Kind.DO) > 0 && task.namesDocument(),
                        List.copyOf(task.checks), List.copyOf(task.because), task.caution, task.needs(), again, List.copyOf(task.corrects), task.notBy,
                        besides.get(i), look, task.limit()));
            }
        }
        return steps;
    }

    /** Tasks that follow each other and are answered by one look; every other by itself. */
    private List<List<Task>> together(List<Task> sorted) {
        List<List<Task>> looks = new ArrayList<>();
        for (Task task : sorted) {
            Task before = looks.isEmpty() ? null : looks.get(looks.size() - 1).get(0);
            Look look = lookAt(task);
            if (look == null || before == null || !look.equals(lookAt(before)) || before.needs() != task.needs()) {
                looks.add(new ArrayList<>());
            }
            looks.get(looks.size() - 1).add(task);
        }
        return looks;
    }

    /** For a second person: the next later step elsewhere on the standing machine that waits for nothing not yet done. */
    private static Map<Integer, Integer> besides(List<List<Task>> looks) {
        Map<Integer, Integer> paired = new HashMap<>();
        Set<Integer> taken = new HashSet<>();
        for (int i = 0; i < looks.size(); i++) {
            List<Task> one = looks.get(i);
            if (!isBesideOthers(one) || !taken.add(i)) {
                continue;
            }
            for (int j = i + 1; j < looks.size(); j++) {
                List<Task> two = looks.get(j);
                boolean fits = !taken.contains(j) && isBesideOthers(two) && two.stream().allMatch(task -> task.notBy == null)
                        && sharesNothing(one, two);
                if (fits && waitsForNothing(two, looks, i, j, taken)) {
                    paired.put(j, i + 1);
                    taken.add(j);
                    break;
                }
            }
        }
        return paired;
    }

    private static boolean isBesideOthers(List<Task> look) {
        return look.stream().allMatch(task -> task.kind != Kind.SETTLE && task.needs() == Card.Needs.STANDING);
    }

    /** True when nothing from {@code from} on that is not done already has to come before it. */
    private static boolean waitsForNothing(List<Task> look, List<List<Task>> looks, int from, int to, Set<Integer> taken) {
        return IntStream.range(from, to).filter(k -> k == from || !taken.contains(k)).mapToObj(looks::get).flatMap(List::stream)
                .noneMatch(before -> look.stream().anyMatch(before::comesBefore));
    }

    // One works while the other rides, lifts or turns the whole machine: nothing at the machine as a whole is done by two.
    private static boolean sharesNothing(List<Task> one, List<Task> two) {
        Set<String> parts = one.stream().map(Task::part).collect(Collectors.toSet());
        return Stream.concat(one.stream(), two.stream()).noneMatch(t -> t.part().equals("machine") || t.part().equals("ride"))
                && two.stream().map(Task::part).noneMatch(parts::contains);
    }
}
