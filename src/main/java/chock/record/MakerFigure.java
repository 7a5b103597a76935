package chock.record;

import chock.quantity.Quantity;

/**
 * A figure from the maker's manual for this machine.
 *
 * @param limit id of the limit it speaks to
 * @param point the place it is for, or null for every place
 * @param atLeast lowest allowed, or null
 * @param atMost highest allowed, or null
 * @param nominal the figure to be met within a tolerance, or null
 * @param document title of the manual
 * @param page page or section
 * @param by who read it
 * @param secondedBy who read it as well, or null
 */
public record MakerFigure(String limit, String point, Quantity atLeast, Quantity atMost, Quantity nominal,
                          String document, String page, String by, String secondedBy) { }
