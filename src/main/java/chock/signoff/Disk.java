package chock.signoff;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** Files written so that they are whole or not there, and what to say when they cannot be. */
final class Disk {
    private static final int LARGEST = 64_000_000;

    private Disk() { }

    /** @throws UnusableInput when it cannot be read, or is larger than 64 MB */
    static byte[] read(Path file) {
        try {
            if (Files.isRegularFile(file) && Files.size(file) > LARGEST) {
                throw UnusableInput.of(file.toString(), "it is larger than 64 MB", "Name the right file");
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw UnusableInput.of(file.toString(), "there is no such file", "");
        } catch (IOException e) {
            throw UnusableInput.of(file.toString(), Files.isDirectory(file) ? "it is a folder" : "it cannot be read: " + why(e), "");
        }
    }

    /**
     * Writes a new file under a name beside its own, forced to the disk; {@link #arrive} gives it its own name.
     *
     * @param secret whether nobody but its owner may read it
     */
    static Path prepare(Path file, byte[] bytes, boolean secret) {
        Path part = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            boolean posix = Files.getFileStore(folder(file)).supportsFileAttributeView("posix");
            Set<StandardOpenOption> options = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try (FileChannel channel = secret && posix
                    ? FileChannel.open(part, options, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
                    : FileChannel.open(part, options)) {
                writeAll(channel, bytes);
            }
            return part;
        } catch (IOException e) {
            discard(part);
            throw cannotWrite(file, e);
        }
    }

    static void arrive(Path part, Path file) {
        try {
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            syncFolder(file);
        } catch (IOException e) {
            throw cannotWrite(file, e);
        }
    }

    static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // It is hidden, never taken for the file itself, and written over the next time.
        }
    }

    /** Replaces a file, or writes a new one: afterwards it is the old or the new, never half of it. */
    static void write(Path file, byte[] bytes, boolean secret) {
        arrive(prepare(file, bytes, secret), file);
    }

    static void writeAll(FileChannel channel, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            channel.write(buffer);
        }
        channel.force(true);
    }

    /** Makes a new name in a folder last through a power cut, where the system can. */
    static void syncFolder(Path file) {
        try (FileChannel folder = FileChannel.open(folder(file), StandardOpenOption.READ)) {
            folder.force(true);
        } catch (IOException e) {
            // Some systems do not open folders; there the name is made to last by the system itself.
        }
    }

    static Path folder(Path file) {
        return file.toAbsolutePath().getParent();
    }

    static UnusableInput cannotWrite(Path file, IOException e) {
        return UnusableInput.of(file.toString(), "it cannot be written: " + why(e), "Nothing was changed; make room or name another place, and do it again");
    }

    private static String why(IOException e) {
        String reason = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : e.getMessage();
        if (e instanceof AccessDeniedException) {
            return "this user may not";
        }
        if (e instanceof NoSuchFileException) {
            return "its folder is not there";
        }
        if (e instanceof FileAlreadyExistsException) {
            return "a file of that name is there";
        }
        return reason == null ? "the disk refuses" : switch (reason) {
            case "No space left on device" -> "the disk is full";
            case "File too large", "Disk quota exceeded" -> "this user may write no more here";
            case "Read-only file system" -> "the disk is read-only";
            default -> reason;
        };
    }
}
