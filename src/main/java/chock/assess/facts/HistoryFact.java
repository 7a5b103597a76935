package chock.assess.facts;

/**
 * An entry about a part that the machine had when it was written and, by a dated change, has no more: nothing is read from it now.
 *
 * @param entry id of the entry
 */
public record HistoryFact(String entry) { }
