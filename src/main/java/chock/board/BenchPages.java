package chock.board;

import chock.assess.OrderOfWork;
import chock.assess.Points;
import chock.board.BenchViews.Question;
import chock.board.store.Kept;
import chock.board.store.Store;
import chock.board.store.Summary;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.RecordForm;
import chock.record.UnusableInput;
import chock.record.Value;
import chock.rulebook.Card;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The bench: one step fills the screen of a phone. Answers become entries by the same door as those of every form. */
final class BenchPages {
    static final String SCRIPT = "/bench.js";
    /** A number without a unit, perhaps with its uncertainty. */
    private static final String BARE = "([-+]?[0-9]+(?:[.,][0-9]+)?)(?:\\s*±\\s*([0-9]+(?:[.,][0-9]+)?))?";
    /** What stands for "could not see it": nothing is written. */
    private static final String LEFT = "-";
    private static final int MOST_ROUNDS = 500;

    private final Shop shop;
    private final Judging judging;
    private final Clock clock;
    private final BenchInstruments instruments;
    private final Map<String, BenchRound> rounds = Collections.synchronizedMap(new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, BenchRound> eldest) {
            return size() > MOST_ROUNDS;
        }
    });

    BenchPages(Store store, Shop shop, Judging judging, Clock clock) {
        this.shop = shop;
        this.judging = judging;
        this.clock = clock;
        this.instruments = new BenchInstruments(store, judging.book().vocabulary());
    }

    void on(RoutesConfig routes) {
        byte[] script = Pages.resource("/board/bench.js");
        routes.get(SCRIPT, ctx -> ctx.contentType("text/javascript; charset=utf-8").header("Cache-Control", "public, no-cache").result(script), Action.ENTER);
        routes.get("/machines/{id}/bench", ctx -> start(ctx, List.of()), Action.WRITE_ENTRY);
        routes.post("/machines/{id}/bench", this::begin, Action.WRITE_ENTRY);
        routes.get("/machines/{id}/bench/step", ctx -> show(ctx, List.of()), Action.WRITE_ENTRY);
        routes.post("/machines/{id}/bench/step", this::take, Action.WRITE_ENTRY);
        routes.get("/machines/{id}/bench/wrong", ctx -> wrong(ctx, List.of()), Action.WRITE_ENTRY);
        routes.post("/machines/{id}/bench/wrong", this::withdraw, Action.WRITE_ENTRY);
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private static String at(Kept kept) {
        return "/machines/" + Query.encoded(kept.id());
    }

    private static String key(Context ctx) {
        return Guard.visitor(ctx).account().id() + "\n" + ctx.pathParam("id");
    }

    private LocalDate today(JobRecord record) {
        return clock.instant().atZone(record.zone()).toLocalDate();
    }

    // Where a round begins.

    private void start(Context ctx, List<String> faults) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        Gate gate = gate(Pages.query(ctx, "gate"), record);
        OrderOfWork order = OrderOfWork.of(record, judging.book(), gate, now);
        String account = Guard.visitor(ctx).account().id();
        Map<BenchQuestion, String> kinds = instruments.kinds(order.steps().stream().filter(BenchQuestion::isFor).map(step -> BenchQuestion.of(step, judging.book())).toList(), record, account, today(record));
        List<BenchViews.Reading> readings = new ArrayList<>();
        kinds.forEach((question, usual) -> readings.add(new BenchViews.Reading(readings.size(), question.what(), words(question.what()), instruments.fit(record, question.dimension(), today(record)).stream()
                .map(one -> new Views.Choice(one.id(), BenchInstruments.words(one), one.id().equals(usual))).toList())));
        BenchRound before = rounds.get(key(ctx));
        List<Views.Choice> parts = BenchRound.counts(order).entrySet().stream().map(part -> new Views.Choice(part.getKey(), Points.title(part.getKey()) + ", " + part.getValue(), false)).toList();
        Pages.show(ctx, "benchstart", new BenchViews.Start(Pages.frame(ctx, "Bench, " + kept.id()), kept.id(), Pages.name(record), at(kept), Guard.visitor(ctx).account().name(), record.seeks().stream().map(g -> new Views.Choice(g.id(), g.id(), g == gate)).toList(), parts, readings,
                (int) readings.stream().filter(reading -> reading.instruments().stream().noneMatch(Views.Choice::chosen)).count(), before == null || before.left() == 0 ? "" : "Go on for " + before.gate + ": " + steps(before.left()) + " left", parts.isEmpty() ? "Nothing is left to do here for " + gate + "." : "", faults));
    }

    /** One of the gates that the record seeks, for of these alone it is known what an entry did to them. */
    private static Gate gate(String asked, JobRecord record) {
        return asked.isEmpty() ? record.seeks().get(record.seeks().size() - 1) : record.seeks().stream().filter(gate -> gate.id().equals(asked)).findFirst().orElseThrow(Refusal::notFound);
    }

    private void begin(Context ctx) {
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, clock.instant());
        BenchRound round = new BenchRound(Guard.visitor(ctx).account().name(), gate(Pages.text(ctx, "gate"), record), Pages.text(ctx, "way").equals("place"), new LinkedHashSet<>(ctx.formParams("part")));
        ctx.formParamMap().forEach((name, values) -> {
            if (name.startsWith("with-") && record.instrument(values.get(0)).filter(one -> !one.due().isBefore(today(record))).isPresent()) {
                round.with.put(name.substring("with-".length()), values.get(0));
            }
        });
        rounds.put(key(ctx), round);
        ctx.redirect(at(kept) + "/bench/step", HttpStatus.SEE_OTHER);
    }

    // One step.

    /** Shows what is asked now, with nothing of what was sent in its fields unless it was for the same questions. */
    private void show(Context ctx, List<String> faults) {
        BenchRound round = rounds.get(key(ctx));
        Kept kept = kept(ctx);
        if (round == null) {
            ctx.redirect(at(kept) + "/bench", HttpStatus.SEE_OTHER);
            return;
        }
        synchronized (round) {
            Instant now = clock.instant();
            JobRecord record = judging.read(kept, now);
            if (Pages.query(ctx, "again").equals("yes")) {
                round.again();
            }
            if (!round.isCurrent(kept.version(), now)) {
                round.workOut(record, judging.book(), kept.version(), now);
            }
            if (round.screen().isEmpty()) {
                Pages.show(ctx, "benchdone", new BenchViews.Done(Pages.frame(ctx, "Bench, " + kept.id()), kept.id(), Pages.name(record), at(kept), round.gate.id(), round.written.size(), round.skipped.size(),
                        round.elsewhere().stream().map(OrderOfWork.Step::says).toList(), round.cycle(), round.told, round.fault));
            } else {
                ctx.header("Content-Security-Policy", Guard.CSP + "; script-src 'self'");
                Pages.show(ctx, "benchstep", step(ctx, kept, record, round, faults));
            }
        }
    }

    private static String steps(int n) {
        return n == 1 ? "1 step" : n + " steps";
    }

    private BenchViews.Step step(Context ctx, Kept kept, JobRecord record, BenchRound round, List<String> faults) {
        List<OrderOfWork.Step> screen = round.screen();
        OrderOfWork.Step first = screen.get(0);
        boolean several = screen.size() > 1;
        boolean look = several && first.look() != null;
        List<Question> questions = new ArrayList<>();
        for (OrderOfWork.Step one : screen) {
            questions.add(question(ctx, BenchQuestion.of(one, judging.book()), questions.size(), several ? one.point().equals(look ? first.look().point() : first.point()) ? title(words(one.what())) : Points.title(one.point()) + ": " + words(one.what()) : "", record, round));
        }
        String place = look ? first.look().point() : first.point();
        List<String> says = new ArrayList<>();
        if (look) {
            says.add(first.look().says());
        } else {
            screen.forEach(one -> says.add(questionOf(one)));
        }
        screen.stream().flatMap(one -> one.because().stream()).distinct().forEach(why -> says.add("Now: " + why + (why.endsWith(".") ? "" : ".")));
        String note = switch (first.needs()) {
            case STANDING -> "";
            case ENGINE_RUNNING -> "With the engine running: see that first-start is released.";
            case RIDING -> "On the road: see that road-test is released.";
        };
        return new BenchViews.Step(Pages.frame(ctx, "Bench, " + kept.id()), kept.id(), Pages.name(record), at(kept), turn(round), BenchRound.keys(screen), look ? title(first.look().name()) : verb(first) + words(first.what()),
                Points.title(place), place, steps(round.left()) + " left", says.stream().distinct().toList(), note, round.cautions(screen), questions, round.told, round.fault, faults, !round.written.isEmpty());
    }

    private static String turn(BenchRound round) {
        return Integer.toHexString(System.identityHashCode(round)) + "." + round.turn;
    }

    private static String verb(OrderOfWork.Step step) {
        return switch (step.kind()) {
            case MEASURE -> "Measure: ";
            case TRY -> "Try: ";
            case LOOK -> "Look: ";
            case ASK -> "Ask: ";
            default -> "Work: ";
        };
    }

    /** Of work what to do; else what the check asks. */
    private String questionOf(OrderOfWork.Step step) {
        if (step.kind().isWork()) {
            return title(step.doing());
        }
        return step.checks().stream().map(judging.book().cards()::get).filter(card -> card != null).map(Card::question).findFirst().orElse("");
    }

    private static String title(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String words(String name) {
        return name.replace('-', ' ');
    }

    private Question question(Context ctx, BenchQuestion asked, int n, String legend, JobRecord record, BenchRound round) {
        String is = Pages.text(ctx, "is-" + asked.key());
        String unit = Pages.text(ctx, "unit-" + asked.key());
        List<Views.Choice> units = asked.units().stream().map(one -> new Views.Choice(one.symbol(), one.symbol(), unit.isEmpty() ? one == asked.unit() : one.symbol().equals(unit))).toList();
        String with = round.with.getOrDefault(asked.what(), "");
        List<Instrument> fit = asked.namesInstrument() ? instruments.fit(record, asked.dimension(), today(record)) : List.of();
        Optional<Instrument> known = fit.stream().filter(one -> one.id().equals(with)).findFirst();
        String bar = "";
        String u = "";
        if (asked.limit() != null && asked.kind().equals("amount")) {
            LimitBar drawn = new LimitBar(asked.limit().bounds());
            Quantity near = asked.limit().bounds().low() == null ? asked.limit().bounds().high() : asked.limit().bounds().low();
            Quantity about = known.map(one -> instruments.uncertainty(one, near)).map(one -> one.differenceTo(drawn.unit())).orElse(null);
            Measured read = read(asked, is, unit.isEmpty() && asked.unit() != null ? asked.unit().symbol() : unit);
            bar = drawn.svg(read == null ? null : read.value(), read == null || read.uncertainty() == null ? about : read.uncertainty());
            u = about == null ? "" : about.number();
        }
        String hint = switch (asked.kind()) {
            case "days" -> "As marked: day, month or year, such as 2023-05.";
            case "code" -> "As marked, letter for letter.";
            case "torque" -> "The figure it was tightened to.";
            default -> asked.limit() == null ? "" : title(asked.limit().words()) + ".";
        };
        return new Question(n, asked.key(), legend, asked.kind(), asked.answers().stream().map(answer -> new Views.Choice(answer, words(answer), answer.equals(is))).toList(), is.equals(LEFT) ? "" : is, units, bar, asked.namesInstrument(), known.map(BenchInstruments::words).orElse(""),
                fit.stream().map(one -> new Views.Choice(one.id(), BenchInstruments.words(one), one.id().equals(Pages.text(ctx, "with-" + asked.key()).isEmpty() ? with : Pages.text(ctx, "with-" + asked.key())))).toList(), u, hint, is.equals(LEFT) || !Pages.text(ctx, "left-" + asked.key()).isEmpty());
    }

    private static Measured read(BenchQuestion asked, String is, String unit) {
        try {
            return is.isBlank() ? null : Measured.parse(inUnit(is.strip(), unit));
        } catch (UnreadableQuantity e) {
            return null;
        }
    }

    /** {@code 5.1±0.1} in kΩ as {@code 5.1 kΩ ± 0.1 kΩ}; what bears a unit stays as it is. */
    private static String inUnit(String is, String unit) {
        if (!is.matches(BARE)) {
            return is;
        }
        String symbol = unit.isEmpty() ? "times" : unit;
        String value = is.replaceFirst(BARE, "$1").replace(',', '.') + " " + symbol;
        return is.contains("±") ? value + " ± " + is.replaceFirst(BARE, "$2").replace(',', '.') + " " + symbol : value;
    }

    // What was sent.

    private void take(Context ctx) {
        BenchRound round = rounds.get(key(ctx));
        Kept kept = kept(ctx);
        if (round == null) {
            ctx.status(409);
            start(ctx, List.of("The round was not known any more, and nothing was written" + typed(ctx) + ". Begin it again; what was saved before is in the record."));
            return;
        }
        synchronized (round) {
            String form = Pages.text(ctx, "turn");
            if (round.isSentAgain(form)) {
                // A second tap on the same page: it was done by the first.
                ctx.redirect(at(kept) + "/bench/step", HttpStatus.SEE_OTHER);
                return;
            }
            String keys = Pages.text(ctx, "keys").replace("\r", "");
            List<OrderOfWork.Step> screen = round.screen();
            if (!round.isWorkedOutFor(kept.version())) {
                // Somebody else wrote, or more had to be worked out: what is still asked may still be answered.
                round.workOut(judging.read(kept, clock.instant()), judging.book(), kept.version(), clock.instant());
                screen = round.screen(keys);
            }
            if (!form.equals(turn(round)) || screen.isEmpty() || !keys.equals(BenchRound.keys(screen))) {
                ctx.status(409);
                show(ctx, List.of("Nothing was written" + typed(ctx) + ": that question is no longer the one on the screen. This one is."));
                return;
            }
            if (Pages.text(ctx, "do").equals("skip")) {
                Set<String> open = screen.stream().map(BenchRound::key).collect(Collectors.toSet());
                round.told = "Skipped, nothing written: " + screen.stream().map(one -> words(one.what())).collect(Collectors.joining(", ")) + ". It stays missing.";
                round.fault = false;
                round.goOn(form, Set.of(), open, kept.version(), true);
                ctx.redirect(at(kept) + "/bench/step", HttpStatus.SEE_OTHER);
                return;
            }
            save(ctx, kept, judging.read(kept, clock.instant()), round, screen.stream().map(one -> BenchQuestion.of(one, judging.book())).toList(), form);
        }
    }

    /** What was typed, so that it is not lost though it was not written. */
    private static String typed(Context ctx) {
        String typed = ctx.formParamMap().entrySet().stream().filter(field -> field.getKey().startsWith("is-") && !field.getValue().get(0).isBlank() && !field.getValue().get(0).equals(LEFT))
                .map(field -> "'" + field.getValue().get(0).strip() + "' for " + field.getKey().substring("is-".length()).replace('/', ' ').replace('-', ' ')).collect(Collectors.joining(", "));
        return typed.isEmpty() ? "" : " of " + typed;
    }

    private void save(Context ctx, Kept kept, JobRecord record, BenchRound round, List<BenchQuestion> questions, String form) {
        List<ObjectNode> entries = new ArrayList<>();
        Set<String> answered = new LinkedHashSet<>();
        Set<String> left = new LinkedHashSet<>();
        List<String> faults = new ArrayList<>();
        Map<String, String> with = new LinkedHashMap<>();
        for (BenchQuestion question : questions) {
            String is = Pages.text(ctx, "is-" + question.key()).strip();
            String figure = Pages.text(ctx, "figure-" + question.key());
            boolean isLeft = is.equals(LEFT) || !Pages.text(ctx, "left-" + question.key()).isEmpty();
            if (isLeft && (is.isEmpty() || is.equals(LEFT)) && figure.isEmpty()) {
                left.add(question.key());
            } else if (isLeft) {
                faults.add(words(question.what()) + ": an answer, and that it could not be had. Keep one of the two.");
            } else if (is.isEmpty() && figure.isEmpty()) {
                faults.add(title(words(question.what())) + ": no answer yet. Answer it, or say that it could not be had.");
            } else {
                entries.add(entry(ctx, question, is, record, with, faults));
                answered.add(question.key());
            }
        }
        if (!faults.isEmpty()) {
            ctx.status(422);
            show(ctx, faults);
            return;
        }
        if (entries.isEmpty()) {
            round.told = "Nothing written; it stays missing.";
            round.fault = false;
            round.goOn(form, Set.of(), left, kept.version(), true);
            ctx.redirect(at(kept) + "/bench/step", HttpStatus.SEE_OTHER);
            return;
        }
        try {
            Shop.Done done = shop.write(kept.id(), kept.version(), entries, Guard.visitor(ctx).account(), null);
            round.with.putAll(with);
            round.written.addAll(done.entries());
            boolean asSupposed = tell(round, questions.stream().filter(one -> answered.contains(one.key())).toList(), left, done);
            round.goOn(form, answered, left, done.version(), asSupposed);
            ctx.redirect(at(kept) + "/bench/step", HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            show(ctx, RunPages.words(e));
        } catch (Shop.OtherPerson | Shop.WrittenSince e) {
            ctx.status(409);
            show(ctx, List.of(e.getMessage()));
        }
    }

    private ObjectNode entry(Context ctx, BenchQuestion question, String is, JobRecord record, Map<String, String> with, List<String> faults) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode().put("point", question.point()).put(question.deed().key(), question.what());
        String unit = Pages.text(ctx, "unit-" + question.key());
        switch (question.kind()) {
            case "work" -> {
                if (!is.equals("done")) {
                    faults.add("The form is not whole. Load the page again.");
                }
            }
            case "amount", "torque" -> {
                if (!is.isEmpty()) {
                    entry.put("is", inUnit(is, unit.isEmpty() && question.unit() != null ? question.unit().symbol() : unit));
                }
            }
            default -> entry.put("is", is);
        }
        if (question.namesInstrument() && entry.has("is")) {
            String instrument = Pages.text(ctx, "with-" + question.key());
            if (instrument.isEmpty()) {
                faults.add(title(words(question.what())) + ": name the instrument.");
            } else if (instruments.fit(record, question.dimension(), today(record)).stream().noneMatch(one -> one.id().equals(instrument))) {
                faults.add(title(words(question.what())) + ": " + instrument + " does not read it, or its calibration is over. Choose another.");
            } else {
                entry.put("with", instrument);
                with.put(question.what(), instrument);
            }
        }
        return entry;
    }

    /** Says what the entries did; true when all is as an order of work supposes: nothing came out wrong or in doubt, and nothing that was proven fell. */
    private static boolean tell(BenchRound round, List<BenchQuestion> answered, Set<String> left, Shop.Done done) {
        Optional<Summary.OfGate> now = done.after().gates().stream().filter(gate -> gate.gate().equals(round.gate.id())).findFirst();
        Optional<Summary.OfGate> before = done.before().gates().stream().filter(gate -> gate.gate().equals(round.gate.id())).findFirst();
        Set<String> checks = answered.stream().flatMap(one -> one.checks().stream()).collect(Collectors.toSet());
        List<Summary.Held> held = now.stream().flatMap(gate -> gate.held().stream()).filter(one -> checks.contains(one.check())).toList();
        List<Summary.Held> bad = held.stream().filter(one -> one.state().equals("fault") || one.state().equals("doubt")).toList();
        String what = answered.stream().map(one -> words(one.what())).distinct().collect(Collectors.joining(", "));
        String state = bad.isEmpty() ? held.isEmpty() ? "met" : "saved, more is asked there" : bad.stream().map(one -> one.state() + ": " + one.says()).distinct().collect(Collectors.joining(" "));
        round.told = title(what) + ": " + state.replaceFirst("[.]$", "") + ". " + Effect.words(done.entries(), done.before(), done.after()) + "." + (left.isEmpty() ? "" : " Left out, stays missing: " + left.size() + ".");
        round.fault = !bad.isEmpty();
        boolean fell = now.isPresent() && before.isPresent() && (now.get().faults() + now.get().doubts() + now.get().stales() > before.get().faults() + before.get().doubts() + before.get().stales() || now.get().open() > before.get().open());
        return bad.isEmpty() && !fell;
    }

    // Made at the wrong machine.

    private void wrong(Context ctx, List<String> faults) {
        Kept kept = kept(ctx);
        BenchRound round = rounds.get(key(ctx));
        if (round == null || round.written.isEmpty()) {
            ctx.redirect(at(kept) + "/bench", HttpStatus.SEE_OTHER);
            return;
        }
        JobRecord record = judging.read(kept, clock.instant());
        List<String> entries = round.written.stream().flatMap(id -> record.entry(id).stream()).map(e -> e.id() + ": " + Points.words(e.point()) + ", " + words(e.what()) + (e.is() == null ? "" : " " + words(e.is().toString()))).toList();
        Pages.show(ctx, "benchwrong", new BenchViews.Wrong(Pages.frame(ctx, "Wrong machine, " + kept.id()), kept.id(), Pages.name(record), at(kept), entries, Pages.text(ctx, "reason"),
                record.form() == RecordForm.NEWEST ? faults : Stream.concat(faults.stream(), Stream.of("To report this, move the record to the newest form on its sheet.")).toList()));
    }

    /**
     * Nothing is deleted, and nobody lifts a fault by saying that it was another machine's: what was found is written once more as only
     * told, which proves nothing, and a defect holds the machine until somebody has looked.
     */
    private void withdraw(Context ctx) {
        Kept kept = kept(ctx);
        BenchRound round = rounds.get(key(ctx));
        String reason = Pages.text(ctx, "reason").strip();
        if (round == null || round.written.isEmpty() || reason.isEmpty()) {
            ctx.status(422);
            wrong(ctx, List.of("Say what happened: which machine was meant, and how it was noticed."));
            return;
        }
        String ids = round.written.size() == 1 ? "Entry " + round.written.get(0) + " was" : "Entries " + String.join(", ", round.written) + " were";
        try {
            JobRecord record = judging.read(kept, clock.instant());
            List<ObjectNode> entries = new ArrayList<>(round.written.stream().flatMap(id -> record.entry(id).stream()).filter(entry -> entry.deed().isEvidence() && !isCorrected(entry, record)).map(entry -> takenBack(entry, reason)).toList());
            entries.add(JsonNodeFactory.instance.objectNode().put("point", "machine").put("defect", ids + " made at the wrong machine: " + reason));
            shop.write(kept.id(), kept.version(), entries, Guard.visitor(ctx).account(), null);
            rounds.remove(key(ctx));
            ctx.redirect(at(kept) + "#defects", HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            wrong(ctx, RunPages.words(e));
        } catch (Shop.OtherPerson | Shop.WrittenSince e) {
            ctx.status(409);
            wrong(ctx, List.of(e.getMessage()));
        }
    }

    private static boolean isCorrected(Entry entry, JobRecord record) {
        return record.entries().stream().anyMatch(later -> entry.id().equals(later.corrects()));
    }

    private static ObjectNode takenBack(Entry entry, String reason) {
        String is = entry.is() instanceof Value.Amount amount ? amount.measured().value().toString() : entry.is().toString();
        return JsonNodeFactory.instance.objectNode().put("point", entry.point()).put(Deed.TOLD.key(), entry.what()).put("is", is)
                .put("corrects", entry.id()).put("reason", "made at the wrong machine: " + reason);
    }
}
