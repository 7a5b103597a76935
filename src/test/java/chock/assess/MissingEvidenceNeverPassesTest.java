package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Whatever is taken out of a record, nothing passes that did not pass before. A share of the entries is tried in every
 * build, all with {@code -Dchock.whole=true}.
 */
@Tag("slow")
class MissingEvidenceNeverPassesTest {
    private static final int EVERY = Boolean.getBoolean("chock.whole") ? 1 : 5;
    private static final ObjectMapper JSON = new ObjectMapper();

    static Stream<String> released() {
        return Examples.RELEASED.stream();
    }

    static Stream<String> everyExample() {
        return Stream.concat(Examples.RELEASED.stream(), Examples.BLOCKED.stream());
    }

    @ParameterizedTest
    @MethodSource("released")
    void withoutAnyOneEntryThatACheckNeedsTheGateIsBlocked(String name) throws IOException {
        JobRecord whole = Examples.read(name);
        Assessment released = Examples.judge(whole);
        assertThat(released.allReleased()).isTrue();
        Set<String> needed = new TreeSet<>();
        released.gates().forEach(g -> g.findings().forEach(f -> needed.addAll(f.evidence())));
        assertThat(needed).hasSizeGreaterThan(5);
        List<String> ids = List.copyOf(needed);
        IntStream.range(0, ids.size()).filter(i -> i % EVERY == 0).mapToObj(ids::get).parallel().forEach(id -> {
            List<Entry> rest = whole.entries().stream().filter(e -> !e.id().equals(id)).toList();
            assertThat(Examples.judge(with(whole, rest)).allReleased()).as("without " + id).isFalse();
        });
    }

    private static JobRecord with(JobRecord r, List<Entry> entries) {
        return r.withEntries(entries);
    }

    @ParameterizedTest
    @MethodSource("everyExample")
    void withoutAnyOneFieldNothingIsReleasedAndNoCheckDisappears(String name) throws IOException {
        JsonNode whole = new YAMLMapper().readTree(Examples.bytes(name));
        Map<Gate, Set<String>> before = asked(Examples.judge(Examples.read(name)));
        Set<Gate> blocked = Examples.judge(Examples.read(name)).gates().stream().filter(g -> !g.released()).map(GateVerdict::gate).collect(Collectors.toSet());
        List<String> harm = Collections.synchronizedList(new ArrayList<>());
        AtomicInteger tried = new AtomicInteger();
        Map<JsonNode, Boolean> readAlone = new ConcurrentHashMap<>();
        Map<String, List<String>> fields = new LinkedHashMap<>();
        forEachField(whole, "", (holder, key) -> fields.computeIfAbsent(holder, h -> new ArrayList<>()).add(key));
        // Whatever is not one of many entries is tried in every build.
        AtomicInteger entries = new AtomicInteger();
        fields.keySet().removeIf(holder -> holder.startsWith("/entries/") && entries.getAndIncrement() % EVERY != 0);
        fields.entrySet().parallelStream().forEach(field -> field.getValue().forEach(key -> {
            String holder = field.getKey();
            for (JsonNode instead : new JsonNode[] {null, JSON.nullNode(), JSON.getNodeFactory().textNode(""), JSON.createArrayNode(), JSON.createObjectNode()}) {
                tried.incrementAndGet();
                if (refusedAlone(whole, holder, key, instead, readAlone)) {
                    continue;
                }
                JsonNode copy = whole.deepCopy();
                change((ObjectNode) copy.at(holder), key, instead);
                String what = name + " " + holder + "/" + key + (instead == null ? " left out" : " = " + instead);
                try {
                    Assessment after = Examples.judge(RecordReader.read(name, JSON.writeValueAsBytes(copy), Examples.BOOK.vocabulary(), Examples.DAY));
                    after.gates().stream().filter(g -> g.released() && blocked.contains(g.gate())).forEach(g -> harm.add(what + " released " + g.gate()));
                    Map<Gate, Set<String>> now = asked(after);
                    before.forEach((gate, checks) -> {
                        Set<String> gone = new HashSet<>(checks);
                        gone.removeAll(now.getOrDefault(gate, Set.of()));
                        if (!gone.isEmpty()) {
                            harm.add(what + " took away " + gone);
                        }
                    });
                } catch (UnusableInput refused) {
                    assertThat(refused.getMessage()).as(what).isNotBlank();
                } catch (IOException e) {
                    throw new IllegalStateException(e);
                }
            }
        }));
        assertThat(tried.get()).isGreaterThan(500 / EVERY);
        assertThat(harm).isEmpty();
    }

    /**
     * What is refused for a field of its own is refused in whatever company, so it is tried alone first: an entry without
     * the other entries, all else without any. Reading a few hundred others with it every time says nothing more and takes
     * minutes.
     */
    private static boolean refusedAlone(JsonNode whole, String holder, String key, JsonNode instead, Map<JsonNode, Boolean> readAlone) {
        boolean inEntry = holder.startsWith("/entries/");
        if (holder.startsWith("/claims/") || holder.isEmpty() && (key.equals("entries") || key.equals("claims"))) {
            return false;
        }
        ObjectNode alone = JSON.createObjectNode().setAll((ObjectNode) whole);
        JsonNode entry = inEntry ? whole.at("/entries/" + holder.split("/")[2]) : JSON.nullNode();
        alone.putArray("claims");
        if (inEntry) {
            alone.putArray("entries").add(entry);
        } else {
            alone.putArray("entries");
        }
        if (!readAlone.computeIfAbsent(entry, e -> readable(alone))) {
            return false;
        }
        ObjectNode changed = alone.deepCopy();
        ObjectNode at = (ObjectNode) changed.at(inEntry ? holder.replaceFirst("^/entries/\\d+", "/entries/0") : holder);
        change(at, key, instead);
        return !readable(changed);
    }

    private static void change(ObjectNode at, String key, JsonNode instead) {
        if (instead == null) {
            at.remove(key);
        } else {
            at.set(key, instead);
        }
    }

    private static boolean readable(JsonNode record) {
        try {
            RecordReader.read("alone", JSON.writeValueAsBytes(record), Examples.BOOK.vocabulary(), Examples.DAY);
            return true;
        } catch (UnusableInput refused) {
            return false;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<Gate, Set<String>> asked(Assessment assessment) {
        Map<Gate, Set<String>> asked = new LinkedHashMap<>();
        assessment.gates().forEach(g -> asked.put(g.gate(), g.findings().stream().map(Finding::check).collect(Collectors.toSet())));
        return asked;
    }

    private static void forEachField(JsonNode node, String path, BiConsumer<String, String> visit) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(key -> {
                visit.accept(path, key);
                forEachField(object.get(key), path + "/" + key, visit);
            });
        } else if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                forEachField(array.get(i), path + "/" + i, visit);
            }
        }
    }
}
