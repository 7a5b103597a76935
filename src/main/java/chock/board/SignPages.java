package chock.board;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.OrderOfWork;
import chock.board.store.Accounts.Account;
import chock.board.store.Kept;
import chock.board.store.Signings;
import chock.board.store.Store;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import chock.report.LedgerWords;
import chock.report.PaperSize;
import chock.report.Papers;
import chock.report.SignOffSheet;
import chock.report.Statement;
import chock.report.Tag;
import chock.report.Wording;
import chock.report.WorkSheet;
import chock.signoff.TrustedKey;
import chock.signoff.Verification;
import chock.signoff.Withdrawals;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Signing, the papers, verifying and the ledger, for people. */
final class SignPages {
    static final int LARGEST_SIGN_OFF = 1_000_000;
    private static final int A_PAGE = 50;
    private static final List<String> STATES = List.of("", "stands", "lapsed", "void");

    private final Pages pages;
    private final SigningDesk desk;
    private final Store store;
    private final Shop shop;
    private final Judging judging;
    private final Guard guard;
    private final Clock clock;
    private final ZoneId zone;
    private final Attempts strangers = new Attempts(60, Duration.ofMinutes(10));

    SignPages(Pages pages, SigningDesk desk, Store store, Shop shop, Judging judging, Guard guard, Clock clock, ZoneId zone) {
        this.pages = pages;
        this.desk = desk;
        this.store = store;
        this.shop = shop;
        this.judging = judging;
        this.guard = guard;
        this.clock = clock;
        this.zone = zone;
    }

    void on(RoutesConfig routes) {
        routes.get("/machines/{id}/sign", ctx -> form(ctx, ""), Action.SIGN);
        routes.post("/machines/{id}/sign", this::sign, Action.SIGN);
        routes.get("/machines/{id}/papers/{paper}", this::paper, Action.READ);
        routes.get("/sign-offs", this::list, Action.READ);
        routes.get("/sign-offs/{id}", this::signOff, Action.READ);
        routes.get("/sign-offs/{id}/file", this::file, Action.READ);
        routes.get("/verify", ctx -> pages.show(ctx, "verify", new SignViews.Verify(Pages.frame(ctx, "Verify a sign-off"), null, "", null)), Action.ENTER);
        routes.post("/verify", this::verify, Action.ENTER);
        routes.get("/ledger", ctx -> ledger(ctx, SignViews.Withdraw.NOTHING), Action.READ_LEDGER);
        routes.post("/ledger", this::withdraw, Action.MANAGE_ACCOUNTS);
        routes.post("/people/{id}/key", this::bind, Action.MANAGE_ACCOUNTS);
    }

    private Kept kept(Context ctx) {
        return shop.find(ctx.pathParam("id")).orElseThrow(Refusal::notFound);
    }

    /** What stands in the address under this name, or nothing. */
    static String given(Context ctx, String name) {
        return Optional.ofNullable(ctx.queryParam(name)).orElse("");
    }

    private static String typed(Context ctx, String name) {
        return Optional.ofNullable(ctx.formParam(name)).orElse("");
    }

    private static String at(String id) {
        return "/machines/" + Query.encoded(id);
    }

    static SignViews.Stands stands(Signings.Line line, Instant now, ZoneId zone) {
        String by = "signed by " + line.signer() + " (" + line.role() + ") on " + Wording.moment(line.signedAt(), zone);
        return line.isVoid() ? new SignViews.Stands(line.id(), line.machine(), line.gate(), "void", line.why(), by)
                : now.isAfter(line.until()) ? new SignViews.Stands(line.id(), line.machine(), line.gate(), "lapsed", "on " + Wording.moment(line.until(), zone), by)
                : new SignViews.Stands(line.id(), line.machine(), line.gate(), "stands", "until " + Wording.moment(line.until(), zone) + ", if nobody works on it", by);
    }

    /** Of each machine the newest sign-off at each gate. */
    Map<String, List<SignViews.Stands>> newest(Collection<String> machines) {
        Instant now = clock.instant();
        return store.read(lines -> lines.signings().newest(machines)).stream().map(line -> stands(line, now, zone)).collect(Collectors.groupingBy(SignViews.Stands::machine));
    }

    SignViews.Panel panel(Context ctx, JobRecord record, GateVerdict verdict) {
        String gate = verdict.gate().id();
        boolean may = Guard.visitor(ctx).may(Action.SIGN) && verdict.released();
        return new SignViews.Panel(newest(List.of(record.id())).getOrDefault(record.id(), List.of()), may ? at(record.id()) + "/sign?gate=" + gate : "", gate, papers(record.id(), gate, ""), papers(record.id(), gate, "&size=letter"));
    }

    private static List<Views.Link> papers(String id, String gate, String size) {
        return List.of(new Views.Link(at(id) + "/papers/statement.pdf?" + size.replaceFirst("&", ""), "Condition statement"), new Views.Link(at(id) + "/papers/tag.pdf?" + size.replaceFirst("&", ""), "Tag for the handlebar"),
                new Views.Link(at(id) + "/papers/worksheet.pdf?gate=" + gate + size, "Work sheet for " + gate));
    }

    /**
     * The gates whose release rests on what a lead withdrew, each with who withdrew what.
     *
     * @param alone the same judgement of one gate
     */
    Map<Gate, String> withdrawn(Assessment assessment, Function<Gate, Assessment> alone) {
        Map<Gate, String> withdrawn = new EnumMap<>(Gate.class);
        List<Gate> released = assessment.gates().stream().filter(GateVerdict::released).map(GateVerdict::gate).toList();
        try {
            if (desk.withdrawn(assessment).isPresent()) {
                released.forEach(gate -> desk.withdrawn(alone.apply(gate)).ifPresent(why -> withdrawn.put(gate, why)));
            }
        } catch (Refusal unreadable) {
            released.forEach(gate -> withdrawn.put(gate, unreadable.getMessage().replaceFirst("\\.$", "")));
        }
        return withdrawn;
    }

    private void form(Context ctx, String complaint) {
        Kept kept = kept(ctx);
        Instant now = clock.instant();
        JobRecord record = judging.read(kept, now);
        Gate gate = Api.gateOf(ctx.method().name().equals("POST") ? typed(ctx, "gate") : given(ctx, "gate"));
        Assessment assessment = judging.assess(record, List.of(gate), now);
        GateVerdict verdict = assessment.gates().get(0);
        String withdrawn = desk.withdrawn(assessment).map(why -> why + ".").orElse("");
        SigningDesk.Seat seat = desk.seat(Guard.visitor(ctx).account());
        List<String> caution = verdict.run() == null || verdict.run().sheet() == null ? List.of() : verdict.run().sheet().caution();
        List<String> cautions = verdict.findings().stream().map(Finding::caution).filter(c -> c != null && !caution.contains(c)).distinct().toList();
        pages.show(ctx, "sign", new SignViews.Sign(Pages.frame(ctx, "Sign " + gate.id() + ", " + kept.id()), kept.id(), record.machine().marque() + " " + record.machine().model(), gate.id(), kept.version(), Tag.means(gate, true),
                verdict.released() ? Wording.moment(verdict.holdsUntil(), record.zone()) + ", " + Wording.UNTOUCHED : "", verdict.released() ? withdrawn : Wording.tally(verdict),
                seat.ready() ? seat.key().name() + " (" + seat.key().role().word() + ")" : "", seat.lacks(), caution, cautions, Passwords.random(), complaint));
    }

    private void sign(Context ctx) {
        String id = ctx.pathParam("id");
        Gate gate = Api.gateOf(typed(ctx, "gate"));
        String once = typed(ctx, "once");
        if (!typed(ctx, "seen").matches("\\d{1,18}") || !once.matches("[A-Za-z0-9_-]{20,80}")) {
            throw new Refusal(400, "The form is not whole. Load the page again.");
        }
        try {
            Signings.Line line = desk.sign(Guard.visitor(ctx).account(), id, Long.parseLong(typed(ctx, "seen")), gate, typed(ctx, "passphrase"), "sign " + once);
            ctx.redirect("/sign-offs/" + line.id(), HttpStatus.SEE_OTHER);
        } catch (Refusal e) {
            if (e.status() == 404) {
                throw e;
            }
            ctx.status(e.status());
            if (e.retryAfter() > 0) {
                ctx.header("Retry-After", String.valueOf(e.retryAfter()));
            }
            form(ctx, e.getMessage());
        } catch (Shop.WrittenSince e) {
            ctx.status(409);
            form(ctx, "Somebody has written to " + id + " since you looked at it. Nothing was signed. Look at what they wrote, then sign.");
        }
    }

    private void list(Context ctx) {
        int page = Api.page(ctx);
        Instant now = clock.instant();
        Signings.Sieve sieve = sieve(ctx);
        List<Signings.Line> lines = store.read(all -> all.signings().list(sieve, now, (page - 1) * A_PAGE, A_PAGE + 1));
        pages.show(ctx, "signoffs", new SignViews.Listed(Pages.frame(ctx, "Sign-offs"), given(ctx, "machine"), STATES.stream().map(s -> new Views.Choice(s, s.isEmpty() ? "all" : s, s.equals(sieve.state()))).toList(),
                lines.stream().limit(A_PAGE).map(line -> stands(line, now, zone)).toList(), before(ctx, "/sign-offs", page), lines.size() > A_PAGE ? "/sign-offs?" + Query.with(ctx, "page", String.valueOf(page + 1)) : ""));
    }

    /** Which sign-offs are asked for. */
    static Signings.Sieve sieve(Context ctx) {
        String state = given(ctx, "state");
        if (!STATES.contains(state)) {
            throw new Refusal(422, "'" + state + "' is no state of a sign-off; write stands, lapsed or void.");
        }
        return new Signings.Sieve(given(ctx, "machine").strip(), state);
    }

    private static String before(Context ctx, String path, int page) {
        return page > 1 ? path + "?" + Query.with(ctx, "page", String.valueOf(page - 1)) : "";
    }

    private Signings.Line line(Context ctx) {
        return store.read(lines -> lines.signings().find(ctx.pathParam("id"))).orElseThrow(Refusal::notFound);
    }

    private void signOff(Context ctx) {
        Signings.Line line = line(ctx);
        Kept kept = shop.find(line.machine()).orElseThrow(Refusal::notFound);
        JobRecord record = judging.read(kept, clock.instant());
        SignViews.Found found = found(desk.verify(line.id()).found());
        pages.show(ctx, "signoff", new SignViews.SignOff(Pages.frame(ctx, "Sign-off, " + line.machine()), stands(line, clock.instant(), record.zone()), at(line.machine()), record.machine().marque() + " " + record.machine().model(), found,
                List.of(new Views.Link(at(line.machine()) + "/papers/sign-off.pdf?of=" + line.id(), "Sign-off sheet"), new Views.Link(at(line.machine()) + "/papers/sign-off.pdf?of=" + line.id() + "&size=letter", "Sign-off sheet on Letter"),
                        new Views.Link("/sign-offs/" + line.id() + "/file", "Sign-off as a file"), new Views.Link(at(line.machine()) + "/record", "Record as a file"))));
    }

    private void file(Context ctx) {
        Signings.Line line = line(ctx);
        ctx.contentType("application/jose").header("Content-Disposition", "attachment; filename=\"" + name(line.machine() + "." + line.gate() + "." + line.id()) + ".jws\"")
                .result(store.read(lines -> lines.signings().text(line.id())).getBytes(StandardCharsets.US_ASCII));
    }

    private static String name(String words) {
        return words.replaceAll("[^A-Za-z0-9._-]", "_");
    }

    static SignViews.Found found(Verification found) {
        List<String> not = found.things().stream().filter(t -> t.holds() == Verification.Holds.NO).map(Verification.Thing::says).toList();
        String sentence = not.isEmpty() ? found.things().stream().filter(t -> t.thing().equals("time")).map(Verification.Thing::says).findFirst().orElse("") : not.get(0);
        return new SignViews.Found(!found.holds() ? "Does not hold" : found.complete() ? "Holds" : "Holds as far as it was looked at", found.holds(), found.title(), sentence,
                found.things().stream().map(t -> switch (t.holds()) {
                    case YES -> new SignViews.Thing("=", t.thing(), "holds", t.says());
                    case NO -> new SignViews.Thing("X", t.thing(), "does not hold", t.says());
                    case NOT_LOOKED_AT -> new SignViews.Thing("_", t.thing(), "not looked at", t.says());
                }).toList());
    }

    private void verify(Context ctx) throws IOException {
        long length = ctx.req().getContentLengthLong();
        if (length < 0 || length > LARGEST_SIGN_OFF) {
            throw new Refusal(413, "A sign-off has at most one million letters.");
        }
        limit(ctx);
        byte[] given = uploaded(ctx).orElseGet(() -> typed(ctx, "code").getBytes(StandardCharsets.UTF_8));
        if (new String(given, StandardCharsets.ISO_8859_1).isBlank()) {
            ctx.status(422);
            pages.show(ctx, "verify", new SignViews.Verify(Pages.frame(ctx, "Verify a sign-off"), null, "Nothing was given. Paste what the code says, or choose the file.", null));
            return;
        }
        try {
            SigningDesk.Looked looked = desk.verify(given, Guard.visitor(ctx) != null);
            Visitor visitor = Guard.visitor(ctx);
            pages.show(ctx, "verify", new SignViews.Verify(Pages.frame(ctx, "Verify a sign-off"), found(looked.found()), "",
                    looked.kept() == null || visitor == null || !visitor.mayRead() ? null : new Views.Link("/sign-offs/" + looked.kept().id(), "This sign-off at the board")));
        } catch (UnusableInput e) {
            throw new Refusal(503, "Nothing can be verified here now: trust list or ledger cannot be read. The ledger page tells an inspector why.");
        }
    }

    /** Whoever is not signed in looks at so many in ten minutes. */
    void limit(Context ctx) {
        if (Guard.visitor(ctx) == null) {
            Instant now = clock.instant();
            Duration wait = strangers.wait(guard.caller(ctx), now);
            if (!wait.isZero()) {
                throw new Refusal(429, "Too many at once from here. Wait " + (wait.toMinutes() + 1) + " minutes, or sign in.", wait.toSeconds() + 1);
            }
            strangers.failed(guard.caller(ctx), now);
        }
    }

    private static Optional<byte[]> uploaded(Context ctx) throws IOException {
        UploadedFile file = ctx.isMultipartFormData() ? ctx.uploadedFile("file") : null;
        if (file == null || file.size() == 0) {
            return Optional.empty();
        }
        try (InputStream in = file.content()) {
            return Optional.of(in.readAllBytes());
        }
    }

    private void withdraw(Context ctx) {
        String check = typed(ctx, "check").strip();
        String ruleBook = typed(ctx, "ruleBook").strip();
        boolean alsoNotAsked = typed(ctx, "alsoNotAsked").equals("yes");
        String complaint;
        try {
            desk.withdraw(Guard.visitor(ctx).account(), new Withdrawals.What(check.isEmpty() ? null : check, ruleBook.isEmpty() ? null : ruleBook, alsoNotAsked, typed(ctx, "reason")), typed(ctx, "passphrase"));
            ctx.redirect("/ledger", HttpStatus.SEE_OTHER);
            return;
        } catch (Refusal e) {
            ctx.status(e.status());
            complaint = e.getMessage();
        } catch (UnusableInput e) {
            ctx.status(422);
            complaint = e.getMessage().replaceFirst("([^.])$", "$1.") + " Nothing was withdrawn.";
        }
        ledger(ctx, new SignViews.Withdraw(check, ruleBook, alsoNotAsked, typed(ctx, "reason"), complaint));
    }

    private void ledger(Context ctx, SignViews.Withdraw asked) {
        int page = Api.page(ctx);
        String machine = given(ctx, "machine").strip();
        if (!desk.isSetUp()) {
            pages.show(ctx, "ledger", new SignViews.Ledger(Pages.frame(ctx, "Ledger"), machine, false, "", "This board was started without the settings of a workshop, so it has no ledger.", List.of(), "", "", null));
            return;
        }
        SigningDesk.Page found = desk.ledger(machine, (page - 1) * A_PAGE, A_PAGE);
        pages.show(ctx, "ledger", new SignViews.Ledger(Pages.frame(ctx, "Ledger"), machine, found.holds(), found.sound(), "",
                found.lines().stream().map(line -> new SignViews.Line(line.number(), Wording.moment(line.at(), zone), line.kind(), LedgerWords.says(line), line.text("record"))).toList(),
                before(ctx, "/ledger", page), found.more() ? "/ledger?" + Query.with(ctx, "page", String.valueOf(page + 1)) : "",
                Guard.visitor(ctx).may(Action.MANAGE_ACCOUNTS) ? asked : null));
    }

    /** The keys in somebody's name, and none; empty where there is none to choose. */
    List<Views.Choice> keys(Account account) {
        List<TrustedKey> theirs;
        try {
            theirs = desk.keys().stream().filter(key -> SigningDesk.same(key.name(), account.name())).toList();
        } catch (UnusableInput e) {
            return List.of();
        }
        String bound = store.read(lines -> lines.signings().key(account.id())).orElse("");
        if (theirs.isEmpty() && bound.isEmpty()) {
            return List.of();
        }
        return Stream.concat(Stream.of(new Views.Choice("", "no key", bound.isEmpty())), theirs.stream().map(key -> new Views.Choice(key.id(),
                key.role().word() + ", " + (key.isRevoked() ? "revoked" : "good until " + Views.day(key.until(), zone)) + ", " + key.id().substring(0, 8) + "…", key.id().equals(bound)))).toList();
    }

    private void bind(Context ctx) {
        try {
            desk.bind(Guard.visitor(ctx), ctx.pathParam("id"), typed(ctx, "key"));
            ctx.redirect("/people", HttpStatus.SEE_OTHER);
        } catch (Refusal e) {
            if (e.status() == 404) {
                throw e;
            }
            ctx.status(e.status());
            pages.people(ctx, "", "", e.getMessage());
        }
    }

    private void paper(Context ctx) {
        Kept kept = kept(ctx);
        Instant now = clock.instant();
        PaperSize size = switch (given(ctx, "size")) {
            case "", "a4" -> PaperSize.A4;
            case "letter" -> PaperSize.LETTER;
            default -> throw new Refusal(422, "Write the size as a4 or letter.");
        };
        String html = switch (ctx.pathParam("paper")) {
            case "statement.pdf" -> statement(kept, now, size);
            case "tag.pdf" -> tag(kept, now, size);
            case "worksheet.pdf" -> Papers.html(WorkSheet.of(OrderOfWork.of(judging.read(kept, now), judging.book(), Api.gateOf(given(ctx, "gate")), now), judging.book()), size);
            case "sign-off.pdf" -> sheet(kept, given(ctx, "of"), now, size);
            default -> throw Refusal.notFound();
        };
        ctx.contentType("application/pdf").header("Content-Disposition", "inline; filename=\"" + name(kept.id() + "-" + ctx.pathParam("paper")) + "\"").result(Papers.pdf(html, now));
    }

    private String tag(Kept kept, Instant now, PaperSize size) {
        JobRecord record = judging.read(kept, now);
        Assessment assessment = judging.assess(record, record.seeks(), now);
        return Papers.html(Tag.of(desk.mustNotBeWithdrawn(assessment)), size);
    }

    private String statement(Kept kept, Instant now, PaperSize size) {
        JobRecord record = judging.read(kept, now);
        desk.mustNotBeWithdrawn(judging.assess(record, Statement.gates(record), now));
        return Papers.html(Statement.of(record, judging.book(), now), size);
    }

    private String sheet(Kept kept, String of, Instant now, PaperSize size) {
        Signings.Line line = store.read(lines -> lines.signings().find(of)).filter(one -> one.machine().equals(kept.id())).orElseThrow(Refusal::notFound);
        Verification found = desk.verify(line.id()).found();
        if (found.signOff() == null) {
            throw new Refusal(422, "No sheet was made. " + found.things().get(0).says());
        }
        return Papers.html(SignOffSheet.of(found, now), size);
    }
}
