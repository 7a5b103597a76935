package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Judgement;
import chock.assess.facts.Wanted;
import chock.quantity.Unit;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.Card;
import chock.rulebook.LocalCode;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The one function in the middle: a record, a rule book and a moment go in, verdicts come out. Same inputs, same result. */
public final class Assessor {
    private Assessor() { }

    /**
     * @param record what was written about the machine
     * @param book the rule book in force
     * @param gates the gates to judge
     * @param asOf the moment of judgement; no entry may be later
     */
    public static Assessment assess(JobRecord record, RuleBook book, List<Gate> gates, Instant asOf) {
        return judge(record, book, gates, asOf).assessment();
    }

    /**
     * An assessment, and how long a copy of it may be kept.
     *
     * @param mayChange first moment at which any finding may be another one though nobody writes to the record; null when none can
     */
    public record Judged(Assessment assessment, Instant mayChange) { }

    /** As {@link #assess}, for callers that keep the answer. */
    public static Judged judge(JobRecord record, RuleBook book, List<Gate> gates, Instant asOf) {
        try (Reasoning reasoning = Reasoning.of(record, book, asOf)) {
            Assessment judged = judged(record, book, gates, asOf, reasoning.concluded());
            // Only a limit that comes into force while a release would still be good makes it look ahead.
            LocalDate today = asOf.atZone(record.zone()).toLocalDate();
            boolean coming = !book.limitsFrom(today, today.plus(book.longestRelease()).plusDays(1)).isEmpty();
            NavigableSet<Instant> moments = Foresight.moments(record, book, reasoning.concluded(), asOf);
            Instant mayChange = moments.isEmpty() ? null : moments.first();
            return new Judged(coming ? Foresight.ahead(judged, reasoning, book) : judged, mayChange);
        }
    }

    static Assessment judged(JobRecord record, RuleBook book, List<Gate> gates, Instant asOf, Conclusions concluded) {
        AsOf now = Reasoning.moment(record, asOf);
        Findings found = Findings.of(record, book, gates, concluded);
        List<GateVerdict> verdicts = gates.stream().distinct().map(gate -> verdict(gate, record, book, now, concluded, found)).toList();
        return new Assessment(record, asOf, book.version(), book.digest(), localCode(record, book), recordedLaw(record, book), verdicts, unasked(record, book, concluded), Disclosures.of(record, book, concluded), Claims.weigh(record, book.vocabulary().plausible(), now.date()), book.ride().orElse(null),
                book.house().orElse(null), book.overdue(concluded.requirements().restedOn(gates), now.date()));
    }

    /** Everything this machine is asked, by place and aspect: what a check wants there, of several the one that takes most answers. */
    public static Map<String, Card.Want> asked(JobRecord record, RuleBook book, Instant asOf) {
        Conclusions concluded = conclude(record, book, asOf);
        return book.cards().keySet().stream().flatMap(check -> concluded.required(check).stream())
                .flatMap(required -> concluded.of(required, Wanted.class).stream())
                .collect(Collectors.toMap(Wanted::key, Wanted::want, (one, other) ->
                        one.good().size() + one.bad().size() >= other.good().size() + other.bad().size() ? one : other));
    }

    /** What the rules conclude at this moment. */
    static Conclusions conclude(JobRecord record, RuleBook book, Instant asOf) {
        try (Reasoning reasoning = Reasoning.of(record, book, asOf)) {
            return reasoning.concluded();
        }
    }

    /** The same, with a witness to what made each rule fire. */
    static Conclusions conclude(JobRecord record, RuleBook book, Instant asOf, Witness witness) {
        try (Reasoning reasoning = Reasoning.before(witness, record, book, asOf)) {
            return reasoning.concluded();
        }
    }

    private static GateVerdict verdict(Gate gate, JobRecord record, RuleBook book, AsOf now, Conclusions concluded, Findings found) {
        List<Finding> findings = found.at(gate);
        List<String> faults = new ArrayList<>(found.undecidedAt(gate));
        if (!book.gates().contains(gate)) {
            faults.add("the rule book is not complete for this gate");
        }
        if (findings.isEmpty()) {
            faults.add("the rule book asks nothing at this gate");
        }
        List<ClosedBy> closedBy = closedBy(gate, record, book, concluded);
        boolean released = faults.isEmpty() && closedBy.isEmpty() && findings.stream().allMatch(f -> f.state() == State.MET);
        Instant until = Stream.concat(findings.stream().map(Finding::lapses), comingFaults(gate, book, concluded)).filter(Objects::nonNull).min(Comparator.naturalOrder())
                .map(first -> first.minusSeconds(1)).orElse(null);
        Instant longest = now.instant().plus(book.longestRelease());
        return new GateVerdict(gate, released, released ? (until == null || until.isAfter(longest) ? longest : until) : null, findings, found.notAskedAt(gate), faults,
                gate == Gate.INDOOR_RUN ? IndoorRun.of(book.run().orElse(null), concluded) : null, null, closedBy);
    }

    private static List<ClosedBy> closedBy(Gate gate, JobRecord record, RuleBook book, Conclusions concluded) {
        if (!concluded.closesMore(gate)) {
            return List.of();
        }
        List<ClosedBy> closedBy = new ArrayList<>();
        for (Card card : book.cards().values()) {
            List<Finding.AtPlace> places = new ArrayList<>();
            concluded.closing(card.id(), gate).forEach(required -> places.add(new Telling(required, State.FAULT, card, concluded, record).place()));
            if (!places.isEmpty()) {
                List<String> dangers = concluded.dangers(card.id(), gate);
                List<String> words = book.library().dangers().words(dangers);
                Finding found = Findings.whole(card, places, null, concluded);
                closedBy.add(new ClosedBy(found.saying(found.says() + ClosedBy.why(gate, words)), dangers, words, card.gates().stream().sorted().toList()));
            }
        }
        closedBy.sort(Comparator.comparing((ClosedBy c) -> !c.fault().critical()).thenComparing(ClosedBy::check));
        return List.copyOf(closedBy);
    }

    /** When a part that is still young enough gets too old: then that fault may close a gate which does not ask for it. */
    private static Stream<Instant> comingFaults(Gate gate, RuleBook book, Conclusions concluded) {
        return concluded.judgements().stream().filter(j -> j.state() == State.MET && j.lapses() != null && j.applied() != null)
                .filter(j -> j.measured() == null || j.measured().value().unit().dimension() == Unit.YEARS.dimension())
                .filter(j -> book.closings(book.cards().get(j.required().check())).stream().anyMatch(row -> row.gates().contains(gate))).map(Judgement::lapses);
    }

    private static String recordedLaw(JobRecord record, RuleBook book) {
        return book.recordedLaw(record).map(law -> "The law of " + record.territory() + " is not in this rule book. It is taken as this record has it: " + law
                + ". Nobody has checked it here; the licensed inspector there decides.").orElse(null);
    }

    private static String localCode(JobRecord record, RuleBook book) {
        List<LocalCode> codes = book.codesOf(record.territory());
        String here = codes.isEmpty() ? "none for " + record.territory() + " in this rule book"
                : codes.stream().map(c -> c.code() + " (" + c.name() + ")").collect(Collectors.joining(", "));
        return book.recordedLaw(record).map(law -> here + (codes.isEmpty() ? "" : "; of " + record.territory() + " itself none in this rule book") + "; as the record has it: " + law + "; not checked here").orElse(here);
    }

    private static List<String> unasked(JobRecord record, RuleBook book, Conclusions concluded) {
        return Disclosures.unread(record, book, concluded.keysWanted()).sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).map(Entry::id).toList();
    }
}
