package chock.board;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.RunCourse;
import chock.assess.RunPlan;
import chock.assess.State;
import chock.board.TrialRun.Ask;
import chock.board.store.Kept;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.UnusableInput;
import chock.report.RunChart;
import chock.report.Wording;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The planner of a run under a roof: what the air would do, by figures tried out, beside the machine they are for. */
final class RunPages {
    /** The script of the planner, which no other page loads. */
    static final String LIVE = "/live-2.0.4.js";
    private static final String SCRIPT = "/META-INF/resources/webjars/htmx.org/2.0.4/dist/htmx.min.js";

    private final Shop shop;
    private final Judging judging;
    private final Clock clock;

    RunPages(Shop shop, Judging judging, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
    }

    /** @param run what came of it, or null when something typed was refused */
    record Planner(Views.Frame frame, String id, String name, String at, long version, String live, Map<String, List<Views.Choice>> choices, Map<String, String> typed, List<String> faults, Run run, boolean mayWrite, String notice) { }

    record Run(String says, List<Figure> figures, List<String> restsOn, List<Held> held, List<Part> parts, String chart) { }

    record Figure(String name, String says, String source) { }

    record Held(String state, String sign, String says) { }

    record Part(String title, boolean numbered, List<String> lines) { }

    void on(RoutesConfig routes) {
        routes.get(LIVE, ctx -> ctx.contentType("text/javascript; charset=utf-8").header("Cache-Control", "public, max-age=31536000, immutable").result(script()), Action.ENTER);
        routes.get("/machines/{id}/run", ctx -> planner(ctx, List.of()), Action.READ);
        routes.post("/machines/{id}/run", this::write, Action.WRITE_ENTRY);
    }

    private static byte[] script() throws IOException {
        try (InputStream in = RunPages.class.getResourceAsStream(SCRIPT)) {
            return in.readAllBytes();
        }
    }

    private Kept kept(Context ctx) {
        Kept kept = shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
        if (judging.read(kept, clock.instant()).machine().engine().cycle() == Machine.Cycle.ELECTRIC) {
            throw new Refusal(404, "No exhaust, no carbon monoxide: there is no plan to make for the air.");
        }
        return kept;
    }

    /** What was typed, each in its place; the record's own words where nothing was sent at all. */
    static Map<Ask, String> typed(Context ctx, JobRecord record) {
        boolean sent = Stream.of(Ask.values()).anyMatch(ask -> given(ctx, ask) != null);
        Map<Ask, String> typed = new LinkedHashMap<>();
        for (Ask ask : Ask.values()) {
            String one = given(ctx, ask);
            typed.put(ask, one == null ? sent ? "" : TrialRun.start(record).get(ask) : one.substring(0, Math.min(one.length(), 80)));
        }
        return typed;
    }

    private static String given(Context ctx, Ask ask) {
        return ctx.method().name().equals("POST") ? ctx.formParam(ask.key()) : ctx.queryParam(ask.key());
    }

    private void planner(Context ctx, List<String> refused) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        Map<Ask, String> typed = typed(ctx, record);
        List<String> faults = new ArrayList<>(refused);
        Run run = null;
        if (typed.get(Ask.VOLUME).isBlank()) {
            faults.add("Write how much air the room holds.");
        } else {
            try {
                run = run(TrialRun.of(kept, record, typed, judging, now));
            } catch (UnusableInput e) {
                faults.addAll(words(e));
            }
        }
        Map<String, List<Views.Choice>> choices = new LinkedHashMap<>();
        for (Ask ask : List.of(Ask.GOES, Ask.SPEED, Ask.OPENINGS, Ask.EXHAUST)) {
            choices.put(ask.key(), judging.book().vocabulary().aspects().get(ask.aspect).answers().stream().sorted().filter(a -> !a.equals("unknown"))
                    .map(a -> new Views.Choice(a, a.replace('-', ' '), a.equals(typed.get(ask)))).toList());
        }
        Map<String, String> fields = new LinkedHashMap<>();
        typed.forEach((ask, is) -> fields.put(ask.key(), is));
        ctx.header("Content-Security-Policy", Guard.CSP + "; script-src 'self'; connect-src 'self'");
        Pages.show(ctx, "run", new Planner(Pages.frame(ctx, "Indoor run, " + kept.id()), kept.id(), Pages.name(record), "/machines/" + Query.encoded(kept.id()), kept.version(), LIVE, choices, fields,
                faults, run, Guard.visitor(ctx).may(Action.WRITE_ENTRY), Wording.NOTICE));
    }

    static List<String> words(UnusableInput e) {
        return e.faults().stream().map(f -> f.what() + (f.advice().isEmpty() ? "" : ". " + f.advice()) + (f.advice().endsWith(".") ? "" : ".")).distinct().toList();
    }

    private static Run run(TrialRun trial) {
        Assessment assessment = trial.assessment();
        RunPlan plan = RunPlan.of(trial.record(), assessment).orElse(null);
        List<Finding> air = assessment.gates().get(0).findings().stream().filter(f -> f.check().startsWith("air.") && !f.check().equals("air.machine-held")).toList();
        List<Held> held = air.stream().filter(f -> f.limit() != null || f.state() != State.MET).map(f -> new Held(f.state().id(), Wording.sign(f.state()), f.says())).toList();
        boolean inOrder = !air.isEmpty() && air.stream().allMatch(f -> f.state() == State.MET);
        String says = inOrder ? "As far as the air goes, this run would do." : "This run would not do: " + air.stream().filter(f -> f.state() != State.MET).findFirst().map(Finding::says).orElse("nothing can be predicted").replaceFirst("[.]$", "") + ".";
        return new Run(says, plan == null ? List.of() : plan.figures().stream().map(f -> new Figure(f.name(), f.says(), f.source() == null ? "" : f.source().words())).toList(), plan == null ? List.of() : plan.restsOn(), held,
                plan == null ? List.of() : plan.parts().stream().map(p -> new Part(p.title(), p.numbered(), p.lines())).toList(),
                RunCourse.of(assessment).map(course -> RunChart.svg(course, trial.record().id() + ", tried out").replaceFirst("^<[?]xml[^>]*[?]>", "")).orElse(""));
    }

    /** Writes the plan down, and nothing else: what was measured is written where its instrument is named. */
    private void write(Context ctx) {
        Kept kept = kept(ctx);
        Map<Ask, String> typed = typed(ctx, judging.read(kept, clock.instant()));
        if (!Pages.text(ctx, "seen").matches("\\d{1,18}")) {
            throw new Refusal(400, "The form is not whole. Load the page again.");
        }
        List<ObjectNode> entries = Stream.of(Ask.GOES, Ask.RUNS, Ask.SPEED).filter(ask -> !typed.get(ask).isBlank())
                .map(ask -> JsonNodeFactory.instance.objectNode().put("point", ask.point).put(ask.deed, ask.aspect).put("is", typed.get(ask).strip())).toList();
        try {
            Shop.Done done = shop.write(kept.id(), Long.parseLong(Pages.text(ctx, "seen")), entries, Guard.visitor(ctx).account(), null);
            ctx.redirect("/machines/" + Query.encoded(kept.id()) + "?gate=" + Gate.INDOOR_RUN + "&wrote=" + done.event(), HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            planner(ctx, words(e));
        } catch (Shop.WrittenSince | Shop.OtherPerson e) {
            ctx.status(409);
            planner(ctx, List.of(e.getMessage()));
        }
    }
}
