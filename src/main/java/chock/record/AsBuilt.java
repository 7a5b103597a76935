package chock.record;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What a machine was built with, read from a document about that model or by two people.
 *
 * @param document title of the document, or null when there is none
 * @param page page or section of it, or null
 * @param by id of the person who wrote it
 * @param secondedBy id of the person who compared it with the machine as well, or null
 * @param facts values by field, such as {@code disc} for {@code front-brake.type}
 * @param lines line of the file for each of these fields
 * @param line line of the file it begins on, from 1
 */
public record AsBuilt(String document, String page, String by, String secondedBy, Map<String, String> facts, Map<String, Integer> lines, int line) {

    /** As the machine is described now, read by one person from a manual; for scenarios and tests. */
    public static AsBuilt asDescribed(Machine machine, String document, String page, String by) {
        Map<String, String> facts = new LinkedHashMap<>(machine.fields());
        facts.keySet().retainAll(DescriptionField.names());
        return new AsBuilt(document, page, by, null, facts, Map.of(), 0);
    }

    // Where it stands in a file is no part of what it says.
    @Override
    public boolean equals(Object other) {
        return other instanceof AsBuilt a && Objects.equals(a.document, document) && Objects.equals(a.page, page) && Objects.equals(a.by, by) && Objects.equals(a.secondedBy, secondedBy) && a.facts.equals(facts);
    }

    @Override
    public int hashCode() {
        return Objects.hash(document, page, by, secondedBy, facts);
    }

    /** {@code Lark 250 rider's handbook, page 4}, or that two people agree on it, or null when it rests on one person alone. */
    public String shownBy() {
        return document != null ? document + (page == null ? "" : ", page " + page) : secondedBy != null ? by + " and " + secondedBy : null;
    }
}
