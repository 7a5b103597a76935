/**
 * How useful the program is, counted: honest records that must be released, harmless changes that must not block them, and how
 * much has to be written to come back from work or from a fault. Everything here is made from the cards and the limits as they
 * stand in {@code rules/}, read with a plain YAML reader, and goes in as the text of a record. No rule and no fact is used.
 */
package chock.useful;
