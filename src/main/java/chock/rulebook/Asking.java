package chock.rulebook;

import java.util.List;
import java.util.Map;

/**
 * When a check of a house is asked, where no rule of its own says so.
 *
 * @param card the check of the house
 * @param with the shipped check it goes with, or null when it is asked of every machine
 * @param at the places of that check at which it is asked as well, or null for all of them
 */
record Asking(Card card, Card with, Place at) {

    /** True when it goes with that check. */
    boolean with(String check) {
        return with != null && with.id().equals(check);
    }

    /** Where it is asked when the shipped check is asked at this point; empty when it is not. */
    List<String> points(String point, Map<String, List<String>> words) {
        if (at != null && at.match(point, words).isEmpty()) {
            return List.of();
        }
        return with.place().match(point, words).map(binding -> card.place().points(binding, words)).orElse(List.of());
    }
}
