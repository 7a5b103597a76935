package chock.signoff;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.spec.EdECPrivateKeySpec;
import java.security.spec.NamedParameterSpec;
import java.util.Base64;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;

/** A private Ed25519 key and its public half. It never prints itself. */
public final class SigningKey {
    private final String x;
    private final String id;
    private final byte[] seed;

    SigningKey(Ed25519PrivateKeyParameters key) {
        this.seed = key.getEncoded();
        this.x = Base64.getUrlEncoder().withoutPadding().encodeToString(key.generatePublicKey().getEncoded());
        this.id = PublicKeys.thumbprint(x);
    }

    /** A new key. */
    public static SigningKey create() {
        return new SigningKey(new Ed25519PrivateKeyParameters(new SecureRandom()));
    }

    /** Thumbprint of the public key (RFC 7638). */
    public String id() {
        return id;
    }

    /** The public key (RFC 8037, base64url). */
    public String x() {
        return x;
    }

    PrivateKey key() {
        try {
            return KeyFactory.getInstance("Ed25519").generatePrivate(new EdECPrivateKeySpec(NamedParameterSpec.ED25519, seed));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("Java 17 has Ed25519", e);
        }
    }

    Ed25519PrivateKeyParameters parameters() {
        return new Ed25519PrivateKeyParameters(seed);
    }

    /** The public half as a JWK (RFC 7517, 8037), to hand to the lead. */
    public byte[] publicJwk() {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("kty", "OKP").put("crv", "Ed25519").put("x", x).put("kid", id)
                .put("use", "sig").put("alg", "EdDSA");
        return Pretty.bytes(node);
    }

    @Override
    public String toString() {
        return "key " + id;
    }
}
