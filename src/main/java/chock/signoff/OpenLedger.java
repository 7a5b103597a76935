package chock.signoff;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The ledger, held by this process alone until it is closed. What {@link #append} has returned from is on the disk.
 */
final class OpenLedger implements AutoCloseable {
    private static final int WAIT_MILLIS = 30_000;
    private static final int PAUSE_MILLIS = 10;

    private final Path file;
    private final FileChannel channel;
    private final FileLock lock;
    private final List<LedgerLine> lines;
    private final byte[] torn;
    private long length;

    private OpenLedger(Path file, FileChannel channel, FileLock lock, LedgerText text) {
        this.file = file;
        this.channel = channel;
        this.lock = lock;
        this.lines = new ArrayList<>(text.lines());
        this.torn = text.torn();
        this.length = text.sound();
    }

    /**
     * Opens it, or begins one, and waits up to 30 s for another process that holds it.
     *
     * @throws UnusableInput when it cannot be written, or is not sound
     */
    static OpenLedger at(Path file) {
        return opened(file, false);
    }

    /** The same, with a torn last line mended: completed where only its end was lost, else put aside. */
    static OpenLedger mending(Path file) {
        return opened(file, true);
    }

    private static OpenLedger opened(Path file, boolean mend) {
        FileChannel channel = null;
        try {
            boolean begun = !Files.exists(file);
            channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE);
            if (begun) {
                Disk.syncFolder(file);
            }
            FileLock lock = lock(file, channel);
            LedgerText text = LedgerText.parse(all(channel));
            refuseBad(file, text, mend);
            return new OpenLedger(file, channel, lock, text);
        } catch (IOException e) {
            close(channel);
            throw Disk.cannotWrite(file, e);
        } catch (RuntimeException e) {
            close(channel);
            throw e;
        }
    }

    static void refuseBad(Path file, LedgerText text, boolean mend) {
        if (text.bad() > 0) {
            throw UnusableInput.of(file + ":" + text.bad(), "the ledger is not sound: " + text.why(), "Nothing is written to it: find out who changed it, and put the kept copy back");
        }
        if (text.torn().length > 0 && !mend) {
            throw UnusableInput.of(file + ":" + (text.lines().size() + 1), "the last line is torn, as after a crash", "'chock ledger recover' keeps what is left of it and mends the ledger; hold the last line you know of against it");
        }
    }

    private static byte[] all(FileChannel channel) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
            continue;
        }
        return buffer.array();
    }

    private static FileLock lock(Path file, FileChannel channel) throws IOException {
        for (int waited = 0; waited < WAIT_MILLIS; waited += PAUSE_MILLIS) {
            try {
                FileLock lock = channel.tryLock();
                if (lock != null) {
                    return lock;
                }
            } catch (OverlappingFileLockException e) {
                // Another thread of this process holds it.
            }
            pause();
        }
        throw UnusableInput.of(file.toString(), "another chock has been writing to the ledger for half a minute", "Let it finish, and do it again");
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for the ledger", e);
        }
    }

    private static void close(FileChannel channel) {
        try {
            if (channel != null) {
                channel.close();
            }
        } catch (IOException e) {
            // Only the lock was wanted of it, and that goes with the process at the latest.
        }
    }

    List<LedgerLine> lines() {
        return List.copyOf(lines);
    }

    int nextNumber() {
        return lines.size() + 1;
    }

    String lastDigest() {
        return lines.isEmpty() ? LedgerLine.NOTHING_BEFORE : lines.get(lines.size() - 1).digest();
    }

    /**
     * This moment, in whole seconds.
     *
     * @throws NotSigned when the clock is behind the last line
     */
    Instant now(Instant clock) {
        Instant now = clock.truncatedTo(ChronoUnit.SECONDS);
        if (!lines.isEmpty() && now.isBefore(lines.get(lines.size() - 1).at())) {
            throw new NotSigned("the clock of this machine says " + now + ", but the last line of the ledger is of " + lines.get(lines.size() - 1).at()
                    + ". Set the clock right; nothing is written with a time that has passed");
        }
        return now;
    }

    /**
     * Writes a line and forces it to the disk. When that fails the file is cut back to what it was.
     *
     * @param key signs the line, or null
     */
    LedgerLine append(Instant at, String kind, ObjectNode says, SigningKey key) {
        ObjectNode said = JsonNodeFactory.instance.objectNode().put("line", nextNumber()).put("previous", lastDigest()).put("at", at.toString()).put("kind", kind);
        said.setAll(says);
        if (key != null) {
            said.put("seal", Jws.signDetached(Canonical.bytes(said), History.SEAL, key));
        }
        LedgerLine line = LedgerLine.of(said);
        write(line, line.bytes());
        return line;
    }

    private void write(LedgerLine line, byte[] bytes) {
        try {
            channel.position(length);
            Disk.writeAll(channel, bytes);
        } catch (IOException e) {
            cutBack();
            throw Disk.cannotWrite(file, e);
        }
        length += bytes.length;
        lines.add(line);
    }

    private void cutBack() {
        try {
            channel.truncate(length);
            channel.force(true);
        } catch (IOException e) {
            // What is left is a torn line, which the next one to open the ledger reports.
        }
    }

    /** What lies behind the last good line. */
    byte[] torn() {
        return torn;
    }

    /** Gives a torn line its end, when that is all it lacks. */
    boolean complete() {
        byte[] whole = Arrays.copyOf(torn, torn.length + 1);
        whole[torn.length] = '\n';
        LedgerLine line = LedgerText.read(whole);
        if (line == null || LedgerText.misplaced(line, lines.isEmpty() ? null : lines.get(lines.size() - 1)) != null) {
            return false;
        }
        write(line, whole);
        return true;
    }

    /** Takes away what lies behind the last good line. */
    void truncate() {
        cutBack();
    }

    @Override
    public void close() {
        try {
            lock.release();
        } catch (IOException e) {
            // It goes with the channel.
        }
        close(channel);
    }
}
