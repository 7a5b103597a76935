package chock.rulebook;

import chock.quantity.Quantity;

/**
 * A place on the earth.
 *
 * @param latitude degrees, −90 (south) to 90 (north)
 * @param longitude degrees, −180 (west) to 180 (east)
 */
public record Coordinates(Quantity latitude, Quantity longitude) { }
