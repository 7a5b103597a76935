package chock.assess;

import chock.assess.Asking.Description;
import chock.assess.facts.Evidence;
import chock.assess.facts.Lack;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.MakerFigures;
import chock.rulebook.Assembled;
import chock.rulebook.Card;
import chock.rulebook.Coordinates;
import chock.rulebook.LimitFor;
import chock.rulebook.RuleBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * The checks asked of a machine with all they want and the limits in force, and found by what an entry says. It
 * follows from the description of the machine, its manual and the day, and is shared by all records that have these in
 * common.
 */
final class AskedChecks {
    static final AskedChecks NONE = new AskedChecks(List.of(), Assembled.unknown());

    private final List<Required> all;
    private final Assembled machine;
    private final Map<Required, List<Wanted>> wanted = new HashMap<>();
    private final Map<Required, LimitFor> limits = new HashMap<>();
    private final Map<Required, List<Object>> unwritten = new HashMap<>();
    private final Map<String, List<Required>> byKey = new HashMap<>();
    private final Map<String, List<Wanted>> byAspect = new HashMap<>();
    private final Set<Required> spokenOf = new HashSet<>();
    /** Those that rules of their own look at. */
    private final Set<Required> named = new HashSet<>();
    /** What is told of a check while nothing was written of it at any place, by its id. */
    private final Map<String, Finding> unwrittenFindings = new ConcurrentHashMap<>();

    /**
     * What all of it rests on.
     *
     * @param readers names of those who read the maker's figures and the local law, for a limit names them
     */
    private record Ground(Description description, MakerFigures maker, List<String> readers, LocalDate day, Coordinates position) {
        static Ground of(Description description, JobRecord record, LocalDate day, RuleBook book) {
            List<String> readers = Stream.concat(record.maker().figures().stream().flatMap(figure -> Stream.of(figure.by(), figure.secondedBy())),
                    record.localLaw().lines().stream().flatMap(line -> Stream.of(line.by(), line.secondedBy()))).filter(Objects::nonNull).map(record::nameOf).toList();
            return new Ground(description, record.maker(), readers, day, book.position());
        }
    }

    /** The assembly of machines of this description. */
    private record Assembling(Description description) { }

    private AskedChecks(List<Required> all, Assembled machine) {
        this.all = all;
        this.machine = machine;
    }

    static AskedChecks of(JobRecord record, RuleBook book, LocalDate day) {
        Description description = Description.of(record);
        Ground ground = Ground.of(description, record, day, book);
        return book.kept().of(ground, () -> {
            Assembled machine = book.kept().of(new Assembling(description),
                    () -> book.library().assembly().of(description.fields()));
            return laidOut(Asking.of(description, book, record, day), book, record, day, machine);
        });
    }

    /** The same, worked out anew before a witness. */
    static AskedChecks told(JobRecord record, RuleBook book, LocalDate day, Witness witness) {
        Assembled machine = book.library().assembly().of(record.machine().fields());
        return laidOut(Asking.told(record, book, day, witness), book, record, day, machine);
    }

    private static AskedChecks laidOut(List<Required> asked,
            RuleBook book, JobRecord record, LocalDate day, Assembled machine) {
        Requirements requirements = new Requirements(book, record, day, machine);
        AskedChecks checks = new AskedChecks(asked, machine);
        for (Required required : asked) {
            List<Wanted> wants = List.copyOf(requirements.wantedFor(required));
            checks.wanted.put(required, wants);
            for (Wanted want : wants) {
                checks.byKey.computeIfAbsent(want.key(), key -> new ArrayList<>(2)).add(required);
                checks.byAspect.computeIfAbsent(want.aspect(), aspect -> new ArrayList<>()).add(want);
            }
            if (book.rules().speakOf(required.check())) {
                checks.spokenOf.add(required);
            }
            if (book.rules().name(required.check())) {
                checks.named.add(required);
            }
            checks.unwritten.put(required, unwritten(required, wants, requirements));
        }
        checks.limits.putAll(requirements.limits());
        return checks;
    }

    /** What the check is found to be while nothing is written of it. */
    private static List<Object> unwritten(Required required, List<Wanted> wants, Requirements requirements) {
        List<Object> found = new ArrayList<>(wants);
        wants.forEach(want -> found.add(Judge.nothingRecorded(want)));
        requirements.gap(required).ifPresent(gap -> found.add(new Lack(required, State.MISSING, gap)));
        if (!wants.isEmpty()) {
            found.add(new Outcome(required, State.MISSING));
        }
        return List.copyOf(found);
    }

    /** What work on this machine implies. */
    Assembled machine() {
        return machine;
    }

    List<Required> all() {
        return all;
    }

    /** What this check wants, or null when it is not among them. */
    List<Wanted> wanted(Required required) {
        return wanted.get(required);
    }

    /** True when one of them wants this of this place. */
    boolean areReadAt(String key) {
        return byKey.containsKey(key);
    }

    Map<Required, LimitFor> limits() {
        return limits;
    }

    List<Object> unwritten(Required required) {
        return unwritten.get(required);
    }

    /**
     * What is told of a check of which nothing was written at any place.
     *
     * @param telling tells it, when it was not told yet
     */
    Finding unwrittenOf(Card card, Supplier<Finding> telling) {
        return unwrittenFindings.computeIfAbsent(card.id(), id -> telling.get());
    }

    /**
     * What entries may be about.
     *
     * @param all what has to be reasoned about: something was written that may be about it, or a rule speaks of it anyway
     * @param read those of them that were written about at their places, and of which no rule of their own speaks
     */
    record Concerned(Set<Required> all, Set<Required> read) { }

    Concerned concernedBy(List<Evidence> evidence, Requirements requirements) {
        Set<Required> others = new HashSet<>(spokenOf);
        Set<Required> read = new HashSet<>();
        for (Evidence one : evidence) {
            List<Required> there = byKey.get(one.key());
            if (there != null) {
                read.addAll(there);
            } else if (one.isStatement()) {
                // What nobody asks for at its place is held against the nearest that is asked.
                others.addAll(nearest(one));
            }
        }
        if (requirements.hasPartsLeftOff()) {
            all.stream().filter(required -> !requirements.leftOff(required).isEmpty()).forEach(others::add);
        }
        read.removeAll(others);
        others.addAll(read);
        read.removeAll(named);
        return new Concerned(others, read);
    }

    private List<Required> nearest(Evidence evidence) {
        List<Required> nearest = new ArrayList<>();
        int most = -1;
        for (Wanted want : byAspect.getOrDefault(evidence.aspect(), List.of())) {
            int near = Entry.shared(evidence.entry().point(), want.point());
            if (near > most) {
                nearest.clear();
                most = near;
            }
            if (near == most) {
                nearest.add(want.required());
            }
        }
        return nearest;
    }
}
