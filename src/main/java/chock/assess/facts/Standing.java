package chock.assess.facts;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Value;
import java.math.BigDecimal;

/** Evidence that nothing sets aside. */
public record Standing(Wanted wanted, Evidence evidence) {

    public boolean newerThan(Standing other) {
        return evidence.newerThan(other.evidence);
    }

    public boolean faulty() {
        return wanted.faulty(evidence);
    }

    /** True when two readings differ by more than their combined uncertainty (root of the sum of squares). */
    public boolean disagreesWith(Standing other) {
        if (!(evidence.entry().is() instanceof Value.Amount a) || !(other.evidence.entry().is() instanceof Value.Amount b)) {
            return false;
        }
        Measured first = a.measured();
        Measured second = b.measured();
        Quantity apart = first.value().minus(second.value()).abs();
        return apart.value().pow(2).compareTo(square(first, apart).add(square(second, apart))) > 0;
    }

    private static BigDecimal square(Measured measured, Quantity in) {
        return measured.uncertainty() == null ? BigDecimal.ZERO : measured.uncertainty().differenceTo(in.unit()).value().pow(2);
    }
}
