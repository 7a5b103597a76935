package chock.assess.facts;

/**
 * One cylinder of the engine.
 *
 * @param number from 1
 * @param point such as {@code engine/cylinder-1}
 */
public record CylinderFact(int number, String point) { }
