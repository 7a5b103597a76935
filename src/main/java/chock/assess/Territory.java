package chock.assess;

import java.util.Arrays;
import java.util.Locale;

/** Where a machine will be ridden. */
public final class Territory {
    private Territory() { }

    /**
     * True when a code begins with that of a country, as {@code GB} and {@code US-VA} do (ISO 3166-1, the codes assigned
     * in the list that comes with Java). {@code UK} and {@code EU} are reserved, not assigned.
     */
    public static boolean isInACountry(String code) {
        return Arrays.asList(Locale.getISOCountries()).contains(code.split("-")[0]);
    }
}
