package chock.record;

import java.util.List;

/** Things listed in a sentence. */
public final class Listing {
    private Listing() { }

    /** {@code winding, speed and temperature}. At least one item. */
    public static String and(List<String> items) {
        return joined(items, " and ");
    }

    /** {@code mm, cm or in}. At least one item. */
    public static String or(List<String> items) {
        return joined(items, " or ");
    }

    private static String joined(List<String> items, String last) {
        int end = items.size() - 1;
        return end == 0 ? items.get(0) : String.join(", ", items.subList(0, end)) + last + items.get(end);
    }
}
