package chock.assess;

import java.util.Locale;

/** Frame and engine numbers as stamped, cast or printed. */
public final class StampedNumber {
    private StampedNumber() { }

    /**
     * True when two ways of writing are of one number: gaps, dashes, dots, strokes and small letters make no other
     * number, every other sign does.
     */
    public static boolean same(String one, String other) {
        return bare(one).equals(bare(other));
    }

    private static String bare(String number) {
        return number.replaceAll("[\\s.\\-/*·–]", "").toUpperCase(Locale.ROOT);
    }
}
