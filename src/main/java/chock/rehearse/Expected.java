package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.OrderOfWork;
import chock.assess.RidePlan;
import chock.assess.State;
import chock.assess.facts.RunLevel;
import chock.quantity.Quantity;
import chock.record.Gate;
import chock.rulebook.Applied;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What a scenario expects of the judgement on its record. It can be asked again of another judgement. */
sealed interface Expected {

    /** The check it is about, or null when it is about a gate. */
    String check();

    /** What was found instead, in a sentence; empty when it is as expected. */
    Optional<String> otherwise(Assessment judged);

    /** The same, where the judgement alone does not show it and the rule book has to be asked besides. */
    default Optional<String> otherwise(Assessment judged, RuleBook book) {
        return otherwise(judged);
    }

    /** Something to be seen at one gate. */
    sealed interface AtOneGate extends Expected {
        Gate gate();
    }

    /** Something of the order of work for a gate: no check, and not in the judgement. */
    sealed interface OfTheOrder extends AtOneGate {
        @Override
        default String check() {
            return null;
        }

        @Override
        default Optional<String> otherwise(Assessment judged) {
            throw new IllegalStateException("the order of work is asked of the rule book");
        }

        @Override
        default Optional<String> otherwise(Assessment judged, RuleBook book) {
            return otherwise(OrderOfWork.of(judged.record(), book, gate(), judged.asOf()).steps());
        }

        /** What was found instead among the steps. */
        Optional<String> otherwise(List<OrderOfWork.Step> steps);
    }

    private static Optional<Finding> finding(Assessment judged, String check) {
        return judged.gates().stream().flatMap(g -> g.findings().stream()).filter(f -> f.check().equals(check)).findFirst();
    }

    private static Optional<String> unless(boolean holds, String found) {
        return holds ? Optional.empty() : Optional.of(found);
    }

    /**
     * The state of a check.
     *
     * @param state id of a state, or {@code not applicable}
     * @param place the place, or null for the check as a whole
     */
    record Outcome(String check, String state, String place) implements Expected {
        static final String NOT_APPLICABLE = "not applicable";

        @Override
        public Optional<String> otherwise(Assessment judged) {
            Finding found = finding(judged, check).orElse(null);
            if (found == null) {
                return unless(state.equals(NOT_APPLICABLE), NOT_APPLICABLE + ": the check is not asked of this machine");
            }
            if (place == null || state.equals(NOT_APPLICABLE)) {
                return unless(found.state().id().equals(state), found.state().id() + ": " + found.says());
            }
            return found.places().stream().filter(p -> p.point().equals(place)).findFirst()
                    .map(p -> unless(p.state().id().equals(state), p.state().id() + ": " + p.says()))
                    .orElseGet(() -> Optional.of("the check is not asked there; it is asked at "
                            + found.places().stream().map(Finding.AtPlace::point).sorted().collect(Collectors.joining(", "))));
        }
    }

    /** Words in the sentence of a finding. */
    record Saying(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> says = finding(judged, check).map(f -> f.places().stream().map(Finding.AtPlace::says).toList()).orElse(List.of());
            return unless(says.stream().anyMatch(s -> s.contains(part)), says.isEmpty() ? "nothing" : String.join(" ", says));
        }
    }

    /** Words that stand in no sentence of that finding. */
    record NotSaying(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            Optional<Finding> found = finding(judged, check);
            List<String> with = found.stream().flatMap(f -> f.places().stream()).map(Finding.AtPlace::says).filter(s -> s.contains(part)).toList();
            return unless(found.isPresent() && with.isEmpty(), found.isEmpty() ? "nothing" : String.join(" ", with));
        }
    }

    /** Words in a note. */
    record Noting(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> notes = finding(judged, check).map(Finding::notes).orElse(List.of());
            return unless(notes.stream().anyMatch(n -> n.contains(part)), notes.isEmpty() ? "no note" : String.join("; ", notes));
        }
    }

    /** Words in every note, of which there is one at least. */
    record NotingOnly(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> notes = finding(judged, check).map(Finding::notes).orElse(List.of());
            return unless(!notes.isEmpty() && notes.stream().allMatch(n -> n.contains(part)), notes.isEmpty() ? "no note" : String.join("; ", notes));
        }
    }

    /** That there is no note. */
    record NotingNothing(String check) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> notes = finding(judged, check).map(Finding::notes).orElse(List.of());
            return unless(notes.isEmpty(), String.join("; ", notes));
        }
    }

    /** Words in the source of the limit that decided. */
    record LimitFrom(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<Finding.AtPlace> limited = finding(judged, check).map(f -> f.places().stream().filter(p -> p.limit() != null).toList()).orElse(List.of());
            return unless(limited.stream().anyMatch(p -> p.limit().source().words().contains(part)),
                    limited.isEmpty() ? "no limit decided" : limited.stream().map(p -> p.limit().words()).distinct().collect(Collectors.joining("; ")));
        }
    }

    /** Words in the remedy. */
    record ClearedBy(String check, String part) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            String remedy = finding(judged, check).map(Finding::remedy).orElse(null);
            return unless(remedy != null && remedy.contains(part), remedy == null ? "nothing has to be cleared" : remedy);
        }
    }

    /**
     * The last day on which a finding stays met if nobody touches the machine.
     *
     * @param minute the last minute of that day, or null when any will do
     */
    record HoldsUntil(String check, LocalDate day, LocalTime minute) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            Instant lapses = finding(judged, check).map(Finding::lapses).orElse(null);
            ZonedDateTime last = lapses == null ? null : lapses.minusSeconds(1).atZone(judged.record().zone());
            boolean then = last != null && day.equals(last.toLocalDate()) && (minute == null || minute.equals(last.toLocalTime().truncatedTo(ChronoUnit.MINUTES)));
            return unless(then, last == null ? "it does not lapse by itself, or is not met" : "it holds until " + last.toLocalDate() + ", " + last.toLocalTime().truncatedTo(ChronoUnit.MINUTES));
        }
    }

    /** The verdict at a gate. */
    record Verdict(Gate gate, String verdict) implements AtOneGate {
        @Override
        public String check() {
            return null;
        }

        @Override
        public Optional<String> otherwise(Assessment judged) {
            GateVerdict found = at(judged, gate);
            return unless(found.verdict().equals(verdict), found.verdict() + blockers(found));
        }

        private static String blockers(GateVerdict found) {
            List<Finding> open = found.open();
            return open.isEmpty() ? "" : " by " + open.size() + ": " + open.stream().limit(5).map(f -> f.check() + " " + f.state().id()).collect(Collectors.joining(", ")) + (open.size() > 5 ? ", …" : "");
        }
    }

    /**
     * Whether a known fault of a check holds a gate.
     *
     * @param closes whether it does
     */
    record Closes(Gate gate, String check, boolean closes) implements AtOneGate {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            GateVerdict found = at(judged, gate);
            boolean asked = found.findings().stream().anyMatch(f -> f.check().equals(check) && f.state() == State.FAULT);
            boolean unasked = found.closedBy().stream().anyMatch(c -> c.check().equals(check));
            return unless((asked || unasked) == closes, asked ? check + " is asked there, and is fault" : unasked ? "a known fault of " + check + " closes it" : "no known fault of " + check + " closes it");
        }
    }

    /**
     * The gates at which a check holds the machine: asked for there, or closed by its known fault. At every other gate it holds nothing.
     *
     * @param gates those gates; all of them have to be judged
     */
    record Holding(String check, Set<Gate> gates) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            Set<Gate> found = new TreeSet<>();
            judged.gates().stream().filter(g -> blockers(g).contains(check)).forEach(g -> found.add(g.gate()));
            return unless(found.equals(gates), found.isEmpty() ? "it holds no gate" : "it holds " + found.stream().map(Gate::id).collect(Collectors.joining(", ")));
        }
    }

    /** That one check holds a gate and no other does. */
    record Alone(Gate gate, String check) implements AtOneGate {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            GateVerdict found = at(judged, gate);
            return unless(!found.released() && found.ruleBookFaults().isEmpty() && blockers(found).equals(Set.of(check)), found.verdict() + Verdict.blockers(found));
        }
    }

    /** Whether somebody gets hurt when a check is wrong. */
    record Critical(String check, boolean critical) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            Boolean found = finding(judged, check).map(Finding::critical).orElse(null);
            return unless(found != null && found == critical, found == null ? "the check is not asked of this machine" : found ? "it is safety-critical" : "it is not safety-critical");
        }
    }

    /** That a finding changes only when somebody works on the machine. */
    record NeverLapsing(String check) implements Expected {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            Finding found = finding(judged, check).orElse(null);
            return unless(found != null && found.state() == State.MET && found.lapses() == null, found == null ? "the check is not asked of this machine"
                    : found.lapses() == null ? "it is " + found.state().id() : "it lapses at " + found.lapses().atZone(judged.record().zone()).toLocalDateTime());
        }
    }

    /** All the checks that the remaining work for a gate can prove only so. */
    record OnlyNeeding(Gate gate, Set<String> checks, Card.Needs needs) implements OfTheOrder {
        @Override
        public Optional<String> otherwise(List<OrderOfWork.Step> steps) {
            Set<String> found = steps.stream().filter(step -> step.needs() == needs)
                    .flatMap(step -> step.checks().stream()).collect(Collectors.toCollection(TreeSet::new));
            return unless(found.equals(checks), "it is " + (found.isEmpty() ? "nothing" : String.join(", ", found)));
        }
    }

    /** What is to be done first for a gate. */
    record FirstStep(Gate gate, String part) implements OfTheOrder {
        @Override
        public Optional<String> otherwise(List<OrderOfWork.Step> steps) {
            return unless(!steps.isEmpty() && steps.get(0).says().contains(part), steps.isEmpty() ? "there is nothing left to do" : steps.get(0).says());
        }
    }

    /** The one work that the first step for a gate names, and where. */
    record FirstWork(Gate gate, String place, String work) implements OfTheOrder {
        @Override
        public Optional<String> otherwise(List<OrderOfWork.Step> steps) {
            boolean first = !steps.isEmpty() && steps.get(0).point().equals(place) && work.equals(steps.get(0).what());
            return unless(first, steps.isEmpty() ? "there is nothing left to do" : steps.get(0).says());
        }
    }

    /** The checks that hold a gate, by a finding of its own or by a known fault. */
    private static Set<String> blockers(GateVerdict found) {
        return Stream.concat(found.open().stream().map(Finding::check), found.closedBy().stream().map(c -> c.check())).collect(Collectors.toCollection(TreeSet::new));
    }

    /**
     * The last day a release is good for.
     *
     * @param because the check that lapses first, or null when that does not matter
     */
    record ReleasedUntil(Gate gate, LocalDate day, String because) implements AtOneGate {
        @Override
        public String check() {
            return null;
        }

        @Override
        public Optional<String> otherwise(Assessment judged) {
            GateVerdict found = at(judged, gate);
            if (!found.released()) {
                return Optional.of("blocked" + Verdict.blockers(found));
            }
            LocalDate last = found.holdsUntil().atZone(judged.record().zone()).toLocalDate();
            List<String> first = found.findings().stream().filter(f -> found.holdsUntil().plusSeconds(1).equals(f.lapses())).map(Finding::check).sorted().toList();
            return unless(last.equals(day) && (because == null || first.contains(because)),
                    "released until " + last + (first.isEmpty() ? ", the longest a release is good for" : ", when " + String.join(" and ", first) + " lapses"));
        }
    }

    /** The reading of the meter at which the plan of a run under a roof ends it. */
    record RunEndsAt(Quantity reading) implements Expected {
        @Override
        public String check() {
            return null;
        }

        @Override
        public Optional<String> otherwise(Assessment judged) {
            Applied stop = at(judged, Gate.INDOOR_RUN).run().levels().get(RunLevel.Name.STOP);
            return unless(stop != null && stop.bounds().high().compareTo(reading) == 0, stop == null ? "the plan names no reading" : stop.words());
        }
    }

    /** Something of the plan of a ride or of a run under a roof. */
    sealed interface OfThePlan extends AtOneGate {
        @Override
        default String check() {
            return null;
        }
    }

    /** A plan from its first line to its last: of the ride at road-test, of the run under a roof at indoor-run. */
    record Planned(Gate gate, List<String> lines) implements OfThePlan {
        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> found = PlanInWords.of(judged, gate);
            for (int i = 0; i < Math.max(found.size(), lines.size()); i++) {
                String there = i < found.size() ? found.get(i) : "the plan has ended";
                if (i >= lines.size() || !there.equals(lines.get(i))) {
                    return Optional.of("line " + (i + 1) + " is: " + there);
                }
            }
            return Optional.empty();
        }
    }

    /** Everything that holds the ride back, in the order of the plan. */
    record HeldBack(List<String> because) implements OfThePlan {
        @Override
        public Gate gate() {
            return Gate.ROAD_TEST;
        }

        @Override
        public Optional<String> otherwise(Assessment judged) {
            List<String> found = RidePlan.of(judged.record(), judged).stream().flatMap(plan -> plan.restraints().stream()).map(RidePlan.Restraint::because).toList();
            return unless(found.equals(because), found.isEmpty() ? "nothing holds the ride back" : "it is held back: " + String.join("; ", found));
        }
    }

    private static GateVerdict at(Assessment judged, Gate gate) {
        return judged.gates().stream().filter(g -> g.gate() == gate).findFirst().orElseThrow();
    }
}
