package chock.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * What follows from a rule book and the description of a machine, kept for the next machine of the same description.
 * Never what follows from entries: two records are always judged each by itself.
 */
public final class Kept {
    /** Descriptions in a large shop; each takes some hundred kilobytes at most. */
    private static final int MOST = 512;

    private final Map<Object, Object> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST;
        }
    };

    /**
     * What follows from a key, worked out when it is asked for the first time, and again when it was not asked for
     * long.
     *
     * @param key everything that the work rests on; of a class that is used for nothing else
     */
    @SuppressWarnings("unchecked")
    public <T> T of(Object key, Supplier<T> work) {
        synchronized (kept) {
            T known = (T) kept.get(key);
            if (known != null) {
                return known;
            }
        }
        // Two may work it out at the same time; both come to the same.
        T worked = work.get();
        synchronized (kept) {
            kept.put(key, worked);
        }
        return worked;
    }
}
