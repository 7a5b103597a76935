package chock.board;

import static org.assertj.core.api.Assertions.assertThat;

import chock.board.store.Store;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What people try on a web server. */
class HostileCallerTest {
    private static final String EVIL = "x\"'><script>alert(1)</script><img src=x onerror=alert(2)>";

    @TempDir
    static Path folder;
    private static Running running;
    private static Visit lead;
    private static Visit tom;

    @BeforeAll
    static void start() {
        running = new Running(folder.resolve("store"));
        lead = running.lead();
        tom = running.person(lead, "tom", "Tom Fell", "technician");
        running.board.shop().take("lark", Bench.example("lark-released.yaml"), "lead", null);
    }

    @AfterAll
    static void stop() {
        running.close();
    }

    /** Puts the evil words into every free text of a record that takes any words at all. */
    private static void poison(JsonNode node) {
        if (node instanceof ObjectNode object) {
            object.fieldNames().forEachRemaining(name -> {
                boolean free = List.of("workshop", "marque", "model", "frame-number", "engine-number", "document", "page", "note", "name", "says", "reason", "inspector", "licence").contains(name);
                if (free && object.get(name).isTextual()) {
                    object.set(name, TextNode.valueOf(object.get(name).textValue() + EVIL));
                }
            });
        }
        node.forEach(HostileCallerTest::poison);
    }

    @Test
    void words_that_are_markup_stay_words_on_every_page() {
        ObjectNode record = RecordReader.written("x", Bench.example("lark-faults.yaml"));
        record.put("record", "HV-" + EVIL);
        poison(record);
        record.withArrayProperty("entries").forEach(e -> ((ObjectNode) e).put("note", EVIL));
        assertThat(lead.json("POST", "/api/machines", record.toString()).statusCode()).isEqualTo(201);
        assertThat(lead.json("POST", "/api/accounts", "{\"id\":\"eve\",\"name\":\"Eve" + EVIL.replace("\"", "\\\"") + "\",\"role\":\"technician\"}").statusCode()).isEqualTo(201);
        String id = URLEncoder.encode("HV-" + EVIL, StandardCharsets.UTF_8).replace("+", "%20");
        String evil = URLEncoder.encode(EVIL, StandardCharsets.UTF_8);
        List<String> pages = List.of("/", "/?q=" + evil + "&check=" + evil, "/?gate=" + evil, "/?order=" + evil, "/?page=" + evil, "/people", "/journal", "/machines/" + id + "?entries=all", "/machines/" + id + "?wrote=" + evil,
                "/machines/" + id + "/write?gate=" + evil, "/machines/" + id + "/write?at=" + evil, "/machines/" + id + "/write?corrects=e1", "/machines/" + id + "/write?check=" + evil + "&at=" + evil, "/" + id,
                "/machines/" + id + "/order", "/machines/" + id + "/order?gate=" + evil, "/machines/" + id + "/why?check=brakes.pad-thickness", "/machines/" + id + "/why?check=tyres.age", "/machines/" + id + "/why?check=" + evil,
                "/machines/" + id + "/sheet", "/machines/" + id + "/photo?entry=e1", "/machines/" + id + "/photo?entry=" + evil, "/rules?q=" + evil, "/rules?system=" + evil, "/rules/" + evil, "/house?limit=" + evil, "/house?limit=" + evil + "&value=" + evil + "&reason=" + evil + "&house=" + evil);
        int shown = 0;
        for (String page : pages) {
            HttpResponse<String> answer = lead.get(page);
            assertThat(answer.statusCode()).as(page).isIn(200, 404, 422);
            assertThat(answer.body()).as(page).doesNotContain("<script").doesNotContain("<img").contains("<main");
            assertThat(answer.headers().firstValue("Content-Security-Policy")).as(page).hasValueSatisfying(csp -> assertThat(csp).contains("default-src 'none'").doesNotContain("script-src").doesNotContain("unsafe"));
            shown += answer.body().contains("&lt;script") ? 1 : 0;
        }
        assertThat(shown).as("pages that show the words").isGreaterThanOrEqualTo(6);
        for (String run : List.of("/run?volume=60", "/run?volume=" + evil + "&runs=" + evil)) {
            String planner = lead.get("/machines/" + id + run).body();
            assertThat(planner).contains("&lt;script").doesNotContain("<script>").doesNotContain("<img");
            assertThat(planner.split("<script")).as("its own script and no other").hasSize(2);
        }
        HttpResponse<String> refused = lead.post("/machines/" + id + "/write", "seen", "1", "work", EVIL, "point", EVIL, "note", EVIL, "when", EVIL, "gate", EVIL);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("&lt;script").doesNotContain("<script");
        assertThat(lead.post("/people", "id", EVIL, "name", EVIL, "role", EVIL).body()).doesNotContain("<script");
        assertThat(lead.post("/sign-in", "id", EVIL, "password", EVIL).body()).contains("&#34;").doesNotContain("<script");
    }

    @Test
    void a_form_from_elsewhere_does_nothing() {
        long before = version();
        String good = tom.form;
        String[] entry = {"seen", String.valueOf(before), "work", "removed", "point", "front-brake/caliper", "when", "2026-11-25 11:00"};
        for (String token : List.of("", "wrong", lead.form)) {
            tom.form = token;
            assertThat(tom.post("/machines/HV-0142/write", entry).statusCode()).as("token '" + token + "'").isEqualTo(403);
        }
        tom.form = good;
        byte[] body = ("form=" + good + "&seen=" + before + "&work=removed&point=front-brake/caliper&when=2026-11-25+11:00").getBytes(StandardCharsets.UTF_8);
        for (String[] from : new String[][] {{"Origin", "https://elsewhere.example"}, {"Origin", "null"}, {"Origin", "http://127.0.0.1:1"}, {"Sec-Fetch-Site", "cross-site"}, {"Sec-Fetch-Site", "same-site"}}) {
            assertThat(tom.send("POST", "/machines/HV-0142/write", "application/x-www-form-urlencoded", body, from).statusCode()).as(from[1]).isEqualTo(403);
        }
        assertThat(version()).isEqualTo(before);
        assertThat(tom.send("POST", "/machines/HV-0142/write", "application/x-www-form-urlencoded", body, "Origin", "http://127.0.0.1:" + running.board.port(), "Sec-Fetch-Site", "same-origin").statusCode()).as("the same from here").isEqualTo(303);
        assertThat(version()).isEqualTo(before + 1);
    }

    private static long version() {
        return running.board.shop().find("HV-0142").orElseThrow().version();
    }

    @Test
    void a_path_leads_nowhere_else() throws IOException {
        Files.writeString(folder.resolve("secret.txt"), "hush");
        for (String path : List.of("/../secret.txt", "/..%2fsecret.txt", "/%2e%2e/secret.txt", "/machines/..%2f..%2fsecret.txt", "/machines/%2e%2e%2f%2e%2e%2fetc%2fpasswd", "/style.css/../../secret.txt", "/machines/..%5c..%5csecret.txt", "/machines/x%00y", "/board/migrations/V1__store.sql", "/WEB-INF/web.xml")) {
            String answer = raw("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1:" + running.board.port() + "\r\nCookie: " + lead.cookie + "\r\nConnection: close\r\n\r\n");
            assertThat(answer.lines().findFirst().orElse("")).as(path).containsPattern(" (400|404) ");
            assertThat(answer).as(path).doesNotContain("hush").doesNotContain("root:").doesNotContain("CREATE TABLE").doesNotContain("Exception");
        }
    }

    private static String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", running.board.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void another_name_for_this_machine_is_not_served() throws IOException {
        assertThat(raw("GET /health HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 421");
        assertThat(raw("GET /health HTTP/1.1\r\nHost: localhost:" + running.board.port() + "\r\nConnection: close\r\n\r\n")).startsWith("HTTP/1.1 200");
    }

    @Test
    void what_is_too_large_or_no_record_is_refused_and_nothing_is_kept() {
        long before = count();
        assertThat(lead.upload("/take", new byte[6_000_000]).statusCode()).as(() -> running.log.stream().filter(l -> l.contains("failure")).toList().toString()).isEqualTo(413);
        assertThat(lead.json("POST", "/api/machines", " ".repeat(6_000_000)).statusCode()).isEqualTo(413);
        assertThat(tom.post("/machines/HV-0142/write", "seen", "1", "note", "x".repeat(200_000)).statusCode()).isEqualTo(413);
        assertThat(tom.post("/machines/HV-0142/write", "seen", String.valueOf(version()), "work", "removed", "point", "front-brake/caliper", "note", "x".repeat(50_000)).body()).contains("Write one thing in one entry");
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10, 0, 0, 0, 13};
        HttpResponse<String> refused = lead.upload("/take", picture);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("this is not a text file");
        assertThat(lead.upload("/take", "chock: job-record/2\na: &x [*x]\n".getBytes(StandardCharsets.UTF_8)).body()).contains("anchor");
        assertThat(lead.send("POST", "/api/machines/HV-0142/entries", "text/plain", "[]".getBytes(StandardCharsets.UTF_8), "X-Form-Token", lead.form, "If-Match", "\"1\"").statusCode()).isEqualTo(415);
        byte[] broken = "\u0000\u0000\u0000{\u0000\u0000\u0000}\u7b7b\u7b7b\u7b7b".getBytes(StandardCharsets.UTF_16BE);
        for (byte[] letters : List.of(broken, new byte[] {0, 0, 0, '{', '{', '{', '{', '{'}, new byte[] {(byte) 0xff, (byte) 0xfe, 0, 0, 1})) {
            assertThat(lead.send("POST", "/api/machines/HV-0142/entries", "application/json", letters, "X-Form-Token", lead.form, "If-Match", "\"1\"").statusCode()).as("letters that are none").isEqualTo(400);
        }
        for (String dots : List.of(".", "..")) {
            ObjectNode record = RecordReader.written("x", Bench.example("lark-faults.yaml")).put("record", dots);
            assertThat(lead.json("POST", "/api/machines", record.toString()).body()).contains("is no number to call a machine by");
        }
        assertThat(count()).isEqualTo(before);
    }

    /** Every link and form of its pages is gone after, until there is nothing new. */
    @Test
    void a_number_with_signs_of_an_address_leads_to_its_own_pages() {
        String number = "HV/1?a=b#c%25 %2e&d;e+f";
        ObjectNode record = RecordReader.written("x", Bench.example("lark-faults.yaml")).put("record", number);
        assertThat(lead.json("POST", "/api/machines", record.toString()).statusCode()).isEqualTo(201);
        String id = URLEncoder.encode(number, StandardCharsets.UTF_8).replace("+", "%20");
        Deque<String> ways = new ArrayDeque<>(List.of("/?q=HV%2F1", "/machines/" + id + "?entries=all", "/machines/" + id + "/write?gate=road-test", "/machines/" + id + "/photo?entry=e1"));
        Set<String> seen = new LinkedHashSet<>();
        while (!ways.isEmpty() && seen.size() < 60) {
            String way = ways.remove();
            if (!seen.add(way)) {
                continue;
            }
            HttpResponse<String> page = lead.get(way);
            assertThat(page.statusCode()).as(way).isIn(200, 405);
            Pattern.compile("(?:href|action|src)=\"(/machines/[^\"#]+)").matcher(page.body()).results().map(m -> m.group(1).replace("&amp;", "&"))
                    .filter(link -> link.contains("HV%2F1") || link.contains("HV/1")).forEach(link -> {
                        assertThat(link).as("on " + way).startsWith("/machines/" + id);
                        // Papers are set anew each time, and one is as good as another.
                        if (!link.contains("/papers/") || link.contains("tag.pdf")) {
                            ways.add(link);
                        }
                    });
        }
        assertThat(seen).hasSizeGreaterThan(20);
    }

    private static long count() {
        return Long.parseLong(lead.get("/api/machines?size=1").body().replaceFirst("(?s).*\"all\":(\\d+).*", "$1"));
    }

    @Test
    void database_language_in_a_filter_is_only_words() {
        for (String words : List.of("' OR '1'='1", "'; DROP TABLE entry; --", "%' OR 1=1 --", "\\' OR 1=1")) {
            String q = URLEncoder.encode(words, StandardCharsets.UTF_8);
            assertThat(lead.get("/api/machines?q=" + q).body()).as(words).contains("\"all\":0");
            assertThat(lead.get("/api/machines?check=" + q).body()).as(words).contains("\"all\":0");
            assertThat(lead.get("/api/machines?gate=" + q).statusCode()).as(words).isEqualTo(422);
            assertThat(lead.get("/api/machines?order=" + q).statusCode()).as(words).isEqualTo(422);
            assertThat(lead.get("/api/machines?state=" + q).statusCode()).as(words).isEqualTo(422);
            assertThat(lead.get("/api/machines/" + q.replace("+", "%20")).statusCode()).as(words).isEqualTo(404);
        }
        assertThat(count()).isPositive();
    }

    @Test
    void a_session_given_from_outside_is_not_taken_up() {
        String password = lead.json("POST", "/api/accounts", "{\"id\":\"nell\",\"name\":\"Nell Ware\",\"role\":\"technician\"}").body().replaceFirst("(?s).*oneTimePassword\":\"([^\"]+)\".*", "$1");
        Visit nell = running.visitor();
        nell.cookie = "chock=planted-by-somebody";
        nell.signIn("nell", password);
        assertThat(nell.cookie).startsWith("chock=").isNotEqualTo("chock=planted-by-somebody");
        Visit planter = running.visitor();
        planter.cookie = "chock=planted-by-somebody";
        assertThat(planter.get("/api/machines").statusCode()).isEqualTo(401);
        String first = nell.cookie;
        nell.post("/password", "old", "own words of " + password, "new", "quite another thing", "again", "quite another thing");
        assertThat(nell.cookie).isNotEqualTo(first);
        planter.cookie = first;
        assertThat(planter.get("/api/machines").statusCode()).as("the session before the new password").isEqualTo(401);
    }

    @Test
    void the_cookie_is_for_this_board_alone() {
        HttpResponse<String> in = running.visitor().json("POST", "/api/session", "{\"id\":\"nobody\",\"password\":\"x\"}");
        assertThat(in.statusCode()).isEqualTo(401);
        Visit somebody = running.person(lead, "ash", "Ash Lowe", "technician");
        HttpResponse<String> change = somebody.post("/password", "old", "not it", "new", "quite another thing", "again", "quite another thing");
        assertThat(change.statusCode()).isEqualTo(422);
        Visit fresh = running.visitor();
        String password = lead.json("POST", "/api/accounts", "{\"id\":\"bea\",\"name\":\"Bea Holt\",\"role\":\"technician\"}").body().replaceFirst("(?s).*oneTimePassword\":\"([^\"]+)\".*", "$1");
        assertThat(fresh.post("/sign-in", "id", "bea", "password", password).headers().firstValue("Set-Cookie").orElseThrow()).contains("HttpOnly").contains("SameSite=Strict").contains("Path=/");
    }

    @Test
    void nobody_makes_themselves_more() {
        assertThat(tom.json("PATCH", "/api/accounts/tom", "{\"role\":\"lead\",\"active\":true}").statusCode()).isEqualTo(403);
        assertThat(tom.post("/people/tom", "role", "lead", "active", "yes").statusCode()).isEqualTo(403);
        assertThat(tom.json("POST", "/api/accounts", "{\"id\":\"t2\",\"name\":\"T Two\",\"role\":\"lead\"}").statusCode()).isEqualTo(403);
        assertThat(tom.json("PATCH", "/api/machines/HV-0142", "{\"seeks\":[\"on-show\"]}", "If-Match", "\"1\"").statusCode()).isEqualTo(403);
        HttpResponse<String> named = tom.json("POST", "/api/machines/HV-0142/entries", "[{\"by\":\"ida\",\"point\":\"front-brake/caliper\",\"done\":\"removed\"}]", "If-Match", "\"" + version() + "\"");
        assertThat(named.statusCode()).as("in another's name").isEqualTo(422);
        assertThat(lead.json("PATCH", "/api/accounts/lead", "{\"role\":\"technician\",\"active\":true}").statusCode()).as("the last lead").isEqualTo(422);
        assertThat(lead.get("/people").statusCode()).as("and is lead still").isEqualTo(200);
    }

    @Test
    void passwords_cannot_be_tried_out() {
        String id = "oss";
        String password = lead.json("POST", "/api/accounts", "{\"id\":\"oss\",\"name\":\"Oss Pell\",\"role\":\"technician\"}").body().replaceFirst("(?s).*oneTimePassword\":\"([^\"]+)\".*", "$1");
        for (int i = 0; i < 5; i++) {
            assertThat(running.visitor().post("/sign-in", "id", id, "password", "guess " + i).statusCode()).isEqualTo(401);
        }
        HttpResponse<String> sixth = running.visitor().post("/sign-in", "id", id, "password", password);
        assertThat(sixth.statusCode()).as("even the right one").isEqualTo(429);
        assertThat(sixth.headers().firstValue("Retry-After")).isPresent();
        running.pass(Duration.ofMinutes(16));
        assertThat(running.visitor().post("/sign-in", "id", id, "password", password).statusCode()).isEqualTo(303);
    }

    @Test
    void the_log_holds_no_secret() {
        assertThat(running.log).isNotEmpty().allMatch(line -> line.startsWith("{\"at\":"));
        assertThat(String.join("\n", running.log)).doesNotContain(running.leadSecret).doesNotContain(lead.cookie.substring(6)).doesNotContain(lead.form);
    }

    @Test
    void others_are_served_only_by_tls_or_a_stated_proxy() {
        Assertions.assertThatThrownBy(() -> new Address("0.0.0.0", 0, null, null, null, false)).isInstanceOf(UnusableInput.class).hasMessageContaining("others could read passwords");
        Assertions.assertThatThrownBy(() -> new Address("127.0.0.1", 0, URI.create("http://board.example"), null, null, true)).isInstanceOf(UnusableInput.class).hasMessageContaining("https://board.example");
        assertThat(new Address("0.0.0.0", 0, URI.create("https://board.example"), null, null, true).secure()).isTrue();
    }

    @Test
    void behind_a_proxy_the_cookie_asks_for_tls() {
        Address proxied = new Address("127.0.0.1", 0, URI.create("https://board.example"), null, null, true);
        try (Board board = new Board(Store.open(folder.resolve("proxied").toString()), Bench.book(), proxied, Bench.CLOCK, java.time.ZoneOffset.UTC, "test", line -> { })) {
            String body = "id=lead&password=" + board.firstSecret().orElseThrow();
            try (Socket socket = new Socket("127.0.0.1", board.port())) {
                socket.setSoTimeout(20_000);
                socket.getOutputStream().write(("POST /sign-in HTTP/1.1\r\nHost: board.example\r\nOrigin: https://board.example\r\nX-Forwarded-For: 10.1.1.1\r\nContent-Type: application/x-www-form-urlencoded\r\nContent-Length: " + body.length() + "\r\nConnection: close\r\n\r\n" + body).getBytes(StandardCharsets.ISO_8859_1));
                String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
                assertThat(answer).startsWith("HTTP/1.1 303").contains("__Host-chock=").contains("Secure").contains("Strict-Transport-Security");
            }
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
