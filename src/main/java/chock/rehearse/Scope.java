package chock.rehearse;

import chock.rulebook.Limit;
import chock.rulebook.Source;

/**
 * Which part of a rule book is asked about.
 *
 * @param of an id, or what ids begin with, such as {@code brakes}; null for all
 * @param houseOnly only what the house in force tightens or adds: its scenarios cannot be asked about more
 */
public record Scope(String of, boolean houseOnly) {
    static final String OF_A_HOUSE = "house.";

    /** True when a check is asked about. */
    public boolean hasCheck(String id) {
        return named(id) && (!houseOnly || id.startsWith(OF_A_HOUSE));
    }

    boolean has(Limit limit) {
        return named(limit.id()) && (!houseOnly || limit.source().kind() == Source.Kind.HOUSE);
    }

    boolean has(Change change) {
        return named(change.subject()) && (!houseOnly || change.isOfHouse());
    }

    private boolean named(String id) {
        return of == null || id.equals(of) || id.startsWith(of + ".") || id.startsWith(of + "-");
    }
}
