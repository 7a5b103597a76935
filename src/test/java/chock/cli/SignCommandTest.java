package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

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
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands about sign-offs, as the inspector types them. */
class SignCommandTest {
    @TempDir private Path folder;
    private ShopBench shop;

    @BeforeEach
    void open() throws IOException {
        shop = new ShopBench(folder);
    }

    private Run run(List<String> typed, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Deque<String> answers = new ArrayDeque<>(typed);
        Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                Clock.fixed(ShopBench.NOON, ZoneOffset.UTC), false, null, Map.of("CHOCK_SHOP", shop.file().toString(), "WORDS", ShopBench.PASSPHRASE),
                typed.isEmpty() ? null : words -> answers.remove().toCharArray());
        int status = Chock.run(bench, args);
        assertThat(out + " " + err).as("a passphrase is never printed").doesNotContain(ShopBench.PASSPHRASE);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private Run run(String... args) {
        return run(List.of(), args);
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private Run sign(String... more) {
        String[] args = {"sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "WORDS"};
        String[] all = Arrays.copyOf(args, args.length + more.length);
        System.arraycopy(more, 0, all, args.length, more.length);
        return run(all);
    }

    @Test
    void a_release_is_signed_verified_and_listed() {
        Run signed = sign("--out", path("s.jws"));
        assertThat(signed.err()).isEmpty();
        assertThat(signed.out()).startsWith("SIGNED at road-test until 2026-11-25 13:50 Europe/London\n").contains("By Ida Marrow (inspector) on 2026-11-25 12:00 Europe/London", "Ledger:   line 3", "the licensed inspector or technician");
        assertThat(signed.status()).isZero();
        Run verified = run("verify", path("s.jws"), shop.record.toString());
        assertThat(verified.out()).startsWith("HOLDS: road-test of HV-0142: Tarnbeck Lark 250").doesNotContain("\n  X ", "\n  _ ");
        assertThat(verified.status()).isZero();
        Run byTrust = run("verify", path("s.jws"), "--trust", path("trust.json"));
        assertThat(byTrust.out()).startsWith("HOLDS as far as it was looked at: ").contains("  _ record: The record was not given");
        assertThat(byTrust.status()).isZero();
        Run lapsed = run("verify", path("s.jws"), "--as-of", "2026-11-27T12:00", "--format", "json");
        assertThat(lapsed.status()).isEqualTo(1);
        assertThat(lapsed.out()).contains("\"holds\" : false", "It lapsed on 2026-11-25 13:50 Europe/London.");
        assertThat(run("ledger", "list").out()).contains("key trusted: Nora Pell (lead)", "signed: HV-0142 at road-test by Ida Marrow");
        assertThat(run("ledger", "verify").out()).startsWith("SOUND: 3 lines");
        assertThat(run("assess", shop.record.toString()).out()).endsWith("HV-0142: The sign-off at road-test by Ida Marrow of 2026-11-25 12:00\n         Europe/London stands until 2026-11-25 13:50 Europe/London.\n");
        Run json = run("assess", "--format", "json", shop.record.toString());
        assertThat(json.out()).startsWith("[").endsWith("]\n");
        assertThat(json.err()).startsWith("HV-0142: The sign-off at road-test by Ida Marrow");
    }

    @Test
    void a_refusal_is_1_with_its_reason_on_standard_error_and_nothing_written() throws IOException {
        Run run = run("sign", shop.record.toString(), "--gate", "hand-over", "--key", path("ida.pem"), "--passphrase-env", "WORDS");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Refused: HV-0142 is blocked at hand-over: 16 missing. First of all, ");
        try (var files = Files.list(folder)) {
            assertThat(files.map(Path::toString)).isNotEmpty().noneMatch(name -> name.contains(".jws"));
        }
    }

    @Test
    void no_flag_gives_another_name_another_role_or_another_moment() {
        for (List<String> flag : List.of(List.of("--name", "Nora Pell"), List.of("--signer", "Nora Pell"), List.of("--role", "lead"), List.of("--as-of", "2026-11-25T12:00"), List.of("--force"), List.of("--passphrase", "x"))) {
            Run run = sign(flag.toArray(String[]::new));
            assertThat(run.status()).as("%s", flag).isEqualTo(2);
            assertThat(run.err()).as("%s", flag).contains("Unknown option", flag.get(0));
        }
        assertThat(run("ledger", "list").out()).doesNotContain("signed:");
    }

    @Test
    void the_sheet_is_made_of_what_verifies_and_says_what_does_not_hold() throws IOException {
        sign("--out", path("s.jws"));
        Run whole = run("sheet", path("s.jws"), shop.record.toString());
        assertThat(whole.status()).as(whole.err()).isZero();
        assertThat(whole.out()).startsWith("Sign-off: road test\nTarnbeck Lark 250, frame TB25-10382, engine TB25E-10395\n")
                .contains("Signed by: Ida Marrow, inspector", "record: holds. The record is the one signed, byte for byte.", "ledger: holds. It is line 3").doesNotContain("DOES NOT HOLD");
        Run lapsed = run("sheet", path("s.jws"), "--trust", path("trust.json"), "--as-of", "2026-11-27T12:00", "--out", path("s.html"), "--paper", "letter");
        assertThat(lapsed.status()).isEqualTo(1);
        assertThat(lapsed.out()).isEmpty();
        assertThat(Files.readString(Path.of(path("s.html")))).contains("DOES NOT HOLD", "It lapsed on 2026-11-25 13:50 Europe/London.", "record: not looked at", "8.5in 11in");
        Run added = run("sheet", path("s.jws"), written("other.yaml", shop.record, "HV-0142", "HV-0143"), "--format", "text");
        assertThat(added.status()).isEqualTo(1);
        assertThat(added.out()).contains("DOES NOT HOLD\n  X The record is not the one signed");
    }

    private String written(String name, Path from, String what, String instead) throws IOException {
        return Files.writeString(folder.resolve(name), Files.readString(from).replace(what, instead)).toString();
    }

    @Test
    void no_sheet_is_made_of_what_nobody_trusted_signed_or_of_what_is_no_sign_off() throws IOException {
        sign("--out", path("s.jws"));
        String jws = Files.readString(Path.of(path("s.jws")));
        String altered = written("altered.jws", Path.of(path("s.jws")), jws.substring(300, 310), jws.substring(301, 311));
        Run run = run("sheet", altered, "--out", path("no.pdf"));
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).isEqualTo(altered + ": no sheet was made. The signature does not fit: something in it was altered after Ida Marrow signed, or Ida Marrow did not sign it.\n");
        Run record = run("sheet", shop.record.toString(), "--out", path("no.pdf"));
        assertThat(record.status()).isEqualTo(1);
        assertThat(record.err()).isEqualTo(shop.record + ": no sheet was made. This is no sign-off as chock writes it, or it was altered.\n");
        String sealed = run("sheet", path("s.jws")).out().replaceAll("(?s).*\\nSeal\\n(.*?)\\n\\n.*", "$1").replaceAll("\\s", "");
        Path seal = Files.writeString(folder.resolve("seal.jws"), sealed);
        assertThat(run("verify", seal.toString()).status()).isZero();
        Run alone = run("sheet", seal.toString(), "--out", path("no.pdf"));
        assertThat(alone.status()).isEqualTo(2);
        assertThat(alone.err()).isEqualTo(seal + ": this is the seal alone, and carries no findings. Give the whole sign-off, the file 'chock sign' wrote; 'chock verify' looks at a seal\n");
        Run nowhere = run("sheet", path("s.jws"), "--format", "pdf");
        assertThat(nowhere.status()).isEqualTo(2);
        assertThat(nowhere.err()).startsWith("A PDF goes into a file; add --out FILE.pdf.\n");
        Run absent = run("sheet", path("absent.jws"));
        assertThat(absent.status()).isEqualTo(2);
        assertThat(absent.err()).startsWith(path("absent.jws") + ": ");
        assertThat(Files.exists(Path.of(path("no.pdf")))).isFalse();
        Run nobody = Run.of("sheet", path("s.jws"));
        assertThat(nobody.status()).isEqualTo(2);
        assertThat(nobody.err()).startsWith("Whose keys are believed? Give --trust FILE or --shop FILE.\n");
    }

    @Test
    void a_wrong_passphrase_is_a_refusal_in_the_ledger_that_names_nobody() throws IOException {
        long before = Files.readAllLines(folder.resolve("ledger.txt")).size();
        Run run = run(List.of("not the right words"), "sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"));
        assertThat(run.status()).isEqualTo(2);
        List<String> lines = Files.readAllLines(folder.resolve("ledger.txt"));
        assertThat(lines).hasSize((int) before + 1);
        assertThat(lines.get(lines.size() - 1)).contains("\"refused\"", "HV-0142", "road-test", "the key file ida.pem was not opened, so that nobody is proven to have asked")
                .doesNotContain("Ida", "keyId", "not the right words");
        assertThat(run("ledger", "verify").status()).isZero();
        assertThat(run("ledger", "list").out().replaceAll("\\s+", " ")).contains("refused: HV-0142 at road-test: the key file ida.pem was not opened");
        assertThat(sign("--out", path("s.jws")).status()).isZero();
    }

    @Test
    void what_is_no_key_or_no_record_is_not_a_refusal() throws IOException {
        long before = Files.readAllLines(folder.resolve("ledger.txt")).size();
        assertThat(run(List.of("any words"), "sign", shop.record.toString(), "--gate", "road-test", "--key", shop.record.toString()).err()).contains("it is not a key file");
        assertThat(run(List.of("any words"), "sign", path("trust.json"), "--gate", "road-test", "--key", path("ida.pem")).err()).contains(path("ida.pem") + ": the passphrase does not open this key", path("trust.json"));
        assertThat(Files.readAllLines(folder.resolve("ledger.txt"))).hasSize((int) before);
    }

    @Test
    void a_wrong_passphrase_and_none_are_refused() {
        assertThat(run(List.of("not the right words"), "sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem")).err()).isEqualTo(path("ida.pem") + ": the passphrase does not open this key. Nothing was signed\n");
        Run none = run("sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"));
        assertThat(none.status()).isEqualTo(2);
        assertThat(none.err()).isEqualTo("passphrase: there is no terminal to ask for it at. Give --passphrase-file FILE or --passphrase-env NAME\n");
        assertThat(run("sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "NO_SUCH").err()).isEqualTo("NO_SUCH: there is no passphrase in it\n");
        assertThat(run("ledger", "list").out()).doesNotContain("signed:");
    }

    @Test
    void a_new_key_asks_twice_and_is_trusted_and_revoked_by_a_lead() throws IOException {
        assertThat(run(List.of("one of two phrases", "another of two"), "keys", "new", path("tom.pem")).err()).isEqualTo(path("tom.pem") + ": the two passphrases differ. No key was made; do it again\n");
        Path words = Files.writeString(folder.resolve("words.txt"), "the words of tom 12\nsecond line\n");
        Run made = run("keys", "new", path("tom.pem"), "--passphrase-file", words.toString());
        assertThat(made.status()).isZero();
        assertThat(made.out() + made.err()).doesNotContain("the words of tom");
        String id = made.out().lines().filter(line -> line.startsWith("Id:")).findFirst().orElseThrow().replaceFirst("Id: +", "");
        Run self = run("keys", "trust", path("tom.pem.jwk"), "--name", "Ida Marrow", "--role", "inspector", "--until", "2027-12-31", "--by", path("tom.pem"), "--passphrase-file", words.toString());
        assertThat(self.status()).isEqualTo(1);
        assertThat(self.err()).startsWith("Refused: the key given with --by (" + id + ") is not on the trust list; only a lead changes it.");
        assertThat(run("keys", "trust", path("tom.pem.jwk"), "--name", "Tom Fell", "--role", "owner", "--until", "2027-12-31", "--by", path("nora.pem"), "--passphrase-env", "WORDS").err()).contains("'owner' is not one of inspector, lead");
        Run trusted = run("keys", "trust", path("tom.pem.jwk"), "--name", "Tom Fell", "--role", "inspector", "--until", "2027-12-31", "--by", path("nora.pem"), "--passphrase-env", "WORDS");
        assertThat(trusted.out()).startsWith("Trusted: Tom Fell (inspector) until 2027-12-31 23:59 Europe/London");
        assertThat(run("keys", "revoke", id, "--reason", "lost", "--by", path("nora.pem"), "--passphrase-env", "WORDS").out()).startsWith("Revoked: the key of Tom Fell");
        assertThat(run("keys", "list").out()).contains("Tom Fell (inspector)\n  " + id + "\n  REVOKED on 2026-11-25 12:00 Europe/London: lost");
    }

    /** One id in 64 does. */
    @Test
    void a_key_whose_id_begins_with_a_dash_is_revoked_like_any_other() throws IOException {
        Path jwk = null;
        String id = "";
        for (int tries = 0; !id.startsWith("-") && tries < 3000; tries++) {
            Files.deleteIfExists(folder.resolve("tom.pem"));
            Files.deleteIfExists(folder.resolve("tom.pem.jwk"));
            jwk = shop.keep("tom");
            id = Files.readString(jwk).replaceAll("(?s).*\"kid\"\\s*:\\s*\"([^\"]+)\".*", "$1");
        }
        assertThat(id).startsWith("-");
        assertThat(run("keys", "trust", jwk.toString(), "--name", "Tom Fell", "--role", "inspector", "--until", "2027-12-31", "--by", path("nora.pem"), "--passphrase-env", "WORDS").status()).isZero();
        assertThat(run("keys", "revoke", id, "--reason", "lost", "--by", path("nora.pem"), "--passphrase-env", "WORDS").out()).startsWith("Revoked: the key of Tom Fell");
        assertThat(run("keys", "revoke", id, "--raeson", "lost", "--by", path("nora.pem"), "--passphrase-env", "WORDS").err()).contains("--reason");
    }

    @Test
    void a_head_kept_elsewhere_shows_that_lines_were_cut_off() throws IOException {
        sign("--out", path("s.jws"));
        Run head = run("ledger", "head");
        assertThat(head.out()).matches("3:[0-9a-f]{32}\n");
        assertThat(head.status()).isZero();
        Path kept = Files.writeString(folder.resolve("heads.txt"), "# kept at home\n" + head.out());
        Run sound = run("ledger", "verify", "--head", kept.toString());
        assertThat(sound.out()).startsWith("SOUND: 3 lines").contains("It still has the head " + head.out().strip() + ".");
        assertThat(run("sheet", path("s.jws")).out()).contains("Head of the ledger: " + head.out().strip());
        List<String> lines = Files.readAllLines(folder.resolve("ledger.txt"));
        Files.writeString(folder.resolve("ledger.txt"), String.join("\n", lines.subList(0, 2)) + "\n");
        assertThat(run("ledger", "verify").status()).as("sound by itself").isZero();
        Run cut = run("ledger", "verify", "--head", head.out().strip());
        assertThat(cut.out().replaceAll("\\s+", " ")).startsWith("NOT SOUND").contains("no longer has the head " + head.out().strip() + ": it has 2 lines, and had 3: lines were cut off at its end");
        assertThat(cut.status()).isEqualTo(1);
        assertThat(run("ledger", "verify", "--head", kept.toString()).status()).isEqualTo(1);
        Run none = run("ledger", "verify", "--head", "3:abc");
        assertThat(none.err()).contains("3:abc");
        assertThat(none.status()).isEqualTo(2);
    }

    @Test
    void what_is_left_out_is_asked_for() {
        assertThat(Run.of("sign", "x.yaml", "--gate", "road-test", "--key", "x.pem").err()).isEqualTo("--shop: it is not known which workshop this is for. Give --shop FILE, or set CHOCK_SHOP; 'chock new shop' prints settings to fill in\n");
        assertThat(Run.of("verify", "x.jws").err()).startsWith("Whose keys are believed? Give --trust FILE or --shop FILE.");
        assertThat(Run.of("keys").err()).startsWith("Do what with keys? One of new, list, trust, revoke.");
        assertThat(Run.of("ledger").err()).startsWith("Do what with the ledger? One of list, verify, head, withdraw, recover.");
        assertThat(run("sign", shop.record.toString(), "--key", path("ida.pem")).err()).contains("--gate");
        assertThat(run("sign", shop.record.toString(), "--gate", "road-test").err()).contains("--key");
        assertThat(Run.of("new", "shop").out()).startsWith("# The settings of a workshop.").contains("chock: shop/1");
    }
}
