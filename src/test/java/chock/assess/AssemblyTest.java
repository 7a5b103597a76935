package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Wanted;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.Machine.Cycle;
import chock.record.Machine.Engine;
import chock.record.Machine.Equipment;
import chock.record.Machine.Oiling;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Work on one part of a machine of which everything is proven: what must be proven again, and what need not. */
class AssemblyTest {
    private static final List<Gate> GATES = List.of(Gate.FIRST_START, Gate.INDOOR_RUN, Gate.ROAD_TEST, Gate.HAND_OVER);
    private static final Map<String, JobRecord> READY = new HashMap<>();
    private static final Map<String, Conclusions> BEFORE = new HashMap<>();

    /** One row of the table: work on a machine, and the proofs it takes and leaves. */
    private record Case(String machine, List<String> works, List<String> dies, List<String> stands) {
        @Override
        public String toString() {
            return machine + ": " + String.join(", ", works);
        }
    }

    static Stream<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        String machine = null;
        Case open = null;
        for (String line : Files.readAllLines(Path.of("src/test/resources/assembly/cases.txt"))) {
            String[] words = line.strip().split(" +");
            List<String> rest = List.of(words).subList(1, words.length);
            switch (words[0]) {
                case "machine" -> machine = rest.get(0);
                case "work" -> {
                    if (open == null || !open.dies.isEmpty() || !open.stands.isEmpty()) {
                        open = new Case(machine, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
                        cases.add(open);
                    }
                    open.works.add(String.join(" ", rest));
                }
                case "dies" -> open.dies.addAll(rest);
                case "stands" -> open.stands.addAll(rest);
                default -> assertThat(line).matches("#.*|\\s*");
            }
        }
        return cases.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void workTakesAwayWhatItTouchesAndNothingElse(Case one) throws IOException {
        JobRecord ready = ready(one.machine);
        Conclusions before = BEFORE.computeIfAbsent(one.machine, m -> Assessor.conclude(ready, Examples.BOOK, Examples.DAY));
        List<Entry> entries = new ArrayList<>(ready.entries());
        for (String work : one.works) {
            String[] at = work.split(" ");
            entries.add(new Entry("later-" + entries.size(), ReadyMachine.ago(ready, 1), "ida", Deed.DONE, at[0], at[1], null, null, null, null, null, 0));
        }
        Conclusions after = Assessor.conclude(RandomRecords.with(ready, entries), Examples.BOOK, Examples.DAY);
        List<String> wrong = new ArrayList<>();
        for (String proof : one.dies) {
            if (before.required(proof).isEmpty() && proof.matches("[a-z.-]+")) {
                // Asked only since this work was done: there was nothing to take away, and it must not be met by itself.
                assertThat(after.required(proof)).as(proof + " is asked after " + one).isNotEmpty().allMatch(r -> after.state(r).orElseThrow() != State.MET);
                continue;
            }
            asked(before, proof).forEach(r -> {
                if (undone(after, r, want(proof)).isEmpty()) {
                    wrong.add(r + " stands, and has to be proven again");
                } else if (want(proof) == null && after.state(r).orElseThrow() == State.MET) {
                    wrong.add(r + " is met, though evidence for it was undone");
                }
            });
        }
        for (String proof : one.stands) {
            asked(before, proof).forEach(r -> undone(after, r, want(proof)).forEach(w -> wrong.add(r + ", " + w.name() + " is undone, and has nothing to do with it")));
        }
        assertThat(wrong).as(one.toString()).isEmpty();
    }

    /** Where a proof is asked; it must be asked somewhere, and be there, or the row shows nothing. */
    private static List<Required> asked(Conclusions before, String proof) {
        String[] at = proof.replaceFirst("#.*", "").split("@");
        List<Required> asked = before.required(at[0]).stream().filter(r -> at.length == 1 || r.point().equals(at[1])).toList();
        assertThat(asked).as(proof + " is asked of this machine").isNotEmpty();
        asked.forEach(r -> assertThat(before.of(r, chock.assess.facts.Standing.class)).as(proof + " at " + r.point() + " is proven before").isNotEmpty());
        return asked;
    }

    private static String want(String proof) {
        return proof.contains("#") ? proof.replaceFirst(".*#", "") : null;
    }

    private static List<Wanted> undone(Conclusions after, Required required, String want) {
        return after.of(required, SetAside.class).stream().filter(s -> s.reason() == SetAside.Reason.UNDONE && s.by().startsWith("later-"))
                .map(SetAside::wanted).filter(w -> want == null || w.name().equals(want)).distinct().toList();
    }

    private static JobRecord ready(String name) throws IOException {
        if (!READY.containsKey(name)) {
            READY.put(name, ReadyMachine.ready(bare(machine(name))));
        }
        return READY.get(name);
    }

    private static JobRecord bare(Machine machine) {
        JobRecord one = ReadyMachine.bare(machine, ZoneId.of("Europe/London"), "GB", false, ReadyMachine.Manual.WHAT_IS_NEEDED, Gate.HAND_OVER);
        return new JobRecord(one.id(), one.workshop(), one.zone(), one.territory(), one.onePerson(), GATES, one.machine(), one.maker(), one.people(), one.instruments(), one.entries(), one.claims(), one.form());
    }

    private static Machine machine(String name) throws IOException {
        Machine m = Examples.read("merle-released.yaml").machine();
        return switch (name) {
            case "two-stroke" -> with(m, m.kind(), m.engine());
            case "four-stroke" -> with(m, m.kind(), new Engine(Cycle.FOUR_STROKE, Quantity.parse("347 cc"), 2, Oiling.WET_SUMP, Machine.Ignition.POINTS, Machine.Cooling.AIR));
            case "outfit" -> with(m, Machine.Kind.MOTORCYCLE_SIDECAR, m.engine());
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static Machine with(Machine m, Machine.Kind kind, Engine engine) {
        Equipment e = m.equipment();
        return new Machine(m.marque(), m.model(), m.frameNumber(), m.engineNumber(), kind, m.built(), m.firstRegistered(), m.topSpeed(), m.seats(), engine, m.frontBrake(), m.rearBrake(),
                m.linkedBrakes(), m.frontWheel(), m.rearWheel(), m.drive(), m.volts(), e, m.history());
    }
}
