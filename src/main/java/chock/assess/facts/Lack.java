package chock.assess.facts;

import chock.assess.State;

/**
 * Something a check needs and has not got.
 *
 * @param required the check
 * @param state {@code MISSING} or {@code STALE}
 * @param says one sentence without the place
 */
public record Lack(Required required, State state, String says) { }
