package chock.assess.facts;

import chock.record.DescriptionChange;
import chock.record.Entry;

/**
 * A dated change of the description.
 *
 * @param because the entry of the work that made it so
 * @param at the place where such work is written, or null when the rule book names none
 * @param whole whether one part became another, so that work on a piece of it is not enough: what was proven of all of the old part has to fall with it
 */
public record ChangeFact(DescriptionChange change, Entry because, String at, boolean whole) {

    /** True when the entry it rests on is about that part, or about what carries it. */
    public boolean isAboutThePart() {
        return at == null || because.point() != null && (because.point().equals("machine") || Entry.covers(because.point(), at) || !whole && Entry.covers(at, because.point()));
    }

    public boolean restsOn(String entry) {
        return because.id().equals(entry);
    }

    /** {@code front-brake.type: drum to disc 2026-11-20 (line 40)}. */
    public String words() {
        return change.field() + ": " + change.from() + " to " + change.to() + " " + change.at() + (change.line() > 0 ? " (line " + change.line() + ")" : "");
    }
}
