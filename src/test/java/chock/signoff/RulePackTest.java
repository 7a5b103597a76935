package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.RuleFiles;
import chock.signoff.Verification.Holds;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule book in one file: read only when somebody believed packed it, kept in the workshop, and judged by again. */
class RulePackTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String TYP = "chock-rule-book+json";
    private static final Path FORMER = Path.of("src/test/resources/signoff/rule-book-v1");

    @TempDir private Path folder;
    private ShopBench bench;
    private final SigningKey author = SigningKey.create();

    @BeforeEach
    void open() throws IOException {
        bench = new ShopBench(folder);
    }

    /** A rule book with another digest that says the same: somebody wrote a comment. */
    private static RulePack.Source former() {
        return with("tyres/limits.yaml", RuleFiles.shipped().texts().get("tyres/limits.yaml") + "# looked at again\n");
    }

    private static RulePack.Source with(String name, String text) {
        SortedMap<String, String> texts = new TreeMap<>(RuleFiles.shipped().texts());
        texts.put(name, text);
        RuleFiles files = new RuleFiles(texts);
        return new RulePack.Source(files, files.load());
    }

    private SignOffs.Signed signedBy(RuleBook book) throws IOException {
        return SignOffs.sign(bench.shop(), bench.ida, book, bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, null, bench.clock());
    }

    private Verification.Thing ruleBook(SignOffs.Signed signed) throws IOException {
        return bench.verify(signed.file(), true, ShopBench.NOON).things().stream().filter(t -> t.thing().equals("rule book")).findFirst().orElseThrow();
    }

    private RulePack opened(byte[] pack) {
        return RulePack.open("x.rules", pack, TrustList.of(bench.shop().trust()), ShopBench.NOON);
    }

    private void refused(byte[] pack, String why) {
        assertThatThrownBy(() -> opened(pack)).isInstanceOf(UnusableInput.class).hasMessageContaining(why);
    }

    private void trust(SigningKey key, Role role) {
        Signers.trust(bench.shop(), bench.keep("petra", key), "Petra Lomax", role, null, ShopBench.LAST, bench.lead, bench.clock());
    }

    @Test
    void a_sign_off_is_judged_again_by_the_rule_book_it_rests_on() throws IOException {
        RulePack.Source former = former();
        assertThat(former.book().digest()).isNotEqualTo(RuleBook.shipped().digest());
        SignOffs.Signed signed = signedBy(former.book());
        assertThat(ruleBook(signed).holds()).isEqualTo(Holds.NOT_LOOKED_AT);
        assertThat(ruleBook(signed).says()).contains("not judged again: that rule book is not kept here, and this version of chock has another.", "By the rule book at hand the same record is released.");
        Path kept = RulePacks.keep(bench.shop(), former, bench.lead, bench.clock());
        assertThat(kept).isRegularFile().hasFileName(former.book().digest().substring(7) + ".rules");
        assertThat(ruleBook(signed)).satisfies(thing -> {
            assertThat(thing.says()).contains("which is kept here (signed by Nora Pell with chock ", "judged again by it, the gate is released with the same findings.");
            assertThat(thing.holds()).isEqualTo(Holds.YES);
        });
        assertThat(bench.verify(signed.file(), true, ShopBench.NOON).complete()).isTrue();
        assertThat(RulePacks.keep(bench.shop(), former, bench.lead, bench.clock())).as("kept once").isEqualTo(kept);
        assertThat(Ledgers.lines(bench.ledger())).extracting(LedgerLine::kind).containsOnlyOnce("rule-book-kept");
        assertThat(Ledgers.verify(bench.shop()).fault()).isNull();
    }

    @Test
    void a_rule_book_that_cannot_be_written_is_not_in_the_ledger() throws IOException {
        Files.writeString(folder.resolve("rule-books"), "a file in the way");
        byte[] before = Files.readAllBytes(bench.ledger());
        assertThatThrownBy(() -> RulePacks.keep(bench.shop(), former(), bench.lead, bench.clock())).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("rule-books: it cannot be written: a file of that name is there. Nothing was changed");
        assertThat(Files.readAllBytes(bench.ledger())).isEqualTo(before);
    }

    @Test
    void rules_of_a_house_are_kept_with_it() throws IOException {
        RulePack.Source housed = former().with(HouseBook.read(Path.of("docs/examples/house")));
        RulePack read = opened(RulePack.pack(housed, bench.lead));
        RuleBook loaded = read.load();
        assertThat(loaded.digest()).isEqualTo(housed.book().digest());
        assertThat(loaded.house().orElseThrow().name()).isEqualTo(housed.book().house().orElseThrow().name());
        assertThat(loaded.cards().keySet()).isEqualTo(housed.book().cards().keySet()).hasSizeGreaterThan(RuleBook.shipped().cards().size());
    }

    @Test
    void rules_that_are_not_inside_the_program_are_compiled() {
        String rules = RuleFiles.shipped().texts().get("show/show.drl");
        RulePack.Source other = with("show/show.drl", rules + "\n// looked at again\n");
        assertThat(other.book().ruleNames()).isEqualTo(RuleBook.shipped().ruleNames());
        RuleBook loaded = opened(RulePack.pack(other, bench.lead)).load();
        assertThat(loaded.digest()).isEqualTo(other.book().digest()).isNotEqualTo(RuleBook.shipped().digest());
        assertThat(loaded.ruleNames()).isEqualTo(RuleBook.shipped().ruleNames());
    }

    @Test
    void nothing_is_read_that_is_not_signed_with_a_trusted_key() {
        // Were any of this read first, the message would say that it is not a rule book.
        byte[] garbage = ShopBench.utf8("{\"no\": \"rule book\"}");
        refused(ShopBench.utf8(Jws.sign(garbage, TYP, author)), "which is not trusted now; contents not read");
        refused(ShopBench.utf8(Jws.sign(garbage, TYP, bench.ida)), "signed by Ida Marrow (inspector); contents not read");
        trust(author, Role.AUTHOR);
        refused(ShopBench.utf8(Jws.sign(garbage, TYP, author)), "not in the form rule-book/1");
        byte[] good = RulePack.pack(former(), author);
        assertThat(opened(good).signedBy()).isEqualTo("Petra Lomax");
        byte[] bent = good.clone();
        int middle = bent.length / 2;
        bent[middle] = (byte) (bent[middle] == 'A' ? 'B' : 'A');
        refused(bent, "invalid signature: altered since Petra Lomax signed it");
        refused(Arrays.copyOf(good, good.length - 1), "not a packed rule book");
        refused(ShopBench.utf8(Jws.sign(garbage, SignOff.TYP, author)), "not a packed rule book");
        refused(new byte[RulePack.LARGEST + 1], "not a packed rule book");
        refused(new byte[0], "not a packed rule book");
        Signers.revoke(bench.shop(), author.id(), "lost on a train", bench.lead, bench.clock());
        refused(good, "which is not trusted now; contents not read");
    }

    @Test
    void a_rule_book_says_what_its_files_say() throws IOException {
        ObjectNode said = (ObjectNode) JSON.readTree(Jws.parse(RulePack.pack(former(), bench.lead)).payload());
        ObjectNode lying = said.deepCopy().put("digest", RuleBook.shipped().digest());
        assertThatThrownBy(() -> opened(packed(lying)).load()).isInstanceOf(UnusableInput.class).hasMessageContaining("it claims rule book").hasMessageContaining(former().book().digest());
        ObjectNode later = said.deepCopy().put("chock", "rule-book/2");
        refused(packed(later), "the only one this version of chock reads. Use the version it was made with, or a newer one");
        ObjectNode more = said.deepCopy().put("besides", "x");
        refused(packed(more), "the only one this version of chock reads");
        ObjectNode broken = said.deepCopy();
        ((ObjectNode) broken.get("files")).put("tyres/limits.yaml", "limits: [");
        assertThatThrownBy(() -> opened(packed(broken)).load()).isInstanceOf(UnusableInput.class).hasMessageContaining("x.rules, rules/tyres/limits.yaml");
        ObjectNode housed = said.deepCopy();
        housed.putObject("house").put("name", "Elsewhere").putObject("files").put("../up.yaml", "x");
        assertThatThrownBy(() -> opened(packed(housed)).load()).isInstanceOf(UnusableInput.class).hasMessageContaining("x.rules, house/../up.yaml: a house folder has no use for this");
    }

    private byte[] packed(ObjectNode said) {
        return ShopBench.utf8(Jws.sign(Canonical.bytes(said), TYP, bench.lead));
    }

    @Test
    void a_kept_file_that_was_changed_is_not_judged_by() throws IOException {
        RulePack.Source former = former();
        SignOffs.Signed signed = signedBy(former.book());
        Path kept = RulePacks.keep(bench.shop(), former, bench.lead, bench.clock());
        // Another genuine one, by the same key, in its place: the ledger knows which file was kept.
        Files.write(kept, RulePack.pack(new RulePack.Source(RuleFiles.shipped(), RuleBook.shipped()), bench.lead));
        assertThat(ruleBook(signed).holds()).isEqualTo(Holds.NOT_LOOKED_AT);
        assertThat(ruleBook(signed).says()).contains("the file of that rule book cannot be used");
        assertThat(RulePacks.isKept(bench.shop(), former.book().digest())).isFalse();
        Files.delete(kept);
        assertThat(ruleBook(signed).says()).contains("that rule book is not kept here");
        RulePacks.keep(bench.shop(), former, bench.lead, bench.clock());
        assertThat(ruleBook(signed).holds()).as("kept again").isEqualTo(Holds.YES);
    }

    @Test
    void what_was_kept_while_a_key_was_good_is_judged_by_when_it_has_run_out() throws IOException {
        RulePack.Source former = former();
        Signers.trust(bench.shop(), bench.keep("petra", author), "Petra Lomax", Role.AUTHOR, null, LocalDate.of(2026, 11, 26), bench.lead, bench.clock());
        byte[] pack = RulePack.pack(former, author);
        Path received = Files.write(folder.resolve("received.rules"), pack);
        RulePacks.keep(bench.shop(), received, bench.lead, bench.clock());
        Instant later = Instant.parse("2026-12-24T12:00:00Z");
        assertThat(RulePacks.open(bench.shop(), "received.rules", pack, later).digest()).isEqualTo(former.book().digest());
        byte[] other = RulePack.pack(new RulePack.Source(RuleFiles.shipped(), RuleBook.shipped()), author);
        assertThatThrownBy(() -> RulePacks.open(bench.shop(), "other.rules", other, later)).isInstanceOf(UnusableInput.class).hasMessageContaining("which is not trusted now");
        Signers.revoke(bench.shop(), author.id(), "lost on a train", bench.lead, bench.clock());
        assertThatThrownBy(() -> RulePacks.open(bench.shop(), "received.rules", pack, later)).isInstanceOf(UnusableInput.class).hasMessageContaining("which is not trusted now");
    }

    @Test
    void a_kept_rule_book_exposes_what_was_never_judged_so() throws IOException {
        // Signed by a trusted key: the findings of one rule book under the digest of another, in which a limit is stricter.
        RulePack.Source strict = with("tyres/limits.yaml", RuleFiles.shipped().texts().get("tyres/limits.yaml").replaceFirst("value: 0.8 mm", "value: 9 mm"));
        assertThat(strict.book().digest()).isNotEqualTo(RuleBook.shipped().digest());
        RulePacks.keep(bench.shop(), strict, bench.lead, bench.clock());
        SignOffs.Signed signed = bench.sign();
        ObjectNode forged = (ObjectNode) JSON.readTree(signed.signOff().bytes());
        ((ObjectNode) forged.get("ruleBook")).put("digest", strict.book().digest());
        byte[] jws = ShopBench.utf8(Jws.sign(Canonical.bytes(forged), SignOff.TYP, bench.ida));
        assertThat(bench.verify(jws, Files.readAllBytes(bench.record), ShopBench.NOON).things()).anySatisfy(thing -> {
            assertThat(thing.thing()).isEqualTo("rule book");
            assertThat(thing.says()).contains("judged again by it, this is not as signed: the verdict");
            assertThat(thing.holds()).isEqualTo(Holds.NO);
        });
    }

    @Test
    void an_author_packs_and_signs_nothing_else() throws IOException {
        trust(author, Role.AUTHOR);
        assertThat(Files.readString(bench.shop().trust())).contains("\"chock\" : \"trust/2\"", "\"role\" : \"author\"");
        assertThat(TrustList.of(bench.shop().trust()).key(author.id()).orElseThrow().role()).isEqualTo(Role.AUTHOR);
        assertThatThrownBy(() -> bench.sign(author, Gate.ROAD_TEST)).isInstanceOf(NotSigned.class).hasMessageContaining("Petra Lomax has the role author, and such a key cannot sign a release");
        assertThatThrownBy(() -> Signers.revoke(bench.shop(), bench.ida.id(), "no reason", author, bench.clock())).isInstanceOf(NotSigned.class).hasMessageContaining("only a lead");
        assertThatThrownBy(() -> RulePacks.keep(bench.shop(), former(), bench.ida, bench.clock())).isInstanceOf(NotSigned.class).hasMessageContaining("Ida Marrow is inspector; a lead or a rule author keeps rule books");
        assertThatThrownBy(() -> RulePacks.keep(bench.shop(), former(), SigningKey.create(), bench.clock())).isInstanceOf(NotSigned.class).hasMessageContaining("is not on the trust list");
        assertThat(RulePacks.keep(bench.shop(), former(), author, bench.clock())).isRegularFile();
        String asBefore = Files.readString(bench.shop().trust()).replace("trust/2", "trust/1");
        assertThatThrownBy(() -> TrustList.read("trust.json", ShopBench.utf8(asBefore))).isInstanceOf(UnusableInput.class).hasMessageContaining("the role author needs a list of the form trust/2. Write chock: trust/2.");
    }

    @Test
    void a_release_signed_with_the_key_of_an_author_does_not_stand_in_a_ledger() throws IOException {
        SignOffs.Signed signed = bench.sign();
        ObjectNode line = Ledgers.lines(bench.ledger()).stream().filter(one -> one.kind().equals("signed")).findFirst().orElseThrow().said().deepCopy();
        trust(author, Role.AUTHOR);
        ((ObjectNode) line.get("signer")).put("name", "Petra Lomax").put("keyId", author.id()).put("role", "author");
        List.of("line", "previous", "at", "kind", "seal").forEach(line::remove);
        try (OpenLedger ledger = OpenLedger.at(bench.ledger())) {
            ledger.append(ledger.now(ShopBench.NOON), "signed", line, author);
        }
        assertThat(Ledgers.verify(bench.shop()).fault()).contains("it was signed with a key that was not trusted then");
        assertThat(signed.line()).isEqualTo(3);
    }

    @Test
    void a_rule_book_packed_in_the_first_form_is_read() throws IOException {
        RulePack read = RulePack.open("former.rules", Files.readAllBytes(FORMER.resolve("former.rules")), TrustList.of(FORMER.resolve("trust.json")), ShopBench.NOON);
        assertThat(read.words()).isEqualTo("rule book 2 (sha256:" + Files.readString(FORMER.resolve("digest.txt"), StandardCharsets.UTF_8).strip() + "), signed by Nora Pell with chock (built here, not packaged)");
        assertThatThrownBy(read::load).as("a few of its files").isInstanceOf(UnusableInput.class).hasMessageContaining("former.rules, rules");
    }
}
