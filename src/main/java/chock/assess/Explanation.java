package chock.assess;

import java.util.List;

/**
 * How a check came to its finding, from the machine and the entries to the state, read from what the rules concluded.
 *
 * @param check id of the check
 * @param question what it asks
 * @param applies to what it applies, in words that complete "asked of …"
 * @param places where it is asked; empty when it does not apply to this machine
 * @param remedy what clears it, in the imperative
 */
public record Explanation(String check, String question, String applies, List<AtPlace> places, String remedy) {

    /**
     * @param rule the rule that asked it here
     * @param because the facts that made it ask
     * @param wants what it wants there, in the order of the card
     * @param limit the limit that decides, in words, or null
     * @param others the limits that applied as well, and what became of them
     * @param lacks what is not there, in sentences
     * @param closes gates that its known fault closes though they do not ask for it, in words; empty when there is none
     * @param compared what was held against the limit or answered, worst first
     */
    public record AtPlace(String point, State state, String rule, List<String> because, List<WantedHere> wants, String limit, List<String> others, List<String> lacks, List<Compared> compared, List<String> closes) { }

    /**
     * @param asks what is wanted, and how strongly
     * @param holds how long it holds
     * @param considered every entry about it, newest first
     */
    public record WantedHere(String asks, String holds, List<Considered> considered) { }

    /** What became of an entry. */
    public enum Fate { DECIDES, STANDS, SET_ASIDE }

    /**
     * @param says what it says, when and by whom
     * @param why why it does not decide; empty when it does
     */
    public record Considered(String entry, Fate fate, String says, List<String> why) { }

    /**
     * @param how the rule that worked it out from several entries, or null when one entry was judged alone
     * @param margin distance from the limit in words, or null
     */
    public record Compared(State state, String says, String margin, String how, List<String> evidence) { }
}
