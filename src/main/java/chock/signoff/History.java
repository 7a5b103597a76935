package chock.signoff;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What the lines of a ledger come to: whose keys are believed, which entries were seen of each record, and what was signed
 * and voided. Every line a key had to be used for is held against that key.
 */
public final class History {
    /** The {@code typ} of the signature on a line. */
    static final String SEAL = "chock-ledger-line+json";

    private final Map<String, TrustedKey> keys = new LinkedHashMap<>();
    private final Map<String, Seen> records = new HashMap<>();
    private final List<Signing> signings = new ArrayList<>();
    private final List<Refusal> refusals = new ArrayList<>();
    private final Map<String, String> voided = new LinkedHashMap<>();
    private final List<Withdrawal> withdrawals = new ArrayList<>();
    private final Map<String, String> packs = new HashMap<>();

    private History() { }

    /**
     * What was seen of one record.
     *
     * @param items short digests of the things in it, as {@link RecordVersion#items}
     * @param lastSigned when it was last signed, or null
     * @param frame frame number, or null when never signed
     */
    record Seen(Map<String, String> items, Instant lastSigned, String frame, String engine) { }

    /**
     * One sign-off, as the ledger has it.
     *
     * @param digest of the sign-off file
     * @param items what the record held when it was signed
     * @param role of who signed, in words
     * @param rests what it rests on, or null when an earlier program wrote the line
     */
    record Signing(int line, String digest, String record, String frame, String engine, String gate, Instant at, Instant until, String name, String keyId,
                   List<String> criticalPoints, Map<String, String> items, String machine, String recordDigest, String role, RestsOn rests) {

        /** True when a seal says of it what the ledger says, letter for letter. */
        boolean isSealedBy(SignOff.Seal seal) {
            return seal.record().equals(record) && seal.digest().equals(recordDigest) && seal.machine().equals(machine)
                    && seal.frameNumber().equals(frame) && seal.engineNumber().equals(engine) && seal.gate().equals(gate)
                    && Instant.parse(seal.asOf()).equals(at) && Instant.parse(seal.holdsUntil()).equals(until)
                    && seal.signer().equals(name) && seal.role().equals(role);
        }
    }

    /** A sign-off that was not given. */
    record Refusal(String record, String frame, String engine, String gate, Instant at, String why) { }

    /** Thrown when a line does not fit those before it. */
    private static final class Misfit extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Misfit(String why) {
            super(why, null, false, false);
        }
    }

    /**
     * @param file the ledger, for messages
     * @throws UnusableInput naming the first line that does not fit those before it
     */
    static History of(Path file, List<LedgerLine> lines) {
        History history = new History();
        for (LedgerLine line : lines) {
            try {
                history.take(line);
            } catch (Misfit | DateTimeException | IllegalArgumentException e) {
                throw UnusableInput.of(file + ":" + line.number(), "the ledger is not sound: " + e.getMessage(), "Nothing is written to it: find out who changed it, and put the kept copy back");
            }
        }
        return history;
    }

    private void take(LedgerLine line) {
        switch (line.kind()) {
            case "key-trusted" -> trusted(line);
            case "key-revoked" -> revoked(line);
            case Withdrawal.KIND -> withdrawn(line);
            case RulePacks.KIND -> kept(line);
            case "signed" -> signed(line);
            case "refused" -> refused(line);
            case "voided" -> voided.putIfAbsent(line.text("signOff"), line.text("why"));
            default -> { }
        }
    }

    private void trusted(LedgerLine line) {
        TrustedKey key = key(line.said().path("key"));
        TrustedKey by = keys.isEmpty() ? key : keys.get(line.text("by"));
        mustBeLead(line, by);
        if (keys.containsKey(key.id()) && keys.get(key.id()).isRevoked()) {
            throw new Misfit("it trusts a key again that was revoked");
        }
        if (keys.containsKey(key.id()) && !keys.get(key.id()).name().equals(key.name())) {
            throw new Misfit("it gives the key of " + keys.get(key.id()).name() + " to " + key.name());
        }
        keys.put(key.id(), key);
    }

    private void revoked(LedgerLine line) {
        mustBeLead(line, keys.get(line.text("by")));
        TrustedKey key = keys.get(line.text("keyId"));
        if (key == null || key.isRevoked()) {
            throw new Misfit("it revokes a key that was not trusted");
        }
        keys.put(key.id(), key.revoked(line.at(), line.text("reason")));
    }

    private void withdrawn(LedgerLine line) {
        TrustedKey by = keys.get(line.text("by"));
        mustBeLead(line, by, "something was withdrawn by somebody who is no lead");
        if (!by.name().equals(line.text("name"))) {
            throw new Misfit("it was withdrawn by " + by.name() + ", and names " + line.text("name"));
        }
        withdrawals.add(Withdrawal.of(line));
    }

    private void kept(LedgerLine line) {
        TrustedKey by = keys.get(line.text("by"));
        if (by == null || !by.role().mayPackRules() || by.isRevoked() || !by.validAt(line.at()) || !by.name().equals(line.text("name"))) {
            throw new Misfit("a rule book was kept with a key that may not sign rule books");
        }
        mustBeSealed(line, by);
        packs.put(line.text("pack"), line.text("ruleBook"));
    }

    private void mustBeLead(LedgerLine line, TrustedKey by) {
        mustBeLead(line, by, "a key was changed by somebody who is no lead");
    }

    private void mustBeLead(LedgerLine line, TrustedKey by, String otherwise) {
        if (by == null || !by.id().equals(line.text("by")) || by.role() != Role.LEAD || by.isRevoked() || !by.validAt(line.at())) {
            throw new Misfit(otherwise);
        }
        mustBeSealed(line, by);
    }

    private static void mustBeSealed(LedgerLine line, TrustedKey by) {
        ObjectNode said = line.said().deepCopy();
        said.remove("seal");
        Jws jws = Jws.parse(Jws.attached(line.text("seal"), Canonical.bytes(said)).getBytes(StandardCharsets.ISO_8859_1));
        if (jws == null || !jws.typ().equals(SEAL) || !jws.keyId().equals(by.id()) || !jws.isSignedBy(by.x())) {
            throw new Misfit("it does not carry the signature of " + by.name() + ", who should have written it");
        }
    }

    private static TrustedKey key(JsonNode node) {
        String x = node.path("x").asText();
        if (!PublicKeys.isOne(x) || !PublicKeys.thumbprint(x).equals(node.path("kid").asText())) {
            throw new Misfit("it holds no key");
        }
        return new TrustedKey(node.path("kid").asText(), x, node.path("name").asText(), Role.valueOf(node.path("role").asText().toUpperCase(Locale.ROOT)),
                Instant.parse(node.path("validFrom").asText()), Instant.parse(node.path("validUntil").asText()), null, null);
    }

    private void signed(LedgerLine line) {
        JsonNode signer = line.said().path("signer");
        TrustedKey key = keys.get(signer.path("keyId").asText());
        if (key == null || !key.role().maySignReleases() || key.isRevoked() || !key.validAt(line.at()) || !key.name().equals(signer.path("name").asText())) {
            throw new Misfit("it was signed with a key that was not trusted then");
        }
        mustBeSealed(line, key);
        saw(line);
        String record = line.text("record");
        records.put(record, new Seen(seen(record).items(), line.at(), line.text("frame"), line.text("engine")));
        List<String> points = new ArrayList<>();
        line.said().path("criticalPoints").forEach(point -> points.add(point.asText()));
        signings.add(new Signing(line.number(), line.text("signOff"), record, line.text("frame"), line.text("engine"), line.text("gate"), line.at(), Instant.parse(line.text("holdsUntil")),
                key.name(), key.id(), points, Map.copyOf(seen(record).items()), line.text("machine"), line.text("recordDigest"), signer.path("role").asText(), RestsOn.of(line)));
    }

    private void refused(LedgerLine line) {
        saw(line);
        // Lines of earlier programs do not say which machine it was.
        if (line.said().has("frame")) {
            refusals.add(new Refusal(line.text("record"), line.text("frame"), line.text("engine"), line.text("gate"), line.at(), line.text("why")));
        }
    }

    private void saw(LedgerLine line) {
        if (line.said().has("saw")) {
            Seen before = records.getOrDefault(line.text("record"), new Seen(Map.of(), null, null, null));
            Map<String, String> items = new HashMap<>(before.items());
            line.said().get("saw").fields().forEachRemaining(item -> items.put(item.getKey(), item.getValue().asText()));
            records.put(line.text("record"), new Seen(items, before.lastSigned(), before.frame(), before.engine()));
        }
    }

    /** Every key that was ever trusted, in that order. */
    TrustList trust() {
        return new TrustList(keys.values());
    }

    Seen seen(String record) {
        return records.getOrDefault(record, new Seen(Map.of(), null, null, null));
    }

    List<Refusal> refusals() {
        return List.copyOf(refusals);
    }

    List<Signing> signings() {
        return List.copyOf(signings);
    }

    Optional<Signing> signing(String digest) {
        return signings.stream().filter(s -> s.digest().equals(digest)).findFirst();
    }

    /** Of each rule book that is kept: by the digest of its file, that of the rule book. */
    Map<String, String> packs() {
        return Map.copyOf(packs);
    }

    /** What was withdrawn, oldest first. */
    List<Withdrawal> withdrawals() {
        return List.copyOf(withdrawals);
    }

    /** Why a sign-off was voided, by the digest of its file. */
    Optional<String> voided(String digest) {
        return Optional.ofNullable(voided.get(digest));
    }
}
