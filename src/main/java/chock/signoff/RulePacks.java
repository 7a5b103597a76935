package chock.signoff;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.InstantSource;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * The rule books a workshop keeps, so that a sign-off can be judged again by the very one it rests on when the program has
 * another. Each lies in a file named by its digest, and stands in the ledger with the digest of that file.
 */
public final class RulePacks {
    static final String KIND = "rule-book-kept";

    private static final String FOLDER = "rule-books";

    private RulePacks() { }

    /** Where they lie. */
    public static Path folder(Shop shop) {
        return Disk.folder(shop.file()).resolve(FOLDER);
    }

    private static Path file(Shop shop, String digest) {
        return folder(shop).resolve(digest.replace("sha256:", "") + ".rules");
    }

    /** True when the rule book of this digest is kept, and its file is as it was. */
    public static boolean isKept(Shop shop, String digest) {
        return isKept(shop, digest, Ledgers.history(shop.ledger()));
    }

    private static boolean isKept(Shop shop, String digest, History history) {
        return Withdrawal.DIGEST.matcher(digest).matches() && Files.isRegularFile(file(shop, digest)) && digest.equals(history.packs().get(Canonical.digest(Disk.read(file(shop, digest)))));
    }

    /**
     * Keeps a rule book. Nothing is done when it is kept already.
     *
     * @param key of a lead or a rule author
     * @return its file
     * @throws NotSigned when this key may not
     * @throws UnusableInput when a file cannot be read or written
     */
    public static Path keep(Shop shop, RulePack.Source source, SigningKey key, InstantSource clock) {
        return keep(shop, source.book().digest(), key, clock, () -> RulePack.pack(source, key));
    }

    /**
     * Keeps a rule book that somebody else packed, signed with a key this workshop trusts.
     *
     * @param pack the file
     * @param key of a lead or a rule author, who answers for it
     * @return its file here
     * @throws NotSigned when this key may not
     * @throws UnusableInput when it is not a packed rule book, not signed with a trusted key, or this version of chock cannot use it
     */
    public static Path keep(Shop shop, Path pack, SigningKey key, InstantSource clock) {
        byte[] bytes = Disk.read(pack);
        RulePack opened = RulePack.open(pack.toString(), bytes, Ledgers.history(shop.ledger()).trust(), clock.instant());
        opened.load();
        return keep(shop, opened.digest(), key, clock, () -> bytes);
    }

    private static Path keep(Shop shop, String digest, SigningKey key, InstantSource clock, Supplier<byte[]> pack) {
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            TrustedKey by = mayKeep(history, key, now);
            Path file = file(shop, digest);
            if (isKept(shop, digest, history)) {
                return file;
            }
            byte[] bytes = pack.get();
            RulePack opened = RulePack.open(file.toString(), bytes, history.trust(), now);
            try {
                Files.createDirectories(folder(shop));
            } catch (IOException e) {
                throw Disk.cannotWrite(folder(shop), e);
            }
            // The file first: a line for a file that is not there would promise too much, a file without a line is not read.
            Disk.write(file, bytes, false);
            ledger.append(now, KIND, opened.line(bytes, by), key);
            return file;
        }
    }

    private static TrustedKey mayKeep(History history, SigningKey key, Instant now) {
        TrustedKey by = history.trust().key(key.id()).orElseThrow(() -> new NotSigned("this key (" + key.id() + ") is not on the trust list; a lead or a rule author keeps rule books"));
        Signers.mustBeValid(by, now);
        if (!by.role().mayPackRules()) {
            throw new NotSigned(by.name() + " is " + by.role().word() + "; a lead or a rule author keeps rule books");
        }
        return by;
    }

    /**
     * Reads a packed rule book: one that this workshop keeps, or one signed with a key that is valid now.
     *
     * @param file its name, for messages
     * @throws UnusableInput when it is neither; its contents are not read then
     */
    public static RulePack open(Shop shop, String file, byte[] bytes, Instant now) {
        History history = Ledgers.history(shop.ledger());
        return RulePack.open(file, bytes, (keyId, pack) -> history.trust().key(keyId).filter(key -> history.packs().containsKey(pack) || key.validAt(now)));
    }

    /** True when this key may keep rule books now. */
    public static boolean mayKeep(Shop shop, SigningKey key, InstantSource clock) {
        return Ledgers.history(shop.ledger()).trust().key(key.id()).filter(by -> by.role().mayPackRules() && !by.isRevoked() && by.validAt(clock.instant())).isPresent();
    }

    /**
     * A rule book that is kept, opened and not loaded.
     *
     * @return empty when it is not kept
     * @throws UnusableInput when its file was changed, or its key is no longer trusted
     */
    static Optional<RulePack> find(Shop shop, History history, String digest) {
        if (!Withdrawal.DIGEST.matcher(digest).matches() || !history.packs().containsValue(digest) || !Files.isRegularFile(file(shop, digest))) {
            return Optional.empty();
        }
        Path file = file(shop, digest);
        return Optional.of(RulePack.open(file.toString(), Disk.read(file), (keyId, pack) -> history.trust().key(keyId).filter(key -> digest.equals(history.packs().get(pack)))));
    }
}
