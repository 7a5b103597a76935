package chock.assess.facts;

import chock.assess.State;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.rulebook.Applied;
import java.time.Instant;
import java.util.List;

/**
 * What one piece of evidence, or a value worked out from several, shows.
 *
 * @param required the check
 * @param want name of the want, or {@code null} for a derived value
 * @param state what it shows
 * @param says one sentence without the place
 * @param measured the value, or null
 * @param applied the limit, or null
 * @param margin distance from the limit, negative outside, or null
 * @param evidence ids of the entries
 * @param lapses first instant at which it no longer holds by itself, or null
 */
public record Judgement(Required required, String want, State state, String says, Measured measured, Applied applied,
                        Quantity margin, List<String> evidence, Instant lapses) {
    // Equal ones have equal hashes; sentences and numbers need not be hashed for that. One check may have thousands.
    @Override
    public int hashCode() {
        return 31 * (31 * required.hashCode() + state.ordinal()) + evidence.hashCode();
    }
}
