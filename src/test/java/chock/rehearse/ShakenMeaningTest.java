package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Changes of what cards, conditions, plans and instruments mean: a scenario notices each of them. Every build tries those of
 * instruments, and a fixed share of the others on a few systems; {@code -Dchock.shake=cards} tries those of all cards and plans, {@code whole} those of all conditions as well.
 */
class ShakenMeaningTest {
    private static final String ASKED = System.getProperty("chock.shake", "share");
    private static final Path EQUIVALENT = Path.of("src/test/resources/shake/equivalent.txt");
    private static final Path OPEN = Path.of("src/test/resources/shake/open.txt");
    /** Of the changes of some systems, one in so many is tried in every build. */
    private static final int SHARE = 24;
    /** And one in so many of those listed as equivalent. */
    private static final int SHARE_OF_LISTED = 8;
    private static final List<String> SOME = List.of("features/controls", "features/show", "features/evidence", "features/air/plan.feature", "features/roadtest/plan.feature");
    private static final Set<String> TRIED = Set.of("controls", "show", "evidence");
    private static final RuleBook BOOK = RuleBook.shipped();

    private static Rehearsed rehearsed;
    /** By what was changed, the scenario it was compared on, and why no verdict can be otherwise. */
    private static Map<String, String> equivalent;
    /** By what was changed, what is known of a change that no scenario notices yet. */
    private static Map<String, String> open;

    @BeforeAll
    static void rehearse() throws IOException {
        rehearsed = Rehearsal.run(BOOK, ASKED.equals("share") ? SOME : List.of("features"), null, null);
        assertThat(rehearsed.holds()).isTrue();
        equivalent = listed(EQUIVALENT, 4);
        open = listed(OPEN, 3);
        assertThat(open).doesNotContainKeys(equivalent.keySet().toArray(String[]::new));
    }

    private static Map<String, String> listed(Path file, int columns) throws IOException {
        Map<String, String> listed = new TreeMap<>();
        for (String line : Files.readAllLines(file)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split(" \\| ");
                assertThat(parts).as(line).hasSize(columns);
                assertThat(listed.put(parts[0] + ": " + parts[1], parts[2])).as("listed twice: " + line).isNull();
            }
        }
        return listed;
    }

    private static boolean isTried(Change change) {
        String id = change.subject();
        boolean all = ASKED.equals("whole") || ASKED.equals("cards") && change.kind() != Change.Kind.CONDITION || change.kind() == Change.Kind.INSTRUMENT;
        // What has to be allowed before is noticed by the order of work alone, which takes long.
        return all || !change.what().startsWith("needs ") && (change.kind() == Change.Kind.PLAN || TRIED.contains(id.substring(0, id.indexOf('.')))) && Math.floorMod((id + change.what()).hashCode(), SHARE) == 0;
    }

    @ParameterizedTest
    @EnumSource(value = Change.Kind.class, names = {"CARD", "CONDITION", "PLAN", "INSTRUMENT"})
    void everyChangeOfMeaningIsNoticedByAScenario(Change.Kind kind) {
        Shake.Shaken shaken = Shake.of(BOOK, rehearsed, new Scope(null, false), change -> change.kind() == kind && isTried(change) && !open.containsKey(key(change)));
        assertThat(shaken.changes()).isGreaterThan(8);
        Set<String> unnoticed = new TreeSet<>();
        shaken.unnoticed().forEach(one -> unnoticed.add(one.subject() + ": " + one.what()));
        unnoticed.removeAll(equivalent.keySet());
        assertThat(unnoticed).as("changes to write a scenario for").isEmpty();
    }

    private static String key(Change change) {
        return change.subject() + ": " + change.what();
    }

    @Test
    void whatIsListedIsAChange() {
        List<String> changes = Stream.of(CardChanges.of(BOOK), new ConditionChanges(BOOK).all(), PlanChanges.of(BOOK), InstrumentChanges.of(BOOK)).flatMap(List::stream).map(ShakenMeaningTest::key).toList();
        assertThat(changes).containsAll(equivalent.keySet()).containsAll(open.keySet());
        assertThat(equivalent.size() * 50).as("at most two in a hundred").isLessThanOrEqualTo(changes.size());
    }

    /** A scenario to which the change could matter, if it mattered to any: verdicts, findings and order of work are the same. */
    @Test
    void whatIsListedAsEquivalentJudgesItsScenarioAlike() {
        ConditionChanges conditions = new ConditionChanges(BOOK);
        List<Change> listed = Stream.of(CardChanges.of(BOOK), conditions.all(), PlanChanges.of(BOOK), InstrumentChanges.of(BOOK)).flatMap(List::stream).filter(change -> equivalent.containsKey(key(change)))
                .filter(change -> !ASKED.equals("share") || Math.floorMod(key(change).hashCode(), SHARE_OF_LISTED) == 0).toList();
        assertThat(listed).isNotEmpty();
        conditions.compile(listed);
        List<String> files = listed.stream().map(change -> place(change).split(":")[0]).distinct().toList();
        List<Scenario> scenarios = Rehearsal.run(BOOK, files, null, null).scenarios();
        for (Change change : listed) {
            List<Scenario> on = scenarios.stream().filter(s -> place(change).equals(s.place().split(":")[0] + ": " + s.name())).toList();
            assertThat(on).as(key(change) + " on " + place(change)).isNotEmpty();
            RuleBook changed = change.made().apply(BOOK);
            on.forEach(scenario -> assertThat(told(scenario, changed)).as(key(change)).isEqualTo(told(scenario, BOOK)));
        }
    }

    private static String place(Change change) {
        return equivalent.get(key(change));
    }

    private static List<Object> told(Scenario scenario, RuleBook book) {
        List<Object> told = new ArrayList<>();
        // Plans are compared as they are read, with their figures; a verdict bears the whole sheet.
        Assessor.assess(scenario.record(), book.withPlans(null, null).at(scenario.workshop()), List.of(Gate.values()), scenario.asOf()).gates().forEach(told::add);
        Assessment planned = Assessor.assess(scenario.record(), book.at(scenario.workshop()), List.of(Gate.INDOOR_RUN, Gate.ROAD_TEST), scenario.asOf());
        told.add(PlanInWords.of(planned, Gate.INDOOR_RUN));
        told.add(PlanInWords.of(planned, Gate.ROAD_TEST));
        for (Gate gate : scenario.gates()) {
            told.addAll(OrderOfWork.of(scenario.record(), book, gate, scenario.asOf()).steps());
        }
        return told;
    }
}
