package chock.record;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What the note of a licensed inspection holds: {@code document T-12, inspector Ann Sorrel; tyres renewed since}.
 *
 * @param document the document that was issued
 * @param inspector the inspector's name
 * @param note what else was noted, or null
 */
public record Inspection(String document, String inspector, String note) {
    private static final Pattern WORDS = Pattern.compile("document (.*?), inspector (.*?)(?:; (.*))?", Pattern.DOTALL);

    /** Takes the note of an inspection apart. */
    static Inspection of(Entry inspected) {
        Matcher words = WORDS.matcher(String.valueOf(inspected.note()));
        if (!words.matches()) {
            throw new IllegalArgumentException("the inspection " + inspected.id() + " names no document and no inspector");
        }
        return new Inspection(words.group(1), words.group(2), words.group(3));
    }

    @Override
    public String toString() {
        return "document " + document + ", inspector " + inspector + (Reading.blank(note) ? "" : "; " + note);
    }
}
