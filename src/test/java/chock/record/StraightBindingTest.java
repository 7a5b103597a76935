package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import jakarta.validation.constraints.Pattern;
import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where nothing is to be said of a record it is read without the libraries, and comes to the same. */
class StraightBindingTest {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private int texts;

    static List<Path> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void every_example_is_read_straight_and_as_the_libraries_read_it(Path file) throws IOException {
        ObjectNode written = RecordReader.written(file.toString(), Files.readAllBytes(file));
        assertThat(StraightBinding.job(written)).contains(checked(written, new ArrayList<>()));
    }

    @Test
    void every_key_comes_to_its_place() {
        JsonNode whole = filled(Raw.Job.class);
        List<Fault> faults = new ArrayList<>();
        Raw.Job byLibraries = checked(whole, faults);
        assertThat(faults).isEmpty();
        assertThat(StraightBinding.job(whole)).contains(byLibraries);
    }

    /** Each key and each item of a whole record, taken out or made another thing in ten ways. */
    @Test
    void whatever_the_libraries_have_a_word_to_say_about_is_left_to_them() {
        int straight = 0;
        int said = 0;
        for (String pointer : pointers("", filled(Raw.Job.class))) {
            for (JsonNode other : others()) {
                texts = 0;
                JsonNode changed = filled(Raw.Job.class);
                put(changed, pointer, other);
                List<Fault> faults = new ArrayList<>();
                Raw.Job byLibraries = checked(changed, faults);
                Optional<Raw.Job> read = StraightBinding.job(changed);
                if (!faults.isEmpty()) {
                    said++;
                    assertThat(read).as(pointer + ": " + other + ": " + faults).isEmpty();
                } else if (read.isPresent()) {
                    straight++;
                    assertThat(read).as(pointer + ": " + other).contains(byLibraries);
                }
            }
        }
        assertThat(said).isGreaterThan(1000);
        assertThat(straight).isGreaterThan(100);
    }

    /** What may stand in the place of a value; null for nothing at all. */
    private static List<JsonNode> others() {
        List<JsonNode> others = new ArrayList<>();
        others.add(null);
        Stream.of("", " ", "\u0001", "\u2003", "x", "?", "2026-11-25", "12345").map(NODES::textNode).forEach(others::add);
        others.add(NullNode.instance);
        others.add(NODES.numberNode(7));
        others.add(NODES.arrayNode());
        others.add(NODES.arrayNode().add("x"));
        others.add(NODES.arrayNode().add(""));
        others.add(NODES.arrayNode().addNull());
        others.add(NODES.objectNode());
        others.add(NODES.objectNode().put("unknown", "x"));
        return others;
    }

    private static Raw.Job checked(JsonNode written, List<Fault> into) {
        Map<String, Integer> lines = new HashMap<>();
        number(written, "", lines);
        Faults faults = new Faults("record", lines);
        Raw.Job job = new Binding(faults, lines).bindAndCheck(written);
        if (faults.any()) {
            into.addAll(faults.toException().faults());
        }
        return job;
    }

    private static void number(JsonNode node, String path, Map<String, Integer> lines) {
        lines.put(path, lines.size() + 1);
        if (node instanceof ObjectNode keys) {
            keys.properties().forEach(p -> number(p.getValue(), path.isEmpty() ? p.getKey() : path + "." + p.getKey(), lines));
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            number(node.get(i), path + "[" + i + "]", lines);
        }
    }

    private static List<String> pointers(String above, JsonNode node) {
        List<String> all = new ArrayList<>();
        if (node instanceof ObjectNode keys) {
            all.add(above + "/another");
            keys.properties().forEach(p -> {
                all.add(above + "/" + p.getKey());
                all.addAll(pointers(above + "/" + p.getKey(), p.getValue()));
            });
        }
        for (int i = 0; node.isArray() && i < node.size(); i++) {
            all.add(above + "/" + i);
            all.addAll(pointers(above + "/" + i, node.get(i)));
        }
        return all;
    }

    private static void put(JsonNode root, String pointer, JsonNode value) {
        int cut = pointer.lastIndexOf('/');
        JsonNode parent = root.at(pointer.substring(0, cut));
        String key = pointer.substring(cut + 1);
        if (parent instanceof ObjectNode keys) {
            keys.remove(key);
            if (value != null) {
                keys.set(key, value);
            }
        } else if (parent instanceof ArrayNode items) {
            int at = Integer.parseInt(key);
            items.remove(at);
            if (value != null) {
                items.insert(at, value);
            }
        }
    }

    /** A part with every key written, each text another one. */
    private JsonNode filled(Class<?> part) {
        ObjectNode node = NODES.objectNode();
        for (RecordComponent component : part.getRecordComponents()) {
            String key = Binding.key(component.getName());
            if (!key.equals("sessions")) {
                node.set(key, value(component.getGenericType(), constraint(component)));
            }
        }
        return node;
    }

    private static Pattern constraint(RecordComponent component) {
        try {
            return component.getDeclaringRecord().getDeclaredField(component.getName()).getAnnotation(Pattern.class);
        } catch (NoSuchFieldException e) {
            throw new IllegalStateException(e);
        }
    }

    private JsonNode value(Type type, Pattern form) {
        if (type == String.class) {
            return form == null ? TextNode.valueOf("text " + texts++) : fitting(form.regexp());
        }
        if (type instanceof ParameterizedType list) {
            return list.getRawType() == Map.class ? NODES.objectNode().put("front-brake.type", "text " + texts++)
                    : NODES.arrayNode().add(value(list.getActualTypeArguments()[0], null)).add(value(list.getActualTypeArguments()[0], null));
        }
        return filled((Class<?>) type);
    }

    private JsonNode fitting(String form) {
        List<Supplier<String>> known = List.of(() -> "id-" + texts++, () -> "job-record/2", () -> "GB", () -> "19" + (10 + texts++ % 90),
                () -> "19" + (10 + texts++ % 90) + "-06-14", () -> "inspector");
        return known.stream().map(Supplier::get).filter(text -> text.matches(form)).findFirst().map(NODES::textNode)
                .orElseThrow(() -> new IllegalStateException("no text known for " + form));
    }
}
