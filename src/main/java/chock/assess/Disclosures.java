package chock.assess;

import chock.assess.facts.Closing;
import chock.assess.facts.Evidence;
import chock.assess.facts.Judgement;
import chock.assess.facts.Misplaced;
import chock.assess.facts.SetAside;
import chock.record.Danger;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.NoteIs;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What has to be told besides the findings, whichever gate is judged.
 *
 * @param unread entries that no check reads at their place, in order of time
 * @param defects defects that are open
 * @param lifted faults and defects that were lifted by an entry and not by work
 */
public record Disclosures(List<Unread> unread, List<Told> defects, List<Told> lifted) {
    /** The check that gathers what no other check asks for. */
    public static final String OPEN_DEFECTS = "record.open-defects";

    /**
     * An entry that no check reads at its place.
     *
     * @param says what it says, where, and by whom
     * @param readAt the nearest places of this machine at which a check asks for the like; empty when none does
     * @param counts the state it has at those places, or at {@link #OPEN_DEFECTS}; null when it changes nothing
     */
    public record Unread(String entry, String says, List<String> readAt, State counts) {
        /** What becomes of it, in a sentence. */
        public String fate() {
            String places = readAt.stream().map(Points::words).collect(Collectors.joining("; "));
            if (readAt.isEmpty()) {
                return counts == null ? "No check of this machine asks for it." : "No check of this machine asks for it, so it counts as an open defect.";
            }
            return counts == null ? "No check asks for it there. Write it at: " + places + "." : "No check asks for it there. It counts as " + counts.id() + " at: " + places + ".";
        }
    }

    /** @param entries ids of the entries it rests on */
    public record Told(String says, List<String> entries) { }

    /** Nothing to be told. */
    public static final Disclosures NONE = new Disclosures(List.of(), List.of(), List.of());

    /** What the next owner, and whoever signs, has to know: open defects, and faults that no work took away. */
    public List<Told> toBeKnown() {
        List<Told> all = new ArrayList<>();
        defects.forEach(one -> all.add(new Told("Open defect: " + one.says() + ".", one.entries())));
        lifted.forEach(one -> all.add(new Told("Lifted without work: " + one.says() + ".", one.entries())));
        return all;
    }

    static Disclosures of(JobRecord record, RuleBook book, Conclusions concluded) {
        return new Disclosures(unread(record, book, concluded), defects(concluded), lifted(record, concluded));
    }

    private static Comparator<Entry> byTime() {
        return Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id);
    }

    private static List<Unread> unread(JobRecord record, RuleBook book, Conclusions concluded) {
        Map<String, Set<String>> places = new TreeMap<>();
        for (Misplaced misplaced : concluded.misplaced()) {
            places.computeIfAbsent(misplaced.evidence().id(), id -> new TreeSet<>()).add(misplaced.wanted().point());
        }
        Map<String, State> counts = new TreeMap<>();
        for (Judgement judgement : concluded.judgements()) {
            if (judgement.state() == State.FAULT || judgement.state() == State.DOUBT) {
                judgement.evidence().forEach(id -> counts.merge(id, judgement.state(), (a, b) -> a.compareTo(b) < 0 ? a : b));
            }
        }
        return unread(record, book, concluded.keysWanted()).sorted(byTime())
                .map(e -> new Unread(e.id(), words(e, record), List.copyOf(places.getOrDefault(e.id(), Set.of())), counts.get(e.id()))).toList();
    }

    /** What nobody asked for is often a slip: the other caliper, a machine with one disc. */
    static java.util.stream.Stream<Entry> unread(JobRecord record, RuleBook book, Set<String> wanted) {
        Set<String> besides = book.library().besides();
        return record.entries().stream().filter(e -> e.deed().isEvidence() && !besides.contains(e.what()) && !wanted.contains(Entry.key(e.point(), e.what())));
    }

    private static List<Told> defects(Conclusions concluded) {
        return concluded.judgements().stream().filter(j -> j.required().check().equals(OPEN_DEFECTS) && j.state() == State.FAULT).map(j -> new Told(j.says(), j.evidence()))
                .sorted(Comparator.comparing(Told::says)).toList();
    }

    private static List<Told> lifted(JobRecord record, Conclusions concluded) {
        Set<String> pairs = new TreeSet<>();
        for (SetAside aside : concluded.setAside()) {
            Entry first = record.entry(aside.entry()).orElseThrow();
            if ((aside.reason() == SetAside.Reason.CORRECTED || aside.reason() == SetAside.Reason.EXAMINED) && aside.wanted().faulty(new Evidence(first, aside.wanted().key(), null))) {
                pairs.add(first.id() + " " + aside.by());
            }
        }
        concluded.closings().forEach(closing -> pairs.add(closing.defect() + " " + closing.by()));
        List<Told> lifted = new ArrayList<>();
        pairs.stream().map(pair -> pair.split(" ")).map(pair -> List.of(record.entry(pair[0]).orElseThrow(), record.entry(pair[1]).orElseThrow()))
                .sorted(Comparator.comparing((List<Entry> pair) -> pair.get(1), byTime()).thenComparing(pair -> pair.get(0).id()))
                .forEach(pair -> lifted.add(new Told(words(pair.get(0), record) + " was lifted by " + words(pair.get(1), record) + ": " + pair.get(1).reason(), List.of(pair.get(0).id(), pair.get(1).id()))));
        return lifted;
    }

    /** {@code front brake, control: lever feel sinks, tried 2026-11-20 10:10 by Tom Fell (e4)}; a defect in its writer's words. */
    static String words(Entry e, JobRecord record) {
        String when = " " + e.at() + " by " + record.nameOf(e.by()) + " (" + e.id() + ")";
        String said = e.note() == null || e.note().isBlank() ? e.reason() : e.note();
        String note = said == null || e.noteIs() != NoteIs.DEFECT ? "" : ", with the " + (said.equals(e.note()) ? "note" : "reason") + " \"" + said.strip() + "\"";
        return Points.words(e.point()) + ": " + switch (e.deed()) {
            case DEFECT -> "\"" + e.what().strip() + "\"" + (e.dangers().isEmpty() ? "" : " (" + e.dangers().stream().map(Danger::id).collect(Collectors.joining(", ")) + ")") + ", reported" + when;
            case CLOSED -> "closed" + when;
            case DONE -> e.what() + note + when;
            default -> e.what().replace('-', ' ') + (e.is() == null ? "" : " " + e.is().toString().replace('-', ' ')) + note + ", " + e.deed().key() + when;
        };
    }
}
