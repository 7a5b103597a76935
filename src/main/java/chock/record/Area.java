package chock.record;

import java.util.List;

/**
 * Where a law holds.
 *
 * @param code ISO 3166 code of the territory
 * @param members territories it covers besides its own
 * @param except parts of its own territory where it does not hold
 */
public record Area(String code, List<String> members, List<String> except) {

    /** True for the territory itself, a part of it, or a member. */
    public boolean covers(String territory) {
        int dash = territory.indexOf('-');
        String country = dash < 0 ? territory : territory.substring(0, dash);
        if (except.contains(territory)) {
            return false;
        }
        return code.equals(territory) || code.equals(country) || members.contains(territory) || members.contains(country);
    }
}
