package chock.assess.facts;

import java.util.List;

/**
 * The checks of which nothing was written: no entry is about anything that they want, at their place or near it.
 *
 * @param checks where each is asked
 */
public record Unwritten(List<Required> checks) { }
