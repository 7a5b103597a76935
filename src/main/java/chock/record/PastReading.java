package chock.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads what a machine was built with and what work changed since. */
final class PastReading {
    private static final String PATH = "machine.";

    private final Reading read;
    private final Set<String> people;
    private final Set<String> entries;
    private final Map<String, Integer> lines;

    /**
     * @param people ids of the people, or null when not all are known
     * @param entries ids of the entries, or null when not all are known
     */
    PastReading(Reading read, Set<String> people, Set<String> entries, Map<String, Integer> lines) {
        this.read = read;
        this.people = people;
        this.entries = entries;
        this.lines = lines;
    }

    Past past(Raw.Machine raw, Machine now) {
        Map<String, Integer> written = new HashMap<>();
        DescriptionField.names().stream().filter(field -> lines.containsKey(PATH + field)).forEach(field -> written.put(field, lines.get(PATH + field)));
        AsBuilt built = raw.asBuilt() == null ? null : asBuilt(raw.asBuilt());
        List<DescriptionChange> changes = changes(raw.changes() == null ? List.of() : raw.changes());
        // What came before is worked out only from a description and changes that are sound in themselves.
        List<Past.Rebuild> rebuilds = read.faults.any() ? List.of() : rebuilds(changes, raw, now);
        return new Past(rebuilds, built, Map.copyOf(written));
    }

    private AsBuilt asBuilt(Raw.AsBuilt raw) {
        String path = PATH + "as-built";
        String by = read.known(path + ".by", raw.by(), "one of the people of this record", people);
        String second = read.known(path + ".seconded-by", raw.secondedBy(), "one of the people of this record", people);
        if (by != null && by.equals(second)) {
            wrong(path + ".seconded-by", by + " seconds what " + by + " wrote", "Let a second person compare it with the machine, or leave the key out");
        }
        boolean paper = !"none".equals(raw.document());
        if (paper != read.isWritten(path + ".page") && !Reading.blank(raw.document())) {
            wrong(path + ".page", paper ? "the page is missing" : "a page, but no document", paper ? "Write the page or section" : "Write the document, or leave the page out");
        }
        Map<String, String> facts = new LinkedHashMap<>();
        Map<String, Integer> factLines = new HashMap<>();
        if (raw.facts() != null) {
            raw.facts().forEach((field, text) -> {
                String at = path + ".facts." + field;
                String value = field(at, field) == null ? null : value(at, field, text);
                if (value != null) {
                    facts.put(field, value);
                    factLines.put(field, lines.getOrDefault(at, 0));
                }
            });
        }
        return new AsBuilt(paper ? raw.document() : null, raw.page(), by, second, facts, factLines, lines.getOrDefault(path, 0));
    }

    private List<DescriptionChange> changes(List<Raw.Change> raw) {
        List<DescriptionChange> changes = new ArrayList<>();
        for (int i = 0; i < raw.size(); i++) {
            if (raw.get(i) != null) {
                changes.add(change(PATH + "changes[" + i + "]", raw.get(i)));
            }
        }
        return changes;
    }

    private DescriptionChange change(String path, Raw.Change raw) {
        Moment at = read.moment(path + ".at", raw.at());
        String by = read.known(path + ".by", raw.by(), "one of the people of this record", people);
        String field = field(path + ".field", raw.field());
        String from = field == null ? null : value(path + ".from", field, raw.from());
        String to = field == null ? null : value(path + ".to", field, raw.to());
        if (from != null && from.equals(to)) {
            wrong(path + ".to", "from " + from + " to " + to + " is no change", "Write what it was before and after, or take the change out");
        }
        String because = read.known(path + ".because", raw.because(), "one of the entries of this record", entries);
        return new DescriptionChange(at, by, field, from, to, because, lines.getOrDefault(path, 0));
    }

    private String field(String path, String text) {
        return read.known(path, text, "a field of the description that work can change", DescriptionField.names());
    }

    private String value(String path, String field, String text) {
        return Reading.blank(text) || read.faults.at(path) ? null : DescriptionField.named(field).orElseThrow().read(read, path, text);
    }

    /** Goes back from the machine of today, one moment after the other. */
    private List<Past.Rebuild> rebuilds(List<DescriptionChange> changes, Raw.Machine raw, Machine now) {
        List<Integer> backwards = new ArrayList<>();
        for (int i = 0; i < changes.size(); i++) {
            backwards.add(i);
        }
        backwards.sort(Comparator.comparing((Integer i) -> changes.get(i).at().latest()).thenComparing(i -> i).reversed());
        Map<String, String> values = new HashMap<>(now.fields());
        List<Past.Rebuild> rebuilds = new ArrayList<>();
        for (int i = 0; i < backwards.size();) {
            Moment at = changes.get(backwards.get(i)).at();
            List<DescriptionChange> together = new ArrayList<>();
            int last = backwards.get(i);
            for (; i < backwards.size() && changes.get(backwards.get(i)).at().equals(at); i++) {
                last = backwards.get(i);
                DescriptionChange change = changes.get(last);
                if (!DescriptionField.agree(change.field(), values.get(change.field()), change.to())) {
                    wrong(PATH + "changes[" + last + "].to", "to " + change.to() + ", but the description after it says " + change.field() + ": " + values.get(change.field()),
                            "Write what it became; the fields above the changes say how the machine is now");
                    return List.of();
                }
                values.put(change.field(), change.from());
                together.add(0, change);
            }
            if (!isPossible(raw, values, PATH + "changes[" + last + "]")) {
                return List.of();
            }
            rebuilds.add(0, new Past.Rebuild(at, List.copyOf(together), Map.copyOf(values)));
        }
        return List.copyOf(rebuilds);
    }

    private boolean isPossible(Raw.Machine raw, Map<String, String> values, String path) {
        Reading apart = read.apart();
        new MachineReading(apart).machine(raw.with(values));
        if (apart.faults.any()) {
            Fault first = apart.faults.toException().faults().get(0);
            wrong(path, "before this change the machine could not have been: " + first.path().substring(PATH.length()) + ": " + first.what(), "Write every field that changed with it, at the same time");
        }
        return !apart.faults.any();
    }

    private void wrong(String path, String what, String advice) {
        read.faults.add(path, what, advice);
    }
}
