package chock.rulebook;

import java.util.Set;

/**
 * Work at a place.
 *
 * @param works the works, by name; empty means any that disturbs
 * @param point the place
 * @param only under undone-by, names of the wants it bears on; under cleared-by, the answers whose fault it clears; empty means all of the card
 */
public record Touch(Set<String> works, String point, Set<String> only) {

    /** True when it bears on the want of this name. */
    public boolean bearsOn(String want) {
        return only.isEmpty() || only.contains(want);
    }
}
