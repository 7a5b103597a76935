package chock.figure;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The known names that look most like a misspelled one. */
final class Nearest {

    private Nearest() { }

    /** {@code ; perhaps speed} or nothing: every name closest to the text, when at most a third of its letters differ. */
    static String advice(String text, Collection<String> known) {
        String plain = text.toLowerCase(Locale.ROOT);
        int allowed = Math.max(1, plain.length() / 3);
        int best = known.stream().mapToInt(name -> distance(plain, name)).min().orElse(Integer.MAX_VALUE);
        if (plain.length() > 60 || best > allowed) {
            return "";
        }
        List<String> near = known.stream().filter(name -> distance(plain, name) == best).sorted(Comparator.naturalOrder()).toList();
        return "; perhaps " + String.join(" or ", near);
    }

    /** Letters to change, add or leave out to turn one word into the other. */
    private static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = above[j - 1] + (one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
            }
            above = row;
        }
        return above[other.length()];
    }
}
