package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.record.RecordReader;
import chock.rulebook.RuleBook;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;

/**
 * Reads job records for judgement.
 *
 * @param asOf the moment as the user gave it, or null for now
 */
record Records(Bench bench, RuleBook book, AsOf asOf) {
    /**
     * The record in a file, or on standard input for {@code -}.
     *
     * @throws chock.record.UnusableInput when it cannot be used
     */
    Judging.Read read(String file) {
        return read(opened(bench, file));
    }

    /** The record in these bytes, which bear this name in messages. */
    Judging.Read read(String name, byte[] bytes) {
        return read(RecordReader.open(name, bytes));
    }

    /** The record in a file that was opened before. */
    Judging.Read read(RecordReader.Opened file) {
        AsOf moment = asOf == null ? new AsOf(bench.clock().instant(), null) : asOf;
        return new Judging(book, moment, null).read(file);
    }

    /** The file, or standard input for {@code -}, as written. */
    static RecordReader.Opened opened(Bench bench, String file) {
        return RecordReader.open(Bench.name(file), bench.read(file));
    }

    /** The same, begun aside at once: opening a file and loading the rule book do not wait for each other. */
    static Supplier<RecordReader.Opened> opening(Bench bench, String file) {
        CompletableFuture<RecordReader.Opened> aside = CompletableFuture.supplyAsync(() -> opened(bench, file), Records::aside);
        return () -> {
            try {
                return aside.join();
            } catch (CompletionException e) {
                if (e.getCause() instanceof Error error) {
                    throw error;
                }
                throw e.getCause() instanceof RuntimeException own ? own : e;
            }
        };
    }

    private static void aside(Runnable work) {
        Thread thread = new Thread(work, "opening");
        thread.setDaemon(true);
        thread.start();
    }
}
