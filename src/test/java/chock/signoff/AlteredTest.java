package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One altered byte, anywhere, is noticed. The ledger's bytes are altered one and all in {@link LedgerTest}. */
@Tag("slow")
class AlteredTest {
    private static final int SAMPLES = 2000;

    @TempDir private Path folder;

    @Test
    void of_a_sign_off() throws IOException {
        ShopBench bench = new ShopBench(folder);
        byte[] good = Files.readAllBytes(bench.sign().file());
        assertThat(bench.verify(good, null, ShopBench.NOON).holds()).isTrue();
        int signature = new String(good, StandardCharsets.US_ASCII).lastIndexOf('.');
        TrustedKey key = TrustList.of(bench.shop().trust()).key(bench.ida.id()).orElseThrow();
        Random random = new Random(1);
        for (int n = 0; n < SAMPLES; n++) {
            // The header and the signature byte by byte, what lies between them at random places.
            int at = n < 200 ? n : n < 300 ? Math.min(good.length - 1, signature + n - 200) : random.nextInt(good.length);
            byte[] altered = good.clone();
            altered[at] ^= (byte) (1 << random.nextInt(8));
            Jws jws = Jws.parse(altered);
            assertThat(jws != null && jws.keyId().equals(key.id()) && jws.isSignedBy(key.x())).as("byte %d", at).isFalse();
        }
        byte[] one = good.clone();
        one[signature + 5] ^= 1;
        assertThat(bench.verify(one, null, ShopBench.NOON).things()).singleElement()
                .satisfies(t -> assertThat(t.says()).satisfiesAnyOf(s -> assertThat(s).startsWith("The signature does not fit: "), s -> assertThat(s).isEqualTo("This is no sign-off as chock writes it, or it was altered.")));
        assertThat(bench.verify(one, null, ShopBench.NOON).holds()).isFalse();
    }

    /** A person's role may change without the person being another: it is no part of what is kept of a person. */
    private static boolean inARole(byte[] record, int at) {
        // In what stands behind the key, in the key itself, or in the blank before it.
        return inARole(new String(record, 0, at, StandardCharsets.UTF_8))
                || inARole(new String(record, 0, Math.min(record.length, at + " role: ".length()), StandardCharsets.UTF_8));
    }

    private static boolean inARole(String before) {
        return before.lastIndexOf("role: ") > before.lastIndexOf('\n');
    }

    @Test
    void of_a_record() throws IOException {
        ShopBench bench = new ShopBench(folder);
        byte[] signOff = Files.readAllBytes(bench.sign().file());
        byte[] good = Files.readAllBytes(bench.record);
        RecordVersion signed = RecordVersion.of("r", good);
        Random random = new Random(2);
        int layout = 0;
        int refused = 0;
        for (int n = 0; n < SAMPLES; n++) {
            byte[] altered = good.clone();
            int at = random.nextInt(good.length);
            altered[at] ^= (byte) (1 << random.nextInt(8));
            try {
                RecordVersion version = RecordVersion.of("r", altered);
                assertThat(version.file()).isNotEqualTo(signed.file());
                if (version.digest().equals(signed.digest())) {
                    assertThat(version.items()).isEqualTo(signed.items());
                    layout++;
                } else if (!inARole(good, at)) {
                    assertThat(version.items()).as("what differs is named, byte %d", at).isNotEqualTo(signed.items());
                }
            } catch (UnusableInput e) {
                refused++;
            }
        }
        assertThat(layout).as("in comments and blanks").isPositive().isLessThan(SAMPLES / 2);
        assertThat(refused).isPositive().isLessThan(SAMPLES / 2);
        String text = bench.text();
        bench.write("# another remark\n" + text);
        assertThat(bench.verify(signOff, Files.readAllBytes(bench.record), ShopBench.NOON).things()).extracting(Verification.Thing::says)
                .contains("The record says what the one signed said; its file has been laid out otherwise since (comments, blanks, quotes).");
        bench.write(text.replace("top-speed: 120 km/h", "top-speed: 121 km/h"));
        Verification other = bench.verify(signOff, Files.readAllBytes(bench.record), ShopBench.NOON);
        assertThat(other.things()).extracting(Verification.Thing::says).contains("The record is not the one signed: 'machine' says something else.");
        assertThat(other.holds()).isFalse();
    }
}
