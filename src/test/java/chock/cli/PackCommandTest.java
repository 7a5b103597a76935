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
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rule books that are packed, kept and judged by, as an author and a lead type it. */
class PackCommandTest {
    private static final String LARK = "docs/examples/lark-released.yaml";

    @TempDir private Path folder;
    private ShopBench shop;

    @BeforeEach
    void open() throws IOException {
        shop = new ShopBench(folder);
        Files.createDirectories(folder.resolve("other"));
        try (Stream<Path> files = Files.walk(Path.of("rules"))) {
            for (Path file : files.toList()) {
                Path to = folder.resolve("other").resolve(Path.of("rules").relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(file, to);
                }
            }
        }
        change("tyres/limits.yaml", "value: 0.8 mm", "value: 9 mm");
    }

    private void change(String name, String was, String now) throws IOException {
        Path file = folder.resolve("other").resolve(name);
        String text = Files.readString(file);
        assertThat(text).contains(was);
        Files.writeString(file, text.replaceFirst(Pattern.quote(was), now));
    }

    private Run run(boolean inShop, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(out, false, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                Clock.fixed(ShopBench.NOON, ZoneOffset.UTC), false, null, inShop ? Map.of("CHOCK_SHOP", shop.file().toString(), "WORDS", ShopBench.PASSPHRASE) : Map.of("WORDS", ShopBench.PASSPHRASE), null);
        int status = Chock.run(bench, args);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private String path(String name) {
        return folder.resolve(name).toString();
    }

    private Run pack(String key) {
        return run(false, "rules", "pack", path("mine.rules"), "--rules", path("other"), "--key", path(key), "--passphrase-env", "WORDS");
    }

    @Test
    void a_record_is_judged_by_the_rule_book_that_is_named() {
        assertThat(pack("nora.pem").out()).startsWith("Packed: rule book 2");
        Run judged = run(true, "assess", LARK, "--as-of", "2026-11-25T12:00", "--gate", "road-test", "--rule-book", path("mine.rules"));
        assertThat(judged.err()).startsWith("Judging by rule book 2 (sha256:").contains("signed by Nora Pell with chock ");
        assertThat(judged.out()).startsWith("BLOCKED at road-test").contains("tyres.tread-depth", "at least 9 mm");
        assertThat(judged.status()).isEqualTo(1);
        Run own = run(true, "assess", LARK, "--as-of", "2026-11-25T12:00", "--gate", "road-test");
        assertThat(own.status()).as("by the one inside").isZero();
        assertThat(own.err()).isEmpty();
        Run byList = run(false, "assess", LARK, "--as-of", "2026-11-25T12:00", "--gate", "road-test", "--rule-book", path("mine.rules"), "--trust", path("trust.json"), "--format", "json");
        assertThat(byList.status()).isEqualTo(1);
        assertThat(byList.out()).doesNotContain(RuleBook.shipped().digest());
        assertThat(run(true, "order", LARK, "--as-of", "2026-11-25T12:00", "--gate", "road-test", "--rule-book", path("mine.rules")).out()).contains("tyre");
        assertThat(run(true, "rules", "tyres.tread-depth", "--rule-book", path("mine.rules")).out()).contains("at least 9 mm");
        Run impact = run(true, "impact", LARK, "--as-of", "2026-11-25T12:00", "--gate", "road-test", "--rule-book", path("mine.rules"));
        assertThat(impact.out()).startsWith("WHAT IF rule book 2 (" + path("mine.rules") + ")").contains("HV-0142 at road-test: released, then blocked");
        assertThat(impact.status()).isEqualTo(1);
    }

    @Test
    void a_rule_book_that_is_not_signed_with_a_trusted_key_is_not_judged_by() {
        pack("ida.pem");
        Run byInspector = run(true, "assess", LARK, "--rule-book", path("mine.rules"));
        assertThat(byInspector.err()).isEqualTo(path("mine.rules") + ": signed by Ida Marrow (inspector); contents not read. Only a rule author or a lead may sign a rule book, because its rules are code\n");
        assertThat(byInspector.status()).isEqualTo(2);
        assertThat(byInspector.out()).isEmpty();
        Run nobody = run(false, "assess", LARK, "--rule-book", path("mine.rules"));
        assertThat(nobody.err()).isEqualTo("--rule-book: no trust list to check its signature with. Give --trust FILE, or the workshop with --shop or CHOCK_SHOP\n");
        assertThat(nobody.status()).isEqualTo(2);
        Run idle = run(false, "assess", LARK, "--trust", path("trust.json"));
        assertThat(idle.err()).contains("Add --rule-book FILE, or leave it out");
        assertThat(idle.status()).isEqualTo(2);
        Run none = run(true, "assess", LARK, "--rule-book", LARK);
        assertThat(none.err()).isEqualTo(LARK + ": not a packed rule book, or altered since it was signed. Name a file that 'chock rules pack' made\n");
        assertThat(none.status()).isEqualTo(2);
        assertThat(pack("nora.pem").err()).as("nothing signed is written over").contains("nothing is written over it");
    }

    @Test
    void the_rules_of_a_house_are_packed_with_it_and_not_named_again() {
        String house = "docs/examples/house";
        Run packed = run(false, "rules", "pack", path("with-house.rules"), "--house", house, "--key", path("nora.pem"), "--passphrase-env", "WORDS");
        assertThat(packed.err()).isEmpty();
        assertThat(packed.out()).contains("with the house rules '");
        Run judged = run(true, "assess", LARK, "--as-of", "2026-11-25T12:00", "--rule-book", path("with-house.rules"), "--format", "json");
        assertThat(judged.out()).contains("house.").isEqualTo(run(false, "assess", LARK, "--as-of", "2026-11-25T12:00", "--house", house, "--format", "json").out());
        Run twice = run(true, "assess", LARK, "--rule-book", path("with-house.rules"), "--house", house);
        assertThat(twice.err()).contains("--house: the rule book already contains the house rules");
        assertThat(twice.status()).isEqualTo(2);
        Run nowhere = run(false, "rules", "pack", path("m"), "--house", path("nowhere"), "--key", path("nora.pem"), "--passphrase-env", "WORDS");
        assertThat(nowhere.err()).startsWith(path("nowhere") + ": there is no such folder");
    }

    @Test
    void what_is_signed_by_is_kept() throws IOException {
        Run signed = run(true, "sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "WORDS", "--out", path("s.jws"));
        assertThat(signed.out()).contains("Rule book not kept: a later version of chock cannot judge");
        Run refused = run(true, "rules", "keep", "--by", path("ida.pem"), "--passphrase-env", "WORDS");
        assertThat(refused.err()).contains("Ida Marrow is inspector; a lead or a rule author keeps rule books");
        assertThat(refused.status()).isEqualTo(1);
        Run kept = run(true, "rules", "keep", "--by", path("nora.pem"), "--passphrase-env", "WORDS");
        assertThat(kept.status()).isZero();
        assertThat(folder.resolve("rule-books")).isDirectoryContaining(file -> file.getFileName().toString().equals(RuleBook.shipped().digest().substring(7) + ".rules"));
        Run again = run(true, "sign", shop.record.toString(), "--gate", "road-test", "--key", path("ida.pem"), "--passphrase-env", "WORDS", "--out", path("t.jws"));
        assertThat(again.out()).startsWith("SIGNED").doesNotContain("not kept");
        assertThat(run(true, "ledger", "list").out()).contains("rule book kept");
        assertThat(run(true, "ledger", "verify").status()).isZero();
        pack("nora.pem");
        assertThat(run(true, "rules", "keep", path("mine.rules"), "--by", path("nora.pem"), "--passphrase-env", "WORDS").status()).isZero();
        assertThat(folder.resolve("rule-books").toFile().list()).hasSize(2);
    }

    @Test
    void rules_that_cannot_be_used_name_file_and_line() throws IOException {
        change("show/show.drl", "Required(", "Requird(");
        Run packed = pack("nora.pem");
        assertThat(packed.err()).contains(path("other") + "/show/show.drl:", "Requird cannot be resolved to a type");
        assertThat(packed.status()).isEqualTo(2);
        assertThat(folder.resolve("mine.rules")).doesNotExist();
        assertThat(run(false, "rehearse", "--rules", path("other"), "features/show").err()).contains("Requird cannot be resolved to a type");
        Run nowhere = run(false, "rehearse", "--rules", path("nowhere"));
        assertThat(nowhere.err()).isEqualTo(path("nowhere") + ": there is no such folder. Name a folder laid out like rules/ of the project\n");
        assertThat(nowhere.status()).isEqualTo(2);
        assertThat(run(false, "rehearse", "--rules", path("other"), "--house", "docs/examples/house").err()).contains("--rules names a whole rule book");
        change("tyres/limits.yaml", "value: 9 mm", "valu: 9 mm");
        assertThat(run(false, "rules", "pack", path("m"), "--rules", path("other"), "--key", path("nora.pem"), "--passphrase-env", "WORDS").err()).contains(path("other"));
    }

    @Test
    void scenarios_are_rehearsed_against_the_rules_in_a_folder() throws IOException {
        Run held = run(false, "rehearse", "--rules", path("other"), "features/show");
        assertThat(held.status()).isZero();
        Run wrong = run(false, "rehearse", "--rules", path("other"), "features/tyres");
        assertThat(wrong.status()).as("a limit that was changed").isNotZero();
        assertThat(wrong.out() + wrong.err()).contains("DOES NOT HOLD", "9 mm");
    }
}
