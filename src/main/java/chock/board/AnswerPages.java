package chock.board;

import chock.assess.Explainer;
import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.board.store.Kept;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.report.OrderReport;
import chock.report.WhyWords;
import chock.report.Wording;
import chock.rulebook.Card;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Why a check came to its finding, and what remains to be done in which order, each on a page that can be printed. */
final class AnswerPages {
    private final Shop shop;
    private final Judging judging;
    private final Clock clock;

    AnswerPages(Shop shop, Judging judging, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
    }

    record Why(Views.Frame frame, String id, String name, String back, String order, String asOf, WhyWords why) { }

    record Order(Views.Frame frame, String id, String name, String at, List<Views.Choice> gates, String gate, String title, String asOf, List<String> cycle, List<Line> steps, String notice) { }

    /**
     * @param look what is done, where this is the first of several answers, else null
     * @param together whether it is one of several answers
     * @param write where to write the step down, or empty when that is done on another page
     */
    record Line(int number, String phase, OrderReport.Together look, boolean together, String kind, String says, List<String> notes, String caution, List<Views.Link> checks, Views.Link write) { }

    void on(RoutesConfig routes) {
        routes.get("/machines/{id}/why", this::why, Action.READ);
        routes.get("/machines/{id}/order", this::order, Action.READ);
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    /** The check asked about; 404 when there is none of this id. */
    Card card(Context ctx) {
        return Optional.ofNullable(judging.book().cards().get(Pages.query(ctx, "check"))).orElseThrow(Refusal::notFound);
    }

    static Gate gate(Context ctx, JobRecord record) {
        String asked = Pages.query(ctx, "gate");
        return asked.isEmpty() ? record.seeks().get(record.seeks().size() - 1) : Api.gateOf(asked);
    }

    private void why(Context ctx) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        Card card = card(ctx);
        Gate gate = gate(ctx, record);
        String machine = "/machines/" + Query.encoded(kept.id());
        Pages.show(ctx, "why", new Why(Pages.frame(ctx, "Why " + card.id() + ", " + kept.id()), kept.id(), Pages.name(record), machine + "?gate=" + gate + "#verdict", machine + "/order?gate=" + gate,
                "As of " + Wording.moment(now, record.zone()) + ".", WhyWords.of(Explainer.explain(record, judging.book(), List.of(card.id()), now).get(0))));
    }

    private void order(Context ctx) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        Gate gate = gate(ctx, record);
        OrderOfWork order = OrderOfWork.of(record, judging.book(), gate, now);
        OrderReport report = new OrderReport(order, Map.of());
        boolean mayWrite = Guard.visitor(ctx).may(Action.WRITE_ENTRY);
        Pages.show(ctx, "order", new Order(Pages.frame(ctx, "Order of work, " + kept.id()), kept.id(), Pages.name(record), "/machines/" + Query.encoded(kept.id()), Pages.gates(gate.id(), false), gate.id(), report.title(),
                "As of " + Wording.moment(now, record.zone()) + ".", order.cycle(), report.lines().stream().map(line -> line(line, kept.id(), gate, mayWrite)).toList(), Wording.NOTICE));
    }

    private Line line(OrderReport.Line line, String id, Gate gate, boolean mayWrite) {
        Step step = line.step();
        List<Views.Link> checks = step.checks().stream().map(check -> new Views.Link("/machines/" + Query.encoded(id) + "/why?check=" + Query.encoded(check) + "&gate=" + gate, check)).toList();
        return new Line(step.number(), line.phase(), line.look(), step.look() != null, line.kind(), step.says(), line.notes(), line.caution(), checks, mayWrite ? write(line, id, gate) : null);
    }

    /** The form that asks for this step: that of its look, of a check that wants it at this place, or the one for work. */
    private Views.Link write(OrderReport.Line line, String id, Gate gate) {
        Step step = line.step();
        String form = "/machines/" + Query.encoded(id) + "/write?gate=" + gate;
        if (step.look() != null) {
            return line.look() == null ? null : new Views.Link(form + "&look=" + Query.encoded(step.look().name()) + "&at=" + Query.encoded(step.look().point()), "Write these");
        }
        boolean work = step.kind() == Kind.PUT_RIGHT || step.kind() == Kind.PUT_TOGETHER;
        Optional<String> asks = work || step.what() == null ? Optional.empty() : step.checks().stream().flatMap(check -> asks(check, step).stream()).findFirst();
        if (asks.isPresent()) {
            return new Views.Link(form + asks.get(), "Write this");
        }
        if (step.kind() == Kind.SETTLE) {
            return null;
        }
        return new Views.Link(form + "&at=" + Query.encoded(step.point()) + (step.what() == null || !judging.book().vocabulary().works().containsKey(step.what()) ? "" : "&work=" + Query.encoded(step.what())), "Write this");
    }

    private Optional<String> asks(String check, Step step) {
        Card card = judging.book().cards().get(check);
        return card.place().points(Map.of(), judging.book().library().places()).stream().filter(point -> wants(card, point, step)).findFirst()
                .map(point -> "&check=" + Query.encoded(check) + "&at=" + Query.encoded(point));
    }

    private boolean wants(Card card, String point, Step step) {
        List<String> points = judging.book().laidOut(card, point).points();
        for (int i = 0; i < points.size(); i++) {
            if (points.get(i).equals(step.point()) && card.wants().get(i).aspect().equals(step.what())) {
                return true;
            }
        }
        return false;
    }
}
