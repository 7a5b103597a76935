package chock.signoff;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;

/** Reads the ledger, holds it against its own chain, and mends what a crash left. */
public final class Ledgers {
    private Ledgers() { }

    /**
     * What was found.
     *
     * @param lines how many lines are good
     * @param last digest of the last of them, or null
     * @param fault the first thing wrong, or null
     */
    public record Checked(int lines, String last, String fault) { }

    /**
     * What was mended, each in a sentence; empty when nothing was wrong.
     */
    public record Mended(List<String> says) { }

    /**
     * Every line.
     *
     * @throws UnusableInput naming the first bad line
     */
    public static List<LedgerLine> lines(Path file) {
        LedgerText text = text(file);
        OpenLedger.refuseBad(file, text, false);
        return text.lines();
    }

    static History history(Path file) {
        return History.of(file, lines(file));
    }

    private static LedgerText text(Path file) {
        if (!Files.exists(file)) {
            throw UnusableInput.of(file.toString(), "there is no ledger yet", "The first 'chock keys trust' begins it");
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ); FileLock lock = shared(channel)) {
            return LedgerText.parse(Channels.newInputStream(channel).readAllBytes());
        } catch (IOException e) {
            throw UnusableInput.of(file.toString(), Files.isDirectory(file) ? "it is a folder" : "it cannot be read", "");
        }
    }

    // So that nobody's half-written line is taken for a torn one. Where the system gives no lock, reading goes on without.
    private static FileLock shared(FileChannel channel) {
        try {
            return channel.lock(0, Long.MAX_VALUE, true);
        } catch (IOException | OverlappingFileLockException e) {
            return null;
        }
    }

    /**
     * Writes down that sign-offs are void, those that are so already left out.
     *
     * @param record number of the record they are of
     * @param why the reason, by the digest of the sign-off file
     * @throws NotSigned when the clock is behind the ledger
     * @throws UnusableInput when the ledger cannot be written, or is not sound
     */
    public static void voided(Shop shop, String record, Map<String, String> why, InstantSource clock) {
        try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
            History history = History.of(shop.ledger(), ledger.lines());
            Instant now = ledger.now(clock.instant());
            why.forEach((digest, words) -> {
                if (history.signing(digest).isPresent() && history.voided(digest).isEmpty()) {
                    ledger.append(now, "voided", Voids.line(digest, record, words), null);
                }
            });
        }
    }

    /** Looks at every line, and at the trust list written from them. */
    public static Checked verify(Shop shop) {
        LedgerText text = text(shop.ledger());
        String last = text.lines().isEmpty() ? null : text.lines().get(text.lines().size() - 1).digest();
        try {
            OpenLedger.refuseBad(shop.ledger(), text, false);
            byte[] list = History.of(shop.ledger(), text.lines()).trust().bytes();
            String fault = Files.exists(shop.trust()) && Arrays.equals(Disk.read(shop.trust()), list) ? null
                    : shop.trust() + ": the trust list is not what the ledger says. 'chock ledger recover' writes it anew";
            return new Checked(text.lines().size(), last, fault);
        } catch (UnusableInput e) {
            return new Checked(text.lines().size(), last, e.getMessage());
        }
    }

    /**
     * Mends a torn last line and writes the trust list anew. A line that lacks only its end is completed; what is left of any
     * other is kept in a file beside the ledger.
     *
     * @throws UnusableInput when a line was altered: that is not a crash, and is not mended
     */
    public static Mended recover(Shop shop, InstantSource clock) {
        LedgerText text = text(shop.ledger());
        OpenLedger.refuseBad(shop.ledger(), text, true);
        try (OpenLedger ledger = OpenLedger.mending(shop.ledger())) {
            Instant now = ledger.now(clock.instant());
            List<String> says = new ArrayList<>();
            byte[] torn = ledger.torn();
            if (torn.length > 0) {
                says.add(ledger.complete() ? "The last line, " + ledger.lines().size() + ", was whole but for its end, and is completed."
                        : putAside(ledger, shop.ledger(), torn, now));
            }
            if (Signers.publish(shop, ledger)) {
                says.add("The trust list " + shop.trust() + " was not what the ledger says, and is written anew.");
            }
            return new Mended(List.copyOf(says));
        }
    }

    private static String putAside(OpenLedger ledger, Path file, byte[] torn, Instant now) {
        Path kept = file.resolveSibling(file.getFileName() + ".torn-" + now.toString().replaceAll("[-:]", ""));
        Disk.write(kept, torn, false);
        ledger.truncate();
        ledger.append(now, "recovered", JsonNodeFactory.instance.objectNode().put("bytes", torn.length).put("digest", Canonical.digest(torn)).put("kept", kept.getFileName().toString()), null);
        return "The last line was torn. Whether somebody was told that it is written cannot be seen from it. Its " + torn.length + " bytes are kept in " + kept + ", and line " + ledger.lines().size() + " says so.";
    }
}
