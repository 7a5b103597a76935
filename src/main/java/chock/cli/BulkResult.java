package chock.cli;

import chock.record.UnusableInput;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.OutputStream;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The file a stream of verdicts is written to, and where an interrupted run left off in it. */
final class BulkResult {
    private static final JsonMapper JSON = new JsonMapper();
    private static final int STRETCH = 8192;

    private final Path file;

    BulkResult(String file) {
        this.file = Path.of(file);
    }

    /**
     * Opens the file for a run from the beginning.
     *
     * @throws UnusableInput when it is there already, or cannot be written
     */
    OutputStream fresh() {
        if (Files.exists(file)) {
            throw UnusableInput.of(file.toString(), "it is there already", "Add --resume to go on where it ends, or name another file");
        }
        return open(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
    }

    OutputStream more() {
        return open(StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    private OutputStream open(StandardOpenOption... how) {
        try {
            return Files.newOutputStream(file, how);
        } catch (IOException e) {
            throw UnusableInput.of(file.toString(), "it cannot be written", "Name a file in a folder that is there");
        }
    }

    /**
     * Cuts off a last line that was only half written, and says which line of the stream the one before it was for.
     *
     * @return zero when nothing whole was written yet
     * @throws UnusableInput when the file is not one of these
     */
    long lastLine() {
        if (!Files.exists(file)) {
            return 0;
        }
        try (RandomAccessFile bytes = new RandomAccessFile(file.toFile(), "rw")) {
            long end = afterLastNewline(bytes, bytes.length());
            if (end == 0) {
                bytes.setLength(0);
                return 0;
            }
            long start = afterLastNewline(bytes, end - 1);
            byte[] line = new byte[Math.toIntExact(end - start)];
            bytes.seek(start);
            bytes.readFully(line);
            JsonNode number = JSON.readTree(new String(line, StandardCharsets.UTF_8)).path("line");
            if (!number.canConvertToLong() || number.longValue() < 1) {
                throw foreign();
            }
            bytes.setLength(end);
            return number.longValue();
        } catch (JsonProcessingException e) {
            throw foreign();
        } catch (IOException e) {
            throw UnusableInput.of(file.toString(), "it cannot be read and written", "Name the file of the run that was interrupted");
        }
    }

    private UnusableInput foreign() {
        return UnusableInput.of(file.toString(), "its last line is not a verdict of a stream, so nothing was changed in it", "Name the file of the run that was interrupted");
    }

    /** Where the line begins that ends before this place: just behind the newline before, or zero. */
    private static long afterLastNewline(RandomAccessFile bytes, long before) throws IOException {
        byte[] stretch = new byte[STRETCH];
        for (long end = before; end > 0; ) {
            int length = (int) Math.min(STRETCH, end);
            bytes.seek(end - length);
            bytes.readFully(stretch, 0, length);
            for (int i = length - 1; i >= 0; i--) {
                if (stretch[i] == '\n') {
                    return end - length + i + 1;
                }
            }
            end -= length;
        }
        return 0;
    }
}
