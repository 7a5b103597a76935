package chock.board.store;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.mapper.RowMapper;

/** Which photos belong to which entries; added to, never changed. */
public final class Photos {
    private static final RowMapper<Photo> PHOTO = (row, c) -> new Photo(row.getString("machine"), row.getString("entry"), row.getString("digest"), row.getInt("width"), row.getInt("height"), row.getLong("size"),
            row.getString("written_by"), Instant.ofEpochMilli(row.getLong("written_at")));

    private final Handle handle;

    Photos(Handle handle) {
        this.handle = handle;
    }

    /**
     * @param entry id of the entry it belongs to
     * @param digest SHA-256 of its bytes, 64 figures
     * @param size in bytes
     */
    public record Photo(String machine, String entry, String digest, int width, int height, long size, String by, Instant at) { }

    /** Adds one; false when this entry has it already. */
    public boolean add(Photo photo) {
        return handle.createUpdate("INSERT INTO photo (machine, entry, digest, width, height, size, written_by, written_at) VALUES (:machine, :entry, :digest, :width, :height, :size, :by, :at) ON CONFLICT DO NOTHING")
                .bind("machine", photo.machine()).bind("entry", photo.entry()).bind("digest", photo.digest()).bind("width", photo.width()).bind("height", photo.height()).bind("size", photo.size())
                .bind("by", photo.by()).bind("at", photo.at().toEpochMilli()).execute() > 0;
    }

    /** Those of a machine, oldest first. */
    public List<Photo> of(String machine) {
        return handle.createQuery("SELECT * FROM photo WHERE machine = :machine ORDER BY written_at, entry, digest").bind("machine", machine).map(PHOTO).list();
    }

    /** A photo of this machine with this digest. */
    public Optional<Photo> find(String machine, String digest) {
        return handle.createQuery("SELECT * FROM photo WHERE machine = :machine AND digest = :digest ORDER BY written_at LIMIT 1").bind("machine", machine).bind("digest", digest).map(PHOTO).findOne();
    }
}
