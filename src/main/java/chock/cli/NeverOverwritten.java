package chock.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/** Files that somebody would miss: what Chock reads, and what cannot be made again. Told by what stands in them, not by their names. */
final class NeverOverwritten {
    private static final int BEGINNING = 4096;
    private static final Map<Pattern, String> KINDS = new LinkedHashMap<>();

    static {
        KINDS.put(Pattern.compile("-----BEGIN [A-Z0-9 ]*KEY-----"), "a key");
        KINDS.put(Pattern.compile("\\s*\\{[^{}]*\"kty\""), "a key");
        KINDS.put(Pattern.compile("[0-9a-f]{64} \\{"), "a ledger");
        KINDS.put(Pattern.compile("[A-Za-z0-9_-]{20,}\\.[A-Za-z0-9_-]+"), "a signed file");
        KINDS.put(Pattern.compile("(?m)(?>.*\\R)*?\\s*\\{?\\s*\"?chock\"?\\s*:\\s*\"?([a-z-]+)/"), "a file of the workshop");
        KINDS.put(Pattern.compile("SQLite format 3"), "a store");
    }

    private NeverOverwritten() { }

    /** What it is, in words; empty when it is none of these. */
    static Optional<String> of(Path file) {
        String beginning;
        try (InputStream in = Files.newInputStream(file)) {
            beginning = new String(in.readNBytes(BEGINNING), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return Optional.of("a file that cannot be read");
        }
        return KINDS.entrySet().stream().filter(kind -> kind.getKey().matcher(beginning).lookingAt()).map(Map.Entry::getValue).findFirst();
    }
}
