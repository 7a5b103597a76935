package chock.assess.facts;

/**
 * A correction that is strong enough to lift a fault.
 *
 * @param entry id of the entry that showed the fault
 * @param by id of the correction
 */
public record Lift(String entry, String by) { }
