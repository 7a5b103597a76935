package chock.assess.facts;

/**
 * A reported defect that was closed by somebody who may close it.
 *
 * @param defect id of the entry that reported it
 * @param by id of the entry that closed it
 */
public record Closing(String defect, String by) { }
