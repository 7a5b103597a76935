package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.rulebook.RuleBook;
import chock.signoff.Verification.Holds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the workshop finds out about an instrument reaches what was signed on it. */
class RegisterSignOffTest {
    private static final String REGISTER = """
            chock: instruments/1
            instruments:
              - {id: wrench-1, kind: torque-wrench, calibrations: [{on: 2026-03-02, due: 2027-03-02}]%s}
            """;
    @TempDir private Path folder;
    private ShopBench bench;

    @BeforeEach
    void register() throws IOException {
        bench = new ShopBench(folder);
        Files.writeString(folder.resolve("shop.yaml"), Shop.SKELETON.replaceAll("instruments: none", "instruments: instruments.yaml"));
        write("");
    }

    private void write(String found) throws IOException {
        Files.writeString(folder.resolve("instruments.yaml"), REGISTER.formatted(found));
    }

    private SignOffs.Signed sign(RuleBook book, Instant at) throws IOException {
        return SignOffs.sign(bench.shop(), bench.ida, book, bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, null, Clock.fixed(at, ZoneOffset.UTC));
    }

    private Verification verify(Path signOff, Instant at) throws IOException {
        return new Verifier(TrustList.of(bench.shop().trust()), bench.shop(), bench.shop().equip(ShopBench.BOOK), at)
                .verify(new Verifier.Source("sign-off", Files.readAllBytes(signOff)), new Verifier.Source("record", Files.readAllBytes(bench.record)));
    }

    @Test
    void a_sign_off_says_which_register_and_verifies_with_it() throws IOException {
        SignOffs.Signed signed = sign(bench.shop().equip(ShopBench.BOOK), ShopBench.NOON);
        assertThat(signed.signOff().notes()).contains("The instruments were held against the register of the workshop (" + bench.shop().equip(ShopBench.BOOK).registerDigest() + ").");
        Verification found = verify(signed.file(), ShopBench.NOON);
        assertThat(found.things()).extracting(Verification.Thing::holds).containsOnly(Holds.YES);
    }

    @Test
    void without_the_register_it_names_nothing_is_signed() {
        assertThatThrownBy(() -> sign(ShopBench.BOOK, ShopBench.NOON)).isInstanceOf(NotSigned.class).hasMessageContaining("names the register").hasMessageContaining("and the record was judged without it");
    }

    @Test
    void a_finding_of_the_next_hour_voids_it_though_nobody_wrote_to_the_record() throws IOException {
        SignOffs.Signed signed = sign(bench.shop().equip(ShopBench.BOOK), ShopBench.NOON);
        write(", found-out: [{on: 2026-11-25, by: Nora Pell, says: reads 18 % low}]");
        Verification found = verify(signed.file(), ShopBench.NOON.plusSeconds(3600));
        assertThat(found.holds()).isFalse();
        assertThat(found.things()).anySatisfy(t -> assertThat(t.says()).startsWith("Since then entry register:wrench-1:1 of 2026-11-25 is about instrument/wrench-1"));
        assertThatThrownBy(() -> sign(bench.shop().equip(ShopBench.BOOK), ShopBench.NOON.plusSeconds(3600))).isInstanceOf(NotSigned.class).hasMessageContaining("is blocked at road-test");
        assertThat(Files.readString(bench.ledger())).contains("\"kind\":\"voided\"");
    }
}
