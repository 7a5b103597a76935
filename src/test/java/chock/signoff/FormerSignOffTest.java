package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import chock.signoff.Verification.Holds;
import chock.signoff.Verifier.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A workshop as it stood when records were {@code job-record/1}: its settings, trust list and ledger, a sign-off that stands
 * and one that is void. Made by the program of that time; never to be made anew, since what was signed must verify for years.
 */
class FormerSignOffTest {
    private static final Path FOLDER = Path.of("src/test/resources/signoff/v1");
    private static final Path SIGNED = FOLDER.resolve("lark.road-test.20261125T120000Z.jws");
    @TempDir private Path folder;

    private static Verification verify(Path signOff, Path record, Instant asOf) throws IOException {
        Shop shop = Shop.of(FOLDER.resolve("shop.yaml"));
        return new Verifier(TrustList.of(shop.trust()), shop, ShopBench.BOOK, asOf)
                .verify(new Source("sign-off", Files.readAllBytes(signOff)), record == null ? null : new Source("record", Files.readAllBytes(record)));
    }

    private static List<String> held(Verification found) {
        return found.things().stream().filter(t -> t.holds() == Holds.YES).map(Verification.Thing::thing).toList();
    }

    @Test
    void a_sign_off_made_before_still_verifies_against_its_record_and_ledger() throws IOException {
        Verification found = verify(SIGNED, FOLDER.resolve("lark.yaml"), ShopBench.NOON);
        assertThat(found.holds()).as("%s", found.things()).isTrue();
        assertThat(held(found)).contains("signature", "key", "time", "record", "since", "ledger");
        assertThat(found.things()).anySatisfy(t -> assertThat(t.says()).isEqualTo("The record is the one signed, byte for byte."));
    }

    @Test
    void one_letter_of_that_record_changed_is_noticed() throws IOException {
        Path other = Files.writeString(folder.resolve("lark.yaml"), Files.readString(FOLDER.resolve("lark.yaml")).replace("lever-feel, is: firm", "lever-feel, is: spongy"));
        Verification found = verify(SIGNED, other, ShopBench.NOON);
        assertThat(found.holds()).isFalse();
        assertThat(found.things()).anySatisfy(t -> assertThat(t.says()).startsWith("The record is not the one signed: entry e").contains("says something else"));
    }

    @Test
    void moving_that_record_to_the_second_form_breaks_the_sign_off() throws IOException {
        Path other = Files.writeString(folder.resolve("lark.yaml"), Files.readString(FOLDER.resolve("lark.yaml")).replace("job-record/1", "job-record/2"));
        assertThat(verify(SIGNED, other, ShopBench.NOON).things()).anySatisfy(t -> assertThat(t.says()).isEqualTo("The record is not the one signed: 'chock' says something else."));
    }

    @Test
    void what_was_void_then_is_void_now() throws IOException {
        Verification found = verify(FOLDER.resolve("voided.jws"), null, ShopBench.NOON.plusSeconds(900));
        assertThat(found.holds()).isFalse();
        assertThat(found.things()).anySatisfy(t -> assertThat(t.says()).contains("and was voided there"));
    }

    @Test
    void a_ledger_of_that_time_is_written_on() throws IOException {
        for (String name : List.of("shop.yaml", "trust.json", "ledger.txt")) {
            Files.copy(FOLDER.resolve(name), folder.resolve(name));
        }
        List<String> before = Files.readAllLines(folder.resolve("ledger.txt"));
        Shop shop = Shop.of(folder.resolve("shop.yaml"));
        SigningKey stranger = SigningKey.create();
        Path record = Path.of("docs/examples/lark-released.yaml");
        assertThat(org.assertj.core.api.Assertions.catchThrowable(() -> SignOffs.sign(shop, stranger, ShopBench.BOOK, record, Files.readAllBytes(record), Gate.ROAD_TEST, folder.resolve("x.jws"),
                java.time.Clock.fixed(ShopBench.NOON.plusSeconds(1200), ZoneOffset.UTC)))).isInstanceOf(NotSigned.class);
        List<String> after = Files.readAllLines(folder.resolve("ledger.txt"));
        assertThat(before).hasSize(6);
        assertThat(after).hasSize(7).startsWith(before.toArray(String[]::new));
        assertThat(Ledgers.history(shop.ledger()).trust().keys()).extracting(TrustedKey::name).containsExactly("Nora Pell", "Ida Marrow");
    }
}
