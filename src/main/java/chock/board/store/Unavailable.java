package chock.board.store;

import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.util.Optional;
import org.sqlite.SQLiteException;

/**
 * Why a store does not answer now and may answer later: it is locked, full, or out of reach.
 *
 * @param says one sentence for whoever asked
 * @param retryAfter seconds after which asking again may help
 */
public record Unavailable(String says, int retryAfter) {
    // Result codes of SQLite, https://sqlite.org/rescode.html, without their extended part.
    private static final int BUSY = 5;
    private static final int LOCKED = 6;
    private static final int READONLY = 8;
    private static final int IOERR = 10;
    private static final int FULL = 13;
    private static final int CANTOPEN = 14;

    /** Empty where the failure is something else. */
    public static Optional<Unavailable> of(Throwable failure) {
        for (Throwable at = failure; at != null; at = at.getCause() == at ? null : at.getCause()) {
            Optional<Unavailable> one = one(at);
            if (one.isPresent()) {
                return one;
            }
        }
        return Optional.empty();
    }

    private static Optional<Unavailable> one(Throwable at) {
        if (at instanceof SQLiteException lite) {
            return sqlite(lite.getResultCode().code & 0xff);
        }
        if (at instanceof SQLTransientConnectionException) {
            return Optional.of(new Unavailable("The store does not answer.", 10));
        }
        if (at instanceof SQLException sql && sql.getSQLState() != null) {
            return postgresql(sql.getSQLState());
        }
        boolean full = at instanceof FileSystemException && String.valueOf(at.getMessage()).contains("No space left on device");
        return full ? Optional.of(full()) : Optional.empty();
    }

    private static Optional<Unavailable> sqlite(int code) {
        return switch (code) {
            case BUSY, LOCKED -> Optional.of(locked());
            case FULL -> Optional.of(full());
            case IOERR, CANTOPEN, READONLY -> Optional.of(new Unavailable("The store cannot be read or written now.", 30));
            default -> Optional.empty();
        };
    }

    /** By the classes of https://www.postgresql.org/docs/current/errcodes-appendix.html. */
    private static Optional<Unavailable> postgresql(String state) {
        return switch (state.substring(0, 2)) {
            case "08", "57" -> Optional.of(new Unavailable("The store does not answer.", 10));
            case "53" -> Optional.of(state.equals("53100") ? full() : new Unavailable("The store has too much to do.", 10));
            case "40", "55" -> Optional.of(locked());
            default -> state.equals("25006") ? Optional.of(new Unavailable("The store can only be read now.", 30)) : Optional.empty();
        };
    }

    private static Unavailable locked() {
        return new Unavailable("The store is locked by somebody else.", 10);
    }

    private static Unavailable full() {
        return new Unavailable("The disk of the store is full.", 60);
    }
}
