package chock.rehearse;

import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Changes the rule book a little, once for each number, date and rule in it, for each field of a card that decides and for each
 * condition of a rule, and asks whether any scenario notices. What
 * nobody notices, somebody could change by mistake.
 */
public final class Shake {
    private final RuleBook book;
    private final Set<String> rules;
    private final List<Scenario> scenarios;
    private final Map<String, List<Scenario>> bySystem = new HashMap<>();
    private final Map<Scenario, Set<String>> restOf = new ConcurrentHashMap<>();
    private final Map<Scenario, Set<String>> wideRestOf = new ConcurrentHashMap<>();

    /**
     * A change no scenario noticed.
     *
     * @param subject id of the limit or check, or name of the rule
     * @param what what was changed
     * @param where file and line
     * @param toWrite what a scenario that notices has to show
     */
    public record Unnoticed(String subject, String what, String where, String toWrite) { }

    /**
     * What came of it.
     *
     * @param changes how many changes were tried
     * @param unnoticed those no scenario noticed
     * @param idle rules not left out, because only the cards of a house give them something to do and none is in force
     */
    public record Shaken(int changes, List<Unnoticed> unnoticed, List<String> idle) { }

    private Shake(RuleBook book, List<Scenario> scenarios) {
        this.book = book;
        this.rules = book.ruleNames();
        this.scenarios = scenarios;
        scenarios.forEach(s -> s.expected().stream().map(e -> e.check() == null ? "" : system(e.check())).distinct()
                .forEach(system -> bySystem.computeIfAbsent(system, k -> new ArrayList<>()).add(s)));
    }

    /**
     * Changes every number, date and rule.
     *
     * @param book the rule book the scenarios hold against
     * @param rehearsed scenarios, all of which hold
     * @param scope what to change
     */
    public static Shaken run(RuleBook book, Rehearsed rehearsed, Scope scope) {
        return of(book, rehearsed, scope, change -> change.kind() == Change.Kind.LIMIT || change.kind() == Change.Kind.RULE);
    }

    /** Changes every field of a card that decides, and every condition of a shipped rule, as well; see {@link #run}. */
    public static Shaken runWithMeaning(RuleBook book, Rehearsed rehearsed, Scope scope) {
        return of(book, rehearsed, scope, change -> true);
    }

    /** Only some of the changes: those of one kind, or a sample. */
    static Shaken of(RuleBook book, Rehearsed rehearsed, Scope scope, Predicate<Change> which) {
        return of(book, rehearsed.scenarios(), change -> scope.has(change) && which.test(change), scope.houseOnly() ? List.of() : Change.idle(book).stream().filter(scope::hasCheck).toList());
    }

    private static Shaken of(RuleBook book, List<Scenario> scenarios, Predicate<Change> which, List<String> idle) {
        Shake shake = new Shake(book, scenarios);
        ConditionChanges conditions = new ConditionChanges(book);
        List<Change> changes = Stream.of(Change.of(book), CardChanges.of(book), conditions.all(), PlanChanges.of(book), InstrumentChanges.of(book)).flatMap(List::stream).filter(which).toList();
        conditions.compile(changes);
        List<Unnoticed> unnoticed = changes.parallelStream().filter(change -> !shake.isNoticed(change))
                .map(c -> new Unnoticed(c.subject(), c.what(), c.where(), c.toWrite())).toList();
        return new Shaken(changes.size(), unnoticed, idle);
    }

    private static String system(String id) {
        return id.substring(0, id.indexOf('.'));
    }

    private static boolean isGeneral(String rule) {
        return rule.startsWith("evidence.") || rule.startsWith("outcome.");
    }

    private boolean isNoticed(Change change) {
        RuleBook changed = change.made().apply(book);
        List<Scenario> candidates = candidates(change);
        // A rule may do its work for a check that does not bear its name.
        return candidates.stream().anyMatch(s -> isNoticedBy(s, changed, restOf(s)))
                || change.kind() != Change.Kind.LIMIT && candidates.stream().anyMatch(s -> isNoticedBy(s, changed, wideRestOf(s)));
    }

    private static boolean isNoticedBy(Scenario scenario, RuleBook changed, Set<String> asleep) {
        return scenario.notices(changed.without(asleep)) && (asleep.isEmpty() || scenario.notices(changed));
    }

    /**
     * The scenarios that may notice, the likeliest first. A limit is asked of the checks held against it, and of its system
     * where no finding names it; a rule of its whole system, general reasoning of all.
     */
    private List<Scenario> candidates(Change change) {
        List<Scenario> able = (isGeneral(change.subject()) || change.kind().isOfNoSystem() ? scenarios : bySystem.getOrDefault(system(change.subject()), List.of())).stream().filter(change.concerns()).toList();
        if (change.kind() == Change.Kind.LIMIT) {
            Set<String> held = able.stream().flatMap(s -> s.found().stream()).filter(p -> p.found().limit() != null && p.found().limit().id().equals(change.subject()))
                    .map(Scenario.Place::check).collect(Collectors.toSet());
            List<Scenario> near = able.stream().filter(s -> s.isAboutAGate() || s.expected().stream().anyMatch(e -> held.contains(e.check()))).toList();
            able = held.isEmpty() ? able : near;
        }
        if (change.kind().isOfNoSystem()) {
            return able;
        }
        // The scenarios of the general reasoning hold it by themselves; the others would take hours to be asked.
        if (change.kind() == Change.Kind.CONDITION && isGeneral(change.subject()) && able.stream().anyMatch(Scenario::isOfGeneralReasoning)) {
            able = able.stream().filter(Scenario::isOfGeneralReasoning).toList();
        }
        return able.stream().sorted(Comparator.comparing((Scenario s) -> -kinship(s, change.subject()))).toList();
    }

    // The scenarios of the check a limit or rule is named after are asked first: mostly one of them notices.
    private int kinship(Scenario scenario, String subject) {
        boolean held = scenario.found().stream().anyMatch(p -> p.found().limit() != null && p.found().limit().id().equals(subject));
        return held ? 2000 : scenario.expected().stream().filter(e -> e.check() != null).mapToInt(e -> {
            String check = e.check();
            if (subject.equals(book.cards().get(check).limit()) || subject.equals(check) || subject.startsWith(check + "-")) {
                return 1000 + check.length();
            }
            int same = 0;
            while (same < Math.min(check.length(), subject.length()) && check.charAt(same) == subject.charAt(same)) {
                same++;
            }
            return same;
        }).max().orElse(0);
    }

    /**
     * The rules a scenario needs not: with all but those of its own checks asleep it is judged in a tenth of the time. Where
     * it does not hold like that, those of its systems stay awake, or all. What seems noticed is judged again by the whole.
     */
    private Set<String> restOf(Scenario scenario) {
        return restOf.computeIfAbsent(scenario, s -> {
            Set<String> checks = s.expected().stream().map(Expected::check).filter(c -> c != null).collect(Collectors.toSet());
            Set<String> others = rules.stream().filter(r -> !isGeneral(r) && checks.stream().noneMatch(c -> r.equals(c) || r.startsWith(c + "-"))).collect(Collectors.toCollection(TreeSet::new));
            return !s.isAboutAGate() && !s.notices(book.without(others)) ? others : wideRestOf(s);
        });
    }

    private Set<String> wideRestOf(Scenario scenario) {
        return wideRestOf.computeIfAbsent(scenario, this::otherSystems);
    }

    private Set<String> otherSystems(Scenario scenario) {
        if (scenario.isAboutAGate()) {
            return Set.of();
        }
        Set<String> systems = scenario.expected().stream().map(e -> system(e.check())).collect(Collectors.toSet());
        Set<String> others = rules.stream().filter(r -> !isGeneral(r) && !systems.contains(system(r))).collect(Collectors.toCollection(TreeSet::new));
        return Optional.of(others).filter(o -> !scenario.notices(book.without(o))).orElse(Set.of());
    }
}
