package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Deed;
import chock.record.Entry;
import chock.rulebook.Card;
import chock.rulebook.LaidOut;
import chock.assess.facts.Evidence;
import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Value;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every fault has work that ends it, and work that a card says clears a fault does so. */
class ClearedByTest {
    private static final Set<String> DISTURBING = Examples.BOOK.library().disturbing();
    private static final Set<String> MENDS_NOTHING = Examples.BOOK.library().mendsNothing();

    private static Entry work(String point, String what) {
        return new Entry("w", null, "", Deed.DONE, point, what, null, null, null, null, null, 0);
    }

    private static Evidence fault(String point, Card.Want want, String answer) {
        return new Evidence(new Entry("e", null, "", want.weakest(), point, want.aspect(), answer == null ? null : new Value.Answer(answer), null, null, null, null, 0), "", null);
    }

    @Test
    void everyFaultHasWorkThatEndsIt() {
        List<String> stands = new ArrayList<>();
        int rows = 0;
        int faults = 0;
        for (Card card : Examples.BOOK.cards().values()) {
            for (String point : card.place().points(Map.of(), Examples.BOOK.library().places())) {
                LaidOut laid = Examples.BOOK.laidOut(card, point);
                rows += laid.clearedBy().size();
                for (int i = 0; i < card.wants().size(); i++) {
                    Card.Want want = card.wants().get(i);
                    Wanted wanted = new Wanted(new Required(card.id(), point), card, want, laid.points().get(i), "", laid, DISTURBING, MENDS_NOTHING, false, null, null);
                    List<String> answers = new ArrayList<>(want.bad());
                    if (wanted.judged()) {
                        answers.add(null);
                    }
                    for (String answer : answers) {
                        faults++;
                        Evidence fault = fault(laid.points().get(i), want, answer);
                        Stream<Entry> named = laid.clearedBy().stream().flatMap(row -> row.works().stream().map(what -> work(row.point(), what)));
                        Stream<Entry> there = DISTURBING.stream().filter(what -> !MENDS_NOTHING.contains(what)).map(what -> work(laid.points().get(wants(card, want)), what));
                        if (Stream.concat(named, there).noneMatch(one -> wanted.isMendedBy(one, fault))) {
                            stands.add(card.id() + " at " + point + ": " + want.name() + " " + answer);
                        }
                    }
                }
            }
        }
        assertThat(rows).isGreaterThan(100);
        assertThat(faults).isGreaterThan(1000);
        assertThat(stands).isEmpty();
    }

    private static int wants(Card card, Card.Want want) {
        return card.wants().indexOf(want);
    }

    @Test
    void workThatMendsNothingEndsNoFaultUnlessTheCardSaysSo() {
        int tried = 0;
        for (Card card : Examples.BOOK.cards().values()) {
            for (String point : card.place().points(Map.of(), Examples.BOOK.library().places())) {
                LaidOut laid = Examples.BOOK.laidOut(card, point);
                for (Card.Want want : card.wants()) {
                    Wanted wanted = new Wanted(new Required(card.id(), point), card, want, laid.points().get(wants(card, want)), "", laid, DISTURBING, MENDS_NOTHING, false, null, null);
                    for (String what : List.of("damaged", "ridden", "loosened")) {
                        assertThat(wanted.isMendedBy(work(wanted.point(), what), fault(wanted.point(), want, null))).as("%s at %s: %s", card.id(), point, what).isFalse();
                        tried++;
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(1000);
    }
}
