package chock.rulebook;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;

/** The file of a workshop's register. It is read again when it has changed, so that a board that runs for months knows what was found out today. */
public final class RegisterFile {
    private final Path file;
    private final Set<String> kinds;
    private byte[] bytes = {};
    private WorkshopRegister last;

    /** @param kinds kinds of instrument the rule book knows */
    RegisterFile(Path file, Set<String> kinds) {
        this.file = file;
        this.kinds = kinds;
    }

    /**
     * What stands in it now.
     *
     * @throws UnusableInput when it cannot be used
     */
    synchronized WorkshopRegister now() {
        byte[] read;
        try {
            read = Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw UnusableInput.of(file.toString(), "there is no such file", "Write the workshop's instruments into it, or write instruments: none into the settings");
        } catch (IOException e) {
            throw UnusableInput.of(file.toString(), "it cannot be read", "");
        }
        if (last == null || !Arrays.equals(read, bytes)) {
            last = WorkshopRegister.read(file.toString(), new String(read, StandardCharsets.UTF_8), kinds);
            bytes = read;
        }
        return last;
    }
}
