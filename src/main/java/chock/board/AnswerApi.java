package chock.board;

import chock.assess.Explainer;
import chock.assess.OrderOfWork;
import chock.board.store.Kept;
import chock.record.JobRecord;
import chock.report.AnswersReport;
import chock.report.OrderReport;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why and what next, for programs. */
final class AnswerApi {
    private final Shop shop;
    private final Judging judging;
    private final Clock clock;

    AnswerApi(Shop shop, Judging judging, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
    }

    List<Route> routes() {
        return List.of(
                Route.get("/api/machines/{id}/why", Action.READ, "Explain how a check comes to its finding", this::why).query("check", "id of the check").answers(200, "why"),
                Route.get("/api/machines/{id}/order", Action.READ, "List what remains for a gate, in an order in which nothing is done twice", this::order).query("gate", "a gate; the last one sought when left out").answers(200, "order"));
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private void why(Context ctx) {
        Instant now = clock.instant();
        JobRecord record = judging.read(kept(ctx), now);
        String check = Optional.ofNullable(judging.book().cards().get(Pages.query(ctx, "check"))).orElseThrow(() -> new Refusal(422, "Name a check of the rule book, such as check=brakes.pad-thickness.")).id();
        ctx.contentType("application/json").result(AnswersReport.json(Explainer.explain(record, judging.book(), List.of(check), now).get(0)).toString());
    }

    private void order(Context ctx) {
        Instant now = clock.instant();
        JobRecord record = judging.read(kept(ctx), now);
        ctx.contentType("application/json").result(new OrderReport(OrderOfWork.of(record, judging.book(), AnswerPages.gate(ctx, record), now), Map.of()).json());
    }
}
