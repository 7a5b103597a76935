package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.nimbusds.jose.JWSObject;
import com.nimbusds.jose.crypto.Ed25519Verifier;
import com.nimbusds.jose.jwk.JWKSet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may sign what, and what is refused. */
class SignOffTest {
    @TempDir private Path folder;
    private ShopBench bench;

    @BeforeEach
    void open() throws IOException {
        bench = new ShopBench(folder);
    }

    @Test
    void a_release_is_signed_with_the_name_of_the_key_and_the_whole_story() throws IOException {
        SignOffs.Signed signed = bench.sign();
        assertThat(signed.file()).isEqualTo(folder.resolve("lark.road-test.20261125T120000Z.jws"));
        Jws jws = Jws.parse(Files.readAllBytes(signed.file()));
        SignOff s = SignOff.read(jws.payload());
        assertThat(s).isEqualTo(signed.signOff());
        assertThat(jws.payload()).isEqualTo(s.bytes());
        assertThat(s.signer()).isEqualTo(new SignOff.Signer("Ida Marrow", "inspector", bench.ida.id()));
        assertThat(s.machine().words()).isEqualTo("Tarnbeck Lark 250, frame TB25-10382, engine TB25E-10395");
        assertThat(List.of(s.gate(), s.verdict(), s.asOf(), s.signedAt(), s.holdsUntil(), s.house(), s.territory())).containsExactly("road-test", "released", "2026-11-25T12:00:00Z", "2026-11-25T12:00:00Z", "2026-11-25T13:50:59Z", "none", "GB");
        assertThat(s.findings()).hasSizeGreaterThan(100).allSatisfy(found -> assertThat(found.state()).isEqualTo("met"));
        assertThat(s.findings().stream().filter(f -> f.check().equals("brakes.pad-thickness")).findFirst().orElseThrow().measured().value()).matches("\\d+\\.\\d+");
        assertThat(s.cautions()).anySatisfy(c -> assertThat(c).contains("asbestos"));
        assertThat(s.criticalPoints()).contains("front-brake/caliper/inner-pad", "instrument/cal-1");
        assertThat(s.workBy()).contains("Tom Fell");
        assertThat(s.deferral()).contains("the licensed inspector or technician decide");
        assertThat(s.record().digest()).isEqualTo(RecordVersion.of("r", Files.readAllBytes(bench.record)).digest());
        assertThat(s.ruleBook().digest()).isEqualTo(ShopBench.BOOK.digest());
        assertThat(s.ledger().line()).isEqualTo(3).isEqualTo(signed.line());
        noDecimals(new JsonMapper().readTree(jws.payload()));
    }

    private static void noDecimals(JsonNode node) {
        assertThat(node.isFloatingPointNumber()).as("%s", node).isFalse();
        node.forEach(SignOffTest::noDecimals);
    }

    @Test
    void a_second_library_verifies_it_and_its_seal() throws Exception {
        SignOffs.Signed signed = bench.sign();
        JWKSet trust = JWKSet.parse(Files.readString(bench.shop().trust()));
        for (String compact : List.of(Files.readString(signed.file()), signed.signOff().seal())) {
            JWSObject jws = JWSObject.parse(compact);
            assertThat(jws.verify(new Ed25519Verifier(trust.getKeyByKeyId(jws.getHeader().getKeyID()).toOctetKeyPair()))).isTrue();
        }
        // A code on paper holds about 1,200 letters at middling strength and stays readable off a hang tag.
        assertThat(signed.signOff().seal().length()).isLessThan(1200);
    }

    @Test
    void a_blocked_gate_is_not_signed_and_the_refusal_is_in_the_ledger() throws IOException {
        Files.copy(Path.of("docs/examples/lark-faults.yaml"), bench.record, StandardCopyOption.REPLACE_EXISTING);
        refused("is blocked at road-test: ");
        assertThat(last().kind()).isEqualTo("refused");
        assertThat(last().text("why")).contains("is blocked at road-test: ").contains(" fault");
        bench.write(Files.readString(Path.of("docs/examples/lark-released.yaml")));
        assertThatThrownBy(() -> bench.sign(bench.ida, Gate.HAND_OVER)).isInstanceOf(NotSigned.class).hasMessageContaining("HV-0142 is blocked at hand-over: 16 missing. First of all, ");
    }

    @Test
    void a_stale_record_is_not_signed() throws IOException {
        bench.at(Instant.parse("2026-11-26T12:00:00Z"));
        refused("HV-0142 is blocked at road-test: ", " stale");
        bench.write(Files.readString(Path.of("docs/examples/lark-worked-on-after.yaml")));
        refused(" stale");
    }

    private void refused(String... words) throws IOException {
        List<Path> before = files();
        assertThatThrownBy(() -> bench.sign()).isInstanceOf(NotSigned.class).satisfies(e -> assertThat(e.getMessage()).contains(words));
        assertThat(files()).as("no sign-off, and nothing half made").isEqualTo(before);
    }

    private List<Path> files() throws IOException {
        try (var all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    private LedgerLine last() {
        List<LedgerLine> lines = Ledgers.lines(bench.ledger());
        return lines.get(lines.size() - 1);
    }

    @Test
    void a_revoked_key_signs_nothing_and_what_it_signed_is_void() throws IOException {
        SignOffs.Signed signed = bench.sign();
        Signers.revoke(bench.shop(), bench.ida.id(), "left on the bus", bench.lead, bench.clock());
        refused("the key of Ida Marrow was revoked on 2026-11-25T12:00:00Z: left on the bus. Make a new one with 'chock keys new'");
        assertThat(bench.verify(signed.file(), true, ShopBench.NOON).things()).extracting(Verification.Thing::says)
                .contains("The key of Ida Marrow was revoked on 2026-11-25 12:00 Europe/London: left on the bus. What it signed is void.",
                        "It is line 3 of the ledger, and was voided there: the key of Ida Marrow was revoked: left on the bus.");
        assertThat(bench.verify(signed.file(), true, ShopBench.NOON).holds()).isFalse();
        assertThatThrownBy(() -> Signers.trust(bench.shop(), folder.resolve("ida.pem.jwk"), "Ida Marrow", Role.INSPECTOR, null, ShopBench.LAST, bench.lead, bench.clock()))
                .isInstanceOf(NotSigned.class).hasMessage("this key was revoked, and stays so. Make a new one with 'chock keys new'");
    }

    @Test
    void a_key_signs_only_while_it_is_good() throws IOException {
        bench.at(Instant.parse("2029-01-01T00:00:00Z"));
        refused("the key of Ida Marrow is good from 2026-11-25T11:00:00Z until 2028-12-31T23:59:59Z, and now it is 2029-01-01T00:00:00Z");
    }

    @Test
    void a_key_nobody_trusts_signs_nothing() {
        SigningKey stranger = SigningKey.create();
        assertThatThrownBy(() -> bench.sign(stranger, Gate.ROAD_TEST)).isInstanceOf(NotSigned.class)
                .hasMessage("this key (" + stranger.id() + ") is not on the trust list " + bench.shop().trust() + ". A lead puts it there with 'chock keys trust'");
    }

    @Test
    void nobody_signs_in_another_name_by_writing_it_into_the_trust_list() throws IOException {
        Path trust = bench.shop().trust();
        Files.writeString(trust, Files.readString(trust).replace("Ida Marrow", "Nora Pell"));
        refused("gives this key to Nora Pell, the ledger to Ida Marrow: it was not changed by 'chock keys'");
        SigningKey tom = SigningKey.create();
        bench.keep("tom", tom);
        TrustList list = new TrustList(List.of(new TrustedKey(tom.id(), tom.x(), "Ida Marrow", Role.INSPECTOR, Instant.EPOCH, ShopBench.NOON.plusSeconds(9), null, null)));
        Files.write(trust, list.bytes());
        assertThatThrownBy(() -> bench.sign(tom, Gate.ROAD_TEST)).isInstanceOf(NotSigned.class).hasMessageContaining("gives this key to Ida Marrow, the ledger to nobody");
    }

    @Test
    void only_a_lead_says_whose_key_it_is() {
        SigningKey tom = SigningKey.create();
        Path open = bench.keep("tom", tom);
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, "Ida Marrow", Role.INSPECTOR, null, ShopBench.LAST, tom, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("the key given with --by (" + tom.id() + ") is not on the trust list; only a lead changes it");
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, "Tom Fell", Role.INSPECTOR, null, ShopBench.LAST, bench.ida, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("Ida Marrow is inspector; only a lead changes the trust list");
        assertThatThrownBy(() -> Signers.revoke(bench.shop(), bench.lead.id(), "so I can sign", bench.ida, bench.clock())).isInstanceOf(NotSigned.class).hasMessageContaining("only a lead");
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, "Tom Fell", Role.INSPECTOR, null, LocalDate.of(2026, 11, 24), bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessageContaining("a key that is good until 2026-11-24 is not good for anything now");
        assertThat(Ledgers.lines(bench.ledger())).hasSize(2);
    }

    @Test
    void a_key_stays_its_owners_and_may_end_earlier_without_undoing_what_it_signed() throws IOException {
        SignOffs.Signed signed = bench.sign();
        Path open = folder.resolve("ida.pem.jwk");
        assertThatThrownBy(() -> Signers.trust(bench.shop(), open, "Nora Pell", Role.LEAD, null, ShopBench.LAST, bench.lead, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessage("this key is Ida Marrow's, and stays so. Nora Pell makes one with 'chock keys new'");
        TrustedKey ended = Signers.trust(bench.shop(), open, "Ida Marrow", Role.INSPECTOR, null, LocalDate.of(2026, 11, 25), bench.lead, bench.clock());
        assertThat(ended.from()).isEqualTo(ShopBench.NOON.minusSeconds(3600));
        assertThat(bench.verify(signed.file(), true, ShopBench.NOON).holds()).isTrue();
        bench.at(Instant.parse("2026-11-26T00:00:00Z"));
        refused("the key of Ida Marrow is good from 2026-11-25T11:00:00Z until 2026-11-25T23:59:59Z");
    }

    @Test
    void the_first_key_on_a_list_is_that_of_a_lead() throws IOException {
        Files.delete(bench.ledger());
        assertThatThrownBy(() -> Signers.trust(bench.shop(), folder.resolve("ida.pem.jwk"), "Ida Marrow", Role.INSPECTOR, null, ShopBench.LAST, bench.ida, bench.clock())).isInstanceOf(NotSigned.class)
                .hasMessageStartingWith("the trust list is empty: the first key on it is that of a lead");
    }

    @Test
    void who_did_all_the_work_does_not_sign_unless_one_person_works_alone() throws IOException {
        Path on = Path.of("docs/examples/lark-on-show.yaml");
        // No work stands in it, so who wrote the entries counts. Neither case nor blanks make another person of her.
        String hers = Files.readString(on).replaceAll("by: (tom|ida)\\b", "by: ida");
        assertThat(hers).doesNotContain("done:");
        bench.write(hers.replace("name: Ida Marrow", "name: \"IDA  marrow\""));
        assertThatThrownBy(() -> bench.sign(bench.ida, Gate.ON_SHOW)).isInstanceOf(NotSigned.class).hasMessageContaining("Ida Marrow did all the work on ").hasMessageContaining("Somebody else signs");
        assertThat(last().kind()).isEqualTo("refused");
        SignOffs.Signed byLead = bench.sign(bench.lead, Gate.ON_SHOW);
        assertThat(byLead.signOff().signer().name()).isEqualTo("Nora Pell");
        assertThat(byLead.signOff().notes()).isEmpty();
    }

    @Test
    void who_looked_but_did_not_do_all_the_work_signs_and_who_did_it_does_not() throws IOException {
        String text = bench.text();
        assertThat(text).contains("by: tom, point: front-wheel/rim-tape, done: replaced");
        bench.write(text.lines().map(line -> line.contains("done:") ? line.replace("by: ida", "by: tom") : line).collect(Collectors.joining("\n")));
        SigningKey tom = SigningKey.create();
        Signers.trust(bench.shop(), bench.keep("tom", tom), "Tom Fell", Role.INSPECTOR, null, ShopBench.LAST, bench.lead, bench.clock());
        assertThatThrownBy(() -> bench.sign(tom, Gate.ROAD_TEST)).isInstanceOf(NotSigned.class).hasMessageContaining("Tom Fell did all the work on HV-0142 and cannot be the one to sign it");
        assertThat(bench.sign().signOff().workBy()).containsExactly("Tom Fell");
    }

    @Test
    void one_person_alone_signs_and_the_sign_off_says_so() throws IOException {
        String text = Files.readString(Path.of("docs/examples/lark-on-show.yaml"));
        String alone = text.replaceAll("by: (tom|ida)\\b", "by: ida").replaceFirst("(?m)^  - \\{id: tom, name.*\\n", "").replace("one-person: no", "one-person: yes");
        bench.write(alone);
        assertThat(bench.sign(bench.ida, Gate.ON_SHOW).signOff().notes())
                .containsExactly("One person works alone in this workshop: the work and the signature are Ida Marrow's, and nobody else looked.");
    }

    @Test
    void a_record_of_another_workshop_is_not_signed() throws IOException {
        bench.write(bench.text().replace("workshop: Hollow Vale Motor Works", "workshop: Low Mill Cycles"));
        refused("record HV-0142 is of 'Low Mill Cycles', and " + bench.file() + " speaks for 'Hollow Vale Motor Works'");
    }

    @Test
    void house_rules_that_are_not_at_hand_and_rule_books_for_trial_sign_nothing() throws IOException {
        Files.writeString(bench.file(), Shop.SKELETON.replaceFirst("house: none.*", "house: {folder: house, digest: sha256:" + "0".repeat(64) + "}"));
        refused("binds this workshop to the house rules in " + folder.resolve("house") + ", and the rule book at hand is without them");
        Files.writeString(bench.file(), Shop.SKELETON);
        assertThatThrownBy(() -> SignOffs.sign(bench.shop(), bench.ida, ShopBench.BOOK.without("brakes.bled"), bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, null, bench.clock()))
                .isInstanceOf(NotSigned.class).hasMessageContaining("this rule book is changed for trial");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "'  - \\{id: e1, at.*\\n' | '' | entry e1 was taken out of record HV-0142 since the ledger saw it. Put it back as it was; a wrong entry is followed by one that corrects it",
        "is: 24.8 psi | is: 24.9 psi | entry e270 of record HV-0142 says something else than when the ledger saw it. Put it back as it was; a wrong entry is followed by one that corrects it",
        "id: e1, at: 2026-11-18 09:00 | id: e1, at: 2026-11-19 09:00 | entry e1 of record HV-0142 says something else",
        "name: Tom Fell | name: Tim Fell | person tom of record HV-0142 says something else than when the ledger saw it. Put it back as it was; another person gets another id",
        "id: cal-1, kind: caliper, uncertainty: by-kind, calibrated: 2026-03-02, due: 2027-03-02 | id: cal-1, kind: caliper, uncertainty: by-kind, calibrated: 2026-03-02, due: 2028-03-02 | instrument cal-1 of record HV-0142 says something else than when the ledger saw it. Put it back as it was; after a new calibration it gets a new id",
        "engine-number: TB25E-10395 | engine-number: TB25E-10396 | record HV-0142 was signed for frame TB25-10382, engine TB25E-10395; now it says frame TB25-10382, engine TB25E-10396. Another machine",
    })
    void nothing_is_taken_out_or_edited_between_two_sign_offs(String what, String instead, String says) throws IOException {
        bench.sign();
        String changed = bench.text().replaceFirst(what, instead);
        assertThat(changed).isNotEqualTo(bench.text());
        bench.write(changed);
        bench.at(ShopBench.NOON.plusSeconds(600));
        refused(says);
        assertThat(last().said().has("saw")).as("the altered record is not what is kept in mind").isFalse();
        bench.write(Files.readString(Path.of("docs/examples/lark-released.yaml")));
        assertThat(bench.sign().line()).as("put back, it is signed").isEqualTo(5);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-25 11:59, true", "2026-11-25 12:00, false", "2026-11-25, true", "2026-11-24, true"})
    void nothing_is_dated_before_the_last_sign_off(String at, boolean refused) throws IOException {
        bench.sign();
        bench.at(ShopBench.NOON.plusSeconds(600));
        bench.add("id: e900, at: " + at + ", by: ida, point: workshop, measured: air-temperature, is: 14 °C, with: therm-1");
        if (refused) {
            refused("entry e900 of " + at + " was added since, but is dated before the last sign-off of HV-0142 (2026-11-25T12:00 Europe/London). Write it with the day and time at which it is written");
        } else {
            assertThat(bench.sign().signOff().ledger().line()).isPositive();
        }
    }

    @Test
    void what_was_seen_when_a_signature_was_refused_may_not_go_away_either() throws IOException {
        bench.add("id: e901, at: 2026-11-25 11:00, by: tom, point: front-brake/caliper, done: removed");
        refused("HV-0142 is blocked at road-test");
        bench.write(Files.readString(Path.of("docs/examples/lark-released.yaml")));
        refused("entry e901 was taken out of record HV-0142 since the ledger saw it");
    }

    @Test
    void a_later_entry_on_a_critical_place_voids_and_stays_a_void_when_it_is_taken_out_again() throws IOException {
        SignOffs.Signed signed = bench.sign();
        bench.at(ShopBench.NOON.plusSeconds(600));
        bench.add("id: e902, at: 2026-11-25 12:05, by: tom, point: front-brake/caliper, done: removed");
        Verification found = bench.verify(signed.file(), true, ShopBench.NOON.plusSeconds(600));
        assertThat(found.holds()).isFalse();
        assertThat(says(found, "since")).isEqualTo("Since then entry e902 of 2026-11-25 12:05 is about front-brake/caliper, where somebody gets hurt when something is wrong: that voids it. Judge the record again, and sign it again.");
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), ShopBench.NOON.plusSeconds(600))).containsExactly(
                "The sign-off at road-test by Ida Marrow of 2026-11-25 12:00 Europe/London is void: entry e902 of 2026-11-25 12:05 is about front-brake/caliper.");
        assertThat(Verifier.note(bench.shop(), ShopBench.BOOK, new Verifier.Source("record", Files.readAllBytes(bench.record)), bench.clock())).isNull();
        assertThat(last().kind()).isEqualTo("voided");
        bench.write(Files.readString(Path.of("docs/examples/lark-released.yaml")));
        assertThat(says(bench.verify(signed.file(), true, ShopBench.NOON.plusSeconds(600)), "ledger")).isEqualTo("It is line 3 of the ledger, and was voided there: entry e902 of 2026-11-25 12:05 is about front-brake/caliper.");
    }

    private JobRecord record() throws IOException {
        return RecordReader.read("r", Files.readAllBytes(bench.record), ShopBench.BOOK.vocabulary(), ShopBench.NOON.plusSeconds(600));
    }

    private static String says(Verification found, String thing) {
        return found.things().stream().filter(t -> t.thing().equals(thing)).map(Verification.Thing::says).findFirst().orElse("nothing was said of " + thing);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "inspected: refused, licence: L-1, inspector: V Hale, document: D-9 | is a licensed refusal",
        "instrument: cal-1, found-out: reads 0.3 mm high | is about instrument/cal-1",
        "point: front-wheel/tyre, measured: pressure, is: 24.8 psi, with: gauge-1 | is about front-wheel/tyre",
    })
    void a_licensed_refusal_an_instrument_found_out_and_a_new_reading_void_as_well(String entry, String why) throws IOException {
        SignOffs.Signed signed = bench.sign();
        bench.add("id: e903, at: 2026-11-25 12:05, by: ida, " + entry);
        assertThat(says(bench.verify(signed.file(), true, ShopBench.NOON.plusSeconds(600)), "since")).startsWith("Since then entry e903 of 2026-11-25 12:05 " + why);
    }

    @Test
    void what_is_written_elsewhere_leaves_it_standing() throws IOException {
        SignOffs.Signed signed = bench.sign();
        bench.add("id: e904, at: 2026-11-25 12:05, by: ida, point: electrics/plate-lamp, done: cleaned");
        bench.write(bench.text().replace("18200 mi from new", "18300 mi from new"));
        Verification found = bench.verify(signed.file(), true, ShopBench.NOON.plusSeconds(600));
        assertThat(says(found, "record")).isEqualTo("Everything that was signed stands in the record unchanged; it has been added to since.");
        assertThat(says(found, "since")).isEqualTo("What was written since touches nothing safety-critical: entry e904, 'claims'.");
        assertThat(found.holds()).isTrue();
        bench.at(ShopBench.NOON.plusSeconds(660));
        assertThat(bench.sign().signOff().changedSince()).containsExactly("claims");
    }

    @Test
    void time_is_told_on_both_sides() throws IOException {
        SignOffs.Signed signed = bench.sign();
        assertThat(says(bench.verify(signed.file(), false, Instant.parse("2026-11-25T13:50:59Z")), "time")).isEqualTo("It holds until 2026-11-25 13:50 Europe/London if nobody touches the machine.");
        assertThat(says(bench.verify(signed.file(), false, Instant.parse("2026-11-25T13:51:00Z")), "time")).isEqualTo("It lapsed on 2026-11-25 13:50 Europe/London.");
        assertThat(says(bench.verify(signed.file(), false, ShopBench.NOON.minusSeconds(1)), "time")).isEqualTo("On 2026-11-25 11:59 Europe/London it was not signed yet.");
        assertThat(bench.verify(signed.file(), false, Instant.parse("2026-11-26T00:00:00Z")).holds()).isFalse();
        assertThat(Verifier.standing(bench.shop(), record(), ShopBench.BOOK.vocabulary(), Instant.parse("2026-11-26T00:00:00Z"))).singleElement().asString().endsWith(" lapsed on 2026-11-25 13:50 Europe/London.");
    }

    @Test
    void a_sign_off_for_another_record_or_of_another_ledger_does_not_hold() throws IOException {
        SignOffs.Signed signed = bench.sign();
        byte[] other = Files.readAllBytes(Path.of("docs/examples/merle-released.yaml"));
        assertThat(says(bench.verify(Files.readAllBytes(signed.file()), other, ShopBench.NOON), "record")).startsWith("The record is not the one signed: ");
        byte[] first = Files.readAllBytes(signed.file());
        List<String> lines = Files.readAllLines(bench.ledger());
        Files.writeString(bench.ledger(), lines.get(0) + "\n" + lines.get(1) + "\n");
        assertThat(says(bench.verify(first, null, ShopBench.NOON), "ledger")).isEqualTo("The ledger of Hollow Vale Motor Works does not know it.");
    }

    @Test
    void a_signature_over_findings_that_the_rule_book_does_not_make_is_caught() throws IOException {
        SignOff s = bench.sign().signOff();
        SignOff.Found first = s.findings().get(0);
        List<SignOff.Found> bent = new ArrayList<>(s.findings());
        bent.set(0, new SignOff.Found(first.check(), first.state(), first.critical(), "All is well.", first.measured(), first.limit(), first.notes(), first.evidence()));
        SignOff other = new SignOff(s.chock(), s.record(), s.machine(), s.gate(), s.verdict(), s.asOf(), s.holdsUntil(), s.zone(), s.place(), s.territory(), s.localCode(), s.recordedLaw(), s.ruleBook(), s.house(), bent, s.notAsked(),
                s.cautions(), s.notes(), s.criticalPoints(), s.workBy(), s.changedSince(), s.deferral(), s.signer(), s.signedAt(), s.ledger(), s.seal());
        Verification found = bench.verify(ShopBench.utf8(Jws.sign(other.bytes(), SignOff.TYP, bench.ida)), Files.readAllBytes(bench.record), ShopBench.NOON);
        assertThat(says(found, "rule book")).endsWith("judged again by it, this is not as signed: the findings.");
        assertThat(found.holds()).isFalse();
        byte[] inNorasName = Jws.sign(s.bytes(), SignOff.TYP, bench.lead).getBytes(StandardCharsets.US_ASCII);
        assertThat(says(bench.verify(inNorasName, null, ShopBench.NOON), "signature")).isEqualTo("It says it is by Ida Marrow (inspector), but the key is Nora Pell's (lead).");
    }

    @Test
    void the_seal_alone_is_verified_as_far_as_it_goes() throws IOException {
        SignOffs.Signed signed = bench.sign();
        Verification found = bench.verify(ShopBench.utf8(signed.signOff().seal()), null, ShopBench.NOON);
        assertThat(found.title()).isEqualTo("road-test of HV-0142: Tarnbeck Lark 250, frame TB25-10382, engine TB25E-10395");
        assertThat(found.holds()).isTrue();
        assertThat(found.complete()).isFalse();
        assertThat(says(found, "ledger")).isEqualTo("It is line 3 of the ledger, and nothing there voids it.");
    }

    @Test
    void a_file_is_never_written_over_and_a_folder_that_is_not_there_signs_nothing() throws IOException {
        Path there = Files.writeString(folder.resolve("there.jws"), "x");
        assertThatThrownBy(() -> SignOffs.sign(bench.shop(), bench.ida, ShopBench.BOOK, bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, there, bench.clock()))
                .isInstanceOf(UnusableInput.class).hasMessage(there + ": there is such a file already. A sign-off is never written over; give another name with --out");
        Path nowhere = folder.resolve("none/s.jws");
        assertThatThrownBy(() -> SignOffs.sign(bench.shop(), bench.ida, ShopBench.BOOK, bench.record, Files.readAllBytes(bench.record), Gate.ROAD_TEST, nowhere, bench.clock()))
                .isInstanceOf(UnusableInput.class).hasMessageContaining(nowhere + ": it cannot be written: its folder is not there");
        assertThat(there).content().isEqualTo("x");
        assertThat(Ledgers.lines(bench.ledger())).extracting(LedgerLine::kind).doesNotContain("signed");
    }

    @Test
    void a_frame_signed_under_another_record_is_noted() throws IOException {
        bench.sign();
        bench.write(bench.text().replace("record: HV-0142", "record: HV-0942"));
        bench.at(ShopBench.NOON.plusSeconds(60));
        assertThat(bench.sign().signOff().notes()).containsExactly("This frame was signed before under record HV-0142; what stands there was not looked at.");
    }

    /** Written down anew under another number, spaced otherwise, with what was bad left out or made good. */
    @Test
    void a_refusal_goes_with_the_machine_and_not_with_the_number_of_its_record() throws IOException {
        String good = bench.text();
        bench.write(good.replace("lever-feel, is: firm", "lever-feel, is: spongy"));
        assertThatThrownBy(bench::sign).isInstanceOf(NotSigned.class).hasMessageContaining("HV-0142 is blocked at road-test");
        bench.at(ShopBench.NOON.plusSeconds(60));
        bench.write(good.replace("record: HV-0142", "record: HV-0942").replace("TB25-10382", "tb 25 10382"));
        List<String> notes = bench.sign().signOff().notes();
        assertThat(notes).singleElement().asString().startsWith("This machine was refused at road-test under record HV-0142 on 2026-11-25: HV-0142 is blocked at road-test: 1 fault.")
                .contains("brakes.lever-feel").contains("Of what was seen of it then, entry e131 says something else here");
        bench.at(ShopBench.NOON.plusSeconds(120));
        bench.write(good.replace("record: HV-0142", "record: HV-0943").replace("TB25-10382", "ZZ-1").replace("TB25E-10395", "ZZ-2"));
        assertThat(bench.sign().signOff().notes()).as("another machine").isEmpty();
    }

    /** A blank that is none, a dot, a letter of another alphabet: the same hand would look at its own work. */
    @Test
    void who_looks_like_the_worker_is_the_worker() throws IOException {
        String good = bench.text();
        for (String name : List.of("Ida\u00a0Marrow.", "lda Marrow", "\uff29da Marrow")) {
            bench.write(good.replace("by: tom", "by: ida").replace("name: Ida Marrow", "name: \"" + name + "\""));
            assertThatThrownBy(bench::sign).as(name).isInstanceOf(NotSigned.class);
            bench.write(good.replace("name: Tom Fell", "name: \"" + name + "\""));
            assertThatThrownBy(bench::sign).as(name).isInstanceOf(UnusableInput.class).hasMessageContaining("looks like");
        }
        bench.write(good.replace("name: Tom Fell", "name: \"T\u043em Fell\""));
        assertThatThrownBy(bench::sign).isInstanceOf(UnusableInput.class).hasMessageContaining("mixes letters of two alphabets (Latin, Cyrillic)");
        SigningKey other = SigningKey.create();
        assertThatThrownBy(() -> Signers.trust(bench.shop(), bench.keep("other", other), "Nora  Pe11", Role.INSPECTOR, null, ShopBench.LAST, bench.lead, bench.clock()))
                .isInstanceOf(NotSigned.class).hasMessageContaining("looks like 'Nora Pell'");
    }
}
