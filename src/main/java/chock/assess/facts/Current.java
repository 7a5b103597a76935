package chock.assess.facts;

import chock.quantity.Measured;
import chock.record.Moment;
import chock.record.Value;
import java.time.Instant;

/**
 * Evidence that decides: the newest that stands, each where nobody knows which is the newest, and every fault that stands.
 *
 * @param earlier true of a reading that was read again since, and only shows with others what was known then
 */
public record Current(Wanted wanted, Evidence evidence, boolean earlier) {

    /** Evidence that decides now. */
    public Current(Wanted wanted, Evidence evidence) {
        this(wanted, evidence, false);
    }

    public Required required() {
        return wanted.required();
    }

    /** Name of the want it answers. */
    public String want() {
        return wanted.name();
    }

    public String id() {
        return evidence.id();
    }

    /** The amount, or null when it is none. */
    public Measured measured() {
        return evidence.entry().is() instanceof Value.Amount amount ? amount.measured() : null;
    }

    /** The answer, or null when it is none. */
    public String answer() {
        return evidence.entry().is() instanceof Value.Answer answer ? answer.word() : null;
    }

    /** The marked days, or null when it is none. */
    public Value.Days days() {
        return evidence.entry().is() instanceof Value.Days days ? days : null;
    }

    /** The marked code, or null when it is none. */
    public String code() {
        return evidence.entry().is() instanceof Value.Code code ? code.text() : null;
    }

    /** True unless the card wants its readings taken together, and these were taken too far apart. */
    public boolean takenWith(Current other) {
        return new Standing(wanted, evidence).takenWith(new Standing(other.wanted, other.evidence));
    }

    public Moment moment() {
        return evidence.entry().at();
    }

    /** First instant at which it is too old, or null. */
    public Instant lapses() {
        return wanted.lapse(evidence);
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Current o && o.earlier == earlier && o.evidence.equals(evidence) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * wanted.hashCode() + evidence.hashCode()) + Boolean.hashCode(earlier);
    }
}
