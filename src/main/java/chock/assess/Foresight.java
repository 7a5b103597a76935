package chock.assess;

import chock.assess.facts.Judgement;
import chock.assess.facts.Standing;
import chock.figure.TyreDate;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Value;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.BinaryOperator;

/**
 * What happens to verdicts if nobody writes anything more. Only few moments can change anything: evidence gets too old, a
 * limit of age is reached, a limit comes into force, the week of a date code begins. These are collected, and judged in
 * order; no day is stepped through.
 */
public final class Foresight {
    private static final LocalDate END = LocalDate.of(2999, 12, 31);
    /**
     * How far ahead is looked for a first change. Nothing holds so long, and no limit of age is so long; beyond it the
     * same date code names another century again and again, and a gate that nothing changes would be looked ahead for
     * without end.
     */
    private static final Period FAR = Period.ofYears(30);

    private Foresight() { }

    /**
     * One finding that changes by itself.
     *
     * @param at first instant of the new state
     * @param before its state until then, or null when it was not asked for
     * @param after its state from then on, or null when it is no longer asked for
     */
    public record Turn(Instant at, Gate gate, String check, State before, State after) { }

    /** As {@link Assessor#assess}; and each verdict carries the first change, and a release ends before it. */
    public static Assessment assess(JobRecord record, RuleBook book, List<Gate> gates, Instant asOf) {
        try (Reasoning reasoning = Reasoning.of(record, book, asOf)) {
            return ahead(Assessor.judged(record, book, gates, asOf, reasoning.concluded()), reasoning, book);
        }
    }

    /** @param reasoning at the moment of that judgement; it is led on */
    static Assessment ahead(Assessment judged, Reasoning reasoning, RuleBook book) {
        Map<Gate, Changes> first = new LinkedHashMap<>();
        List<Gate> gates = judged.gates().stream().map(GateVerdict::gate).toList();
        Walk walk = new Walk(judged.record(), book, gates, reasoning);
        walk.stand(judged.asOf(), reasoning.concluded());
        Instant last = judged.asOf().atZone(judged.record().zone()).plus(FAR).toInstant();
        while (first.size() < gates.size() && walk.step(last)) {
            for (Gate gate : gates) {
                List<String> checks = walk.turned.stream().filter(t -> t.gate() == gate).map(Turn::check).distinct().toList();
                if (!checks.isEmpty()) {
                    first.putIfAbsent(gate, new Changes(walk.at, checks));
                }
            }
        }
        return judged.with(judged.gates().stream().map(g -> g.with(first.getOrDefault(g.gate(), new Changes(null, List.of())))).toList());
    }

    /** Every change by itself after the one moment, up to and with the other, in order. */
    public static List<Turn> between(JobRecord record, RuleBook book, List<Gate> gates, Instant after, Instant last) {
        List<Turn> turns = new ArrayList<>();
        try (Reasoning reasoning = Reasoning.of(record, book, after)) {
            Walk walk = new Walk(record, book, gates, reasoning);
            walk.stand(after, reasoning.concluded());
            while (walk.step(last)) {
                turns.addAll(walk.turned);
            }
        }
        return turns;
    }

    /** From change to change. */
    private static final class Walk {
        private final JobRecord record;
        private final RuleBook book;
        private final List<Gate> gates;
        private final Reasoning reasoning;
        private Instant at;
        private Conclusions concluded;
        private Map<Gate, Map<String, Map<String, State>>> states;
        private List<Turn> turned = List.of();

        Walk(JobRecord record, RuleBook book, List<Gate> gates, Reasoning reasoning) {
            this.record = record;
            this.book = book;
            this.gates = gates.stream().distinct().toList();
            this.reasoning = reasoning;
        }

        private void go(Instant to) {
            stand(to, reasoning.at(to));
        }

        void stand(Instant moment, Conclusions then) {
            at = moment;
            concluded = then;
            states = new LinkedHashMap<>();
            for (Gate gate : gates) {
                Map<String, Map<String, State>> checks = new TreeMap<>();
                book.cards().values().stream().filter(card -> card.gates().contains(gate)).forEach(card -> then.required(card.id()).forEach(asked ->
                        checks.computeIfAbsent(card.id(), c -> new TreeMap<>()).merge(asked.point(), then.state(asked).orElse(State.MISSING), BinaryOperator.minBy(Comparator.naturalOrder()))));
                book.cards().keySet().forEach(check -> then.closing(check, gate).forEach(closing -> checks.computeIfAbsent(check, c -> new TreeMap<>()).put(closing.point(), State.FAULT)));
                states.put(gate, checks);
            }
        }

        /** Goes to the next change that is not later than {@code last}; false when there is none. */
        boolean step(Instant last) {
            Map<Gate, Map<String, Map<String, State>>> before = states;
            for (Instant candidate : candidates()) {
                if (candidate.isAfter(last)) {
                    return false;
                }
                go(candidate);
                turned = turns(before, states);
                if (!turned.isEmpty()) {
                    return true;
                }
            }
            return false;
        }

        private List<Turn> turns(Map<Gate, Map<String, Map<String, State>>> before, Map<Gate, Map<String, Map<String, State>>> after) {
            List<Turn> turns = new ArrayList<>();
            for (Gate gate : gates) {
                SortedSet<String> checks = new TreeSet<>(before.get(gate).keySet());
                checks.addAll(after.get(gate).keySet());
                for (String check : checks) {
                    Map<String, State> was = before.get(gate).getOrDefault(check, Map.of());
                    Map<String, State> is = after.get(gate).getOrDefault(check, Map.of());
                    if (!was.equals(is)) {
                        turns.add(new Turn(at, gate, check, worst(was), worst(is)));
                    }
                }
            }
            return turns;
        }

        private static State worst(Map<String, State> places) {
            return places.values().stream().min(State::compareTo).orElse(null);
        }

        private NavigableSet<Instant> candidates() {
            return moments(record, book, concluded, at);
        }
    }

    /**
     * Every moment after this judgement at which a finding may change by itself, until the first of them does. What is set
     * aside stays so, and a check asked for anew is itself a change: so what stands now is all that matters.
     *
     * @param concluded what the rules concluded
     * @param at when they did
     */
    static NavigableSet<Instant> moments(JobRecord record, RuleBook book, Conclusions concluded, Instant at) {
        NavigableSet<Instant> all = new TreeSet<>();
        ZoneId zone = record.zone();
        concluded.standing().stream().map(s -> s.wanted().lapse(s.evidence())).filter(Objects::nonNull).forEach(all::add);
        concluded.judgements().stream().map(Judgement::lapses).filter(Objects::nonNull).forEach(all::add);
        LocalDate today = at.atZone(zone).toLocalDate();
        book.limitsFrom(today, END).forEach(day -> all.add(day.atStartOfDay(zone).toInstant()));
        for (Standing standing : concluded.standing()) {
            if (standing.evidence().entry().is() instanceof Value.Code code && standing.wanted().want().aspect().equals("date-code")) {
                TyreDate.readChanges(code.text(), today).forEach(day -> all.add(day.atStartOfDay(zone).toInstant()));
            }
        }
        return all.tailSet(at, false);
    }
}
