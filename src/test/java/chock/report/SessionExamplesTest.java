package chock.report;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessment;
import chock.assess.Foresight;
import chock.assess.GateVerdict;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.RecordText;
import chock.rulebook.RuleBook;
import chock.signoff.RecordVersion;
import chock.useful.AsSessions;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The nine examples typed as sessions are judged as the same entries one by one. With {@code -Dchock.approve=true} they are typed
 * anew.
 */
@Tag("slow")
class SessionExamplesTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final Path FOLDER = Path.of("src/test/resources/record/sessions");

    @ParameterizedTest
    @ValueSource(strings = {"harrow-prewar-single.yaml", "lark-faults.yaml", "lark-gaps.yaml", "lark-non-runner.yaml", "lark-on-show.yaml", "lark-released.yaml", "lark-too-close.yaml",
        "lark-worked-on-after.yaml", "merle-released.yaml"})
    void areJudgedAsTheSameEntriesOneByOne(String name) throws IOException {
        ObjectNode single = RecordReader.written(name, Files.readAllBytes(Path.of("docs/examples", name)));
        AsSessions.Typed typed = AsSessions.of((ArrayNode) single.get("entries"));
        if (Boolean.getBoolean("chock.approve")) {
            Files.createDirectories(FOLDER);
            Files.writeString(FOLDER.resolve(name), typed(single, typed));
        }
        byte[] sessions = Files.readAllBytes(FOLDER.resolve(name));
        ObjectNode expanded = RecordReader.written(name, sessions);
        assertThat(expanded.get("entries")).hasSameSizeAs(single.get("entries"));

        // The session file and what it is expanded to: the same bytes in every form.
        String told = told(read(name, sessions));
        assertThat(told(read(name, RecordText.yaml(expanded).getBytes(StandardCharsets.UTF_8)))).isEqualTo(told);

        // What a signature covers is the same as well.
        assertThat(RecordVersion.of(name, sessions).digest()).isEqualTo(RecordVersion.of(name, RecordText.yaml(expanded).getBytes(StandardCharsets.UTF_8)).digest());

        // The original, each entry at the time and under the name of its line: the same bytes again.
        assertThat(told(read(name, RecordText.yaml(moved(single, typed, expanded)).getBytes(StandardCharsets.UTF_8)))).isEqualTo(told);

        // The original as it stands: the same verdict of every check, though ids, minutes and the hour of lapse differ.
        assertThat(verdicts(read(name, sessions))).isEqualTo(verdicts(read(name, Files.readAllBytes(Path.of("docs/examples", name)))));
    }

    private static JobRecord read(String name, byte[] bytes) {
        return RecordReader.read(name, bytes, BOOK.vocabulary(), DAY);
    }

    private static String told(JobRecord record) {
        List<Assessment> judged = List.of(Foresight.assess(record, BOOK, record.seeks(), DAY));
        return JsonReport.of(judged) + TextReport.of(judged, false) + HtmlReport.of(judged) + StatementText.of(Statement.of(record, BOOK, DAY), false);
    }

    private static Map<String, String> verdicts(JobRecord record) {
        Map<String, String> all = new TreeMap<>();
        for (GateVerdict gate : Foresight.assess(record, BOOK, record.seeks(), DAY).gates()) {
            all.put(gate.gate().id(), String.valueOf(gate.released()));
            gate.findings().forEach(f -> all.put(gate.gate().id() + " " + f.check(), f.state() + " by " + f.evidence().size()));
        }
        return all;
    }

    /** The whole file: what stood above the entries, the entries that are no lines, and the sessions. */
    private static String typed(ObjectNode single, AsSessions.Typed typed) {
        ObjectNode head = single.deepCopy();
        ArrayNode rest = head.putArray("entries");
        typed.rest().forEach(rest::add);
        ObjectNode first = RecordReader.written("first.yaml", (RecordText.yaml(head) + typed.sessions()).getBytes(StandardCharsets.UTF_8));
        return RecordText.yaml((ObjectNode) renamed(head, names(single, typed, first))) + "\n" + typed.sessions();
    }

    /** The id of its line by the id of each entry. */
    private static Map<String, String> names(ObjectNode single, AsSessions.Typed typed, ObjectNode expanded) {
        Map<String, String> byContent = new HashMap<>();
        expanded.get("entries").forEach(line -> byContent.put(content(line, line.path("at").asText()), line.path("id").asText()));
        Map<String, String> names = new LinkedHashMap<>();
        single.get("entries").forEach(entry -> {
            String id = entry.path("id").asText();
            if (typed.at().containsKey(id)) {
                names.put(id, byContent.get(content(entry, typed.at().get(id))));
            }
        });
        assertThat(names.values()).doesNotContainNull().doesNotHaveDuplicates();
        return names;
    }

    private static String content(JsonNode entry, String at) {
        ObjectNode bare = entry.deepCopy();
        bare.remove(List.of("id", "at", "seq"));
        Map<String, String> sorted = new TreeMap<>();
        bare.properties().forEach(key -> sorted.put(key.getKey(), key.getValue().asText().replace("N·m", "Nm")));
        return at + sorted;
    }

    private static ObjectNode moved(ObjectNode single, AsSessions.Typed typed, ObjectNode expanded) {
        Map<String, String> names = names(single, typed, expanded);
        Map<String, JsonNode> lines = new HashMap<>();
        expanded.get("entries").forEach(line -> lines.put(line.path("id").asText(), line));
        ObjectNode moved = (ObjectNode) renamed(single, names);
        moved.get("entries").forEach(entry -> {
            JsonNode line = lines.get(entry.path("id").asText());
            ((ObjectNode) entry).set("at", line.get("at"));
            if (line.has("seq")) {
                ((ObjectNode) entry).set("seq", line.get("seq"));
            }
        });
        return moved;
    }

    /** The same with every id of an entry replaced, wherever it stands as a value of its own. */
    private static JsonNode renamed(JsonNode node, Map<String, String> names) {
        if (node instanceof ObjectNode keys) {
            ObjectNode copy = keys.objectNode();
            keys.properties().forEach(key -> copy.set(key.getKey(), renamed(key.getValue(), names)));
            return copy;
        }
        if (node instanceof ArrayNode items) {
            ArrayNode copy = items.arrayNode();
            items.forEach(item -> copy.add(renamed(item, names)));
            return copy;
        }
        return names.containsKey(node.asText()) ? TextNode.valueOf(names.get(node.asText())) : node;
    }
}
