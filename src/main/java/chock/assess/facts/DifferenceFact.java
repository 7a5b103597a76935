package chock.assess.facts;

/**
 * A field in which the machine at first was not as it was built, with no change that says when it became so.
 *
 * @param says both, with their lines
 */
public record DifferenceFact(String field, String says) { }
