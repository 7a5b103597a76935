package chock.board;

import chock.board.store.Accounts.Account;
import chock.board.store.Events;
import chock.board.store.Floor;
import chock.board.store.Kept;
import chock.board.store.Replies.Reply;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.report.JsonReport;
import chock.signoff.Canonical;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The board for programs, under {@code /api}. */
final class Api {
    private static final int MOST = 200;
    private static final ObjectMapper JSON = JsonMapper.builder().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION).build();
    private static final Pattern TAG = Pattern.compile("(?:W/)?\"(\\d{1,18})(?:-[0-9a-f]{64})?\"");

    private final Store store;
    private final Shop shop;
    private final Judging judging;
    private final People people;
    private final Guard guard;
    private final Clock clock;

    Api(Store store, Shop shop, Judging judging, People people, Guard guard, Clock clock) {
        this.store = store;
        this.shop = shop;
        this.judging = judging;
        this.people = people;
        this.guard = guard;
        this.clock = clock;
    }

    List<Route> routes() {
        return List.of(
                Route.post("/api/session", Action.ENTER, "Sign in", this::signIn).body("signIn").answers(200, "session"),
                Route.delete("/api/session", Action.OWN_ACCOUNT, "Sign out", this::signOut).answers(204, null),
                Route.get("/api/machines", Action.READ, "List machines", this::machines).query("q", "words in number, marque, model, frame or engine number").query("gate", "a gate sought").query("state", "released or held, at that gate or any")
                        .query("check", "id of a check that holds it").query("order", "id, nearest, latest or lapses").query("page", "from 1").query("size", "machines a page, up to " + MOST).answers(200, "machines"),
                Route.post("/api/machines", Action.TAKE_RECORD, "Take a record file in", this::take).body("record").key().answers(201, "done"),
                Route.get("/api/machines/{id}", Action.READ, "Read a record", this::machine).query("format", "json or yaml").answers(200, "record"),
                Route.get("/api/machines/{id}/verdict", Action.READ, "Judge a record now", this::verdict).query("gate", "a gate; may be given several times; else those sought").answers(200, "verdict"),
                Route.post("/api/machines/{id}/entries", Action.WRITE_ENTRY, "Write entries in your own name", this::entries).body("entries").match().key().answers(201, "done"),
                Route.patch("/api/machines/{id}", Action.CHANGE_SHEET, "Change gates sought, instruments, maker's figures or claims; write what the machine was built with, or dated changes of its description", this::sheet).body("sheet").match().key().answers(201, "done"),
                Route.post("/api/machines/{id}/second-reading", Action.SECOND, "Say what you read yourself, where somebody else read a maker's figure or wrote what the machine was built with", this::second).body("secondReading").match().key().answers(201, "done"),
                Route.get("/api/blockers", Action.READ, "List the checks that hold most machines", this::blockers).query("gate", "a gate").answers(200, "blockers"),
                Route.get("/api/records", Action.EXPORT_ALL, "Take all records out, one JSON object a line", this::export).answers(200, "ndjson"),
                Route.get("/api/events", Action.READ_JOURNAL, "Read who did what", this::events).query("page", "from 1").answers(200, "events"),
                Route.get("/api/accounts", Action.MANAGE_ACCOUNTS, "List accounts", this::accounts).answers(200, "accounts"),
                Route.post("/api/accounts", Action.MANAGE_ACCOUNTS, "Add an account", this::addAccount).body("account").answers(201, "secret"),
                Route.patch("/api/accounts/{id}", Action.MANAGE_ACCOUNTS, "Change an account's role, or whether it may sign in", this::changeAccount).body("accountChange").answers(200, "account"));
    }

    private void signIn(Context ctx) {
        JsonNode body = object(ctx, "id", "password");
        People.SignedIn in = people.signIn(text(body, "id"), text(body, "password"), guard.caller(ctx));
        guard.hand(ctx, in);
        ctx.contentType("application/json").result(node().put("account", in.visitor().account().id()).put("role", in.visitor().role().word())
                .put("formToken", in.visitor().form()).put("mustChangePassword", in.visitor().account().mustChange()).toString());
    }

    private void signOut(Context ctx) {
        people.signOut(Guard.visitor(ctx));
        guard.takeBack(ctx);
        ctx.status(204);
    }

    private void machines(Context ctx) {
        int size = number(ctx, "size", 50, MOST);
        int page = number(ctx, "page", 1, 1_000_000);
        Floor.Sieve sieve = sieve(ctx);
        Floor.Order order = order(ctx.queryParam("order"));
        List<Floor.Row> rows = store.read(lines -> lines.floor().list(sieve, order, (page - 1) * size, size, judging.key(), clock.instant()));
        long all = store.read(lines -> lines.floor().count(sieve));
        ObjectNode answer = node().put("all", all).put("page", page).put("size", size);
        ArrayNode list = answer.putArray("machines");
        rows.forEach(row -> {
            ObjectNode one = list.addObject().put("id", row.id()).put("version", row.version()).put("marque", row.marque()).put("model", row.model()).put("workshop", row.workshop())
                    .put("writtenAt", row.writtenAt().toString()).put("judged", row.judged());
            row.gates().forEach(gate -> one.withObjectProperty("gates").set(gate.gate(), gate(gate, row.judged())));
        });
        answer.put("next", (long) page * size < all ? "/api/machines?" + Query.with(ctx, "page", String.valueOf(page + 1)) : null);
        json(ctx, answer);
    }

    static Floor.Order order(String word) {
        for (Floor.Order order : Floor.Order.values()) {
            if (word == null || word.isEmpty() || order.word().equals(word)) {
                return order;
            }
        }
        throw new Refusal(422, "'" + word + "' is no order; write id, nearest, latest or lapses.");
    }

    static Floor.Sieve sieve(Context ctx) {
        String gate = Optional.ofNullable(ctx.queryParam("gate")).orElse("");
        if (!gate.isEmpty()) {
            gateOf(gate);
        }
        String state = Optional.ofNullable(ctx.queryParam("state")).orElse("");
        if (!state.isEmpty() && !state.equals("released") && !state.equals("held")) {
            throw new Refusal(422, "'" + state + "' is no state to list by; write released or held.");
        }
        return new Floor.Sieve(ctx.queryParam("q"), gate, state.isEmpty() ? null : state.equals("released"), ctx.queryParam("check"), null, null);
    }

    static Gate gateOf(String word) {
        return Gate.of(word).orElseThrow(() -> new Refusal(422, "'" + word + "' is no gate; write one of " + String.join(", ", java.util.Arrays.stream(Gate.values()).map(Gate::id).toList()) + "."));
    }

    private static ObjectNode gate(Summary.OfGate gate, boolean judged) {
        ObjectNode node = node().put("verdict", gate.released() && judged ? "released" : "blocked").put("holdsUntil", gate.released() && judged ? gate.holdsUntil().toString() : null)
                .put("faults", gate.faults()).put("doubts", gate.doubts()).put("stale", gate.stales()).put("missing", gate.missings()).put("met", gate.mets()).put("undecided", gate.undecided());
        ArrayNode held = node.putArray("worst");
        gate.held().forEach(h -> held.addObject().put("check", h.check()).put("state", h.state()).put("critical", h.critical()).put("says", h.says()));
        return node;
    }

    private void machine(Context ctx) throws IOException {
        Kept kept = kept(ctx);
        String tag = tag(kept.version());
        ctx.header("ETag", tag);
        if (tag.equals(ctx.header("If-None-Match"))) {
            ctx.status(304);
            return;
        }
        if ("yaml".equals(ctx.queryParam("format"))) {
            ctx.contentType("application/yaml").result(yaml(kept).getBytes(StandardCharsets.UTF_8));
        } else {
            json(ctx, kept.record());
        }
    }

    static String yaml(Kept kept) throws IOException {
        return new YAMLMapper().writeValueAsString(kept.record());
    }

    private void verdict(Context ctx) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        List<Gate> gates = ctx.queryParams("gate").isEmpty() ? record.seeks() : ctx.queryParams("gate").stream().map(Api::gateOf).toList();
        String answer = JsonReport.of(List.of(judging.assess(record, gates, now)));
        ctx.header("ETag", verdictTag(kept.version(), judging.key(), answer)).contentType("application/json").result(answer);
    }

    /**
     * The tag of a verdict: of the record's version, of what judged it, and of the answer itself but for the moment of
     * judgement. A verdict changes without a write, at midnight, with a house or a rule book; the version says nothing of
     * that. Weak, since a kept answer bears an earlier moment.
     */
    static String verdictTag(long version, String key, String answer) {
        try {
            ArrayNode records = (ArrayNode) JSON.readTree(answer);
            records.forEach(record -> ((ObjectNode) record).remove("asOf"));
            return "W/\"" + version + "-" + Canonical.digest((key + records).getBytes(StandardCharsets.UTF_8)).substring("sha256:".length()) + "\"";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private void take(Context ctx) {
        once(ctx, (once, by) -> shop.take("record", ctx.bodyAsBytes(), by.id(), once));
    }

    private void entries(Context ctx) {
        long seen = seen(ctx);
        JsonNode body = read(ctx);
        List<ObjectNode> entries = new ArrayList<>();
        for (JsonNode one : body.isArray() ? body : JSON.createArrayNode().add(body)) {
            if (!(one instanceof ObjectNode entry) || entries.size() == 100) {
                throw new Refusal(422, "Write a list of up to 100 entries, each an object such as {\"point\": \"front-brake/caliper\", \"done\": \"removed\"}.");
            }
            entries.add(entry);
        }
        if (entries.isEmpty()) {
            throw new Refusal(422, "No entry was sent.");
        }
        String id = kept(ctx).id();
        once(ctx, (once, by) -> shop.write(id, seen, entries, by, once));
    }

    private void sheet(Context ctx) {
        long seen = seen(ctx);
        if (!(read(ctx) instanceof ObjectNode changes) || changes.isEmpty()) {
            throw new Refusal(422, "Write an object with what is to change, such as {\"seeks\": [\"road-test\"]}.");
        }
        String id = kept(ctx).id();
        once(ctx, (once, by) -> shop.changeSheet(id, seen, changes, by, once));
    }

    private void second(Context ctx) {
        long seen = seen(ctx);
        ObjectNode said = (ObjectNode) object(ctx, "figure", "as-built");
        String id = kept(ctx).id();
        once(ctx, (once, by) -> shop.second(id, seen, said, by, once));
    }

    /** A write, done once for each key; sent again, it is answered as it was the first time. */
    private void once(Context ctx, java.util.function.BiFunction<Shop.Once, Account, Shop.Done> write) {
        Account by = Guard.visitor(ctx).account();
        String key = key(ctx);
        String digest = key == null ? null : digest(ctx);
        Optional<Reply> earlier = key == null ? Optional.empty() : store.read(lines -> lines.replies().find(by.id(), key));
        if (earlier.isPresent()) {
            answer(ctx, earlier.get(), digest);
            return;
        }
        Function<Shop.Done, String> body = done -> done(done).toString();
        try {
            Shop.Done done = write.apply(new Shop.Once(by.id(), key, digest, body), by);
            ctx.status(201).header("ETag", tag(done.version())).header("Location", "/api/machines/" + Query.encoded(done.machine())).contentType("application/json").result(body.apply(done));
        } catch (Shop.WrittenSince | Shop.Taken e) {
            // The same write may have been done a moment ago by its twin.
            Optional<Reply> twin = key == null ? Optional.empty() : store.read(lines -> lines.replies().find(by.id(), key));
            answer(ctx, twin.orElseThrow(() -> e), digest);
        }
    }

    /** What the caller gave so that this is done once, or null. */
    static String key(Context ctx) {
        String key = ctx.header("Idempotency-Key");
        if (key != null && (key.isBlank() || key.length() > 100)) {
            throw new Refusal(422, "An Idempotency-Key has 1 to 100 characters.");
        }
        return key;
    }

    private static void answer(Context ctx, Reply reply, String digest) {
        if (!reply.digest().equals(digest)) {
            throw new Refusal(422, "This Idempotency-Key was used for another write.");
        }
        ctx.status(reply.status()).header("ETag", tag(Long.parseLong(reply.tag()))).contentType("application/json").result(reply.body());
    }

    private static String digest(Context ctx) {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            sha.update((ctx.method() + " " + ctx.path() + "\n").getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(sha.digest(ctx.bodyAsBytes()));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private static ObjectNode done(Shop.Done done) {
        ObjectNode node = node().put("machine", done.machine()).put("version", done.version());
        ArrayNode ids = node.putArray("entries");
        done.entries().forEach(ids::add);
        done.after().gates().forEach(gate -> node.withObjectProperty("gates").set(gate.gate(), gate(gate, true)));
        return node;
    }

    private void blockers(Context ctx) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        String gate = Optional.ofNullable(ctx.queryParam("gate")).orElse("");
        if (!gate.isEmpty()) {
            gateOf(gate);
        }
        store.read(lines -> lines.floor().blockers(gate, 50)).forEach(b -> list.addObject().put("check", b.check()).put("machines", b.machines()));
        json(ctx, list);
    }

    private void export(Context ctx) throws IOException {
        ctx.contentType("application/x-ndjson");
        for (String id : store.read(lines -> lines.records().ids())) {
            Kept kept = shop.find(id).orElseThrow();
            ctx.outputStream().write((kept.record() + "\n").getBytes(StandardCharsets.UTF_8));
        }
    }

    private void events(Context ctx) {
        int page = number(ctx, "page", 1, 1_000_000);
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        List<Events.Event> events = store.read(lines -> lines.events().latest((page - 1) * 100, 100));
        events.forEach(e -> list.addObject().put("id", e.id()).put("at", e.at().toString()).put("account", e.account()).put("action", e.action()).put("machine", e.machine()).put("detail", e.detail()));
        json(ctx, list);
    }

    private void accounts(Context ctx) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        people.all().forEach(a -> list.add(account(a)));
        json(ctx, list);
    }

    private static ObjectNode account(Account a) {
        return node().put("id", a.id()).put("name", a.name()).put("role", a.role()).put("active", a.active());
    }

    private void addAccount(Context ctx) {
        JsonNode body = object(ctx, "id", "name", "role");
        String secret = people.add(Guard.visitor(ctx), text(body, "id"), text(body, "name"), text(body, "role"));
        ctx.status(201);
        json(ctx, node().put("id", text(body, "id")).put("oneTimePassword", secret));
    }

    private void changeAccount(Context ctx) {
        JsonNode body = object(ctx, "role", "active");
        if (!body.path("active").isBoolean()) {
            throw new Refusal(422, "Write active as true or false.");
        }
        people.change(Guard.visitor(ctx), ctx.pathParam("id"), text(body, "role"), body.get("active").booleanValue());
        json(ctx, account(store.read(lines -> lines.accounts().find(ctx.pathParam("id"))).orElseThrow()));
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    static String tag(long version) {
        return "\"" + version + "\"";
    }

    static long seen(Context ctx) {
        String tag = ctx.header("If-Match");
        if (tag == null) {
            throw new Refusal(428, "Send If-Match with the ETag of the record you have seen, so that nobody overwrites what they have not read.");
        }
        // The tag of a verdict names the version of the record that was judged, so its reader has seen that version.
        Matcher version = TAG.matcher(tag);
        if (!version.matches()) {
            throw new Refusal(412, "This is not an ETag of this record.");
        }
        return Long.parseLong(version.group(1));
    }

    private static int number(Context ctx, String name, int otherwise, int most) {
        String text = ctx.queryParam(name);
        if (text == null || text.isEmpty()) {
            return otherwise;
        }
        if (!text.matches("\\d{1,7}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > most) {
            throw new Refusal(422, name + " is a whole number from 1 to " + most + ".");
        }
        return Integer.parseInt(text);
    }

    static int page(Context ctx) {
        return number(ctx, "page", 1, 1_000_000);
    }

    private static JsonNode read(Context ctx) {
        String type = ctx.contentType();
        if (type == null || !type.split(";")[0].strip().equalsIgnoreCase("application/json")) {
            throw new Refusal(415, "Send application/json.");
        }
        try {
            return JSON.readTree(ctx.bodyAsBytes());
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            boolean twice = e.getOriginalMessage().startsWith("Duplicate field");
            throw new Refusal(400, twice ? "Duplicate key in one object: line " + line + ". Send it once." : "This is not JSON: line " + line + ".");
        } catch (IOException e) {
            throw new Refusal(400, "This is not JSON in UTF-8.");
        }
    }

    static JsonNode object(Context ctx, String... keys) {
        JsonNode body = read(ctx);
        List<String> known = List.of(keys);
        if (!body.isObject()) {
            throw new Refusal(422, "Send an object with " + String.join(", ", known) + ".");
        }
        body.fieldNames().forEachRemaining(name -> {
            if (!known.contains(name)) {
                throw new Refusal(422, "'" + name + "' is not known here; send " + String.join(", ", known) + ".");
            }
        });
        return body;
    }

    static String text(JsonNode body, String key) {
        if (!body.path(key).isTextual()) {
            throw new Refusal(422, key + " is missing, or no text.");
        }
        return body.get(key).textValue();
    }

    private static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }

    static void json(Context ctx, JsonNode node) {
        ctx.contentType("application/json").result(node.toString());
    }
}
