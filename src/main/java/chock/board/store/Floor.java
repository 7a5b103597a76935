package chock.board.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.Query;

/** All machines as the database lists them: it filters, sorts, counts and pages; nothing is sifted here. */
public final class Floor {
    private final Handle handle;

    Floor(Handle handle) {
        this.handle = handle;
    }

    /** How a list is ordered. */
    public enum Order {
        /** By id. */ ID("m.id"),
        /** Fewest things open first; machines with nothing open last. */ NEAREST("CASE WHEN m.nearest IS NULL THEN 1 ELSE 0 END, m.nearest, m.id"),
        /** Last written to first. */ LATEST("m.written_at DESC, m.id"),
        /** First to lapse first; machines without a release last. */ LAPSES("CASE WHEN m.lapses IS NULL THEN 1 ELSE 0 END, m.lapses, m.id");

        private final String sql;

        Order(String sql) {
            this.sql = sql;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * What to list; null or empty: no matter.
     *
     * @param words all of these in id, marque, model or numbers
     * @param gate seeks this gate
     * @param released whether that gate, or any, is released
     * @param check this check holds it, at that gate or any
     * @param lapsesFrom a release lapses from here
     * @param lapsesBefore to before here
     */
    public record Sieve(String words, String gate, Boolean released, String check, Instant lapsesFrom, Instant lapsesBefore) {
        /** Lists everything. */
        public static final Sieve ALL = new Sieve("", "", null, "", null, null);
    }

    /**
     * One line of the list.
     *
     * @param judged false when another rule book judged it last; what stands in gates then counts no more
     */
    public record Row(String id, long version, String marque, String model, String workshop, Instant writtenAt, boolean judged, List<Summary.OfGate> gates) { }

    /** A check, and how many machines it holds. */
    public record Blocker(String check, long machines) { }

    /** @param book digest of the rule book in force */
    public List<Row> list(Sieve sieve, Order order, int from, int most, String book, Instant now) {
        Query query = bind(handle.createQuery("SELECT m.* FROM machine m" + where(sieve) + " ORDER BY " + order.sql + " LIMIT :most OFFSET :from"), sieve)
                .bind("most", most).bind("from", from);
        Map<String, Row> rows = new LinkedHashMap<>();
        query.map((row, c) -> new Row(row.getString("id"), row.getLong("version"), row.getString("marque"), row.getString("model"), row.getString("workshop"),
                Instant.ofEpochMilli(row.getLong("written_at")), row.getString("book").equals(book) && (row.getObject("again") == null || row.getLong("again") > now.toEpochMilli()), new ArrayList<>()))
                .forEach(row -> rows.put(row.id(), row));
        if (!rows.isEmpty()) {
            gates(rows);
        }
        return List.copyOf(rows.values());
    }

    public long count(Sieve sieve) {
        return bind(handle.createQuery("SELECT COUNT(*) FROM machine m" + where(sieve)), sieve).mapTo(Long.class).one();
    }

    /** The checks that hold most machines, each machine counted once. */
    public List<Blocker> blockers(String gate, int most) {
        return handle.createQuery("SELECT check_id, COUNT(DISTINCT machine) AS n FROM holding WHERE (:gate = '' OR gate = :gate) GROUP BY check_id ORDER BY n DESC, check_id LIMIT :most")
                .bind("gate", gate == null ? "" : gate).bind("most", most).map((row, c) -> new Blocker(row.getString(1), row.getLong(2))).list();
    }

    /** The gates of one machine as last judged, each with the worst that holds it. */
    public List<Summary.OfGate> gates(String id) {
        Row row = new Row(id, 0, "", "", "", Instant.EPOCH, true, new ArrayList<>());
        gates(Map.of(id, row));
        return row.gates();
    }

    private void gates(Map<String, Row> rows) {
        List<String> ids = List.copyOf(rows.keySet());
        Map<String, List<Summary.Held>> held = new LinkedHashMap<>();
        // Of each gate the three worst: more than that is for the page of the machine.
        handle.createQuery("SELECT machine, gate, check_id, state, critical, says FROM holding WHERE machine IN (<ids>) AND place < 3 ORDER BY machine, gate, place").bindList("ids", ids)
                .map((row, c) -> Map.entry(row.getString(1) + "\n" + row.getString(2), new Summary.Held(row.getString(3), row.getString(4), row.getInt(5) == 1, row.getString(6))))
                .forEach(one -> held.computeIfAbsent(one.getKey(), k -> new ArrayList<>()).add(one.getValue()));
        handle.createQuery("SELECT * FROM standing WHERE machine IN (<ids>) ORDER BY machine, place").bindList("ids", ids)
                .map((row, c) -> Map.entry(row.getString("machine"), new Summary.OfGate(row.getString("gate"), row.getInt("released") == 1,
                        row.getObject("holds_until") == null ? null : Instant.ofEpochMilli(row.getLong("holds_until")), row.getInt("faults"), row.getInt("doubts"), row.getInt("stales"),
                        row.getInt("missings"), row.getInt("mets"), row.getInt("undecided"), List.copyOf(held.getOrDefault(row.getString("machine") + "\n" + row.getString("gate"), List.of())))))
                .forEach(one -> rows.get(one.getKey()).gates().add(one.getValue()));
    }

    private static String where(Sieve sieve) {
        List<String> all = new ArrayList<>();
        for (int i = 0; i < words(sieve).size(); i++) {
            all.add("m.words LIKE :word" + i + " ESCAPE '!'");
        }
        if (given(sieve.gate()) || sieve.released() != null) {
            all.add("m.id IN (SELECT s.machine FROM standing s WHERE 1 = 1" + (given(sieve.gate()) ? " AND s.gate = :gate" : "")
                    + (sieve.released() == null ? "" : " AND s.released = :released") + ")");
        }
        if (given(sieve.check())) {
            // Asked once and not of each machine: the other way took seven seconds with 10,000 of them.
            all.add("m.id IN (SELECT h.machine FROM holding h WHERE h.check_id = :check" + (given(sieve.gate()) ? " AND h.gate = :gate" : "") + ")");
        }
        if (sieve.lapsesFrom() != null) {
            all.add("m.lapses >= :lapsesFrom");
        }
        if (sieve.lapsesBefore() != null) {
            all.add("m.lapses < :lapsesBefore");
        }
        return all.isEmpty() ? "" : " WHERE " + String.join(" AND ", all);
    }

    private static Query bind(Query query, Sieve sieve) {
        List<String> words = words(sieve);
        for (int i = 0; i < words.size(); i++) {
            query.bind("word" + i, "%" + words.get(i).replace("!", "!!").replace("%", "!%").replace("_", "!_") + "%");
        }
        if (given(sieve.gate())) {
            query.bind("gate", sieve.gate());
        }
        if (sieve.released() != null) {
            query.bind("released", sieve.released() ? 1 : 0);
        }
        if (given(sieve.check())) {
            query.bind("check", sieve.check());
        }
        if (sieve.lapsesFrom() != null) {
            query.bind("lapsesFrom", sieve.lapsesFrom().toEpochMilli());
        }
        if (sieve.lapsesBefore() != null) {
            query.bind("lapsesBefore", sieve.lapsesBefore().toEpochMilli());
        }
        return query;
    }

    private static boolean given(String text) {
        return text != null && !text.isBlank();
    }

    private static List<String> words(Sieve sieve) {
        return !given(sieve.words()) ? List.of() : List.of(sieve.words().strip().toLowerCase(Locale.ROOT).split("\\s+")).stream().limit(8).toList();
    }
}
