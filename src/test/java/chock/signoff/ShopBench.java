package chock.signoff;

import chock.record.Gate;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;

/** A workshop in a folder of its own: Nora Pell leads, Ida Marrow inspects, and both keys are trusted. */
public final class ShopBench {
    public static final String PASSPHRASE = "three words and a number 7";
    public static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    static final LocalDate LAST = LocalDate.of(2028, 12, 31);
    static final RuleBook BOOK = RuleBook.shipped();
    // Few rounds, so that a test does not spend its time on one passphrase.
    private static final int ROUNDS = 1000;

    public final Path folder;
    public final Path record;
    final SigningKey lead = SigningKey.create();
    final SigningKey ida = SigningKey.create();
    private Instant now = NOON.minusSeconds(3600);

    /** Sets it up, with the released two-stroke of the examples as its record. */
    public ShopBench(Path folder) throws IOException {
        this.folder = folder;
        Files.writeString(file(), Shop.SKELETON);
        record = Files.copy(Path.of("docs/examples/lark-released.yaml"), folder.resolve("lark.yaml"));
        Signers.trust(shop(), keep("nora", lead), "Nora Pell", Role.LEAD, null, LAST, lead, clock());
        Signers.trust(shop(), keep("ida", ida), "Ida Marrow", Role.INSPECTOR, null, LAST, lead, clock());
        now = NOON;
    }

    /** Writes a key under a name, and gives its public half. */
    Path keep(String name, SigningKey key) {
        return KeyFile.write(folder.resolve(name + ".pem"), key, PASSPHRASE.toCharArray(), ROUNDS);
    }

    /** A new key under a name; gives its public half. */
    public Path keep(String name) {
        return keep(name, SigningKey.create());
    }

    /** Writes the refusal of a record into the ledger. */
    void refuse(String refused) {
        try (OpenLedger ledger = OpenLedger.at(ledger())) {
            ledger.append(ledger.now(clock().instant()), "refused", JsonNodeFactory.instance.objectNode().put("record", refused).put("why", "it is blocked"), null);
        }
    }

    public Path file() {
        return folder.resolve("shop.yaml");
    }

    public Shop shop() {
        return Shop.of(file());
    }

    Path ledger() {
        return folder.resolve("ledger.txt");
    }

    public void at(Instant moment) {
        now = moment;
    }

    Clock clock() {
        return Clock.fixed(now, ZoneOffset.UTC);
    }

    String text() throws IOException {
        return Files.readString(record);
    }

    public void write(String text) throws IOException {
        Files.writeString(record, text);
    }

    /** Adds one entry, in the form of a record file without its dash. */
    void add(String entry) throws IOException {
        write(text().stripTrailing() + "\n  - {" + entry + "}\n");
    }

    SignOffs.Signed sign(SigningKey key, Gate gate) throws IOException {
        return SignOffs.sign(shop(), key, BOOK, record, Files.readAllBytes(record), gate, null, clock());
    }

    public SignOffs.Signed sign() throws IOException {
        return sign(ida, Gate.ROAD_TEST);
    }

    Verification verify(Path signOff, boolean withRecord, Instant asOf) throws IOException {
        return verify(Files.readAllBytes(signOff), withRecord ? Files.readAllBytes(record) : null, asOf);
    }

    public Verification verify(byte[] signOff, byte[] written, Instant asOf) {
        return new Verifier(TrustList.of(shop().trust()), shop(), BOOK, asOf)
                .verify(new Verifier.Source("sign-off", signOff), written == null ? null : new Verifier.Source("record", written));
    }

    static byte[] utf8(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
