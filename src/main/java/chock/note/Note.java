package chock.note;

import java.util.List;

/**
 * What a note may mean. Nothing of it is written before somebody confirms it.
 *
 * @param proposals what the note says and can mean one thing only
 * @param choices what it may mean several things, or is no statement of today
 * @param unknown what is not understood, in its own words
 */
public record Note(List<Proposal> proposals, List<Choice> choices, List<String> unknown) {

    /**
     * One entry to be.
     *
     * @param kind done, measured, tried, seen or told
     * @param is what was found; null for work without a figure
     * @param with id of the instrument, or null where none was named
     */
    public record Candidate(String point, String kind, String what, String is, String with) { }

    /** @param said the words it comes from */
    public record Proposal(Candidate entry, String said) { }

    /** @param candidates what may be meant, in order of place */
    public record Choice(String said, List<Candidate> candidates) { }
}
