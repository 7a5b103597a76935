package chock.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The descriptions of a machine, each with its time: an entry is compared with the description of its own day. */
public final class DescribedTimes {
    private final List<Span> spans = new ArrayList<>();
    private final Set<String> turning;
    private final List<Entry> leftOff;
    private final Map<String, Integer> lines;

    /**
     * What one description denies, and since when and until when it held.
     *
     * @param from null for the first
     * @param to null for the last
     */
    private record Span(Past.Rebuild from, Past.Rebuild to, Map<String, String> machine, Map<String, FieldRule> places, Map<String, FieldRule> aspects) {

        boolean mayHold(Moment at) {
            return (from == null || !from.at().surelyAfter(at)) && (to == null || !at.surelyAfter(to.at()));
        }

        Optional<FieldRule> denying(Entry entry) {
            for (String place : Entry.upFrom(entry.point())) {
                FieldRule rule = places.get(place);
                if (rule != null && !rule.except().contains(entry.what())) {
                    return Optional.of(rule);
                }
            }
            return Optional.ofNullable(aspects.get(entry.what()));
        }
    }

    /**
     * An entry and the description of its time, of which one must be wrong.
     *
     * @param field the field of the description
     * @param value its value at the time
     * @param line line of the file on which that value stands; 0 when not known
     */
    public record Contradiction(Entry entry, String field, String value, int line) {

        /** {@code front-brake.type: none (line 22)}. */
        public String described() {
            return field + ": " + value + (line > 0 ? " (line " + line + ")" : "");
        }

        /** {@code 'thickness' at front-brake/caliper (e44, line 212)}. */
        public String entered() {
            return "'" + entry.what() + "' at " + entry.point() + " (" + entry.id() + (entry.line() > 0 ? ", line " + entry.line() : "") + ")";
        }
    }

    /**
     * @param form of the record; in form 1 a part left off is as good as a dated change, which that form cannot carry
     */
    public DescribedTimes(Machine machine, List<Entry> entries, List<FieldRule> rules, int form) {
        Past past = machine.past();
        this.lines = past.lines();
        List<Past.Rebuild> rebuilds = past.rebuilds();
        for (int i = 0; i <= rebuilds.size(); i++) {
            Map<String, String> then = i == rebuilds.size() ? machine.fields() : rebuilds.get(i).before();
            spans.add(span(i == 0 ? null : rebuilds.get(i - 1), i == rebuilds.size() ? null : rebuilds.get(i), then, rules));
        }
        this.turning = past.changes().stream().map(DescriptionChange::because).collect(Collectors.toSet());
        Set<String> corrected = entries.stream().filter(Objects::nonNull).map(Entry::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        this.leftOff = form > 1 ? List.of() : entries.stream().filter(e -> e != null && e.deed() == Deed.DONE && LEFT_OFF.equals(e.what()) && !corrected.contains(e.id())).toList();
    }

    private static final String LEFT_OFF = "left-off";
    /** Whoever looks whether a part is as built says so at its place, though it is not there. */
    private static final String AS_BUILT = "as-built";

    private static Span span(Past.Rebuild from, Past.Rebuild to, Map<String, String> machine, List<FieldRule> rules) {
        Map<String, FieldRule> places = new HashMap<>();
        Map<String, FieldRule> aspects = new HashMap<>();
        for (FieldRule rule : rules) {
            String value = machine.get(rule.field());
            rule.denies().getOrDefault(value, Set.of()).forEach(place -> places.putIfAbsent(place, rule));
            rule.deniedAspects().getOrDefault(value, Set.of()).forEach(aspect -> aspects.putIfAbsent(aspect, rule));
        }
        return new Span(from, to, machine, places, aspects);
    }

    /** The description of the entry's own time, where that has no such part; empty when entry and description go together. */
    public Optional<Contradiction> contradiction(Entry entry) {
        if (!speaksOfAPart(entry) || turning.contains(entry.id()) || leftOff.stream().anyMatch(off -> Entry.covers(off.point(), entry.point()) && !entry.at().surelyAfter(off.at()))) {
            return Optional.empty();
        }
        List<Span> possible = spans.stream().filter(s -> s.mayHold(entry.at())).toList();
        if (possible.isEmpty() || possible.stream().anyMatch(s -> s.denying(entry).isEmpty())) {
            return Optional.empty();
        }
        Span last = possible.get(possible.size() - 1);
        String field = last.denying(entry).orElseThrow().field();
        return Optional.of(new Contradiction(entry, field, last.machine().get(field), line(last, field)));
    }

    /** True when the machine of today has no such part, and it had when the entry was written: it is history, and nothing is read from it now. */
    public boolean isHistory(Entry entry) {
        return speaksOfAPart(entry) && spans.get(spans.size() - 1).denying(entry).isPresent() && contradiction(entry).isEmpty();
    }

    /** What is said of a part: evidence, unless it counts none, or work. */
    private static boolean speaksOfAPart(Entry entry) {
        if (entry.deed() == null || entry.at() == null || entry.point() == null || entry.what() == null) {
            return false;
        }
        boolean countsNone = entry.is() instanceof Value.Amount amount && amount.measured().value().unit().dimension() == chock.quantity.Unit.Dimension.COUNT
                && amount.measured().value().value().signum() == 0;
        return (entry.deed().isEvidence() || entry.deed() == Deed.DONE) && !countsNone && !entry.what().equals(AS_BUILT);
    }

    /** Where a value stands that held in a span: in the description, or in the change that ended or began it. */
    private int line(Span span, String field) {
        for (int i = spans.indexOf(span); i < spans.size() - 1; i++) {
            Optional<DescriptionChange> next = spans.get(i).to().changes().stream().filter(c -> c.field().equals(field)).findFirst();
            if (next.isPresent()) {
                return next.get().line();
            }
        }
        return lines.getOrDefault(field, 0);
    }
}
