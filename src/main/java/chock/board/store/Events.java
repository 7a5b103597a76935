package chock.board.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Who did what, and when; added to, never changed. */
public final class Events {
    private static final RowMapper<Event> EVENT = (row, c) -> new Event(row.getString("id"), Instant.ofEpochMilli(row.getLong("at")), row.getString("account"),
            row.getString("action"), row.getString("machine"), row.getString("detail"));

    private final Handle handle;

    Events(Handle handle) {
        this.handle = handle;
    }

    /** @param machine id of a record, or null */
    public record Event(String id, Instant at, String account, String action, String machine, String detail) { }

    /** Adds one and answers its id. */
    public String add(Instant at, String account, String action, String machine, String detail) {
        String id = UUID.randomUUID().toString();
        handle.createUpdate("INSERT INTO event (id, at, account, action, machine, detail) VALUES (:id, :at, :account, :action, :machine, :detail)")
                .bind("id", id).bind("at", at.toEpochMilli()).bind("account", account).bind("action", action).bind("machine", machine).bind("detail", detail).execute();
        return id;
    }

    public Optional<Event> find(String id) {
        return handle.createQuery("SELECT * FROM event WHERE id = :id").bind("id", id).map(EVENT).findOne();
    }

    /** True when somebody did exactly this. */
    public boolean has(String machine, String account, String action, String detail) {
        return handle.createQuery("SELECT COUNT(*) FROM event WHERE machine = :machine AND account = :account AND action = :action AND detail = :detail")
                .bind("machine", machine).bind("account", account).bind("action", action).bind("detail", detail).mapTo(Long.class).one() > 0;
    }

    /** Of one kind, of one machine, oldest first. */
    public List<Event> of(String machine, String action) {
        return handle.createQuery("SELECT * FROM event WHERE machine = :machine AND action = :action ORDER BY at, id").bind("machine", machine).bind("action", action).map(EVENT).list();
    }

    /** Newest first. */
    public List<Event> latest(int from, int most) {
        return handle.createQuery("SELECT * FROM event ORDER BY at DESC, id LIMIT :most OFFSET :from").bind("most", most).bind("from", from).map(EVENT).list();
    }
}
