package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.Signature;
import java.util.Base64;
import java.util.HexFormat;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;
import org.erdtman.jcs.JsonCanonicalizer;
import org.jose4j.jws.JsonWebSignature;
import org.jose4j.lang.JoseException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The published vectors of the standards a sign-off rests on. */
class StandardsTest {
    private static final JsonMapper JSON = new JsonMapper();
    /** The secret key of RFC 8032 test 1, which is also that of RFC 8037 appendix A (read in copies that agree). */
    private static final String SEED = "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60";

    // RFC 8785 section 3.2.2 and 3.2.3, read in copies that agree.
    @Test
    void rfc8785_writes_its_own_example_as_it_prints_it() throws IOException {
        String in = "{\"numbers\":[333333333.33333329,1E30,4.50,2e-3,0.000000000000000000000000001],"
                + "\"string\":\"\\u20ac$\\u000F\\u000aA'\\u0042\\u0022\\u005c\\\\\\\"\\/\",\"literals\":[null,true,false]}";
        assertThat(new JsonCanonicalizer(in).getEncodedString()).isEqualTo("{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],"
                + "\"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    // RFC 8785 section 3.2.3: by UTF-16 code units, read in copies that agree.
    @Test
    void rfc8785_sorts_keys_by_utf16() throws IOException {
        String in = "{\"\\u20ac\":\"Euro Sign\",\"\\r\":\"Carriage Return\",\"\\ufb33\":\"Hebrew Letter Dalet With Dagesh\",\"1\":\"One\","
                + "\"\\ud83d\\ude00\":\"Emoji: Grinning Face\",\"\\u0080\":\"Control\",\"\\u00f6\":\"Latin Small Letter O With Diaeresis\"}";
        String out = new String(Canonical.bytes(JSON.readTree(in)), StandardCharsets.UTF_8);
        assertThat(out).isEqualTo("{\"\\r\":\"Carriage Return\",\"1\":\"One\",\"\u0080\":\"Control\",\"ö\":\"Latin Small Letter O With Diaeresis\","
                + "\"€\":\"Euro Sign\",\"\ud83d\ude00\":\"Emoji: Grinning Face\",\"\ufb33\":\"Hebrew Letter Dalet With Dagesh\"}");
    }

    // RFC 8785 appendix B, IEEE 754 patterns and what they are written as (from memory; those of the example read in copies).
    @ParameterizedTest
    @CsvSource({"0000000000000000,0", "8000000000000000,0", "0000000000000001,5e-324", "8000000000000001,-5e-324", "7fefffffffffffff,1.7976931348623157e+308",
        "4340000000000000,9007199254740992", "c340000000000000,-9007199254740992", "4430000000000000,295147905179352830000", "44b52d02c7e14af5,9.999999999999997e+22",
        "44b52d02c7e14af6,1e+23", "44b52d02c7e14af7,1.0000000000000001e+23", "444b1ae4d6e2ef4e,999999999999999700000", "444b1ae4d6e2ef4f,999999999999999900000",
        "444b1ae4d6e2ef50,1e+21", "3eb0c6f7a0b5ed8c,9.999999999999997e-7", "3eb0c6f7a0b5ed8d,0.000001", "41b3de4355555553,333333333.3333332", "41b3de4355555554,333333333.33333325",
        "41b3de4355555555,333333333.3333333", "41b3de4355555556,333333333.3333334", "41b3de4355555557,333333333.33333343", "becbf647612f3696,-0.0000033333333333333333",
        "43143ff3c1cb0959,1424953923781206.2"})
    void rfc8785_writes_numbers_as_its_appendix_says(String bits, String written) throws IOException {
        double number = Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16));
        assertThat(new JsonCanonicalizer("[" + new BigDecimal(number) + "]").getEncodedString()).isEqualTo("[" + written + "]");
    }

    @Test
    void a_decimal_never_reaches_what_is_signed() throws IOException {
        assertThatThrownBy(() -> Canonical.bytes(JSON.readTree("{\"a\":[1.5]}"))).isInstanceOf(IllegalStateException.class).hasMessageContaining("1.5 stands in what is to be signed");
        assertThatThrownBy(() -> Canonical.bytes(JSON.readTree("{\"a\":9007199254740993}"))).isInstanceOf(IllegalStateException.class);
        assertThat(new String(Canonical.bytes(JSON.readTree("{\"b\":17,\"a\":\"1.50\"}")), StandardCharsets.UTF_8)).isEqualTo("{\"a\":\"1.50\",\"b\":17}");
        assertThat(new String(Canonical.bytes(JSON.readTree("\"x\"")), StandardCharsets.UTF_8)).isEqualTo("\"x\"");
    }

    // RFC 8032 section 7.1, tests 1 to 3, read in copies that agree.
    @ParameterizedTest
    @CsvSource({
        "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60,d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a,'',"
            + "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
        "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb,3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c,72,"
            + "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
        "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7,fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025,af82,"
            + "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a"})
    void rfc8032_gives_the_public_key_and_the_signature(String seed, String open, String message, String signature) throws GeneralSecurityException {
        HexFormat hex = HexFormat.of();
        SigningKey key = key(seed);
        assertThat(hex.formatHex(Base64.getUrlDecoder().decode(key.x()))).isEqualTo(open);
        Signature ed25519 = Signature.getInstance("Ed25519");
        ed25519.initSign(key.key());
        ed25519.update(hex.parseHex(message));
        assertThat(hex.formatHex(ed25519.sign())).isEqualTo(signature);
    }

    // RFC 8037 appendix A.1 to A.5, read in copies that agree.
    @Test
    void rfc8037_gives_the_thumbprint_and_the_jws() throws JoseException {
        SigningKey key = key(SEED);
        assertThat(key.x()).isEqualTo("11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo");
        assertThat(key.id()).isEqualTo("kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
        JsonWebSignature jws = new JsonWebSignature();
        jws.setAlgorithmHeaderValue("EdDSA");
        jws.setPayload("Example of Ed25519 signing");
        jws.setKey(key.key());
        String compact = "eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc.hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg";
        assertThat(jws.getCompactSerialization()).isEqualTo(compact);
        JsonWebSignature read = new JsonWebSignature();
        read.setCompactSerialization(compact);
        read.setKey(PublicKeys.key(key.x()).getKey());
        assertThat(read.verifySignature()).isTrue();
    }

    static SigningKey key(String seed) {
        return new SigningKey(new Ed25519PrivateKeyParameters(HexFormat.of().parseHex(seed)));
    }
}
