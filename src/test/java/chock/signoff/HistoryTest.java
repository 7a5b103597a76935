package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Lines that are whole, numbered and chained as they should be, and yet say what their writer had no right to say. */
class HistoryTest {
    private static final String NO_LEAD = "a key was changed by somebody who is no lead";
    private static final String NOT_TRUSTED = "it was signed with a key that was not trusted then";

    @TempDir private Path folder;
    private ShopBench bench;
    private final SigningKey tom = SigningKey.create();

    @BeforeEach
    void two_keys() throws IOException {
        bench = new ShopBench(folder);
    }

    private void line(Instant at, String kind, ObjectNode said, SigningKey seal) {
        try (OpenLedger ledger = OpenLedger.at(bench.ledger())) {
            ledger.append(at, kind, said, seal);
        }
    }

    private void line(String kind, ObjectNode said, SigningKey seal) {
        line(ShopBench.NOON, kind, said, seal);
    }

    private static ObjectNode trusts(ObjectNode key, String by) {
        ObjectNode said = JsonNodeFactory.instance.objectNode().put("by", by);
        said.set("key", key);
        return said;
    }

    private static ObjectNode revokes(String key, String by) {
        return JsonNodeFactory.instance.objectNode().put("by", by).put("keyId", key).put("reason", "lost");
    }

    private static ObjectNode jwk(SigningKey key, String name, Role role) {
        return new TrustedKey(key.id(), key.x(), name, role, ShopBench.NOON, ShopBench.NOON.plusSeconds(86_400), null, null).jwk();
    }

    private ObjectNode signs(String name, String keyId) {
        ObjectNode said = JsonNodeFactory.instance.objectNode().put("record", "HV-0142").put("frame", "TB25-10382").put("engine", "TB25E-10395").put("gate", "road-test")
                .put("holdsUntil", "2026-11-25T23:59:59Z").put("signOff", "sha256:0");
        said.putObject("signer").put("name", name).put("keyId", keyId);
        said.putArray("criticalPoints").add("front-brake");
        said.putObject("saw").put("entry e1", "abc");
        return said;
    }

    private void unsound(String why) {
        int lines = Ledgers.lines(bench.ledger()).size();
        assertThat(Ledgers.verify(bench.shop()).fault())
                .isEqualTo(bench.ledger() + ":" + lines + ": the ledger is not sound: " + why + ". Nothing is written to it: find out who changed it, and put the kept copy back");
    }

    private History sound() {
        return Ledgers.history(bench.ledger());
    }

    @Test
    void what_a_lead_says_of_keys_is_believed() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR), bench.lead.id()), bench.lead);
        assertThat(sound().trust().keys()).extracting(TrustedKey::name).containsExactly("Nora Pell", "Ida Marrow", "Tom Fell");
        line("key-revoked", revokes(tom.id(), bench.lead.id()), bench.lead);
        assertThat(sound().trust().key(tom.id()).orElseThrow()).matches(TrustedKey::isRevoked).extracting(TrustedKey::reason).isEqualTo("lost");
    }

    @Test
    void an_inspector_trusts_nobody() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR), bench.ida.id()), bench.ida);
        unsound(NO_LEAD);
    }

    @Test
    void a_stranger_trusts_nobody() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.LEAD), tom.id()), tom);
        unsound(NO_LEAD);
    }

    @Test
    void a_lead_whose_key_has_run_out_trusts_nobody() {
        line(Instant.parse("2029-01-01T00:00:00Z"), "key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR), bench.lead.id()), bench.lead);
        unsound(NO_LEAD);
    }

    @Test
    void a_revoked_lead_trusts_nobody() {
        line("key-revoked", revokes(bench.lead.id(), bench.lead.id()), bench.lead);
        assertThat(sound().trust().key(bench.lead.id()).orElseThrow().isRevoked()).isTrue();
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.LEAD), bench.lead.id()), bench.lead);
        unsound(NO_LEAD);
    }

    @Test
    void a_line_in_the_name_of_a_lead_carries_the_signature_of_that_lead() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR), bench.lead.id()), bench.ida);
        unsound("it does not carry the signature of Nora Pell, who should have written it");
    }

    @Test
    void a_line_without_a_signature_is_not_believed() {
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()), null);
        unsound("it does not carry the signature of Nora Pell, who should have written it");
    }

    @Test
    void a_signature_under_something_else_than_a_line_is_not_taken_for_one() {
        ObjectNode said = revokes(bench.ida.id(), bench.lead.id()).put("line", 3).put("previous", Ledgers.verify(bench.shop()).last()).put("at", ShopBench.NOON.toString()).put("kind", "key-revoked");
        String otherwise = Jws.signDetached(Canonical.bytes(said), SignOff.TYP, bench.lead);
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()).put("seal", otherwise), null);
        unsound("it does not carry the signature of Nora Pell, who should have written it");
    }

    @Test
    void a_revoked_key_is_never_trusted_again() {
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()), bench.lead);
        line("key-trusted", trusts(jwk(bench.ida, "Ida Marrow", Role.INSPECTOR), bench.lead.id()), bench.lead);
        unsound("it trusts a key again that was revoked");
    }

    @Test
    void a_key_never_becomes_another_persons() {
        line("key-trusted", trusts(jwk(bench.ida, "Tom Fell", Role.INSPECTOR), bench.lead.id()), bench.lead);
        unsound("it gives the key of Ida Marrow to Tom Fell");
    }

    @Test
    void only_a_trusted_key_is_revoked_and_only_once() throws IOException {
        byte[] good = Files.readAllBytes(bench.ledger());
        line("key-revoked", revokes(tom.id(), bench.lead.id()), bench.lead);
        unsound("it revokes a key that was not trusted");
        Files.write(bench.ledger(), good);
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()), bench.lead);
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()), bench.lead);
        unsound("it revokes a key that was not trusted");
    }

    @Test
    void a_key_with_the_id_of_another_is_none() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR).put("kid", bench.ida.id()), bench.lead.id()), bench.lead);
        unsound("it holds no key");
    }

    @Test
    void what_is_no_public_key_is_none() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR).put("x", "AAAA"), bench.lead.id()), bench.lead);
        unsound("it holds no key");
    }

    @Test
    void a_key_without_its_times_is_told_as_a_fault_of_the_ledger() {
        line("key-trusted", trusts(jwk(tom, "Tom Fell", Role.INSPECTOR).put("validFrom", "soon"), bench.lead.id()), bench.lead);
        assertThat(Ledgers.verify(bench.shop()).fault()).startsWith(bench.ledger() + ":3: the ledger is not sound: ");
    }

    @Test
    void what_was_signed_is_kept_in_mind() {
        line("signed", signs("Ida Marrow", bench.ida.id()), bench.ida);
        History.Signing signing = sound().signing("sha256:0").orElseThrow();
        assertThat(signing.criticalPoints()).containsExactly("front-brake");
        assertThat(signing.items()).containsEntry("entry e1", "abc");
        assertThat(List.of(signing.line(), signing.record(), signing.gate(), signing.name(), signing.keyId(), signing.at(), signing.until()))
                .containsExactly(3, "HV-0142", "road-test", "Ida Marrow", bench.ida.id(), ShopBench.NOON, Instant.parse("2026-11-25T23:59:59Z"));
        assertThat(sound().signing("sha256:1")).isEmpty();
        History.Seen seen = sound().seen("HV-0142");
        assertThat(List.of(seen.frame(), seen.engine(), seen.lastSigned())).containsExactly("TB25-10382", "TB25E-10395", ShopBench.NOON);
        assertThat(sound().seen("HV-0143").lastSigned()).isNull();
        ObjectNode later = JsonNodeFactory.instance.objectNode().put("record", "HV-0142").put("why", "blocked");
        later.putObject("saw").put("entry e2", "def");
        line("refused", later, null);
        assertThat(sound().seen("HV-0142").items()).containsOnlyKeys("entry e1", "entry e2");
        assertThat(sound().seen("HV-0142").lastSigned()).as("a refusal is no signature").isEqualTo(ShopBench.NOON);
        assertThat(sound().signing("sha256:0").orElseThrow().items()).as("what it was signed over").containsOnlyKeys("entry e1");
    }

    @Test
    void nobody_signs_with_a_key_that_is_not_trusted() {
        line("signed", signs("Tom Fell", tom.id()), tom);
        unsound(NOT_TRUSTED);
    }

    @Test
    void nobody_signs_under_the_name_of_somebody_else() {
        line("signed", signs("Nora Pell", bench.ida.id()), bench.ida);
        unsound(NOT_TRUSTED);
    }

    @Test
    void nobody_signs_with_a_key_that_has_run_out() {
        line(Instant.parse("2029-01-01T00:00:00Z"), "signed", signs("Ida Marrow", bench.ida.id()), bench.ida);
        unsound(NOT_TRUSTED);
    }

    @Test
    void nobody_signs_with_a_revoked_key() {
        line("key-revoked", revokes(bench.ida.id(), bench.lead.id()), bench.lead);
        line("signed", signs("Ida Marrow", bench.ida.id()), bench.ida);
        unsound(NOT_TRUSTED);
    }

    @Test
    void nobody_else_signs_for_her() {
        line("signed", signs("Ida Marrow", bench.ida.id()), bench.lead);
        unsound("it does not carry the signature of Ida Marrow, who should have written it");
    }

    @Test
    void the_first_reason_a_sign_off_was_voided_for_stays() {
        line("signed", signs("Ida Marrow", bench.ida.id()), bench.ida);
        assertThat(sound().voided("sha256:0")).isEmpty();
        line("voided", Voids.line("sha256:0", "HV-0142", "the brake came off"), null);
        line("voided", Voids.line("sha256:0", "HV-0142", "nothing"), null);
        assertThat(sound().voided("sha256:0")).contains("the brake came off");
    }

    /** From its first moment to its last, both included. */
    @Test
    void a_key_is_good_at_both_ends_of_its_time() {
        TrustedKey key = new TrustedKey(tom.id(), tom.x(), "Tom Fell", Role.INSPECTOR, ShopBench.NOON, ShopBench.NOON.plusSeconds(60), null, null);
        assertThat(key.validAt(ShopBench.NOON.minusNanos(1))).isFalse();
        assertThat(key.validAt(ShopBench.NOON)).isTrue();
        assertThat(key.validAt(ShopBench.NOON.plusSeconds(60))).isTrue();
        assertThat(key.validAt(ShopBench.NOON.plusSeconds(60).plusNanos(1))).isFalse();
    }
}
