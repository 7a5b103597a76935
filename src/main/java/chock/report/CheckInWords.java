package chock.report;

import chock.record.Deed;
import chock.record.Gate;
import chock.record.Vocabulary.Form;
import chock.rulebook.Assembly;
import chock.rulebook.Card;
import chock.rulebook.Dangers;
import chock.rulebook.Holds;
import chock.rulebook.Limit;
import chock.rulebook.LocalCode;
import chock.rulebook.Place;
import chock.rulebook.RuleBook;
import chock.rulebook.Source;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.stream.Collectors;

/**
 * One check in full, in words: what the terminal and the pages show alike.
 *
 * @param card the check
 * @param rows what there is to say, in order
 */
public record CheckInWords(Card card, List<Row> rows) {
    private static final int PLACES_SHOWN = 4;

    /** One thing to say of it, under its label. */
    public record Row(String label, String words) { }

    /** @param scenarios names of the scenarios that show what it means, by file */
    public static CheckInWords of(Card card, RuleBook book, SortedMap<String, List<String>> scenarios) {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Asked of", card.applies() + ", at " + gates(card)));
        rows.add(new Row("Places", places(card.place(), book)));
        card.wants().forEach(want -> rows.add(new Row("Evidence", evidence(want) + (latestDecides(card, want, book) ? "; the latest look decides" : ""))));
        if (card.wants().isEmpty()) {
            rows.add(new Row("Evidence", "the record itself"));
        }
        limits(card, book).forEach(limit -> rows.add(new Row("Limit", limit(limit, card))));
        searched(card, book).forEach(words -> rows.add(new Row("Limit", words)));
        if (card.together() != null) {
            rows.add(new Row("Together", together(card)));
        }
        rows.add(new Row("Holds", card.holds().words()));
        rows.add(new Row("Undone by", undone(card, book)));
        if (!card.survives().isEmpty()) {
            rows.add(new Row("Survives", String.join("; ", rows(card.survives()))));
        }
        if (!card.clearedBy().isEmpty()) {
            rows.add(new Row("Cured by", String.join("; ", rows(card.clearedBy()))));
        }
        dangers(card, book, rows);
        rows.add(new Row("To clear", card.remedy()));
        if (card.caution() != null) {
            rows.add(new Row("Caution", card.caution()));
        }
        if (!card.formerly().isEmpty()) {
            rows.add(new Row("Formerly", String.join(", ", card.formerly())));
        }
        rows.add(new Row("Written", card.file()));
        scenarios.forEach((file, names) -> rows.add(new Row("Shown in", file + ": " + String.join("; ", names))));
        return new CheckInWords(card, List.copyOf(rows));
    }

    private static void dangers(Card card, RuleBook book, List<Row> rows) {
        Dangers dangers = book.library().dangers();
        List<String> named = book.dangersOf(card);
        if (!named.isEmpty()) {
            rows.add(new Row("Danger", String.join("; ", dangers.words(named))));
        }
        book.closings(card).forEach(closing -> rows.add(new Row("Also closes", closing(closing, dangers))));
        rows.add(new Row("Fault ends by", switch (card.endsBy()) {
            case WORK -> "work that mends it, another person's correction, or work 'examined' whose cause is no defect (note-is: remark) and a good result by another person";
            case LOOK -> "a later look that finds it good";
            case DOCUMENT -> "a later good answer with a note that names its document";
            case TIME -> "the end of the day, or work that mends it";
        }));
    }

    /** {@code on-show, for weeps or will-not-close, unless the tank is proven empty}. */
    private static String closing(Card.AlsoCloses closing, Dangers dangers) {
        String gates = closing.gates().stream().sorted().map(Gate::id).collect(Collectors.joining(", "));
        String at = closing.at().isEmpty() ? "" : ", at " + String.join(" or ", closing.at());
        String only = closing.only().isEmpty() ? "" : ", for " + String.join(" or ", closing.only());
        String over = closing.over() == null ? "" : ", above " + closing.over();
        String below = closing.below() ? ", below the limit" : "";
        return gates + at + only + over + below + (closing.unless() == null ? "" : ", unless " + dangers.exceptions().get(closing.unless()).says());
    }

    /** The part of its id before the dot. */
    public String system() {
        return system(card);
    }

    public static String system(Card card) {
        return card.id().substring(0, card.id().indexOf('.'));
    }

    public static String gates(Card card) {
        return card.gates().stream().sorted().map(Gate::id).collect(Collectors.joining(", "));
    }

    private static String places(Place place, RuleBook book) {
        List<String> points = place.points(Map.of(), book.library().places());
        String shown = points.stream().limit(PLACES_SHOWN).collect(Collectors.joining(", "));
        int more = points.size() - PLACES_SHOWN;
        return more > 0 ? shown + " and " + more + " more like these" : shown;
    }

    private static String evidence(Card.Want want) {
        StringBuilder words = new StringBuilder(switch (want.weakest()) {
            case MEASURED -> want.aspect() + ", measured with an instrument";
            case TRIED -> want.aspect() + ", tried or measured";
            case SEEN -> want.aspect() + ", seen, tried or measured";
            case TOLD -> want.aspect() + ", told by somebody or better";
            case ASSUMED -> want.aspect() + ", even assumed";
            default -> "the work itself: " + want.aspect() + ", after whatever undid it";
        });
        if (want.weakest() != Deed.DONE) {
            words.append(want.form() == Form.AMOUNT ? " in " + want.unit().symbol() : want.form() == Form.DAYS ? ": a day, month or year"
                    : want.form() == Form.CODE ? ": as marked" : ": good is " + words(want.good()) + "; bad is " + words(want.bad()));
        }
        if (want.covers()) {
            words.append(", up to the time it is written: work inside it voids it");
        }
        if (want.place() != null) {
            words.append("; at ").append(want.place());
        }
        if (want.holds() != null) {
            words.append("; holds ").append(want.holds().words());
        }
        return words.toString();
    }

    /** True where looking again replaces what was found before, good or bad. */
    public static boolean latestDecides(Card card, Card.Want want, RuleBook book) {
        Place place = want.place() == null ? card.place() : want.place();
        Holds holds = want.holds() == null ? card.holds() : want.holds();
        return holds.ofTheDay() && place.points(Map.of(), book.library().places()).stream().allMatch(book.library().ofTheDay()::has);
    }

    private static String together(Card card) {
        List<String> wants = card.wants().stream().map(Card.Want::name).filter(card.together().wants()::contains).toList();
        return wants.size() == 1 ? wants.get(0) + " of every place, taken " + card.together().words()
                : String.join(", ", wants) + ", taken " + card.together().words() + " and with no work between";
    }

    private static String words(Set<String> answers) {
        return answers.stream().sorted().collect(Collectors.joining(", "));
    }

    /** Limits of the check's own name first, then those of a variant: a limit that continues its name or the check's, and is no other check's. */
    public static List<Limit> limits(Card card, RuleBook book) {
        if (card.limit() == null) {
            return List.of();
        }
        Set<String> others = book.cards().values().stream().filter(c -> c != card && c.limit() != null).map(Card::limit).collect(Collectors.toSet());
        List<Limit> all = new ArrayList<>(book.limitsNamed(card.limit()));
        book.limits().stream().map(Limit::id).distinct().filter(id -> !id.equals(card.limit()) && !others.contains(id))
                .filter(id -> id.startsWith(card.limit() + "-") || id.startsWith(card.id() + "-"))
                .forEach(id -> all.addAll(book.limitsNamed(id)));
        return all;
    }

    private static String limit(Limit limit, Card card) {
        StringBuilder words = new StringBuilder(limit.territory() == null ? "" : limit.territory() + ": ");
        words.append(limit.source().kind() == Source.Kind.HOUSE ? "this house: " : "");
        words.append(limit.id().equals(card.limit()) ? "" : limit.id() + ": ");
        words.append(number(limit)).append(" (").append(limit.source().words()).append(")").append(limit.isAlways() ? "" : ", from " + limit.from());
        if (limit.registeredFrom() != null) {
            words.append(", for machines first registered from ").append(limit.registeredFrom());
        }
        if (limit.registeredBefore() != null) {
            words.append(limit.registeredFrom() == null ? ", for machines first registered before " : " and before ").append(limit.registeredBefore());
        }
        if (limit.fasterThan() != null) {
            words.append(", for machines faster than ").append(limit.fasterThan());
        }
        if (limit.largerThan() != null) {
            words.append(", for engines larger than ").append(limit.largerThan());
        }
        words.append(", looked up ").append(limit.reviewed());
        if (limit.territory() == null && limit.maker() == Limit.Maker.REPLACES) {
            words.append("; a maker's figure is asked for and replaces it where it may");
        }
        if (limit.territory() == null && limit.maker() == Limit.Maker.NEEDED) {
            words.append("; nothing passes without the maker's figure");
        }
        return words.append(limit.territory() == null && limit.local() ? "; a local code must have been searched for it as well" : "").toString();
    }

    private static String number(Limit limit) {
        return switch (limit.sense()) {
            case WITHIN -> "within " + limit.value() + " of the maker's figure";
            case MAKER_ONLY -> "the maker's figure";
            default -> limit.bounds().words();
        };
    }

    private static List<String> searched(Card card, RuleBook book) {
        return card.limit() == null ? List.of() : book.codes().values().stream().filter(code -> code.setsNone().containsKey(card.limit()))
                .map(code -> none(code, card.limit())).toList();
    }

    private static String none(LocalCode code, String limit) {
        return code.code() + ": sets no number (" + code.setsNone().get(limit).words() + ")";
    }

    private static String undone(Card card, RuleBook book) {
        Assembly assembly = book.library().assembly();
        Set<Assembly.Kind> kinds = card.wants().stream().map(want -> assembly.kind(card.id(), want.name())).filter(Objects::nonNull).collect(Collectors.toSet());
        Set<String> taking = assembly.takes().entrySet().stream().filter(work -> work.getValue().stream().anyMatch(kinds::contains)).map(Map.Entry::getKey).collect(Collectors.toSet());
        String first = (kinds.isEmpty() ? "work that disturbs" : words(taking).replace(", ", " or ")) + " on the part or what carries it, or work that cannot be done without it";
        return rows(card.undoneBy()).stream().reduce(first, (all, next) -> all + "; " + next);
    }

    private static List<String> rows(List<Card.Undo> rows) {
        return rows.stream().map(undo -> (undo.works().isEmpty() ? "disturbing work" : words(undo.works()).replace(", ", " or ")) + " at " + undo.place() + (undo.only().isEmpty() ? "" : ", for " + String.join(" or ", undo.only()))).toList();
    }
}
