package chock.assess;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import java.time.Instant;
import java.util.List;
import chock.rulebook.Applied;

/**
 * The outcome of one check: that of its worst place, with every place listed.
 *
 * @param check id of the check
 * @param state the worst state of its places
 * @param says one sentence about the worst place
 * @param measured the deciding value there, or null
 * @param limit the deciding limit there, or null
 * @param margin distance from the limit, negative outside, or null
 * @param remedy what clears it, or null when met
 * @param caution where people get hurt, or null
 * @param notes what should be known besides
 * @param evidence ids of the entries it rests on
 * @param critical whether somebody gets hurt when it is wrong
 * @param places every place it was asked at, worst first
 * @param lapses first instant at which it changes by itself, or null
 */
public record Finding(String check, State state, String says, Measured measured, Applied limit, Quantity margin,
                      String remedy, String caution, List<String> notes, List<String> evidence, boolean critical,
                      List<AtPlace> places, Instant lapses) {

    /** The same in other words. */
    Finding saying(String words) {
        return new Finding(check, state, words, measured, limit, margin, remedy, caution, notes, evidence, critical, places, lapses);
    }

    /** The outcome at one place. */
    public record AtPlace(String point, State state, String says, Measured measured, Applied limit, Quantity margin,
                          List<String> notes, List<String> evidence) { }
}
