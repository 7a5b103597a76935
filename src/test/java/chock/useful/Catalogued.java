package chock.useful;

import chock.useful.CardCatalogue.Card;
import chock.useful.CardCatalogue.Want;
import chock.useful.HonestHistory.Item;
import chock.useful.HonestRecord.Line;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The line that a good result makes, for whatever a card wants somewhere on this machine. */
final class Catalogued {
    private static final List<String> STRONGEST_FIRST = List.of("done", "measured", "tried", "seen", "told");

    private Catalogued() { }

    /** By whom and when is for the caller to say. */
    static Line line(ModelSheet sheet, List<String> gates, String place, String aspect) {
        Want want = HonestHistory.wanted(sheet, gates).stream().filter(i -> i.key().equals(place + " " + aspect)).map(Item::want).min(Comparator.comparingInt(w -> STRONGEST_FIRST.indexOf(w.verb())))
                .orElseGet(() -> anywhere(sheet, place, aspect));
        Bench.Result good = want.isWork() ? Bench.done(aspect) : Bench.good(sheet, want, place);
        return new Line("", null, "ida", place, want.verb(), aspect, good.is(), good.with(), Map.of());
    }

    /** Of a card that these gates do not have, or that is asked only after something happened. */
    private static Want anywhere(ModelSheet sheet, String place, String aspect) {
        for (Card card : CardCatalogue.SHIPPED.cards()) {
            for (Want want : card.wants()) {
                if (want.aspect().equals(aspect) && sheet.spots(want.place()).stream().anyMatch(s -> s.place().equals(place))) {
                    return want;
                }
            }
        }
        throw new IllegalStateException("no card wants " + aspect + " at " + place);
    }
}
