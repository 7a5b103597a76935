package chock.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * One dated line of a job record by one person.
 *
 * @param id unique in the record
 * @param at when
 * @param by id of the person
 * @param deed what kind of line it is
 * @param point the place on the machine ({@code front-brake/caliper/inner-pad}); for {@link Deed#FOUND_OUT} the instrument's id
 * @param what the aspect looked at ({@code thickness}), the work done ({@code bled}), the result of a licensed inspection, a defect in
 *     free words, or the id of the defect that is closed
 * @param is what was found; for work what its instrument was set to, or null
 * @param with id of the instrument, or null
 * @param corrects id of the earlier entry this one replaces, or null
 * @param reason why it corrects
 * @param note free words
 * @param noteIs what the note is, or null when its writer does not say
 * @param dangers what a {@link Deed#DEFECT} can do, as far as its writer says
 * @param line line of the file it stands on, from 1
 */
public record Entry(String id, Moment at, String by, Deed deed, String point, String what, Value is, String with,
                    String corrects, String reason, String note, NoteIs noteIs, Set<Danger> dangers, int line) {

    /** An entry that is no defect, and does not say what its note is. */
    public Entry(String id, Moment at, String by, Deed deed, String point, String what, Value is, String with, String corrects, String reason, String note, int line) {
        this(id, at, by, deed, point, what, is, with, corrects, reason, note, null, Set.of(), line);
    }

    /** The same entry with another value. */
    public Entry withValue(Value other) {
        return new Entry(id, at, by, deed, point, what, other, with, corrects, reason, note, noteIs, dangers, line);
    }

    /** What evidence is found by: {@code front-brake/hose hose-condition}. */
    public static String key(String point, String aspect) {
        return point + " " + aspect;
    }

    /** A place and everything that carries it, from the bottom up: {@code front-brake/hose}, {@code front-brake}. */
    public static List<String> upFrom(String point) {
        List<String> places = new ArrayList<>();
        places.add(point);
        for (int slash = point.lastIndexOf('/'); slash > 0; slash = point.lastIndexOf('/', slash - 1)) {
            places.add(point.substring(0, slash));
        }
        return places;
    }

    /** How many steps of their paths two places have in common from the top: 1 for {@code front-brake} and {@code front-brake/hose}. */
    public static int shared(String one, String other) {
        int shorter = Math.min(one.length(), other.length());
        int same = 0;
        for (int i = 0; i < shorter; i++) {
            if (one.charAt(i) != other.charAt(i)) {
                return same;
            }
            same += one.charAt(i) == '/' ? 1 : 0;
        }
        return same + (ends(one, shorter) && ends(other, shorter) ? 1 : 0);
    }

    private static boolean ends(String place, int at) {
        return place.length() == at || place.charAt(at) == '/';
    }

    /** True when this work or evidence lies on {@code other} or on something {@code other} carries. */
    public static boolean covers(String above, String below) {
        return below.startsWith(above) && (below.length() == above.length() || below.charAt(above.length()) == '/');
    }
}
