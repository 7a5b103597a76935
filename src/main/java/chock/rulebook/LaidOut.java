package chock.rulebook;

import chock.record.Entry;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A card laid out at one point: its words in braces filled in.
 *
 * @param points where each want is looked for, in the order of the card
 * @param keys what each want is found by among the evidence: its point and aspect, in the order of the card
 * @param kinds what each want is a proof of, in the order of the card; null where the rule book does not say
 * @param undoneBy work that undoes it
 * @param survives work that leaves it untouched though it disturbs
 * @param clearedBy work that clears a fault
 * @param opened readings for which each want had to be opened, in the order of the card
 * @param readAssembled how a remark begins that says how such a reading was taken assembled all the same
 */
public record LaidOut(List<String> points, List<String> keys, List<Assembly.Kind> kinds, List<Touch> undoneBy, List<Touch> survives, List<Touch> clearedBy, List<List<Opened>> opened, String readAssembled) {

    static LaidOut of(Card card, String point, Map<String, List<String>> words, Assembly assembly) {
        Map<String, String> binding = card.place().match(point, words).orElseThrow(() -> new IllegalStateException(
                "rule '" + card.id() + "' asks at '" + point + "', its card at " + card.place()));
        List<String> points = card.wants().stream().map(want -> want.place() == null ? point : want.place().points(binding, words).get(0)).toList();
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            keys.add(Entry.key(points.get(i), card.wants().get(i).aspect()));
        }
        return new LaidOut(points, List.copyOf(keys), card.wants().stream().map(want -> assembly.kind(card.id(), want.name())).toList(), touches(card.undoneBy(), binding, words), touches(card.survives(), binding, words),
                touches(card.clearedBy(), binding, words), card.wants().stream().map(want -> opened(assembly.apart(card.id(), want.name()), binding, words)).toList(), assembly.readAssembled());
    }

    /**
     * A reading for which a part had to be apart.
     *
     * @param key what it is found by: its point and aspect
     * @param only answers of which that is so; empty means all
     */
    public record Opened(String key, Set<String> only) { }

    private static List<Opened> opened(List<Assembly.ReadApart> rows, Map<String, String> binding, Map<String, List<String>> words) {
        return rows.stream().flatMap(row -> row.place().points(binding, words).stream().map(point -> new Opened(Entry.key(point, row.aspect()), row.only()))).distinct().toList();
    }

    private static List<Touch> touches(List<Card.Undo> rows, Map<String, String> binding, Map<String, List<String>> words) {
        List<Touch> touches = new ArrayList<>();
        rows.forEach(row -> row.place().points(binding, words).forEach(point -> touches.add(new Touch(row.works(), point, row.only()))));
        return List.copyOf(touches);
    }
}
