package chock.board.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Who may use the board, and who is using it now. */
public final class Accounts {
    private static final RowMapper<Account> ACCOUNT = (row, c) -> new Account(row.getString("id"), row.getString("name"), row.getString("role"), row.getString("secret"),
            row.getInt("must_change") == 1, row.getInt("active") == 1);

    private final Handle handle;

    Accounts(Handle handle) {
        this.handle = handle;
    }

    /**
     * @param id the short id they sign in with, and write entries under
     * @param role technician, inspector or lead
     * @param secret hash of the password
     * @param mustChange whether the password was set by somebody else
     */
    public record Account(String id, String name, String role, String secret, boolean mustChange, boolean active) { }

    /**
     * @param token digest of what the browser holds
     * @param form what every form must bring along
     */
    public record Session(String token, String account, String form, Instant madeAt, Instant seenAt) { }

    public boolean none() {
        return handle.createQuery("SELECT COUNT(*) FROM account").mapTo(Long.class).one() == 0;
    }

    public List<Account> all() {
        return handle.createQuery("SELECT * FROM account ORDER BY id").map(ACCOUNT).list();
    }

    public Optional<Account> find(String id) {
        return handle.createQuery("SELECT * FROM account WHERE id = :id").bind("id", id).map(ACCOUNT).findOne();
    }

    /** Adds one; false when the id or the name is taken. */
    public boolean add(Account account, Instant at) {
        return handle.createUpdate("INSERT INTO account (id, name, role, secret, must_change, active, made_at) VALUES (:id, :name, :role, :secret, :must, :active, :at) ON CONFLICT DO NOTHING")
                .bind("id", account.id()).bind("name", account.name()).bind("role", account.role()).bind("secret", account.secret())
                .bind("must", account.mustChange() ? 1 : 0).bind("active", account.active() ? 1 : 0).bind("at", at.toEpochMilli()).execute() == 1;
    }

    /** Sets another password and ends every session of the account. */
    public void secret(String id, String secret, boolean mustChange) {
        handle.createUpdate("UPDATE account SET secret = :secret, must_change = :must WHERE id = :id").bind("secret", secret).bind("must", mustChange ? 1 : 0).bind("id", id).execute();
        end(id);
    }

    /** Sets role and whether they may sign in, and ends every session of the account. */
    public void standing(String id, String role, boolean active) {
        handle.createUpdate("UPDATE account SET role = :role, active = :active WHERE id = :id").bind("role", role).bind("active", active ? 1 : 0).bind("id", id).execute();
        end(id);
    }

    /** How many leads may sign in. */
    public long leads() {
        return handle.createQuery("SELECT COUNT(*) FROM account WHERE role = 'lead' AND active = 1").mapTo(Long.class).one();
    }

    public void begin(Session session) {
        handle.createUpdate("INSERT INTO session (token, account, form, made_at, seen_at) VALUES (:token, :account, :form, :made, :seen)").bind("token", session.token())
                .bind("account", session.account()).bind("form", session.form()).bind("made", session.madeAt().toEpochMilli()).bind("seen", session.seenAt().toEpochMilli()).execute();
    }

    public Optional<Session> session(String token) {
        return handle.createQuery("SELECT * FROM session WHERE token = :token").bind("token", token)
                .map((row, c) -> new Session(row.getString("token"), row.getString("account"), row.getString("form"), Instant.ofEpochMilli(row.getLong("made_at")), Instant.ofEpochMilli(row.getLong("seen_at")))).findOne();
    }

    public void seen(String token, Instant at) {
        handle.createUpdate("UPDATE session SET seen_at = :at WHERE token = :token").bind("at", at.toEpochMilli()).bind("token", token).execute();
    }

    public void endOne(String token) {
        handle.createUpdate("DELETE FROM session WHERE token = :token").bind("token", token).execute();
    }

    private void end(String account) {
        handle.createUpdate("DELETE FROM session WHERE account = :account").bind("account", account).execute();
    }

    /** Ends sessions begun, or last used, before these moments. */
    public void endBefore(Instant made, Instant seen) {
        handle.createUpdate("DELETE FROM session WHERE made_at < :made OR seen_at < :seen").bind("made", made.toEpochMilli()).bind("seen", seen.toEpochMilli()).execute();
    }

    /** The instrument this person last measured such a thing with, or empty. */
    public Optional<String> habit(String account, String aspect) {
        return handle.createQuery("SELECT instrument FROM habit WHERE account = :account AND aspect = :aspect").bind("account", account).bind("aspect", aspect).mapTo(String.class).findOne();
    }

    public void habit(String account, String aspect, String instrument) {
        handle.createUpdate("INSERT INTO habit (account, aspect, instrument) VALUES (:account, :aspect, :instrument) ON CONFLICT (account, aspect) DO UPDATE SET instrument = excluded.instrument")
                .bind("account", account).bind("aspect", aspect).bind("instrument", instrument).execute();
    }
}
