package chock.cli;

import chock.rehearse.Boundaries;
import chock.rehearse.Coverage;
import chock.rehearse.Rehearsed;
import chock.rehearse.Shake;
import chock.report.Page;
import java.util.ArrayList;
import java.util.List;

/** What came of a rehearsal, in the words of whoever wrote the scenarios. */
final class RehearsalText {
    private final boolean bold;

    RehearsalText(boolean bold) {
        this.bold = bold;
    }

    /** What could not be made sense of: a message each, with the line to write instead. */
    List<String> unreadable(Rehearsed rehearsed) {
        List<String> messages = new ArrayList<>();
        for (Rehearsed.Shown shown : rehearsed.shown()) {
            for (Rehearsed.Slip slip : shown.slips()) {
                if (slip.kind() == Rehearsed.Kind.OTHERWISE) {
                    continue;
                }
                String message = slip.file() + ":" + slip.line() + ": " + slip.step() + "\n  " + slip.found() + (slip.found().endsWith("?") ? "" : ".");
                if (slip.kind() == Rehearsed.Kind.UNKNOWN_STEP) {
                    message += slip.instead().isEmpty() ? " The steps stand in docs/steps.md." : " Perhaps:\n    " + String.join("\n    ", slip.instead());
                }
                messages.add(message);
            }
        }
        return messages.stream().distinct().toList();
    }

    String of(Rehearsed rehearsed) {
        Page page = new Page(bold);
        for (Rehearsed.Shown shown : rehearsed.shown()) {
            if (shown.holds()) {
                continue;
            }
            page.heading("DOES NOT HOLD: " + shown.name()).put(2, shown.file() + ":" + shown.line());
            if (shown.slips().isEmpty()) {
                page.put(2, "It expects nothing. Add what has to be found, such as: Then brakes.pad-thickness is met");
            }
            for (Rehearsed.Slip slip : shown.slips()) {
                page.put(2, "line " + slip.line() + ": ", slip.step());
                if (slip.kind() == Rehearsed.Kind.OTHERWISE) {
                    page.put(4, "found: ", slip.found());
                } else {
                    page.put(4, "cannot be tried: ", slip.found());
                }
            }
            page.gap();
        }
        long failed = rehearsed.shown().stream().filter(s -> !s.holds()).count();
        int ran = rehearsed.shown().size();
        if (ran == 0) {
            return page.put(0, "No scenario ran: the files have none. A rehearsal of nothing shows nothing.").toString();
        }
        return page.put(0, counted(ran, "scenario") + " in " + counted(rehearsed.files(), "file") + ": " + (failed == 0 ? "all hold." : failed + (failed == 1 ? " does not hold." : " do not hold."))).toString();
    }

    private static String counted(int many, String of) {
        return many + " " + of + (many == 1 ? "" : "s");
    }

    String of(Coverage coverage) {
        int wide = coverage.rows().stream().mapToInt(r -> r.check().length()).max().orElse(0);
        StringBuilder table = new StringBuilder(" ".repeat(wide));
        List<String> heads = List.of("met", "fault", "doubt", "stale", "missing", "not asked");
        heads.forEach(head -> table.append("  ").append(head));
        table.append('\n');
        long holes = 0;
        for (Coverage.Row row : coverage.rows()) {
            StringBuilder line = new StringBuilder(row.check()).append(" ".repeat(wide - row.check().length()));
            for (int i = 0; i < heads.size(); i++) {
                String state = Coverage.STATES.get(i);
                int shown = row.where().get(state).size();
                String cell = shown > 0 ? String.valueOf(shown) : row.may().get(state) ? "none" : "-";
                line.append("  ").append(" ".repeat(Math.max(0, heads.get(i).length() - cell.length()))).append(cell);
            }
            holes += row.holes().size();
            table.append(line).append('\n');
        }
        Page page = new Page(bold);
        page.put(0, "Scenarios that show each state. none: a state that can come about and that no scenario shows. -: a state the card leaves no room for.");
        page.put(0, counted(coverage.rows().size(), "check") + ", " + (holes == 0 ? "no state left out." : holes + (holes == 1 ? " state" : " states") + " left out: " + missing(coverage)));
        return table + "\n" + page;
    }

    private static String missing(Coverage coverage) {
        return String.join("; ", coverage.rows().stream().filter(r -> !r.holes().isEmpty()).map(r -> r.check() + " " + String.join(", ", r.holes())).toList()) + ".";
    }

    String of(Boundaries boundaries) {
        Page page = new Page(bold);
        int tried = 0;
        for (Boundaries.Row row : boundaries.rows()) {
            page.heading(row.limit() + ", " + row.end()).put(2, row.where());
            tried += row.cases().size();
            if (row.cases().isEmpty()) {
                page.put(2, "not tried: in no scenario does one reading decide by it alone");
            }
            for (Boundaries.Case one : row.cases()) {
                page.put(2, one.holds() ? "  " : "! ", one.reading() + ": " + one.found() + (one.holds() ? "" : ", and the limit says " + one.expected()));
            }
            page.put(2, "by hand: ", row.isPinned() ? "inside " + row.inside() + ", outside " + row.outside()
                    : row.inside() == null && row.outside() == null ? "no scenario rests on it" : row.inside() == null ? "nothing inside it" : "nothing outside it; inside " + row.inside());
        }
        long untried = boundaries.rows().stream().filter(r -> r.cases().isEmpty()).count();
        long pinned = boundaries.rows().stream().filter(Boundaries.Row::isPinned).count();
        page.gap().put(0, counted(boundaries.rows().size(), "end") + " of limits: " + pinned + " with scenarios on both sides; "
                + (tried == 0 ? "no reading tried" : counted(tried, "reading") + " tried, " + (boundaries.wrong() == 0 ? "all as the limits say" : boundaries.wrong() + " not as the limits say")) + "; " + untried + " not tried.");
        return page.toString();
    }

    String of(Shake.Shaken shaken) {
        Page page = new Page(bold);
        for (Shake.Unnoticed one : shaken.unnoticed()) {
            page.heading("NOT NOTICED: " + one.subject() + ": " + one.what()).put(2, one.where()).put(2, "write: ", one.toWrite()).gap();
        }
        if (!shaken.idle().isEmpty()) {
            page.put(0, "Not left out, for only the cards of a house give them something to do: " + String.join(", ", shaken.idle()) + ". 'chock rehearse --shake --house DIR' tries them.").gap();
        }
        return page.put(0, shaken.changes() == 0 ? "No change tried." : counted(shaken.changes(), "change") + " tried, " + (shaken.unnoticed().isEmpty() ? "every one noticed by a scenario." : shaken.unnoticed().size() + " not noticed.")).toString();
    }
}
