package chock.signoff;

import java.text.Normalizer;
import java.util.Locale;
import java.util.Set;

/** Whether two pairs of numbers are of one machine: a number is the same however it is spaced, dashed or cased. */
final class SameMachine {
    private static final Set<String> NO_NUMBER = Set.of("", "NONE", "UNKNOWN", "ILLEGIBLE", "NA");

    private SameMachine() { }

    /** One of the two numbers is enough: an engine may be another, and so may a frame. */
    static boolean is(String frame, String engine, String otherFrame, String otherEngine) {
        return isNumber(frame, otherFrame) || isNumber(engine, otherEngine);
    }

    private static boolean isNumber(String one, String other) {
        String number = plain(one);
        return !NO_NUMBER.contains(number) && number.equals(plain(other));
    }

    private static String plain(String number) {
        return Normalizer.normalize(number, Normalizer.Form.NFKC).toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", "");
    }
}
