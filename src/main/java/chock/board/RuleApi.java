package chock.board;

import chock.record.Gate;
import chock.rehearse.Rehearsed;
import chock.report.CatalogueJson;
import chock.report.ImpactReport;
import chock.rulebook.Card;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.http.Context;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** The rule book and trials of house limits, for programs. */
final class RuleApi {
    private static final Duration WAIT = Duration.ofSeconds(8);
    private static final ObjectMapper JSON = new ObjectMapper();

    private final Judging judging;
    private final HouseTrial trial;
    private final CheckRehearsal rehearsal;

    RuleApi(Judging judging, HouseTrial trial, CheckRehearsal rehearsal) {
        this.judging = judging;
        this.trial = trial;
        this.rehearsal = rehearsal;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/rules", Action.READ, "List the checks of the rule book", this::rules).query("q", "words in id, question, remedy or caution").query("gate", "a gate that asks it").query("system", "a system, such as brakes").answers(200, "rules"),
                Route.get("/api/rules/{check}", Action.READ, "Read one check, and what came of its last rehearsal", this::rule).answers(200, "rule"),
                Route.post("/api/rules/{check}/rehearsal", Action.READ, "Rehearse the scenarios of one check with the rule book in force; it decides nothing. 202 while they run: ask the same again, or read the check", this::rehearse).answers(200, "rehearsal"),
                Route.get("/api/impact", Action.TRY_LIMIT, "Try a tighter limit of the house on every machine; it changes nothing. 202 while the machines are being judged: ask the same again", this::impact).query("limit", "id of the limit").query("value", "such as 2.5 mm; two ends as 13.8 V to 14.4 V")
                        .query("at-limit", "passes or fails; passes when left out").query("reason", "why the house asks for more").query("house", "what the house calls its rules, where there is none yet").answers(200, "impact"));
    }

    private void rules(Context ctx) {
        String gate = Pages.query(ctx, "gate");
        Gate asked = gate.isEmpty() ? null : Api.gateOf(gate);
        Set<String> found = RulePages.found(judging.book(), Pages.query(ctx, "q"), asked, Pages.query(ctx, "system")).stream().map(Card::id).collect(Collectors.toSet());
        ObjectNode all = CatalogueJson.of(judging.book());
        ArrayNode checks = all.arrayNode();
        all.get("checks").forEach(check -> {
            if (found.contains(check.get("check").textValue())) {
                checks.add(check);
            }
        });
        all.set("checks", checks);
        ctx.contentType("application/json").result(all.toString());
    }

    private void rule(Context ctx) {
        Card card = card(ctx);
        ObjectNode node = CatalogueJson.of(card, judging.book(), RulePages.scenarios(card));
        node.set("lastRehearsal", rehearsal.last(card.id()).<JsonNode>map(RuleApi::node).orElse(NullNode.instance));
        ctx.contentType("application/json").result(node.toString());
    }

    private Card card(Context ctx) {
        return RulePages.card(judging.book(), ctx.pathParam("check")).orElseThrow(() -> new Refusal(404, "There is no such check."));
    }

    private void rehearse(Context ctx) {
        Card card = card(ctx);
        Optional<CheckRehearsal.Last> done = rehearsal.ask(card.id(), WAIT);
        if (done.isEmpty()) {
            ctx.status(202).header("Retry-After", "5");
        }
        ctx.contentType("application/json").result(done.map(RuleApi::node).orElseGet(JSON::createObjectNode).toString());
    }

    private static ObjectNode node(CheckRehearsal.Last last) {
        ObjectNode node = JSON.createObjectNode().put("at", last.at().toString()).put("digest", last.digest()).put("holds", last.holds()).put("cut", last.cut());
        ArrayNode scenarios = node.putArray("scenarios");
        for (Rehearsed.Shown shown : last.shown()) {
            ObjectNode one = scenarios.addObject().put("file", shown.file()).put("line", shown.line()).put("name", shown.name()).put("holds", shown.holds());
            ArrayNode slips = one.putArray("slips");
            shown.slips().forEach(slip -> slips.addObject().put("line", slip.line()).put("expected", slip.step()).put("found", slip.found()));
        }
        return node;
    }

    private void impact(Context ctx) throws JsonProcessingException {
        String atLimit = Pages.query(ctx, "at-limit");
        if (!Set.of("", "passes", "fails").contains(atLimit)) {
            throw new Refusal(422, "at-limit is passes or fails.");
        }
        HouseTrial.Asked asked = trial.ask(new HouseTrial.Wish(Pages.query(ctx, "limit"), Pages.query(ctx, "value"), !atLimit.equals("fails"), Pages.query(ctx, "reason"), Guard.visitor(ctx).account().name(), Pages.query(ctx, "house")), WAIT);
        if (asked.done() == null) {
            ctx.status(202).header("Retry-After", "5").contentType("application/json").result(JSON.createObjectNode().put("judged", asked.judged()).put("machines", asked.of()).toString());
            return;
        }
        HouseTrial.Done done = asked.done();
        ObjectNode node = (ObjectNode) JSON.readTree(new ImpactReport(List.of(done.what()), done.impacts(), null, List.of()).json());
        node.put("limits", done.house().limits()).put("digest", done.house().digest()).put("judged", done.judged()).put("machines", done.all());
        ctx.contentType("application/json").result(node.toString());
    }
}
