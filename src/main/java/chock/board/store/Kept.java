package chock.board.store;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * A record as kept: everything but its entries, and the entries in the order written.
 *
 * @param version how often it was written to, from 1; part of every answer, so that nobody overwrites what they have not seen
 */
public record Kept(String id, long version, ObjectNode sheet, List<ObjectNode> entries) {

    /** The whole as a record file holds it. */
    public ObjectNode record() {
        ObjectNode whole = sheet.deepCopy();
        ArrayNode all = whole.putArray("entries");
        entries.forEach(entry -> all.add(entry.deepCopy()));
        return whole;
    }

    /** This record with another sheet and further entries, as it would be one version on. */
    public Kept with(ObjectNode newSheet, List<ObjectNode> further) {
        return new Kept(id, version + 1, newSheet, java.util.stream.Stream.concat(entries.stream(), further.stream()).toList());
    }
}
