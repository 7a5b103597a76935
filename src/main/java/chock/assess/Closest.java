package chock.assess;

import chock.figure.Conformity;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Gate;
import chock.rulebook.Applied;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How sure one measured value is: the probability that it really lies within its limit.
 *
 * @param conformity per cent, for a normal distribution about the reading with half its U (k = 2) as standard uncertainty
 *     (JCGM 106:2012, 7)
 */
public record Closest(Gate gate, String check, String point, State state, Measured measured, Applied limit, Quantity margin, Quantity conformity) {

    /** Every measured place of every gate judged, the least sure first; a value without an uncertainty (an age, a count) has none. */
    public static List<Closest> of(Assessment assessment) {
        List<Closest> all = new ArrayList<>();
        for (GateVerdict gate : assessment.gates()) {
            for (Finding finding : gate.findings()) {
                for (Finding.AtPlace place : finding.places()) {
                    if (place.measured() != null && place.measured().uncertainty() != null && place.limit() != null) {
                        all.add(new Closest(gate.gate(), finding.check(), place.point(), place.state(), place.measured(), place.limit(), place.margin(),
                                Conformity.probability(place.measured(), place.limit().bounds())));
                    }
                }
            }
        }
        all.sort(Comparator.comparing((Closest c) -> c.conformity.value()).thenComparing(c -> c.gate).thenComparing(Closest::check).thenComparing(Closest::point));
        return all;
    }
}
