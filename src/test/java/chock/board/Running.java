package chock.board;

import chock.board.store.Store;
import chock.rulebook.RuleBook;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.ArrayList;

/** A running board for tests, on this machine alone, with a clock that is moved by hand. */
final class Running implements AutoCloseable {
    final List<String> log = Collections.synchronizedList(new ArrayList<>());
    private volatile Instant now = Bench.NOON;
    final Board board;
    final String leadSecret;

    Running(Path folder) {
        this(folder, null);
    }

    /** @param workshop whose sign-offs are made there, or null */
    Running(Path folder, chock.signoff.Shop workshop) {
        this(folder, Bench.book(), workshop);
    }

    Running(Path folder, RuleBook book, chock.signoff.Shop workshop) {
        Clock clock = new Clock() {
            @Override
            public ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                return now;
            }
        };
        board = new Board(Store.open(folder.toString()), book, workshop, Address.here(0), clock, ZoneId.of("Europe/London"), "test", log::add);
        leadSecret = board.firstSecret().orElse("");
    }

    void pass(Duration time) {
        now = now.plus(time);
    }

    Instant now() {
        return now;
    }

    Visit visitor() {
        return new Visit(board.port());
    }

    Visit lead() {
        return visitor().signIn("lead", leadSecret);
    }

    /** Adds a person and signs them in. */
    Visit person(Visit lead, String id, String name, String role) {
        String answer = lead.json("POST", "/api/accounts", "{\"id\":\"" + id + "\",\"name\":\"" + name + "\",\"role\":\"" + role + "\"}").body();
        return visitor().signIn(id, answer.replaceFirst("(?s).*oneTimePassword\":\"([^\"]+)\".*", "$1"));
    }

    @Override
    public void close() {
        board.close();
    }
}
