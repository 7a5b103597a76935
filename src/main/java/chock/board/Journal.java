package chock.board;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.function.Consumer;

/** What the board says of its own running, one JSON object a line. It never holds what was sent: only where to, and what became of it. */
final class Journal {
    private final Consumer<String> lines;

    Journal(Consumer<String> lines) {
        this.lines = lines;
    }

    void request(Instant at, String method, String path, int status, double milliseconds, String account, String from) {
        write(line(at, "request").put("method", method).put("path", path).put("status", status).put("ms", Math.round(milliseconds * 10) / 10.0).put("account", account).put("from", from));
    }

    void failure(Instant at, String number, Throwable cause) {
        StackTraceElement[] trace = cause.getStackTrace();
        write(line(at, "failure").put("number", number).put("class", cause.getClass().getName()).put("where", trace.length == 0 ? "" : trace[0].toString()));
    }

    void said(Instant at, String what) {
        write(line(at, what));
    }

    private static ObjectNode line(Instant at, String what) {
        return JsonNodeFactory.instance.objectNode().put("at", at.toString()).put("what", what);
    }

    private void write(ObjectNode line) {
        lines.accept(line.toString());
    }
}
