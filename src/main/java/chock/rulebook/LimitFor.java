package chock.rulebook;

import java.util.List;

/**
 * The limit in force for one check at one place of one machine.
 *
 * @param applied the limit; with a gap, what is known of it so far, or null: outside of that is bad whatever is lacking
 * @param gap what is lacking, in a sentence, or null
 * @param toDo what to do about that, in a sentence with its full stop, or null
 * @param rests the limits of the rule book, local codes and house that were held against each other
 */
public record LimitFor(Applied applied, String gap, String toDo, List<Limit> rests) {
    /** True when nothing can be good by it: something that must be known is lacking. */
    public boolean lacks() {
        return gap != null;
    }

    /** True when a law set the number that decides, and nothing is lacking. */
    public boolean setByLaw() {
        return !lacks() && applied.source().kind() == Source.Kind.LAW;
    }
}
