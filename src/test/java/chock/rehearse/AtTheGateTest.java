package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Value;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The law of the gate, for every check: a machine with a good result for everything that is asked passes, and does not without
 * the evidence of this one, or with a bad answer to it. Every build tries a fixed share of the checks; {@code -Dchock.shake=cards}
 * tries all.
 */
class AtTheGateTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final int SHARE = System.getProperty("chock.shake") == null ? 10 : 1;
    private static final String TWO_STROKE = "a motorcycle with one hydraulic disc in front and a rod drum behind";
    /** What is said of each machine, and the gates it is made ready for. */
    private static final Map<List<String>, String> MACHINES = machines();

    private static Map<List<String>, String> machines() {
        Map<List<String>, String> machines = new LinkedHashMap<>();
        machines.put(List.of(TWO_STROKE), "first-start, indoor-run, road-test, hand-over");
        machines.put(List.of(TWO_STROKE, "the engine is oiled by premix"), "on-show");
        machines.put(List.of(TWO_STROKE, "the equipment has indicators yes"), "non-runner");
        machines.put(List.of("a motorcycle with two hydraulic discs in front and one hydraulic disc behind", "the engine is a four-stroke", "the engine has 2 cylinders", "the ignition is electronic",
                "the equipment has carburettors 2", "the equipment has starter electric", "the equipment has indicators yes", "the final drive is belt", "the wheels are cast", "the tyres are tubeless"), "road-test, hand-over");
        machines.put(List.of("a motorcycle with a cable drum in front and a rod drum behind", "the machine is first registered 1936-05-14", "the engine is a four-stroke", "the engine is oiled by total-loss", "the ignition is magneto",
                "the battery has 0 volts", "the equipment has front-springing girder", "the equipment has rear-springing plunger", "the final drive is shaft"), "road-test");
        return machines;
    }

    /** One check at one ready machine. */
    private record Case(JobRecord ready, java.time.Instant asOf, List<Gate> gates, Card card, Set<String> keys) {
        Assessment judged(List<Entry> entries) {
            return Assessor.assess(ready.withEntries(entries), BOOK, gates, asOf);
        }

        List<Entry> without() {
            return ready.entries().stream().filter(e -> !keys.contains(Entry.key(e.point(), e.what()))).toList();
        }
    }

    private static List<Case> cases() throws ReflectiveOperationException {
        List<Case> cases = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Map.Entry<List<String>, String> machine : MACHINES.entrySet()) {
            SpokenBench bench = new SpokenBench(BOOK);
            for (String step : machine.getKey()) {
                bench.say(step);
            }
            bench.say("a machine ready for " + machine.getValue());
            List<Gate> gates = List.of(machine.getValue().split(", ")).stream().map(id -> Gate.of(id).orElseThrow()).toList();
            Assessment judged = Assessor.assess(bench.record(), BOOK, gates, bench.asOf());
            assertThat(judged.allReleased()).as(machine.toString()).isTrue();
            Map<String, Finding> findings = new LinkedHashMap<>();
            judged.gates().forEach(g -> g.findings().forEach(f -> findings.putIfAbsent(f.check(), f)));
            for (Finding finding : findings.values()) {
                Card card = BOOK.cards().get(finding.check());
                if (!card.wants().isEmpty() && seen.add(card.id())) {
                    Set<String> keys = finding.places().stream().flatMap(p -> BOOK.laidOut(card, p.point()).keys().stream()).collect(Collectors.toSet());
                    cases.add(new Case(bench.record(), bench.asOf(), gates, card, keys));
                }
            }
        }
        assertThat(cases).as("checks that a ready machine is asked").hasSizeGreaterThan(250);
        return cases.stream().filter(c -> Math.floorMod(c.card.id().hashCode(), SHARE) == 0).toList();
    }

    private static Set<String> blockers(GateVerdict gate) {
        return gate.findings().stream().filter(f -> f.state() != State.MET).map(Finding::check).collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void withoutItsEvidenceACheckHoldsEveryGateThatAsksAndNothingElseDoes() throws ReflectiveOperationException {
        for (Case one : cases()) {
            for (GateVerdict gate : one.judged(one.without()).gates()) {
                Set<String> blockers = blockers(gate);
                assertThat(blockers.contains(one.card.id())).as(one.card.id() + " at " + gate.gate()).isEqualTo(one.card.gates().contains(gate.gate()));
                assertThat(gate.released()).as(one.card.id() + " at " + gate.gate()).isEqualTo(blockers.isEmpty());
                // What rests on the same entries, or on the record as a whole, may hold it besides.
                blockers.removeIf(check -> check.equals(one.card.id()) || BOOK.cards().get(check).wants().isEmpty()
                        || BOOK.cards().get(check).wants().stream().anyMatch(want -> one.keys.stream().anyMatch(key -> key.endsWith(want.aspect()))));
                assertThat(blockers).as("besides " + one.card.id() + " at " + gate.gate()).isEmpty();
            }
        }
    }

    @Test
    void withABadAnswerACheckHoldsEveryGateThatAsks() throws ReflectiveOperationException {
        int tried = 0;
        for (Case one : cases()) {
            Card.Want asked = one.card.wants().stream().filter(want -> !want.bad().isEmpty()).findFirst().orElse(null);
            if (asked == null) {
                continue;
            }
            String bad = asked.bad().iterator().next();
            List<Entry> entries = one.ready.entries().stream().map(e -> one.keys.contains(Entry.key(e.point(), e.what())) && e.what().equals(asked.aspect()) ? e.withValue(new Value.Answer(bad)) : e).toList();
            assertThat(entries).as(one.card.id()).isNotEqualTo(one.ready.entries());
            for (GateVerdict gate : one.judged(entries).gates()) {
                if (one.card.gates().contains(gate.gate())) {
                    assertThat(gate.released()).as(one.card.id() + " found " + bad + " at " + gate.gate()).isFalse();
                    assertThat(gate.findings()).as(one.card.id() + " found " + bad).anyMatch(f -> f.check().equals(one.card.id()) && f.state() == State.FAULT);
                }
            }
            tried++;
        }
        assertThat(tried).isGreaterThan(SHARE == 1 ? 150 : 12);
    }
}
