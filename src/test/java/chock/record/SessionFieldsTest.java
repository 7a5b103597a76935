package chock.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No field of a session can be emptied unseen: emptied it is refused, and left out it takes its own lines with it and nothing else. */
class SessionFieldsTest {
    private static final YAMLMapper YAML = new YAMLMapper();
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    @ParameterizedTest
    @ValueSource(strings = {"lark-released.yaml", "lark-faults.yaml", "harrow-prewar-single.yaml"})
    void everyFieldOfEverySession(String name) throws IOException {
        ObjectNode whole = (ObjectNode) YAML.readTree(Files.readAllBytes(Path.of("src/test/resources/record/sessions", name)));
        Map<String, JsonNode> before = entries(whole);
        List<String> holders = new ArrayList<>();
        holders("/sessions", whole.get("sessions"), holders);
        int tried = 0;
        for (String holder : holders) {
            List<String> keys = new ArrayList<>();
            whole.at(holder).fieldNames().forEachRemaining(keys::add);
            for (String key : keys) {
                for (JsonNode empty : List.of(NODES.nullNode(), NODES.textNode(""), NODES.textNode("  "), NODES.arrayNode(), NODES.objectNode())) {
                    ObjectNode copy = whole.deepCopy();
                    ((ObjectNode) copy.at(holder)).set(key, empty);
                    assertThat(catchThrowable(() -> entries(copy))).as(holder + "/" + key + " = " + empty).isInstanceOf(UnusableInput.class).hasMessageContaining("sessions[");
                    tried++;
                }
                leftOut(whole, holder, key, before);
            }
        }
        assertThat(tried).isGreaterThan(500);
    }

    private static void leftOut(ObjectNode whole, String holder, String key, Map<String, JsonNode> before) throws IOException {
        ObjectNode copy = whole.deepCopy();
        ((ObjectNode) copy.at(holder)).remove(key);
        String what = holder + "/" + key + " left out";
        boolean head = holder.matches("/sessions/\\d+") && Set.of("id", "at", "by", "with").contains(key) || holder.endsWith("/with");
        Map<String, JsonNode> after;
        try {
            after = entries(copy);
        } catch (UnusableInput refused) {
            // What stood alone at its place leaves an empty place, and that is refused as well.
            assertThat(head || whole.at(holder).size() == 1 || holder.matches("/sessions/\\d+")).as(what + ": " + refused.getMessage()).isTrue();
            return;
        }
        assertThat(head).as(what).isFalse();
        if (key.equals("in-order")) {
            assertThat(after.keySet()).as(what).isEqualTo(before.keySet());
            return;
        }
        assertThat(before.keySet()).as(what).containsAll(after.keySet());
        assertThat(after.size()).as(what).isLessThan(before.size());
        after.forEach((id, entry) -> {
            // In a session in order the later lines move up; which came first stays what it was.
            assertThat(unnumbered(entry)).as(what).isEqualTo(unnumbered(before.get(id)));
        });
    }

    private static String unnumbered(JsonNode entry) {
        ObjectNode copy = entry.deepCopy();
        copy.remove("seq");
        return copy.toString();
    }

    private static void holders(String path, JsonNode node, List<String> into) {
        if (node instanceof ObjectNode keys) {
            into.add(path);
            keys.properties().forEach(key -> holders(path + "/" + key.getKey().replace("~", "~0").replace("/", "~1"), key.getValue(), into));
        } else if (node instanceof ArrayNode items) {
            for (int i = 0; i < items.size(); i++) {
                holders(path + "/" + i, items.get(i), into);
            }
        }
    }

    private static Map<String, JsonNode> entries(JsonNode record) throws IOException {
        Map<String, JsonNode> entries = new TreeMap<>();
        RecordReader.written("record.yaml", new com.fasterxml.jackson.databind.ObjectMapper().writeValueAsBytes(record)).get("entries").forEach(entry -> entries.put(entry.get("id").asText(), entry));
        return entries;
    }
}
