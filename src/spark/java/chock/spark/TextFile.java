package chock.spark;

import chock.record.UnusableInput;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Files that the command names and the driver reads itself, before Spark is started. */
final class TextFile {
    /** The largest one that is read, in bytes; a packed rule book that is larger is refused anyway. */
    private static final int LARGEST = 20_000_000;

    private TextFile() { }

    /** @throws UnusableInput when it cannot be the name of a file or folder */
    static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw UnusableInput.of(name, "this is not the name of a file", "");
        }
    }

    /**
     * Its bytes, each as one character.
     *
     * @param what it should be, for messages
     * @throws UnusableInput when it is not there, cannot be read, or is larger than 20 MB
     */
    static String read(String name, String what) {
        Path file = path(name);
        if (!Files.isRegularFile(file)) {
            throw UnusableInput.of(name, Files.isDirectory(file) ? "it is a folder" : "there is no such file", "Name the file of " + what);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw UnusableInput.of(name, "it is larger than 20 MB", "Name the file of " + what);
            }
            return new String(bytes, StandardCharsets.ISO_8859_1);
        } catch (IOException e) {
            throw UnusableInput.of(name, "it cannot be read", "Name the file of " + what);
        }
    }
}
