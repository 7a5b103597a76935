package chock.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;

/** A record as YAML, as somebody would type it: blocks at the left, what they hold one to a line. */
public final class RecordText {
    /** What reads as the same text with and without quotes, whatever stands around it. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9½µ][A-Za-z0-9½µ ./°±%·²³Ω€£()'’_+–-]*(:[0-9][A-Za-z0-9 ./°±%·-]*)?");

    private RecordText() { }

    /** @param written every value a text, as {@link RecordReader#written} gives it */
    public static String yaml(ObjectNode written) {
        StringBuilder text = new StringBuilder();
        written.properties().forEach(block -> block(block.getKey(), block.getValue(), "", text));
        return text.toString();
    }

    private static void block(String key, JsonNode value, String indent, StringBuilder text) {
        text.append(indent).append(scalar(key)).append(':');
        if (value.isObject() && !value.isEmpty() && indent.isEmpty()) {
            text.append('\n');
            value.properties().forEach(below -> block(below.getKey(), below.getValue(), indent + "  ", text));
        } else if (value.isArray() && !value.isEmpty() && value.get(0).isObject()) {
            text.append('\n');
            value.forEach(item -> text.append(indent).append("  - ").append(inline(item)).append('\n'));
        } else {
            text.append(' ').append(inline(value)).append('\n');
        }
    }

    /** On one line: {@code {at: 2026-11-20 09:40, by: ida}}. */
    static String inline(JsonNode value) {
        if (value.isObject()) {
            return value.properties().stream().map(key -> scalar(key.getKey()) + ": " + inline(key.getValue())).collect(Collectors.joining(", ", "{", "}"));
        }
        if (value.isArray()) {
            return StreamSupport.stream(value.spliterator(), false).map(RecordText::inline).collect(Collectors.joining(", ", "[", "]"));
        }
        return value.isNull() ? "" : scalar(value.asText());
    }

    static String scalar(String text) {
        // Quotes of JSON are quotes of YAML; the reader takes every value for a text, so a bare no or 1524 stays what it is.
        return PLAIN.matcher(text).matches() && text.equals(text.strip()) ? text : TextNode.valueOf(text).toString();
    }
}
