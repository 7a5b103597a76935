package chock.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/**
 * Adds to the text of a record without touching what stands there: comments, order and spelling stay. Afterwards the text is read
 * again, and holds what it held and what was added, or nothing is done.
 */
public final class RecordAdded {
    private final String fileName;
    private final byte[] bytes;
    private final String key;
    private final ArrayNode items;

    private RecordAdded(String fileName, byte[] bytes, String key, ArrayNode items) {
        this.fileName = fileName;
        this.bytes = bytes;
        this.key = key;
        this.items = items;
    }

    /** @param sessions each a set of keys; anything else among them is passed over */
    static byte[] sessions(String fileName, byte[] record, ArrayNode sessions) {
        ArrayNode items = sessions.arrayNode();
        sessions.forEach(one -> {
            if (one.isObject()) {
                items.add(one);
            }
        });
        return new RecordAdded(fileName, record, Sessions.KEY, items).added();
    }

    /**
     * The text of a record with entries behind those it has.
     *
     * @throws UnusableInput when they cannot be put there without touching what stands there
     */
    public static byte[] entries(String fileName, byte[] record, List<ObjectNode> entries) {
        ArrayNode items = new ObjectMapper().createArrayNode();
        entries.forEach(items::add);
        return new RecordAdded(fileName, record, "entries", items).added();
    }

    /** How many entries stand in the text itself; lines of sessions come behind them. */
    public static int entriesOf(String fileName, byte[] record) {
        JsonNode typed = new RecordAdded(fileName, record, "entries", new ObjectMapper().createArrayNode()).plain(record);
        return typed == null ? 0 : typed.path("entries").size();
    }

    private byte[] added() {
        String text = new String(bytes, StandardCharsets.UTF_8);
        byte[] after = (text.replace("\uFEFF", "").stripLeading().startsWith("{") ? inJson() : inYaml(text)).getBytes(StandardCharsets.UTF_8);
        if (!expected().equals(plain(after))) {
            throw cannot("Nothing was changed; add them by hand");
        }
        return after;
    }

    private JsonNode expected() {
        ObjectNode expected = (ObjectNode) plain(bytes);
        expected.withArrayProperty(key).addAll(items);
        return expected;
    }

    /** As it is written, sessions as sessions; null when it cannot be read. */
    private JsonNode plain(byte[] text) {
        Faults faults = new Faults(fileName, new HashMap<>());
        JsonNode read = Written.read(text, faults, new HashMap<>());
        return faults.any() ? null : read;
    }

    private UnusableInput cannot(String advice) {
        return UnusableInput.of(fileName, "nothing can be added to " + key + " here without touching what stands there", advice);
    }

    private String inJson() {
        try {
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(expected()) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a tree in memory can always be written", e);
        }
    }

    private String inYaml(String text) {
        String end = text.contains("\r\n") ? "\r\n" : "\n";
        String bare = text.startsWith("\uFEFF") ? text.substring(1) : text;
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Written.MOST_BYTES + 1);
        if (!(new Yaml(options).compose(new StringReader(bare)) instanceof MappingNode root)) {
            throw cannot("Write the record as keys and values");
        }
        String[] lines = bare.split("\r?\n", -1);
        NodeTuple list = null;
        int next = lines.length;
        for (NodeTuple tuple : root.getValue()) {
            if (list != null && tuple.getKeyNode().getStartMark().getLine() < next) {
                next = tuple.getKeyNode().getStartMark().getLine();
            }
            if (tuple.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key)) {
                list = tuple;
            }
        }
        String mark = text.startsWith("\uFEFF") ? "\uFEFF" : "";
        if (list == null) {
            return mark + bare + (bare.endsWith("\n") ? "" : end) + end + block(key + ":", "  ", end);
        }
        if (!(list.getValueNode() instanceof SequenceNode sequence)) {
            throw cannot("Write " + key + " as a list");
        }
        if (sequence.getValue().isEmpty()) {
            int at = list.getKeyNode().getStartMark().getLine();
            if (!lines[at].matches("\\s*" + key + ":\\s*\\[\\s*]\\s*(#.*)?")) {
                throw cannot("Write " + key + ": [] on a line of its own");
            }
            lines[at] = lines[at].replaceFirst("\\s*\\[\\s*]", "");
            return mark + joined(lines, at + 1, "  ", end);
        }
        if (sequence.getFlowStyle() == org.yaml.snakeyaml.DumperOptions.FlowStyle.FLOW) {
            throw cannot("Write " + key + " as items, one behind each dash");
        }
        return mark + joined(lines, afterLast(lines, next), indent(lines, sequence), end);
    }

    /** The line behind the last one that says something: what follows are blanks and remarks of the next key. */
    private static int afterLast(String[] lines, int next) {
        int at = next;
        while (at > 0 && (lines[at - 1].isBlank() || lines[at - 1].startsWith("#"))) {
            at--;
        }
        return at;
    }

    private static String indent(String[] lines, SequenceNode sequence) {
        Node first = sequence.getValue().get(0);
        String line = lines[first.getStartMark().getLine()];
        int dash = line.lastIndexOf('-', Math.max(0, first.getStartMark().getColumn() - 1));
        return line.substring(0, Math.max(0, dash)).isBlank() ? " ".repeat(Math.max(0, dash)) : "  ";
    }

    private String joined(String[] lines, int at, String indent, String end) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < at; i++) {
            all.append(lines[i]).append(i == lines.length - 1 && lines[i].isEmpty() ? "" : end);
        }
        all.append(block("", indent, end));
        for (int i = at; i < lines.length; i++) {
            all.append(lines[i]).append(i == lines.length - 1 ? "" : end);
        }
        return all.toString();
    }

    private String block(String head, String indent, String end) {
        StringBuilder block = new StringBuilder(head.isEmpty() ? "" : head + end);
        items.forEach(item -> {
            if (key.equals(Sessions.KEY)) {
                block.append(session((ObjectNode) item, indent, end));
            } else {
                block.append(indent).append("- ").append(RecordText.inline(item)).append(end);
            }
        });
        return block.toString();
    }

    private static String session(ObjectNode session, String indent, String end) {
        StringBuilder text = new StringBuilder();
        session.properties().forEach(one -> text.append(indent + (text.isEmpty() ? "- " : "  ")).append(RecordText.scalar(one.getKey())).append(": ").append(RecordText.inline(one.getValue())).append(end));
        return text.toString();
    }
}
