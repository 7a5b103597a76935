package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Reads {@code roadtest/plan.yaml} as strictly as a limit: a number in the words is refused, for it would have no source. */
final class RideSheetReader {
    private static final String AMOUNT = "{amount}";

    private final Map<String, List<String>> places;
    private final Set<String> works;
    private final Map<String, Card> cards;

    /**
     * @param places the words behind the names in braces
     * @param works every work known
     * @param cards every check known
     */
    RideSheetReader(Map<String, List<String>> places, Set<String> works, Map<String, Card> cards) {
        this.places = places;
        this.works = works;
        this.cards = cards;
    }

    /** The plan; what is wrong with it goes into the faults behind the sheet. */
    RideSheet read(Sheet sheet) {
        List<RideSheet.Step> steps = new ArrayList<>();
        Set<String> ids = new LinkedHashSet<>();
        for (Sheet item : sheet.sheets("steps")) {
            steps.add(new RideSheet.Step(id(item, ids), words(item, "title"), ceiling(item), lines(item, "do", Set.of()), lines(item, "feel", Set.of())));
            item.done();
        }
        if (steps.isEmpty()) {
            sheet.fault("steps", "a ride without steps is no plan", "Write steps: and a list.");
        }
        Set<String> stepIds = Set.copyOf(ids);
        List<RideSheet.Restraint> restraints = new ArrayList<>();
        Set<String> restraintIds = new LinkedHashSet<>();
        for (Sheet item : sheet.sheets("limits")) {
            restraints.add(restraint(item, restraintIds, stepIds));
        }
        List<RideSheet.Line> stop = lines(sheet, "stop", Set.of());
        List<RideSheet.Line> back = lines(sheet, "back", Set.of());
        if (stop.isEmpty()) {
            sheet.fault("stop", "a rider must know when to stop", "Write stop: and a list.");
        }
        sheet.done();
        return new RideSheet(List.copyOf(steps), List.copyOf(restraints), stop, back);
    }

    private RideSheet.Restraint restraint(Sheet item, Set<String> ids, Set<String> steps) {
        String id = id(item, ids);
        String because = words(item, "because");
        RideSheet.Only only = only(item);
        List<RideSheet.After> after = new ArrayList<>();
        for (Sheet work : item.sheets("after")) {
            Set<String> named = new TreeSet<>(work.texts("work"));
            named.forEach(name -> known(work, "work", name));
            if (named.isEmpty()) {
                work.fault("work", "names no work", "Write work: [replaced].");
            }
            String pattern = work.text("place");
            work.done();
            after.add(new RideSheet.After(named, pattern == null ? Set.of() : points(work, pattern)));
        }
        String until = item.optional("until");
        if (until != null) {
            known(item, "until", until);
        }
        String check = item.optional("check");
        if (check != null && !cards.containsKey(check)) {
            item.fault("check", "no check is called '" + check + "'", "Known ids stand in rules/*/checks.yaml.");
        }
        String metWithout = item.optional("met-without");
        boolean byWork = !after.isEmpty() && until != null && check == null && metWithout == null;
        boolean byCheck = after.isEmpty() && until == null && check != null && metWithout != null;
        if (!byWork && !byCheck) {
            item.fault("", "says not when it applies", "Write after: and until:, or check: and met-without:.");
        }
        RideSheet.Ceiling upTo = ceiling(item);
        List<RideSheet.Line> lines = lines(item, "lines", steps);
        List<RideSheet.Line> back = lines(item, "back", Set.of());
        item.done();
        return new RideSheet.Restraint(id, because, only, List.copyOf(after), until, check, metWithout, upTo, lines, back);
    }

    private static String id(Sheet item, Set<String> ids) {
        String id = item.text("id");
        if (id != null && !ids.add(id)) {
            item.fault("id", "'" + id + "' stands twice", "Choose another.");
        }
        return id;
    }

    private void known(Sheet sheet, String key, String work) {
        if (!works.contains(work)) {
            sheet.fault(key, "'" + work + "' is not a known work", "Known: " + String.join(", ", works) + ".");
        }
    }

    private Set<String> points(Sheet sheet, String pattern) {
        Place place = new Place(pattern);
        List<String> strangers = place.names().stream().filter(name -> !places.containsKey(name)).toList();
        strangers.forEach(name -> sheet.fault("place", "'{" + name + "}' is not a known word for a place", "Known: " + places.keySet() + "."));
        return strangers.isEmpty() ? new TreeSet<>(place.points(Map.of(), places)) : Set.of();
    }

    private static RideSheet.Only only(Sheet sheet) {
        return sheet.optionalAs("only", text -> Sheet.wordOf(text, RideSheet.Only.class));
    }

    private static RideSheet.Ceiling ceiling(Sheet sheet) {
        if (!sheet.has("up-to")) {
            return null;
        }
        Sheet upTo = sheet.sheet("up-to");
        Quantity speed = upTo.quantity("amount");
        if (speed != null && speed.unit().dimension() != Unit.Dimension.SPEED) {
            upTo.fault("amount", speed + " is not a speed", "Write it as 30 mph or 50 km/h.");
            speed = null;
        }
        Source source = LimitReader.source(upTo);
        upTo.done();
        return speed == null || source == null ? null : new RideSheet.Ceiling(speed, source);
    }

    private static List<RideSheet.Line> lines(Sheet sheet, String key, Set<String> steps) {
        List<RideSheet.Line> lines = new ArrayList<>();
        for (Sheet item : sheet.sheets(key)) {
            String say = words(item, "say");
            Quantity amount = item.has("amount") ? item.quantity("amount") : null;
            Source source = item.has("amount") ? LimitReader.source(item) : null;
            if (say != null && say.contains(AMOUNT) != item.has("amount")) {
                item.fault("say", item.has("amount") ? "does not say where the amount goes" : "speaks of an amount that is not given", "Write " + AMOUNT + " in the words, and amount: and source: beside them.");
            }
            RideSheet.Only only = only(item);
            String step = item.optional("step");
            if (step != null && !steps.contains(step)) {
                item.fault("step", "there is no step '" + step + "' to do this at", steps.isEmpty() ? "" : "Known: " + String.join(", ", new TreeSet<>(steps)) + ".");
            }
            item.done();
            lines.add(new RideSheet.Line(say, amount, source, only, step));
        }
        return List.copyOf(lines);
    }

    private static String words(Sheet sheet, String key) {
        String words = sheet.text(key);
        if (words != null && words.chars().anyMatch(Character::isDigit)) {
            sheet.fault(key, "a number in the words has no source", "Write " + AMOUNT + " in its place, and amount: and source: beside the words.");
        }
        return words;
    }
}
