package chock.report;

import chock.assess.Foresight;
import chock.assess.Impact;
import chock.assess.State;
import chock.record.Gate;
import chock.record.JobRecord;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a change of the rule book, or time alone, would do to every machine in the shop.
 *
 * @param what the changes tried, in words; empty when none is
 * @param impacts one for each record and gate; empty when no change is tried
 * @param days within how many days lapses are listed, or null when they are not
 * @param lapses what changes by itself, record by record
 */
public record ImpactReport(List<String> what, List<Impact> impacts, Integer days, List<Lapse> lapses) {

    /** One finding of one record that changes by itself. */
    public record Lapse(JobRecord record, Foresight.Turn turn) { }

    /** In lines of at most 80 columns. */
    public String text(boolean bold) {
        Page page = new Page(bold);
        if (!what.isEmpty()) {
            page.heading("WHAT IF " + String.join("; ", what));
            impacts.forEach(impact -> impact(impact, page));
            page.gap().put(0, sum());
        }
        if (days != null) {
            if (!what.isEmpty()) {
                page.gap();
            }
            lapses(page);
        }
        return page.gap().put(0, Wording.NOTICE).toString();
    }

    private static void impact(Impact impact, Page page) {
        String verdict = word(impact.before()) + (impact.changesVerdict() ? ", then " + word(impact.after()) : " as now");
        page.put(2, impact.changesVerdict() ? "> " : "  ", impact.record().id() + " at " + impact.gate() + ": " + verdict);
        impact.findings().forEach(f -> page.put(6, "- ", f.check() + ": " + word(f.before()) + ", then " + word(f.after()) + (f.before() == f.after() ? " at other places. " : ". ") + f.says()));
    }

    private static String word(boolean released) {
        return released ? "released" : "blocked";
    }

    private static String word(State state) {
        return state == null ? "not asked" : state.id();
    }

    private String sum() {
        long machines = impacts.stream().map(i -> i.record().id()).distinct().count();
        long blocked = impacts.stream().filter(i -> i.before() && !i.after()).count();
        long released = impacts.stream().filter(i -> !i.before() && i.after()).count();
        Map<String, Integer> checks = new TreeMap<>();
        impacts.stream().flatMap(i -> i.findings().stream()).forEach(f -> checks.merge(f.check(), 1, Integer::sum));
        String verdicts = blocked + released == 0 ? "No verdict changes" : counted(blocked, "is blocked that is released now", "are blocked that are released now") + ", "
                + counted(released, "is released that is blocked now", "are released that are blocked now");
        List<String> findings = checks.entrySet().stream().map(e -> e.getKey() + " at " + e.getValue() + (e.getValue() == 1 ? " gate" : " gates")).toList();
        return "In sum, over " + machines + (machines == 1 ? " machine and " : " machines and ") + impacts.size() + (impacts.size() == 1 ? " verdict: " : " verdicts: ") + verdicts
                + ". " + (findings.isEmpty() ? "No finding changes." : "Findings that change: " + String.join(", ", findings) + ".");
    }

    private static String counted(long n, String one, String many) {
        return n + " " + (n == 1 ? one : many);
    }

    private void lapses(Page page) {
        page.heading("WHAT CHANGES BY ITSELF within " + days + (days == 1 ? " day" : " days") + ", if nobody writes anything more");
        Map<String, List<String>> groups = new LinkedHashMap<>();
        lapses.stream().sorted((a, b) -> a.turn.at().compareTo(b.turn.at())).forEach(l -> groups.computeIfAbsent(
                Wording.moment(l.turn.at(), l.record.zone()) + ", " + l.record.id() + " at " + l.turn.gate(), k -> new ArrayList<>())
                .add(l.turn.check() + " (" + word(l.turn.before()) + ", then " + word(l.turn.after()) + ")"));
        groups.forEach((when, findings) -> page.put(2, when + ":").put(6, String.join(", ", findings) + "."));
        if (groups.isEmpty()) {
            page.put(2, "Nothing.");
        }
    }

    /** One object, with a line end. */
    public String json() {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        what.forEach(node.putArray("tried")::add);
        ArrayNode all = node.putArray("impacts");
        impacts.forEach(impact -> all.add(node(impact)));
        node.put("withinDays", days);
        ArrayNode turns = node.putArray("lapses");
        lapses.forEach(l -> turns.addObject().put("record", l.record.id()).put("gate", l.turn.gate().id()).put("at", iso(l.turn.at(), l.record)).put("check", l.turn.check())
                .put("before", id(l.turn.before())).put("after", id(l.turn.after())));
        return Json.pretty(node);
    }

    /** One record at one gate as a line of JSON, with a line end. */
    public static String line(Impact impact) {
        return node(impact) + "\n";
    }

    private static ObjectNode node(Impact impact) {
        ObjectNode one = JsonNodeFactory.instance.objectNode().put("record", impact.record().id()).put("gate", impact.gate().id()).put("asOf", iso(impact.asOf(), impact.record()))
                .put("before", word(impact.before())).put("after", word(impact.after()));
        ArrayNode findings = one.putArray("findings");
        impact.findings().forEach(f -> findings.addObject().put("check", f.check()).put("before", id(f.before())).put("after", id(f.after())).put("says", f.says()));
        return one;
    }

    private static String iso(Instant at, JobRecord record) {
        return Wording.iso(at, record.zone());
    }

    private static String id(State state) {
        return state == null ? null : state.id();
    }

    /** One line for each finding that changes, and one for each verdict with none that does; a head line names the columns. */
    public String csv() {
        CsvSchema columns = CsvSchema.builder().addColumn("record").addColumn("gate").addColumn("at").addColumn("why").addColumn("verdict").addColumn("verdict-then")
                .addColumn("check").addColumn("state").addColumn("state-then").addColumn("says").build().withHeader().withLineSeparator("\n");
        List<Map<String, String>> rows = new ArrayList<>();
        for (Impact impact : impacts) {
            List<Impact.Change> changes = impact.findings().isEmpty() ? List.of(new Impact.Change("", null, null, "")) : impact.findings();
            changes.forEach(f -> rows.add(row(impact.record(), impact.gate(), impact.asOf(), "change", word(impact.before()), word(impact.after()), f.check(), f.before(), f.after(), f.says())));
        }
        lapses.forEach(l -> rows.add(row(l.record, l.turn.gate(), l.turn.at(), "time", "", "", l.turn.check(), l.turn.before(), l.turn.after(), "")));
        try {
            return new CsvMapper().writer(columns).writeValueAsString(rows);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("rows in memory can always be written", e);
        }
    }

    private static Map<String, String> row(JobRecord record, Gate gate, Instant at, String why, String before, String after, String check, State was, State is, String says) {
        Map<String, String> row = new LinkedHashMap<>();
        row.put("record", cell(record.id()));
        row.put("gate", gate.id());
        row.put("at", iso(at, record));
        row.put("why", why);
        row.put("verdict", before);
        row.put("verdict-then", after);
        row.put("check", check);
        row.put("state", check.isEmpty() ? "" : word(was).toLowerCase(Locale.ROOT));
        row.put("state-then", check.isEmpty() ? "" : word(is).toLowerCase(Locale.ROOT));
        row.put("says", cell(says));
        return row;
    }

    /** What a table calculation would take for a formula is marked as text, as OWASP advises against CSV injection. */
    private static String cell(String words) {
        String clean = Page.clean(words);
        return clean.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + clean : clean;
    }
}
