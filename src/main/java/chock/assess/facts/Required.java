package chock.assess.facts;

import java.util.Objects;

/**
 * A check that this machine must answer at one place.
 *
 * @param check id of the check
 * @param point the place
 * @param limit id of the limit that applies here, or null when the card's own does
 */
public record Required(String check, String point, String limit) {
    public Required(String check, String point) {
        this(check, point, null);
    }

    // The engine compares often, and from the first moment: what a record makes of itself is slow then.
    @Override
    public boolean equals(Object other) {
        return other instanceof Required r && r.check.equals(check) && r.point.equals(point) && Objects.equals(r.limit, limit);
    }

    @Override
    public int hashCode() {
        return 31 * check.hashCode() + point.hashCode();
    }
}
