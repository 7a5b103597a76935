package chock.rulebook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Reads what proofs rest on beyond their own part: rows of work at a place, each with the proofs it takes away or spares. */
final class UndoingReader {
    static final String FILE = "undoing.yaml";

    private final CardReader words;
    private final Map<String, List<String>> places;
    private final Map<String, Card> cards;
    private final Set<String> known;

    /**
     * @param words reads places and works as the cards have them
     * @param places words behind the names in braces
     * @param cards every check
     * @param known every place where something can be written, or null where not all of them are known
     */
    UndoingReader(CardReader words, Map<String, List<String>> places, Map<String, Card> cards, Set<String> known) {
        this.words = words;
        this.places = places;
        this.cards = cards;
        this.known = known;
    }

    /** The cards with what undoes them; a card without a row is left as it was. */
    Map<String, Card> read(Sheet sheet) {
        Map<String, List<Card.Undo>> undoes = rows(sheet, "undoes");
        Map<String, List<Card.Undo>> spares = rows(sheet, "spares");
        sheet.done();
        Map<String, Card> all = new LinkedHashMap<>();
        cards.forEach((id, card) -> all.put(id, card.resting(undoes.getOrDefault(id, List.of()), spares.getOrDefault(id, List.of()))));
        return all;
    }

    private Map<String, List<Card.Undo>> rows(Sheet sheet, String key) {
        Map<String, List<Card.Undo>> rows = new TreeMap<>();
        for (Sheet row : sheet.sheets(key)) {
            Set<String> works = new LinkedHashSet<>(words.works(row, "work"));
            if (key.equals("spares") && works.isEmpty()) {
                row.fault("work", "it names no work", "Write work: [removed, refitted].");
            }
            Place at = words.placeOf(row, "at", row.text("at"));
            List<String> proofs = row.texts("proofs");
            if (proofs.isEmpty()) {
                row.fault("proofs", "it names no proof", "Write proofs: and the ids of checks.");
            }
            row.done();
            if (at == null) {
                continue;
            }
            if (known != null && at.points(Map.of(), places).stream().noneMatch(known::contains)) {
                row.fault("at", "'" + at + "' is not a place", "Write a place that a card asks at, or list it under points in rules/evidence/words.yaml.");
                continue;
            }
            proofs.forEach(proof -> proof(row, proof, works, at, rows));
        }
        return rows;
    }

    private void proof(Sheet row, String proof, Set<String> works, Place at, Map<String, List<Card.Undo>> rows) {
        String[] named = proof.split(" ", 2);
        Card card = cards.get(named[0]);
        Set<String> only = named.length == 1 ? Set.of() : Set.of(named[1]);
        if (card == null || !card.wants().stream().map(Card.Want::name).toList().containsAll(only)) {
            if (known != null) {
                row.fault("proofs", "'" + proof + "' is not a proof", "Write the id of a check, and behind a blank the name of one of its wants.");
            }
            return;
        }
        Card.Undo undo = new Card.Undo(works, at, only);
        List<Card.Undo> of = rows.computeIfAbsent(card.id(), id -> new ArrayList<>());
        if (of.contains(undo)) {
            row.fault("proofs", "'" + proof + "' has this row twice", "Keep one of them.");
        }
        of.add(undo);
    }
}
