package chock.signoff;

import chock.record.UnusableInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The locked keys of a workshop: files in the folder {@code keys} beside its settings, each with its public half as
 * {@code FILE.jwk} beside it. Which is whose, only the trust list says.
 */
public final class KeyRack {
    private static final String OPEN = ".jwk";

    private final Path folder;

    private KeyRack(Path folder) {
        this.folder = folder;
    }

    public static KeyRack of(Shop shop) {
        return new KeyRack(Disk.folder(shop.file()).resolve("keys"));
    }

    /** Where they lie. */
    public Path folder() {
        return folder;
    }

    /** Whether the locked file of this key is there. */
    public boolean holds(String keyId) {
        return find(keyId).isPresent();
    }

    /**
     * Unlocks a key; empty when the passphrase does not open it.
     *
     * @throws NotSigned when its file is not there, or holds another key
     * @throws UnusableInput when its file is no key file
     */
    public Optional<SigningKey> unlock(String keyId, char[] passphrase) {
        Path file = find(keyId).orElseThrow(() -> new NotSigned("the file of the key " + keyId + " is not in the folder " + folder.getFileName() + " of this workshop"));
        Optional<SigningKey> key = KeyFile.opened(file, passphrase);
        if (key.isPresent() && !key.get().id().equals(keyId)) {
            throw new NotSigned("the file " + file.getFileName() + " holds another key than " + file.getFileName() + OPEN + " beside it says");
        }
        return key;
    }

    private Optional<Path> find(String keyId) {
        if (!Files.isDirectory(folder)) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().endsWith(OPEN) && is(file, keyId)).sorted(Comparator.naturalOrder())
                    .map(file -> file.resolveSibling(file.getFileName().toString().substring(0, file.getFileName().toString().length() - OPEN.length()))).filter(Files::isRegularFile).findFirst();
        } catch (IOException e) {
            throw new UncheckedIOException("the folder of the keys cannot be read", e);
        }
    }

    // A file that is no public key belongs to nobody, and keeps nobody else from signing.
    private static boolean is(Path file, String keyId) {
        try {
            return PublicKeys.thumbprint(Signers.jwk(file)).equals(keyId);
        } catch (UnusableInput e) {
            return false;
        }
    }
}
