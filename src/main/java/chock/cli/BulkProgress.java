package chock.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** How far a stream is read, on standard error when somebody watches it there. */
final class BulkProgress implements AutoCloseable {
    private static final int WIDTH = 78;
    private final ProgressBar bar;

    private BulkProgress(ProgressBar bar) {
        this.bar = bar;
    }

    /** A bar over the bytes of a file, or one without an end for standard input; none where nobody watches. */
    static BulkProgress of(Bench bench, String file) {
        if (System.console() == null) {
            return new BulkProgress(null);
        }
        return new BulkProgress(new ProgressBarBuilder().setTaskName("judged").setInitialMax(size(file)).setUnit(" kB", 1000).setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis((int) Duration.ofMillis(500).toMillis()).setConsumer(new ConsoleProgressBarConsumer(bench.err(), WIDTH)).build());
    }

    private static long size(String file) {
        try {
            return file.equals("-") ? -1 : Files.size(Path.of(file));
        } catch (IOException e) {
            return -1;
        }
    }

    void dealt(long bytes) {
        if (bar != null) {
            bar.stepBy(bytes);
        }
    }

    @Override
    public void close() {
        if (bar != null) {
            bar.close();
        }
    }
}
