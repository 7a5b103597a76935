package chock.signoff;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;

/**
 * One key on the trust list: whose it is, and for how long.
 *
 * @param id thumbprint of the public key (RFC 7638, SHA-256, base64url)
 * @param x the public key (RFC 8037, base64url)
 * @param name whose it is, in full; the only name a sign-off made with it can carry
 * @param from first moment at which it may sign
 * @param until last moment at which it may sign
 * @param revoked when it was revoked, or null
 * @param reason why, or null
 */
public record TrustedKey(String id, String x, String name, Role role, Instant from, Instant until, Instant revoked, String reason) {

    /** True when something signed with it at that moment is believed, revocation left aside. */
    boolean validAt(Instant moment) {
        return !moment.isBefore(from) && !moment.isAfter(until);
    }

    public boolean isRevoked() {
        return revoked != null;
    }

    TrustedKey revoked(Instant at, String why) {
        return new TrustedKey(id, x, name, role, from, until, at, why);
    }

    /** As a JWK (RFC 7517) with what is known of it; other programs pass over what they do not know. */
    public ObjectNode jwk() {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("kty", "OKP").put("crv", "Ed25519").put("x", x).put("kid", id)
                .put("use", "sig").put("alg", "EdDSA").put("name", name).put("role", role.word())
                .put("validFrom", from.toString()).put("validUntil", until.toString());
        return isRevoked() ? node.put("revokedAt", revoked.toString()).put("reason", reason) : node;
    }
}
