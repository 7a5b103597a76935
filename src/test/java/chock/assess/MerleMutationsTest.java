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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The released twin with one thing changed: which of its four gates must close, by which checks, and why. The table
 * was worked out at the bench first and held against the program after.
 */
class MerleMutationsTest {
    private static final Instant DAY = Instant.parse("2026-11-25T13:00:00Z");
    private static final ObjectMapper YAML = new YAMLMapper();
    private static final Path TABLE = Path.of("src/test/resources/merle/mutations.yaml");
    private static final List<State> OPEN = List.of(State.FAULT, State.DOUBT, State.STALE, State.MISSING);

    private static JsonNode table() throws IOException {
        return YAML.readTree(Files.readAllBytes(TABLE));
    }

    static Stream<Arguments> mutations() throws IOException {
        JsonNode table = table();
        return list(table.get("mutations")).stream().map(m -> Arguments.of(Named.of(m.get("what").asText(), m), table.get("groups")));
    }

    @Test
    void untouchedTheTwinPassesAllFourGates() throws IOException {
        assertThat(judge(table().get("mutations").get(0).deepCopy(), false).gates()).hasSize(4).allMatch(GateVerdict::released);
    }

    @Test
    void theTableIsLongAndSaysEachThingOnce() throws IOException {
        List<String> what = mutations().map(a -> ((Named<?>) a.get()[0]).getName()).toList();
        assertThat(what).hasSizeGreaterThanOrEqualTo(70).doesNotHaveDuplicates();
    }

    @ParameterizedTest
    @MethodSource("mutations")
    void closesTheRightGatesForTheRightReasons(JsonNode mutation, JsonNode groups) throws IOException {
        Assessment after = judge(mutation, true);
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

    private static Assessment judge(JsonNode mutation, boolean mutated) throws IOException {
        ObjectNode twin = (ObjectNode) YAML.readTree(Examples.bytes("merle-released.yaml"));
        if (mutated) {
            mutate(twin, mutation);
        }
        JobRecord record = RecordReader.read("merle", new ObjectMapper().writeValueAsBytes(twin), Examples.BOOK.vocabulary(), DAY);
        assertThat(record.seeks()).containsExactly(Gate.FIRST_START, Gate.INDOOR_RUN, Gate.ROAD_TEST, Gate.HAND_OVER);
        return Assessor.assess(record, Examples.BOOK, record.seeks(), DAY);
    }

    /** Adds entries, changes and drops what has an id, sets what stands at the head, forgets what the maker says. */
    private static void mutate(ObjectNode twin, JsonNode mutation) {
        int before = twin.hashCode();
        ArrayNode entries = (ArrayNode) twin.get("entries");
        int number = 0;
        for (JsonNode entry : list(mutation.get("add"))) {
            ObjectNode more = entry.deepCopy();
            more.put("id", "m" + ++number);
            entries.add(more);
        }
        mutation.path("change").fields().forEachRemaining(change -> {
            ObjectNode line = byId(twin, change.getKey());
            change.getValue().fields().forEachRemaining(field -> line.set(field.getKey(), field.getValue()));
            // "now: told" puts another verb before the same aspect.
            if (line.has("now")) {
                String verb = Stream.of("measured", "tried", "seen", "told").filter(line::has).findFirst().orElseThrow();
                line.set(line.remove("now").asText(), line.remove(verb));
            }
        });
        Set<String> drop = new HashSet<>();
        list(mutation.get("drop")).forEach(id -> drop.add(byId(twin, id.asText()).get("id").asText()));
        removeWhere(entries, "id", drop);
        mutation.path("set").fields().forEachRemaining(f -> twin.set(f.getKey(), f.getValue()));
        removeWhere((ArrayNode) twin.at("/maker/figures"), "for", new HashSet<>(texts(mutation.get("forget"))));
        assertThat(twin.hashCode()).as("the mutation changes something").isNotEqualTo(before);
    }

    private static ObjectNode byId(ObjectNode twin, String id) {
        return (ObjectNode) Stream.of("entries", "instruments").flatMap(l -> list(twin.get(l)).stream()).filter(n -> n.get("id").asText().equals(id)).findFirst().orElseThrow();
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
