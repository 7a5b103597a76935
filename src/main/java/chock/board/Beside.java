package chock.board;

import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;

/** Work that takes much of what the board has, done beside whatever else it does, one piece after the other. */
final class Beside implements AutoCloseable {
    private final ExecutorService worker;

    Beside(String name) {
        worker = Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    <T> CompletableFuture<T> begin(Supplier<T> work) {
        return CompletableFuture.supplyAsync(work, worker);
    }

    /**
     * What came of it, or nothing while it still runs.
     *
     * @throws RuntimeException what the work itself threw
     */
    static <T> Optional<T> within(CompletableFuture<T> work, Duration wait) {
        try {
            return Optional.of(work.get(wait.toMillis(), TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        } catch (ExecutionException e) {
            throw e.getCause() instanceof RuntimeException own ? own : new IllegalStateException(e.getCause());
        }
    }

    @Override
    public void close() {
        worker.shutdownNow();
    }
}
