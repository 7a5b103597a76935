package chock.report;

import java.lang.Character.UnicodeScript;
import java.util.ArrayList;
import java.util.List;

/** Plain text laid out in lines of at most 80 columns, safe to send to a terminal. */
public final class Page {
    /** Columns of a line. */
    public static final int WIDTH = 80;

    private static final String BOLD = "\u001b[1m";
    private static final String PLAIN = "\u001b[0m";

    private final StringBuilder text = new StringBuilder();
    private final boolean bold;

    /** @param bold whether headings are printed bold; only for a terminal */
    public Page(boolean bold) {
        this.bold = bold;
    }

    /** Adds a heading. */
    public Page heading(String words) {
        lines(words, WIDTH).forEach(line -> text.append(bold ? BOLD + line + PLAIN : line).append('\n'));
        return this;
    }

    /** Adds a paragraph that starts at this column, from 0. */
    public Page put(int indent, String words) {
        return put(indent, "", words);
    }

    /** Adds a paragraph with a lead in front of its first line; the following lines hang below the first word behind it. */
    public Page put(int indent, String lead, String words) {
        String first = " ".repeat(indent) + clean(lead);
        String margin = " ".repeat(columns(first));
        String before = first;
        for (String line : lines(words, WIDTH - margin.length())) {
            text.append((before + line).stripTrailing()).append('\n');
            before = margin;
        }
        return this;
    }

    /** Adds an empty line. */
    public Page gap() {
        text.append('\n');
        return this;
    }

    private static List<String> lines(String words, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        int used = 0;
        for (String word : clean(words).strip().split(" +")) {
            for (String piece : pieces(word, width)) {
                int wide = columns(piece);
                if (used > 0 && used + 1 + wide > width) {
                    lines.add(line.toString());
                    line.setLength(0);
                    used = 0;
                }
                line.append(used > 0 ? " " : "").append(piece);
                used += (used > 0 ? 1 : 0) + wide;
            }
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> pieces(String word, int width) {
        if (columns(word) <= width) {
            return List.of(word);
        }
        List<String> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        word.codePoints().forEach(c -> {
            if (columns(piece.toString()) + columns(c) > width) {
                pieces.add(piece.toString());
                piece.setLength(0);
            }
            piece.appendCodePoint(c);
        });
        pieces.add(piece.toString());
        return pieces;
    }

    private static int columns(String text) {
        return text.codePoints().map(Page::columns).sum();
    }

    private static int columns(int c) {
        int type = Character.getType(c);
        if (type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK) {
            return 0;
        }
        UnicodeScript script = UnicodeScript.of(c);
        return script == UnicodeScript.HAN || script == UnicodeScript.HIRAGANA || script == UnicodeScript.KATAKANA || script == UnicodeScript.HANGUL ? 2 : 1;
    }

    /**
     * The same words on one line, with every character that could steer a terminal or turn the reading direction shown
     * as {@code ?}: a record is written by others, and must not be able to repaint a verdict.
     */
    public static String clean(String words) {
        StringBuilder clean = new StringBuilder(words.length());
        words.codePoints().forEach(c -> {
            if (Character.isWhitespace(c)) {
                clean.append(' ');
                return;
            }
            switch (Character.getType(c)) {
                case Character.CONTROL, Character.FORMAT, Character.SURROGATE, Character.PRIVATE_USE, Character.UNASSIGNED -> clean.append('?');
                default -> clean.appendCodePoint(c);
            }
        });
        return clean.toString();
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
