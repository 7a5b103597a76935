package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.fuzz.Fuzz;
import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a sign-off, a trust list or a ledger, it is told for what it is; nothing altered is believed. */
@Tag("slow")
class FuzzedPapersTest {
    @Test
    void aLedgerIsReadUpToItsFirstBadLine(@TempDir Path folder) throws IOException {
        byte[] good = Files.readAllBytes(new ShopBench(folder).ledger());
        List<LedgerLine> lines = LedgerText.parse(good).lines();
        assertThat(lines).isNotEmpty();
        Fuzz.run(List.of(good), bytes -> {
            List<LedgerLine> read = LedgerText.parse(bytes).lines();
            assertThat(read).isEqualTo(lines.subList(0, Math.min(read.size(), lines.size())));
        });
    }

    @Test
    void aTrustListIsReadOrRefused(@TempDir Path folder) throws IOException {
        byte[] good = Files.readAllBytes(new ShopBench(folder).shop().trust());
        int[] refused = {0};
        int all = Fuzz.run(List.of(good), bytes -> {
            try {
                TrustList.read("trust list", bytes);
            } catch (UnusableInput e) {
                refused[0]++;
            }
        });
        assertThat(refused[0]).as("refused, of " + all).isBetween(1, all);
    }

    @Test
    void aSignedTextThatWasAlteredIsNotSigned() {
        SigningKey key = SigningKey.create();
        byte[] good = Jws.sign("{\"chock\":\"sign-off/1\"}".getBytes(StandardCharsets.UTF_8), "chock-sign-off+jws", key).getBytes(StandardCharsets.US_ASCII);
        assertThat(Jws.parse(good)).isNotNull();
        Fuzz.run(List.of(good), bytes -> {
            Jws parsed = Jws.parse(bytes);
            boolean same = java.util.Arrays.equals(bytes, good);
            assertThat(parsed != null && parsed.isSignedBy(key.x())).isEqualTo(same);
        });
    }

    @Test
    void aPayloadThatIsNoSignOffIsNone() {
        byte[] good = "{\"chock\":\"sign-off/1\",\"gate\":\"road-test\",\"asOf\":\"2026-11-25T12:00:00Z\",\"findings\":[{\"check\":\"a\"}]}".getBytes(StandardCharsets.UTF_8);
        Fuzz.run(List.of(good), bytes -> {
            SignOff read = SignOff.read(bytes);
            assertThat(read == null || SignOff.FORM.equals(read.chock())).isTrue();
        });
    }
}
