package chock.assess;

import chock.assess.Explanation.AtPlace;
import chock.assess.Explanation.Compared;
import chock.assess.Explanation.Considered;
import chock.assess.Explanation.Fate;
import chock.assess.Explanation.WantedHere;
import chock.assess.facts.Closed;
import chock.assess.facts.Current;
import chock.assess.facts.Derived;
import chock.assess.facts.Evidence;
import chock.assess.facts.ImpliedWork;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.SetAside;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.rulebook.Card;
import chock.rulebook.LimitFor;
import chock.rulebook.RuleBook;
import java.math.MathContext;
import java.time.Instant;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Tells how checks came to their findings. It judges nothing anew: it reads what the rules concluded, with a witness beside them. */
public final class Explainer {
    private final JobRecord record;
    private final RuleBook book;
    private final Instant asOf;
    private final Witness witness = new Witness();
    private final Conclusions concluded;

    private Explainer(JobRecord record, RuleBook book, Instant asOf) {
        this.record = record;
        this.book = book;
        this.asOf = asOf;
        this.concluded = Assessor.conclude(record, book, asOf, witness);
    }

    /**
     * @param checks ids of checks of this rule book
     * @return one explanation for each, in the order asked
     */
    public static List<Explanation> explain(JobRecord record, RuleBook book, Collection<String> checks, Instant asOf) {
        Explainer explainer = new Explainer(record, book, asOf);
        return checks.stream().map(id -> Objects.requireNonNull(book.cards().get(id), id)).map(explainer::explain).toList();
    }

    private Explanation explain(Card card) {
        List<AtPlace> places = concluded.required(card.id()).stream().map(r -> place(card, r)).sorted(Comparator.comparing(AtPlace::state).thenComparing(AtPlace::point)).toList();
        String remedy = places.isEmpty() ? card.remedy() : FirstToDo.about(card, places.get(0).state(), places.get(0).point(), concluded);
        return new Explanation(card.id(), card.question(), card.applies(), places, remedy);
    }

    private AtPlace place(Card card, Required required) {
        Witness.Ground ground = witness.of(required);
        State state = concluded.of(required, Outcome.class).stream().map(Outcome::state).findFirst().orElse(State.MISSING);
        LimitFor limit = new Requirements(book, record, asOf.atZone(record.zone()).toLocalDate()).limitFor(required);
        boolean applied = limit != null && !limit.lacks();
        List<Wanted> wanted = concluded.of(required, Wanted.class).stream().sorted(Comparator.comparing(w -> card.wants().indexOf(w.want()))).toList();
        return new AtPlace(required.point(), state, ground == null ? card.id() : ground.rule(), ground == null ? List.of() : ground.facts().stream().map(f -> FactWords.of(f, record)).filter(w -> !w.isEmpty()).toList(),
                wanted.stream().map(w -> wanted(required, w)).toList(), applied ? limit.applied().words() : null, applied ? limit.applied().others() : List.of(),
                concluded.of(required, Lack.class).stream().map(Lack::says).distinct().sorted().toList(),
                concluded.of(required, Judgement.class).stream().sorted(Comparator.comparing(Judgement::state).thenComparing(Judgement::says)).map(this::compared).toList(), closes(card, required));
    }

    /** Which gates its known fault closes though they do not ask for it. */
    private List<String> closes(Card card, Required required) {
        String gates = concluded.of(required, Closed.class).stream().map(Closed::gate).distinct().sorted().map(Gate::id).collect(Collectors.joining(", "));
        List<String> dangers = book.library().dangers().words(book.dangersOf(card));
        return gates.isEmpty() ? List.of() : List.of(gates + ", which does not ask for it, as a known fault" + (dangers.isEmpty() ? "" : ": " + String.join("; ", dangers)));
    }

    private WantedHere wanted(Required required, Wanted wanted) {
        Deed weakest = wanted.want().weakest();
        String where = wanted.point().equals(required.point()) ? "" : " at " + Points.words(wanted.point());
        String asks = weakest == Deed.DONE ? "that it was " + wanted.want().aspect() + where : wanted.want().aspect().replace('-', ' ') + where + ", " + strength(weakest);
        List<Considered> considered = concluded.evidence().stream().filter(e -> e.key().equals(wanted.key()))
                .sorted((a, b) -> a.newerThan(b) ? -1 : 1).map(e -> considered(required, wanted, e)).toList();
        return new WantedHere(asks, wanted.holds().words(), considered);
    }

    private static String strength(Deed weakest) {
        return switch (weakest) {
            case MEASURED -> "measured";
            case TRIED -> "tried, or measured";
            case SEEN -> "looked at, tried or measured";
            case TOLD -> "told at least";
            default -> "in any way";
        };
    }

    private Considered considered(Required required, Wanted wanted, Evidence evidence) {
        Entry e = evidence.entry();
        String says = (e.is() == null ? e.what() : e.deed() == Deed.DONE ? e.what() + " to " + e.is() : e.is().toString()) + ", " + e.deed().key() + " " + e.at() + " by " + record.nameOf(e.by()) + (e.with() == null ? "" : " with " + e.with());
        List<String> aside = concluded.of(required, SetAside.class).stream().filter(s -> s.wanted().equals(wanted) && s.entry().equals(e.id())).map(s -> aside(s, evidence)).distinct().sorted().toList();
        boolean decides = concluded.of(required, Current.class).stream().anyMatch(c -> c.wanted().equals(wanted) && c.id().equals(e.id()));
        boolean stands = concluded.of(required, Standing.class).stream().anyMatch(s -> s.wanted().equals(wanted) && s.evidence().id().equals(e.id()));
        if (decides && stands) {
            return new Considered(e.id(), Fate.DECIDES, says, List.of());
        }
        if (decides) {
            return new Considered(e.id(), Fate.SET_ASIDE, says, Stream.concat(aside.stream(), Stream.of("a fault that it shows still counts")).toList());
        }
        return new Considered(e.id(), stands ? Fate.STANDS : Fate.SET_ASIDE, says, stands ? List.of(wanted.countsTogether() ? "not taken together with the newest that belong together" : "a newer one decides") : aside);
    }

    private String aside(SetAside aside, Evidence evidence) {
        Entry by = aside.by() == null ? null : record.entry(aside.by()).orElseThrow();
        Instrument with = evidence.instrument();
        return switch (aside.reason()) {
            case UNDONE -> "undone by '" + by.what() + "' on " + Points.words(by.point()) + " " + by.at() + " by " + record.nameOf(by.by()) + " (" + by.id() + ")" + ImpliedWork.words(aside.wanted(), by);
            case OPENED -> "opened for " + Judge.brief(by) + " of " + by.at() + " at " + Points.words(by.point()) + " (" + by.id() + ")";
            case TAKEN_BACK -> "taken back by " + record.nameOf(by.by()) + " " + by.at() + " (" + by.id() + ")" + (by.reason() == null ? "" : ": " + by.reason());
            case CORRECTED -> "corrected by " + record.nameOf(by.by()) + " " + by.at() + " (" + by.id() + ")" + (by.reason() == null ? "" : ": " + by.reason());
            case TOO_OLD -> "too old: it holds " + aside.wanted().holds().words();
            case INSTRUMENT_NOT_NAMED -> "work that counts only with its instrument, and with what that was set to";
            case OUT_OF_CALIBRATION -> used(evidence) + " with " + with.id() + ", whose calibration counts from " + evidence.calibration().on() + " to " + evidence.calibration().due();
            case INSTRUMENT_FOUND_OUT -> used(evidence) + " with " + with.id() + ", found out of tolerance " + by.at() + " (" + by.id() + ")";
            case IMPOSSIBLE -> evidence.whyImpossible();
            case MISPLACED -> "written at " + Points.words(evidence.entry().point()) + ", where no check asks for it";
            case EXAMINED -> "cause examined by " + record.nameOf(by.by()) + " " + by.at() + " (" + by.id() + "): " + by.reason() + "; found good since";
            case SETTLED -> "settled by a later good result";
            case TOO_WEAK -> evidence.entry().deed().key() + " only, where it must be " + strength(aside.wanted().want().weakest());
        };
    }

    private static String used(Evidence evidence) {
        return evidence.entry().deed() == Deed.DONE ? "done" : "taken";
    }

    private Compared compared(Judgement judgement) {
        String rule = concluded.of(judgement.required(), Derived.class).stream().filter(d -> judgement.want() == null && d.ids().equals(judgement.evidence()))
                .map(witness::of).filter(Objects::nonNull).map(Witness.Ground::rule).findFirst().orElse(null);
        return new Compared(judgement.state(), judgement.says(), judgement.margin() == null ? null : margin(judgement), rule, judgement.evidence());
    }

    private static String margin(Judgement judgement) {
        Quantity margin = judgement.margin();
        String how = margin.value().signum() == 0 ? "exactly at the limit" : (margin.value().signum() < 0 ? "outside by " : "inside by ") + rounded(margin.abs());
        return judgement.measured() == null || judgement.measured().uncertainty() == null ? how : how + ", uncertainty " + rounded(judgement.measured().uncertainty());
    }

    private static String rounded(Quantity amount) {
        return amount.value().precision() <= 6 ? amount.toString() : new Quantity(amount.value().round(new MathContext(4)), amount.unit()).toString();
    }
}
