package chock.rulebook;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Plausible;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the table of what figures can be at all. */
final class PlausibleReader {
    private static final Pattern RANGE = Pattern.compile("(above )?(-?\\d+(?:\\.\\d+)?) to (-?\\d+(?:\\.\\d+)?)(?: (\\D.*))?");
    private static final String OF_READING = " of the reading";
    private static final String AT_ZERO = " at 0";

    private final Map<String, List<String>> places;

    /** @param places words behind the names in braces */
    PlausibleReader(Map<String, List<String>> places) {
        this.places = places;
    }

    Plausible read(Sheet sheet) {
        Map<String, List<Plausible.Row>> amounts = new LinkedHashMap<>();
        for (Sheet item : sheet.sheets("amounts")) {
            Plausible.Row row = row(item);
            if (row != null) {
                List<Plausible.Row> rows = amounts.computeIfAbsent(row.of(), of -> new ArrayList<>());
                if (rows.stream().anyMatch(other -> meet(other, row))) {
                    item.fault("of", "'" + row.of() + "' has a row already for one of these places", "Keep one row for each place.");
                }
                rows.add(row);
            }
        }
        Map<String, Plausible.Row> description = new LinkedHashMap<>();
        for (Sheet item : sheet.sheets("description")) {
            Plausible.Row row = row(item);
            if (row != null && description.put(row.of(), row) != null) {
                item.fault("of", "'" + row.of() + "' has a row already", "Keep one.");
            }
        }
        Map<String, Plausible.Mark> dates = new LinkedHashMap<>();
        for (Sheet item : sheet.sheets("dates")) {
            String of = item.text("of");
            LocalDate from = item.date("from");
            String hint = item.text("hint");
            item.done();
            if (of != null && from != null && hint != null) {
                dates.put(of, new Plausible.Mark(from, hint));
            }
        }
        List<Plausible.Pair> pairs = new ArrayList<>();
        sheet.sheets("pairs").forEach(item -> pairs.add(pair(item, amounts.keySet())));
        Map<String, List<Plausible.Tool>> tools = new LinkedHashMap<>();
        sheet.sheets("instruments").forEach(item -> tool(item, tools));
        Plausible.Calibration calibrated = calibration(sheet.sheet("calibrated"));
        Map<String, Plausible.LimitRow> limits = new LinkedHashMap<>();
        sheet.sheets("limits").forEach(item -> limit(item, limits));
        Map<String, Map<String, String>> figures = new LinkedHashMap<>();
        for (Sheet item : sheet.sheets("figures")) {
            figure(item, figures, amounts.keySet(), description.keySet());
        }
        sheet.done();
        pairs.removeIf(pair -> pair == null);
        return new Plausible(amounts, dates, List.copyOf(pairs), description, tools, calibrated, limits, figures);
    }

    private static boolean meet(Plausible.Row one, Plausible.Row other) {
        return one.points().isEmpty() || other.points().isEmpty() || one.points().stream().anyMatch(other.points()::contains);
    }

    private Plausible.Row row(Sheet item) {
        String of = item.text("of");
        Set<String> points = points(item);
        Bounds canBe = item.as("can-be", PlausibleReader::amounts);
        Bounds usual = item.optionalAs("usual", PlausibleReader::amounts);
        boolean whole = item.yesOr("whole", false);
        String hint = item.text("hint");
        item.done();
        if (of == null || canBe == null || hint == null) {
            return null;
        }
        if (usual != null && (usual.low().unit() != canBe.low().unit() || usual.low().compareTo(canBe.low()) < 0 || usual.high().compareTo(canBe.high()) > 0)) {
            item.fault("usual", "what is usual for '" + of + "' reaches beyond what can be", "Write both in one unit, the usual inside the other.");
        }
        return new Plausible.Row(of, points, canBe, usual, whole, hint);
    }

    /** The places named under {@code at}; none when it is not there. */
    private Set<String> points(Sheet item) {
        String at = item.optional("at");
        if (at == null) {
            return Set.of();
        }
        Place place = new Place(at);
        place.names().stream().filter(name -> !places.containsKey(name)).forEach(name -> item.fault("at", "'{" + name + "}' is not a known word for a place", "Known: " + places.keySet() + "."));
        return place.names().stream().allMatch(places::containsKey) ? new LinkedHashSet<>(place.points(Map.of(), places)) : Set.of();
    }

    private Plausible.Pair pair(Sheet item, Set<String> known) {
        String of = item.text("of");
        Set<String> at = points(item);
        String to = item.text("to");
        String toAt = item.optional("to-at");
        Bounds ratio = item.as("ratio", text -> range(text, Unit.TIMES));
        boolean u = item.yesOr("u", false);
        String otherwise = item.text("otherwise");
        String hint = item.text("hint");
        item.done();
        if (otherwise != null && !Set.of("refuse", "ask").contains(otherwise)) {
            item.fault("otherwise", "'" + otherwise + "'", "Write refuse where both cannot be true, or ask.");
        }
        for (String name : new String[] {of, to}) {
            if (name != null && !known.contains(name) && !Set.of("machine.volts", "machine.top-speed").contains(name)) {
                item.fault(name.equals(of) ? "of" : "to", "'" + name + "' has no row among the amounts", "Add its row, or write machine.volts or machine.top-speed.");
            }
        }
        return of == null || to == null || ratio == null || otherwise == null || hint == null ? null : new Plausible.Pair(of, at, to, toAt, ratio, u, otherwise.equals("refuse"), hint);
    }

    private static void tool(Sheet item, Map<String, List<Plausible.Tool>> tools) {
        String kind = item.text("kind");
        Unit.Dimension what = item.word("what", Unit.Dimension.class);
        Bounds shows = item.as("shows", PlausibleReader::amounts);
        List<Plausible.Most> most = new ArrayList<>();
        for (String text : item.texts("uncertainty")) {
            try {
                boolean ofReading = text.endsWith(OF_READING);
                boolean atZero = text.endsWith(AT_ZERO);
                int behind = ofReading ? OF_READING.length() : atZero ? AT_ZERO.length() : 0;
                most.add(new Plausible.Most(Quantity.parse(text.substring(0, text.length() - behind)), ofReading, atZero));
            } catch (IllegalArgumentException e) {
                item.fault("uncertainty", e.getMessage(), "");
            }
        }
        if (most.isEmpty()) {
            item.fault("uncertainty", "it names none", "Write the most that it can have, such as [1 mm] or [20 % of the reading].");
        } else if (shows != null && shows.low().value().signum() <= 0 && most.stream().allMatch(Plausible.Most::ofReading)) {
            item.fault("uncertainty", "a share of the reading leaves nothing to a reading of 0", "Write beside it the most that a reading of 0 can have, such as 0.1 L at 0.");
        }
        Integer years = item.as("years", Integer::valueOf);
        item.done();
        if (kind != null && what != null && shows != null && years != null) {
            if (shows.low().unit().dimension() != what) {
                item.fault("shows", "a " + kind + " shows " + what.words() + ", not " + shows.low().unit().dimension().words(), "Write the range in a unit of " + what.words() + ".");
            }
            tools.computeIfAbsent(kind, k -> new ArrayList<>()).add(new Plausible.Tool(what, shows, List.copyOf(most), years));
        }
    }

    private static Plausible.Calibration calibration(Sheet item) {
        if (item == null) {
            return null;
        }
        LocalDate from = item.date("from");
        Integer years = item.as("years", Integer::valueOf);
        item.done();
        return from == null || years == null ? null : new Plausible.Calibration(from, years);
    }

    private static void limit(Sheet item, Map<String, Plausible.LimitRow> limits) {
        String of = item.text("of");
        Bounds canBe = item.as("can-be", PlausibleReader::amounts);
        String maker = item.optional("maker");
        Bounds makers = maker == null ? null : maker.equals("the same") ? canBe : item.as("maker", PlausibleReader::amounts);
        item.done();
        if (of != null && canBe != null && limits.put(of, new Plausible.LimitRow(canBe, makers)) != null) {
            item.fault("of", "'" + of + "' has a row already", "Keep one.");
        }
    }

    private static void figure(Sheet item, Map<String, Map<String, String>> figures, Set<String> amounts, Set<String> description) {
        String figure = item.text("figure");
        Sheet arguments = item.sheet("arguments");
        item.done();
        if (figure == null || arguments == null) {
            return;
        }
        Map<String, String> rows = new LinkedHashMap<>();
        for (String argument : arguments.keys()) {
            String row = arguments.text(argument);
            if (row != null && !amounts.contains(row) && !description.contains(row)) {
                arguments.fault(argument, "'" + row + "' has no row among the amounts or the description", "Add its row, or leave the argument out.");
            } else if (row != null) {
                rows.put(argument, row);
            }
        }
        figures.put(figure, rows);
    }

    private static Bounds amounts(String text) {
        return range(text, null);
    }

    /** Reads {@code 0 to 30 mm} or {@code above 0 to 60 s}; both ends belong to it but one that is above. */
    private static Bounds range(String text, Unit implied) {
        Matcher m = RANGE.matcher(text);
        if (!m.matches() || (m.group(4) == null) == (implied == null)) {
            throw new IllegalArgumentException("'" + text + "': write a range" + (implied == null ? " and its unit, such as 0 to 30 mm or above 0 to 60 s" : " of two numbers, such as 0 to 1.35"));
        }
        Unit unit = implied != null ? implied : Unit.spelled(m.group(4)).orElseThrow(() -> new IllegalArgumentException("'" + m.group(4) + "' is not a unit this program knows"));
        Quantity low = Quantity.of(m.group(2), unit);
        Quantity high = Quantity.of(m.group(3), unit);
        if (low.compareTo(high) >= 0) {
            throw new IllegalArgumentException("'" + text + "': the second end lies above the first");
        }
        return new Bounds(low, m.group(1) == null, high, true);
    }
}
