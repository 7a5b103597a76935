package chock.board.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Records and their entries: added to, never changed. */
public final class Records {
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Handle handle;

    Records(Handle handle) {
        this.handle = handle;
    }

    /** The record as of its newest version, or empty. */
    public Optional<Kept> find(String id) {
        Optional<Long> version = handle.createQuery("SELECT version FROM machine WHERE id = :id").bind("id", id).mapTo(Long.class).findOne();
        // Everything up to one version: what is added while this reads stays out of it as a whole.
        return version.map(v -> new Kept(id, v, sheet(id, v), entries(id, v)));
    }

    private ObjectNode sheet(String id, long version) {
        return handle.createQuery("SELECT json FROM sheet WHERE machine = :id AND version <= :v ORDER BY version DESC LIMIT 1")
                .bind("id", id).bind("v", version).map((row, c) -> object(row.getString(1))).one();
    }

    private List<ObjectNode> entries(String id, long version) {
        return handle.createQuery("SELECT json FROM entry WHERE machine = :id AND version <= :v ORDER BY seq")
                .bind("id", id).bind("v", version).map((row, c) -> object(row.getString(1))).list();
    }

    /** When each entry was written down here and by which account, by id. */
    public List<Origin> origins(String id) {
        return handle.createQuery("SELECT id, written_by, written_at FROM entry WHERE machine = :id ORDER BY seq").bind("id", id)
                .map((row, c) -> new Origin(row.getString(1), row.getString(2), Instant.ofEpochMilli(row.getLong(3)))).list();
    }

    /** Who wrote an entry down here, and when. */
    public record Origin(String entry, String by, Instant at) { }

    /** Ids of machines with this frame number, however its letters and blanks are written. */
    public List<String> withFrame(String number) {
        return handle.createQuery("SELECT id FROM machine WHERE lower(trim(frame_number)) = lower(trim(:number)) ORDER BY id").bind("number", number).mapTo(String.class).list();
    }

    /** Every id, in order. */
    public List<String> ids() {
        return handle.createQuery("SELECT id FROM machine ORDER BY id").mapTo(String.class).list();
    }

    /** Ids of machines in whose record something was ever read of the room or its air. */
    public List<String> readInTheRoom() {
        return handle.createQuery("SELECT DISTINCT machine FROM entry WHERE json LIKE '%\"point\":\"room%' ORDER BY machine").mapTo(String.class).list();
    }

    /** Ids of machines whose summary is of another rule book, or may have run out by now. */
    public List<String> toJudgeAgain(String book, Instant now, int most) {
        return handle.createQuery("SELECT id FROM machine WHERE book <> :book OR again <= :now ORDER BY id LIMIT :most")
                .bind("book", book).bind("now", now.toEpochMilli()).bind("most", most).mapTo(String.class).list();
    }

    /**
     * Adds a machine.
     *
     * @return false when one of this id is there already; then nothing was written
     */
    public boolean add(Kept kept, Summary summary, String by, Instant at) {
        ObjectNode machine = (ObjectNode) kept.sheet().get("machine");
        int made = handle.createUpdate("INSERT INTO machine (id, version, workshop, marque, model, frame_number, engine_number, words, written_at, nearest, lapses, again, book)"
                        + " VALUES (:id, 1, :workshop, :marque, :model, :frame, :engine, :words, :at, :nearest, :lapses, :again, :book) ON CONFLICT (id) DO NOTHING")
                .bind("id", kept.id()).bind("workshop", kept.sheet().get("workshop").textValue())
                .bind("marque", machine.get("marque").textValue()).bind("model", machine.get("model").textValue())
                .bind("frame", machine.get("frame-number").textValue()).bind("engine", machine.get("engine-number").textValue())
                .bind("words", words(kept.id(), machine)).bind("at", at.toEpochMilli())
                .bind("nearest", summary.nearest()).bind("lapses", millis(summary.lapses())).bind("again", millis(summary.again())).bind("book", summary.book()).execute();
        if (made == 0) {
            return false;
        }
        sheet(kept.id(), 1, kept.sheet(), by, at);
        entries(kept.id(), 1, 0, kept.entries(), by, at);
        standings(kept.id(), summary);
        return true;
    }

    /**
     * Adds to a machine.
     *
     * @param seen the version the writer had before them
     * @param sheet the whole new sheet, or null when it stays
     * @return false when somebody else has written since; then nothing was written
     */
    public boolean append(String id, long seen, ObjectNode sheet, List<ObjectNode> entries, Summary summary, String by, Instant at) {
        int moved = handle.createUpdate("UPDATE machine SET version = version + 1, written_at = :at, nearest = :nearest, lapses = :lapses, again = :again, book = :book WHERE id = :id AND version = :seen")
                .bind("id", id).bind("seen", seen).bind("at", at.toEpochMilli())
                .bind("nearest", summary.nearest()).bind("lapses", millis(summary.lapses())).bind("again", millis(summary.again())).bind("book", summary.book()).execute();
        if (moved == 0) {
            return false;
        }
        if (sheet != null) {
            sheet(id, seen + 1, sheet, by, at);
        }
        long last = handle.createQuery("SELECT COALESCE(MAX(seq), 0) FROM entry WHERE machine = :id").bind("id", id).mapTo(Long.class).one();
        entries(id, seen + 1, last, entries, by, at);
        standings(id, summary);
        return true;
    }

    /** Keeps everybody else from writing to a machine until this write is done, and tells its version. */
    public long hold(String id) {
        handle.createUpdate("UPDATE machine SET version = version WHERE id = :id").bind("id", id).execute();
        return handle.createQuery("SELECT version FROM machine WHERE id = :id").bind("id", id).mapTo(Long.class).one();
    }

    /** Puts a newer summary in place of the kept one; false when somebody has written since. */
    public boolean summarise(String id, long seen, Summary summary) {
        int moved = handle.createUpdate("UPDATE machine SET nearest = :nearest, lapses = :lapses, again = :again, book = :book WHERE id = :id AND version = :seen")
                .bind("id", id).bind("seen", seen)
                .bind("nearest", summary.nearest()).bind("lapses", millis(summary.lapses())).bind("again", millis(summary.again())).bind("book", summary.book()).execute();
        if (moved > 0) {
            standings(id, summary);
        }
        return moved > 0;
    }

    private static String words(String id, ObjectNode machine) {
        return String.join(" ", id, machine.get("marque").textValue(), machine.get("model").textValue(), machine.get("frame-number").textValue(),
                machine.get("engine-number").textValue()).toLowerCase(Locale.ROOT);
    }

    private void sheet(String id, long version, ObjectNode sheet, String by, Instant at) {
        handle.createUpdate("INSERT INTO sheet (machine, version, written_by, written_at, json) VALUES (:id, :v, :by, :at, :json)")
                .bind("id", id).bind("v", version).bind("by", by).bind("at", at.toEpochMilli()).bind("json", sheet.toString()).execute();
    }

    private void entries(String id, long version, long last, List<ObjectNode> entries, String by, Instant at) {
        if (entries.isEmpty()) {
            return;
        }
        var batch = handle.prepareBatch("INSERT INTO entry (machine, seq, id, version, written_by, written_at, json) VALUES (:machine, :seq, :id, :v, :by, :at, :json)");
        long seq = last;
        for (ObjectNode entry : entries) {
            batch.bind("machine", id).bind("seq", ++seq).bind("id", entry.get("id").textValue()).bind("v", version).bind("by", by)
                    .bind("at", at.toEpochMilli()).bind("json", entry.toString()).add();
        }
        batch.execute();
    }

    private void standings(String id, Summary summary) {
        handle.createUpdate("DELETE FROM standing WHERE machine = :id").bind("id", id).execute();
        handle.createUpdate("DELETE FROM holding WHERE machine = :id").bind("id", id).execute();
        if (summary.gates().isEmpty()) {
            return;
        }
        var gates = handle.prepareBatch("INSERT INTO standing (machine, gate, place, released, holds_until, faults, doubts, stales, missings, mets, undecided)"
                + " VALUES (:id, :gate, :place, :released, :until, :faults, :doubts, :stales, :missings, :mets, :undecided)");
        var held = handle.prepareBatch("INSERT INTO holding (machine, gate, place, check_id, state, critical, says) VALUES (:id, :gate, :place, :check, :state, :critical, :says)");
        int place = 0;
        for (Summary.OfGate gate : summary.gates()) {
            gates.bind("id", id).bind("gate", gate.gate()).bind("place", place++).bind("released", gate.released() ? 1 : 0).bind("until", millis(gate.holdsUntil()))
                    .bind("faults", gate.faults()).bind("doubts", gate.doubts()).bind("stales", gate.stales()).bind("missings", gate.missings())
                    .bind("mets", gate.mets()).bind("undecided", gate.undecided()).add();
            int at = 0;
            for (Summary.Held one : gate.held()) {
                held.bind("id", id).bind("gate", gate.gate()).bind("place", at++).bind("check", one.check()).bind("state", one.state())
                        .bind("critical", one.critical() ? 1 : 0).bind("says", one.says()).add();
            }
        }
        gates.execute();
        if (held.size() > 0) {
            held.execute();
        }
    }

    static Long millis(Instant instant) {
        return instant == null ? null : instant.toEpochMilli();
    }

    private static ObjectNode object(String json) {
        try {
            return (ObjectNode) JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("the store holds a line that cannot be read", e);
        }
    }
}
