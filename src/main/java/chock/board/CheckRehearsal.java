package chock.board;

import chock.record.UnusableInput;
import chock.rehearse.Rehearsal;
import chock.rehearse.Rehearsed;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The scenarios of a check run against the rule book in force, one check at a time. What came of it is kept until the board
 * stops; no verdict is changed by it.
 */
final class CheckRehearsal implements AutoCloseable {
    /** Scenarios run at most in one go, rows of outlines counted; a check inside the program has some fifty. */
    static final int MOST = 400;

    private final Judging judging;
    private final Clock clock;
    private final Beside beside = new Beside("rehearsing");
    private final Map<String, Last> last = new ConcurrentHashMap<>();
    private String check;
    private CompletableFuture<Last> running;

    CheckRehearsal(Judging judging, Clock clock) {
        this.judging = judging;
        this.clock = clock;
    }

    /**
     * What came of the last rehearsal of a check.
     *
     * @param at when it began
     * @param digest of the rule book it was held with
     * @param shown every scenario that ran
     */
    record Last(Instant at, String digest, List<Rehearsed.Shown> shown) {
        long holding() {
            return shown.stream().filter(Rehearsed.Shown::holds).count();
        }

        boolean holds() {
            return !shown.isEmpty() && holding() == shown.size();
        }

        /** Whether there may be more than were run. */
        boolean cut() {
            return shown.size() >= MOST;
        }
    }

    /** That of this check, where there was one since the board was started. */
    Optional<Last> last(String id) {
        return Optional.ofNullable(last.get(id));
    }

    /** Whether this check is being rehearsed at this moment. */
    synchronized boolean runs(String id) {
        return running != null && !running.isDone() && id.equals(check);
    }

    /**
     * Rehearses a check, beside whatever else the board does; whoever asks while it runs waits for the same.
     *
     * @param id of a check of the rule book in force
     * @param wait how long to wait for it
     * @return what came of it, or nothing while it still runs
     * @throws UnusableInput when the scenarios of the house cannot be read
     * @throws Refusal when another check is being rehearsed
     */
    Optional<Last> ask(String id, Duration wait) {
        return Beside.within(started(id), wait);
    }

    private synchronized CompletableFuture<Last> started(String id) {
        if (running != null && !running.isDone()) {
            if (id.equals(check)) {
                return running;
            }
            throw new Refusal(429, "Another check is being rehearsed at this moment. Wait a little, then ask again.", 5);
        }
        Instant now = clock.instant();
        check = id;
        running = beside.begin(() -> {
            Last done = new Last(now, judging.book().digest(), Rehearsal.ofCheck(judging.book(), id, MOST).shown());
            last.put(id, done);
            return done;
        });
        return running;
    }

    @Override
    public void close() {
        beside.close();
    }
}
