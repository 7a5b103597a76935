package chock.assess.facts;

import chock.assess.Points;
import chock.assess.StampedNumber;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Value;
import java.math.BigDecimal;

/** Evidence that nothing sets aside. */
public record Standing(Wanted wanted, Evidence evidence) {

    public boolean laterThan(Standing other) {
        return evidence.laterThan(other.evidence);
    }

    /** The amount, or null when it is none. */
    public Measured measured() {
        return evidence.entry().is() instanceof Value.Amount amount ? amount.measured() : null;
    }

    /** True unless the card wants its readings taken together, and these were taken too far apart. */
    public boolean takenWith(Standing other) {
        return wanted.card().together() == null || !TakenTogether.surelyApart(evidence.entry().at(), other.evidence.entry().at(), wanted.card().together().apart());
    }

    /** The same as evidence that decides. */
    public Current deciding() {
        return new Current(wanted, evidence);
    }

    /** {@code rear wheel, tyre: date code 1524 (e7)}. */
    public String words() {
        return Points.words(evidence.entry().point()) + ": " + evidence.entry().what().replace('-', ' ') + " " + evidence.says() + " (" + evidence.id() + ")";
    }

    public boolean faulty() {
        return wanted.faulty(evidence);
    }

    /** True when two readings differ by more than their combined uncertainty (root of the sum of squares), and should not. */
    public boolean disagreesWith(Standing other) {
        // A nut torqued once more to another figure contradicts nothing: work is done, not read.
        if (mayDiffer(other) || wanted.want().weakest() == Deed.DONE || !(evidence.entry().is() instanceof Value.Amount a) || !(other.evidence.entry().is() instanceof Value.Amount b)) {
            return false;
        }
        Measured first = a.measured();
        Measured second = b.measured();
        // Of two temperatures in other degrees the second is no step: it is read in the first's, then taken off.
        Quantity apart = first.value().minus(second.value().to(first.value().unit())).abs();
        return apart.value().pow(2).compareTo(square(first, apart).add(square(second, apart))) > 0;
    }

    /**
     * True when both cannot be right: one finds it good and the other bad, two codes differ, or two marked days have no day
     * in common.
     */
    public boolean contradicts(Standing other) {
        if (mayDiffer(other)) {
            return false;
        }
        Value first = evidence.entry().is();
        Value second = other.evidence.entry().is();
        if (first instanceof Value.Code a && second instanceof Value.Code b) {
            return !StampedNumber.same(a.text(), b.text());
        }
        if (first instanceof Value.Days a && second instanceof Value.Days b) {
            return a.from().isAfter(b.to()) || b.from().isAfter(a.to());
        }
        return first instanceof Value.Answer && second instanceof Value.Answer && faulty() != other.faulty();
    }

    /** True when both can be right though nobody worked there in between. */
    private boolean mayDiffer(Standing other) {
        return wanted.want().varies() || wanted.latestDecides() && (laterThan(other) || other.laterThan(this));
    }

    private static BigDecimal square(Measured measured, Quantity in) {
        return measured.uncertainty() == null ? BigDecimal.ZERO : measured.uncertainty().differenceTo(in.unit()).value().pow(2);
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Standing o && o.evidence.equals(evidence) && o.wanted.equals(wanted);
    }

    @Override
    public int hashCode() {
        return 31 * wanted.hashCode() + evidence.hashCode();
    }
}
