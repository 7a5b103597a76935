package chock.board.store;

import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jdbi.v3.core.statement.Query;

/** Sign-offs and what voided them, added to and never changed; and with which key each person signs. */
public final class Signings {
    private static final String LINES = "SELECT s.id, s.machine, s.version, s.gate, s.signed_at, s.holds_until, s.signer, s.role, s.key_id, s.account, s.line, s.digest, v.at AS void_at, v.why"
            + " FROM sign_off s LEFT JOIN sign_off_void v ON v.sign_off = s.id";
    private static final RowMapper<Line> LINE = (row, c) -> new Line(row.getString("id"), row.getString("machine"), row.getLong("version"), row.getString("gate"), Instant.ofEpochMilli(row.getLong("signed_at")),
            Instant.ofEpochMilli(row.getLong("holds_until")), row.getString("signer"), row.getString("role"), row.getString("key_id"), row.getString("account"), row.getInt("line"), row.getString("digest"),
            row.getObject("void_at") == null ? null : Instant.ofEpochMilli(row.getLong("void_at")), row.getString("why"));

    private final Handle handle;

    Signings(Handle handle) {
        this.handle = handle;
    }

    /**
     * A sign-off without its text.
     *
     * @param version of the record it is of
     * @param account who signed at the board, or empty when it was signed elsewhere
     * @param line its line in the ledger
     * @param digest of the sign-off file, {@code sha256:…}
     * @param voidedAt when it was found void, or null
     * @param why what voided it, or null
     */
    public record Line(String id, String machine, long version, String gate, Instant signedAt, Instant until, String signer, String role, String keyId, String account, int line, String digest,
                       Instant voidedAt, String why) {
        public boolean isVoid() {
            return voidedAt != null;
        }
    }

    /** Which sign-offs to list; empty: no matter. */
    public record Sieve(String machine, String state) { }

    /**
     * Keeps one; false when it is kept already.
     *
     * @param seal digest of its seal
     * @param jws its text
     */
    public boolean add(Line line, String seal, String jws) {
        return handle.createUpdate("INSERT INTO sign_off (id, machine, version, gate, signed_at, holds_until, signer, role, key_id, account, line, digest, seal, jws)"
                        + " VALUES (:id, :machine, :version, :gate, :at, :until, :signer, :role, :key, :account, :line, :digest, :seal, :jws) ON CONFLICT DO NOTHING")
                .bind("id", line.id()).bind("machine", line.machine()).bind("version", line.version()).bind("gate", line.gate()).bind("at", line.signedAt().toEpochMilli())
                .bind("until", line.until().toEpochMilli()).bind("signer", line.signer()).bind("role", line.role()).bind("key", line.keyId()).bind("account", line.account())
                .bind("line", line.line()).bind("digest", line.digest()).bind("seal", seal).bind("jws", jws).execute() == 1;
    }

    /** Says that one is void; the first reason stays. */
    public void undo(String id, Instant at, String why) {
        handle.createUpdate("INSERT INTO sign_off_void (sign_off, at, why) VALUES (:id, :at, :why) ON CONFLICT DO NOTHING").bind("id", id).bind("at", at.toEpochMilli()).bind("why", why).execute();
    }

    public Optional<Line> find(String id) {
        return handle.createQuery(LINES + " WHERE s.id = :id").bind("id", id).map(LINE).findOne();
    }

    /** By the digest of the file, or of the seal. */
    public Optional<Line> byDigest(String digest) {
        return handle.createQuery(LINES + " WHERE s.digest = :digest OR s.seal = :digest").bind("digest", digest).map(LINE).findOne();
    }

    /** The text as it was signed. */
    public String text(String id) {
        return handle.createQuery("SELECT jws FROM sign_off WHERE id = :id").bind("id", id).mapTo(String.class).one();
    }

    /** Those of one machine that nothing has voided yet. */
    public List<Line> standing(String machine) {
        return handle.createQuery(LINES + " WHERE s.machine = :machine AND v.at IS NULL ORDER BY s.signed_at, s.line").bind("machine", machine).map(LINE).list();
    }

    /** Of each of these machines the newest at each gate. */
    public List<Line> newest(Collection<String> machines) {
        return machines.isEmpty() ? List.of() : handle.createQuery(LINES + " WHERE s.machine IN (<ids>) AND NOT EXISTS (SELECT 1 FROM sign_off n WHERE n.machine = s.machine AND n.gate = s.gate"
                + " AND (n.signed_at > s.signed_at OR n.signed_at = s.signed_at AND n.line > s.line)) ORDER BY s.machine, s.gate").bindList("ids", List.copyOf(machines)).map(LINE).list();
    }

    /**
     * Newest first.
     *
     * @param now the moment at which a release has lapsed or not
     */
    public List<Line> list(Sieve sieve, Instant now, int from, int most) {
        String state = switch (sieve.state()) {
            case "void" -> " AND v.at IS NOT NULL";
            case "lapsed" -> " AND v.at IS NULL AND s.holds_until < :now";
            case "stands" -> " AND v.at IS NULL AND s.holds_until >= :now";
            default -> "";
        };
        Query query = handle.createQuery(LINES + " WHERE (:machine = '' OR s.machine = :machine)" + state + " ORDER BY s.signed_at DESC, s.line DESC, s.id LIMIT :most OFFSET :from")
                .bind("machine", sieve.machine()).bind("most", most).bind("from", from);
        return (state.contains(":now") ? query.bind("now", now.toEpochMilli()) : query).map(LINE).list();
    }

    /** Every one that is void, for the ledger to be held against. */
    public List<Line> voided() {
        return handle.createQuery(LINES + " WHERE v.at IS NOT NULL ORDER BY v.at").map(LINE).list();
    }

    /** Which digests of sign-off files are kept. */
    public List<String> digests() {
        return handle.createQuery("SELECT digest FROM sign_off").mapTo(String.class).list();
    }

    /** Every one that nothing voids. */
    public List<Line> standing() {
        return handle.createQuery(LINES + " WHERE v.at IS NULL ORDER BY s.line").map(LINE).list();
    }

    /**
     * A line of a ledger that was seen here.
     *
     * @param at when
     */
    public record Seen(int line, String digest, Instant at) { }

    /** The highest line seen of the ledger of a workshop, or empty. */
    public Optional<Seen> seen(String workshop) {
        return handle.createQuery("SELECT line, digest, at FROM ledger_seen WHERE workshop = :workshop").bind("workshop", workshop)
                .map((row, c) -> new Seen(row.getInt("line"), row.getString("digest"), Instant.ofEpochMilli(row.getLong("at")))).findOne();
    }

    /** Keeps a line as seen, when it is higher than the one that is kept. */
    public void see(String workshop, Seen seen) {
        bound("INSERT INTO ledger_seen (workshop, line, digest, at) VALUES (:workshop, :line, :digest, :at)"
                + " ON CONFLICT (workshop) DO UPDATE SET line = excluded.line, digest = excluded.digest, at = excluded.at WHERE excluded.line > ledger_seen.line", workshop, seen);
    }

    /** Keeps a line as seen in the place of a higher one: a lead said that the ledger is to be gone by as it is. */
    public void seeInstead(String workshop, Seen seen) {
        bound("INSERT INTO ledger_seen (workshop, line, digest, at) VALUES (:workshop, :line, :digest, :at)"
                + " ON CONFLICT (workshop) DO UPDATE SET line = excluded.line, digest = excluded.digest, at = excluded.at", workshop, seen);
    }

    private void bound(String sql, String workshop, Seen seen) {
        handle.createUpdate(sql).bind("workshop", workshop).bind("line", seen.line()).bind("digest", seen.digest()).bind("at", seen.at().toEpochMilli()).execute();
    }

    /** The key this person signs with, or empty. */
    public Optional<String> key(String account) {
        return handle.createQuery("SELECT key_id FROM signer WHERE account = :account").bind("account", account).mapTo(String.class).findOne();
    }

    /** Who signs with this key, or empty. */
    public Optional<String> holder(String keyId) {
        return handle.createQuery("SELECT account FROM signer WHERE key_id = :key").bind("key", keyId).mapTo(String.class).findOne();
    }

    /** Says with which key somebody signs; null for none. */
    public void bind(String account, String keyId) {
        handle.createUpdate("DELETE FROM signer WHERE account = :account").bind("account", account).execute();
        if (keyId != null) {
            handle.createUpdate("INSERT INTO signer (account, key_id) VALUES (:account, :key)").bind("account", account).bind("key", keyId).execute();
        }
    }
}
