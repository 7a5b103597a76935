package chock.assess.facts;

import chock.quantity.Bounds;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Value;
import chock.record.Vocabulary.Form;
import chock.rulebook.Card;
import chock.rulebook.Holds;
import chock.rulebook.LaidOut;
import chock.rulebook.LimitFor;
import chock.rulebook.Touch;
import java.time.Instant;
import java.util.Set;

/**
 * One piece of evidence a required check wants, at its place.
 *
 * @param required what it is for
 * @param card the check
 * @param want what is wanted
 * @param point where
 * @param key point and aspect together
 * @param laid what undoes it elsewhere, and what leaves it untouched
 * @param disturbing works that undo whatever lies on or below the part worked on
 * @param limit the limit in force there, or null when the check has none
 */
public record Wanted(Required required, Card card, Card.Want want, String point, String key, LaidOut laid,
                     Set<String> disturbing, LimitFor limit) {


    public String name() {
        return want.name();
    }

    /** True when the entry is work that takes away what was proven here. */
    public boolean isUndoneBy(Entry work) {
        boolean disturbs = disturbing.contains(work.what());
        for (Touch harmless : laid.survives()) {
            if (harmless.works().contains(work.what()) && harmless.point().equals(work.point())) {
                return false;
            }
        }
        if (disturbs && Entry.covers(work.point(), point)) {
            return true;
        }
        for (Touch undoer : laid.undoneBy()) {
            boolean named = undoer.works().isEmpty() ? disturbs : undoer.works().contains(work.what());
            if (named && undoer.bearsOn(want.name()) && (Entry.covers(work.point(), undoer.point()) || Entry.covers(undoer.point(), work.point()))) {
                return true;
            }
        }
        return false;
    }

    /** True when the evidence is of a kind this check does not accept. */
    public boolean tooWeak(Evidence evidence) {
        return want.weakest() == Deed.DONE ? evidence.entry().deed() != Deed.DONE : !evidence.entry().deed().atLeast(want.weakest());
    }

    /** The first instant at which the evidence is too old, or null. */
    public Instant lapse(Evidence evidence) {
        return holds().lapse(evidence.entry().at().date(), evidence.entry().at().zone());
    }

    public Holds holds() {
        return want.holds() == null ? card.holds() : want.holds();
    }

    public boolean tooOld(Evidence evidence, AsOf asOf) {
        Instant lapse = lapse(evidence);
        return lapse != null && !asOf.instant().isBefore(lapse);
    }

    /** True when the value alone shows a fault, whatever its kind. */
    public boolean faulty(Evidence evidence) {
        Value is = evidence.entry().is();
        if (want.form() == Form.ANSWER && is instanceof Value.Answer answer) {
            return !want.good().contains(answer.word());
        }
        if (judged() && want.form() == Form.AMOUNT && is instanceof Value.Amount amount && limit != null && limit.applied() != null) {
            return limit.applied().bounds().standing(amount.measured()) == Bounds.Standing.OUTSIDE;
        }
        return false;
    }

    /** True when this want alone is held against the limit of the check. */
    public boolean judged() {
        return want.judged();
    }

    /** True when this want yields an outcome without a rule of its own. */
    public boolean decidesAlone() {
        return want.form() == Form.ANSWER || want.weakest() == Deed.DONE || want.judged();
    }


    // Identity is the requirement and the name of the want: the rest follows from them, and the engine compares often.
    @Override
    public boolean equals(Object other) {
        return other instanceof Wanted w && w.required.equals(required) && w.want.name().equals(want.name());
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + want.name().hashCode();
    }
}
