package chock.signoff;

import chock.record.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The last line of a ledger at some moment, short enough to be kept elsewhere: {@code LINE:DIGEST}. The digest seals every line
 * before it, so a ledger that still has this line has all of them as they were.
 *
 * @param line from 1
 * @param digest of that line, the first 32 to 64 hex figures of it
 */
public record LedgerHead(int line, String digest) {
    /** 128 bits: nobody finds another line that begins so. */
    private static final int SHORT = 32;
    private static final Pattern WRITTEN = Pattern.compile("([1-9]\\d{0,8}):([0-9a-f]{" + SHORT + ",64})");

    /** Of a ledger as it is now; empty when it has no line. */
    public static Optional<LedgerHead> of(List<LedgerLine> lines) {
        return lines.isEmpty() ? Optional.empty() : Optional.of(new LedgerHead(lines.size(), lines.get(lines.size() - 1).digest()));
    }

    /** As it is written, or empty when this is none. */
    public static Optional<LedgerHead> parse(String text) {
        Matcher m = WRITTEN.matcher(text.strip());
        return m.matches() ? Optional.of(new LedgerHead(Integer.parseInt(m.group(1)), m.group(2))) : Optional.empty();
    }

    /**
     * Every head in a file, one a line; blank lines and those behind a {@code #} are passed over.
     *
     * @throws UnusableInput when a line is no head, or the file has none
     */
    public static List<LedgerHead> in(String file, byte[] bytes) {
        List<LedgerHead> heads = new ArrayList<>();
        String[] lines = new String(bytes, StandardCharsets.UTF_8).split("\\R");
        for (int i = 0; i < lines.length; i++) {
            String text = lines[i].replaceFirst("#.*", "").strip();
            if (!text.isEmpty()) {
                int number = i + 1;
                heads.add(parse(text).orElseThrow(() -> UnusableInput.of(file + ":" + number, "'" + text + "' is no head of a ledger", "Write one a line, as 'chock ledger head' prints it")));
            }
        }
        if (heads.isEmpty()) {
            throw UnusableInput.of(file, "there is no head of a ledger in it", "Write one a line, as 'chock ledger head' prints it");
        }
        return heads;
    }

    /** Why a ledger no longer has this line, in a sentence without a full stop; empty when it has it, and with it all before. */
    public Optional<String> missingIn(List<LedgerLine> lines) {
        if (lines.size() < line) {
            return Optional.of("it has " + lines.size() + (lines.size() == 1 ? " line" : " lines") + ", and had " + line + ": lines were cut off at its end, or an older copy was put back");
        }
        return lines.get(line - 1).digest().startsWith(digest) ? Optional.empty()
                : Optional.of("its line " + line + " is not the one it was: this is another ledger, or one that was written anew");
    }

    /** Short, as it is kept elsewhere. */
    @Override
    public String toString() {
        return line + ":" + digest.substring(0, SHORT);
    }
}
