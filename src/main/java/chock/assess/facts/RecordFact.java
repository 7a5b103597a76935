package chock.assess.facts;

/**
 * The file itself.
 *
 * @param asksAsBuilt whether its form can carry what the machine was built with, and so has to; false of the first form
 */
public record RecordFact(boolean asksAsBuilt) { }
