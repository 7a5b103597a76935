package chock.board;

import chock.board.store.Accounts.Account;
import chock.board.store.Store;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** What the tests of the board share: the rule book, a fixed noon, the example records and three people. */
public final class Bench {
    public static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    public static final Clock CLOCK = Clock.fixed(NOON, ZoneOffset.UTC);
    public static final Account IDA = new Account("ida", "Ida Marrow", "inspector", "", false, true);
    public static final Account TOM = new Account("tom", "Tom Fell", "technician", "", false, true);
    private static final ObjectMapper JSON = new ObjectMapper();
    private static RuleBook book;

    private Bench() { }

    public static synchronized RuleBook book() {
        if (book == null) {
            book = RuleBook.shipped();
        }
        return book;
    }

    public static Shop shop(Store store) {
        return new Shop(store, new Judging(book()), CLOCK);
    }

    public static byte[] example(String name) {
        try {
            return Files.readAllBytes(Path.of("docs/examples", name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@code done("front-brake/caliper", "removed")} and the like, from name and value in turn. */
    public static ObjectNode entry(String... words) {
        ObjectNode entry = JSON.createObjectNode();
        for (int i = 0; i < words.length; i += 2) {
            entry.put(words[i], words[i + 1]);
        }
        return entry;
    }
}
