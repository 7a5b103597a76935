package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.signoff.Verification.Holds;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Somebody who has a trusted key signs what was never judged. Every part of a genuine sign-off and of its seal is changed in turn
 * and signed anew with the same key: a program that believes a signature alone lets all of these pass.
 */
class ForgedByKeyHolderTest {
    private static final ObjectMapper JSON = new ObjectMapper();
    /** What nobody can know without the ledger: where it stands there, how the file lay, where the shop is, and what was said besides. */
    private static final Set<String> ONLY_THE_LEDGER_KNOWS = Set.of("/ledger/line", "/ledger/previous", "/record/file", "/changedSince");

    @TempDir private Path folder;
    private ShopBench bench;
    private SignOffs.Signed signed;

    @BeforeEach
    void sign() throws IOException {
        bench = new ShopBench(folder);
        signed = bench.sign();
    }

    private Verification trusting(byte[] signOff) throws IOException {
        return new Verifier(TrustList.of(bench.shop().trust()), null, ShopBench.BOOK, ShopBench.NOON)
                .verify(new Verifier.Source("sign-off", signOff), new Verifier.Source("record", Files.readAllBytes(bench.record)));
    }

    private byte[] byTheSameKey(JsonNode signOff) {
        return ShopBench.utf8(Jws.sign(Canonical.bytes(signOff), SignOff.TYP, bench.ida));
    }

    private ObjectNode genuine() throws IOException {
        return (ObjectNode) JSON.readTree(signed.signOff().bytes());
    }

    /** With the seal that belongs to what is written, by the same key. */
    private ObjectNode sealed(ObjectNode forged) {
        SignOff read = SignOff.read(Canonical.bytes(forged));
        return read == null ? forged : forged.put("seal", Jws.sign(SignOff.bytes(read.sealed()), SignOff.Seal.TYP, bench.ida));
    }

    /** Every value in it with its path, and another value to put in its place; every list with fewer and with more in it. */
    private static void changes(JsonNode node, String path, BiConsumer<String, BiConsumer<ObjectNode, String>> each) {
        if (node.isObject()) {
            node.fields().forEachRemaining(field -> changes(field.getValue(), path + "/" + field.getKey().replace("~", "~0").replace("/", "~1"), each));
        } else if (node.isArray()) {
            if (!node.isEmpty()) {
                each.accept(path, (root, at) -> ((ArrayNode) root.at(at)).removeAll());
                changes(node.get(0), path + "/0", each);
            }
            each.accept(path + "+", (root, at) -> ((ArrayNode) root.at(at.replace("+", ""))).add("nowhere"));
        } else {
            each.accept(path, (root, at) -> {
                ObjectNode parent = root.at(at.substring(0, at.lastIndexOf('/'))) instanceof ObjectNode object ? object : null;
                if (parent != null) {
                    String name = at.substring(at.lastIndexOf('/') + 1).replace("~1", "/").replace("~0", "~");
                    parent.set(name, other(parent.get(name)));
                } else {
                    ((ArrayNode) root.at(at.substring(0, at.lastIndexOf('/')))).set(0, other(root.at(at)));
                }
            });
        }
    }

    private static JsonNode other(JsonNode value) {
        if (value.isNumber()) {
            return JSON.getNodeFactory().numberNode(value.intValue() + 1);
        }
        if (value.isBoolean()) {
            return JSON.getNodeFactory().booleanNode(!value.booleanValue());
        }
        String text = value.asText();
        boolean moment = text.matches("\\d{4}-\\d{2}-\\d{2}T.*Z");
        boolean zone = text.equals("Europe/London");
        return JSON.getNodeFactory().textNode(moment ? java.time.Instant.parse(text).plusSeconds(3600).toString() : zone ? "Europe/Berlin" : text + "x");
    }

    @Test
    void no_part_of_a_sign_off_can_be_invented_when_the_record_is_at_hand() throws IOException {
        assertThat(trusting(byTheSameKey(genuine())).holds()).isTrue();
        List<String> passed = new ArrayList<>();
        Set<String> tried = new TreeSet<>();
        changes(genuine(), "", (path, change) -> {
            try {
                ObjectNode forged = genuine();
                change.accept(forged, path);
                tried.add(path);
                Verification found = trusting(byTheSameKey(path.equals("/seal") ? forged : sealed(forged)));
                if (found.holds() && found.complete() || found.holds() && !path.startsWith("/ruleBook/digest") && !path.startsWith("/record/digest")) {
                    passed.add(path);
                }
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
        assertThat(tried).hasSizeGreaterThan(200);
        assertThat(passed).allMatch(path -> ONLY_THE_LEDGER_KNOWS.contains(path.replace("+", "")) || path.equals("/notes+")
                // What is claimed and sought is no ground of the release; whether it was altered since stands under "since".
                || List.of("/record/items/part claims", "/record/items/part seeks").contains(path));
    }

    @Test
    void an_unknown_rule_book_and_no_end_are_not_believed() throws IOException {
        ObjectNode forged = genuine();
        ((ObjectNode) forged.get("ruleBook")).put("digest", "sha256:" + "0".repeat(64));
        ((ArrayNode) forged.get("criticalPoints")).removeAll();
        assertThat(trusting(byTheSameKey(sealed(forged))).complete()).as("what nobody can judge again never holds in full").isFalse();
        bench.add("id: later, at: 2026-11-25 12:00, by: tom, point: front-brake/caliper, done: removed");
        assertThat(trusting(byTheSameKey(sealed(forged))).holds()).as("work on the brake voids it, whatever it says of critical points").isFalse();
        for (String until : List.of("2099-01-01T00:00:00Z", "2026-12-25T23:00:00Z")) {
            Verification found = trusting(byTheSameKey(sealed(forged.put("holdsUntil", until))));
            assertThat(found.holds()).as(until).isFalse();
        }
        ((ArrayNode) forged.get("findings")).removeAll();
        assertThat(trusting(byTheSameKey(sealed(forged))).things()).anyMatch(t -> t.holds() == Holds.NO && t.says().contains("it rests on no finding"));
    }

    @Test
    void nonsense_from_a_trusted_key_is_a_refusal() throws IOException {
        for (String path : List.of("/asOf", "/holdsUntil", "/signedAt", "/zone", "/gate", "/machine", "/record", "/findings", "/signer", "/ruleBook", "/notes", "/seal", "/ledger")) {
            ObjectNode forged = genuine();
            forged.set(path.substring(1), null);
            assertThat(trusting(byTheSameKey(forged)).holds()).as("null " + path).isFalse();
            ObjectNode words = genuine().put(path.substring(1), "x");
            assertThat(trusting(byTheSameKey(words)).holds()).as("x " + path).isFalse();
        }
        assertThat(bench.verify(ShopBench.utf8(Jws.sign(ShopBench.utf8("{\"chock\":\"seal/1\"}"), SignOff.Seal.TYP, bench.ida)), null, ShopBench.NOON).holds()).isFalse();
    }

    @Test
    void no_part_of_a_seal_can_be_invented_when_the_ledger_is_at_hand() throws IOException {
        ObjectNode genuine = (ObjectNode) JSON.readTree(SignOff.bytes(signed.signOff().sealed()));
        assertThat(bench.verify(ShopBench.utf8(signed.signOff().seal()), null, ShopBench.NOON).holds()).isTrue();
        List<String> passed = new ArrayList<>();
        genuine.fieldNames().forEachRemaining(name -> {
            ObjectNode forged = genuine.deepCopy();
            forged.set(name, other(forged.get(name)));
            byte[] seal = ShopBench.utf8(Jws.sign(Canonical.bytes(forged), SignOff.Seal.TYP, bench.ida));
            if (bench.verify(seal, null, ShopBench.NOON).holds()) {
                passed.add(name);
            }
        });
        // The zone only says on which clock the same moments are shown.
        assertThat(passed).isSubsetOf("zone");
        ObjectNode lead = genuine.deepCopy().put("role", "lead").put("holdsUntil", "2099-01-01T00:00:00Z");
        assertThat(bench.verify(ShopBench.utf8(Jws.sign(Canonical.bytes(lead), SignOff.Seal.TYP, bench.ida)), null, ShopBench.NOON).holds()).isFalse();
    }
}
