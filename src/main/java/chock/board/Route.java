package chock.board;

import io.javalin.http.Handler;
import io.javalin.http.HandlerType;
import java.util.ArrayList;
import java.util.List;

/** One thing the API does: how it is asked, who may, and what it says; the same table serves requests and describes them. */
final class Route {
    final HandlerType method;
    final String path;
    final Action action;
    final String says;
    final Handler handler;
    final List<String[]> queries = new ArrayList<>();
    String body;
    boolean match;
    boolean key;
    int status = 200;
    String answer;

    private Route(HandlerType method, String path, Action action, String says, Handler handler) {
        this.method = method;
        this.path = path;
        this.action = action;
        this.says = says;
        this.handler = handler;
    }

    static Route get(String path, Action action, String says, Handler handler) {
        return new Route(HandlerType.GET, path, action, says, handler);
    }

    static Route post(String path, Action action, String says, Handler handler) {
        return new Route(HandlerType.POST, path, action, says, handler);
    }

    static Route patch(String path, Action action, String says, Handler handler) {
        return new Route(HandlerType.PATCH, path, action, says, handler);
    }

    static Route delete(String path, Action action, String says, Handler handler) {
        return new Route(HandlerType.DELETE, path, action, says, handler);
    }

    Route query(String name, String meaning) {
        queries.add(new String[] {name, meaning});
        return this;
    }

    Route body(String schema) {
        body = schema;
        return this;
    }

    /** Wants If-Match. */
    Route match() {
        match = true;
        return this;
    }

    /** Takes an Idempotency-Key. */
    Route key() {
        key = true;
        return this;
    }

    Route answers(int code, String schema) {
        status = code;
        answer = schema;
        return this;
    }
}
