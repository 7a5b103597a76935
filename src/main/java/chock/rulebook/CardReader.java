package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Gate;
import chock.record.Vocabulary.Form;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads cards, of the rule book or of a house, in the words both share. */
final class CardReader {
    private final Map<String, List<String>> places;
    private final Map<String, String> works;
    private final Dangers dangers;
    private final boolean ofHouse;

    /**
     * @param places words behind the names in braces
     * @param works every work, with what it means
     * @param dangers the closed list of dangers
     * @param ofHouse whether the cards are those of a house, which may leave out dangers and ends-by
     */
    CardReader(Map<String, List<String>> places, Map<String, String> works, Dangers dangers, boolean ofHouse) {
        this.places = places;
        this.works = works;
        this.dangers = dangers;
        this.ofHouse = ofHouse;
    }

    /** One card, or null after a fault. Keys that only a house may write are to be asked of the sheet before. */
    Card read(Sheet sheet) {
        String id = sheet.text("id");
        String question = sheet.text("question");
        String applies = sheet.text("applies");
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        List<String> names = sheet.texts("gates");
        if (names.isEmpty()) {
            sheet.fault("gates", "a check belongs to at least one gate", "Write gates: [road-test].");
        }
        for (String name : names) {
            Gate.of(name).ifPresentOrElse(gates::add, () -> sheet.fault("gates", "'" + name + "' is not a gate", "Known: " + List.of(Gate.values()) + "."));
        }
        Card.Needs needs = sheet.has("needs") ? sheet.word("needs", Card.Needs.class) : Card.Needs.STANDING;
        gates.stream().filter(gate -> needs != null && !needs.before(gate)).forEach(gate -> sheet.fault("needs",
                "at " + gate + " nobody may have had this evidence yet", "Ask for it at a later gate, or ask for what can be had before."));
        boolean critical = sheet.yes("critical");
        Place place = placeOf(sheet, "place", sheet.text("place"));
        String limit = sheet.optional("limit");
        Holds holds = sheet.as("holds", Holds::parse);
        List<Card.Want> wants = new ArrayList<>();
        for (Sheet want : sheet.sheets("wants")) {
            Card.Want read = want(want, critical);
            if (read != null) {
                wants.add(read);
            }
        }
        if (!sheet.has("wants")) {
            sheet.fault("wants", "the key is missing", "Write wants: and a list; [] only when rules of the check decide from the record itself.");
        }
        wants = alone(wants, limit);
        List<Card.Undo> undoneBy = undos(sheet, "undone-by", null);
        List<Card.Undo> survives = undos(sheet, "survives", null);
        Set<String> bad = new LinkedHashSet<>();
        wants.forEach(want -> bad.addAll(want.bad()));
        List<Card.Undo> clearedBy = undos(sheet, "cleared-by", bad);
        List<String> dangers = dangers(sheet);
        List<Card.AlsoCloses> closes = sheet.has("closes") ? closings(sheet, bad, gates) : null;
        Card.EndsBy endsBy = ofHouse && !sheet.has("ends-by") ? Card.EndsBy.WORK : sheet.word("ends-by", Card.EndsBy.class);
        List<String> named = wants.stream().map(Card.Want::name).toList();
        undoneBy.stream().flatMap(row -> row.only().stream()).filter(want -> !named.contains(want)).forEach(want -> sheet.fault("undone-by",
                "only names '" + want + "', and the card wants no such thing", "Known here: " + String.join(", ", named) + "."));
        clearedBy.stream().filter(row -> row.works().isEmpty()).findFirst().ifPresent(row -> sheet.fault("cleared-by", "it names no work", "Write work: [adjusted]; leave the key out where any work there will do."));
        Together together = sheet.has("together") ? together(sheet, wants) : null;
        String remedy = sheet.text("remedy");
        String caution = sheet.optional("caution");
        List<String> formerly = sheet.texts("formerly");
        sheet.done();
        if (id == null || place == null || holds == null || gates.isEmpty()) {
            return null;
        }
        return new Card(id, question, applies, gates, needs, critical, place, wants, limit, holds, undoneBy, survives, clearedBy, together, remedy, caution, formerly, dangers, closes, endsBy, sheet.file(), sheet.line());
    }

    private static Together together(Sheet sheet, List<Card.Want> wants) {
        Sheet below = sheet.sheet("together");
        Quantity within = below.quantity("within");
        List<String> named = below.texts("of");
        below.done();
        if (within != null && (within.unit().dimension() != Unit.Dimension.DURATION || within.value().signum() <= 0)) {
            below.fault("within", "'" + within + "' is no time apart", "Write a duration above zero, such as 1 h.");
        }
        if (named.isEmpty()) {
            below.fault("of", "it names no want", "Name the wants that belong together, such as of: [winding, temperature].");
        }
        List<String> known = wants.stream().map(Card.Want::name).toList();
        named.stream().filter(name -> !known.contains(name)).forEach(name -> below.fault("of", "'" + name + "' is no want of this card", "Known: " + String.join(", ", known) + "."));
        return within == null || named.isEmpty() ? null : new Together(within, Set.copyOf(named));
    }

    private List<String> dangers(Sheet sheet) {
        List<String> named = sheet.texts("dangers");
        if (named.isEmpty() && !(ofHouse && !sheet.has("dangers"))) {
            sheet.fault("dangers", "no danger is named", "Write dangers: and what a known fault can do, such as [fire]; proof where nothing is known to be wrong, none where it is only a note.");
        }
        named.stream().filter(danger -> !dangers.byName().containsKey(danger)).forEach(danger -> sheet.fault("dangers", "'" + danger + "' is not a danger",
                "Known: " + String.join(", ", dangers.byName().keySet()) + "."));
        return named.stream().filter(dangers.byName()::containsKey).toList();
    }

    private List<Card.AlsoCloses> closings(Sheet sheet, Set<String> bad, Set<Gate> asked) {
        List<Card.AlsoCloses> closings = new ArrayList<>();
        for (Sheet row : sheet.sheets("closes")) {
            Set<Gate> gates = DangerReader.gates(row, "gates");
            if (gates.isEmpty()) {
                row.fault("gates", "it closes no gate", "Write gates: [road-test], or closes: [] for a fault that closes only the gates that ask for it.");
            }
            gates.stream().filter(asked::contains).forEach(gate -> row.fault("gates", gate + " asks for this check", "Leave it out: a fault closes every gate that asks."));
            Set<String> only = answers(row, bad);
            List<String> at = row.texts("at");
            String unless = row.optional("unless");
            if (unless != null && !dangers.exceptions().containsKey(unless)) {
                row.fault("unless", "'" + unless + "' keeps no gate open", "Known: " + String.join(", ", dangers.exceptions().keySet()) + ".");
            }
            Quantity over = row.has("over") ? row.quantity("over") : null;
            boolean below = row.yesOr("below-the-limit", false);
            row.done();
            closings.add(new Card.AlsoCloses(gates, only, at, over, below, unless));
        }
        return List.copyOf(closings);
    }

    private static Set<String> answers(Sheet row, Set<String> bad) {
        Set<String> only = new LinkedHashSet<>(row.texts("only"));
        only.stream().filter(answer -> !bad.contains(answer)).forEach(answer -> row.fault("only", "'" + answer + "' is not a bad answer of this check",
                bad.isEmpty() ? "Leave it out: this check has no bad answers." : "Known: " + String.join(", ", bad) + "."));
        return only;
    }

    /** @param bad the answers that a row may be limited to, or null where no row may be limited */
    private List<Card.Undo> undos(Sheet sheet, String key, Set<String> bad) {
        List<Card.Undo> undos = new ArrayList<>();
        for (Sheet undo : sheet.sheets(key)) {
            List<String> named = works(undo, "work");
            Place at = placeOf(undo, "place", undo.text("place"));
            Set<String> only = key.equals("undone-by") ? new LinkedHashSet<>(undo.texts("only")) : bad == null ? Set.of() : answers(undo, bad);
            undo.done();
            if (at != null) {
                undos.add(new Card.Undo(new LinkedHashSet<>(named), at, only));
            }
        }
        return undos;
    }

    /** Works named under a key. */
    List<String> works(Sheet sheet, String key) {
        List<String> named = sheet.texts(key);
        named.stream().filter(w -> !works.containsKey(w)).forEach(w -> sheet.fault(key, "'" + w + "' is not a known work", "Known: " + String.join(", ", works.keySet()) + "."));
        return named;
    }

    // A single amount or date is held against the card's limit without being told so.
    private static List<Card.Want> alone(List<Card.Want> wants, String limit) {
        List<Card.Want> valued = wants.stream().filter(w -> w.form() == Form.AMOUNT || w.form() == Form.DAYS).toList();
        if (limit == null || valued.size() != 1 || valued.get(0).judged() || wants.stream().anyMatch(w -> w.form() == Form.CODE)) {
            return wants;
        }
        return wants.stream().map(w -> w != valued.get(0) ? w : new Card.Want(w.name(), w.weakest(), w.aspect(), w.form(), w.unit(), w.good(), w.bad(), w.place(), w.holds(), true, w.varies(), w.covers())).toList();
    }

    /** One want, or null after a fault. */
    Card.Want want(Sheet sheet, boolean critical) {
        Deed weakest = null;
        String aspect = null;
        for (Deed deed : Deed.values()) {
            if ((deed.isEvidence() || deed == Deed.DONE) && sheet.has(deed.key())) {
                if (weakest != null) {
                    sheet.fault(deed.key(), "one kind of evidence at a time", "Write a second want.");
                }
                weakest = deed;
                aspect = sheet.text(deed.key());
            }
        }
        if (weakest == null) {
            sheet.fault("", "says no kind of evidence", "Write measured:, tried:, seen: or done:.");
            sheet.keys();
            return null;
        }
        if (critical && (weakest == Deed.TOLD || weakest == Deed.ASSUMED)) {
            sheet.fault(weakest.key(), "hearsay never closes a safety-critical check", "Ask for measured, tried, seen or done.");
        }
        String name = sheet.optional("name");
        Set<String> good = new LinkedHashSet<>(sheet.texts("good"));
        Set<String> bad = new LinkedHashSet<>(sheet.texts("bad"));
        Form form = sheet.has("form") ? sheet.word("form", Form.class) : weakest == Deed.MEASURED ? Form.AMOUNT : Form.ANSWER;
        Unit unit = sheet.optionalAs("unit", text -> Unit.spelled(text).orElseThrow(() -> new IllegalArgumentException("'" + text + "' is not a unit this program knows")));
        if (form == Form.AMOUNT && unit == null) {
            sheet.fault("unit", "an amount needs a unit", "Write unit: mm.");
        }
        if (form == Form.ANSWER && weakest != Deed.DONE && (good.isEmpty() || bad.isEmpty())) {
            sheet.fault("good", "answers need a good and a bad side", "Write good: [sound] and bad: [cracked].");
        }
        if (weakest == Deed.DONE && aspect != null && !works.containsKey(aspect)) {
            sheet.fault("done", "'" + aspect + "' is not a known work", "Known: " + String.join(", ", works.keySet()) + ".");
        }
        String elsewhere = sheet.optional("place");
        Place place = elsewhere == null ? null : placeOf(sheet, "place", elsewhere);
        Holds holds = sheet.optionalAs("holds", Holds::parse);
        boolean judged = sheet.yesOr("judged", false);
        boolean varies = sheet.yesOr("varies", false);
        boolean covers = sheet.yesOr("covers", false);
        if (covers && (unit == null || unit.dimension() != Unit.Dimension.DURATION)) {
            sheet.fault("covers", "only a duration covers the time before it was written", "Leave it out, or ask for a duration, such as unit: min.");
        }
        sheet.done();
        if (aspect == null || form == null) {
            return null;
        }
        return new Card.Want(name == null ? aspect : name, weakest, aspect, form, unit, good, bad, place, holds, judged, varies, covers);
    }

    Place placeOf(Sheet sheet, String key, String pattern) {
        if (pattern == null) {
            return null;
        }
        Place place = new Place(pattern);
        place.names().stream().filter(n -> !places.containsKey(n)).forEach(n -> sheet.fault(key, "'{" + n + "}' is not a known word for a place", "Known: " + places.keySet() + "."));
        return place.names().stream().allMatch(places::containsKey) ? place : null;
    }
}
