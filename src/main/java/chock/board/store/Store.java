package chock.board.store;

import chock.record.UnusableInput;
import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.transaction.TransactionIsolationLevel;

/**
 * Where everything is kept. An entry is acknowledged only when it lies on the disk. Lines about machines and about who
 * did what are added and never changed; the database itself refuses it.
 */
public final class Store implements AutoCloseable {
    private static final String POSTGRESQL = "jdbc:postgresql:";
    private static final String FILE = "board.sqlite";
    private static final String PHOTOS = "photos";
    private static final int BUSY_MILLIS = 20_000;

    private final HikariDataSource connections;
    private final Jdbi jdbi;
    private final Shelf shelf;

    private Store(HikariDataSource connections, Path photos) {
        this.connections = connections;
        this.jdbi = Jdbi.create(connections);
        this.shelf = new Shelf(photos, jdbi);
    }

    /**
     * Opens the store, brought up to date.
     *
     * @param where a folder for SQLite, made when it is not there, or {@code jdbc:postgresql://…}
     * @throws UnusableInput when it cannot be used
     */
    public static Store open(String where) {
        return open(where, BUSY_MILLIS);
    }

    /** @param busy how long a write waits for another program that has the store, in milliseconds; SQLite only */
    public static Store open(String where, int busy) {
        boolean postgresql = where.startsWith(POSTGRESQL);
        if (!postgresql && where.startsWith("jdbc:")) {
            throw UnusableInput.of(shown(where), "this kind of store is not known", "Name a folder, or jdbc:postgresql://HOST/DATABASE");
        }
        HikariDataSource connections;
        try {
            connections = new HikariDataSource(postgresql ? postgresql(where) : sqlite(folder(where), busy));
        } catch (RuntimeException e) {
            throw UnusableInput.of(shown(where), "the store cannot be reached: " + root(e), postgresql ? "See that the database runs and lets this user in" : "Name a folder this user may write to");
        }
        try {
            migrate(connections, postgresql);
        } catch (FlywayException e) {
            connections.close();
            throw UnusableInput.of(shown(where), "the store cannot be brought up to date: " + e.getMessage().strip().replaceAll("\\s+", " "), "Use a version of chock that is not older than the store");
        }
        return new Store(connections, postgresql ? null : Path.of(where).resolve(PHOTOS));
    }

    /**
     * Opens a store that is there already: what reads from a store must not make an empty one where its folder is misspelt, or
     * where the program was started in another folder.
     *
     * @throws UnusableInput when there is none in this folder, or it cannot be used
     */
    public static Store existing(String where) {
        if (isNew(where)) {
            throw UnusableInput.of(absolute(where), "there is no store in this folder", "Name the folder of the store with --store");
        }
        return open(where);
    }

    /** Whether {@link #open} would make a new store in this folder; of a database this is never said. */
    public static boolean isNew(String where) {
        return !where.startsWith("jdbc:") && !Files.exists(Path.of(where).resolve(FILE));
    }

    /** The store as it is named to the user: the whole path of a folder, a database without its password. */
    public static String absolute(String where) {
        return where.startsWith("jdbc:") ? shown(where) : Path.of(where).toAbsolutePath().normalize().toString();
    }

    /** Without name and password of the user, which may stand in an address. */
    private static String shown(String where) {
        return where.replaceFirst("[?].*", "").replaceFirst("//[^/@]*@", "//");
    }

    private static String root(Throwable e) {
        Throwable at = e;
        while (at.getCause() != null) {
            at = at.getCause();
        }
        // A driver may repeat the address it was given, and with it who and by which password.
        return String.valueOf(at.getMessage()).strip().replaceAll("\\s+", " ").replaceAll("\\S*@", "").replaceAll("(?i)(password=)[^&\\s]*", "$1…");
    }

    private static Path folder(String where) {
        Path folder = Path.of(where);
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new IllegalStateException("the folder cannot be made", e);
        }
        return folder;
    }

    private static HikariConfig sqlite(Path folder, int busy) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl("jdbc:sqlite:" + folder.resolve(FILE));
        config.addDataSourceProperty("journal_mode", "WAL");
        config.addDataSourceProperty("synchronous", "FULL");
        config.addDataSourceProperty("foreign_keys", "true");
        config.addDataSourceProperty("busy_timeout", String.valueOf(busy));
        // A write says so at its first word, so that two of them wait for each other and none has to give up half-way.
        config.addDataSourceProperty("transaction_mode", "IMMEDIATE");
        config.setMaximumPoolSize(4);
        config.setConnectionTimeout(20_000);
        return config;
    }

    private static HikariConfig postgresql(String url) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(url);
        config.setMaximumPoolSize(8);
        // A server that is gone is told soon, so that those who wait for it do not take all places.
        config.setConnectionTimeout(5_000);
        config.setValidationTimeout(2_000);
        return config;
    }

    private static void migrate(HikariDataSource connections, boolean postgresql) {
        Map<String, String> words = postgresql
                ? Map.of("refusing", "CREATE FUNCTION refuse_change() RETURNS trigger AS $refuse$ BEGIN RAISE EXCEPTION 'this line is never changed'; END $refuse$ LANGUAGE plpgsql",
                        "refuse", "FOR EACH ROW EXECUTE FUNCTION refuse_change()", "bytes", "BYTEA")
                : Map.of("refusing", "SELECT 1", "refuse", "BEGIN SELECT RAISE(ABORT, 'this line is never changed'); END", "bytes", "BLOB");
        Flyway.configure().dataSource(connections).locations("classpath:board/migrations").placeholders(words)
                .validateMigrationNaming(true).load().migrate();
    }

    /** Reads. Several reads of one call may see different moments; see {@link Records#find} for how a record stays whole. */
    public <T> T read(Function<Lines, T> work) {
        return jdbi.withHandle(handle -> work.apply(new Lines(handle)));
    }

    /** Writes all of it or nothing; when this returns, it lies on the disk. */
    public <T> T write(Function<Lines, T> work) {
        return jdbi.inTransaction(TransactionIsolationLevel.UNKNOWN, handle -> work.apply(new Lines(handle)));
    }

    /** {@link #write} without an answer. */
    public void change(Consumer<Lines> work) {
        jdbi.useTransaction(handle -> work.accept(new Lines(handle)));
    }

    /** Keeps the bytes of a photo and answers their digest; which entry it belongs to is written after that. */
    public String keepPhoto(byte[] bytes) {
        return shelf.put(bytes);
    }

    /** The bytes of a photo, or empty when they are not there, or are no longer those that were kept. */
    public Optional<byte[]> photo(String digest) {
        return shelf.get(digest);
    }

    /**
     * Copies the whole while the board runs: everything written into one file, and photos that are not there yet into the
     * folder {@code photos} beside it.
     *
     * @throws UnusableInput when the file is there already, or the store is not SQLite
     */
    public void copyTo(Path file) {
        if (!connections.getJdbcUrl().startsWith("jdbc:sqlite:")) {
            throw UnusableInput.of(file.toString(), "only a store in a folder is copied this way", "Use pg_dump for PostgreSQL");
        }
        if (Files.exists(file)) {
            throw UnusableInput.of(file.toString(), "this file is there already", "Name a new one");
        }
        folder(String.valueOf(file.toAbsolutePath().getParent()));
        jdbi.useHandle(handle -> handle.createUpdate("VACUUM INTO :file").bind("file", file.toString()).execute());
        shelf.copyTo(file.toAbsolutePath().resolveSibling(PHOTOS));
    }

    @Override
    public void close() {
        connections.close();
    }

    /** What can be read and written in one go. */
    public static final class Lines {
        private final Handle handle;

        Lines(Handle handle) {
            this.handle = handle;
        }

        Handle handle() {
            return handle;
        }

        public Records records() {
            return new Records(handle);
        }

        public Floor floor() {
            return new Floor(handle);
        }

        public Accounts accounts() {
            return new Accounts(handle);
        }

        public Events events() {
            return new Events(handle);
        }

        public Signings signings() {
            return new Signings(handle);
        }

        public Photos photos() {
            return new Photos(handle);
        }

        public Replies replies() {
            return new Replies(handle);
        }
    }
}
