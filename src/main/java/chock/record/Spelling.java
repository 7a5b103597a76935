package chock.record;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds the words somebody may have meant. */
public final class Spelling {
    private static final int MOST = 3;

    private record Near(String word, int slips) { }

    private Spelling() { }

    /**
     * The candidates nearest to a word, at most three, nearest first, then by the alphabet. Near means: no more slips
     * (a letter too many, missing, wrong, or two swapped) than a third of the word's letters, and at least two allowed.
     */
    public static List<String> nearest(String word, Collection<String> candidates) {
        return within(word, candidates, Math.max(2, word.length() / 3));
    }

    /** As {@link #nearest(String, Collection)}, with the number of slips allowed. */
    static List<String> within(String word, Collection<String> candidates, int allowed) {
        List<Near> near = new ArrayList<>();
        for (String candidate : candidates) {
            if (Math.abs(candidate.length() - word.length()) <= allowed) {
                int slips = slips(word, candidate);
                if (slips <= allowed) {
                    near.add(new Near(candidate, slips));
                }
            }
        }
        return near.stream().sorted(Comparator.comparingInt(Near::slips).thenComparing(Near::word)).limit(MOST).map(Near::word).toList();
    }

    /** Number of slips between two words (optimal string alignment), whatever the case of the letters. */
    static int slips(String one, String other) {
        String a = one.toLowerCase(java.util.Locale.ROOT);
        String b = other.toLowerCase(java.util.Locale.ROOT);
        int[] before = null;
        int[] above = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] here = new int[b.length() + 1];
            here[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                here[j] = Math.min(Math.min(here[j - 1], above[j]) + 1, above[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    here[j] = Math.min(here[j], before[j - 2] + 1);
                }
            }
            before = above;
            above = here;
        }
        return above[b.length()];
    }
}
