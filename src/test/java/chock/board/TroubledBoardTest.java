package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Store;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A board whose store is locked or gone, and callers who want to hold all its places. */
class TroubledBoardTest {
    private static final String ENTRY = "{\"point\":\"front-brake/caliper\",\"done\":\"removed\"}";
    @TempDir private Path folder;

    private static Board board(Store store) {
        return new Board(store, Bench.book(), Address.here(0), Bench.CLOCK, ZoneId.of("Europe/London"), "test", line -> { });
    }

    private static long millis(Instant since) {
        return Duration.between(since, Instant.now()).toMillis();
    }

    @Test
    void aLockedStoreIsNoFaultOfTheProgramAndTheCallerIsToldWhenToComeAgain() throws Exception {
        try (Board board = board(Store.open(folder.toString(), 200))) {
            Visit lead = new Visit(board.port()).signIn("lead", board.firstSecret().orElseThrow());
            board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
            try (Connection other = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("board.sqlite")); Statement statement = other.createStatement()) {
                statement.execute("BEGIN IMMEDIATE");
                HttpResponse<String> refused = lead.json("POST", "/api/machines/HV-0142/entries", ENTRY, "If-Match", "\"1\"");
                assertThat(refused.statusCode()).as(refused.body()).isEqualTo(503);
                assertThat(refused.headers().firstValue("Retry-After")).contains("10");
                assertThat(refused.body()).contains("The store is locked by somebody else.");
                HttpResponse<String> page = lead.post("/machines/HV-0142/write", "seen", "1", "work", "removed", "point", "front-brake/caliper");
                assertThat(page.statusCode()).isEqualTo(503);
                assertThat(page.headers().firstValue("Retry-After")).contains("10");
                statement.execute("ROLLBACK");
            }
            assertThat(lead.json("POST", "/api/machines/HV-0142/entries", ENTRY, "If-Match", "\"1\"").statusCode()).isEqualTo(201);
        }
    }

    @Test
    void aDatabaseThatIsGoneIsToldAtOnceAndTheBoardGoesOn() throws Exception {
        EmbeddedPostgres server = EmbeddedPostgres.builder().start();
        try (Board board = board(Store.open(server.getJdbcUrl("postgres", "postgres")))) {
            Visit lead = new Visit(board.port()).signIn("lead", board.firstSecret().orElseThrow());
            assertThat(lead.get("/ready").statusCode()).isEqualTo(200);
            server.close();
            for (int i = 0; i < 3; i++) {
                Instant asked = Instant.now();
                HttpResponse<String> ready = lead.get("/ready");
                assertThat(ready.statusCode()).isEqualTo(503);
                assertThat(ready.body()).isEqualTo("not ready: the store does not answer\n");
                assertThat(millis(asked)).as("at once").isLessThan(3_000);
                HttpResponse<String> health = lead.get("/health");
                assertThat(health.statusCode()).as("also to who is signed in").isEqualTo(200);
                assertThat(health.body()).isEqualTo("running\n");
            }
            HttpResponse<String> list = lead.get("/api/machines");
            assertThat(list.statusCode()).isEqualTo(503);
            assertThat(list.headers().firstValue("Retry-After")).contains("10");
        } finally {
            server.close();
        }
    }

    @Test
    void whoeverSendsTheHeadOfARequestLetterByLetterIsCutOff() throws Exception {
        try (Running running = new Running(folder)) {
            for (String before : List.of("", "GET /health HTTP/1.1\r\nHost: 127.0.0.1:" + running.board.port() + "\r\n\r\n")) {
                Instant begun = Instant.now();
                try (Socket socket = new Socket("127.0.0.1", running.board.port())) {
                    OutputStream out = socket.getOutputStream();
                    out.write((before + "GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX-Long: ").getBytes(StandardCharsets.US_ASCII));
                    assertThat(cutOff(socket, out, begun)).as("after '" + before.strip() + "'").isTrue();
                }
                assertThat(millis(begun)).isBetween(8_000L, 20_000L);
            }
            assertThat(running.visitor().get("/health").statusCode()).isEqualTo(200);
        }
    }

    /** Sends a letter every half second; true when the other side hangs up, false after 25 seconds. */
    private static boolean cutOff(Socket socket, OutputStream out, Instant begun) throws Exception {
        byte[] some = new byte[4096];
        socket.setSoTimeout(500);
        while (millis(begun) < 25_000) {
            try {
                out.write('x');
                if (socket.getInputStream().read(some) < 0) {
                    return true;
                }
            } catch (java.net.SocketTimeoutException e) {
                continue;
            } catch (SocketException e) {
                return true;
            }
        }
        return false;
    }

    @Test
    void silentCallersDoNotTakeAllPlaces() throws Exception {
        List<Socket> silent = new ArrayList<>();
        try (Running running = new Running(folder)) {
            for (int i = 0; i < Board.MOST_CONNECTIONS + 20; i++) {
                silent.add(new Socket("127.0.0.1", running.board.port()));
            }
            Instant asked = Instant.now();
            assertThat(running.visitor().get("/health").statusCode()).isEqualTo(200);
            assertThat(millis(asked)).isLessThan(15_000);
            // Silent ones have 30 s where there is room, and two where there is none.
            assertThat(silent.stream().filter(TroubledBoardTest::isEnded).count()).isGreaterThanOrEqualTo(20);
            assertThat(millis(asked)).isLessThan(25_000);
        } finally {
            for (Socket socket : silent) {
                close(socket);
            }
        }
    }

    private static boolean isEnded(Socket socket) {
        try {
            socket.setSoTimeout(5);
            return socket.getInputStream().read() < 0;
        } catch (java.net.SocketTimeoutException e) {
            return false;
        } catch (IOException e) {
            return true;
        }
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
