package chock.board;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/** What stands behind the question mark of an address. */
final class Query {
    private Query() { }

    /** That of this request with one thing otherwise; an empty value leaves it out. */
    static String with(Context ctx, String name, String value) {
        Map<String, String> all = new LinkedHashMap<>();
        ctx.queryParamMap().forEach((key, values) -> all.put(key, values.get(0)));
        all.put(name, value);
        return of(all);
    }

    static String of(Map<String, String> all) {
        return all.entrySet().stream().filter(one -> !one.getValue().isEmpty()).map(one -> encoded(one.getKey()) + "=" + encoded(one.getValue())).collect(Collectors.joining("&"));
    }

    static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
