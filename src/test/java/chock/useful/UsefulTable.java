package chock.useful;

import chock.useful.UsefulNumbers.Cured;
import chock.useful.UsefulNumbers.Tried;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;

/** The numbers as a page shows them. */
final class UsefulTable {
    private final List<String> lines = new ArrayList<>(List.of("| what is counted | came out | wanted |", "|---|---|---|"));

    /** The whole table, with a line feed at its end. */
    static String of(List<Tried> honest, Map<HarmlessChange, List<Tried>> harmless, Map<Comeback, Orders.Outcome> comebacks, List<Cured> faults, int net, int looks) {
        UsefulTable table = new UsefulTable();
        table.row("complete honest records, all gates they seek released", fine(honest) + " of " + honest.size(), "all");
        List<Tried> changes = harmless.values().stream().flatMap(List::stream).toList();
        table.row("harmless changes that leave such a record released", fine(changes) + " of " + changes.size(), "99 in 100");
        harmless.forEach((change, tried) -> table.row("– " + change.words(), fine(tried) + " of " + tried.size(), ""));
        comebacks.forEach((work, outcome) -> table.row("entries to release it again: " + work.words(), outcome.entries() + (outcome.entries() == outcome.written() ? "" : ", with " + outcome.written() + " answers" + (outcome.written() == outcome.least() ? "" : ", of which " + outcome.least() + " are enough")), "at most " + work.most()));
        table.row("bad results, one at a time in a complete record, that close a gate", faults.stream().filter(f -> !f.closed().isEmpty()).count() + " of " + faults.size(), "all");
        List<Orders.Outcome> orders = faults.stream().flatMap(f -> f.orders().values().stream()).toList();
        table.row("orders of work for these that end released", orders.stream().filter(Orders.Outcome::released).count() + " of " + orders.size(), "all");
        table.row("– that ask for at most 1.3 times the least", orders.stream().filter(o -> o.released() && o.within(UsefulNumbers.TIMES)).count() + " of " + orders.size(), "all");
        table.row("– answers and work they ask for, together", sum(orders, Orders.Outcome::written) + ", of which " + sum(orders, Orders.Outcome::least) + " are enough", "");
        table.row("answers and work in the complete record of a two-stroke single of 1972, road test", String.valueOf(net), "at most " + UsefulNumbers.MOST_ENTRIES);
        table.row("– as looks and pieces of work", String.valueOf(looks), "150 is the aim");
        return String.join("\n", table.lines) + "\n";
    }

    private void row(String what, String came, String wanted) {
        lines.add("| " + what + " | " + came + " | " + wanted + " |");
    }

    private static long fine(List<Tried> tried) {
        return tried.stream().filter(Tried::fine).count();
    }

    private static int sum(List<Orders.Outcome> orders, ToIntFunction<Orders.Outcome> of) {
        return orders.stream().mapToInt(of).sum();
    }
}
