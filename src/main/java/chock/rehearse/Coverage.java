package chock.rehearse;

import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Vocabulary.Form;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Which states of each check scenarios show.
 *
 * @param rows one for each check, by id
 */
public record Coverage(List<Row> rows) {
    /** The states in the order of the table. */
    public static final List<String> STATES = List.of("met", "fault", "doubt", "stale", "missing", Expected.Outcome.NOT_APPLICABLE);

    /** No machine is without these: a record that leaves them out is refused. */
    private static final Pattern ALWAYS = Pattern.compile("(?:(?:both ends|the frame and the engine) of )?every (?:machine|wheel|rim|tyre)(?:;.*)?|the pair of tyres of a machine|every brake, every wheel.*");

    /**
     * One check.
     *
     * @param check its id
     * @param where for each state the scenarios that show it, as file and line
     * @param may for each state whether it can come about at all, as the card has it
     */
    public record Row(String check, Map<String, List<String>> where, Map<String, Boolean> may) {
        /** States that can come about and that no scenario shows. */
        public List<String> holes() {
            return STATES.stream().filter(state -> may.get(state) && where.get(state).isEmpty()).toList();
        }
    }

    /** Counts what the scenarios that hold expect of each check asked about. */
    public static Coverage of(RuleBook book, Rehearsed rehearsed, Scope scope) {
        Map<String, Map<String, List<String>>> shown = new TreeMap<>();
        for (Scenario scenario : rehearsed.scenarios()) {
            scenario.expected().stream().filter(Expected.Outcome.class::isInstance).map(Expected.Outcome.class::cast)
                    .forEach(o -> places(shown, o).add(scenario.place()));
        }
        List<Row> rows = new ArrayList<>();
        for (Card card : book.cards().values().stream().filter(c -> scope.hasCheck(c.id())).toList()) {
            Map<String, List<String>> where = new LinkedHashMap<>();
            Map<String, Boolean> may = new LinkedHashMap<>();
            for (String state : STATES) {
                where.put(state, shown.getOrDefault(card.id(), Map.of()).getOrDefault(state, List.of()).stream().distinct().toList());
                may.put(state, !where.get(state).isEmpty() || may(card, state));
            }
            rows.add(new Row(card.id(), where, may));
        }
        return new Coverage(rows);
    }

    private static List<String> places(Map<String, Map<String, List<String>>> shown, Expected.Outcome outcome) {
        return shown.computeIfAbsent(outcome.check(), c -> new TreeMap<>()).computeIfAbsent(outcome.state(), s -> new ArrayList<>());
    }

    /**
     * Whether the card leaves room for a state. A check that wants nothing decides from the record itself, and what it can
     * come to stands in its rules alone: of it only {@code met} is asked for. Work that was done cannot be a fault. Only an
     * amount can be too close to a limit, or differ from another by more than it is uncertain; a count is exact. What a
     * scenario shows can be.
     */
    private static boolean may(Card card, String state) {
        boolean wants = !card.wants().isEmpty();
        return switch (state) {
            case "met" -> true;
            case "fault" -> wants && card.wants().stream().anyMatch(w -> w.weakest() != Deed.DONE);
            case "doubt" -> card.wants().stream().anyMatch(w -> w.form() == Form.AMOUNT && w.unit() != Unit.TIMES && (w.judged() || !w.varies()));
            case "stale", "missing" -> wants;
            default -> !ALWAYS.matcher(card.applies()).matches();
        };
    }

    /** True when every state that can come about is shown. */
    public boolean isWhole() {
        return rows.stream().allMatch(row -> row.holes().isEmpty());
    }
}
