package chock.record;

import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * How a machine came to be what its description says.
 *
 * @param rebuilds the moments at which its description changed, in order of time
 * @param asBuilt what it was built with, or null when that is not written
 * @param lines line of the file for each field of the description
 */
public record Past(List<Rebuild> rebuilds, AsBuilt asBuilt, Map<String, Integer> lines) {
    public static final Past NONE = new Past(List.of(), null, Map.of());

    /**
     * A moment at which one or several fields changed.
     *
     * @param before every field of the machine until then, as {@link Machine#fields} gives them
     */
    public record Rebuild(Moment at, List<DescriptionChange> changes, Map<String, String> before) { }

    // Where it stands in a file is no part of what it says: the same record in YAML and in JSON is one.
    @Override
    public boolean equals(Object other) {
        return other instanceof Past p && p.rebuilds.equals(rebuilds) && Objects.equals(p.asBuilt, asBuilt);
    }

    @Override
    public int hashCode() {
        return Objects.hash(rebuilds, asBuilt);
    }

    /** Every change, in order of time. */
    public List<DescriptionChange> changes() {
        return rebuilds.stream().flatMap(r -> r.changes().stream()).toList();
    }
}
