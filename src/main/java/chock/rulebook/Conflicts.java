package chock.rulebook;

import chock.quantity.Bounds;
import chock.record.Entry;
import chock.record.Fault;
import chock.record.Spelling;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeSet;

/** What cannot stand side by side in one rule book. Every fault names both sides with file and line. */
final class Conflicts {
    private static final String OPEN = "FILL IN";
    private static final String RULE = "rule \"";

    private final List<Fault> faults;

    Conflicts(List<Fault> faults) {
        this.faults = faults;
    }

    /** What a scaffold left open, line by line; empty when nothing is. */
    static List<Fault> leftOpen(SortedMap<String, String> files) {
        List<Fault> open = new ArrayList<>();
        files.forEach((file, text) -> {
            if (text.contains(OPEN)) {
                List<String> lines = text.lines().toList();
                for (int i = 0; i < lines.size(); i++) {
                    int at = lines.get(i).indexOf(OPEN);
                    if (at >= 0) {
                        open.add(new Fault(file, i + 1, "", "still to be filled in: " + lines.get(i).strip(), ""));
                    }
                }
            }
        });
        return open;
    }

    static String at(Limit limit) {
        return limit.file() + ":" + limit.line();
    }

    static String words(Limit limit) {
        return switch (limit.sense()) {
            case WITHIN -> "within " + limit.value() + " of the maker's figure";
            case MAKER_ONLY -> "the maker's figure";
            default -> limit.bounds().words();
        };
    }

    /** True when limits of this sense are numbers by themselves, and not on top of a maker's figure. */
    static boolean stands(Limit limit) {
        return limit.sense() != Limit.Sense.WITHIN && limit.sense() != Limit.Sense.MAKER_ONLY;
    }

    /** Limits in force together that leave nothing a machine could show: of the rule book, of codes for one territory, of a house. */
    void limits(List<Limit> general, Collection<LocalCode> codes, List<Limit> house) {
        for (Limit limit : general) {
            if (stands(limit) && limit.upper() != null) {
                alone(limit);
            }
        }
        List<Limit> others = new ArrayList<>(house);
        codes.forEach(code -> others.addAll(code.limits()));
        for (Limit other : others) {
            if (stands(other) && other.upper() != null) {
                alone(other);
            }
            general.stream().filter(l -> l.id().equals(other.id()) && together(l, other, general)).forEach(l -> pair(l, other));
        }
        List<LocalCode> all = List.copyOf(codes);
        for (int i = 0; i < all.size(); i++) {
            LocalCode code = all.get(i);
            twins(code);
            for (LocalCode wider : all) {
                if (wider != code && wider.covers(code.code())) {
                    code.limits().forEach(l -> wider.limits().stream().filter(w -> w.id().equals(l.id()) && sameMachine(w, l)).forEach(w -> pair(w, l)));
                }
            }
            for (Limit own : house) {
                code.limits().stream().filter(l -> l.id().equals(own.id())).forEach(l -> pair(l, own));
            }
        }
    }

    private void alone(Limit limit) {
        if (limit.value().unit().dimension() == limit.upper().unit().dimension() && limit.value().compareTo(limit.upper()) > 0) {
            faults.add(new Fault(limit.file(), limit.line(), limit.id(), "nothing lies between " + limit.value() + " and " + limit.upper(), "Write the lower number first."));
        }
    }

    // A later limit of the rule book takes the place of an earlier one, so an early one never meets what begins after it ended.
    private static boolean together(Limit general, Limit other, List<Limit> all) {
        LocalDate ended = all.stream().filter(l -> l.id().equals(general.id()) && l.from().isAfter(general.from())).map(Limit::from).min(LocalDate::compareTo).orElse(LocalDate.MAX);
        return other.from().isBefore(ended);
    }

    private void pair(Limit first, Limit second) {
        if (!stands(first) || !stands(second)) {
            return;
        }
        if (first.value().unit().dimension() != second.value().unit().dimension()) {
            faults.add(new Fault(second.file(), second.line(), second.id(), second.value() + " is of another kind than " + first.value() + " (" + at(first) + ")",
                    "Give it in a unit of " + first.value().unit().dimension().words() + "."));
            return;
        }
        Bounds both = first.bounds().and(second.bounds());
        int gap = both.low() == null || both.high() == null ? -1 : both.low().compareTo(both.high());
        if (gap > 0 || gap == 0 && !(both.lowPasses() && both.highPasses())) {
            faults.add(new Fault(second.file(), second.line(), second.id(), words(second) + " contradicts " + words(first) + " (" + at(first) + "): nothing can be both",
                    "Look both up again, and mend the wrong one."));
        }
    }

    // Two documents of one territory may each set a number, and then both apply; one document cannot say two things on one day.
    void twins(LocalCode code) {
        List<Limit> rows = code.limits();
        for (int i = 0; i < rows.size(); i++) {
            for (Limit later : rows.subList(i + 1, rows.size())) {
                Limit first = rows.get(i);
                if (first.id().equals(later.id()) && first.from().equals(later.from()) && sameDocument(first, later) && sameMachine(first, later)) {
                    faults.add(new Fault(later.file(), later.line(), later.id(), words(later) + " and " + words(first) + " (" + at(first) + ") from one document apply to the same machines from " + later.firstDay(),
                            "Give the later one its own from date, or keep their dates of registration apart."));
                }
            }
        }
    }

    static boolean sameDocument(Limit a, Limit b) {
        return a.source().kind() == b.source().kind() && Objects.equals(a.source().document(), b.source().document());
    }

    private static boolean sameMachine(Limit a, Limit b) {
        return before(a.registeredFrom(), b.registeredBefore()) && before(b.registeredFrom(), a.registeredBefore());
    }

    private static boolean before(LocalDate from, LocalDate before) {
        return from == null || before == null || from.isBefore(before);
    }

    /**
     * Cards and rules that do not belong together.
     *
     * @param files DRL by the name it is shown under
     * @param cards cards these rules are about
     * @param others cards they may look at, and ask nothing for
     * @param limits ids of limits they may name
     */
    void rules(SortedMap<String, String> files, Map<String, Card> cards, Map<String, Card> others, Set<String> limits, Map<String, List<String>> places) {
        Set<String> named = new HashSet<>();
        files.forEach((file, text) -> {
            int number = 0;
            for (String line : (Iterable<String>) text.lines()::iterator) {
                number++;
                if (line.startsWith(RULE)) {
                    String name = quoted(line, 0);
                    named.add(name);
                    if (!name.startsWith("evidence.") && !name.startsWith("outcome.") && !belongs(name, cards)) {
                        faults.add(new Fault(file, number, "", "the rule \"" + name + "\" belongs to no check", ("Name it after the check's id, with a dash and a word where there are several; or write the card. " + near(name, cards)).strip()));
                    }
                }
                about(file, number, line, "new Required(\"", cards, others, limits);
                place(file, number, line, cards, places);
                about(file, number, line, "check == \"", cards, others, limits);
            }
        });
    }

    private void about(String file, int number, String line, String words, Map<String, Card> cards, Map<String, Card> others, Set<String> limits) {
        for (int at = line.indexOf(words); at >= 0; at = line.indexOf(words, at + 1)) {
            String id = quoted(line, at);
            // The limit of a variant stands last, and unlike a place its name has a dot. One put together from parts ends in a dash.
            String last = words.startsWith("new") ? quoted(line, line.lastIndexOf(", \"")) : "";
            if (last.contains(".") && !last.endsWith("-") && !last.equals(id) && !limits.contains(last)) {
                faults.add(new Fault(file, number, "", "the rule asks for the limit '" + last + "', which no limits.yaml has", "Add the limit, or mend the id."));
            }
            Card other = others.get(id);
            if (other != null && words.startsWith("new")) {
                faults.add(new Fault(file, number, "", "the rule asks for '" + id + "', a check of the rule book (" + other.file() + ":" + other.line() + ")", "A rule of a house asks for checks of the house only."));
            } else if (other == null && !cards.containsKey(id)) {
                faults.add(new Fault(file, number, "", "the rule speaks of '" + id + "', which has no card", ("Write the card in checks.yaml, or mend the id. " + near(id, cards)).strip()));
            }
        }
    }

    /** A place that a rule spells out has to be one of the card: otherwise the program fails on the first machine that is asked. */
    private void place(String file, int number, String line, Map<String, Card> cards, Map<String, List<String>> places) {
        String words = "new Required(\"";
        for (int at = line.indexOf(words); at >= 0; at = line.indexOf(words, at + 1)) {
            Card card = cards.get(quoted(line, at));
            int comma = line.indexOf("\", \"", at);
            if (card == null || comma < 0 || comma != line.indexOf('"', at + words.length())) {
                continue;
            }
            String place = quoted(line, comma + 1);
            int end = comma + "\", \"".length() + place.length() + 1;
            boolean whole = end < line.length() && (line.charAt(end) == ')' || line.charAt(end) == ',');
            if (whole && card.place().match(place, places).isEmpty()) {
                List<String> near = Spelling.nearest(place, card.place().points(Map.of(), places));
                faults.add(new Fault(file, number, "", "the rule asks for " + card.id() + " at '" + place + "', and its card at " + card.place() + " (" + card.file() + ":" + card.line() + ")",
                        near.isEmpty() ? "Write a place of the card." : "Did you mean " + near.get(0) + "?"));
            }
        }
    }

    /** A reading that can never be compared with the limit of its check. */
    void units(Collection<Card> cards, Collection<Limit> limits) {
        for (Card card : cards) {
            for (Card.Want want : card.wants()) {
                if (!want.judged() || want.unit() == null) {
                    continue;
                }
                limits.stream().filter(limit -> limit.id().equals(card.limit()) && limit.sense() != Limit.Sense.WITHIN && limit.sense() != Limit.Sense.MAKER_ONLY)
                        .filter(limit -> limit.value().unit().dimension() != want.unit().dimension()).findFirst()
                        .ifPresent(limit -> faults.add(new Fault(card.file(), card.line(), "", card.id() + ": " + want.name() + " is wanted in " + want.unit() + ", and the limit "
                                + limit.id() + " is " + limit.value() + " (" + at(limit) + ")", "Write unit: " + limit.value().unit() + ", or name the limit that is meant.")));
            }
        }
    }

    private static boolean belongs(String rule, Map<String, Card> cards) {
        for (int end = rule.length(); end > 0; end = rule.lastIndexOf('-', end - 1)) {
            if (cards.containsKey(rule.substring(0, end))) {
                return true;
            }
        }
        return false;
    }

    private static String quoted(String line, int from) {
        int begin = line.indexOf('"', from) + 1;
        int end = line.indexOf('"', begin);
        return end < 0 ? line.substring(begin) : line.substring(begin, end);
    }

    private static String near(String id, Map<String, Card> cards) {
        String system = id.replaceFirst("\\..*", "") + ".";
        return cards.values().stream().filter(c -> c.id().startsWith(system)).findFirst().map(c -> "The cards of this system stand in " + c.file() + ".").orElse("").strip();
    }

    /** Rows of cards that name places where nothing can be written, or that can never change anything. */
    void undoRows(Collection<Card> cards, Set<String> known, Map<String, List<String>> places, String advice) {
        for (Card card : cards) {
            for (Card.Undo row : card.undoneBy()) {
                if (row.place().points(Map.of(), places).stream().noneMatch(known::contains)) {
                    faults.add(new Fault(card.file(), card.line(), card.id(), "undone-by names " + row.place() + ", and no check asks at such a place", advice));
                }
            }
            for (Card.Undo row : card.survives()) {
                if (row.place().points(Map.of(), places).stream().noneMatch(point -> touches(point, card, places))) {
                    faults.add(new Fault(card.file(), card.line(), card.id(), "survives names " + row.place() + ", where no work undoes this check anyway", "Name a place on or above " + card.place() + " or below a place under undone-by, or leave the row out."));
                }
            }
        }
    }

    private static boolean touches(String point, Card card, Map<String, List<String>> places) {
        List<Place> looked = new ArrayList<>(List.of(card.place()));
        card.wants().stream().filter(w -> w.place() != null).forEach(w -> looked.add(w.place()));
        card.undoneBy().forEach(row -> looked.add(row.place()));
        return looked.stream().flatMap(p -> p.points(Map.of(), places).stream()).anyMatch(p -> Entry.covers(point, p) || Entry.covers(p, point));
    }

    /** Places where something can be written: where cards ask, what carries those, and what is listed besides. */
    static Set<String> known(Collection<Card> cards, Collection<String> more, Map<String, List<String>> places) {
        Set<String> known = new TreeSet<>();
        for (Card card : cards) {
            List<Place> asked = new ArrayList<>(List.of(card.place()));
            card.wants().stream().filter(w -> w.place() != null).forEach(w -> asked.add(w.place()));
            asked.forEach(place -> place.points(Map.of(), places).forEach(point -> Words.addWithParts(known, point)));
        }
        more.forEach(pattern -> new Place(pattern).points(Map.of(), places).forEach(point -> Words.addWithParts(known, point)));
        return known;
    }
}
