package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.Coordinates;
import chock.rulebook.RuleBook;
import chock.signoff.Verification.Holds;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is said of a sign-off, thing by thing, and what undoes it. */
class VerifierTest {
    @TempDir private Path folder;
    private ShopBench bench;
    private SignOffs.Signed signed;

    @BeforeEach
    void sign() throws IOException {
        bench = new ShopBench(folder);
        signed = bench.sign();
    }

    private static String says(Verification found, String thing) {
        return found.things().stream().filter(t -> t.thing().equals(thing)).map(t -> t.holds() + ": " + t.says()).findFirst().orElse("nothing was said of " + thing);
    }

    private Verification now() throws IOException {
        return bench.verify(signed.file(), true, ShopBench.NOON);
    }

    private JobRecord record() throws IOException {
        return RecordReader.read("r", Files.readAllBytes(bench.record), ShopBench.BOOK.vocabulary(), ShopBench.NOON.plusSeconds(600));
    }

    @Test
    void everything_is_looked_at_and_holds() throws IOException {
        Verification found = now();
        assertThat(found.things()).extracting(Verification.Thing::thing).containsExactly("signature", "key", "time", "record", "since", "rule book", "ledger");
        assertThat(found.things()).extracting(Verification.Thing::holds).containsOnly(Holds.YES);
        assertThat(found.complete()).isTrue();
        assertThat(found.signOff()).isEqualTo(signed.signOff());
        assertThat(says(found, "signature")).isEqualTo("YES: It is, letter for letter, as Ida Marrow (inspector) signed it on 2026-11-25 12:00 Europe/London.");
        assertThat(says(found, "record")).isEqualTo("YES: The record is the one signed, byte for byte.");
        assertThat(says(found, "since")).isEqualTo("YES: Nothing was written since.");
        assertThat(says(found, "rule book")).endsWith(", the one at hand; judged again by it, the gate is released with the same findings.");
        assertThat(SignOff.written(Files.readAllBytes(signed.file()))).contains(signed.signOff());
        assertThat(SignOff.written(ShopBench.utf8(signed.signOff().seal()))).as("a seal is no sign-off").isEmpty();
        assertThat(SignOff.written(ShopBench.utf8("hello"))).isEmpty();
    }

    @Test
    void what_nobody_trusted_signed_is_told_and_nothing_in_it_believed() throws IOException {
        byte[] file = Files.readAllBytes(signed.file());
        Verification none = bench.verify(ShopBench.utf8("hello"), null, ShopBench.NOON);
        assertThat(none.title()).isEqualTo("not a readable sign-off");
        assertThat(none.signOff()).isNull();
        assertThat(says(none, "signature")).isEqualTo("NO: This is no sign-off as chock writes it, or it was altered.");
        SigningKey stranger = SigningKey.create();
        assertThat(says(bench.verify(ShopBench.utf8(Jws.sign(signed.signOff().bytes(), SignOff.TYP, stranger)), null, ShopBench.NOON), "signature"))
                .isEqualTo("NO: It is signed with the key " + stranger.id() + ", which is not on the trust list; nothing in it is to be believed.");
        byte[] altered = file.clone();
        int inSignature = new String(file, java.nio.charset.StandardCharsets.US_ASCII).lastIndexOf('.') + 10;
        altered[inSignature] = (byte) (altered[inSignature] == 'A' ? 'B' : 'A');
        assertThat(says(bench.verify(altered, null, ShopBench.NOON), "signature"))
                .isEqualTo("NO: The signature does not fit: something in it was altered after Ida Marrow signed, or Ida Marrow did not sign it.");
        assertThat(says(bench.verify(ShopBench.utf8(Jws.sign(ShopBench.utf8("{}"), History.SEAL, bench.ida)), null, ShopBench.NOON), "signature"))
                .isEqualTo("NO: It is signed by Ida Marrow, but it is no sign-off that this chock can read.");
        assertThat(none.holds()).isFalse();
    }

    @Test
    void a_key_that_was_not_good_then_and_a_trust_list_that_says_otherwise_than_the_ledger_are_told() throws IOException {
        TrustedKey later = new TrustedKey(bench.ida.id(), bench.ida.x(), "Ida Marrow", Role.INSPECTOR, ShopBench.NOON.plusSeconds(1), ShopBench.NOON.plusSeconds(86_400), null, null);
        Verifier.Source file = new Verifier.Source("sign-off", Files.readAllBytes(signed.file()));
        Verification alone = new Verifier(new TrustList(List.of(later)), null, ShopBench.BOOK, ShopBench.NOON).verify(file, null);
        assertThat(says(alone, "key")).isEqualTo("NO: The key of Ida Marrow was good from 2026-11-25 12:00 Europe/London until 2026-11-26 12:00 Europe/London, and not when this was signed.");
        Verification found = new Verifier(new TrustList(List.of(later)), bench.shop(), ShopBench.BOOK, ShopBench.NOON).verify(file, null);
        assertThat(says(found, "key")).isEqualTo("YES: The key of Ida Marrow was on the trust list and good when the ledger took it in.");
        assertThat(says(found, "ledger")).isEqualTo("NO: The trust list does not say of this key what the ledger says: somebody changed it by hand.");
        assertThat(found.holds()).isFalse();
    }

    @Test
    void a_seal_is_found_by_who_signed_what_and_when() throws IOException {
        bench.at(ShopBench.NOON.plusSeconds(300));
        SignOffs.Signed byLead = bench.sign(bench.lead, Gate.ROAD_TEST);
        assertThat(says(bench.verify(ShopBench.utf8(signed.signOff().seal()), null, ShopBench.NOON), "ledger")).isEqualTo("YES: It is line 3 of the ledger, and nothing there voids it.");
        Verification lead = bench.verify(ShopBench.utf8(byLead.signOff().seal()), null, ShopBench.NOON.plusSeconds(300));
        assertThat(says(lead, "ledger")).isEqualTo("YES: It is line 4 of the ledger, and nothing there voids it.");
        assertThat(says(lead, "signature")).isEqualTo("YES: The seal is as Nora Pell (lead) signed it on 2026-11-25 12:05 Europe/London.");
    }

    @Test
    void without_a_shop_and_without_the_record_that_is_said() throws IOException {
        Verification found = new Verifier(TrustList.of(bench.shop().trust()), null, ShopBench.BOOK, ShopBench.NOON).verify(new Verifier.Source("sign-off", Files.readAllBytes(signed.file())), null);
        assertThat(found.things()).extracting(Verification.Thing::thing).containsExactly("signature", "key", "time", "record", "rule book");
        assertThat(says(found, "record")).startsWith("NOT_LOOKED_AT: The record was not given");
        assertThat(says(found, "rule book")).startsWith("NOT_LOOKED_AT: It was judged by rule book ").endsWith("; without the record nothing was judged again.");
        assertThat(found.holds()).isTrue();
        assertThat(found.complete()).isFalse();
    }

    @Test
    void a_record_laid_out_otherwise_is_the_same_record() throws IOException {
        bench.write("# looked at again\n" + bench.text());
        assertThat(says(now(), "record")).isEqualTo("YES: The record says what the one signed said; its file has been laid out otherwise since (comments, blanks, quotes).");
        assertThat(now().holds()).isTrue();
        assertThat(now().complete()).isTrue();
    }

    @Test
    void a_record_in_another_order_says_the_same_and_is_not_judged_again() throws IOException {
        String text = bench.text();
        List<String> people = text.lines().filter(line -> line.matches("  - \\{id: \\w+, name: .*")).toList();
        assertThat(people).hasSizeGreaterThan(1);
        bench.write(text.replace(people.get(0), "FIRST").replace(people.get(1), people.get(0)).replace("FIRST", people.get(1)));
        assertThat(says(now(), "record")).isEqualTo("YES: The record says what the one signed said, in another order.");
        assertThat(says(now(), "rule book")).startsWith("NOT_LOOKED_AT: ").endsWith(", the one at hand; only the very record signed can be judged again by it.");
    }

    @Test
    void a_record_that_cannot_be_read_or_lives_by_another_law_is_not_the_one_signed() throws IOException {
        assertThat(says(bench.verify(Files.readAllBytes(signed.file()), ShopBench.utf8("chock: ["), ShopBench.NOON), "record")).startsWith("NO: The record given cannot be read, so it is not the one signed: ");
        String text = bench.text();
        bench.write(text.replaceFirst("  - \\{id: e1, at.*\n", ""));
        assertThat(says(now(), "record")).isEqualTo("NO: The record is not the one signed: entry e1 was taken out.");
        bench.write(text.replace("territory: GB", "territory: DE"));
        assertThat(says(now(), "record")).isEqualTo("NO: The record is not the one signed: 'territory' says something else.");
        assertThat(says(now(), "rule book")).startsWith("NOT_LOOKED_AT: ").endsWith("; another record cannot be judged in its place.");
        assertThat(now().holds()).isFalse();
    }

    @Test
    void another_rule_book_judges_nothing_again() throws IOException {
        Verification found = new Verifier(TrustList.of(bench.shop().trust()), bench.shop(), ShopBench.BOOK.without("brakes.bled"), ShopBench.NOON)
                .verify(new Verifier.Source("sign-off", Files.readAllBytes(signed.file())), new Verifier.Source("record", Files.readAllBytes(bench.record)));
        assertThat(says(found, "rule book")).startsWith("NOT_LOOKED_AT: ").endsWith("; not judged again: that rule book is not kept here, and this version of chock has another. By the rule book at hand the same record is released.");
    }

    @Test
    void a_verification_holds_when_nothing_looked_at_does_not_and_the_signature_was_looked_at() {
        Verification.Thing yes = new Verification.Thing("signature", Holds.YES, "");
        Verification.Thing not = new Verification.Thing("record", Holds.NOT_LOOKED_AT, "");
        Verification.Thing no = new Verification.Thing("time", Holds.NO, "");
        assertThat(new Verification("", List.of(), null, null).holds()).as("nothing looked at").isFalse();
        assertThat(new Verification("", List.of(yes, not), null, null).holds()).isTrue();
        assertThat(new Verification("", List.of(yes, no), null, null).holds()).isFalse();
        assertThat(new Verification("", List.of(not, yes), null, null).holds()).isFalse();
    }

    @Test
    void what_undoes_a_sign_off_is_named() throws IOException {
        SignOff s = signed.signOff();
        assertThat(Verifier.undone(s, RecordVersion.of("r", Files.readAllBytes(bench.record)), record(), ShopBench.BOOK.vocabulary())).isEmpty();
        bench.add("id: e905, at: 2026-11-25 12:05, by: tom, point: electrics/plate-lamp, done: cleaned");
        assertThat(Verifier.undone(s, RecordVersion.of("r", Files.readAllBytes(bench.record)), record(), ShopBench.BOOK.vocabulary())).isEmpty();
        bench.add("id: e906, at: 2026-11-25 12:06, by: tom, point: front-brake/caliper, done: removed");
        assertThat(Verifier.undone(s, RecordVersion.of("r", Files.readAllBytes(bench.record)), record(), ShopBench.BOOK.vocabulary())).contains("entry e906 of 2026-11-25 12:06 is about front-brake/caliper");
        bench.write(bench.text().replace("territory: GB", "territory: DE").replace("name: Tom Fell", "name: Tim Fell"));
        assertThat(Verifier.undone(s, RecordVersion.of("r", Files.readAllBytes(bench.record)), record(), ShopBench.BOOK.vocabulary())).contains("person tom says something else; 'territory' says something else");
    }

    @Test
    void what_differs_is_told_in_order_of_name() throws IOException {
        Map<String, String> earlier = new LinkedHashMap<>();
        for (String item : List.of("person tom", "entry z9", "entry e2", "entry z1", "entry e1")) {
            earlier.put(item, "another digest");
        }
        RecordVersion.Difference difference = RecordVersion.of("r", Files.readAllBytes(bench.record)).since(earlier);
        assertThat(difference.removed()).containsExactly("entry z1", "entry z9");
        assertThat(difference.changed()).containsExactly("entry e1", "entry e2", "person tom");
    }

    @Test
    void a_sign_off_is_voided_once_and_only_one_the_ledger_knows() {
        String digest = sound().signings().get(0).digest();
        Ledgers.voided(bench.shop(), "HV-0142", Map.of("sha256:unknown", "x"), bench.clock());
        assertThat(Ledgers.lines(bench.ledger())).hasSize(3);
        Ledgers.voided(bench.shop(), "HV-0142", Map.of(digest, "the tank was changed"), bench.clock());
        assertThat(sound().voided(digest)).contains("the tank was changed");
        Ledgers.voided(bench.shop(), "HV-0142", Map.of(digest, "again"), bench.clock());
        assertThat(Ledgers.lines(bench.ledger())).hasSize(4);
    }

    private History sound() {
        return Ledgers.history(bench.ledger());
    }

    /** Whoever verifies years later has no settings of that workshop: the sign-off says where it was. */
    @Test
    void a_sign_off_is_judged_again_in_the_place_it_was_made_for() throws IOException {
        RuleBook there = ShopBench.BOOK.at(new Coordinates(Quantity.parse("62 °"), Quantity.parse("-26 °")));
        bench.at(ShopBench.NOON.plusSeconds(60));
        SignOffs.Signed placed = SignOffs.sign(bench.shop(), bench.ida, there, bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, null, bench.clock());
        assertThat(placed.signOff().place()).isEqualTo(new SignOff.OfPlace("62°", "-26°"));
        assertThat(placed.signOff().findings()).filteredOn(f -> f.check().equals("roadtest.daylight")).singleElement().satisfies(f -> assertThat(f.notes()).isEmpty());
        Verification found = bench.verify(Files.readAllBytes(placed.file()), Files.readAllBytes(bench.record), ShopBench.NOON.plusSeconds(60));
        assertThat(found.things()).filteredOn(t -> t.thing().equals("rule book")).singleElement().satisfies(t -> assertThat(t.says()).endsWith("judged again by it, the gate is released with the same findings."));
    }

    @Test
    void how_a_record_stands_is_told_for_a_moment_by_its_last_sign_off() throws IOException {
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), ShopBench.NOON.minusSeconds(1))).as("before").isEmpty();
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), ShopBench.NOON))
                .containsExactly("The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London stands until 2026-11-25 13:50 Europe/London.");
        JobRecord another = RecordReader.read("r", ShopBench.utf8(bench.text().replace("record: HV-0142", "record: HV-0942")), ShopBench.BOOK.vocabulary(), ShopBench.NOON);
        assertThat(Verifier.standing(bench.shop(), another, ShopBench.BOOK.vocabulary(), ShopBench.NOON)).as("of another record").isEmpty();
        bench.at(ShopBench.NOON.plusSeconds(300));
        bench.sign(bench.lead, Gate.ROAD_TEST);
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), ShopBench.NOON.plusSeconds(300)))
                .containsExactly("The sign-off at road-test by Nora Pell of 2026-11-25 12:05 Europe/London stands until 2026-11-25 13:50 Europe/London.");
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), Instant.parse("2026-11-25T13:50:59Z"))).singleElement().asString().contains(" stands until ");
    }

    @Test
    void nothing_is_noted_where_nothing_is_void_and_what_cannot_be_noted_is_said() throws IOException {
        assertThat(note()).isNull();
        assertThat(Ledgers.lines(bench.ledger())).hasSize(3);
        bench.add("id: e907, at: 2026-11-25 11:59, by: tom, point: front-brake/caliper, done: removed");
        bench.at(ShopBench.NOON.minusSeconds(1));
        assertThat(note()).startsWith("The ledger does not carry this yet: the clock of this machine says ");
        bench.at(ShopBench.NOON.plusSeconds(600));
        assertThat(note()).isNull();
        assertThat(note()).isNull();
        assertThat(Ledgers.lines(bench.ledger())).extracting(LedgerLine::kind).containsExactly("key-trusted", "key-trusted", "signed", "voided");
    }

    private String note() throws IOException {
        return Verifier.note(bench.shop(), ShopBench.BOOK, new Verifier.Source("record", Files.readAllBytes(bench.record)), bench.clock());
    }

    @Test
    void who_has_not_the_passphrase_is_told_so_and_the_ledger_names_nobody() throws IOException {
        UnusableInput why = UnusableInput.of("ida.pem", "the passphrase does not open this key", "Nothing was signed");
        assertThat(closed(why, bench.text())).isSameAs(why);
        LedgerLine last = Ledgers.lines(bench.ledger()).get(3);
        assertThat(List.of(last.kind(), last.text("record"), last.text("gate"), last.text("keyId"), last.text("why")))
                .containsExactly("refused", "HV-0142", "road-test", "", "the key file ida.pem was not opened, so that nobody is proven to have asked");
        assertThat(closed(why, "chock: [").getMessage()).contains("the passphrase does not open this key").contains("lark.yaml");
        bench.at(ShopBench.NOON.minusSeconds(1));
        assertThat(closed(why, bench.text()).getMessage()).contains("the passphrase does not open this key").contains("this refusal is not in it: the clock of this machine says ");
        assertThat(Ledgers.lines(bench.ledger())).hasSize(4);
    }

    private UnusableInput closed(UnusableInput why, String record) {
        return SignOffs.keyStayedClosed(bench.shop(), ShopBench.BOOK, bench.record, ShopBench.utf8(record), Gate.ROAD_TEST, folder.resolve("ida.pem"), why, bench.clock());
    }

    @Test
    void a_key_needs_a_name_and_days_to_come() {
        Path open = bench.keep("tom");
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, " ", Role.INSPECTOR, null, ShopBench.LAST, bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("a key needs the full name of its owner");
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, "Tom Fell", Role.INSPECTOR, ShopBench.LAST.plusDays(1), ShopBench.LAST, bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessageContaining("is not good for anything now; give a later day");
        TrustedKey tom = Signers.trust(bench.shop(), open, "  Tom   Fell ", Role.INSPECTOR, ShopBench.LAST, ShopBench.LAST, bench.lead, bench.clock());
        assertThat(List.of(tom.name(), tom.from(), tom.until())).containsExactly("Tom Fell", Instant.parse("2028-12-31T00:00:00Z"), Instant.parse("2028-12-31T23:59:59Z"));
        assertThat(TrustList.of(bench.shop().trust()).key(tom.id())).contains(tom);
        assertThatThrownBy(() -> Signers.revoke(bench.shop(), "nobody", "lost", bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("there is no key nobody on the trust list; 'chock keys list' shows them");
        TrustedKey revoked = Signers.revoke(bench.shop(), tom.id(), "lost", bench.lead, bench.clock());
        assertThat(List.of(revoked.revoked(), revoked.reason())).containsExactly(ShopBench.NOON, "lost");
        assertThat(sound().voided(sound().signings().get(0).digest())).as("what others signed stands").isEmpty();
        assertThatThrownBy(() -> Signers.revoke(bench.shop(), tom.id(), "lost", bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("the key of Tom Fell was revoked already, on 2026-11-25T12:00:00Z: lost");
    }
}
