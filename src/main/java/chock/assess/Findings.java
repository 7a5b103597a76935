package chock.assess;

import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What is found of each check, told once however many gates ask for it. A check of which nothing was written is told
 * once for all machines of the description.
 */
final class Findings {
    private static final Comparator<Found> WORST_FIRST = Comparator.comparing((Found one) -> one.finding.state())
            .thenComparing(one -> !one.finding.critical()).thenComparing(one -> one.finding.check());

    /** In the order of the rule book. */
    private final List<Found> all = new ArrayList<>();
    private final List<Found> worstFirst = new ArrayList<>();

    /**
     * One check.
     *
     * @param finding null when it is not asked of this machine
     * @param notAsked null when it is asked
     * @param faults where the rule book could not decide
     */
    private record Found(Card card, Finding finding, GateVerdict.NotApplicable notAsked, List<String> faults) { }

    private Findings() { }

    static Findings of(JobRecord record, RuleBook book, Collection<Gate> gates, Conclusions concluded) {
        Findings findings = new Findings();
        for (Card card : book.cards().values()) {
            if (gates.stream().anyMatch(card.gates()::contains)) {
                findings.all.add(found(card, concluded, record));
            }
        }
        findings.all.stream().filter(one -> one.finding != null).sorted(WORST_FIRST).forEach(findings.worstFirst::add);
        return findings;
    }

    private static Found found(Card card, Conclusions concluded, JobRecord record) {
        List<Required> asked = concluded.required(card.id());
        if (asked.isEmpty()) {
            return new Found(card, null, new GateVerdict.NotApplicable(card.id(),
                    "asked of " + card.applies() + "; this machine has none"), List.of());
        }
        if (asked.stream().allMatch(concluded::isUnwritten)) {
            Finding unwritten = concluded.requirements().asked().unwrittenOf(card,
                    () -> told(card, asked, concluded, record, new ArrayList<>()));
            return new Found(card, unwritten, null, List.of());
        }
        List<String> faults = new ArrayList<>();
        return new Found(card, told(card, asked, concluded, record, faults), null, faults);
    }

    private static Finding told(Card card, List<Required> asked, Conclusions concluded, JobRecord record,
            List<String> faults) {
        List<Finding.AtPlace> places = new ArrayList<>();
        Instant lapses = null;
        for (Required required : asked) {
            Optional<State> state = concluded.state(required);
            if (state.isEmpty()) {
                faults.add("the rule book gave " + concluded.of(required, Outcome.class).size() + " outcomes for "
                        + card.id() + " at " + required.point());
                places.add(new Finding.AtPlace(required.point(), State.MISSING, Points.title(required.point())
                        + ": the rule book could not evaluate this", null, null, null, List.of(), List.of()));
                continue;
            }
            Telling telling = new Telling(required, state.get(), card, concluded, record);
            places.add(telling.place());
            lapses = Judge.earlier(telling.lapses(), lapses);
        }
        return whole(card, places, lapses, concluded);
    }

    /** The outcome of a check from those of its places, which are put in order. */
    static Finding whole(Card card, List<Finding.AtPlace> places, Instant lapses, Conclusions concluded) {
        places.sort(Comparator.comparing(Finding.AtPlace::state).thenComparing(Finding.AtPlace::point));
        Finding.AtPlace worst = places.get(0);
        boolean met = worst.state() == State.MET;
        String remedy = FirstToDo.about(card, worst.state(), worst.point(), concluded);
        List<String> notes = places.stream().flatMap(p -> p.notes().stream()).distinct().toList();
        Set<String> evidence = new TreeSet<>();
        places.forEach(p -> evidence.addAll(p.evidence()));
        return new Finding(card.id(), worst.state(), worst.says(), worst.measured(), worst.limit(), worst.margin(),
                remedy, card.caution(), notes, List.copyOf(evidence), card.critical(), List.copyOf(places),
                met ? lapses : null);
    }

    /** Those that a gate asks for, the worst first. */
    List<Finding> at(Gate gate) {
        return worstFirst.stream().filter(one -> one.card.gates().contains(gate)).map(Found::finding).toList();
    }

    /** The checks of a gate that are not asked of this machine. */
    List<GateVerdict.NotApplicable> notAskedAt(Gate gate) {
        return all.stream().filter(one -> one.notAsked != null && one.card.gates().contains(gate))
                .map(Found::notAsked).toList();
    }

    /** Checks of a gate that the rule book could not decide. */
    List<String> undecidedAt(Gate gate) {
        return all.stream().filter(one -> one.card.gates().contains(gate))
                .flatMap(one -> one.faults.stream()).toList();
    }
}
