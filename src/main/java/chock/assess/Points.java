package chock.assess;

/** Places on the machine, in words. */
public final class Points {
    private Points() { }

    /** {@code front-brake/left-caliper/inner-pad} as {@code front brake, left caliper, inner pad}. */
    public static String words(String point) {
        return point.replace("/", ", ").replace('-', ' ');
    }

    /** The same with a capital letter. */
    public static String title(String point) {
        String words = words(point);
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}
