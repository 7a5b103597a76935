package chock.rulebook;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reasons of a correction that tell of the writing and not of the machine. Only a whole sentence says which of the two; its words do not. */
public final class PlainReasons {
    private static final Pattern BETWEEN = Pattern.compile("\\s*[,;]\\s*(?:and\\s+)?|\\s+and\\s+");
    private static final Pattern OTHER = Pattern.compile("[^a-z0-9]+");

    private final Pattern whole;

    /**
     * @param phrases whole reasons, in which {@code {thing}} stands for one to three of the things
     * @param things words, in lower case
     */
    PlainReasons(List<String> phrases, List<String> things) {
        String thing = "(?:" + things.stream().map(Pattern::quote).collect(Collectors.joining("|")) + ")";
        this.whole = Pattern.compile(phrases.stream().map(phrase -> Pattern.quote(phrase).replace("{thing}", "\\E" + thing + "(?: " + thing + "){0,2}\\Q")).collect(Collectors.joining("|")));
    }

    /** True when every part of this reason is one of them; not of a missing one. */
    public boolean holds(String reason) {
        return reason != null && BETWEEN.splitAsStream(reason.toLowerCase(Locale.ROOT).strip()).map(part -> OTHER.matcher(part).replaceAll(" ").strip())
                .allMatch(part -> !part.isEmpty() && whole.matcher(part).matches());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PlainReasons reasons && whole.pattern().equals(reasons.whole.pattern());
    }

    @Override
    public int hashCode() {
        return whole.pattern().hashCode();
    }
}
