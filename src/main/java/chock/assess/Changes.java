package chock.assess;

import java.time.Instant;
import java.util.List;

/**
 * What changes about a verdict if nobody writes anything more.
 *
 * @param at first instant at which some finding has another state at some place, or is asked for anew or no longer; null
 *     when none ever does
 * @param checks the findings that change then, in order of id
 */
public record Changes(Instant at, List<String> checks) { }
