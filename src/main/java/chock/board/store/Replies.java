package chock.board.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Answers to writes that carried a key: the same write sent again gets the same answer and is not done twice. */
public final class Replies {
    private final Handle handle;

    Replies(Handle handle) {
        this.handle = handle;
    }

    /**
     * @param digest of what was asked
     * @param tag version of the record after it, or null
     */
    public record Reply(String digest, int status, String body, String tag) { }

    public Optional<Reply> find(String account, String key) {
        return handle.createQuery("SELECT digest, status, body, tag FROM reply WHERE account = :account AND key = :key").bind("account", account).bind("key", key)
                .map((row, c) -> new Reply(row.getString(1), row.getInt(2), row.getString(3), row.getString(4))).findOne();
    }

    /** Keeps an answer; false when there is one already, written by somebody quicker. */
    public boolean keep(String account, String key, Reply reply, Instant at) {
        return handle.createUpdate("INSERT INTO reply (account, key, digest, status, body, tag, at) VALUES (:account, :key, :digest, :status, :body, :tag, :at) ON CONFLICT (account, key) DO NOTHING")
                .bind("account", account).bind("key", key).bind("digest", reply.digest()).bind("status", reply.status()).bind("body", reply.body()).bind("tag", reply.tag())
                .bind("at", at.toEpochMilli()).execute() == 1;
    }

    /** Forgets answers older than this. */
    public void forgetBefore(Instant at) {
        handle.createUpdate("DELETE FROM reply WHERE at < :at").bind("at", at.toEpochMilli()).execute();
    }
}
