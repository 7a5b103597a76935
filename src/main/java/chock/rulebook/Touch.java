package chock.rulebook;

import java.util.Set;

/**
 * Work at a place.
 *
 * @param works the works, by name; empty means any that disturbs
 * @param point the place
 */
public record Touch(Set<String> works, String point) { }
