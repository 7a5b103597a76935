package chock.record;

import java.util.List;
import java.util.Locale;

/** What the parsers complain of, in the words of somebody who looks at the line. */
final class SyntaxWords {

    /** @param sign part of the parser's own message */
    private record Word(String sign, String what, String advice) { }

    private static final List<Word> YAML = List.of(
            new Word("(tab)", "a tab stands where only blanks may", "Indent with blanks"),
            new Word("mapping values are not allowed", "a second ': ' on one line, or a line indented too far", "Quote a text that holds ': ', and line keys up under each other"),
            new Word("could not find expected ':'", "a key without ': ' behind it", "Write 'key: value'"),
            new Word("found unexpected end of stream", "a quotation mark is opened and never closed", "Close it"),
            new Word("unexpected end-of-input", "the file ends in the middle of something", "Close every bracket and quotation mark"),
            new Word("expected ',' or", "a bracket is not closed, or a comma is missing", "Put a comma between items and close the bracket"),
            new Word("expected <block end>", "the indentation does not fit the lines above", "Line keys up under each other, and give each list item its dash"),
            new Word("block sequence entries are not allowed", "a list item stands where none can", "Put it on a line of its own under its key"),
            new Word("unknown escape", "a backslash in double quotes", "Use single quotes"),
            new Word("cannot start any token", "a value begins with a sign that has a meaning of its own here", "Put the value in quotes"),
            new Word("special characters are not allowed", "a character that cannot be printed", "Take it out"),
            new Word("undefined alias", "an alias (*) stands here", "Write the value itself out in full"));

    private static final List<Word> JSON = List.of(
            new Word("end-of-input", "the file ends in the middle of something", "Close every bracket and quotation mark"),
            new Word("expecting double-quote to start field name", "a key without double quotes", "Write \"key\": value, and no comma before a closing bracket"),
            new Word("expecting comma to separate", "a comma is missing, or a bracket is not closed", "Put a comma between items and close the bracket"),
            new Word("expecting a colon", "a key without ':' behind it", "Write \"key\": value"),
            new Word("leading zero", "a number with a leading zero", "Put it in double quotes"),
            new Word("was expecting (json string", "a word without double quotes", "Put every word in double quotes"),
            new Word("expecting a valid value", "a word without double quotes, or a comma too many", "Put every word in double quotes"));

    private SyntaxWords() { }

    static String what(String message, boolean json) {
        Word word = find(message, json);
        return "this cannot be read as " + (json ? "JSON" : "YAML") + (word == null ? "" : ": " + word.what());
    }

    static String advice(String message, boolean json) {
        Word word = find(message, json);
        if (word == null) {
            return json ? "Look here and one line above for a missing quotation mark, comma or bracket"
                    : "Look here and one line above for a wrong indentation, colon, quotation mark or bracket";
        }
        return word.advice();
    }

    private static Word find(String message, boolean json) {
        String seen = String.valueOf(message).toLowerCase(Locale.ROOT);
        return (json ? JSON : YAML).stream().filter(w -> seen.contains(w.sign())).findFirst().orElse(null);
    }
}
