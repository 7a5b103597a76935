package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every route that is served, tried by everybody; this table says who may, and is written by hand. */
class WhoMayTest {
    private static final String ALL = "technician inspector lead";
    private static final String UPPER = "inspector lead";
    private static final Map<String, String> TABLE = new LinkedHashMap<>();

    static {
        for (String open : new String[] {"GET /style.css", "GET /icon.svg", "GET /bench.js", "GET /live-2.0.4.js", "GET /sign-in", "POST /sign-in", "GET /health", "GET /ready", "GET /api/openapi.json", "POST /api/session", "GET /verify", "POST /verify", "POST /api/verify"}) {
            TABLE.put(open, "everybody");
        }
        for (String read : new String[] {"GET /", "GET /machines/{id}", "GET /rules", "GET /rules/{check}", "GET /api/rules", "GET /api/rules/{check}", "POST /rules/{check}/rehearsal", "POST /api/rules/{check}/rehearsal", "GET /machines/{id}/photo", "POST /machines/{id}/photo", "GET /machines/{id}/photos/{digest}", "GET /api/machines/{id}/photos", "POST /api/machines/{id}/photos", "GET /api/machines/{id}/photos/{digest}",
            "GET /machines/{id}/sheet", "GET /machines/{id}/run", "POST /machines/{id}/run", "GET /machines/{id}/record", "GET /machines/{id}/why", "GET /machines/{id}/order", "GET /api/machines/{id}/why", "GET /api/machines/{id}/order", "GET /machines/{id}/bench", "POST /machines/{id}/bench", "GET /machines/{id}/bench/step", "POST /machines/{id}/bench/step", "GET /machines/{id}/bench/wrong", "POST /machines/{id}/bench/wrong", "GET /machines/{id}/write", "POST /machines/{id}/write", "GET /password", "POST /password", "POST /sign-out",
            "DELETE /api/session", "GET /api/machines", "GET /api/machines/{id}", "GET /api/machines/{id}/verdict", "POST /api/machines/{id}/entries", "POST /api/machines/{id}/second-reading", "GET /api/blockers",
            "GET /machines/{id}/papers/{paper}", "GET /sign-offs", "GET /sign-offs/{id}", "GET /sign-offs/{id}/file", "GET /api/sign-offs", "GET /api/sign-offs/{id}"}) {
            TABLE.put(read, ALL);
        }
        for (String upper : new String[] {"POST /machines/{id}/seeks", "POST /machines/{id}/form", "POST /machines/{id}/instruments", "GET /house", "GET /house/limits.yaml", "GET /api/impact", "GET /take", "POST /take", "GET /new-machine", "POST /new-machine", "GET /journal", "POST /api/machines", "PATCH /api/machines/{id}", "GET /api/events",
            "GET /machines/{id}/sign", "POST /machines/{id}/sign", "POST /api/machines/{id}/sign-offs", "GET /ledger", "GET /api/ledger"}) {
            TABLE.put(upper, UPPER);
        }
        for (String lead : new String[] {"GET /people", "POST /people", "POST /people/{id}", "GET /api/records", "GET /api/accounts", "POST /api/accounts", "PATCH /api/accounts/{id}", "GET /metrics", "POST /people/{id}/key", "GET /api/keys", "POST /api/ledger/lost", "POST /api/ledger/withdrawals", "POST /ledger", "PATCH /api/accounts/{id}/key"}) {
            TABLE.put(lead, "lead");
        }
    }

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;

    @BeforeAll
    static void start() {
        running = new Running(folder);
        lead = running.lead();
        running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    @Test
    void the_table_speaks_of_every_route_and_of_no_other() {
        Set<String> served = running.board.routes().map(e -> e.method.name() + " " + e.path).collect(Collectors.toSet());
        assertThat(TABLE.keySet()).containsExactlyInAnyOrderElementsOf(served);
    }

    @Test
    void every_role_is_let_in_where_it_may_and_nowhere_else() {
        Map<String, Visit> visitors = new LinkedHashMap<>();
        visitors.put("nobody", running.visitor());
        visitors.put("technician", running.person(lead, "tom", "Tom Fell", "technician"));
        visitors.put("inspector", running.person(lead, "ida", "Ida Marrow", "inspector"));
        visitors.put("lead", lead);
        int tried = 0;
        for (Map.Entry<String, String> row : TABLE.entrySet()) {
            String method = row.getKey().split(" ")[0];
            String path = row.getKey().split(" ")[1].replace("/accounts/{id}", "/accounts/none").replace("/people/{id}", "/people/none").replace("{id}", "HV-0142").replace("{paper}", "tag.pdf").replace("{check}", "tyres.age").replace("{digest}", "0".repeat(64));
            if (path.equals("/api/session") && method.equals("DELETE") || path.equals("/sign-out")) {
                continue;
            }
            for (Map.Entry<String, Visit> who : visitors.entrySet()) {
                Visit visit = who.getValue();
                HttpResponse<String> answer = method.equals("GET") ? visit.get(path) : path.startsWith("/api/") ? visit.json(method, path, "{}") : visit.post(path);
                boolean may = row.getValue().equals("everybody") || row.getValue().contains(who.getKey());
                String what = who.getKey() + ": " + row.getKey() + " gave " + answer.statusCode();
                if (may) {
                    assertThat(answer.statusCode()).as(what).isNotIn(403, 500).matches(code -> code != 401 || row.getValue().equals("everybody")).matches(code -> code != 303 || !answer.headers().firstValue("Location").orElse("").equals("/sign-in"));
                } else if (who.getKey().equals("nobody") && !path.startsWith("/api/")) {
                    assertThat(answer.statusCode()).as(what).isEqualTo(303);
                    assertThat(answer.headers().firstValue("Location")).as(what).contains("/sign-in");
                } else {
                    assertThat(answer.statusCode()).as(what).isEqualTo(who.getKey().equals("nobody") ? 401 : 403);
                }
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(100);
    }

    @Test
    void whoever_came_in_with_a_password_somebody_else_has_seen_sets_their_own_first() {
        String answer = lead.json("POST", "/api/accounts", "{\"id\":\"pim\",\"name\":\"Pim Oake\",\"role\":\"inspector\"}").body();
        Visit pim = running.visitor();
        pim.post("/sign-in", "id", "pim", "password", answer.replaceFirst("(?s).*oneTimePassword\":\"([^\"]+)\".*", "$1"));
        assertThat(pim.get("/").headers().firstValue("Location")).contains("/password");
        assertThat(pim.get("/api/machines").statusCode()).isEqualTo(403);
    }

    @Test
    void signing_out_ends_it() {
        Visit again = running.person(lead, "ann", "Ann Rudd", "technician");
        String cookie = again.cookie;
        assertThat(again.post("/sign-out").statusCode()).isEqualTo(303);
        again.cookie = cookie;
        assertThat(again.get("/api/machines").statusCode()).isEqualTo(401);
    }
}
