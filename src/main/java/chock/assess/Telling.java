package chock.assess;

import chock.assess.facts.ImpliedWork;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Note;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.rulebook.Card;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Tells the outcome of one requirement as a colleague would. */
final class Telling {
    private final Required required;
    private final State state;
    private final JobRecord record;
    private final List<Judgement> judgements;
    private final List<Lack> lacks;
    private final List<SetAside> setAside;
    private final List<String> notes;

    Telling(Required required, State state, Card card, Conclusions concluded, JobRecord record) {
        this.required = required;
        this.state = state;
        this.record = record;
        // Order of conclusion is the engine's; order of telling is ours.
        this.judgements = inOrder(concluded.of(required, Judgement.class), () -> inOrderOf(card));
        this.lacks = inOrder(concluded.of(required, Lack.class), () -> Comparator.comparing(Lack::state).thenComparing(Lack::says));
        this.setAside = inOrder(concluded.of(required, SetAside.class).stream().filter(SetAside::wasProof).toList(),
                () -> Comparator.comparing(SetAside::reason).thenComparing(SetAside::entry).thenComparing(s -> String.valueOf(s.by())));
        this.notes = concluded.of(required, Note.class).stream().map(n -> Points.title(required.point()) + ": " + n.text()).sorted().toList();
    }

    private static Comparator<Judgement> inOrderOf(Card card) {
        List<String> wants = card.wants().stream().map(Card.Want::name).toList();
        return Comparator.comparing(Judgement::state).thenComparing(j -> wants.indexOf(j.want()))
                .thenComparing(j -> String.join(" ", j.evidence())).thenComparing(Judgement::says);
    }

    /** Of most requirements there is one thing to tell, or nothing. */
    private static <T> List<T> inOrder(List<T> told, Supplier<Comparator<T>> order) {
        return told.size() < 2 ? told : told.stream().sorted(order.get()).toList();
    }

    Finding.AtPlace place() {
        Judgement first = judgements.stream().filter(j -> j.state() == state).findFirst().orElse(null);
        Judgement valued = judgements.stream().filter(j -> j.state() == state && j.measured() != null).findFirst().orElse(first);
        boolean open = state == State.STALE || state == State.MISSING && !lacks.isEmpty();
        Judgement shown = open ? null : valued;
        return new Finding.AtPlace(required.point(), state, Points.title(required.point()) + ": " + says() + ".",
                shown == null ? null : shown.measured(), shown == null ? null : shown.applied(), shown == null ? null : shown.margin(), notes, evidence(open));
    }

    private String says() {
        return switch (state) {
            case STALE -> lacks.stream().filter(l -> l.state() == State.STALE).map(Lack::says).collect(Collectors.joining("; ")) + (setAside.isEmpty() ? "" : ": " + whyStale());
            case MISSING -> lacks.isEmpty() ? sentences() : lacks.stream().filter(l -> l.state() == State.MISSING).map(Lack::says).distinct().collect(Collectors.joining("; "));
            default -> sentences();
        };
    }

    private String sentences() {
        String main = judgements.stream().filter(j -> j.state() == state).map(Judgement::says).distinct().collect(Collectors.joining("; "));
        List<String> others = judgements.stream().filter(j -> j.state() == state && j.applied() != null).flatMap(j -> j.applied().others().stream()).distinct().toList();
        return others.isEmpty() ? main : main + "; " + String.join("; ", others);
    }

    private String whyStale() {
        // One reason for each piece of evidence: the latest work that undid it tells most.
        Map<String, List<SetAside>> byEntry = new LinkedHashMap<>();
        setAside.forEach(aside -> byEntry.computeIfAbsent(aside.entry(), entry -> new ArrayList<>()).add(aside));
        return byEntry.entrySet().stream().map(one -> why(one.getKey(), one.getValue()))
                .collect(Collectors.joining("; "));
    }

    private String why(String entryId, List<SetAside> reasons) {
        Entry entry = record.entry(entryId).orElseThrow();
        String what = Judge.brief(entry) + " of " + entry.at() + " (" + entryId + ") ";
        SetAside.Reason reason = reasons.get(0).reason();
        return what + switch (reason) {
            case UNDONE -> {
                Entry work = reasons.stream().filter(s -> s.reason() == SetAside.Reason.UNDONE).map(s -> record.entry(s.by()).orElseThrow())
                        .max(Comparator.comparing((Entry e) -> e.at().latest()).thenComparing(Entry::id)).orElseThrow();
                String untimed = work.at().date().equals(entry.at().date()) && (work.at().time() == null || entry.at().time() == null) ? "; write times to show which came first" : "";
                yield "was undone when " + record.nameOf(work.by()) + " wrote '" + work.what() + "' on " + Points.words(work.point()) + " " + work.at() + " (" + work.id() + ")" + ImpliedWork.words(reasons.get(0).wanted(), work) + untimed;
            }
            case OPENED -> {
                Entry reading = record.entry(reasons.get(0).by()).orElseThrow();
                yield "is older than " + Judge.brief(reading) + " of " + reading.at() + " at " + Points.words(reading.point()) + " (" + reading.id()
                        + "), which needs the part apart; if it was read assembled, correct that reading with a remark that begins '"
                        + reasons.get(0).wanted().laid().readAssembled() + "' and says how";
            }
            case TOO_OLD -> "is too old; it holds " + reasons.get(0).wanted().holds().words() + (reasons.get(0).wanted().holds().hours() != null && entry.at().time() == null ? "; write the time of day with it" : "");
            case OUT_OF_CALIBRATION -> "was " + used(entry) + " with " + entry.with() + " outside its calibration";
            case INSTRUMENT_FOUND_OUT -> "was " + used(entry) + " with " + entry.with() + ", later found out of tolerance (" + reasons.get(0).by() + ")";
            default -> "does not count";
        };
    }

    private static String used(Entry entry) {
        return entry.deed() == Deed.DONE ? "done" : "taken";
    }

    private List<String> evidence(boolean open) {
        Set<String> ids = new TreeSet<>();
        judgements.stream().filter(j -> j.state() == state || state == State.MET).forEach(j -> ids.addAll(j.evidence()));
        if (open) {
            setAside.forEach(s -> ids.add(s.entry()));
        }
        return List.copyOf(ids);
    }

    Instant lapses() {
        return judgements.stream().map(Judgement::lapses).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }
}
