package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.nimbusds.jose.JOSEException;
import com.nimbusds.jose.JWSObject;
import com.nimbusds.jose.crypto.Ed25519Verifier;
import com.nimbusds.jose.jwk.JWKSet;
import com.nimbusds.jose.jwk.OctetKeyPair;
import java.nio.charset.StandardCharsets;
import java.text.ParseException;
import java.time.Instant;
import java.util.Arrays;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;

class JwsTest {
    private static final SigningKey KEY = SigningKey.create();
    private static final byte[] PAYLOAD = "{\"a\":\"1\"}".getBytes(StandardCharsets.UTF_8);

    @Test
    void another_library_verifies_it_with_the_trust_list_as_it_lies_there() throws ParseException, JOSEException {
        TrustedKey trusted = new TrustedKey(KEY.id(), KEY.x(), "Ida Marrow", Role.INSPECTOR, Instant.EPOCH, Instant.MAX.minusSeconds(1), null, null);
        JWKSet set = JWKSet.parse(new String(new TrustList(List.of(trusted)).bytes(), StandardCharsets.UTF_8));
        JWSObject jws = JWSObject.parse(Jws.sign(PAYLOAD, SignOff.TYP, KEY));
        OctetKeyPair key = set.getKeyByKeyId(jws.getHeader().getKeyID()).toOctetKeyPair();
        assertThat(key.computeThumbprint().toString()).isEqualTo(KEY.id());
        assertThat(jws.verify(new Ed25519Verifier(key))).isTrue();
        assertThat(jws.getPayload().toBytes()).isEqualTo(PAYLOAD);
        JWSObject other = JWSObject.parse(Jws.sign(PAYLOAD, SignOff.TYP, SigningKey.create()));
        assertThat(other.verify(new Ed25519Verifier(key))).isFalse();
    }

    @Test
    void it_can_be_written_in_one_way_only() {
        String compact = Jws.sign(PAYLOAD, SignOff.TYP, KEY);
        assertThat(Jws.parse(ascii(compact)).isSignedBy(KEY.x())).isTrue();
        String alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
        char last = compact.charAt(compact.length() - 1);
        // The last letter of 64 bytes in base64url has four spare bits: fifteen other letters are read as the same bytes.
        int same = 0;
        for (char other : alphabet.toCharArray()) {
            String altered = compact.substring(0, compact.length() - 1) + other;
            if (other != last) {
                same += Arrays.equals(Base64.getUrlDecoder().decode(altered.substring(altered.lastIndexOf('.') + 1)), Base64.getUrlDecoder().decode(compact.substring(compact.lastIndexOf('.') + 1))) ? 1 : 0;
                assertThat(Jws.parse(ascii(altered))).as("%s", other).satisfiesAnyOf(j -> assertThat(j).isNull(), j -> assertThat(j.isSignedBy(KEY.x())).isFalse());
            }
        }
        assertThat(same).isEqualTo(15);
        for (String altered : List.of(compact + "\n", " " + compact, compact + "=", compact + ".", compact.replaceFirst("\\.", ".."), "")) {
            assertThat(Jws.parse(ascii(altered))).as(altered).isNull();
        }
    }

    @Test
    void a_header_that_asks_for_no_signature_or_another_is_not_even_read() {
        String[] parts = Jws.sign(PAYLOAD, SignOff.TYP, KEY).split("\\.");
        for (String header : List.of("{\"alg\":\"none\"}", "{\"alg\":\"none\",\"kid\":\"" + KEY.id() + "\",\"typ\":\"chock-sign-off+json\"}", "{\"alg\":\"HS256\",\"kid\":\"" + KEY.id() + "\",\"typ\":\"chock-sign-off+json\"}",
                "{\"alg\":\"EdDSA\",\"kid\":\"" + KEY.id() + "\",\"typ\":\"chock-sign-off+json\",\"crit\":[\"b64\"]}", "{\"alg\":\"EdDSA\", \"kid\":\"" + KEY.id() + "\",\"typ\":\"chock-sign-off+json\"}")) {
            assertThat(Jws.parse(ascii(Base64.getUrlEncoder().withoutPadding().encodeToString(ascii(header)) + "." + parts[1] + "." + parts[2]))).as(header).isNull();
        }
    }

    @Test
    void a_line_is_signed_though_its_text_stands_elsewhere() {
        String detached = Jws.signDetached(PAYLOAD, History.SEAL, KEY);
        assertThat(detached).contains("..");
        assertThat(Jws.parse(ascii(Jws.attached(detached, PAYLOAD))).isSignedBy(KEY.x())).isTrue();
        assertThat(Jws.parse(ascii(Jws.attached(detached, ascii("{}")))).isSignedBy(KEY.x())).isFalse();
    }

    private static byte[] ascii(String text) {
        return text.getBytes(StandardCharsets.US_ASCII);
    }
}
