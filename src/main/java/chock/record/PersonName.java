package chock.record;

import java.lang.Character.UnicodeScript;
import java.text.Normalizer;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * When two written names are one person. Whoever could write the own name in two ways that look alike could look at the own work as
 * somebody else, so neither case, blanks, dots nor signs that cannot be seen make another person, nor a letter that looks like
 * another. A name keeps to one alphabet; that a name in one looks like a name in another is not noticed.
 */
public final class PersonName {
    private static final Set<UnicodeScript> ANY = EnumSet.of(UnicodeScript.COMMON, UnicodeScript.INHERITED);
    /** Alphabets with letters that look alike. */
    private static final Set<UnicodeScript> ALIKE = EnumSet.of(UnicodeScript.LATIN, UnicodeScript.CYRILLIC, UnicodeScript.GREEK, UnicodeScript.ARMENIAN,
            UnicodeScript.COPTIC, UnicodeScript.CHEROKEE);

    private PersonName() { }

    /** True when nobody could tell these two names apart by eye. */
    public static boolean isSame(String one, String other) {
        return plain(one).equals(plain(other)) || looks(one).equals(looks(other));
    }

    /** What is wrong with the letters of a name; empty when nothing is. */
    public static Optional<String> complaint(String name) {
        Set<UnicodeScript> scripts = Normalizer.normalize(name, Normalizer.Form.NFKC).codePoints().mapToObj(UnicodeScript::of)
                .filter(script -> !ANY.contains(script) && ALIKE.contains(script)).collect(Collectors.toCollection(() -> EnumSet.noneOf(UnicodeScript.class)));
        return scripts.size() < 2 ? Optional.empty() : Optional.of("it mixes letters of two alphabets (" + scripts.stream().map(script -> script.name().charAt(0)
                + script.name().substring(1).toLowerCase(Locale.ROOT)).collect(Collectors.joining(", ")) + ")");
    }

    private static String plain(String name) {
        return letters(name).toLowerCase(Locale.ROOT);
    }

    /** With letters and figures that look alike written in one way. */
    private static String looks(String name) {
        return letters(name).replaceAll("[Il1|]", "l").replaceAll("[O0]", "o").toLowerCase(Locale.ROOT);
    }

    private static String letters(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFKC).replaceAll("[^\\p{L}\\p{N}\\p{M}|]", "");
    }
}
