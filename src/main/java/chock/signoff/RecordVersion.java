package chock.signoff;

import chock.record.RecordReader;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One exact version of a job record.
 *
 * @param digest of the canonical form of what is written: every value a text (RFC 8785)
 * @param file digest of the file itself, comments and blanks included
 * @param items the short digest of each thing in it, by name: {@code entry e1}, {@code person ida} (id and name alone, for a
 *              role may change), {@code instrument cal-1}, and {@code part machine} and so on for the rest
 */
public record RecordVersion(String digest, String file, SortedMap<String, String> items) {
    private static final Map<String, String> LISTS = Map.of("entries", "entry ", "people", "person ", "instruments", "instrument ");

    /** Things that are only ever added to a record; the rest may be written anew. */
    static boolean isKept(String item) {
        return !item.startsWith("part ");
    }

    /**
     * @param fileName how the file is called in messages
     * @throws chock.record.UnusableInput when it cannot be read
     */
    public static RecordVersion of(String fileName, byte[] bytes) {
        JsonNode written = RecordReader.written(fileName, bytes);
        SortedMap<String, String> items = new TreeMap<>();
        written.fields().forEachRemaining(field -> {
            String kind = LISTS.get(field.getKey());
            if (kind == null || !field.getValue().isArray()) {
                items.put("part " + field.getKey(), Canonical.shortDigest(field.getValue()));
            } else {
                field.getValue().forEach(item -> items.put(kind + item.path("id").asText(), Canonical.shortDigest(kept(kind, item))));
            }
        });
        return new RecordVersion(Canonical.digest(Canonical.bytes(written)), Canonical.digest(bytes), Collections.unmodifiableSortedMap(items));
    }

    private static JsonNode kept(String kind, JsonNode item) {
        return kind.equals("person ") ? JsonNodeFactory.instance.objectNode().put("id", item.path("id").asText()).put("name", item.path("name").asText()) : item;
    }

    /** The digest of this record without items that were added since. */
    static String digestWithout(String fileName, byte[] bytes, List<String> added) {
        JsonNode written = RecordReader.written(fileName, bytes).deepCopy();
        LISTS.forEach((list, kind) -> {
            for (Iterator<JsonNode> items = written.path(list).elements(); items.hasNext();) {
                if (added.contains(kind + items.next().path("id").asText())) {
                    items.remove();
                }
            }
        });
        return Canonical.digest(Canonical.bytes(written));
    }

    /** What differs between an earlier version and this one; each list in order of name. */
    Difference since(Map<String, String> earlier) {
        List<String> removed = new ArrayList<>();
        List<String> changed = new ArrayList<>();
        earlier.forEach((item, digest) -> {
            String now = items.get(item);
            if (now == null) {
                removed.add(item);
            } else if (!now.equals(digest)) {
                changed.add(item);
            }
        });
        List<String> added = items.keySet().stream().filter(item -> !earlier.containsKey(item)).toList();
        Collections.sort(removed);
        Collections.sort(changed);
        return new Difference(removed, changed, added);
    }

    /** Names of items. */
    record Difference(List<String> removed, List<String> changed, List<String> added) {
        List<String> keptRemoved() {
            return removed.stream().filter(RecordVersion::isKept).toList();
        }

        List<String> keptChanged() {
            return changed.stream().filter(RecordVersion::isKept).toList();
        }

        /** The parts written anew, by their key in the file. */
        List<String> parts() {
            List<String> all = new ArrayList<>(removed);
            all.addAll(changed);
            all.addAll(added);
            return all.stream().filter(item -> !isKept(item)).map(item -> item.substring("part ".length())).sorted().toList();
        }

        List<String> addedEntries() {
            return added.stream().filter(item -> item.startsWith("entry ")).map(item -> item.substring("entry ".length())).toList();
        }
    }
}
