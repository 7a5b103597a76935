package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * The table of dangers, read here by itself and not through the cards: for every check, every bad answer and every gate,
 * whether a known fault closes that gate. The program has to agree exactly.
 */
@Tag("slow")
class DangerTableTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final Map<Character, Gate> LETTERS = Map.of('F', Gate.FIRST_START, 'I', Gate.INDOOR_RUN, 'R', Gate.ROAD_TEST, 'S', Gate.ON_SHOW, 'H', Gate.HAND_OVER, 'N', Gate.NON_RUNNER);
    /** Checks that cannot be at fault: they want work, a mark or a figure, and its absence is missing. */
    private static final Set<String> NEVER_AT_FAULT = new TreeSet<>(Set.of(
            "brakes.banjo-torque", "brakes.bedded", "brakes.bled", "brakes.caliper-bolts", "engine.coolant-renewed", "engine.head-recheck", "engine.head-retorque",
            "engine.head-torque", "fasteners.engine-mounts", "fasteners.final-drive", "fasteners.footrests", "fasteners.handlebar-clamps",
            "fasteners.rear-dampers", "fasteners.stands", "fasteners.torque-arm", "fasteners.yoke-clamps", "handover.ridden", "oil.pump-bled",
            "record.agreement", "record.as-built", "record.description", "record.instrument-calibrated", "record.plausible", "record.second-person",
            "tyres.rim-tape", "tyres.spindle-torque", "tyres.tube"));

    private static final Map<String, Row> TABLE = new TreeMap<>();
    private static final Map<String, List<Shown>> FAULTS = new TreeMap<>();
    private static final Map<String, Shown> ASKED = new TreeMap<>();

    /** One line of the table. */
    private record Row(Set<Gate> asked, List<String> dangers, List<Further> further) {
        /** Every gate that a fault with this answer closes; null where it is no answer. */
        Set<Gate> closed(Set<String> answers) {
            Set<Gate> closed = EnumSet.copyOf(asked);
            further.stream().filter(f -> f.only.isEmpty() || f.only.stream().anyMatch(answers::contains)).forEach(f -> closed.addAll(f.gates));
            return closed;
        }

        /** True when amounts, places or exceptions decide as well, which scenarios of their own show. */
        boolean isSimple() {
            return further.stream().allMatch(f -> f.plain);
        }
    }

    /** What a scenario says of a machine, and the moment it is judged at. */
    private record Shown(JobRecord record, Instant asOf) { }

    private record Further(Set<Gate> gates, Set<String> only, boolean plain) { }

    @BeforeAll
    static void read() throws IOException, ReflectiveOperationException {
        for (String line : Files.readAllLines(Path.of("src/test/resources/dangers/table.txt"))) {
            if (!line.startsWith("#")) {
                String[] cells = line.split(" \\| ");
                List<Further> further = cells[3].equals("-") ? List.of() : Arrays.stream(cells[3].split("; ")).map(DangerTableTest::further).toList();
                TABLE.put(cells[0], new Row(gates(cells[1]), List.of(cells[2].split(" ")), further));
            }
        }
        for (ToldScenario told : ToldScenario.all()) {
            for (String check : told.checks()) {
                boolean fault = told.says(check, "fault");
                if (fault && FAULTS.getOrDefault(check, List.of()).size() < 4 || !ASKED.containsKey(check) && told.says(check, "met")) {
                    SpokenBench bench = new SpokenBench(BOOK);
                    for (String step : told.given()) {
                        bench.say(step);
                    }
                    (fault ? FAULTS.computeIfAbsent(check, c -> new ArrayList<>()) : new ArrayList<Shown>()).add(new Shown(bench.record(), bench.asOf()));
                    ASKED.putIfAbsent(check, new Shown(bench.record(), bench.asOf()));
                }
            }
        }
    }

    private static Set<Gate> gates(String letters) {
        return Arrays.stream(letters.split(" ")).map(letter -> LETTERS.get(letter.charAt(0))).collect(Collectors.toCollection(() -> EnumSet.noneOf(Gate.class)));
    }

    /** {@code F I R H for open missing}, {@code S unless tank-empty}. */
    private static Further further(String words) {
        String plain = words.replaceFirst(" unless .*", "");
        String[] sides = plain.split(" for ");
        String letters = sides[0].replaceFirst(" (below|over|at) .*", "");
        return new Further(gates(letters), sides.length == 1 ? Set.of() : Set.of(sides[1].split(" ")), letters.equals(sides[0]));
    }

    @Test
    void theTableSpeaksOfEveryCheckAndOfItsGatesAndDangers() {
        assertThat(TABLE.keySet()).containsExactlyElementsOf(BOOK.cards().keySet());
        TABLE.forEach((check, row) -> {
            assertThat(BOOK.cards().get(check).gates()).as(check).isEqualTo(row.asked);
            assertThat(BOOK.cards().get(check).dangers()).as(check).isEqualTo(row.dangers);
        });
    }

    @Test
    void everyBadAnswerClosesTheGatesOfTheTable() {
        List<String> wrong = Collections.synchronizedList(new ArrayList<>());
        Map<String, Runnable> tries = new LinkedHashMap<>();
        for (Card card : BOOK.cards().values()) {
            for (Card.Want want : card.wants()) {
                for (String answer : want.bad()) {
                    tries.put(card.id() + " " + want.name() + " " + answer, () -> wrongly(card, want, answer).ifPresent(wrong::add));
                }
            }
        }
        assertThat(tries).hasSizeGreaterThan(700);
        tries.values().parallelStream().forEach(Runnable::run);
        assertThat(wrong).isEmpty();
    }

    private static Optional<String> wrongly(Card card, Card.Want want, String answer) {
        Shown shown = ASKED.get(card.id());
        if (shown == null) {
            return Optional.of(card.id() + ": no scenario asks for it");
        }
        JobRecord record = shown.record;
        String point = placeOf(card, want, shown);
        LocalDate day = LocalDate.ofInstant(shown.asOf, record.zone());
        List<Entry> entries = new ArrayList<>(record.entries());
        entries.add(new Entry("fault", new Moment(day, LocalTime.of(11, 30), record.zone()), "tom", want.weakest(), point, want.aspect(), new Value.Answer(answer), null, null, null, null, 0));
        Set<Gate> closed = closedBy(card.id(), new Shown(record.withEntries(entries), shown.asOf));
        Set<Gate> expected = TABLE.get(card.id()).closed(Set.of(answer));
        return closed.equals(expected) ? Optional.empty() : Optional.of(card.id() + " " + answer + " at " + point + ": closes " + closed + ", and the table says " + expected);
    }

    /** A place where the machine of this record is asked for it. */
    private static String placeOf(Card card, Card.Want want, Shown shown) {
        String asked = verdicts(shown).stream().flatMap(g -> g.findings().stream()).filter(f -> f.check().equals(card.id())).map(f -> f.places().get(0).point()).findFirst().orElseThrow(() -> new AssertionError(card.id() + " is not asked"));
        Map<String, List<String>> words = BOOK.library().places();
        return want.place() == null ? asked : want.place().points(card.place().match(asked, words).orElseThrow(), words).get(0);
    }

    @Test
    void everyFaultOfTheScenariosClosesTheGatesOfTheTable() {
        List<String> wrong = Collections.synchronizedList(new ArrayList<>());
        Set<String> tried = Collections.synchronizedSet(new TreeSet<>());
        FAULTS.entrySet().parallelStream().forEach(faults -> {
            Row row = TABLE.get(faults.getKey());
            Card card = BOOK.cards().get(faults.getKey());
            if (row.isSimple()) {
                for (Shown shown : faults.getValue()) {
                    JobRecord record = shown.record;
                    Set<String> answers = record.entries().stream().filter(e -> card.wants().stream().anyMatch(w -> w.aspect().equals(e.what()))).map(e -> String.valueOf(e.is())).collect(Collectors.toSet());
                    Set<Gate> closed = closedBy(card.id(), shown);
                    if (!closed.equals(row.closed(answers))) {
                        wrong.add(card.id() + " in " + record.entries().stream().map(e -> e.point() + " " + e.what() + " " + e.is()).toList() + ": closes " + closed + ", and the table says " + row.closed(answers));
                    }
                }
            }
            tried.add(faults.getKey());
        });
        assertThat(wrong).isEmpty();
        Set<String> untried = new TreeSet<>(BOOK.cards().keySet());
        untried.removeAll(tried);
        untried.removeIf(check -> BOOK.cards().get(check).wants().stream().anyMatch(w -> !w.bad().isEmpty()));
        assertThat(untried).as("checks that no scenario shows at fault").isEqualTo(NEVER_AT_FAULT);
    }

    private static Set<Gate> closedBy(String check, Shown shown) {
        return verdicts(shown).stream().filter(g -> g.findings().stream().anyMatch(f -> f.check().equals(check) && f.state() == State.FAULT) || g.closedBy().stream().anyMatch(c -> c.check().equals(check)))
                .map(GateVerdict::gate).collect(Collectors.toCollection(() -> EnumSet.noneOf(Gate.class)));
    }

    private static List<GateVerdict> verdicts(Shown shown) {
        return Assessor.assess(shown.record, BOOK, List.of(Gate.values()), shown.asOf).gates();
    }
}
