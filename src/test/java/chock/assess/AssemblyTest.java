package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
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

    /** The rows that are tried on whole records, with every rule that has a say in it. */
    static Stream<AssemblyCases.Block> cases() throws IOException {
        return AssemblyCases.read(AssemblyCases.FOLDER.resolve("cases.txt")).stream();
    }

    /** All other rows: many, and so asked of what undoes each proof alone. */
    static Stream<AssemblyCases.Block> rows() throws IOException {
        List<AssemblyCases.Block> rows = new ArrayList<>();
        try (Stream<Path> files = Files.list(AssemblyCases.FOLDER)) {
            for (Path file : files.filter(f -> !f.endsWith("cases.txt") && !f.getFileName().toString().startsWith("undone-")).sorted().toList()) {
                rows.addAll(AssemblyCases.read(file));
            }
        }
        return rows.stream();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void eachProofDiesOfTheWorkThatTouchesItAndOfNoOther(AssemblyCases.Block row) {
        assertThat(row.machines()).isNotEmpty();
        assertThat(row.dies().size() + row.stands().size()).isPositive();
        assertThat(AssemblyCases.wrong(row)).as(row.toString()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void workTakesAwayWhatItTouchesAndNothingElse(AssemblyCases.Block one) throws IOException {
        String machine = one.machines().get(0);
        JobRecord ready = ready(machine);
        Conclusions before = BEFORE.computeIfAbsent(machine, m -> Assessor.conclude(ready, Examples.BOOK, Examples.DAY));
        List<Entry> entries = new ArrayList<>(ready.entries());
        for (String work : one.works()) {
            String[] at = work.split(" ");
            entries.add(new Entry("later-" + entries.size(), ReadyMachine.ago(ready, 1), "ida", Deed.DONE, at[0], at[1], null, null, null, null, null, 0));
        }
        Conclusions after = Assessor.conclude(RandomRecords.with(ready, entries), Examples.BOOK, Examples.DAY);
        List<String> wrong = new ArrayList<>();
        for (String proof : one.dies()) {
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
        for (String proof : one.stands()) {
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
            READY.put(name, ReadyMachine.ready(bare(CaseMachines.named(name))));
        }
        return READY.get(name);
    }

    private static JobRecord bare(Machine machine) {
        JobRecord one = ReadyMachine.bare(machine, ZoneId.of("Europe/London"), "GB", false, ReadyMachine.Manual.WHAT_IS_NEEDED, Gate.HAND_OVER);
        return new JobRecord(one.id(), one.workshop(), one.zone(), one.territory(), one.onePerson(), GATES, one.machine(), one.maker(), one.people(), one.instruments(), one.entries(), one.claims(), one.form());
    }
}
