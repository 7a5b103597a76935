package chock.assess.facts;

import chock.assess.Points;
import chock.record.Entry;
import chock.rulebook.Assembled.Implied;
import chock.rulebook.Assembly.Level;
import java.util.stream.Collectors;

/**
 * Work that is not entered and was done all the same: a tube does not come out without its tyre.
 *
 * @param work the work that was written
 * @param implied what it implies, and by which steps
 */
public record ImpliedWork(Work work, Implied implied) {

    /** True unless the evidence certainly came later, or is the written work itself. */
    public boolean mayFollow(Evidence evidence, Wanted wanted) {
        return work.mayFollow(evidence, wanted);
    }

    /** {@code , which implies rear wheel, tyre out and in, then rear wheel out and in}. */
    public String words() {
        return words(implied);
    }

    /** How a work undoes what was wanted though it was done elsewhere; empty where it was done right there. */
    public static String words(Wanted wanted, Entry work) {
        return wanted.isTouchedBy(work) ? "" : wanted.impliedBy(work).map(ImpliedWork::words).orElse("");
    }

    private static String words(Implied implied) {
        return ", which implies " + implied.chain().stream().map(one -> Points.words(one.place()).replace(",", "") + " " + words(one.level())).collect(Collectors.joining(", then "));
    }

    private static String words(Level level) {
        return switch (level) {
            case OUT -> "out and in";
            case LOOSE -> "slackened";
            case OFF -> "off and on";
            case OPEN -> "opened";
            case SET -> "set anew";
            case DRY -> "emptied and filled";
            case NEW -> "replaced";
        };
    }
}
