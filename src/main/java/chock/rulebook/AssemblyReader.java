package chock.rulebook;

import chock.rulebook.Assembly.Kind;
import chock.rulebook.Assembly.Level;
import chock.rulebook.Assembly.ReadApart;
import chock.rulebook.Assembly.Reach;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Reads how machines are put together: strictly, and against the words, places and checks of the rule book. */
final class AssemblyReader {
    static final String FILE = "assembly.yaml";

    private final Map<String, List<String>> places;
    private final Set<String> works;
    private final Set<String> disturbing;
    private final Map<String, Card> cards;
    private final Set<String> points;
    private final Map<String, Set<String>> groups = new LinkedHashMap<>();

    /**
     * @param places words behind the names in braces
     * @param works every work
     * @param disturbing those of them that take a part off, open or change it
     * @param cards every check
     * @param points every place work can be written at, or null where not all of them are known
     */
    AssemblyReader(Map<String, List<String>> places, Set<String> works, Set<String> disturbing, Map<String, Card> cards, Set<String> points) {
        this.places = places;
        this.works = works;
        this.disturbing = disturbing;
        this.cards = cards;
        this.points = points;
    }

    Assembly read(Sheet sheet) {
        Sheet grouped = sheet.sheet("groups");
        if (grouped != null) {
            grouped.keys().forEach(name -> groups.put(name, works(grouped, name)));
        }
        Map<String, Set<Kind>> takes = new HashMap<>();
        Sheet table = sheet.sheet("takes");
        if (table != null) {
            for (String work : table.keys()) {
                if (!works.contains(work)) {
                    table.fault(work, "'" + work + "' is not a known work", "Known: " + String.join(", ", works) + ".");
                }
                takes.put(work, kinds(table, work));
            }
            disturbing.stream().filter(work -> !takes.containsKey(work)).forEach(work -> table.fault("", "'" + work + "' is left out", "Write what it takes away on the part worked on, such as " + work + ": [seat, trial]."));
        }
        Map<Level, Set<Kind>> acts = new EnumMap<>(Level.class);
        Map<Level, Set<String>> actsLike = new EnumMap<>(Level.class);
        Sheet levels = sheet.sheet("levels");
        if (levels != null) {
            for (Level level : Level.values()) {
                Sheet one = levels.sheet(level.toString());
                if (one != null) {
                    actsLike.put(level, works(one, "acts-like"));
                    acts.put(level, kinds(one, "takes"));
                    one.done();
                }
            }
            levels.done();
        }
        Map<String, Level> like = new HashMap<>();
        Sheet read = sheet.sheet("read-as");
        if (read != null) {
            read.keys().forEach(work -> like.put(work, read.word(work, Level.class)));
        }
        Set<String> units = new LinkedHashSet<>();
        sheet.texts("units").forEach(unit -> units.addAll(points(sheet, "units", unit, Map.of())));
        Map<String, Set<String>> whole = new HashMap<>();
        Sheet all = sheet.sheet("whole-machine");
        if (all != null) {
            all.keys().forEach(place -> whole.put(place, works(all, place)));
        }
        Map<String, String> itself = new HashMap<>();
        sheet.texts("mends-only-itself").forEach(place -> points(sheet, "mends-only-itself", place, Map.of()).forEach(point -> itself.put(point, point.replaceFirst("/.*", ""))));
        Set<String> inPlace = works(sheet, "mends-in-place");
        Map<String, List<Reach>> reach = new HashMap<>();
        for (Sheet row : sheet.sheets("reach")) {
            reach(row, reach);
        }
        Map<String, Kind> kinds = proofs(sheet);
        Map<String, List<ReadApart>> apart = new HashMap<>();
        String assembled = sheet.has("apart") ? sheet.text("read-assembled") : "";
        for (Sheet row : sheet.sheets("apart")) {
            apart(row, apart);
        }
        sheet.done();
        return new Assembly(kinds, takes, acts, actsLike, like, Set.copyOf(units), whole, itself, inPlace, reach, apart, assembled);
    }

    /** Works under a key; the name of a group stands for its works. */
    private Set<String> works(Sheet sheet, String key) {
        Set<String> named = new LinkedHashSet<>();
        for (String word : sheet.texts(key)) {
            if (groups.containsKey(word)) {
                named.addAll(groups.get(word));
            } else if (works.contains(word)) {
                named.add(word);
            } else {
                sheet.fault(key, "'" + word + "' is not a known work", "Known: " + String.join(", ", works) + "; or all of a group: " + String.join(", ", groups.keySet()) + ".");
            }
        }
        return named;
    }

    private static Set<Kind> kinds(Sheet sheet, String key) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        for (String word : sheet.texts(key)) {
            try {
                kinds.add(Sheet.wordOf(word, Kind.class));
            } catch (IllegalArgumentException e) {
                sheet.fault(key, e.getMessage(), "");
            }
        }
        return kinds;
    }

    private void reach(Sheet row, Map<String, List<Reach>> reach) {
        Set<String> on = works(row, "work");
        List<String> at = row.texts("at");
        Map<String, List<String>> when = new LinkedHashMap<>();
        if (row.has("when")) {
            Sheet fields = row.sheet("when");
            fields.keys().forEach(field -> when.put(field, fields.texts(field)));
        }
        Map<Level, List<String>> implies = new EnumMap<>(Level.class);
        for (Level level : Level.values()) {
            List<String> named = row.texts(level.toString());
            if (!named.isEmpty()) {
                implies.put(level, named);
            }
        }
        row.optional("why");
        row.done();
        if (on.isEmpty()) {
            row.fault("work", "it names no work", "Write work: [any].");
        }
        if (implies.isEmpty()) {
            row.fault("", "it implies nothing", "Write a level and its places, such as out: [rear-wheel]. Levels: " + java.util.Arrays.toString(Level.values()) + ".");
        }
        for (String pattern : at) {
            for (Map<String, String> binding : bindings(row, pattern)) {
                String place = new Place(pattern).points(binding, places).get(0);
                known(row, "at", place, binding.isEmpty());
                Map<Level, List<String>> laid = new EnumMap<>(Level.class);
                implies.forEach((level, patterns) -> laid.put(level, patterns.stream().flatMap(p -> points(row, level.toString(), p, binding).stream()).distinct().toList()));
                Map<String, Set<String>> bound = new LinkedHashMap<>();
                when.forEach((field, values) -> new Place(field).points(binding, places).forEach(name -> bound.put(name, Set.copyOf(values))));
                bound.forEach((field, values) -> field(row, field, values));
                reach.computeIfAbsent(place, p -> new ArrayList<>()).add(new Reach(on, place, bound, laid));
            }
        }
    }

    private void field(Sheet row, String field, Set<String> values) {
        if (!chock.record.DescriptionField.names().contains(field)) {
            row.fault("when", "'" + field + "' is not a field of a machine's description", "Known: " + String.join(", ", chock.record.DescriptionField.names()) + ".");
            return;
        }
        List<String> can = chock.record.DescriptionField.valuesOf(field);
        values.stream().filter(value -> !can.isEmpty() && !can.contains(value) && !value.matches("\\d+")).forEach(value -> row.fault("when", field + " is never '" + value + "'", "Known: " + String.join(", ", can) + "."));
    }

    /** Every way to fill in the names in braces of a pattern. */
    private List<Map<String, String>> bindings(Sheet row, String pattern) {
        List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
        for (String name : new Place(pattern).names()) {
            if (!places.containsKey(name)) {
                row.fault("at", "'{" + name + "}' is not a known word for a place", "Known: " + places.keySet() + ".");
                return List.of();
            }
            List<Map<String, String>> next = new ArrayList<>();
            all.forEach(binding -> places.get(name).forEach(word -> {
                Map<String, String> more = new LinkedHashMap<>(binding);
                more.put(name, word);
                next.add(more);
            }));
            all = next;
        }
        return all;
    }

    private List<String> points(Sheet sheet, String key, String pattern, Map<String, String> binding) {
        List<String> unknown = new Place(pattern).names().stream().filter(name -> !places.containsKey(name)).toList();
        if (!unknown.isEmpty()) {
            sheet.fault(key, "'{" + unknown.get(0) + "}' is not a known word for a place", "Known: " + places.keySet() + ".");
            return List.of();
        }
        List<String> laid = new Place(pattern).points(binding, places);
        if (points != null && laid.stream().noneMatch(points::contains)) {
            sheet.fault(key, "'" + pattern + "' is not a place", "Write a place that a card asks at, or list it under points in rules/evidence/words.yaml.");
        }
        return laid;
    }

    private void known(Sheet sheet, String key, String place, boolean plain) {
        if (plain && points != null && !points.contains(place)) {
            sheet.fault(key, "'" + place + "' is not a place", "Write a place that a card asks at, or list it under points in rules/evidence/words.yaml.");
        }
    }

    /** One row of readings that cannot be taken assembled, with what is closed once more after them. */
    private void apart(Sheet row, Map<String, List<ReadApart>> apart) {
        Set<String> only = new LinkedHashSet<>(row.texts("only"));
        List<ReadApart> read = new ArrayList<>();
        for (String proof : row.texts("read")) {
            for (Card.Want want : wants(row, "read", proof)) {
                Card card = cards.get(proof.split(" ", 2)[0]);
                if (!only.isEmpty() && !Stream.concat(want.good().stream(), want.bad().stream()).toList().containsAll(only)) {
                    row.fault("only", "'" + proof + "' is never all of " + only, "Write answers of its card.");
                }
                read.add(new ReadApart(want.place() == null ? card.place() : want.place(), want.aspect(), only));
            }
        }
        for (String proof : row.texts("closes")) {
            if (!wants(row, "closes", proof).isEmpty()) {
                apart.computeIfAbsent(proof, p -> new ArrayList<>()).addAll(read);
            }
        }
        row.done();
    }

    /** The wants behind a check, or behind a check and the name of one of them. */
    private List<Card.Want> wants(Sheet row, String key, String proof) {
        String[] words = proof.split(" ", 2);
        Card card = cards.get(words[0]);
        List<Card.Want> wants = card == null ? List.of() : card.wants().stream().filter(w -> words.length == 1 || w.name().equals(words[1])).toList();
        if (wants.isEmpty() && points != null) {
            row.fault(key, "'" + proof + "' is not a proof", "Write the id of a check, and behind a blank the name of one of its wants.");
        }
        return wants;
    }

    /** Every proof has one kind: a check names the kind of all its wants, or of each by its name. */
    private Map<String, Kind> proofs(Sheet sheet) {
        Map<String, Kind> kinds = new HashMap<>();
        Sheet named = sheet.sheet("proofs");
        if (named == null) {
            return kinds;
        }
        for (Kind kind : Kind.values()) {
            String key = kind.name().toLowerCase(Locale.ROOT);
            for (String proof : named.texts(key)) {
                String[] words = proof.split(" ", 2);
                Card card = cards.get(words[0]);
                if (points != null && (card == null || words.length > 1 && card.wants().stream().noneMatch(w -> w.name().equals(words[1])))) {
                    named.fault(key, "'" + proof + "' is not a proof", "Write the id of a check, and behind a blank the name of one of its wants.");
                }
                if (kinds.put(proof, kind) != null) {
                    named.fault(key, "'" + proof + "' has two kinds", "Keep one of them.");
                }
            }
        }
        named.done();
        if (points != null) {
            List<String> open = kindless(cards.values(), kinds);
            if (!open.isEmpty()) {
                named.fault("", "no kind is named for " + String.join(", ", open), "Write each under one kind.");
            }
        }
        return kinds;
    }

    private static List<String> kindless(Collection<Card> cards, Map<String, Kind> kinds) {
        return cards.stream().flatMap(card -> card.wants().stream().filter(want -> !kinds.containsKey(card.id()) && !kinds.containsKey(card.id() + " " + want.name())).map(want -> card.id() + " " + want.name()))
                .sorted().collect(Collectors.toList());
    }
}
