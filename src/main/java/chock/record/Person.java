package chock.record;

/**
 * Somebody who writes in the record.
 *
 * @param id short id used in entries
 * @param name full name
 * @param role {@code technician}, {@code inspector} or {@code lead}
 */
public record Person(String id, String name, String role) { }
