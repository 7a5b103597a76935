package chock.rulebook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/** How many numbers of the rule book rest on a document that was read, on one known from memory, and on common practice. */
final class SourceCounts {
    private int read;
    private int copied;
    private int remembered;
    private int onThePart;
    private int practice;

    private SourceCounts() { }

    /** One row for each system and each code, limits and, of codes, what they were searched for and set no number for; the shares below. */
    static String of(RuleBook book) {
        Map<String, SourceCounts> rows = new LinkedHashMap<>();
        Map<String, SourceCounts> systems = new TreeMap<>();
        SourceCounts general = new SourceCounts();
        SourceCounts codes = new SourceCounts();
        book.limits().stream().filter(limit -> limit.territory() == null).forEach(limit -> {
            systems.computeIfAbsent(limit.id().replaceFirst("\\..*", ""), id -> new SourceCounts()).count(limit.source());
            general.count(limit.source());
        });
        rows.putAll(systems);
        rows.put("**all of general use**", general);
        new TreeMap<>(book.codes()).forEach((id, code) -> {
            SourceCounts row = rows.computeIfAbsent("code of " + id, key -> new SourceCounts());
            Stream.concat(code.limits().stream().map(Limit::source), code.setsNone().values().stream()).forEach(source -> {
                row.count(source);
                codes.count(source);
            });
        });
        rows.put("**all of local codes**", codes);
        StringBuilder table = new StringBuilder("| | read in the official text | read in a copy | from memory | as it stands on the part | common practice | all |\n|---|---|---|---|---|---|---|\n");
        rows.forEach((name, row) -> table.append("| ").append(name).append(" | ").append(row.read).append(" | ").append(row.copied).append(" | ").append(row.remembered).append(" | ")
                .append(row.onThePart).append(" | ").append(row.practice).append(" | ").append(row.all()).append(" |\n"));
        int named = general.named() + codes.named();
        int all = general.all() + codes.all();
        int seen = general.read + general.copied + general.onThePart + codes.read + codes.copied + codes.onThePart;
        return table.append("\nA document is named for ").append(named).append(" of ").append(all).append(" (").append(100 * named / all).append(" %; wanted: 67 %). Of those ").append(seen)
                .append(" were read, in the official text, in a copy or on the part (").append(100 * seen / named).append(" %; wanted: 80 %), and ").append(general.remembered + codes.remembered).append(" are from memory (wanted: none that can be read).\n\n")
                .append("Common practice, no document named: ").append(ids(book, Source.Kind.PRACTICE, null)).append(".\n\n")
                .append("From memory, to be looked up: ").append(ids(book, null, Source.Known.MEMORY)).append(".\n").toString();
    }

    /** The ids of the limits of this kind, or known in this way, of codes with the code behind them. */
    private static String ids(RuleBook book, Source.Kind kind, Source.Known known) {
        Set<String> ids = new TreeSet<>();
        book.limits().stream().filter(limit -> limit.territory() == null && is(limit.source(), kind, known)).forEach(limit -> ids.add("`" + limit.id() + "`"));
        book.codes().values().forEach(code -> {
            code.limits().stream().filter(limit -> is(limit.source(), kind, known)).forEach(limit -> ids.add("`" + limit.id() + "` (" + code.code() + ")"));
            code.setsNone().forEach((id, source) -> {
                if (is(source, kind, known)) {
                    ids.add("no `" + id + "` (" + code.code() + ")");
                }
            });
        });
        return String.join(", ", ids);
    }

    private static boolean is(Source source, Source.Kind kind, Source.Known known) {
        return kind != null ? source.kind() == kind : source.kind() != Source.Kind.PRACTICE && source.kind() != Source.Kind.MAKER && source.known() == known;
    }

    private void count(Source source) {
        if (source.kind() == Source.Kind.PRACTICE) {
            practice++;
        } else if (source.kind() == Source.Kind.MAKER) {
            onThePart++;
        } else {
            switch (source.known()) {
                case READ -> read++;
                case READ_COPY -> copied++;
                case MEMORY -> remembered++;
                default -> throw new IllegalStateException(source + " is of no kind that is counted");
            }
        }
    }

    private int named() {
        return read + copied + remembered + onThePart;
    }

    private int all() {
        return named() + practice;
    }
}
