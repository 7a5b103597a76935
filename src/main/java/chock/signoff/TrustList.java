package chock.signoff;

import chock.record.Fault;
import chock.record.UnusableInput;
import chock.rulebook.Sheet;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Whose keys are believed: a JWK Set (RFC 7517) that says of each key whose it is and for how long. */
public final class TrustList {
    private static final String FORM = "trust/1";
    /** The same, and may name rule authors besides. */
    private static final String WITH_AUTHORS = "trust/2";

    private final Map<String, TrustedKey> keys;

    TrustList(Collection<TrustedKey> keys) {
        this.keys = new LinkedHashMap<>();
        keys.forEach(key -> this.keys.put(key.id(), key));
    }

    /** In the order they were first trusted. */
    public List<TrustedKey> keys() {
        return List.copyOf(keys.values());
    }

    public Optional<TrustedKey> key(String id) {
        return Optional.ofNullable(keys.get(id));
    }

    /** @throws UnusableInput with every fault, each with its line */
    public static TrustList of(Path file) {
        return read(file.toString(), Disk.read(file));
    }

    /**
     * @param file its name, for messages
     * @throws UnusableInput with every fault, each with its line
     */
    public static TrustList read(String file, byte[] bytes) {
        List<Fault> faults = new ArrayList<>();
        List<TrustedKey> keys = new ArrayList<>();
        Sheet sheet = Sheet.one(file, new String(bytes, StandardCharsets.UTF_8), faults);
        if (sheet != null) {
            boolean authors = WITH_AUTHORS.equals(sheet.as("chock", TrustList::form));
            sheet.sheets("keys").forEach(one -> key(one).ifPresent(key -> {
                if (key.role() == Role.AUTHOR && !authors) {
                    one.fault("role", "the role author needs a list of the form " + WITH_AUTHORS, "Write chock: " + WITH_AUTHORS + ".");
                }
                if (keys.stream().anyMatch(k -> k.id().equals(key.id()))) {
                    one.fault("kid", "this key stands twice", "Keep one of them.");
                }
                keys.add(key);
            }));
            sheet.done();
        }
        if (!faults.isEmpty()) {
            throw new UnusableInput(faults);
        }
        return new TrustList(keys);
    }

    private static String form(String word) {
        if (!word.equals(FORM) && !word.equals(WITH_AUTHORS)) {
            throw new IllegalArgumentException("'" + word + "': write " + WITH_AUTHORS + " or " + FORM + ", the only forms this program reads");
        }
        return word;
    }

    static void form(Sheet sheet, String form) {
        sheet.as("chock", word -> {
            if (!word.equals(form)) {
                throw new IllegalArgumentException("'" + word + "': write " + form + ", the only form this program reads");
            }
            return word;
        });
    }

    private static Optional<TrustedKey> key(Sheet sheet) {
        String x = publicKey(sheet);
        String id = sheet.text("kid");
        String name = sheet.text("name");
        Role role = sheet.word("role", Role.class);
        Instant from = moment(sheet, "validFrom", sheet.text("validFrom"));
        Instant until = moment(sheet, "validUntil", sheet.text("validUntil"));
        Instant revoked = moment(sheet, "revokedAt", sheet.optional("revokedAt"));
        String reason = sheet.optional("reason");
        sheet.done();
        if (x != null && id != null && !id.equals(PublicKeys.thumbprint(x))) {
            sheet.fault("kid", "it is not the thumbprint of this key", "One of the two was changed: take the key from its owner again.");
            return Optional.empty();
        }
        if (x == null || id == null || name == null || role == null || from == null || until == null) {
            return Optional.empty();
        }
        return Optional.of(new TrustedKey(id, x, name, role, from, until, revoked, reason));
    }

    /** The public key of a JWK, checked to be one; null after a fault. */
    static String publicKey(Sheet sheet) {
        only(sheet, "kty", "OKP");
        only(sheet, "crv", "Ed25519");
        only(sheet, "use", "sig");
        only(sheet, "alg", "EdDSA");
        String x = sheet.text("x");
        if (x != null && !PublicKeys.isOne(x)) {
            sheet.fault("x", "this is not an Ed25519 public key", "Take the key from its owner again.");
            return null;
        }
        return x;
    }

    private static void only(Sheet sheet, String key, String word) {
        String written = sheet.text(key);
        if (written != null && !written.equals(word)) {
            sheet.fault(key, "'" + written + "': only " + word + " is known here", "Make a key with 'chock keys new'.");
        }
    }

    private static Instant moment(Sheet sheet, String key, String text) {
        try {
            return text == null ? null : Instant.parse(text);
        } catch (DateTimeException e) {
            sheet.fault(key, "'" + text + "' is not a moment", "Write it as 2026-11-25T12:00:00Z.");
            return null;
        }
    }

    /** The file, with a line end. */
    byte[] bytes() {
        boolean authors = keys.values().stream().anyMatch(key -> key.role() == Role.AUTHOR);
        ObjectNode node = new JsonMapper().createObjectNode().put("chock", authors ? WITH_AUTHORS : FORM);
        ArrayNode all = node.putArray("keys");
        keys.values().forEach(key -> all.add(key.jwk()));
        return Pretty.bytes(node);
    }
}
