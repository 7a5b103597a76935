package chock.signoff;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.HexFormat;
import org.erdtman.jcs.JsonCanonicalizer;

/** JSON in its one canonical form (RFC 8785), and digests. */
public final class Canonical {
    private static final long LARGEST_EXACT = 1L << 53;

    private Canonical() { }

    /**
     * The canonical bytes of a tree, UTF-8.
     *
     * @throws IllegalStateException when a number in it is not whole, or beyond 2^53: Java 17 prints some of these otherwise
     *         than RFC 8785 asks, so what is signed carries decimals as texts
     */
    public static byte[] bytes(JsonNode node) {
        refuseDecimals(node);
        try {
            // The library reads lists and objects alone at the top, so everything is put into a list and taken out of it.
            byte[] listed = new JsonCanonicalizer("[" + node + "]").getEncodedUTF8();
            return Arrays.copyOfRange(listed, 1, listed.length - 1);
        } catch (IOException e) {
            throw new IllegalStateException("a tree in memory can always be written", e);
        }
    }

    private static void refuseDecimals(JsonNode node) {
        if (node.isNumber() && (!node.isIntegralNumber() || !node.canConvertToLong() || Math.abs(node.longValue()) > LARGEST_EXACT)) {
            throw new IllegalStateException(node + " stands in what is to be signed; decimals are written as texts");
        }
        node.forEach(Canonical::refuseDecimals);
    }

    /** {@code sha256:} and 64 hex digits. */
    public static String digest(byte[] bytes) {
        return "sha256:" + HexFormat.of().formatHex(sha256(bytes));
    }

    /** The digest of a small part, short: 43 letters of base64url. */
    static String shortDigest(JsonNode node) {
        return Base64.getUrlEncoder().withoutPadding().encodeToString(sha256(bytes(node)));
    }

    static String hex(String text) {
        return HexFormat.of().formatHex(sha256(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
