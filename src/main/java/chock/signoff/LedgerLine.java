package chock.signoff;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.time.Instant;

/**
 * One line of the ledger: {@code DIGEST JSON}, where the digest is SHA-256 over the JSON in 64 hex figures, and the JSON
 * is canonical and carries the digest of the line before.
 *
 * @param digest of this line
 * @param said what it says
 */
public record LedgerLine(String digest, ObjectNode said) {
    /** Stands in the first line in the place of a line before it. */
    static final String NOTHING_BEFORE = "0".repeat(64);

    static LedgerLine of(ObjectNode said) {
        return new LedgerLine(Canonical.hex(json(said)), said);
    }

    private static String json(ObjectNode said) {
        return new String(Canonical.bytes(said), StandardCharsets.UTF_8);
    }

    /** With its line end. */
    byte[] bytes() {
        return (digest + " " + json(said) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /** From 1. */
    public int number() {
        return said.path("line").intValue();
    }

    public Instant at() {
        return Instant.parse(said.path("at").asText());
    }

    /** {@code signed}, {@code refused}, {@code voided}, {@code key-trusted}, {@code key-revoked}, {@code withdrawn}, {@code rule-book-kept} or {@code recovered}. */
    public String kind() {
        return said.path("kind").asText();
    }

    /** What stands under a key, or an empty text. */
    public String text(String key) {
        return said.path(key).asText("");
    }
}
