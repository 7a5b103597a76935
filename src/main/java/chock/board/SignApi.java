package chock.board;

import chock.board.store.Kept;
import chock.board.store.Signings;
import chock.board.store.Store;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.signoff.LedgerLine;
import chock.signoff.TrustedKey;
import chock.signoff.Verification;
import chock.signoff.Withdrawals;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/** Sign-offs, verifying and the ledger for programs. */
final class SignApi {
    private static final int A_PAGE = 100;

    private final Store store;
    private final Shop shop;
    private final SigningDesk desk;
    private final Pages pages;
    private final Clock clock;

    SignApi(Store store, Shop shop, SigningDesk desk, Pages pages, Clock clock) {
        this.store = store;
        this.shop = shop;
        this.desk = desk;
        this.pages = pages;
        this.clock = clock;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/sign-offs", Action.READ, "List sign-offs, newest first", this::list).query("machine", "number of a record").query("state", "stands, lapsed or void").query("page", "from 1").answers(200, "signOffs"),
                Route.get("/api/sign-offs/{id}", Action.READ, "Read a sign-off, and what of it holds", this::one).query("format", "json, or jws for the sign-off as it was signed").answers(200, "signOffHolds"),
                Route.post("/api/machines/{id}/sign-offs", Action.SIGN, "Sign a release with the key bound to your account", this::sign).body("sign").match().key().answers(201, "signOff"),
                Route.post("/api/verify", Action.ENTER, "Say of a sign-off, or of the seal from its paper, what holds", this::verify).body("verify").answers(200, "verification"),
                Route.get("/api/ledger", Action.READ_LEDGER, "Read the ledger, newest line first, and whether it is sound", this::ledger).query("machine", "number of a record").query("page", "from 1").answers(200, "ledger"),
                Route.post("/api/ledger/lost", Action.MANAGE_ACCOUNTS, "Go by the ledger as it is, though lines of it are lost for good; what was signed in them is void", this::lost).body("lost").answers(200, "lostLines"),
                Route.post("/api/ledger/withdrawals", Action.MANAGE_ACCOUNTS, "Withdraw a rule book or a check that was found wrong, with the key bound to your account; what rests on it ends", this::withdraw).body("withdraw").answers(201, "withdrawal"),
                Route.get("/api/keys", Action.MANAGE_ACCOUNTS, "List the keys of the trust list, and who signs with each", this::keys).answers(200, "keys"),
                Route.patch("/api/accounts/{id}/key", Action.MANAGE_ACCOUNTS, "Say with which key somebody signs", this::bind).body("binding").answers(200, "binding"));
    }

    private void list(Context ctx) {
        int page = Api.page(ctx);
        Instant now = clock.instant();
        Signings.Sieve sieve = SignPages.sieve(ctx);
        List<Signings.Line> lines = store.read(all -> all.signings().list(sieve, now, (page - 1) * A_PAGE, A_PAGE + 1));
        ObjectNode answer = JsonNodeFactory.instance.objectNode();
        ArrayNode list = answer.putArray("signOffs");
        lines.stream().limit(A_PAGE).forEach(line -> list.add(node(line, now)));
        Api.json(ctx, answer.put("next", lines.size() > A_PAGE ? "/api/sign-offs?" + Query.with(ctx, "page", String.valueOf(page + 1)) : null));
    }

    private static ObjectNode node(Signings.Line line, Instant now) {
        return JsonNodeFactory.instance.objectNode().put("id", line.id()).put("machine", line.machine()).put("gate", line.gate()).put("state", line.isVoid() ? "void" : now.isAfter(line.until()) ? "lapsed" : "stands")
                .put("why", line.why()).put("voidedAt", line.isVoid() ? line.voidedAt().toString() : null).put("signedAt", line.signedAt().toString()).put("holdsUntil", line.until().toString())
                .put("signer", line.signer()).put("role", line.role()).put("keyId", line.keyId()).put("line", line.line()).put("digest", line.digest());
    }

    private void one(Context ctx) {
        Signings.Line line = store.read(lines -> lines.signings().find(ctx.pathParam("id"))).orElseThrow(Refusal::notFound);
        if ("jws".equals(ctx.queryParam("format"))) {
            ctx.contentType("application/jose").result(store.read(lines -> lines.signings().text(line.id())).getBytes(StandardCharsets.US_ASCII));
            return;
        }
        Api.json(ctx, node(line, clock.instant()).set("verification", node(desk.verify(line.id()).found())));
    }

    private static ObjectNode node(Verification found) {
        ObjectNode node = JsonNodeFactory.instance.objectNode().put("holds", found.holds()).put("complete", found.complete()).put("about", found.title());
        ArrayNode things = node.putArray("things");
        found.things().forEach(t -> things.addObject().put("thing", t.thing()).put("holds", t.holds().name().toLowerCase(Locale.ROOT).replace('_', '-')).put("says", t.says()));
        return node;
    }

    private void sign(Context ctx) {
        long seen = Api.seen(ctx);
        String key = Api.key(ctx);
        JsonNode body = Api.object(ctx, "gate", "passphrase");
        Gate gate = Api.gateOf(Api.text(body, "gate"));
        Kept kept = shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
        Signings.Line line = desk.sign(Guard.visitor(ctx).account(), kept.id(), seen, gate, Api.text(body, "passphrase"), key == null ? null : "sign " + key);
        if (!line.machine().equals(kept.id()) || !line.gate().equals(gate.id())) {
            throw new Refusal(422, "This Idempotency-Key was used for another write.");
        }
        ctx.status(201).header("Location", "/api/sign-offs/" + line.id());
        Api.json(ctx, node(line, clock.instant()));
    }

    private void verify(Context ctx) {
        long length = ctx.req().getContentLengthLong();
        if (length < 0 || length > SignPages.LARGEST_SIGN_OFF) {
            throw new Refusal(413, "A sign-off has at most one million letters.");
        }
        pages.limitStrangers(ctx);
        try {
            Api.json(ctx, node(desk.verify(Api.text(Api.object(ctx, "signOff"), "signOff").getBytes(StandardCharsets.UTF_8), Guard.visitor(ctx) != null).found()));
        } catch (UnusableInput e) {
            throw new Refusal(503, "Nothing can be verified here now: trust list or ledger cannot be read.");
        }
    }

    private void lost(Context ctx) {
        int gone = desk.goBy(Guard.visitor(ctx), Api.text(Api.object(ctx, "reason"), "reason"));
        Api.json(ctx, com.fasterxml.jackson.databind.node.JsonNodeFactory.instance.objectNode().put("voided", gone));
    }

    private void withdraw(Context ctx) {
        JsonNode body = Api.object(ctx, "check", "ruleBook", "alsoNotAsked", "reason", "passphrase");
        if (body.has("alsoNotAsked") && !body.get("alsoNotAsked").isBoolean()) {
            throw new Refusal(422, "alsoNotAsked is true or false.");
        }
        Withdrawals.Done done = desk.withdraw(Guard.visitor(ctx).account(), new Withdrawals.What(textOrNull(body, "check"), textOrNull(body, "ruleBook"), body.path("alsoNotAsked").asBoolean(), Api.text(body, "reason")),
                Api.text(body, "passphrase"));
        ctx.status(201);
        Api.json(ctx, JsonNodeFactory.instance.objectNode().put("line", done.made().line()).put("withdrawn", done.made().what().replaceFirst(",$", "")).put("ended", done.ended()).put("unknown", done.unknown()));
    }

    private static String textOrNull(JsonNode body, String key) {
        return body.path(key).isMissingNode() || body.path(key).isNull() ? null : Api.text(body, key);
    }

    private void ledger(Context ctx) {
        int page = Api.page(ctx);
        SigningDesk.Page found = desk.ledger(SignPages.given(ctx, "machine").strip(), (page - 1) * A_PAGE, A_PAGE);
        ObjectNode answer = JsonNodeFactory.instance.objectNode().put("sound", found.holds()).put("says", found.sound());
        ArrayNode lines = answer.putArray("lines");
        found.lines().stream().map(LedgerLine::said).forEach(lines::add);
        Api.json(ctx, answer.put("next", found.more() ? "/api/ledger?" + Query.with(ctx, "page", String.valueOf(page + 1)) : null));
    }

    private void keys(Context ctx) {
        ArrayNode list = JsonNodeFactory.instance.arrayNode();
        for (TrustedKey key : desk.keys()) {
            list.addObject().put("id", key.id()).put("name", key.name()).put("role", key.role().word()).put("validFrom", key.from().toString()).put("validUntil", key.until().toString())
                    .put("revoked", key.isRevoked()).put("account", store.read(lines -> lines.signings().holder(key.id())).orElse(null));
        }
        Api.json(ctx, list);
    }

    private void bind(Context ctx) {
        JsonNode body = Api.object(ctx, "keyId");
        String key = body.path("keyId").isNull() ? "" : Api.text(body, "keyId");
        desk.bind(Guard.visitor(ctx), ctx.pathParam("id"), key);
        Api.json(ctx, JsonNodeFactory.instance.objectNode().put("keyId", key.isEmpty() ? null : key));
    }
}
