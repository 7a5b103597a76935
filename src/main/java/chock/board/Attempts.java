package chock.board;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** Counts what went wrong lately, so that passwords cannot be tried out. Forgets the longest unused beyond 10,000 keys. */
final class Attempts {
    private static final int MOST_KEYS = 10_000;

    private final int most;
    private final Duration within;
    private final Map<String, Deque<Instant>> failures = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
            return size() > MOST_KEYS;
        }
    };

    Attempts(int most, Duration within) {
        this.most = most;
        this.within = within;
    }

    /** How long this key has to wait; zero when it may try. */
    synchronized Duration wait(String key, Instant now) {
        Deque<Instant> times = failures.get(key);
        if (times == null) {
            return Duration.ZERO;
        }
        while (!times.isEmpty() && !times.peekFirst().plus(within).isAfter(now)) {
            times.removeFirst();
        }
        return times.size() < most ? Duration.ZERO : Duration.between(now, times.peekFirst().plus(within));
    }

    synchronized void failed(String key, Instant now) {
        Deque<Instant> times = failures.computeIfAbsent(key, k -> new ArrayDeque<>());
        times.addLast(now);
        if (times.size() > most) {
            times.removeFirst();
        }
    }

    synchronized void forget(String key) {
        failures.remove(key);
    }
}
