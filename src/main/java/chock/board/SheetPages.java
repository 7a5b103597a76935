package chock.board;

import chock.board.store.Kept;
import chock.quantity.Unit;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.RecordForm;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** What stands beside the entries of a machine: gates sought, instruments, people, the form of its record; and changing it. */
final class SheetPages {
    private final Shop shop;
    private final Judging judging;
    private final Clock clock;

    SheetPages(Shop shop, Judging judging, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
    }

    record Sheet(Views.Frame frame, String id, String name, String at, long version, List<Row> rows, List<Tool> tools, String nextDue, List<Views.Choice> seeks, List<Views.Choice> kinds, Map<String, String> typed, List<String> faults, boolean mayChange, String laterForm) { }

    record Row(String label, String words) { }

    /** @param over whether its calibration no longer counts today */
    record Tool(String id, String kind, String measures, String uncertainty, String calibrated, String due, boolean over) { }

    void on(RoutesConfig routes) {
        routes.get("/machines/{id}/sheet", ctx -> sheet(ctx, Map.of(), List.of()), Action.READ);
        routes.post("/machines/{id}/seeks", this::seeks, Action.CHANGE_SHEET);
        routes.post("/machines/{id}/instruments", this::instrument, Action.CHANGE_SHEET);
        routes.post("/machines/{id}/form", this::form, Action.CHANGE_SHEET);
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private void sheet(Context ctx, Map<String, String> typed, List<String> faults) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        LocalDate today = now.atZone(record.zone()).toLocalDate();
        List<Instrument> tools = record.instruments().stream().sorted(Comparator.comparing(Instrument::due).thenComparing(Instrument::id)).toList();
        String over = tools.stream().filter(t -> t.due().isBefore(today)).map(Instrument::id).collect(Collectors.joining(", "));
        String next = tools.stream().filter(t -> !t.due().isBefore(today)).findFirst().map(t -> "Next due: " + t.id() + " on " + t.due() + ".").orElse("None is in calibration.");
        List<Row> rows = List.of(new Row("Workshop", record.workshop() + ", " + record.zone()), new Row("Territory", record.territory() + ": " + (judging.book().codes().containsKey(record.territory()) ? judging.book().codes().get(record.territory()).name() : "no local code in this rule book")
                + judging.book().recordedLaw(record).map(law -> "; as the record has it, not checked here: " + law).orElse("")),
                new Row("Frame, engine", record.machine().frameNumber() + ", " + record.machine().engineNumber()), new Row("Built, registered", record.machine().built() + ", " + record.machine().firstRegistered()),
                new Row("Worked on by", record.onePerson() ? "one person" : "several people"), new Row("Form of the record", RecordForm.name(record.form())), new Row("People", record.people().stream().map(p -> p.name() + " (" + p.id() + ")").collect(Collectors.joining(", "))));
        Pages.show(ctx, "sheet", new Sheet(Pages.frame(ctx, "Sheet, " + kept.id()), kept.id(), Pages.name(record), "/machines/" + Query.encoded(kept.id()), kept.version(), rows, tools.stream().map(t -> tool(t, today)).toList(),
                (over.isEmpty() ? "" : "Calibration over: " + over + ". ") + next, Arrays.stream(Gate.values()).map(g -> new Views.Choice(g.id(), g.id(), record.seeks().contains(g))).toList(),
                new TreeMap<>(judging.book().vocabulary().instruments()).keySet().stream().map(k -> new Views.Choice(k, k.replace('-', ' ') + " (" + measures(k) + ")", k.equals(typed.get("kind")))).toList(),
                typed, faults, Guard.visitor(ctx).may(Action.CHANGE_SHEET), record.form() == RecordForm.NEWEST ? "" : RecordForm.name(RecordForm.NEWEST)));
    }

    private String measures(String kind) {
        return judging.book().vocabulary().instruments().get(kind).leastUncertainty().keySet().stream().map(Unit.Dimension::words).sorted().collect(Collectors.joining(", "));
    }

    private Tool tool(Instrument t, LocalDate today) {
        return new Tool(t.id(), t.kind().replace('-', ' '), measures(t.kind()), t.uncertainty() == null ? "as its kind" : t.uncertainty().toString(), t.calibrated().toString(), t.due().toString(), t.due().isBefore(today));
    }

    private void seeks(Context ctx) {
        ObjectNode changes = JsonNodeFactory.instance.objectNode();
        ArrayNode seeks = changes.putArray("seeks");
        ctx.formParams("seeks").stream().distinct().forEach(seeks::add);
        change(ctx, changes, Map.of());
    }

    private void instrument(Context ctx) {
        Map<String, String> typed = new TreeMap<>();
        List.of("id", "kind", "uncertainty", "calibrated", "due").forEach(field -> typed.put(field, Pages.text(ctx, field).strip()));
        ObjectNode changes = JsonNodeFactory.instance.objectNode();
        ArrayNode all = ((ArrayNode) kept(ctx).sheet().get("instruments")).deepCopy();
        all.addObject().put("id", typed.get("id")).put("kind", typed.get("kind")).put("uncertainty", typed.get("uncertainty").isEmpty() ? "by-kind" : typed.get("uncertainty")).put("calibrated", typed.get("calibrated")).put("due", typed.get("due"));
        changes.set("instruments", all);
        change(ctx, changes, typed);
    }

    private void form(Context ctx) {
        ObjectNode changes = JsonNodeFactory.instance.objectNode();
        change(ctx, changes.put("chock", RecordForm.name(RecordForm.NEWEST)), Map.of());
    }

    private void change(Context ctx, ObjectNode changes, Map<String, String> typed) {
        if (!Pages.text(ctx, "seen").matches("\\d{1,18}")) {
            throw new Refusal(400, "The form is not whole. Load the page again.");
        }
        Kept kept = kept(ctx);
        try {
            shop.changeSheet(kept.id(), Long.parseLong(Pages.text(ctx, "seen")), changes, Guard.visitor(ctx).account(), null);
            ctx.redirect("/machines/" + Query.encoded(kept.id()) + "/sheet", HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            sheet(ctx, typed, RunPages.words(e));
        } catch (Shop.WrittenSince e) {
            ctx.status(409);
            sheet(ctx, typed, List.of(e.getMessage()));
        }
    }
}
