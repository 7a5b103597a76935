package chock.board.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A store that is locked, full or gone is told apart from a fault of the program. */
class UnavailableTest {
    @TempDir private Path folder;

    private static String says(Throwable failure) {
        return Unavailable.of(new IllegalStateException(failure)).map(Unavailable::says).orElse("none");
    }

    @Test
    void aFullStoreIsFullWhateverItsSize() {
        try (Store store = Store.open(folder.toString())) {
            Throwable full = catchThrowable(() -> store.change(lines -> {
                lines.handle().execute("PRAGMA max_page_count = 1");
                for (int i = 0; i < 2000; i++) {
                    lines.events().add(java.time.Instant.EPOCH, "ida", "x".repeat(1000), null, "x".repeat(1000));
                }
            }));
            assertThat(full).isNotNull();
            assertThat(Unavailable.of(full)).contains(new Unavailable("The disk of the store is full.", 60));
        }
    }

    @Test
    void byTheStatesOfPostgresqlAndTheWordsOfTheSystem() {
        // Classes from https://www.postgresql.org/docs/current/errcodes-appendix.html, from memory
        assertThat(says(new SQLException("x", "53100"))).isEqualTo("The disk of the store is full.");
        assertThat(says(new SQLException("x", "53300"))).isEqualTo("The store has too much to do.");
        assertThat(says(new SQLException("x", "55P03"))).isEqualTo("The store is locked by somebody else.");
        assertThat(says(new SQLException("x", "08006"))).isEqualTo("The store does not answer.");
        assertThat(says(new SQLException("x", "57P01"))).isEqualTo("The store does not answer.");
        assertThat(says(new SQLException("x", "25006"))).isEqualTo("The store can only be read now.");
        assertThat(says(new SQLTransientConnectionException("x"))).isEqualTo("The store does not answer.");
        assertThat(says(new FileSystemException("photo", null, "No space left on device"))).isEqualTo("The disk of the store is full.");
    }

    @Test
    void aFaultOfTheProgramIsNone() {
        assertThat(says(new SQLException("duplicate key", "23505"))).isEqualTo("none");
        assertThat(says(new SQLException("syntax error", "42601"))).isEqualTo("none");
        assertThat(says(new NullPointerException())).isEqualTo("none");
    }
}
