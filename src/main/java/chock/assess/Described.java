package chock.assess;

import chock.assess.facts.AsBuiltFact;
import chock.assess.facts.BuiltBrakeFact;
import chock.assess.facts.ChangeFact;
import chock.assess.facts.ContradictionFact;
import chock.assess.facts.DifferenceFact;
import chock.assess.facts.HistoryFact;
import chock.assess.facts.RecordFact;
import chock.assess.facts.UnusualFact;
import chock.record.AsBuilt;
import chock.record.DescribedTimes;
import chock.record.DescriptionChange;
import chock.record.DescriptionField;
import chock.record.Entry;
import chock.record.FieldRule;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.Past;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the rules are told of a machine's description: what it contradicts, what is unusual in it, and where it comes from. */
final class Described {
    /** How many entries are spelled out; all are named by their ids. */
    private static final int NAMED = 3;

    private final JobRecord record;
    private final List<FieldRule> rules;
    private final Past past;
    private final Map<String, String> now;
    private final Map<String, String> first;

    private Described(JobRecord record, List<FieldRule> rules) {
        this.record = record;
        this.rules = rules;
        this.past = record.machine().past();
        this.now = record.machine().fields();
        this.first = past.rebuilds().isEmpty() ? now : past.rebuilds().get(0).before();
    }

    static List<Object> facts(JobRecord record, List<FieldRule> rules) {
        Described described = new Described(record, rules);
        List<Object> facts = new ArrayList<>();
        facts.add(new RecordFact(record.form() > 1));
        described.asBuilt().ifPresent(facts::add);
        DescribedTimes times = new DescribedTimes(record.machine(), record.entries(), rules, record.form());
        described.contradictions(times, facts);
        record.entries().stream().filter(times::isHistory).forEach(e -> facts.add(new HistoryFact(e.id())));
        past(described, facts);
        rules.forEach(rule -> described.unusual(rule, facts));
        for (Machine.End end : record.machine().ends()) {
            described.builtBrake(end.name()).ifPresent(facts::add);
        }
        return facts;
    }

    /** One for each value of the description, so that a machine described away is one sentence and not a hundred. */
    private void contradictions(DescribedTimes times, List<Object> facts) {
        Set<String> corrected = record.entries().stream().map(Entry::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        Map<String, List<DescribedTimes.Contradiction>> all = new LinkedHashMap<>();
        record.entries().stream().filter(e -> !corrected.contains(e.id())).sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::line).thenComparing(Entry::id))
                .forEach(e -> times.contradiction(e).ifPresent(c -> all.computeIfAbsent(c.described(), d -> new ArrayList<>()).add(c)));
        all.forEach((value, several) -> {
            String more = several.size() > NAMED ? " and " + (several.size() - NAMED) + " more" : "";
            facts.add(new ContradictionFact(several.stream().limit(NAMED).map(DescribedTimes.Contradiction::entered).collect(Collectors.joining(", ")) + more
                    + (several.size() == 1 ? " does" : " do") + " not go with " + value + ", the description of that day", several.stream().map(c -> c.entry().id()).toList()));
        });
    }

    private static void past(Described described, List<Object> facts) {
        described.past.changes().forEach(change -> facts.add(described.changed(change)));
        AsBuilt built = described.past.asBuilt();
        if (built != null) {
            built.facts().forEach((field, value) -> described.difference(built, field, value).ifPresent(facts::add));
        }
    }

    private Optional<AsBuiltFact> asBuilt() {
        return Optional.ofNullable(past.asBuilt()).map(built -> new AsBuiltFact(shownBy(built),
                rules.stream().filter(FieldRule::asBuilt).map(FieldRule::field).filter(field -> !built.facts().containsKey(field)).toList()));
    }

    private String shownBy(AsBuilt built) {
        return built.document() != null || built.secondedBy() == null ? built.shownBy() : record.nameOf(built.by()) + " and " + record.nameOf(built.secondedBy());
    }

    private ChangeFact changed(DescriptionChange change) {
        Optional<FieldRule> rule = rules.stream().filter(r -> r.field().equals(change.field())).findFirst();
        return new ChangeFact(change, record.entry(change.because()).orElseThrow(), rule.map(FieldRule::at).orElse(null), rule.filter(r -> !r.denies().isEmpty()).isPresent());
    }

    private Optional<DifferenceFact> difference(AsBuilt built, String field, String value) {
        if (DescriptionField.agree(field, value, first.get(field))) {
            return Optional.empty();
        }
        return Optional.of(new DifferenceFact(field, field + ": built " + value + line(built.lines().getOrDefault(field, 0)) + ", " + (first == now ? "" : "at first ") + "described as " + first.get(field)
                + line(firstLine(field)) + ", with no dated change"));
    }

    private int firstLine(String field) {
        return past.changes().stream().filter(c -> c.field().equals(field)).map(DescriptionChange::line).findFirst().orElseGet(() -> past.lines().getOrDefault(field, 0));
    }

    private static String line(int line) {
        return line > 0 ? " (line " + line + ")" : "";
    }

    private void unusual(FieldRule rule, List<Object> facts) {
        String field = rule.field();
        rule.removedOn(now).forEach(removed -> facts.add(new UnusualFact(field, now.get(field), rule.at(), removed, shownBy(field), past.lines().getOrDefault(field, 0))));
    }

    /** The last change to it, or what it was built with where that bears it out; null when neither does. */
    private String shownBy(String field) {
        List<DescriptionChange> changes = past.changes().stream().filter(c -> c.field().equals(field)).toList();
        if (!changes.isEmpty()) {
            DescriptionChange last = changes.get(changes.size() - 1);
            return "changed from " + last.from() + " " + last.at() + " (" + last.because() + ")";
        }
        AsBuilt built = past.asBuilt();
        boolean same = built != null && built.facts().containsKey(field) && DescriptionField.agree(field, built.facts().get(field), now.get(field));
        return same && shownBy(built) != null ? "so built, by " + shownBy(built) : null;
    }

    private Optional<BuiltBrakeFact> builtBrake(String end) {
        String field = end + "-brake.type";
        AsBuilt built = past.asBuilt();
        if (built != null && built.facts().containsKey(field)) {
            return Optional.of(new BuiltBrakeFact(end, !built.facts().get(field).equals("none"), "as-built" + line(built.lines().getOrDefault(field, 0))));
        }
        // A brake that the machine had once counts as built: taking it away needs no paper to be a loss.
        return first.get(field).equals("none") ? Optional.empty() : Optional.of(new BuiltBrakeFact(end, true, "its first description" + line(firstLine(field))));
    }
}
