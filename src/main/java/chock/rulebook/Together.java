package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.time.Duration;
import java.util.Set;

/**
 * Readings of a check that count only when they were taken together.
 *
 * @param within how far apart they may be taken, as it was written
 * @param wants names of the wants that belong together; one alone when the check puts together the same reading of several places
 */
public record Together(Quantity within, Set<String> wants) {

    /** How far apart they may be taken. */
    public Duration apart() {
        return Duration.ofSeconds(within.to(Unit.SECONDS).value().longValueExact());
    }

    /** {@code within 1 h of each other}. */
    public String words() {
        return "within " + within + " of each other";
    }
}
