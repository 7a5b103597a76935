package chock.assess.facts;

import chock.record.Gate;
import java.util.List;

/**
 * A known fault of this check closes a gate that does not ask for it.
 *
 * @param required the check
 * @param gate the gate
 * @param dangers what the fault can do, by name
 */
public record Closed(Required required, Gate gate, List<String> dangers) {
    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Closed o && o.gate == gate && o.required.equals(required) && o.dangers.equals(dangers);
    }

    @Override
    public int hashCode() {
        return 31 * required.hashCode() + gate.ordinal();
    }
}
