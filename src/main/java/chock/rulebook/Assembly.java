package chock.rulebook;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * How machines are put together, as far as undoing goes: what a work does to each kind of proof on the same part, and which
 * other parts a work reaches.
 *
 * @param kinds the kind of every proof, by check, or by check and want with a blank between
 * @param takes what a work takes away on the part worked on
 * @param acts what implied work of each level takes away on the part it is done to
 * @param actsLike the works an implied level counts as where a card names works
 * @param like works read as implied work of a level at the same place
 * @param units parts taken off and put back whole: what is inside is not touched by that
 * @param whole works at a place that are work on every part of the machine
 * @param mendsOnlyItself places where work ends no fault but those of what lies within, and within which part that is
 * @param mendsInPlace works that end a fault only of the part they are done on, or of what carries that part
 * @param reach rows of implied work, by the place they start from
 * @param apart readings that cannot be taken assembled, by the proof that was opened for them
 * @param readAssembled how a remark begins that says how such a reading was taken assembled all the same
 */
public record Assembly(Map<String, Kind> kinds, Map<String, Set<Kind>> takes, Map<Level, Set<Kind>> acts, Map<Level, Set<String>> actsLike, Map<String, Level> like,
                       Set<String> units, Map<String, Set<String>> whole, Map<String, String> mendsOnlyItself, Set<String> mendsInPlace, Map<String, List<Reach>> reach, Map<String, List<ReadApart>> apart, String readAssembled) {

    /** A rule book without a word on how machines are put together. */
    static final Assembly NONE = new Assembly(Map.of(), Map.of(), new EnumMap<>(Level.class), new EnumMap<>(Level.class), Map.of(), Set.of(), Map.of(), Map.of(), Set.of(), Map.of(), Map.of(), "");

    /** What a proof is a proof of. */
    public enum Kind {
        /** Thickness, cracks, wear, condition. */ SUBSTANCE,
        /** Date code, stamp, size, number. */ MARKING,
        TORQUE, LOCK,
        /** Direction, run, clip, bead, fit. */ SEAT,
        /** Slack, play, gap, angle, aim. */ SETTING,
        /** Level, grade, age, mix. */ FILLING,
        /** Bled, dry, holds pressure. */ TIGHTNESS,
        /** A function tried. */ TRIAL,
        /** Of the machine as a whole: mass, keys, papers. */ WHOLE,
        /** Of the day: weather, route, room. */ DAY
    }

    /** How far implied work goes. The part is always the same part, put back; NEW alone means another. */
    public enum Level {
        OUT, LOOSE, OFF, OPEN, SET, DRY, NEW;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * One row: work at a place that cannot be done without other work.
     *
     * @param works the works that set it off
     * @param place where
     * @param when fields of the description and the values of which one must be there; empty for every machine
     * @param implies the places reached, by level
     */
    public record Reach(Set<String> works, String place, Map<String, Set<String>> when, Map<Level, List<String>> implies) {
        boolean fits(Map<String, String> fields) {
            return when.entrySet().stream().allMatch(field -> field.getValue().contains(fields.getOrDefault(field.getKey(), "")));
        }
    }

    /**
     * A reading for which a part had to be apart.
     *
     * @param place where it is read
     * @param aspect what is read
     * @param only answers of which that is so; empty means all
     */
    public record ReadApart(Place place, String aspect, Set<String> only) { }

    /** Readings for which this proof had to be opened. */
    List<ReadApart> apart(String check, String want) {
        return apart.getOrDefault(check + " " + want, apart.getOrDefault(check, List.of()));
    }

    /** True when what a card asks to be read under this aspect cannot be read assembled. */
    public boolean isReadApart(Card card, String aspect) {
        return card.wants().stream().filter(want -> want.aspect().equals(aspect)).map(want -> want.place() == null ? card.place() : want.place())
                .anyMatch(place -> apart.values().stream().flatMap(List::stream).anyMatch(row -> row.aspect().equals(aspect) && row.place().equals(place)));
    }

    /** The kind of a proof, or null where the rule book names none, as for the checks of a house. */
    public Kind kind(String check, String want) {
        Kind own = kinds.get(check + " " + want);
        return own != null ? own : kinds.get(check);
    }

    /** The assembly of one machine, by the fields of its description. */
    public Assembled of(Map<String, String> fields) {
        return new Assembled(this, fields);
    }

    Set<Kind> takes(String work) {
        return takes.getOrDefault(work, EnumSet.noneOf(Kind.class));
    }
}
