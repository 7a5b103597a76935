package chock.rulebook;

import chock.quantity.Bounds;
import java.util.List;

/**
 * The limit that decided.
 *
 * @param id id of the limit
 * @param bounds the range allowed
 * @param sense the sense it was given in
 * @param source where the deciding number comes from
 * @param others the limits that applied as well and were less strict, in words
 */
public record Applied(String id, Bounds bounds, Limit.Sense sense, Source source, List<String> others) {

    /** In words: {@code at least 1.5 mm (common practice)}. */
    public String words() {
        return bounds.words() + " (" + source.words() + ")";
    }
}
