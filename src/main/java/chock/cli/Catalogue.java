package chock.cli;

import chock.record.Gate;
import chock.report.CheckInWords;
import chock.report.Page;
import chock.rulebook.Card;
import chock.rulebook.Overdue;
import chock.rulebook.RuleBook;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;

/** The rule book for a terminal and, a page a check, for reading in a browser. */
final class Catalogue {
    private static final int LABEL = 15;

    private Catalogue() { }

    /** Every check by system. */
    static String of(RuleBook book, boolean bold) {
        Page page = new Page(bold);
        page.put(0, "Rule book " + book.version() + ": " + book.cards().size() + " checks. Local codes: " + codes(book)).put(0, book.digest());
        page.put(0, "House: ", book.house().map(house -> house.name() + ", " + house.digest()).orElse("none"));
        String system = "";
        for (Card card : book.cards().values()) {
            if (!CheckInWords.system(card).equals(system)) {
                system = CheckInWords.system(card);
                page.gap().heading(system);
            }
            page.put(2, card.id() + (card.critical() ? " (critical)" : "")).put(6, card.question()).put(6, "At " + CheckInWords.gates(card) + ".");
        }
        return page.gap().put(0, "One check in full: chock rules ID").toString();
    }

    /** One check in full. */
    static String of(CheckInWords check, boolean bold) {
        Page page = new Page(bold);
        page.heading(check.card().id() + (check.card().critical() ? " (critical: somebody gets hurt when it is wrong)" : ""));
        page.put(0, check.card().question()).gap();
        check.rows().forEach(row -> page.put(0, (row.label() + ":" + " ".repeat(LABEL)).substring(0, LABEL), row.words()));
        return page.toString();
    }

    /** The limits due to be looked up again. */
    static String overdue(RuleBook book, LocalDate day, boolean bold) {
        List<Overdue> overdue = book.overdue(day);
        Page page = new Page(bold);
        page.heading(overdue.isEmpty() ? "No limit is overdue on " + day + "." : overdue.size() + (overdue.size() == 1 ? " limit is" : " limits are") + " overdue on " + day + ":");
        overdue.forEach(o -> page.put(2, o.words() + ", looked up " + o.limit().reviewed() + ", due by " + o.due()).put(6, o.limit().source().words() + "; " + o.limit().file() + ":" + o.limit().line()));
        return page.toString();
    }

    /** The page of one check, in Markdown. */
    static String page(CheckInWords check) {
        StringBuilder page = new StringBuilder("# ").append(check.card().id()).append("\n\n");
        page.append(plain(check.card().question())).append(check.card().critical() ? " **Somebody gets hurt when it is wrong.**" : "").append("\n\n| | |\n|---|---|\n");
        String label = "";
        for (CheckInWords.Row row : check.rows()) {
            page.append("| ").append(row.label().equals(label) ? "" : row.label()).append(" | ").append(plain(row.words())).append(" |\n");
            label = row.label();
        }
        return page.append("\n[All checks](../README.md)\n").toString();
    }

    /** The page that leads to all others: by system, and by gate. */
    static String index(RuleBook book) {
        StringBuilder page = new StringBuilder("# Every check of the rule book\n\nWritten from `rules/` and `features/`; not to be edited. `chock rules ID` shows the same in the terminal.\n\n");
        page.append("A rule book that contradicts itself does not load: limits in force together that leave nothing between them, two values of one document for the same machines on one day, "
                + "a check no rule asks for, a rule without a check, a row that names a place where nothing can be written. The message names both sides.\n\n## By system\n");
        String system = "";
        for (Card card : book.cards().values()) {
            if (!CheckInWords.system(card).equals(system)) {
                system = CheckInWords.system(card);
                page.append("\n### ").append(system).append("\n| check | asks | gates |\n|---|---|---|\n");
            }
            page.append("| ").append(link(card)).append(" | ").append(plain(card.question())).append(" | ").append(CheckInWords.gates(card)).append(" |\n");
        }
        page.append("\n## By gate\n");
        for (Gate gate : Gate.values()) {
            List<Card> asked = book.cards().values().stream().filter(card -> card.gates().contains(gate)).toList();
            page.append("\n### ").append(gate.id()).append("\n").append(asked.size()).append(" checks: ").append(asked.stream().map(Catalogue::link).collect(Collectors.joining(", "))).append("\n");
        }
        return page.toString();
    }

    /** Where the page of a check lies, below the folder of the pages. */
    static String file(Card card) {
        return CheckInWords.system(card) + "/" + card.id().substring(card.id().indexOf('.') + 1) + ".md";
    }

    private static String link(Card card) {
        return "[" + card.id() + "](" + file(card) + ")";
    }

    private static String plain(String words) {
        return words.replace("|", "\\|").replace("<", "&lt;").replace("*", "\\*");
    }

    private static String codes(RuleBook book) {
        return book.codes().isEmpty() ? "none" : book.codes().values().stream().map(c -> c.name() + " (" + c.code() + ")").collect(Collectors.joining(", "));
    }
}
