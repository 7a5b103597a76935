package chock.assess.facts;

import chock.record.Entry;

/**
 * A value of the description that is rare, and takes checks away or loosens a limit.
 *
 * @param at the place where somebody can look at it
 * @param removes what falls away, in words
 * @param shownBy what bears it out in the description itself, in words; null when nothing does
 * @param line line of the file, 0 when not known
 */
public record UnusualFact(String field, String value, String at, String removes, String shownBy, int line) {
    public boolean isShown() {
        return shownBy != null;
    }

    /** {@code front-brake.type: none (line 22)}. */
    public String words() {
        return field + ": " + value + (line > 0 ? " (line " + line + ")" : "");
    }

    /** True of an entry that somebody looked whether this part is as it was built. */
    public boolean isLookedAtBy(Evidence evidence) {
        return evidence.isFirstHand() && evidence.entry().what().equals("as-built") && evidence.says("yes") && evidence.entry().point().equals(at);
    }

    /** True of work that took the part off for good. */
    public boolean isMadeBy(Work work) {
        return work.entry().what().equals("left-off") && (Entry.covers(work.entry().point(), at) || Entry.covers(at, work.entry().point()));
    }
}
