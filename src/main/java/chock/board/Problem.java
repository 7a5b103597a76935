package chock.board;

import chock.record.Fault;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/**
 * What went wrong with a request (RFC 9457).
 *
 * @param faults what is wrong with what was sent, each with its place
 */
record Problem(int status, String title, String detail, List<Fault> faults) {
    static final String TYPE = "application/problem+json";

    static String title(int status) {
        return switch (status) {
            case 400 -> "Cannot be read";
            case 401 -> "Not signed in";
            case 403 -> "Not allowed";
            case 404 -> "Not there";
            case 405 -> "Not done this way";
            case 409 -> "Already there";
            case 412 -> "Written to since";
            case 413 -> "Too large";
            case 415 -> "Another kind of content";
            case 421 -> "Another address";
            case 422 -> "Refused";
            case 428 -> "Say what you have seen";
            case 429 -> "Too often";
            default -> status >= 500 ? "The board failed" : "Refused";
        };
    }

    static Problem of(int status, String detail) {
        return new Problem(status, title(status), detail, List.of());
    }

    String json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("type", "about:blank").put("title", title).put("status", status).put("detail", detail);
        if (!faults.isEmpty()) {
            ArrayNode all = node.putArray("faults");
            faults.forEach(f -> all.addObject().put("line", f.line()).put("path", f.path()).put("what", f.what()).put("advice", f.advice()));
        }
        return node.toString();
    }
}
