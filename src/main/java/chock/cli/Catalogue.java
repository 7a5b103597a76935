package chock.cli;

import chock.record.Deed;
import chock.record.Gate;
import chock.record.Vocabulary.Form;
import chock.report.Page;
import chock.rulebook.Card;
import chock.rulebook.Limit;
import chock.rulebook.LocalCode;
import chock.rulebook.Place;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** The rule book in words: what it asks, of what, on what evidence, and where its numbers come from. */
final class Catalogue {
    private static final int PLACES_SHOWN = 4;

    private Catalogue() { }

    /** Every check by system. */
    static String of(RuleBook book, boolean bold) {
        Page page = new Page(bold);
        page.put(0, "Rule book " + book.version() + ": " + book.cards().size() + " checks. Local codes: " + codes(book)).put(0, book.digest());
        String system = "";
        for (Card card : book.cards().values()) {
            if (!system(card).equals(system)) {
                system = system(card);
                page.gap().heading(system);
            }
            page.put(2, card.id() + (card.critical() ? " (critical)" : "")).put(6, card.question()).put(6, "At " + gates(card) + ".");
        }
        return page.gap().put(0, "One check in full: chock rules ID").toString();
    }

    /** One check in full. */
    static String of(Card card, RuleBook book, boolean bold) {
        Page page = new Page(bold);
        page.heading(card.id() + (card.critical() ? " (critical: somebody gets hurt when it is wrong)" : ""));
        page.put(0, card.question()).gap();
        page.put(0, "Asked of:  ", card.applies() + ", at " + gates(card));
        page.put(0, "Places:    ", places(card.place(), book));
        card.wants().forEach(want -> page.put(0, "Evidence:  ", evidence(want)));
        if (card.wants().isEmpty()) {
            page.put(0, "Evidence:  ", "the record itself");
        }
        for (Limit limit : limits(card, book)) {
            page.put(0, "Limit:     ", limit(limit, card));
        }
        searched(card, book).forEach(words -> page.put(0, "Limit:     ", words));
        page.put(0, "Holds:     ", card.holds().words());
        page.put(0, "Undone by: ", undone(card));
        if (!card.clearedBy().isEmpty()) {
            page.put(0, "A fault is cleared by: ", cleared(card));
        }
        page.put(0, "To clear:  ", card.remedy());
        if (card.caution() != null) {
            page.put(0, "Caution:   ", card.caution());
        }
        if (!card.formerly().isEmpty()) {
            page.put(0, "Formerly:  ", String.join(", ", card.formerly()));
        }
        return page.toString();
    }

    private static String system(Card card) {
        return card.id().substring(0, card.id().indexOf('.'));
    }

    private static String codes(RuleBook book) {
        return book.codes().isEmpty() ? "none" : book.codes().values().stream().map(c -> c.name() + " (" + c.code() + ")").collect(Collectors.joining(", "));
    }

    private static String gates(Card card) {
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
        if (want.place() != null) {
            words.append("; at ").append(want.place());
        }
        if (want.holds() != null) {
            words.append("; holds ").append(want.holds().words());
        }
        return words.toString();
    }

    private static String words(Set<String> answers) {
        return answers.stream().sorted().collect(Collectors.joining(", "));
    }

    /** Limits of the check's own name first, then those of a variant: a limit that continues its name or the check's, and is no other check's. */
    static List<Limit> limits(Card card, RuleBook book) {
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
        words.append(limit.id().equals(card.limit()) ? "" : limit.id() + ": ");
        words.append(number(limit)).append(" (").append(limit.source().words()).append("), from ").append(limit.from());
        if (limit.registeredFrom() != null) {
            words.append(", for machines first registered from ").append(limit.registeredFrom());
        }
        if (limit.registeredBefore() != null) {
            words.append(limit.registeredFrom() == null ? ", for machines first registered before " : " and before ").append(limit.registeredBefore());
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

    private static String undone(Card card) {
        String first = "work that disturbs the part or what carries it";
        return card.undoneBy().stream().map(undo -> (undo.works().isEmpty() ? "disturbing work" : words(undo.works()).replace(", ", " or ")) + " at " + undo.place())
                .reduce(first, (all, next) -> all + "; " + next);
    }

    private static String cleared(Card card) {
        return String.join("; ", card.clearedBy().stream().map(row -> words(row.works()).replace(", ", " or ") + " at " + row.place()).toList());
    }
}
