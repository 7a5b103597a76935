package chock.signoff;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jose4j.jwa.AlgorithmConstraints;
import org.jose4j.jws.AlgorithmIdentifiers;
import org.jose4j.jws.JsonWebSignature;
import org.jose4j.lang.JoseException;

/**
 * A signed text in the compact form of RFC 7515, Ed25519 (RFC 8037), as this program writes it and not otherwise: exactly
 * {@code alg}, {@code kid} and {@code typ} in its header, and every letter the only one that could stand there.
 *
 * @param typ what sort of thing is signed
 * @param keyId thumbprint of the key it says it was signed with
 * @param payload what is signed
 * @param compact the whole
 */
record Jws(String typ, String keyId, byte[] payload, String compact) {
    private static final Pattern HEADER = Pattern.compile("\\{\"alg\":\"EdDSA\",\"kid\":\"([A-Za-z0-9_-]{43})\",\"typ\":\"([a-z+-]+)\"}");
    private static final AlgorithmConstraints ONLY = new AlgorithmConstraints(AlgorithmConstraints.ConstraintType.PERMIT, AlgorithmIdentifiers.EDDSA);

    static String sign(byte[] payload, String typ, SigningKey key) {
        try {
            JsonWebSignature jws = new JsonWebSignature();
            jws.setAlgorithmConstraints(ONLY);
            jws.setAlgorithmHeaderValue(AlgorithmIdentifiers.EDDSA);
            jws.setKeyIdHeaderValue(key.id());
            jws.setHeader("typ", typ);
            jws.setPayloadBytes(payload);
            jws.setKey(key.key());
            return jws.getCompactSerialization();
        } catch (JoseException e) {
            throw new IllegalStateException("the signature could not be made", e);
        }
    }

    /** The signature over a text that stands elsewhere: the compact form with nothing in its middle (RFC 7515 appendix F). */
    static String signDetached(byte[] payload, String typ, SigningKey key) {
        return sign(payload, typ, key).replaceFirst("\\..*\\.", "..");
    }

    /** The compact form with the text put back in. */
    static String attached(String detached, byte[] payload) {
        return detached.replaceFirst("\\.\\.", "." + Base64.getUrlEncoder().withoutPadding().encodeToString(payload) + ".");
    }

    /**
     * Takes a signed text apart. Nothing in it is to be believed before {@link #isSignedBy}.
     *
     * @return null when this program does not write it so
     */
    static Jws parse(byte[] file) {
        String compact = new String(file, StandardCharsets.ISO_8859_1);
        String[] parts = compact.split("\\.", -1);
        if (parts.length != 3) {
            return null;
        }
        byte[] header = exactly(parts[0]);
        byte[] payload = exactly(parts[1]);
        byte[] signature = exactly(parts[2]);
        if (header == null || payload == null || signature == null || signature.length != 64) {
            return null;
        }
        Matcher m = HEADER.matcher(new String(header, StandardCharsets.UTF_8));
        return m.matches() ? new Jws(m.group(2), m.group(1), payload, compact) : null;
    }

    // Of base64url the last letter has spare bits, which most readers overlook: then two texts would be one signature.
    private static byte[] exactly(String part) {
        try {
            byte[] bytes = Base64.getUrlDecoder().decode(part);
            return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes).equals(part) ? bytes : null;
        } catch (IllegalArgumentException e) {
            return null;
        }
    }

    boolean isSignedBy(String x) {
        try {
            JsonWebSignature jws = new JsonWebSignature();
            jws.setAlgorithmConstraints(ONLY);
            jws.setCompactSerialization(compact);
            jws.setKey(PublicKeys.key(x).getKey());
            return jws.verifySignature();
        } catch (JoseException e) {
            return false;
        }
    }
}
