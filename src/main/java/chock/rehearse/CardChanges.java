package chock.rehearse;

import chock.record.Deed;
import chock.record.Gate;
import chock.rulebook.Card;
import chock.rulebook.Card.AlsoCloses;
import chock.rulebook.Card.EndsBy;
import chock.rulebook.Card.Needs;
import chock.rulebook.Card.Undo;
import chock.rulebook.Card.Want;
import chock.rulebook.Holds;
import chock.rulebook.RuleBook;
import chock.rulebook.Together;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Every small change of the fields of a card that decide. What its loader would refuse is no change that anybody could make
 * unnoticed, and what no verdict can depend on is none either: how long a check holds that wants no evidence, or a danger whose
 * gates all ask for the check.
 */
final class CardChanges {
    private static final Holds YEAR = Holds.parse("12 months");

    private final RuleBook book;
    private final Card card;
    private final List<Change> all = new ArrayList<>();

    private CardChanges(RuleBook book, Card card) {
        this.book = book;
        this.card = card;
    }

    /** The changes of every card, those of a house included. */
    static List<Change> of(RuleBook book) {
        return book.cards().values().stream().flatMap(card -> new CardChanges(book, card).all().stream()).toList();
    }

    private List<Change> all() {
        gates();
        weight();
        for (int i = 0; i < card.wants().size(); i++) {
            want(i);
        }
        time();
        rows();
        dangers();
        return all;
    }

    private void gates() {
        for (Gate gate : Gate.values()) {
            Set<Gate> gates = EnumSet.noneOf(Gate.class);
            gates.addAll(card.gates());
            if (gates.remove(gate)) {
                add("gates without " + gate, "the verdict at " + gate + " when this evidence is not there", new Fields(card).gates(gates));
            } else if (card.needs().before(gate)) {
                gates.add(gate);
                add("gates with " + gate, "that it does not hold the machine at " + gate, new Fields(card).gates(gates));
            }
        }
    }

    private void weight() {
        add("critical: " + (card.critical() ? "no" : "yes"), "whether it is safety-critical", new Fields(card).critical(!card.critical()));
        Needs needs = card.needs() == Needs.ENGINE_RUNNING ? Needs.STANDING : Needs.ENGINE_RUNNING;
        if (card.gates().stream().allMatch(needs::before) && !card.wants().isEmpty()) {
            add("needs " + words(needs), "what has to be allowed before it can be proven", new Fields(card).needs(needs));
        }
        EndsBy other = card.endsBy() == EndsBy.LOOK ? EndsBy.WORK : EndsBy.LOOK;
        if (card.wants().stream().anyMatch(want -> !decidesLatest(want) && want.weakest() != Deed.DONE)) {
            add("ends-by " + words(other), "a fault, and a good look after it", new Fields(card).endsBy(other));
        }
        if (card.limit() != null) {
            add("no limit", "a reading on the wrong side of the limit", new Fields(card).limit(null));
        }
    }

    /** True where the latest look decides anyway, as it does of the weather. */
    private boolean decidesLatest(Want want) {
        String place = (want.place() == null ? card.place() : want.place()).pattern();
        return book.library().ofTheDay().has(place) && (want.holds() == null ? card.holds() : want.holds()).ofTheDay();
    }

    private void want(int at) {
        Want want = card.wants().get(at);
        add(want.name() + " not wanted", "that " + want.aspect() + " was not written", new Fields(card).want(at, null));
        Deed weaker = want.weakest().ordinal() < Deed.TOLD.ordinal() && want.weakest() != Deed.DONE ? Deed.values()[want.weakest().ordinal() + 1] : null;
        // Hearsay on a critical card is refused when it is loaded.
        if (weaker != null && !(card.critical() && weaker == Deed.TOLD)) {
            add(want.name() + " " + words(weaker) + " instead of " + words(want.weakest()), "that it was only " + words(weaker), new Fields(card).want(at,
                    new Want(want.name(), weaker, want.aspect(), want.form(), want.unit(), want.good(), want.bad(), want.place(), want.holds(), want.judged(), want.varies(), want.covers())));
        }
        for (String answer : want.bad()) {
            Set<String> good = new LinkedHashSet<>(want.good());
            good.add(answer);
            Set<String> bad = new LinkedHashSet<>(want.bad());
            bad.remove(answer);
            add(want.name() + ": " + answer + " is good", "that it was found " + answer, new Fields(card).want(at,
                    new Want(want.name(), want.weakest(), want.aspect(), want.form(), want.unit(), good, bad, want.place(), want.holds(), want.judged(), want.varies(), want.covers())));
        }
        if (want.holds() != null) {
            add(want.name() + " holds " + longerWords(want.holds()), "how long it holds", new Fields(card).want(at,
                    new Want(want.name(), want.weakest(), want.aspect(), want.form(), want.unit(), want.good(), want.bad(), want.place(), longer(want.holds()), want.judged(), want.varies(), want.covers())));
        }
        if (want.judged() && card.wants().size() > 1) {
            add(want.name() + " not held against the limit", "a reading of it on the wrong side of the limit", new Fields(card).want(at,
                    new Want(want.name(), want.weakest(), want.aspect(), want.form(), want.unit(), want.good(), want.bad(), want.place(), want.holds(), false, want.varies(), want.covers())));
        }
        if (want.covers()) {
            add(want.name() + " covers no time", "work in the time it covers", new Fields(card).want(at,
                    new Want(want.name(), want.weakest(), want.aspect(), want.form(), want.unit(), want.good(), want.bad(), want.place(), want.holds(), want.judged(), want.varies(), false)));
        }
    }

    private void time() {
        if (card.wants().stream().anyMatch(want -> want.holds() == null)) {
            add("holds " + longerWords(card.holds()), "until when it holds", new Fields(card).holds(longer(card.holds())));
        }
        if (card.together() != null) {
            add("readings need not be taken together", "readings taken too far from each other", new Fields(card).together(null));
        }
    }

    private static Holds longer(Holds holds) {
        if (holds.ofTheDay()) {
            return Holds.UNTIL_UNDONE;
        }
        return holds.period() == null ? YEAR : new Holds(holds.period().plusDays(1), false, null, false);
    }

    private static String longerWords(Holds holds) {
        return holds.period() != null && !holds.ofTheDay() ? "a day longer" : longer(holds).words();
    }

    private void rows() {
        for (Undo row : card.clearedBy()) {
            add("cleared-by without " + words(row), "a fault, and this work after it", new Fields(card).clearedBy(without(card.clearedBy(), row)));
        }
    }

    private void dangers() {
        for (String danger : card.dangers()) {
            Fields fewer = new Fields(card).dangers(without(card.dangers(), danger));
            if (!book.closings(fewer.card()).equals(book.closings(card))) {
                add("dangers without " + danger, "the verdict at the gates a fault closes", fewer);
            }
        }
        if (card.closes() == null) {
            return;
        }
        for (AlsoCloses row : card.closes()) {
            add("closes nothing at " + row.gates(), "the verdict at " + row.gates() + " with this fault", new Fields(card).closes(without(card.closes(), row)));
            for (Gate gate : Gate.values()) {
                if (!row.gates().contains(gate) && !card.gates().contains(gate) && card.closes().stream().noneMatch(other -> other.gates().contains(gate) && isWider(other, row))) {
                    Set<Gate> wider = EnumSet.of(gate);
                    wider.addAll(row.gates());
                    List<AlsoCloses> rows = new ArrayList<>(card.closes());
                    rows.set(rows.indexOf(row), new AlsoCloses(wider, row.only(), row.at(), row.over(), row.below(), row.unless()));
                    add("closes " + gate + " as well", "the verdict at " + gate + " with this fault", new Fields(card).closes(rows));
                }
            }
        }
    }

    /** True when whatever one row closes, the other closes too. */
    private static boolean isWider(AlsoCloses other, AlsoCloses row) {
        return other.unless() == null && other.at().isEmpty() && other.over() == null && !other.below() && (other.only().isEmpty() || !row.only().isEmpty() && other.only().containsAll(row.only()));
    }

    private static <T> List<T> without(List<T> rows, T row) {
        return rows.stream().filter(one -> one != row).toList();
    }

    private static String words(Enum<?> word) {
        return word.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private static String words(Undo row) {
        return (row.works().isEmpty() ? "any work" : String.join(", ", row.works())) + " at " + row.place().pattern();
    }

    private void add(String what, String toWrite, Fields changed) {
        Card other = changed.card();
        String id = card.id();
        all.add(new Change(Change.Kind.CARD, id.startsWith(Scope.OF_A_HOUSE), id, what, card.file() + ":" + card.line(), toWrite, what.startsWith("needs ") ? Scenario::isAboutNeeds : s -> s.isAbout(id), book -> book.withCards(each -> each.id().equals(id) ? other : each)));
    }

    /** The fields of a card while one of them is changed. */
    private static final class Fields {
        private final Card from;
        private Set<Gate> gates;
        private boolean critical;
        private Needs needs;
        private EndsBy endsBy;
        private String limit;
        private final List<Want> wants;
        private Holds holds;
        private Together together;
        private List<Undo> clearedBy;
        private List<String> dangers;
        private List<AlsoCloses> closes;

        Fields(Card card) {
            from = card;
            gates = card.gates();
            critical = card.critical();
            needs = card.needs();
            endsBy = card.endsBy();
            limit = card.limit();
            wants = new ArrayList<>(card.wants());
            holds = card.holds();
            together = card.together();
            clearedBy = card.clearedBy();
            dangers = card.dangers();
            closes = card.closes();
        }

        Fields gates(Set<Gate> other) {
            gates = other;
            return this;
        }

        Fields critical(boolean other) {
            critical = other;
            return this;
        }

        Fields needs(Needs other) {
            needs = other;
            return this;
        }

        Fields endsBy(EndsBy other) {
            endsBy = other;
            return this;
        }

        Fields limit(String other) {
            limit = other;
            return this;
        }

        /** @param other null to leave it out */
        Fields want(int at, Want other) {
            if (other == null) {
                wants.remove(at);
            } else {
                wants.set(at, other);
            }
            return this;
        }

        Fields holds(Holds other) {
            holds = other;
            return this;
        }

        Fields together(Together other) {
            together = other;
            return this;
        }

        Fields clearedBy(List<Undo> other) {
            clearedBy = other;
            return this;
        }

        Fields dangers(List<String> other) {
            dangers = other;
            return this;
        }

        Fields closes(List<AlsoCloses> other) {
            closes = other;
            return this;
        }

        Card card() {
            return new Card(from.id(), from.question(), from.applies(), gates, needs, critical, from.place(), List.copyOf(wants), limit, holds, from.undoneBy(), from.survives(), clearedBy,
                    together, from.remedy(), from.caution(), from.formerly(), dangers, closes, endsBy, from.file(), from.line());
        }
    }
}
