package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Two released machines, unlike each other, with one thing changed: which of their four gates must close, by which checks, and why.
 * The tables were worked out at the bench first and held against the program after.
 */
class MutatedRecordsTest {
    private static final ObjectMapper YAML = new YAMLMapper();
    private static final Path FOLDER = Path.of("src/test/resources/mutated");
    private static final List<State> OPEN = List.of(State.FAULT, State.DOUBT, State.STALE, State.MISSING);

    /** A released record, the moment it is judged at, and how many changes of it the table has at least. */
    enum Released {
        /** A two-stroke twin of the seventies with a disc. */
        MERLE("merle.yaml", Path.of("docs/examples/merle-released.yaml"), "2026-11-25T13:00:00Z", 70),
        /** A four-stroke outfit of 1951 with a girder fork and two drums. */
        CARRIER("carrier.yaml", FOLDER.resolve("carrier-outfit.yaml"), "2026-12-15T12:00:00Z", 40);

        private final Path table;
        private final Path record;
        private final Instant asOf;
        private final int changes;

        Released(String table, Path record, String asOf, int changes) {
            this.table = FOLDER.resolve(table);
            this.record = record;
            this.asOf = Instant.parse(asOf);
            this.changes = changes;
        }

        private JsonNode read() throws IOException {
            return YAML.readTree(Files.readAllBytes(table));
        }
    }

    static Stream<Arguments> mutations() throws IOException {
        List<Arguments> all = new ArrayList<>();
        for (Released released : Released.values()) {
            JsonNode table = released.read();
            list(table.get("mutations")).forEach(m -> all.add(Arguments.of(released, Named.of(m.get("what").asText(), m), table.get("groups"))));
        }
        return all.stream();
    }

    @ParameterizedTest
    @EnumSource
    void untouchedItPassesAllFourGates(Released released) throws IOException {
        assertThat(judge(released, released.read().get("mutations").get(0).deepCopy(), false).gates()).hasSize(4).allMatch(GateVerdict::released);
    }

    @ParameterizedTest
    @EnumSource
    void theTableIsLongAndSaysEachThingOnce(Released released) throws IOException {
        List<String> what = list(released.read().get("mutations")).stream().map(m -> m.get("what").asText()).toList();
        assertThat(what).hasSizeGreaterThanOrEqualTo(released.changes).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("mutations")
    void closesTheRightGatesForTheRightReasons(Released released, JsonNode mutation, JsonNode groups) throws IOException {
        Assessment after = judge(released, mutation, true);
        assertThat(after.gates()).allMatch(g -> g.ruleBookFaults().isEmpty());
        Set<String> closed = after.gates().stream().filter(g -> !g.released()).map(g -> g.gate().id()).collect(Collectors.toSet());
        assertThat(closed).as("gates that stay closed").containsExactlyInAnyOrderElementsOf(words(mutation.get("closes"), groups));
        Map<String, Finding> found = new TreeMap<>();
        after.gates().forEach(g -> g.findings().forEach(f -> found.put(f.check(), f)));
        Map<String, String> expected = new TreeMap<>();
        OPEN.forEach(state -> words(mutation.get(state.id()), groups).forEach(check -> expected.put(check, state.id())));
        Map<String, String> open = new TreeMap<>();
        found.values().stream().filter(f -> f.state() != State.MET).forEach(f -> open.put(f.check(), f.state().id()));
        if (mutation.has("and-others")) {
            assertThat(open).as("checks that hold it, among others").containsAllEntriesOf(expected);
            assertThat(open.entrySet()).filteredOn(e -> !expected.containsKey(e.getKey())).noneMatch(e -> e.getValue().equals("fault"));
        } else {
            assertThat(open).as("checks that hold it").isEqualTo(expected);
        }
        words(mutation.get("met"), groups).forEach(check -> assertThat(found.get(check)).as(check).isNotNull().extracting(Finding::state).isEqualTo(State.MET));
        JsonNode says = mutation.path("says");
        says.fieldNames().forEachRemaining(check -> assertThat(found.get(check).places()).as(check).anyMatch(p -> p.says().contains(says.get(check).asText())));
        assertThat(says.isEmpty()).as("a closed gate has a reason").isEqualTo(words(mutation.get("closes"), groups).isEmpty());
    }

    private static Assessment judge(Released released, JsonNode mutation, boolean mutated) throws IOException {
        ObjectNode machine = (ObjectNode) YAML.readTree(Files.readAllBytes(released.record));
        if (mutated) {
            mutate(machine, mutation);
        }
        JobRecord record = RecordReader.read(released.name(), new ObjectMapper().writeValueAsBytes(machine), Examples.BOOK.vocabulary(), released.asOf);
        assertThat(record.seeks()).containsExactly(Gate.FIRST_START, Gate.INDOOR_RUN, Gate.ROAD_TEST, Gate.HAND_OVER);
        return Assessor.assess(record, Examples.BOOK, record.seeks(), released.asOf);
    }

    /** Adds entries, changes and drops what has an id, sets what stands at the head, forgets what the maker says. */
    private static void mutate(ObjectNode machine, JsonNode mutation) {
        int before = machine.hashCode();
        ArrayNode entries = (ArrayNode) machine.get("entries");
        int number = 0;
        for (JsonNode entry : list(mutation.get("add"))) {
            ObjectNode more = entry.deepCopy();
            more.put("id", "m" + ++number);
            entries.add(more);
        }
        mutation.path("change").fields().forEachRemaining(change -> {
            ObjectNode line = byId(machine, change.getKey());
            change.getValue().fields().forEachRemaining(field -> line.set(field.getKey(), field.getValue()));
            // "now: told" puts another verb before the same aspect.
            if (line.has("now")) {
                String verb = Stream.of("measured", "tried", "seen", "told").filter(line::has).findFirst().orElseThrow();
                line.set(line.remove("now").asText(), line.remove(verb));
            }
        });
        Set<String> drop = new HashSet<>();
        list(mutation.get("drop")).forEach(id -> drop.add(byId(machine, id.asText()).get("id").asText()));
        removeWhere(entries, "id", drop);
        mutation.path("set").fields().forEachRemaining(f -> machine.set(f.getKey(), f.getValue()));
        removeWhere((ArrayNode) machine.at("/maker/figures"), "for", new HashSet<>(texts(mutation.get("forget"))));
        assertThat(machine.hashCode()).as("the mutation changes something").isNotEqualTo(before);
    }

    private static ObjectNode byId(ObjectNode machine, String id) {
        return (ObjectNode) Stream.of("entries", "instruments").flatMap(l -> list(machine.get(l)).stream()).filter(n -> n.get("id").asText().equals(id)).findFirst().orElseThrow();
    }

    private static void removeWhere(ArrayNode lines, String key, Set<String> values) {
        for (int i = lines.size() - 1; i >= 0; i--) {
            if (values.contains(lines.get(i).get(key).asText())) {
                lines.remove(i);
            }
        }
    }

    private static List<JsonNode> list(JsonNode array) {
        return array == null ? List.of() : StreamSupport.stream(array.spliterator(), false).toList();
    }

    private static List<String> texts(JsonNode array) {
        return list(array).stream().map(JsonNode::asText).toList();
    }

    /** The words listed, a group's name standing for all of the group. */
    private static List<String> words(JsonNode array, JsonNode groups) {
        List<String> words = new ArrayList<>();
        texts(array).forEach(word -> words.addAll(groups.has(word) ? texts(groups.get(word)) : List.of(word)));
        return words;
    }
}
