package chock.spark;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * Files that are judged together: their rows are all there, or none of them counts.
 *
 * @param number from 1, in the order they were planned
 */
record Slice(int number, List<Source> sources) {
    private static final ObjectMapper JSON = new ObjectMapper();

    /**
     * One file, as it was when it was planned.
     *
     * @param length its bytes
     * @param modified when it was last written to, in milliseconds since 1970
     */
    record Source(String path, long length, long modified) { }

    String name() {
        return String.format("%06d", number);
    }

    String json() {
        ObjectNode node = JSON.createObjectNode().put("slice", number);
        ArrayNode files = node.putArray("files");
        sources.forEach(source -> files.addObject().put("path", source.path).put("bytes", source.length).put("modified", source.modified));
        return node.toPrettyString() + "\n";
    }

    static Slice read(JsonNode node) {
        List<Source> sources = new ArrayList<>();
        node.get("files").forEach(file -> sources.add(new Source(file.get("path").asText(), file.get("bytes").asLong(), file.get("modified").asLong())));
        return new Slice(node.get("slice").asInt(), sources);
    }
}
