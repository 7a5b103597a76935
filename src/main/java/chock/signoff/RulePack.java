package chock.signoff;

import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.RuleFiles;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A rule book in one file: its files as text, and those of a house where one was in force, signed by a rule author or a lead.
 * The rules in it are code, so nothing in it is read before its signature matches a trusted key.
 */
public final class RulePack {
    /** The largest one that is read, in bytes; that of the shipped rule book has a twentieth of it. */
    static final int LARGEST = 20_000_000;

    private static final String FORM = "rule-book/1";
    private static final String TYP = "chock-rule-book+json";
    private static final JsonMapper JSON = JsonMapper.builder().enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES).enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS).build();

    private final String file;
    private final Said said;
    private final String signedBy;

    private RulePack(String file, Said said, String signedBy) {
        this.file = file;
        this.said = said;
        this.signedBy = signedBy;
    }

    /**
     * What is signed.
     *
     * @param madeBy the chock that packed it, such as {@code chock 0.2.0}
     * @param version of the rule book
     * @param digest of the rule book with the house in force, as a sign-off names it
     * @param files text by name
     * @param house null without one
     */
    private record Said(String chock, String madeBy, String version, String digest, TreeMap<String, String> files, OfHouse house) { }

    /** The rules of a house. */
    private record OfHouse(String name, TreeMap<String, String> files) { }

    /**
     * A rule book and the files it was made of.
     *
     * @param files those of the rule book without the house
     */
    public record Source(RuleFiles files, RuleBook book) {
        /** The same with a house in force, or with none where it is null. */
        public Source with(HouseBook house) {
            return house == null ? this : new Source(files, book.with(house));
        }
    }

    /**
     * Packs a rule book.
     *
     * @throws IllegalArgumentException when it is changed for trial, so that no files say what it says
     */
    public static byte[] pack(Source source, SigningKey key) {
        RuleBook book = source.book();
        if (!book.asleep().isEmpty() || !book.digest().startsWith("sha256:")) {
            throw new IllegalArgumentException("this rule book is changed for trial (" + book.digest() + ")");
        }
        OfHouse house = book.house().map(one -> new OfHouse(one.name(), new TreeMap<>(one.files()))).orElse(null);
        Said said = new Said(FORM, Program.name(), book.version(), book.digest(), new TreeMap<>(source.files().texts()), house);
        return Jws.sign(Canonical.bytes(JSON.valueToTree(said)), TYP, key).getBytes(StandardCharsets.US_ASCII);
    }

    /** Which keys are trusted, and when. */
    interface Trusted {
        /** @return the owner of the key it is signed with, or empty when that key is not trusted */
        Optional<TrustedKey> signedBy(String keyId, String digest);
    }

    /**
     * Reads a rule book signed by a rule author or a lead whose key is valid now.
     *
     * @param file its name, for messages
     * @throws UnusableInput when it is not a packed rule book, or not signed with a trusted key; its contents are not read then
     */
    public static RulePack open(String file, byte[] bytes, TrustList trust, Instant now) {
        return open(file, bytes, (keyId, digest) -> trust.key(keyId).filter(key -> key.validAt(now)));
    }

    static RulePack open(String file, byte[] bytes, Trusted trusted) {
        Jws jws = bytes.length > LARGEST ? null : Jws.parse(new String(bytes, StandardCharsets.ISO_8859_1).strip().getBytes(StandardCharsets.ISO_8859_1));
        if (jws == null || !jws.typ().equals(TYP)) {
            throw UnusableInput.of(file, "not a packed rule book, or altered since it was signed", "Name a file that 'chock rules pack' made");
        }
        TrustedKey key = trusted.signedBy(jws.keyId(), Canonical.digest(bytes)).filter(one -> !one.isRevoked()).orElseThrow(() -> UnusableInput.of(file,
                "signed with the key " + jws.keyId() + ", which is not trusted now; contents not read", "A lead trusts the key of a rule author with 'chock keys trust --role author'"));
        if (!key.role().mayPackRules()) {
            throw UnusableInput.of(file, "signed by " + key.name() + " (" + key.role().word() + "); contents not read", "Only a rule author or a lead may sign a rule book, because its rules are code");
        }
        if (!jws.isSignedBy(key.x())) {
            throw UnusableInput.of(file, "invalid signature: altered since " + key.name() + " signed it, or signed by somebody else; contents not read", "Get the file again from its author");
        }
        return new RulePack(file, read(file, jws.payload()), key.name());
    }

    private static Said read(String file, byte[] payload) {
        try {
            Said said = JSON.readValue(payload, Said.class);
            boolean whole = said != null && FORM.equals(said.chock) && said.madeBy != null && said.version != null && said.digest != null && said.files != null && !said.files.containsValue(null)
                    && (said.house == null || said.house.name() != null && said.house.files() != null && !said.house.files().containsValue(null));
            if (whole) {
                return said;
            }
        } catch (IOException e) {
            // Another version made it; the message below says so.
        }
        throw UnusableInput.of(file, "not in the form " + FORM + ", the only one this version of chock reads", "Use the version it was made with, or a newer one");
    }

    /** The chock that packed it. */
    public String madeBy() {
        return said.madeBy;
    }

    /** Whose key it is packed with. */
    public String signedBy() {
        return signedBy;
    }

    /** Digest of the rule book, with the house where it has one. */
    public String digest() {
        return said.digest;
    }

    /** In words. */
    public String words() {
        return "rule book " + said.version + " (" + said.digest + "), signed by " + signedBy + " with " + said.madeBy;
    }

    /**
     * The rule book. Rules that are not inside the program are compiled, which takes up to half a minute.
     *
     * @throws UnusableInput when this chock cannot use it, or it does not have the digest it says
     */
    public RuleBook load() {
        RuleBook book;
        try {
            book = new RuleFiles(said.files).load();
            if (said.house != null) {
                SortedMap<String, String> files = said.house.files();
                book = book.with(HouseBook.of(said.house.name(), "house", files));
            }
        } catch (UnusableInput e) {
            throw new UnusableInput(e.faults().stream().map(fault -> fault.in(file + ", " + fault.file())).toList());
        }
        if (!book.version().equals(said.version) || !book.digest().equals(said.digest)) {
            throw UnusableInput.of(file, "it claims rule book " + said.version + " with the digest " + said.digest + ", but its files give " + book.version() + " with " + book.digest(), "Get the file again from its author");
        }
        return book;
    }

    /** What a line of the ledger says of it. */
    ObjectNode line(byte[] pack, TrustedKey by) {
        return JsonNodeFactory.instance.objectNode().put("by", by.id()).put("name", by.name()).put("pack", Canonical.digest(pack)).put("ruleBook", said.digest).put("version", said.version).put("madeBy", said.madeBy);
    }
}
