package chock.signoff;

import java.util.Base64;
import java.util.Map;
import org.jose4j.jwk.OctetKeyPairJsonWebKey;
import org.jose4j.lang.JoseException;

/** Ed25519 public keys as JWK writes them (RFC 8037): 32 bytes in base64url. */
final class PublicKeys {
    private PublicKeys() { }

    static boolean isOne(String x) {
        try {
            byte[] bytes = Base64.getUrlDecoder().decode(x);
            return bytes.length == 32 && Base64.getUrlEncoder().withoutPadding().encodeToString(bytes).equals(x) && key(x).getKey() != null;
        } catch (IllegalArgumentException | IllegalStateException e) {
            return false;
        }
    }

    static OctetKeyPairJsonWebKey key(String x) {
        try {
            return new OctetKeyPairJsonWebKey(Map.of("kty", "OKP", "crv", "Ed25519", "x", x));
        } catch (JoseException e) {
            throw new IllegalStateException("not an Ed25519 public key", e);
        }
    }

    /** RFC 7638 with SHA-256, as RFC 8037 appendix A.3 does it. */
    static String thumbprint(String x) {
        return key(x).calculateBase64urlEncodedThumbprint("SHA-256");
    }
}
