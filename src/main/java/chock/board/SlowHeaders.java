package chock.board;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.LongSupplier;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.ssl.SslConnection;

/**
 * Cuts off who sends the head of a request letter by letter. The server ends a connection that is silent, and holds the body of
 * a request to a rate; a head that never ends is neither.
 */
final class SlowHeaders implements Connection.Listener {
    private final Map<Connection, State> open = new ConcurrentHashMap<>();
    private final long mostNanos;
    private final LongSupplier nanos;

    /** What was seen of a connection last; {@code since} is the moment at which the head of a request was first seen to be on its way, or 0. */
    private record State(long requests, long bytes, long since) { }

    /** @param most how long a head may take, in seconds */
    SlowHeaders(int most, LongSupplier nanos) {
        this.mostNanos = TimeUnit.SECONDS.toNanos(most);
        this.nanos = nanos;
    }

    void watch(ScheduledExecutorService by) {
        by.scheduleWithFixedDelay(this::look, 1, 1, TimeUnit.SECONDS);
    }

    @Override
    public void onOpened(Connection connection) {
        if (!(connection instanceof SslConnection)) {
            open.put(connection, new State(0, 0, 0));
        }
    }

    @Override
    public void onClosed(Connection connection) {
        open.remove(connection);
    }

    /** Goes through all of them once. */
    void look() {
        long now = nanos.getAsLong();
        open.replaceAll((connection, before) -> after(connection, before, now));
        open.forEach((connection, state) -> {
            if (state.since() != 0 && now - state.since() > mostNanos) {
                connection.getEndPoint().close(new TimeoutException("the head of the request took too long"));
            }
        });
    }

    private static State after(Connection connection, State before, long now) {
        long requests = connection.getMessagesIn();
        long bytes = connection.getBytesIn();
        boolean answering = requests > connection.getMessagesOut();
        if (requests != before.requests() || answering) {
            return new State(requests, bytes, 0);
        }
        return new State(requests, before.bytes(), before.since() != 0 ? before.since() : bytes > before.bytes() ? Math.max(1, now) : 0);
    }
}
