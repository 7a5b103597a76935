package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import chock.signoff.ShopBench;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code ledger withdraw}, and what the other commands say after it. */
class WithdrawCommandTest {
    private static final String HERE = RuleBook.shipped().digest();
    private static final String WHY = "the limit was read from the wrong table";

    @TempDir private Path folder;
    private ShopBench shop;

    @BeforeEach
    void sign() throws IOException {
        shop = new ShopBench(folder);
        assertThat(run("sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "WORDS", "--out", path("s.jws")).status()).isZero();
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private Run run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                Clock.fixed(ShopBench.NOON, ZoneOffset.UTC), false, null, Map.of("CHOCK_SHOP", shop.file().toString(), "WORDS", ShopBench.PASSPHRASE), null);
        int status = Chock.run(bench, args);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Run withdraw(String key, String... more) {
        return run(Stream.concat(Stream.of("ledger", "withdraw", "--by", path(key), "--passphrase-env", "WORDS"), Stream.of(more)).toArray(String[]::new));
    }

    private static String flat(String text) {
        return text.replaceAll("\\s+", " ");
    }

    /** Without blanks: the page breaks a digest that is longer than a line. */
    private static String tight(String text) {
        return text.replaceAll("\\s", "");
    }

    @Test
    void a_check_is_withdrawn_and_every_command_says_so() throws IOException {
        assertThat(run("verify", path("s.jws"), shop.record.toString()).out()).startsWith("HOLDS: ");
        Run done = withdraw("nora.pem", "--check", "brakes.pad-thickness", "--rule-book", HERE, "--reason", WHY);
        assertThat(done.err()).isEmpty();
        assertThat(flat(done.out())).isEqualTo("WITHDRAWN: the check brakes.pad-thickness of rule book " + HERE + " Ledger: line 4 1 sign-off ended with it. ");
        assertThat(done.status()).isZero();
        String says = tight("Nora Pell withdrew the check brakes.pad-thickness of rule book " + HERE + " on 2026-11-25 12:00 Europe/London: " + WHY + ".");
        for (List<String> with : List.of(List.of(path("s.jws")), List.of(path("s.jws"), shop.record.toString()))) {
            Run verified = run(Stream.concat(Stream.of("verify"), with.stream()).toArray(String[]::new));
            assertThat(verified.out()).startsWith("DOES NOT HOLD: road-test of HV-0142");
            assertThat(tight(verified.out())).contains(tight("X ledger: It is line 3 of the ledger, and was voided there: ") + says);
            assertThat(verified.status()).isEqualTo(1);
        }
        assertThat(tight(run("sheet", path("s.jws")).out())).contains("DOESNOTHOLD", says);
        assertThat(tight(run("ledger", "list").out())).contains(tight("withdrawn: the check brakes.pad-thickness of rule book " + HERE + " by Nora Pell: " + WHY), tight("voided: a sign-off of HV-0142: ") + says.replaceFirst("\\.$", ""));
        assertThat(tight(run("ledger", "verify").out())).startsWith("SOUND:5lines").contains("Withdrawn:" + says);
        assertThat(tight(run("assess", shop.record.toString()).out())).contains(tight("The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London is void: ") + says);
        Run again = run("sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "WORDS", "--out", path("t.jws"));
        assertThat(again.status()).isEqualTo(1);
        assertThat(tight(again.err())).isEqualTo("Refused:" + says + tight("Sign by a rule book with another digest, in which that is mended: a later chock, or other house rules."));
        assertThat(folder.resolve("t.jws")).doesNotExist();
    }

    @Test
    void a_whole_rule_book_is_withdrawn() {
        assertThat(flat(withdraw("nora.pem", "--rule-book", HERE, "--reason", WHY).out())).startsWith("WITHDRAWN: the rule book " + HERE);
        assertThat(run("verify", path("s.jws")).status()).isEqualTo(1);
        Run again = withdraw("nora.pem", "--rule-book", HERE, "--reason", WHY);
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.err()).startsWith("Refused: this was withdrawn already: Nora Pell withdrew the rule book " + HERE);
    }

    @Test
    void only_the_key_of_a_lead_does() {
        Run refused = withdraw("ida.pem", "--check", "brakes.pad-thickness", "--reason", WHY);
        assertThat(refused.err()).isEqualTo("Refused: Ida Marrow is inspector; only a lead withdraws.\n");
        assertThat(refused.status()).isEqualTo(1);
        assertThat(run("verify", path("s.jws")).status()).isZero();
    }

    @Test
    void what_cannot_be_meant_is_refused_with_what_to_write_and_nothing_is_written() throws IOException {
        byte[] before = Files.readAllBytes(folder.resolve("ledger.txt"));
        unusable("Withdraw what? Give --check ID, --rule-book DIGEST, or both for one check of one rule book.", "--reason", WHY);
        unusable("--reason", "--check", "brakes.pad-thickness");
        unusable("reason: no reason is written. Say why", "--check", "brakes.pad-thickness", "--reason", " ");
        unusable("rule book: 'v2' is not the digest of a rule book. Write sha256: and 64 figures", "--rule-book", "v2", "--reason", WHY);
        unusable("check: 'brakes.pads' is a check neither of the rule book at hand", "--check", "brakes.pads", "--reason", WHY);
        assertThat(Files.readAllBytes(folder.resolve("ledger.txt"))).isEqualTo(before);
    }

    private void unusable(String says, String... args) {
        Run run = withdraw("nora.pem", args);
        assertThat(run.status()).as("%s", List.of(args)).isEqualTo(2);
        assertThat(flat(run.err())).contains(says);
    }
}
