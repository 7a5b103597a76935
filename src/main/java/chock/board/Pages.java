package chock.board;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Disclosures;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Points;
import chock.assess.State;
import chock.board.store.Events;
import chock.board.store.Floor;
import chock.board.store.Kept;
import chock.board.store.Photos.Photo;
import chock.board.store.Store;
import chock.record.Danger;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.RecordForm;
import chock.record.UnusableInput;
import chock.record.Vocabulary;
import chock.report.Wording;
import chock.rulebook.Card;
import chock.rulebook.Dangers;
import chock.rulebook.LaidOut;
import chock.rulebook.Look;
import chock.signoff.Canonical;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The board for people. Every page works without a script; only the air planner and the steps of the bench have one. */
final class Pages {
    private static final int A_PAGE = 40;
    private static final int SHOWN = 30;

    private static final TemplateEngine TEMPLATES = TemplateEngine.createPrecompiled(null, ContentType.Html, Pages.class.getClassLoader(), "chock.board");
    private final Store store;
    private final Shop shop;
    private final Judging judging;
    private final People people;
    private final Guard guard;
    private final HouseTrial trial;
    private final CheckRehearsal rehearsal;
    private final Album album;
    private final Clock clock;
    private final ZoneId zone;
    private final SigningDesk desk;
    private final SignPages signing;

    Pages(Store store, Shop shop, Judging judging, People people, Guard guard, SigningDesk desk, HouseTrial trial, CheckRehearsal rehearsal, Clock clock, ZoneId zone) {
        this.store = store;
        this.shop = shop;
        this.judging = judging;
        this.people = people;
        this.guard = guard;
        this.trial = trial;
        this.rehearsal = rehearsal;
        this.album = new Album(store, clock);
        this.clock = clock;
        this.zone = zone;
        this.desk = desk;
        this.signing = new SignPages(this, desk, store, shop, judging, guard, clock, zone);
    }

    void on(RoutesConfig routes) {
        byte[] style = resource("/board/style.css");
        byte[] icon = resource("/board/icon.svg");
        // Asked for again with every page, and not sent again: kept for an hour, the style of an old program would mark the states of a new one.
        routes.get("/style.css", ctx -> ctx.contentType("text/css").header("Cache-Control", "public, no-cache").header("ETag", "\"" + Canonical.digest(style) + "\"").result(style), Action.ENTER);
        routes.get("/icon.svg", ctx -> ctx.contentType("image/svg+xml").header("Cache-Control", "public, max-age=86400").result(icon), Action.ENTER);
        routes.get("/sign-in", ctx -> show(ctx, "signin", new Views.Signing(frame(ctx, "Sign in"), "", "")), Action.ENTER);
        routes.post("/sign-in", this::signIn, Action.ENTER);
        routes.post("/sign-out", this::signOut, Action.OWN_ACCOUNT);
        routes.get("/password", ctx -> show(ctx, "password", new Views.Signing(frame(ctx, "Password"), Guard.visitor(ctx).account().id(), "")), Action.OWN_ACCOUNT);
        routes.post("/password", this::password, Action.OWN_ACCOUNT);
        routes.get("/", this::machines, Action.READ);
        routes.get("/machines/{id}", this::machine, Action.READ);
        routes.get("/machines/{id}/record", this::record, Action.READ);
        routes.get("/machines/{id}/write", ctx -> write(ctx, List.of()), Action.WRITE_ENTRY);
        routes.post("/machines/{id}/write", this::written, Action.WRITE_ENTRY);
        routes.get("/take", ctx -> show(ctx, "take", new Views.Take(frame(ctx, "Take a record in"), List.of())), Action.TAKE_RECORD);
        routes.post("/take", this::take, Action.TAKE_RECORD);
        routes.get("/people", ctx -> people(ctx, "", "", ""), Action.MANAGE_ACCOUNTS);
        routes.post("/people", this::addPerson, Action.MANAGE_ACCOUNTS);
        routes.post("/people/{id}", this::changePerson, Action.MANAGE_ACCOUNTS);
        routes.get("/journal", this::journal, Action.READ_JOURNAL);
        signing.on(routes);
        new AnswerPages(shop, judging, clock).on(routes);
        new RunPages(shop, judging, clock).on(routes);
        new RulePages(judging, trial, rehearsal).on(routes);
        new SheetPages(shop, judging, clock).on(routes);
        new NewMachinePages(store, shop).on(routes);
        new BenchPages(store, shop, judging, clock).on(routes);
        new PhotoPages(shop, judging, album, clock).on(routes);
    }

    void limitStrangers(Context ctx) {
        signing.limit(ctx);
    }

    static byte[] resource(String name) {
        try (InputStream in = Pages.class.getResourceAsStream(name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Views.Frame frame(Context ctx, String title) {
        return new Views.Frame(title, Guard.visitor(ctx), Optional.ofNullable(ctx.<String>attribute(Board.ALARM)).orElse(""));
    }

    static void show(Context ctx, String template, Object view) {
        StringOutput out = new StringOutput();
        TEMPLATES.render(template + ".jte", view, out);
        ctx.contentType("text/html; charset=utf-8").result(out.toString());
    }

    void failed(Context ctx, int status, String says) {
        if (status == 401) {
            ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
            return;
        }
        Visitor visitor = Guard.visitor(ctx);
        if (visitor != null && !visitor.mayRead()) {
            ctx.redirect("/password", HttpStatus.SEE_OTHER);
            return;
        }
        ctx.status(status);
        show(ctx, "failed", new Views.Failed(frame(ctx, Problem.title(status)), status, says, "/"));
    }

    private void signIn(Context ctx) {
        String id = text(ctx, "id");
        try {
            guard.hand(ctx, people.signIn(id, text(ctx, "password"), guard.caller(ctx)));
            ctx.redirect("/", HttpStatus.SEE_OTHER);
        } catch (Refusal e) {
            ctx.status(e.status());
            if (e.retryAfter() > 0) {
                ctx.header("Retry-After", String.valueOf(e.retryAfter()));
            }
            show(ctx, "signin", new Views.Signing(frame(ctx, "Sign in"), id, e.getMessage()));
        }
    }

    private void signOut(Context ctx) {
        people.signOut(Guard.visitor(ctx));
        guard.takeBack(ctx);
        ctx.redirect("/sign-in", HttpStatus.SEE_OTHER);
    }

    private void password(Context ctx) {
        try {
            if (!text(ctx, "new").equals(text(ctx, "again"))) {
                throw new Refusal(422, "The new password was not typed the same twice.");
            }
            guard.hand(ctx, people.changeOwn(Guard.visitor(ctx), text(ctx, "old"), text(ctx, "new"), guard.caller(ctx)));
            ctx.redirect("/", HttpStatus.SEE_OTHER);
        } catch (Refusal e) {
            ctx.status(e.status());
            show(ctx, "password", new Views.Signing(frame(ctx, "Password"), Guard.visitor(ctx).account().id(), e.getMessage()));
        }
    }

    static String text(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }

    static String query(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    private void machines(Context ctx) {
        Instant now = clock.instant();
        boolean lapsing = "month".equals(query(ctx, "lapses"));
        Floor.Sieve sieve = Api.sieve(ctx);
        if (lapsing) {
            LocalDate today = now.atZone(zone).toLocalDate();
            sieve = new Floor.Sieve(sieve.words(), sieve.gate(), sieve.released(), sieve.check(), now, today.withDayOfMonth(1).plusMonths(1).atStartOfDay(zone).toInstant());
        }
        Floor.Sieve asked = sieve;
        Floor.Order order = Api.order(ctx.queryParam("order") == null ? lapsing ? "lapses" : "nearest" : ctx.queryParam("order"));
        int page = Api.page(ctx);
        String key = judging.key();
        List<Floor.Row> rows = store.read(lines -> lines.floor().list(asked, order, (page - 1) * A_PAGE, A_PAGE, key, now));
        long all = store.read(lines -> lines.floor().count(asked));
        Map<String, List<SignViews.Stands>> signed = signing.newest(rows.stream().map(Floor.Row::id).toList());
        List<Views.Blocker> blockers = store.read(lines -> lines.floor().blockers(asked.gate(), 8)).stream().map(b -> new Views.Blocker(b.check(), question(b.check()), b.machines(),
                "/?" + Query.with(ctx, "check", b.check()))).toList();
        show(ctx, "machines", new Views.Machines(frame(ctx, "All machines"), query(ctx, "q"), query(ctx, "check"), gates(asked.gate(), true), states(query(ctx, "state")), orders(order), lapsing, all, page,
                page > 1 ? "/?" + Query.with(ctx, "page", String.valueOf(page - 1)) : "", (long) page * A_PAGE < all ? "/?" + Query.with(ctx, "page", String.valueOf(page + 1)) : "",
                rows.stream().map(row -> Views.Row.of(row, zone, signed.getOrDefault(row.id(), List.of()))).toList(), blockers, rows.stream().filter(row -> !row.judged()).count()));
    }

    private String question(String check) {
        Card card = judging.book().cards().get(check);
        return card == null ? check : card.question();
    }

    static List<Views.Choice> gates(String chosen, boolean orAny) {
        Stream<Views.Choice> all = Arrays.stream(Gate.values()).map(g -> new Views.Choice(g.id(), g.id(), g.id().equals(chosen)));
        return (orAny ? Stream.concat(Stream.of(new Views.Choice("", "any gate", chosen == null || chosen.isEmpty())), all) : all).toList();
    }

    private static List<Views.Choice> states(String chosen) {
        return List.of(new Views.Choice("", "held or released", chosen.isEmpty()), new Views.Choice("held", "held", chosen.equals("held")), new Views.Choice("released", "released", chosen.equals("released")));
    }

    private static List<Views.Choice> orders(Floor.Order chosen) {
        Map<Floor.Order, String> words = Map.of(Floor.Order.NEAREST, "quickest to free first", Floor.Order.LAPSES, "first to lapse first", Floor.Order.LATEST, "last written to first", Floor.Order.ID, "by number");
        return Stream.of(Floor.Order.NEAREST, Floor.Order.LAPSES, Floor.Order.LATEST, Floor.Order.ID).map(o -> new Views.Choice(o.word(), words.get(o), o == chosen)).toList();
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    private void record(Context ctx) throws IOException {
        Kept kept = kept(ctx);
        String name = kept.id().replaceAll("[^A-Za-z0-9._-]", "_");
        ctx.contentType("application/yaml").header("Content-Disposition", "attachment; filename=\"" + name + ".yaml\"").result(Api.yaml(kept).getBytes(StandardCharsets.UTF_8));
    }

    private void machine(Context ctx) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        String asked = query(ctx, "gate");
        Gate gate = asked.isEmpty() ? record.seeks().get(record.seeks().size() - 1) : Api.gateOf(asked);
        List<Gate> judged = Stream.concat(record.seeks().stream(), Stream.of(gate)).distinct().toList();
        Assessment assessment = judging.assess(record, judged, now);
        GateVerdict verdict = assessment.gates().get(judged.indexOf(gate));
        Map<Gate, String> withdrawn = signing.withdrawn(assessment, g -> judging.assess(record, List.of(g), now));
        boolean released = verdict.released() && !withdrawn.containsKey(gate);
        boolean mayWrite = Guard.visitor(ctx).may(Action.WRITE_ENTRY);
        List<Views.Group> open = Arrays.stream(State.values()).filter(s -> s != State.MET)
                .map(s -> new Views.Group(s.id(), Wording.meaning(s), findings(verdict.open(), f -> f.state() == s, kept.id(), verdict.gate(), mayWrite))).filter(g -> !g.findings().isEmpty()).toList();
        boolean everything = "all".equals(query(ctx, "entries"));
        List<Views.Line> lines = timeLine(record, kept.id(), mayWrite, album.of(kept.id()), datedBack(record, kept.id()));
        show(ctx, "machine", new Views.Machine(frame(ctx, kept.id()), kept.id(), name(record), about(record), effect(query(ctx, "wrote"), kept.id()),
                assessment.gates().stream().filter(g -> record.seeks().contains(g.gate())).map(g -> withdrawn.containsKey(g.gate()) ? Views.GateLine.withdrawn(g.gate()) : Views.GateLine.of(Judging.ofGate(g), true, record.zone())).toList(),
                gates(gate.id(), false), gate.id(), withdrawn.containsKey(gate) ? withdrawn.get(gate) + "." : released ? "until " + Wording.moment(verdict.holdsUntil(), record.zone()) + ", " + Wording.UNTOUCHED : Wording.tally(verdict), released,
                "Judged as of " + Wording.moment(now, record.zone()) + " by rule book " + assessment.ruleBookVersion() + ". Local code: " + assessment.localCode() + ".", open,
                findings(verdict.findings(), f -> f.state() == State.MET, kept.id(), verdict.gate(), mayWrite), verdict.notApplicable().stream().map(n -> n.check() + ": " + n.why()).toList(),
                everything ? lines : lines.stream().limit(SHOWN).toList(), everything || lines.size() <= SHOWN ? "" : "/machines/" + Query.encoded(kept.id()) + "?" + Query.with(ctx, "entries", "all") + "#time-line", Wording.NOTICE, signing.panel(ctx, record, verdict), record.machine().engine().cycle() != Machine.Cycle.ELECTRIC, besides(assessment, mayWrite), Objects.requireNonNullElse(assessment.recordedLaw(), ""),
                withdrawn.values().stream().findFirst().map(why -> why + ".").orElse("")));
    }

    private static Views.Besides besides(Assessment assessment, boolean mayWrite) {
        JobRecord record = assessment.record();
        String write = "/machines/" + Query.encoded(record.id()) + "/write?closes=";
        List<Views.Link> defects = assessment.disclosures().defects().stream().map(one -> {
            String id = one.entries().get(0);
            boolean reported = record.entry(id).filter(e -> e.deed() == Deed.DEFECT).isPresent();
            return new Views.Link(mayWrite && reported ? write + Query.encoded(id) : "", one.says());
        }).toList();
        return new Views.Besides(defects, assessment.disclosures().lifted().stream().map(Disclosures.Told::says).toList(),
                assessment.disclosures().unread().stream().map(one -> one.says() + ". " + one.fate()).toList());
    }

    private static List<Views.FindingLine> findings(List<Finding> all, Predicate<Finding> which, String id, Gate gate, boolean mayWrite) {
        return all.stream().filter(which).map(f -> Views.FindingLine.of(f, id, gate.id(), mayWrite)).toList();
    }

    static String name(JobRecord record) {
        return record.machine().marque() + " " + record.machine().model();
    }

    private static String about(JobRecord record) {
        return "Frame " + record.machine().frameNumber() + ", engine " + record.machine().engineNumber() + ", built " + record.machine().built() + ", to be ridden in " + record.territory() + ". " + record.workshop() + ".";
    }

    private String effect(String event, String id) {
        return event.isEmpty() ? "" : store.read(lines -> lines.events().find(event)).filter(e -> id.equals(e.machine())).map(Events.Event::detail).orElse("");
    }

    /** Of entries that were written late: when and why, by the id of the entry. */
    private Map<String, String> datedBack(JobRecord record, String id) {
        Map<String, String> late = new HashMap<>();
        store.read(lines -> lines.events().of(id, Shop.DATED_BACK)).forEach(event -> late.put(event.detail().substring(0, event.detail().indexOf(' ')),
                "written on " + Wording.moment(event.at(), record.zone()) + ". " + event.detail().substring(event.detail().indexOf(": ") + 2)));
        return late;
    }

    private static List<Views.Line> timeLine(JobRecord record, String id, boolean mayWrite, Map<String, List<Photo>> photos, Map<String, String> late) {
        Map<String, String> correctedBy = new HashMap<>();
        record.entries().stream().filter(e -> e.corrects() != null).forEach(e -> correctedBy.put(e.corrects(), e.id()));
        List<Entry> newest = new ArrayList<>(record.entries());
        java.util.Collections.reverse(newest);
        newest.sort(java.util.Comparator.comparing((Entry e) -> e.at().earliest()).reversed());
        return newest.stream().map(e -> Views.Line.of(e, record.nameOf(e.by()), correctedBy.getOrDefault(e.id(), ""), late.getOrDefault(e.id(), ""),
                mayWrite && !correctedBy.containsKey(e.id()) && (e.deed().isEvidence() || e.deed() == Deed.DONE) ? "/machines/" + Query.encoded(id) + "/write?corrects=" + Query.encoded(e.id()) : "",
                photos.getOrDefault(e.id(), List.of()).stream().map(p -> new Views.Link("/machines/" + Query.encoded(id) + "/photos/" + p.digest(), "Photo to " + e.id() + " by " + record.nameOf(p.by()) + (e.point() == null ? "" : ": " + Points.title(e.point())))).toList(),
                mayWrite ? "/machines/" + Query.encoded(id) + "/photo?entry=" + Query.encoded(e.id()) : "")).toList();
    }

    /** A number on a form without a unit. */
    private static final String BARE = "[-+]?[0-9]+([.,][0-9]+)?";

    /** What the form speaks of: worked out anew from the check and the place, or the entry corrected; never taken from the form. */
    private record Asked(Card card, Look look, String at, Entry corrected, List<Piece> pieces) { }

    /** One thing that can be written down. */
    private record Piece(Deed deed, String what, String point, Vocabulary.Form form, Card.Want want) {

        /** Its fields are named by it, so that an answer cannot come to stand at another question when what is asked changes. */
        String key() {
            return point + " " + what;
        }
    }

    private Asked asked(Context ctx, JobRecord record) {
        String corrects = param(ctx, "corrects");
        if (!corrects.isEmpty()) {
            Entry entry = record.entry(corrects).filter(e -> e.deed().isEvidence() || e.deed() == Deed.DONE).orElseThrow(Refusal::notFound);
            return new Asked(null, null, entry.point(), entry, List.of(new Piece(entry.deed(), entry.what(), entry.point(), form(entry.what(), entry.deed()), null)));
        }
        String check = param(ctx, "check");
        String at = param(ctx, "at");
        String look = param(ctx, "look");
        if (!look.isEmpty()) {
            return together(look, at, record);
        }
        if (check.isEmpty()) {
            return new Asked(null, null, at, null, List.of());
        }
        Card card = Optional.ofNullable(judging.book().cards().get(check)).orElseThrow(Refusal::notFound);
        if (card.place().match(at, judging.book().library().places()).isEmpty()) {
            throw Refusal.notFound();
        }
        LaidOut laidOut = judging.book().laidOut(card, at);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < card.wants().size(); i++) {
            Card.Want want = card.wants().get(i);
            pieces.add(new Piece(want.weakest(), want.aspect(), laidOut.points().get(i), form(want.aspect(), want.weakest()), want));
        }
        return new Asked(card, null, at, null, pieces);
    }

    /** What one look answers of what is asked of this machine. */
    private Asked together(String name, String at, JobRecord record) {
        Look look = judging.book().library().looks().values().stream().filter(one -> one.name().equals(name) && one.point().equals(at)).findFirst()
                .orElseThrow(Refusal::notFound);
        Map<String, Card.Want> asked = Assessor.asked(record, judging.book(), clock.instant());
        List<Piece> pieces = look.answers().stream().filter(asked::containsKey).map(answer -> {
            Card.Want want = asked.get(answer);
            return new Piece(want.weakest(), want.aspect(), answer.substring(0, answer.lastIndexOf(' ')), form(want.aspect(), want.weakest()), want);
        }).toList();
        return new Asked(null, look, at, null, pieces);
    }

    private Vocabulary.Form form(String what, Deed deed) {
        return deed == Deed.DONE ? null : judging.book().vocabulary().aspects().get(what).form();
    }

    private static String param(Context ctx, String name) {
        return ctx.method().name().equals("POST") ? text(ctx, name) : query(ctx, name);
    }

    private void write(Context ctx, List<String> faults) {
        Instant now = clock.instant();
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, now);
        Asked asked = asked(ctx, record);
        String account = Guard.visitor(ctx).account().id();
        List<Views.Field> fields = new ArrayList<>();
        for (Piece piece : asked.pieces()) {
            fields.add(field(ctx, fields.size(), piece, record, account));
        }
        String chosenWork = param(ctx, "work");
        List<Views.Choice> works = asked.corrected() != null && asked.corrected().deed() != Deed.DONE ? List.of() : judging.book().vocabulary().works().entrySet().stream()
                .map(w -> new Views.Choice(w.getKey(), w.getKey() + ": " + w.getValue(), chosenWork.isEmpty() ? asked.corrected() != null && asked.corrected().what().equals(w.getKey()) : w.getKey().equals(chosenWork))).toList();
        Card card = asked.card();
        String gate = param(ctx, "gate");
        show(ctx, "write", new Views.Write(frame(ctx, "Write down, " + kept.id()), kept.id(), name(record), kept.version(),
                "/machines/" + Query.encoded(kept.id()) + (gate.isEmpty() ? "" : "?gate=" + Query.encoded(gate)), card == null ? "" : card.id(), asked.look() == null ? "" : asked.look().name(), asked.look() != null ? asked.look().says() : card == null ? "" : card.question(), asked.at(), asked.at() == null || asked.at().isEmpty() ? "" : Points.title(asked.at()),
                card == null ? "" : switch (card.needs()) {
                    case STANDING -> "";
                    case ENGINE_RUNNING -> "Needs the engine running: see that first-start or indoor-run is released.";
                    case RIDING -> "Needs a ride: see that road-test is released.";
                }, gate, card == null ? "" : card.remedy(), card == null || card.caution() == null ? "" : card.caution(), fields, card != null && card.wants().isEmpty() ? looks(record, asked.at(), gate, now) : List.of(), works, List.copyOf(judging.book().vocabulary().points()),
                asked.corrected() == null ? "" : asked.corrected().id(), param(ctx, "reason"), faults, param(ctx, "when"), param(ctx, "late"), param(ctx, "note"),
                closes(ctx, record), param(ctx, "defect"), dangers(ctx),
                Stream.of("", "remark", "defect").map(kind -> new Views.Choice(kind, kind.isEmpty() ? "not said" : "a " + kind, kind.equals(param(ctx, "note-is")))).toList(), record.form() == RecordForm.NEWEST,
                works.isEmpty() ? List.of() : tooled(record).map(t -> tool(ctx, t, "-" + t.work(), record, account)).toList()));
    }

    /** The reported defect that this form closes, or empty. */
    private static String closes(Context ctx, JobRecord record) {
        String closes = param(ctx, "closes");
        if (!closes.isEmpty() && record.entry(closes).filter(e -> e.deed() == Deed.DEFECT).isEmpty()) {
            throw Refusal.notFound();
        }
        return closes;
    }

    /** A check that looks at the record itself asks for nothing of its own; what can be looked at there is what others ask. */
    private List<Views.Link> looks(JobRecord record, String at, String gate, Instant now) {
        Gate of = gate.isEmpty() ? record.seeks().get(record.seeks().size() - 1) : Api.gateOf(gate);
        return judging.assess(record, List.of(of), now).gates().get(0).findings().stream()
                .filter(f -> canBeLookedAt(judging.book().cards().get(f.check())))
                .flatMap(f -> f.places().stream().filter(p -> Entry.covers(at, p.point()) || at.equals("machine")).map(p -> new Views.Link("/machines/" + Query.encoded(record.id()) + "/write?check="
                        + Query.encoded(f.check()) + "&at=" + Query.encoded(p.point()) + "&gate=" + Query.encoded(of.id()), Points.title(p.point()) + ": " + question(f.check())))).toList();
    }

    /** Not what takes the part to pieces again: then what closes it would be asked once more. */
    private boolean canBeLookedAt(Card card) {
        return card.wants().stream().anyMatch(want -> want.weakest() != Deed.DONE)
                && card.wants().stream().noneMatch(want -> judging.book().library().assembly().isReadApart(card, want.aspect()));
    }

    private Views.Field field(Context ctx, int n, Piece piece, JobRecord record, String account) {
        Card.Want want = piece.want();
        Vocabulary.Aspect aspect = piece.deed() == Deed.DONE ? null : judging.book().vocabulary().aspects().get(piece.what());
        String is = text(ctx, "is-" + piece.key());
        List<Views.Choice> answers = aspect == null ? List.of() : (want == null ? aspect.answers().stream() : Stream.concat(want.good().stream().sorted(), want.bad().stream().sorted())).distinct()
                .map(a -> new Views.Choice(a, a.replace('-', ' '), a.equals(is))).toList();
        List<Views.Choice> instruments = piece.deed() != Deed.MEASURED ? List.of() : instruments(piece.what(), aspect.dimension(), record, account, text(ctx, "with-" + piece.key()));
        String kind = aspect == null ? "work" : switch (aspect.form()) {
            case AMOUNT -> "amount";
            case ANSWER -> "answer";
            case DAYS -> "days";
            case CODE -> "code";
        };
        return new Views.Field(n, piece.key(), piece.deed().key(), piece.what().replace('-', ' '), Points.title(piece.point()), kind, want == null || want.unit() == null ? "" : want.unit().symbol(),
                aspect == null || aspect.dimension() == null ? "" : String.join(", ", chock.quantity.Unit.symbolsOf(aspect.dimension())), answers, instruments, is,
                piece.deed() != Deed.DONE ? List.of() : tooled(record).filter(t -> t.work().equals(piece.what())).map(t -> tool(ctx, t, "-" + piece.key(), record, account)).toList());
    }

    /** Kinds of work that an instrument is used for, where the record can name it. */
    private Stream<Vocabulary.Tooled> tooled(JobRecord record) {
        return record.form() < RecordForm.NEWEST ? Stream.empty() : judging.book().vocabulary().tooled().values().stream();
    }

    private Views.Tool tool(Context ctx, Vocabulary.Tooled tooled, String field, JobRecord record, String account) {
        return new Views.Tool(tooled.work(), tooled.with().replace('-', ' '), tooled.unit().dimension().words(), String.join(", ", chock.quantity.Unit.symbolsOf(tooled.unit().dimension())),
                instruments(tooled.work(), tooled.unit().dimension(), record, account, text(ctx, "with" + field)), text(ctx, "set" + field));
    }

    /** Those of the record that can measure it and are in calibration; chosen: the one this person last took for it. */
    private List<Views.Choice> instruments(String what, chock.quantity.Unit.Dimension dimension, JobRecord record, String account, String given) {
        Vocabulary words = judging.book().vocabulary();
        LocalDate today = clock.instant().atZone(record.zone()).toLocalDate();
        List<Instrument> fit = record.instruments().stream().filter(i -> words.instruments().get(i.kind()).leastUncertainty().containsKey(dimension)).toList();
        String usual = store.read(lines -> lines.accounts().habit(account, what))
                .or(() -> record.entries().stream().filter(e -> what.equals(e.what()) && e.with() != null).reduce((a, b) -> b).map(Entry::with)).orElse("");
        String chosen = given.isEmpty() ? usual : given;
        return fit.stream().map(i -> new Views.Choice(i.id(), i.id() + ", " + i.kind().replace('-', ' ') + (i.due().isBefore(today) ? ", calibration over since " + i.due() : ""), i.id().equals(chosen))).toList();
    }

    private void written(Context ctx) {
        Kept kept = kept(ctx);
        JobRecord record = judging.read(kept, clock.instant());
        Asked asked = asked(ctx, record);
        List<String> gone = noLongerAsked(ctx, asked);
        if (!gone.isEmpty()) {
            ctx.status(409);
            write(ctx, gone);
            return;
        }
        List<ObjectNode> entries = entries(ctx, asked, tooled(record).collect(Collectors.toMap(Vocabulary.Tooled::work, t -> t)));
        if (entries.isEmpty()) {
            ctx.status(422);
            write(ctx, List.of("Nothing was filled in. Choose an answer, write a value, or choose the work done."));
            return;
        }
        if (!text(ctx, "seen").matches("\\d{1,18}")) {
            throw new Refusal(400, "The form is not whole. Load the page again.");
        }
        try {
            Shop.Done done = shop.write(kept.id(), Long.parseLong(text(ctx, "seen")), entries, Guard.visitor(ctx).account(), null);
            String gate = text(ctx, "gate");
            ctx.redirect("/machines/" + Query.encoded(kept.id()) + "?" + (gate.isEmpty() ? "" : "gate=" + Query.encoded(gate) + "&") + "wrote=" + done.event(), HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            write(ctx, e.faults().stream().map(f -> f.what() + (f.advice().isEmpty() ? "" : ". " + f.advice()) + ".").toList());
        } catch (Shop.OtherPerson e) {
            ctx.status(409);
            write(ctx, List.of(e.getMessage()));
        } catch (Shop.WrittenSince e) {
            ctx.status(409);
            write(ctx, List.of("Somebody else has written to " + kept.id() + " in the meantime. What you typed is still here: look at what they wrote, in the time line, then send this again or leave it."));
        }
    }

    /** Answers to what was asked when the form was made and is not now, because somebody wrote or the rule book changed. */
    private static List<String> noLongerAsked(Context ctx, Asked asked) {
        Set<String> now = asked.pieces().stream().map(piece -> "is-" + piece.key()).collect(Collectors.toSet());
        return ctx.formParamMap().keySet().stream().filter(name -> name.startsWith("is-") && !now.contains(name) && !text(ctx, name).isBlank()).sorted()
                .map(name -> "'" + text(ctx, name).strip() + "' for " + name.substring("is-".length()) + ": that is no longer asked here. Look at what is asked now; every other answer is still on the form.").toList();
    }

    private static List<ObjectNode> entries(Context ctx, Asked asked, Map<String, Vocabulary.Tooled> tooled) {
        List<ObjectNode> entries = new ArrayList<>();
        for (Piece piece : asked.pieces()) {
            String is = text(ctx, "is-" + piece.key()).strip();
            if (is.isEmpty() || piece.deed() == Deed.DONE && asked.corrected() != null) {
                continue;
            }
            ObjectNode entry = entry(ctx, asked.corrected());
            entry.put("point", piece.point()).put(piece.deed().key(), piece.what());
            if (piece.deed() != Deed.DONE) {
                // A bare number on the form is meant in the unit printed beside it.
                boolean bare = piece.form() == Vocabulary.Form.AMOUNT && piece.want() != null && piece.want().unit() != null && is.matches(BARE);
                entry.put("is", bare ? is.replace(',', '.') + " " + piece.want().unit().symbol() : is);
            }
            if (piece.deed() == Deed.MEASURED) {
                entry.put("with", text(ctx, "with-" + piece.key()));
            }
            if (piece.deed() == Deed.DONE && tooled.containsKey(piece.what())) {
                tool(ctx, entry, "-" + piece.key(), tooled.get(piece.what()));
            }
            entries.add(entry);
        }
        String work = text(ctx, "work");
        if (!work.isEmpty()) {
            ObjectNode entry = entry(ctx, asked.corrected()).put("point", text(ctx, "point").strip()).put("done", work);
            if (asked.corrected() == null && !text(ctx, "reason").isBlank()) {
                entry.put("reason", text(ctx, "reason").strip());
            }
            // What was set beside other work is kept, to be refused with a word about it rather than lost.
            tooled.values().stream().filter(t -> t.work().equals(work) || !text(ctx, "set-" + t.work()).isBlank()).forEach(t -> tool(ctx, entry, "-" + t.work(), t));
            entries.add(entry);
        }
        String defect = text(ctx, "defect").strip();
        if (!defect.isEmpty()) {
            ObjectNode reported = entry(ctx, null).put("point", text(ctx, "defect-point").strip()).put("defect", defect);
            reported.remove("note-is");
            if (!ctx.formParams("dangers").isEmpty()) {
                ctx.formParams("dangers").forEach(reported.putArray("dangers")::add);
            }
            entries.add(reported);
        }
        String closes = text(ctx, "closes").strip();
        if (!closes.isEmpty()) {
            ObjectNode closed = entry(ctx, null).put("closed", closes).put("reason", text(ctx, "reason").strip());
            closed.remove("note-is");
            entries.add(closed);
        }
        return entries;
    }

    /** What a defect can do, as the rule book says it, but for those that say nothing. */
    private List<Views.Choice> dangers(Context ctx) {
        Map<String, Dangers.Danger> known = judging.book().library().dangers().byName();
        return Arrays.stream(Danger.values()).map(Danger::id).filter(id -> known.containsKey(id) && !id.equals(Danger.NONE.id()) && !id.equals(Danger.PROOF.id()))
                .map(id -> new Views.Choice(id, known.get(id).what(), ctx.formParams("dangers").contains(id))).toList();
    }

    private static void tool(Context ctx, ObjectNode entry, String field, Vocabulary.Tooled tooled) {
        String set = text(ctx, "set" + field).strip();
        String with = text(ctx, "with" + field);
        if (!set.isEmpty()) {
            entry.put("is", set.matches(BARE) ? set.replace(',', '.') + " " + tooled.unit().symbol() : set);
        }
        if (!with.isEmpty()) {
            entry.put("with", with);
        }
    }

    private static ObjectNode entry(Context ctx, Entry corrected) {
        ObjectNode entry = JsonNodeFactory.instance.objectNode();
        String when = text(ctx, "when").strip().replace('T', ' ');
        String note = text(ctx, "note").strip();
        if (!when.isEmpty()) {
            entry.put("at", when);
            if (!text(ctx, "late").isBlank()) {
                entry.put(Shop.LATE, text(ctx, "late").strip());
            }
        }
        if (!note.isEmpty()) {
            entry.put("note", note);
            if (!text(ctx, "note-is").isEmpty()) {
                entry.put("note-is", text(ctx, "note-is"));
            }
        }
        if (corrected != null) {
            entry.put("corrects", corrected.id()).put("reason", text(ctx, "reason").strip());
        }
        return entry;
    }

    private void take(Context ctx) throws IOException {
        UploadedFile file = ctx.uploadedFile("record");
        if (file == null || file.size() == 0) {
            ctx.status(422);
            show(ctx, "take", new Views.Take(frame(ctx, "Take a record in"), List.of("No file was chosen.")));
            return;
        }
        byte[] bytes;
        try (InputStream in = file.content()) {
            bytes = in.readAllBytes();
        }
        try {
            Shop.Done done = shop.take("the file", bytes, Guard.visitor(ctx).account().id(), null);
            ctx.redirect("/machines/" + Query.encoded(done.machine()), HttpStatus.SEE_OTHER);
        } catch (UnusableInput e) {
            ctx.status(422);
            show(ctx, "take", new Views.Take(frame(ctx, "Take a record in"), e.faults().stream().limit(40).map(Object::toString).toList()));
        } catch (Shop.Taken e) {
            ctx.status(409);
            show(ctx, "take", new Views.Take(frame(ctx, "Take a record in"), List.of(e.getMessage())));
        }
    }

    private static List<Views.Choice> roles(String chosen) {
        return Arrays.stream(Role.values()).map(r -> new Views.Choice(r.word(), r.word(), r.word().equals(chosen))).toList();
    }

    void people(Context ctx, String secretFor, String secret, String complaint) {
        show(ctx, "people", new Views.Accounts(frame(ctx, "People"), people.all().stream().map(a -> new Views.Account(a.id(), a.name(), a.role(), a.active(), roles(a.role()), signing.keys(a))).toList(), secretFor, secret, complaint, roles("technician")));
    }

    private void addPerson(Context ctx) {
        try {
            people(ctx, text(ctx, "id"), people.add(Guard.visitor(ctx), text(ctx, "id"), text(ctx, "name"), text(ctx, "role")), "");
        } catch (Refusal e) {
            ctx.status(e.status());
            people(ctx, "", "", e.getMessage());
        }
    }

    private void changePerson(Context ctx) {
        String id = ctx.pathParam("id");
        try {
            if (text(ctx, "renew").isEmpty()) {
                people.change(Guard.visitor(ctx), id, text(ctx, "role"), text(ctx, "active").equals("yes"));
                ctx.redirect("/people", HttpStatus.SEE_OTHER);
            } else {
                people(ctx, id, people.renew(Guard.visitor(ctx), id), "");
            }
        } catch (Refusal e) {
            ctx.status(e.status());
            people(ctx, "", "", e.getMessage());
        }
    }

    private void journal(Context ctx) {
        int page = Api.page(ctx);
        List<Events.Event> events = store.read(lines -> lines.events().latest((page - 1) * 100, 101));
        show(ctx, "journal", new Views.Happened(frame(ctx, "Journal"), events.stream().limit(100).map(e -> new Views.Event(Wording.moment(e.at(), zone), e.account(), e.action(), e.machine() == null ? "" : e.machine(), e.detail())).toList(),
                page > 1 ? "/journal?page=" + (page - 1) : "", events.size() > 100 ? "/journal?page=" + (page + 1) : ""));
    }
}
