package chock.assess.facts;

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
}
