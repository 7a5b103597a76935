package chock.signoff;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;

/**
 * A ledger as it lies in its file, held against its own chain.
 *
 * @param lines the good lines, up to the first bad one
 * @param bad number of the first bad line, or 0
 * @param why what is wrong with it, or null
 * @param torn bytes behind the last line end: what a crash left of a line; empty when the file ends with its line
 * @param sound how many bytes the good lines take
 */
record LedgerText(List<LedgerLine> lines, int bad, String why, byte[] torn, long sound) {
    private static final ObjectReader STRICT = JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build().readerFor(JsonNode.class);
    private static final Set<String> KINDS = Set.of("signed", "refused", "voided", "key-trusted", "key-revoked", Withdrawal.KIND, RulePacks.KIND, "recovered");

    static LedgerText parse(byte[] bytes) {
        List<LedgerLine> lines = new ArrayList<>();
        int from = 0;
        for (int end = next(bytes, from); end >= 0; end = next(bytes, from)) {
            byte[] one = Arrays.copyOfRange(bytes, from, end + 1);
            LedgerLine before = lines.isEmpty() ? null : lines.get(lines.size() - 1);
            LedgerLine line = read(one);
            String why = line == null ? "it was altered" : misplaced(line, before);
            if (why != null) {
                return new LedgerText(lines, lines.size() + 1, why, new byte[0], from);
            }
            lines.add(line);
            from = end + 1;
        }
        return new LedgerText(lines, 0, null, Arrays.copyOfRange(bytes, from, bytes.length), from);
    }

    private static int next(byte[] bytes, int from) {
        for (int i = from; i < bytes.length; i++) {
            if (bytes[i] == '\n') {
                return i;
            }
        }
        return -1;
    }

    /** A line, when these bytes are exactly how it is written; else null. */
    static LedgerLine read(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        if (text.length() < 67 || text.charAt(64) != ' ') {
            return null;
        }
        try {
            if (!(STRICT.readTree(text.substring(65)) instanceof ObjectNode said)) {
                return null;
            }
            LedgerLine line = LedgerLine.of(said);
            return Arrays.equals(line.bytes(), bytes) ? line : null;
        } catch (JsonProcessingException | IllegalStateException e) {
            return null;
        }
    }

    /** Why a line cannot follow on the one before it, or null. */
    static String misplaced(LedgerLine line, LedgerLine before) {
        if (line.number() != (before == null ? 1 : before.number() + 1)) {
            return "it is numbered " + line.text("line") + "; lines before it were taken out or put in";
        }
        if (!line.text("previous").equals(before == null ? LedgerLine.NOTHING_BEFORE : before.digest())) {
            return "it does not follow on the line before; that line was altered or exchanged";
        }
        Instant at;
        try {
            at = Instant.parse(line.text("at"));
        } catch (DateTimeException e) {
            return "it has no time";
        }
        if (before != null && at.isBefore(before.at())) {
            return "its time " + at + " is before that of the line before, " + before.at();
        }
        return KINDS.contains(line.kind()) ? null : "it is of a kind not known here, '" + line.kind() + "'; when a later chock wrote it, read it with that one";
    }

    boolean isSound() {
        return bad == 0 && torn.length == 0;
    }
}
