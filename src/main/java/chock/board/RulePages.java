package chock.board;

import chock.assess.Impact;
import chock.assess.State;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rehearse.Rehearsed;
import chock.rehearse.Scenarios;
import chock.report.CheckInWords;
import chock.report.Wording;
import chock.rulebook.Card;
import chock.rulebook.HouseBook;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** The rule book to read, and limits of the house to try before anybody adopts them. */
final class RulePages {
    /** Long enough for a shop of seventy machines, and shorter than anybody waits before a page that says nothing. */
    private static final Duration WAIT = Duration.ofSeconds(8);

    private final Judging judging;
    private final HouseTrial trial;
    private final CheckRehearsal rehearsal;

    RulePages(Judging judging, HouseTrial trial, CheckRehearsal rehearsal) {
        this.judging = judging;
        this.trial = trial;
        this.rehearsal = rehearsal;
    }

    record Catalogue(Views.Frame frame, String q, List<Views.Choice> gates, List<Views.Choice> systems, int all, String book, List<Part> parts) { }

    record Part(String system, List<Item> items) { }

    record Item(String link, String id, String question, String gates, boolean critical) { }

    /**
     * @param shown its scenarios by file, before they were ever rehearsed
     * @param tighten where to try its limit, or empty
     * @param rehearse where to send the wish to rehearse, or empty where there is nothing to
     * @param running whether it is being rehearsed just now
     * @param rehearsed what came of it by file, or empty before the first time
     */
    record Check(Views.Frame frame, String id, String question, boolean critical, List<Row> rows, List<Shown> shown, String held, String tighten, String rehearse, boolean running, String lastly, List<Played> rehearsed) { }

    /** A file and what came of its scenarios. */
    record Played(String file, List<Scene> scenarios) { }

    /**
     * Scenarios of one name, as the rows of an outline are.
     *
     * @param rows how many, in words, or empty for one alone
     * @param slips what was expected, and what was found instead
     */
    record Scene(String name, String rows, boolean holds, List<String> slips) { }

    record Row(String label, List<String> words) { }

    record Shown(String file, List<String> names) { }

    record House(Views.Frame frame, String name, String digest, String folder, List<Own> tightened, List<Views.Link> checks, List<Views.Choice> limits, Typed typed, String now, boolean fresh, List<String> faults, String waiting, String again, Outcome outcome) { }

    record Own(String id, String words, String why) { }

    record Typed(String limit, String value, boolean passes, String reason, String house) { }

    /** @param download where to fetch the limits with it */
    record Outcome(String what, String sum, List<Machine> machines, String judged, String limits, String digest, String download) { }

    record Machine(Views.Link link, String says, boolean turns, List<String> findings) { }

    void on(RoutesConfig routes) {
        routes.get("/rules", this::catalogue, Action.READ);
        routes.get("/rules/{check}", this::check, Action.READ);
        routes.post("/rules/{check}/rehearsal", this::rehearse, Action.READ);
        routes.get("/house", this::house, Action.TRY_LIMIT);
        routes.get("/house/limits.yaml", this::download, Action.TRY_LIMIT);
    }

    static String link(String check) {
        return "/rules/" + Query.encoded(check);
    }

    private void catalogue(Context ctx) {
        String q = Pages.query(ctx, "q");
        String gate = Pages.query(ctx, "gate");
        String system = Pages.query(ctx, "system");
        Gate asked = gate.isEmpty() ? null : Api.gateOf(gate);
        SortedMap<String, List<Item>> parts = new TreeMap<>();
        found(judging.book(), q, asked, system).forEach(card -> parts.computeIfAbsent(CheckInWords.system(card), s -> new ArrayList<>())
                .add(new Item(link(card.id()), card.id(), card.question(), CheckInWords.gates(card), card.critical())));
        List<Views.Choice> systems = new ArrayList<>(List.of(new Views.Choice("", "any system", system.isEmpty())));
        judging.book().cards().values().stream().map(CheckInWords::system).distinct().forEach(s -> systems.add(new Views.Choice(s, s, s.equals(system))));
        Pages.show(ctx, "rules", new Catalogue(Pages.frame(ctx, "Rules"), q, Pages.gates(gate, true), systems, parts.values().stream().mapToInt(List::size).sum(),
                "Rule book " + judging.book().version() + ", " + judging.book().cards().size() + " checks. House: " + judging.book().house().map(HouseBook::name).orElse("none") + ".",
                parts.entrySet().stream().map(e -> new Part(e.getKey(), e.getValue())).toList()));
    }

    /** The checks that speak of all the words, at this gate or any. */
    static List<Card> found(RuleBook book, String q, Gate gate, String system) {
        List<String> words = List.of(q.toLowerCase(Locale.ROOT).strip().split("\\s+"));
        return book.cards().values().stream().filter(c -> gate == null || c.gates().contains(gate)).filter(c -> system.isEmpty() || CheckInWords.system(c).equals(system))
                .filter(c -> words.stream().allMatch(String.join(" ", c.id(), c.id().replace('-', ' '), c.question(), c.applies(), c.remedy(), c.caution() == null ? "" : c.caution()).toLowerCase(Locale.ROOT)::contains)).toList();
    }

    private void check(Context ctx) {
        String id = ctx.pathParam("check");
        Card card = card(judging.book(), id).orElseThrow(Refusal::notFound);
        Map<String, List<String>> rows = new LinkedHashMap<>();
        CheckInWords.of(card, judging.book(), new TreeMap<>()).rows().forEach(row -> rows.computeIfAbsent(row.label(), l -> new ArrayList<>()).add(row.words()));
        SortedMap<String, List<String>> shown = scenarios(card);
        Optional<CheckRehearsal.Last> last = rehearsal.last(card.id());
        boolean tightens = card.limit() != null && HouseTrial.limit(judging.book(), card.limit()).isPresent() && Guard.visitor(ctx).may(Action.TRY_LIMIT);
        Pages.show(ctx, "rule", new Check(Pages.frame(ctx, card.id()), card.id(), card.question(), card.critical(), rows.entrySet().stream().map(e -> new Row(e.getKey(), e.getValue())).toList(),
                shown.entrySet().stream().map(e -> new Shown(e.getKey(), e.getValue())).toList(), "/?check=" + Query.encoded(card.id()), tightens ? "/house?limit=" + Query.encoded(card.limit()) : "",
                shown.isEmpty() && judging.book().house().isEmpty() ? "" : link(card.id()) + "/rehearsal", rehearsal.runs(card.id()), last.map(this::lastly).orElse("Not rehearsed since the board was started."), last.map(RulePages::played).orElse(List.of())));
    }

    private void rehearse(Context ctx) {
        Card card = card(judging.book(), ctx.pathParam("check")).orElseThrow(Refusal::notFound);
        rehearsal.ask(card.id(), WAIT);
        ctx.redirect(link(card.id()) + "#scenarios", HttpStatus.SEE_OTHER);
    }

    private String lastly(CheckRehearsal.Last last) {
        String when = "Last rehearsed " + Wording.moment(last.at(), trial.zone()) + " with rule book " + last.digest().replaceFirst("^sha256:", "").substring(0, 12) + ": ";
        if (last.shown().isEmpty()) {
            return when + "no scenario shows this check.";
        }
        return when + (last.holds() ? last.shown().size() == 1 ? "it holds." : "all " + last.shown().size() + " hold." : last.shown().size() - last.holding() + " of " + last.shown().size() + " do not hold.")
                + (last.cut() ? " No more than " + CheckRehearsal.MOST + " are rehearsed here; chock rehearse runs them all." : "")
                + (!last.holds() && judging.book().house().isPresent() ? " One inside the program that speaks of a limit the house has tightened need not hold." : "");
    }

    private static List<Played> played(CheckRehearsal.Last last) {
        Map<String, Map<String, List<Rehearsed.Shown>>> files = new LinkedHashMap<>();
        last.shown().forEach(one -> files.computeIfAbsent(one.file(), f -> new LinkedHashMap<>()).computeIfAbsent(one.name(), n -> new ArrayList<>()).add(one));
        return files.entrySet().stream().map(file -> new Played(file.getKey(), file.getValue().entrySet().stream().map(name -> scene(name.getKey(), name.getValue())).toList())).toList();
    }

    private static Scene scene(String name, List<Rehearsed.Shown> rows) {
        long held = rows.stream().filter(Rehearsed.Shown::holds).count();
        String counted = rows.size() == 1 ? "" : held == rows.size() ? ", " + rows.size() + " rows" : " in " + (rows.size() - held) + " of " + rows.size() + " rows";
        return new Scene(name, counted, held == rows.size(), rows.stream().filter(row -> !row.holds()).flatMap(row -> slips(row).stream()).toList());
    }

    private static List<String> slips(Rehearsed.Shown row) {
        return row.slips().isEmpty() ? List.of("Line " + row.line() + ": it expects nothing") : row.slips().stream().map(slip -> "Line " + row.line() + ", expected: " + slip.step() + ". Found: " + slip.found()).toList();
    }

    /** The check of this id, or the one that had it before. */
    static Optional<Card> card(RuleBook book, String id) {
        return Optional.ofNullable(book.cards().get(id)).or(() -> book.cards().values().stream().filter(c -> c.formerly().contains(id)).findFirst());
    }

    /** Read at the first use: there are thousands. */
    private static final class Shipped {
        private static final Scenarios ALL = Scenarios.shipped();
    }

    /** Names of the scenarios inside the program that show what a check means, by file. */
    static SortedMap<String, List<String>> scenarios(Card card) {
        return Shipped.ALL.of(card.id());
    }

    private static HouseTrial.Wish wish(Context ctx) {
        return new HouseTrial.Wish(shortened(ctx, "limit"), shortened(ctx, "value"), !Pages.query(ctx, "at-limit").equals("fails"), shortened(ctx, "reason"), Guard.visitor(ctx).account().name(), shortened(ctx, "house"));
    }

    private static String shortened(Context ctx, String name) {
        String text = Pages.query(ctx, name);
        return text.substring(0, Math.min(200, text.length()));
    }

    private void house(Context ctx) {
        HouseTrial.Wish wish = wish(ctx);
        RuleBook book = judging.book();
        List<String> faults = new ArrayList<>();
        Outcome outcome = null;
        String waiting = "";
        if (ctx.queryParam("value") != null) {
            try {
                HouseTrial.Asked asked = trial.ask(wish, WAIT);
                outcome = asked.done() == null ? null : outcome(asked.done(), ctx);
                waiting = asked.done() == null ? asked.judged() + " of " + asked.of() + " machines are judged so far." : "";
            } catch (UnusableInput e) {
                ctx.status(422);
                faults.addAll(RunPages.words(e));
            }
        }
        Optional<Limit> base = HouseTrial.limit(book, wish.limit());
        boolean passes = ctx.queryParam("at-limit") == null ? base.map(Limit::passesAtLimit).orElse(true) : wish.passesAtLimit();
        Pages.show(ctx, "house", new House(Pages.frame(ctx, "House limits"), book.house().map(HouseBook::name).orElse(""), book.house().map(HouseBook::digest).orElse("none"), book.house().map(HouseBook::folder).orElse(""),
                book.tightened().stream().map(l -> new Own(l.id(), HouseTrial.words(l), l.source().section())).toList(),
                book.cards().values().stream().filter(c -> c.id().startsWith("house.")).map(c -> new Views.Link(link(c.id()), c.id() + ": " + c.question())).toList(),
                HouseTrial.limits(book).stream().map(l -> new Views.Choice(l.id(), l.of() + ", " + HouseTrial.words(l), l.id().equals(wish.limit()))).toList(),
                new Typed(wish.limit(), wish.value(), passes, wish.reason(), wish.house()), base.map(l -> l.of() + ": " + HouseTrial.words(l) + " (" + l.source().words() + ")").orElse(""), book.house().isEmpty(), faults, waiting, "/house?" + Query.with(ctx, "again", ""), outcome));
    }

    private Outcome outcome(HouseTrial.Done done, Context ctx) {
        List<Machine> machines = done.impacts().stream().filter(i -> i.changesVerdict() || !i.findings().isEmpty())
                .sorted(java.util.Comparator.comparing((Impact i) -> !i.changesVerdict())).map(RulePages::machine).toList();
        long lost = done.impacts().stream().filter(i -> i.before() && !i.after()).count();
        String sum = machines.isEmpty() ? "Nothing would change." : (lost == 0 ? "No release would be lost" : lost + (lost == 1 ? " release would be lost" : " releases would be lost")) + "; findings would change under " + machines.size() + (machines.size() == 1 ? " verdict." : " verdicts.");
        String judged = done.judged() + (done.judged() == 1 ? " machine" : " machines") + " judged twice, as of " + Wording.moment(done.asOf(), trial.zone()) + "."
                + (done.all() > done.judged() ? " There are " + done.all() + ": only the first " + done.judged() + " were looked at. For all of them: take the records out and use chock impact." : "");
        return new Outcome(done.what(), sum, machines, judged, done.house().limits(), done.house().digest(), "/house/limits.yaml?" + Query.with(ctx, "download", ""));
    }

    private static Machine machine(Impact i) {
        return new Machine(new Views.Link("/machines/" + Query.encoded(i.record().id()) + "?gate=" + i.gate(), i.record().id() + " " + Pages.name(i.record())),
                i.gate() + ": " + (i.changesVerdict() ? (i.before() ? "released now, would be held" : "held now, would be released") : (i.before() ? "stays released" : "held as now")), i.changesVerdict(),
                i.findings().stream().map(f -> f.check() + ": " + word(f.before()) + ", then " + word(f.after()) + ". " + f.says()).toList());
    }

    private static String word(State state) {
        return state == null ? "not asked" : state.id();
    }

    private void download(Context ctx) {
        String limits = trial.with(wish(ctx)).house().orElseThrow().limits();
        ctx.contentType("application/yaml").header("Content-Disposition", "attachment; filename=\"limits.yaml\"").result(limits);
    }
}
