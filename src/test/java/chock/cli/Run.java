package chock.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;

/** One run of the program inside a test: its exit status and what it printed. */
record Run(int status, String out, String err) {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);

    static Run of(String... args) {
        return with("", args);
    }

    static Run with(String standardInput, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = Chock.run(bench(standardInput, out, err, null), args);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    static Bench bench(String standardInput, ByteArrayOutputStream out, ByteArrayOutputStream err, String trace) {
        return new Bench(new ByteArrayInputStream(standardInput.getBytes(StandardCharsets.UTF_8)), new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), CLOCK, false, trace);
    }
}
