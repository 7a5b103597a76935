package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An older copy of the ledger or of the trust list put back: a head kept elsewhere shows the one, the ledger the other. */
class RolledBackTest {
    @TempDir private Path folder;
    private ShopBench bench;

    @BeforeEach
    void fourLines() throws IOException {
        bench = new ShopBench(folder);
        bench.refuse("HV-0001");
        bench.refuse("HV-0002");
    }

    private LedgerHead head() {
        return LedgerHead.of(Ledgers.lines(bench.ledger())).orElseThrow();
    }

    private String missing(LedgerHead head) {
        return head.missingIn(Ledgers.lines(bench.ledger())).orElse("");
    }

    @Test
    void everyHeadTheLedgerEverHadIsStillInIt() throws IOException {
        List<String> lines = Files.readAllLines(bench.ledger());
        LedgerHead early = LedgerHead.parse(head().toString()).orElseThrow();
        assertThat(early.toString()).isEqualTo("4:" + lines.get(3).substring(0, 32));
        bench.refuse("HV-0003");
        assertThat(missing(early)).isEmpty();
        assertThat(missing(head())).isEmpty();
        for (int i = 0; i < lines.size(); i++) {
            assertThat(missing(LedgerHead.parse(i + 1 + ":" + lines.get(i).substring(0, 64)).orElseThrow())).isEmpty();
        }
    }

    @Test
    void linesCutOffAreNoticedWhichTheChainAloneDoesNot() throws IOException {
        LedgerHead head = head();
        byte[] whole = Files.readAllBytes(bench.ledger());
        String text = new String(whole, StandardCharsets.UTF_8);
        Files.writeString(bench.ledger(), text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1));
        assertThat(Ledgers.verify(bench.shop()).fault()).as("sound by itself").isNull();
        assertThat(missing(head)).isEqualTo("it has 3 lines, and had 4: lines were cut off at its end, or an older copy was put back");
    }

    @Test
    void aLineWrittenAnewIsNoticedThoughTheLedgerIsAsLong() throws IOException {
        LedgerHead head = head();
        String text = Files.readString(bench.ledger());
        Files.writeString(bench.ledger(), text.substring(0, text.lastIndexOf('\n', text.length() - 2) + 1));
        bench.refuse("HV-0004");
        assertThat(Ledgers.verify(bench.shop()).fault()).as("sound by itself").isNull();
        assertThat(missing(head)).startsWith("its line 4 is not the one it was");
        bench.refuse("HV-0005");
        assertThat(missing(head)).startsWith("its line 4 is not the one it was");
    }

    @Test
    void whatIsNoHeadIsRefusedWithItsLine() {
        for (String bad : List.of("", "4", "0:" + "0".repeat(32), "4:" + "0".repeat(31), "4:" + "g".repeat(32), "-4:" + "0".repeat(32), "4 " + "0".repeat(32), "9999999999:" + "0".repeat(32))) {
            assertThat(LedgerHead.parse(bad)).as(bad).isEmpty();
        }
        byte[] file = ("# after Friday's work\n\n" + head() + "   # kept by Nora\nnot one\n").getBytes(StandardCharsets.UTF_8);
        assertThatThrownBy(() -> LedgerHead.in("heads.txt", file)).isInstanceOf(UnusableInput.class).hasMessageContaining("heads.txt:4: 'not one' is no head of a ledger");
        assertThatThrownBy(() -> LedgerHead.in("heads.txt", "# none\n".getBytes(StandardCharsets.UTF_8))).hasMessageContaining("there is no head of a ledger in it");
    }

    @Test
    void anOldTrustListDoesNotUndoARevocation() throws IOException {
        SignOffs.Signed signed = bench.sign();
        byte[] old = Files.readAllBytes(bench.shop().trust());
        Signers.revoke(bench.shop(), bench.ida.id(), "lost", bench.lead, bench.clock());
        Files.write(bench.shop().trust(), old);
        Verification found = new Verifier(TrustList.of(bench.shop().trust()), bench.shop(), ShopBench.BOOK, ShopBench.NOON.plusSeconds(60))
                .verify(new Verifier.Source("s", Files.readAllBytes(signed.file())), null);
        assertThat(found.holds()).isFalse();
        assertThat(found.things()).filteredOn(t -> t.thing().equals("key")).singleElement().satisfies(t -> {
            assertThat(t.holds()).isEqualTo(Verification.Holds.NO);
            assertThat(t.says()).contains("was revoked").contains("lost");
        });
        assertThat(found.things()).anyMatch(t -> t.thing().equals("ledger") && t.holds() == Verification.Holds.NO && t.says().contains("The trust list does not say of this key what the ledger says"));
    }

    @Test
    void aTrustListThatKnowsMoreThanTheLedgerIsNotBelieved() throws IOException {
        SigningKey stranger = SigningKey.create();
        Path jwk = bench.keep("eve", stranger);
        Path other = Files.createDirectories(folder.resolve("other"));
        ShopBench elsewhere = new ShopBench(other);
        Signers.trust(elsewhere.shop(), jwk, "Eve Hollis", Role.INSPECTOR, null, ShopBench.LAST, elsewhere.lead, elsewhere.clock());
        Files.copy(elsewhere.shop().trust(), bench.shop().trust(), java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        SignOffs.Signed signed = SignOffs.sign(elsewhere.shop(), stranger, ShopBench.BOOK, other.resolve("x.json"), Files.readAllBytes(elsewhere.record), Gate.ROAD_TEST, null, elsewhere.clock());
        Verification found = new Verifier(TrustList.of(bench.shop().trust()), bench.shop(), ShopBench.BOOK, ShopBench.NOON.plusSeconds(60))
                .verify(new Verifier.Source("s", Files.readAllBytes(signed.file())), null);
        assertThat(found.holds()).isFalse();
        assertThat(found.things().get(0).says()).contains("which is not on the trust list");
    }

    @Test
    void aKeyIsJudgedByTheTimeOfTheLedgerAndTheSheetBearsItsHead() throws IOException {
        SignOffs.Signed signed = bench.sign();
        byte[] jws = Files.readAllBytes(signed.file());
        Verification found = new Verifier(TrustList.of(bench.shop().trust()), bench.shop(), ShopBench.BOOK, ShopBench.NOON.plusSeconds(60)).verify(new Verifier.Source("s", jws), null);
        assertThat(found.things()).anyMatch(t -> t.thing().equals("key") && t.says().contains("when the ledger took it in"));
        assertThat(found.head()).isEqualTo(head());
        Verification alone = new Verifier(TrustList.of(bench.shop().trust()), null, ShopBench.BOOK, ShopBench.NOON.plusSeconds(60)).verify(new Verifier.Source("s", jws), null);
        assertThat(alone.things()).anyMatch(t -> t.thing().equals("key") && t.says().contains("by the clock of who signed"));
        assertThat(alone.head()).isNull();
    }
}
