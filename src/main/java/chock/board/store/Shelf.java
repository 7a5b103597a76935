package chock.board.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jdbi.v3.core.Jdbi;

/** Where the bytes of photos lie, each under its digest: in a folder beside SQLite, in the database with PostgreSQL. */
final class Shelf {
    private static final Pattern DIGEST = Pattern.compile("[0-9a-f]{64}");

    private final Path folder;
    private final Jdbi jdbi;

    /** @param folder null when they lie in the database */
    Shelf(Path folder, Jdbi jdbi) {
        this.folder = folder;
        this.jdbi = jdbi;
    }

    /** Keeps them and answers their digest; when this returns they lie on the disk. */
    String put(byte[] bytes) {
        String digest = digest(bytes);
        if (folder == null) {
            jdbi.useTransaction(handle -> handle.createUpdate("INSERT INTO photo_bytes (digest, bytes) VALUES (:digest, :bytes) ON CONFLICT DO NOTHING").bind("digest", digest).bind("bytes", bytes).execute());
        } else if (!Files.exists(file(digest))) {
            write(file(digest), bytes);
        }
        return digest;
    }

    /** The bytes under this digest, or empty when they are not there or are no longer those that were put there. */
    Optional<byte[]> get(String digest) {
        if (!DIGEST.matcher(digest).matches()) {
            return Optional.empty();
        }
        Optional<byte[]> found = folder == null ? jdbi.withHandle(handle -> handle.createQuery("SELECT bytes FROM photo_bytes WHERE digest = :digest").bind("digest", digest).mapTo(byte[].class).findOne()) : read(file(digest));
        return found.filter(bytes -> digest(bytes).equals(digest));
    }

    /** Copies what is not there yet. */
    void copyTo(Path other) {
        if (folder == null || !Files.isDirectory(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.filter(file -> DIGEST.matcher(file.getFileName().toString()).matches()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Shelf there = new Shelf(other, null);
        all.forEach(file -> read(file).ifPresent(there::put));
    }

    private Path file(String digest) {
        return folder.resolve(digest.substring(0, 2)).resolve(digest);
    }

    private static Optional<byte[]> read(Path file) {
        try {
            return Optional.of(Files.readAllBytes(file));
        } catch (NoSuchFileException e) {
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    // Under another name first, so that a name always stands for the whole.
    private static void write(Path file, byte[] bytes) {
        try {
            Files.createDirectories(file.getParent());
            Path part = file.resolveSibling("part-" + UUID.randomUUID());
            try (FileChannel out = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                while (left.hasRemaining()) {
                    out.write(left);
                }
                out.force(true);
            }
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
