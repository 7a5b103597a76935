package chock.assess;

import chock.assess.facts.Closing;
import chock.assess.facts.Closed;
import chock.assess.facts.Current;
import chock.assess.facts.Derived;
import chock.assess.facts.Ended;
import chock.assess.facts.Evidence;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Misplaced;
import chock.assess.facts.Note;
import chock.assess.facts.NothingWritten;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.RunAir;
import chock.assess.facts.RunLevel;
import chock.assess.facts.SetAside;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.record.Gate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Everything the rules concluded about one record, found by the requirement it belongs to. */
final class Conclusions {
    private final Map<String, List<Required>> byCheck = new HashMap<>();
    private final Map<Required, List<Object>> byRequirement = new HashMap<>();
    private final Set<String> keysWanted = new HashSet<>();
    private final List<RunAir> air = new ArrayList<>();
    private final List<RunLevel> levels = new ArrayList<>();
    private final List<Evidence> evidence = new ArrayList<>();
    private final List<Standing> standing = new ArrayList<>();
    private final List<Judgement> judgements = new ArrayList<>();
    private final List<Misplaced> misplaced = new ArrayList<>();
    private final List<Wanted> wantedHere = new ArrayList<>();
    private final List<SetAside> setAside = new ArrayList<>();
    private final List<Closing> closings = new ArrayList<>();
    private final Set<Judgement> ended = new HashSet<>();
    private final Set<Required> closed = new HashSet<>();
    private final Set<Gate> closedBesides = EnumSet.noneOf(Gate.class);
    /** Checks that nothing was written of, and no rule had to look at. */
    private final Set<Required> unwritten = new HashSet<>();
    /** Checks that were written about, and no rule had to look at. */
    private final Set<Required> settled = new HashSet<>();

    private final Requirements requirements;

    /** @param untouched what was found of checks without the rules */
    Conclusions(Requirements requirements, Collection<?> facts, Map<Required, List<Object>> untouched) {
        this.requirements = requirements;
        List<NothingWritten> nothing = new ArrayList<>();
        for (Object fact : facts) {
            if (fact instanceof Required required) {
                byCheck.computeIfAbsent(required.check(), c -> new ArrayList<>()).add(required);
            } else if (fact instanceof Evidence one) {
                evidence.add(one);
            } else if (fact instanceof RunAir one) {
                air.add(one);
            } else if (fact instanceof RunLevel level) {
                levels.add(level);
            } else if (fact instanceof NothingWritten all) {
                nothing.add(all);
            } else {
                keep(fact);
                Required required = requirementOf(fact);
                if (required != null) {
                    byRequirement.computeIfAbsent(required, r -> new ArrayList<>()).add(fact);
                }
            }
        }
        untouched.forEach((required, found) -> keep(required, found, settled));
        nothing.forEach(all -> all.found().forEach((required, found) -> keep(required, found, unwritten)));
    }

    // What a rule asks because of an entry as well was reasoned about, and counts as it came out.
    private void keep(Required required, List<Object> found, Set<Required> so) {
        List<Required> there = byCheck.computeIfAbsent(required.check(), c -> new ArrayList<>());
        if (!there.contains(required)) {
            there.add(required);
            so.add(required);
            byRequirement.put(required, found);
            found.forEach(this::keep);
        }
    }

    /** The cards and limits that were asked for on the way. */
    Requirements requirements() {
        return requirements;
    }

    private void keep(Object fact) {
        if (fact instanceof Wanted wanted) {
            keysWanted.add(wanted.key());
            wantedHere.add(wanted);
        } else if (fact instanceof Standing one) {
            standing.add(one);
        } else if (fact instanceof Judgement judgement) {
            judgements.add(judgement);
        } else if (fact instanceof Misplaced one) {
            misplaced.add(one);
        } else if (fact instanceof SetAside one) {
            setAside.add(one);
        } else if (fact instanceof Closing one) {
            closings.add(one);
        } else if (fact instanceof Ended one) {
            ended.add(one.fault());
        } else if (fact instanceof Closed one) {
            closed.add(one.required());
            closedBesides.add(one.gate());
        }
    }

    private static Required requirementOf(Object fact) {
        if (fact instanceof Wanted wanted) {
            return wanted.required();
        }
        if (fact instanceof Standing one) {
            return one.wanted().required();
        }
        if (fact instanceof Current current) {
            return current.required();
        }
        if (fact instanceof Derived derived) {
            return derived.required();
        }
        if (fact instanceof Judgement judgement) {
            return judgement.required();
        }
        if (fact instanceof Outcome outcome) {
            return outcome.required();
        }
        if (fact instanceof Lack lack) {
            return lack.required();
        }
        if (fact instanceof Note note) {
            return note.required();
        }
        if (fact instanceof Closed closed) {
            return closed.required();
        }
        return fact instanceof SetAside aside ? aside.wanted().required() : null;
    }

    /** Where a check is asked; empty when it does not apply. */
    List<Required> required(String check) {
        return byCheck.getOrDefault(check, List.of());
    }

    /** Where a known fault of this check closes a gate that does not ask for it; empty when it does not. */
    List<Required> closing(String check, Gate gate) {
        if (closed.isEmpty()) {
            return List.of();
        }
        return required(check).stream().filter(closed::contains)
                .filter(required -> of(required, Closed.class).stream().anyMatch(one -> one.gate() == gate)).toList();
    }

    /** True of a fault worked out from several readings that work has ended since. */
    boolean isEnded(Judgement fault) {
        return ended.contains(fault);
    }

    /** What the faults of this check that close a gate can do, by name, each once. */
    List<String> dangers(String check, Gate gate) {
        return closing(check, gate).stream().flatMap(required -> of(required, Closed.class).stream()).filter(closed -> closed.gate() == gate).flatMap(closed -> closed.dangers().stream()).distinct().sorted().toList();
    }

    /** What was concluded about a requirement, of one kind, in no order. */
    <T> List<T> of(Required required, Class<T> kind) {
        List<T> found = null;
        for (Object fact : byRequirement.getOrDefault(required, List.of())) {
            if (kind.isInstance(fact)) {
                // Of most kinds there is nothing to say of a check, or one thing.
                found = found == null ? new ArrayList<>(2) : found;
                found.add(kind.cast(fact));
            }
        }
        return found == null ? List.of() : found;
    }

    /** What became of a requirement; empty when the rules gave no outcome or several. */
    Optional<State> state(Required required) {
        List<Outcome> outcomes = of(required, Outcome.class);
        return outcomes.size() == 1 ? Optional.of(outcomes.get(0).state()) : Optional.empty();
    }

    /** How many checks nothing was written of, and no rule had to look at. */
    int settledAtOnce() {
        return unwritten.size();
    }

    /** How many checks were written about with nothing touching it, and no rule had to look at. */
    int untouched() {
        return settled.size();
    }

    /** True of a check that nothing was written of: what is found of it follows from the description of the machine. */
    boolean isUnwritten(Required required) {
        return unwritten.contains(required);
    }

    /** True when a known fault closes this gate though it does not ask for it. */
    boolean closesMore(Gate gate) {
        return closedBesides.contains(gate);
    }

    /** Point and aspect of everything any check wants. */
    Set<String> keysWanted() {
        return keysWanted;
    }

    /** What is known of the air at the planned run, in no order; one, unless readings contradict each other. */
    List<RunAir> air() {
        return air;
    }

    /** The limits a run under a roof is held against, in no order. */
    List<RunLevel> levels() {
        return levels;
    }

    /** Every entry that says something about the machine, in no order. */
    List<Evidence> evidence() {
        return evidence;
    }

    /** Everything that nothing sets aside, in no order. */
    List<Standing> standing() {
        return standing;
    }

    /** Everything that some check wants, in no order. */
    List<Wanted> wanted() {
        return wantedHere;
    }

    /** Entries that no check reads at their place, each with what the nearest check wants, in no order. */
    List<Misplaced> misplaced() {
        return misplaced;
    }

    /** Reported defects that were closed, in no order. */
    List<Closing> closings() {
        return closings;
    }

    /** True when this entry is read for this want though it was written elsewhere. */
    boolean readsFor(Wanted wanted, String entry) {
        return misplaced.stream().anyMatch(m -> m.evidence().id().equals(entry) && m.wanted().equals(wanted));
    }

    /** Everything that does not count, in no order. */
    List<SetAside> setAside() {
        return setAside;
    }

    /** Everything held against a limit or answered, in no order. */
    List<Judgement> judgements() {
        return judgements;
    }
}
