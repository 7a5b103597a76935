package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule book, or one check of it, was found wrong: which sign-offs end with that, which stay, and what is signed no more. */
class WithdrawnTest {
    private static final Instant LATER = ShopBench.NOON.plusSeconds(600);
    private static final String CHECK = "brakes.pad-thickness";
    private static final String HERE = ShopBench.BOOK.digest();
    private static final String ELSEWHERE = "sha256:" + "7".repeat(64);
    private static final String SAYS = "Nora Pell withdrew the check brakes.pad-thickness of rule book " + HERE + " on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table";

    private static final Path FORMER = Path.of("src/test/resources/signoff/v1");

    @TempDir private Path folder;
    private ShopBench bench;

    @BeforeEach
    void open() throws IOException {
        bench = new ShopBench(folder);
    }

    private Withdrawals.Done withdraw(String check, String ruleBook, boolean alsoNotAsked) {
        bench.at(LATER);
        return Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, new Withdrawals.What(check, ruleBook, alsoNotAsked, "the limit was read from the wrong table"), bench.lead, bench.clock());
    }

    private static Verification.Thing ledger(Verification found) {
        return found.things().stream().filter(thing -> thing.thing().equals("ledger")).findFirst().orElseThrow();
    }

    private Verification verify(SignOffs.Signed signed) throws IOException {
        return bench.verify(signed.file(), false, LATER.plusSeconds(60));
    }

    private Verification verifySeal(SignOffs.Signed signed) {
        return bench.verify(signed.signOff().seal().getBytes(StandardCharsets.US_ASCII), null, LATER.plusSeconds(60));
    }

    private void holds(SignOffs.Signed signed) throws IOException {
        assertThat(verify(signed).holds()).as("%s", verify(signed).things()).isTrue();
        assertThat(verifySeal(signed).holds()).isTrue();
        assertThat(ledger(verify(signed)).says()).endsWith("and nothing there voids it.");
    }

    private void ended(SignOffs.Signed signed, String words) throws IOException {
        for (Verification found : List.of(verify(signed), verifySeal(signed))) {
            assertThat(found.holds()).isFalse();
            assertThat(ledger(found).says()).isEqualTo("It is line " + signed.line() + " of the ledger, and was voided there: " + words + ".");
        }
    }

    /** The other released machine of the examples, signed at the same gate. */
    private SignOffs.Signed other() throws IOException {
        Path file = Files.copy(Path.of("docs/examples/merle-released.yaml"), folder.resolve("merle.yaml"));
        return SignOffs.sign(bench.shop(), bench.ida, ShopBench.BOOK, file, Files.readAllBytes(file), Gate.ROAD_TEST, null, bench.clock());
    }

    private static List<String> asked(SignOffs.Signed signed) {
        return signed.signOff().findings().stream().map(SignOff.Found::check).toList();
    }

    @Test
    void a_sign_off_ends_with_a_check_it_rests_on() throws IOException {
        SignOffs.Signed signed = bench.sign();
        holds(signed);
        Withdrawals.Done done = withdraw(CHECK, HERE, false);
        assertThat(done.ended()).isEqualTo(1);
        assertThat(done.unknown()).isZero();
        assertThat(done.made().words(bench.shop().zone())).isEqualTo(SAYS);
        ended(signed, SAYS);
        assertThat(Ledgers.lines(bench.ledger())).extracting(LedgerLine::kind).endsWith("signed", "withdrawn", "voided");
        assertThat(Ledgers.verify(bench.shop()).fault()).isNull();
        assertThat(standing()).containsExactly("The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London is void: " + SAYS + ".");
    }

    private List<String> standing() throws IOException {
        Instant at = LATER.plusSeconds(60);
        return Verifier.standing(bench.shop(), RecordReader.read("record", Files.readAllBytes(bench.record), ShopBench.BOOK.vocabulary(), at), ShopBench.BOOK.vocabulary(), at);
    }

    @Test
    void a_sign_off_ends_with_its_rule_book() throws IOException {
        SignOffs.Signed signed = bench.sign();
        withdraw(null, HERE, false);
        ended(signed, "Nora Pell withdrew the rule book " + HERE + " on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table");
    }

    @Test
    void what_is_withdrawn_of_every_rule_book_up_to_now_ends_what_rests_on_it() throws IOException {
        SignOffs.Signed signed = bench.sign();
        withdraw(CHECK, null, false);
        ended(signed, "Nora Pell withdrew the check brakes.pad-thickness of every rule book until then on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table");
    }

    @Test
    void what_is_withdrawn_of_another_rule_book_leaves_it() throws IOException {
        SignOffs.Signed signed = bench.sign();
        assertThat(withdraw(CHECK, ELSEWHERE, false).ended()).isZero();
        withdraw(null, ELSEWHERE, false);
        holds(signed);
        bench.at(LATER.plusSeconds(30));
        assertThat(bench.sign().line()).as("signed again by the rule book that nobody withdrew").isEqualTo(6);
    }

    @Test
    void a_machine_that_was_never_asked_the_check_keeps_its_sign_off() throws IOException {
        SignOffs.Signed signed = bench.sign();
        SignOffs.Signed other = other();
        String check = asked(other).stream().filter(one -> !asked(signed).contains(one)).findFirst().orElseThrow();
        assertThat(signed.signOff().notAsked()).contains(check);
        assertThat(withdraw(check, null, false).ended()).isEqualTo(1);
        holds(signed);
        assertThat(verify(other).holds()).isFalse();
    }

    @Test
    void where_the_check_should_have_been_asked_the_sign_off_ends_as_well() throws IOException {
        SignOffs.Signed signed = bench.sign();
        SignOffs.Signed other = other();
        String check = asked(other).stream().filter(one -> !asked(signed).contains(one)).findFirst().orElseThrow();
        assertThat(withdraw(check, HERE, true).ended()).isEqualTo(2);
        ended(signed, "Nora Pell withdrew the check " + check + " of rule book " + HERE + ", also where it was not asked, on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table");
    }

    private void refused(String words) throws IOException {
        bench.at(LATER.plusSeconds(30));
        assertThatThrownBy(() -> bench.sign()).isInstanceOf(NotSigned.class).hasMessage(words);
        List<LedgerLine> lines = Ledgers.lines(bench.ledger());
        assertThat(lines.get(lines.size() - 1).kind()).isEqualTo("refused");
        assertThat(lines.get(lines.size() - 1).text("why")).isEqualTo(words);
        assertThat(folder.toFile().list()).noneMatch(name -> name.endsWith(".jws"));
    }

    @Test
    void nothing_is_signed_by_a_rule_book_that_was_withdrawn() throws IOException {
        withdraw(null, HERE, false);
        refused("Nora Pell withdrew the rule book " + HERE + " on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table. "
                + "Sign by a rule book with another digest, in which that is mended: a later chock, or other house rules");
    }

    @Test
    void nothing_is_signed_that_rests_on_a_check_that_was_withdrawn() throws IOException {
        withdraw(CHECK, HERE, false);
        refused(SAYS + ". Sign by a rule book with another digest, in which that is mended: a later chock, or other house rules");
    }

    @Test
    void what_was_withdrawn_of_every_rule_book_holds_back_those_known_then_and_no_later_one() throws IOException {
        withdraw(CHECK, null, false);
        bench.at(LATER.plusSeconds(30));
        assertThatThrownBy(() -> bench.sign()).isInstanceOf(NotSigned.class).hasMessageContaining("withdrew the check brakes.pad-thickness of every rule book until then");
        Withdrawal made = Withdrawals.all(bench.shop()).get(0);
        assertThat(made.ends(new RestsOn(ELSEWHERE, List.of(CHECK), List.of()), 9)).as("signed later, by another rule book").isFalse();
        assertThat(made.ends(new RestsOn(ELSEWHERE, List.of(CHECK), List.of()), 2)).as("signed before, by another rule book").isTrue();
        assertThat(made.ends(new RestsOn(HERE, List.of(CHECK), List.of()), 9)).isTrue();
        assertThat(made.ends(new RestsOn(HERE, List.of("tyres.age"), List.of(CHECK)), 2)).isFalse();
    }

    @Test
    void a_machine_that_is_not_asked_the_check_is_signed() throws IOException {
        SignOffs.Signed signed = bench.sign();
        withdraw(signed.signOff().notAsked().get(0), HERE, false);
        bench.at(LATER.plusSeconds(30));
        assertThat(bench.sign().line()).isEqualTo(5);
    }

    @Test
    void what_is_withdrawn_stays_so_though_the_lines_behind_it_are_taken_away() throws IOException {
        SignOffs.Signed signed = bench.sign();
        withdraw(CHECK, HERE, false);
        List<String> lines = Files.readAllLines(bench.ledger());
        Files.writeString(bench.ledger(), String.join("\n", lines.subList(0, lines.size() - 1)) + "\n");
        assertThat(Ledgers.lines(bench.ledger())).extracting(LedgerLine::kind).endsWith("withdrawn");
        for (Verification found : List.of(verify(signed), verifySeal(signed))) {
            assertThat(found.holds()).isFalse();
            assertThat(ledger(found).says()).isEqualTo("It is line 3 of the ledger, and rests on what was withdrawn there: " + SAYS + ".");
        }
        assertThat(standing()).containsExactly("The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London is void: " + SAYS + ".");
    }

    @Test
    void a_sign_off_that_was_void_already_says_both() throws IOException {
        SignOffs.Signed signed = bench.sign();
        bench.at(LATER);
        Ledgers.voided(bench.shop(), "HV-0142", Map.of(Canonical.digest(Files.readAllBytes(signed.file())), "the brake came off"), bench.clock());
        assertThat(withdraw(CHECK, HERE, false).ended()).as("newly ended").isZero();
        assertThat(ledger(verify(signed)).says()).isEqualTo("It is line 3 of the ledger, and was voided there: the brake came off; " + SAYS + ".");
    }

    /** A line of an earlier program names neither rule book nor checks. The whole sign-off does; the seal does not. */
    @Test
    void of_a_line_that_does_not_say_what_it_rests_on_the_whole_sign_off_tells() throws IOException {
        for (String name : List.of("shop.yaml", "trust.json", "ledger.txt")) {
            Files.copy(FORMER.resolve(name), folder.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
        byte[] whole = Files.readAllBytes(FORMER.resolve("lark.road-test.20261125T120000Z.jws"));
        SignOff signOff = SignOff.written(whole).orElseThrow();
        Withdrawal check = new Withdrawal(7, LATER, "Nora Pell", List.of(CHECK), signOff.ruleBook().digest(), Set.of(), false, "wrong");
        assertThat(check.ends(RestsOn.of(signOff), signOff.ledger().line())).isTrue();
        assertThat(Ledgers.history(folder.resolve("ledger.txt")).signings()).extracting(History.Signing::rests).containsOnlyNulls();
    }

    @Test
    void a_seal_whose_line_does_not_say_what_it_rests_on_no_longer_holds() throws IOException {
        SignOffs.Signed signed = bench.sign();
        bare(signed);
        assertThat(verifySeal(signed).holds()).isTrue();
        Withdrawals.Done done = withdraw(CHECK, HERE, false);
        assertThat(done.ended()).isZero();
        assertThat(done.unknown()).isEqualTo(1);
        assertThat(ledger(verify(signed)).says()).isEqualTo("It is line 3 of the ledger, and rests on what was withdrawn there: " + SAYS + ".");
        assertThat(verify(signed).holds()).isFalse();
        assertThat(verifySeal(signed).holds()).isFalse();
        assertThat(ledger(verifySeal(signed)).says()).isEqualTo("It is line 3 of the ledger, which an earlier chock wrote without what it rests on, and may rest on what was withdrawn there: " + SAYS
                + ". Verify the sign-off file itself.");
        assertThat(standing()).containsExactly("The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London may rest on what was withdrawn; verify its file: " + SAYS + ".");
    }

    /** Writes the line of a sign-off anew as programs before this one did. */
    private void bare(SignOffs.Signed signed) throws IOException {
        List<String> lines = Files.readAllLines(bench.ledger());
        ObjectNode said = Ledgers.lines(bench.ledger()).get(2).said().deepCopy();
        Files.writeString(bench.ledger(), String.join("\n", lines.subList(0, 2)) + "\n");
        said.remove(List.of("line", "previous", "at", "kind", "seal", "ruleBook", "asked", "notAsked"));
        try (OpenLedger ledger = OpenLedger.at(bench.ledger())) {
            assertThat(ledger.append(ShopBench.NOON, "signed", said, bench.ida).number()).isEqualTo(signed.line());
        }
    }

    @Test
    void only_a_lead_withdraws() {
        Withdrawals.What what = new Withdrawals.What(CHECK, HERE, false, "wrong");
        assertThatThrownBy(() -> Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, what, bench.ida, bench.clock())).isInstanceOf(NotSigned.class).hasMessage("Ida Marrow is inspector; only a lead withdraws");
        SigningKey stranger = SigningKey.create();
        assertThatThrownBy(() -> Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, what, stranger, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("this key (" + stranger.id() + ") is not on the trust list; only a lead withdraws");
        Signers.revoke(bench.shop(), bench.lead.id(), "lost", bench.lead, bench.clock());
        assertThatThrownBy(() -> Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, what, bench.lead, bench.clock())).isInstanceOf(NotSigned.class).hasMessageContaining("the key of Nora Pell was revoked");
        assertThat(Withdrawals.all(bench.shop())).isEmpty();
    }

    /** As the keys she trusted stay trusted. */
    @Test
    void what_a_lead_withdrew_stays_so_when_the_key_is_revoked_later() throws IOException {
        SignOffs.Signed signed = bench.sign();
        withdraw(CHECK, HERE, false);
        Signers.revoke(bench.shop(), bench.lead.id(), "lost", bench.lead, bench.clock());
        ended(signed, SAYS);
    }

    @Test
    void the_same_is_withdrawn_once() {
        withdraw(CHECK, null, false);
        assertThatThrownBy(() -> withdraw(CHECK, null, false)).isInstanceOf(NotSigned.class).hasMessageStartingWith("this was withdrawn already: Nora Pell withdrew the check brakes.pad-thickness of every rule book until then");
        assertThat(withdraw(CHECK, null, true).made().line()).as("wider than before").isEqualTo(4);
        assertThat(withdraw(null, HERE, false).made().line()).isEqualTo(5);
    }

    @Test
    void what_cannot_be_meant_is_refused_and_nothing_written() throws IOException {
        byte[] before = Files.readAllBytes(bench.ledger());
        unusable(null, null, "x", "what is withdrawn: neither a check nor a rule book is named. Name a check, a rule book by its digest, or a check of one rule book");
        unusable(null, "2", "x", "rule book: '2' is not the digest of a rule book. Write sha256: and 64 figures of 0-9 and a-f, as 'chock rules', 'chock verify' and each sign-off sheet show it");
        unusable(null, HERE.substring(0, 70), "x", "rule book: '" + HERE.substring(0, 70) + "' is not the digest");
        unusable("brakes.pad-thickmess", null, "x", "check: 'brakes.pad-thickmess' is a check neither of the rule book at hand nor of a sign-off in the ledger. 'chock rules' lists the ids");
        unusable(CHECK, null, "  ", "reason: no reason is written. Say why, in up to 500 letters; whoever verifies such a sign-off reads it");
        unusable(CHECK, null, "y".repeat(501), "reason: it is longer than 500 letters");
        unusable(CHECK, null, "one\ntwo", "reason: it has more than one line");
        Withdrawals.What whole = new Withdrawals.What(null, HERE, true, "x");
        assertThatThrownBy(() -> Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, whole, bench.lead, bench.clock())).isInstanceOf(UnusableInput.class).hasMessageContaining("a rule book is withdrawn as a whole");
        assertThat(Files.readAllBytes(bench.ledger())).isEqualTo(before);
    }

    private void unusable(String check, String ruleBook, String reason, String says) {
        assertThatThrownBy(() -> Withdrawals.withdraw(bench.shop(), ShopBench.BOOK, new Withdrawals.What(check, ruleBook, false, reason), bench.lead, bench.clock()))
                .isInstanceOf(UnusableInput.class).hasMessageContaining(says);
    }

    /** Sign-offs of earlier rule books name a check by the id it had then. */
    @Test
    void a_check_is_withdrawn_under_all_its_names() {
        RuleBook renamed = ShopBench.BOOK.withCards(card -> card.id().equals(CHECK) ? formerly(card, "brakes.lining-left") : card);
        for (String called : List.of(CHECK, "brakes.lining-left")) {
            Withdrawals.withdraw(bench.shop(), renamed, new Withdrawals.What(called, called.equals(CHECK) ? HERE : ELSEWHERE, false, "wrong"), bench.lead, bench.clock());
        }
        assertThat(Withdrawals.all(bench.shop())).extracting(Withdrawal::checks).containsExactly(List.of(CHECK, "brakes.lining-left"), List.of("brakes.lining-left", CHECK));
        assertThat(Withdrawals.all(bench.shop()).get(0).ends(new RestsOn(HERE, List.of("brakes.lining-left"), List.of()), 2)).isTrue();
    }

    private static Card formerly(Card c, String id) {
        return new Card(c.id(), c.question(), c.applies(), c.gates(), c.needs(), c.critical(), c.place(), c.wants(), c.limit(), c.holds(), c.undoneBy(), c.survives(), c.clearedBy(), c.together(), c.remedy(),
                c.caution(), List.of(id), c.dangers(), c.closes(), c.endsBy(), c.file(), c.line());
    }

    private void line(ObjectNode said, SigningKey seal) {
        try (OpenLedger ledger = OpenLedger.at(bench.ledger())) {
            ledger.append(LATER, "withdrawn", said, seal);
        }
    }

    private static ObjectNode says(String by) {
        ObjectNode said = JsonNodeFactory.instance.objectNode().put("by", by).put("name", "Nora Pell").put("ruleBook", HERE).put("reason", "wrong");
        said.putArray("checks").add(CHECK);
        return said;
    }

    private void unsound(ObjectNode said, SigningKey seal, String why) throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        line(said, seal);
        int lines = Ledgers.lines(bench.ledger()).size();
        assertThat(Ledgers.verify(bench.shop()).fault())
                .isEqualTo(bench.ledger() + ":" + lines + ": the ledger is not sound: " + why + ". Nothing is written to it: find out who changed it, and put the kept copy back");
        Files.write(bench.ledger(), good);
    }

    @Test
    void a_forged_line_makes_the_ledger_unsound_as_a_forged_revocation_does() throws IOException {
        SignOffs.Signed signed = bench.sign();
        String noLead = "something was withdrawn by somebody who is no lead";
        String unsigned = "it does not carry the signature of Nora Pell, who should have written it";
        unsound(says(bench.ida.id()).put("name", "Ida Marrow"), bench.ida, noLead);
        SigningKey stranger = SigningKey.create();
        unsound(says(stranger.id()), stranger, noLead);
        unsound(says(bench.lead.id()), bench.ida, unsigned);
        unsound(says(bench.lead.id()), null, unsigned);
        unsound(says(bench.lead.id()).put("name", "Ida Marrow"), bench.lead, "it was withdrawn by Nora Pell, and names Ida Marrow");
        String unknown = "it withdraws something this chock does not understand; when a later chock wrote it, read it with that one";
        unsound(says(bench.lead.id()).put("until", "2027"), bench.lead, unknown);
        unsound(says(bench.lead.id()).put("ruleBook", "2"), bench.lead, unknown);
        ObjectNode nothing = says(bench.lead.id());
        nothing.remove(List.of("ruleBook", "checks"));
        unsound(nothing, bench.lead, unknown);
        assertThat(Withdrawals.all(bench.shop())).isEmpty();
        holds(signed);
        Signers.revoke(bench.shop(), bench.lead.id(), "lost", bench.lead, Clock.fixed(LATER, ZoneOffset.UTC));
        unsound(says(bench.lead.id()), bench.lead, noLead);
    }

    /** An earlier program knows no such line either, and so reads no ledger that has one. */
    @Test
    void a_line_of_a_kind_not_known_is_not_passed_over() throws IOException {
        SignOffs.Signed signed = bench.sign();
        try (OpenLedger ledger = OpenLedger.at(bench.ledger())) {
            ledger.append(LATER, "taken-over", JsonNodeFactory.instance.objectNode().put("by", bench.lead.id()), bench.lead);
        }
        assertThatThrownBy(() -> verify(signed)).isInstanceOf(UnusableInput.class).hasMessageContaining("it is of a kind not known here, 'taken-over'; when a later chock wrote it, read it with that one");
        bench.at(LATER);
        assertThatThrownBy(() -> bench.sign()).isInstanceOf(UnusableInput.class).hasMessageContaining("it is of a kind not known here");
    }

    /** A ledger as the first program wrote it that could withdraw; never to be made anew. */
    @Test
    void what_was_withdrawn_stays_withdrawn_for_every_later_program() throws IOException {
        Path kept = Path.of("src/test/resources/signoff/withdrawn");
        Shop shop = Shop.of(kept.resolve("shop.yaml"));
        String book = "sha256:40d6cf9c90442d8b518f1b9e09e1eec833512158458bdb85a0af8e5707c01fe4";
        assertThat(Ledgers.verify(shop).fault()).isNull();
        assertThat(Withdrawals.all(shop)).containsExactly(
                new Withdrawal(4, LATER, "Nora Pell", List.of(CHECK), book, Set.of(), false, "the limit was read from the wrong table"),
                new Withdrawal(6, LATER.plusSeconds(600), "Nora Pell", List.of("tyres.age"), null, Set.of(book), true, "the date code of before 2000 was read as of after"),
                new Withdrawal(7, LATER.plusSeconds(1200), "Nora Pell", List.of(), ELSEWHERE, Set.of(), false, "the house rules of spring were never looked at"));
        byte[] whole = Files.readAllBytes(kept.resolve("lark.road-test.20261125T120000Z.jws"));
        for (byte[] given : List.of(whole, SignOff.written(whole).orElseThrow().seal().getBytes(StandardCharsets.US_ASCII))) {
            Verification found = new Verifier(TrustList.of(shop.trust()), shop, ShopBench.BOOK, LATER).verify(new Verifier.Source("sign-off", given), null);
            assertThat(found.holds()).isFalse();
            assertThat(ledger(found).says()).isEqualTo("It is line 3 of the ledger, and was voided there: Nora Pell withdrew the check brakes.pad-thickness of rule book " + book
                    + " on 2026-11-25 12:10 Europe/London: the limit was read from the wrong table; Nora Pell withdrew the check tyres.age of every rule book until then, also where it was not asked,"
                    + " on 2026-11-25 12:20 Europe/London: the date code of before 2000 was read as of after.");
        }
    }

    /** What the shipped rule book is known by does not change with what is withdrawn. */
    @Test
    void withdrawing_changes_no_rule_book() {
        withdraw(CHECK, HERE, false);
        assertThat(RuleBook.shipped().digest()).isEqualTo(HERE);
    }
}
