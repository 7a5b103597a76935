package chock.rulebook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the order in which the trade does things: strictly, and against the places and checks of the rule book. */
final class OrderReader {
    static final String FILE = "order.yaml";

    private final Map<String, List<String>> places;
    private final Map<String, Card> cards;
    private final Set<String> known;

    /**
     * @param places words behind the names in braces
     * @param cards every check
     * @param known every place where something can be written, or null where not all of them are known
     */
    OrderReader(Map<String, List<String>> places, Map<String, Card> cards, Set<String> known) {
        this.places = places;
        this.cards = cards;
        this.known = known;
    }

    TradeOrder read(List<Sheet> sheets) {
        List<TradeOrder.Stage> stages = new ArrayList<>();
        Map<String, String> listed = new HashMap<>();
        for (Sheet sheet : sheets) {
            String name = sheet.text("stage");
            boolean ends = sheet.yesOr("ends", false);
            Set<String> parts = new LinkedHashSet<>();
            for (String pattern : sheet.texts("parts")) {
                List<String> points = new Place(pattern).names().stream().allMatch(places::containsKey) ? new Place(pattern).points(Map.of(), places) : List.of();
                if (points.isEmpty() || known != null && points.stream().noneMatch(known::contains)) {
                    sheet.fault("parts", "'" + pattern + "' is not a place", "Write a place that a card asks at.");
                }
                parts.addAll(points);
            }
            Map<String, Integer> proofs = new LinkedHashMap<>();
            for (String proof : sheet.texts("proofs")) {
                String before = listed.put(proof, name);
                if (before != null) {
                    sheet.fault("proofs", "'" + proof + "' is listed twice (also under " + before + ")", "Keep one of them.");
                }
                if (known != null && !isProof(proof)) {
                    sheet.fault("proofs", "'" + proof + "' is not a proof", "Write the id of a check, and behind a blank the name of one of its wants.");
                }
                proofs.put(proof, proofs.size());
            }
            sheet.done();
            stages.add(new TradeOrder.Stage(name, ends, Set.copyOf(parts), proofs));
        }
        return new TradeOrder(List.copyOf(stages));
    }

    private boolean isProof(String proof) {
        String[] words = proof.split(" ", 2);
        Card card = cards.get(words[0]);
        return card != null && (words.length == 1 || card.wants().stream().anyMatch(want -> want.name().equals(words[1])));
    }
}
