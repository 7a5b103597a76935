package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Deed;
import chock.record.Entry;
import chock.rulebook.Card;
import chock.rulebook.LaidOut;
import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.record.Vocabulary.Form;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Work that a card says clears its fault takes the faulty evidence away, or the fault would stand for ever. */
class ClearedByTest {
    @Test
    void undoesWhatIsJudgedAtEveryPlace() {
        List<String> stands = new ArrayList<>();
        int rows = 0;
        for (Card card : Examples.BOOK.cards().values()) {
            for (String point : card.place().points(Map.of(), Examples.BOOK.library().places())) {
                LaidOut laid = Examples.BOOK.laidOut(card, point);
                rows += laid.clearedBy().size();
                for (int i = 0; i < card.wants().size() && !laid.clearedBy().isEmpty(); i++) {
                    Wanted wanted = new Wanted(new Required(card.id(), point), card, card.wants().get(i), laid.points().get(i), "", laid, Examples.BOOK.library().disturbing(), false, null, null);
                    boolean decides = wanted.judged() || wanted.want().form() == Form.ANSWER || card.wants().size() == 1;
                    boolean gone = laid.clearedBy().stream().anyMatch(t -> t.works().stream().anyMatch(w -> wanted.isUndoneBy(new Entry("", null, "", Deed.DONE, t.point(), w, null, null, null, null, null, 0))));
                    if (decides && !gone) {
                        stands.add(card.id() + " at " + point + ": " + card.wants().get(i).name());
                    }
                }
            }
        }
        assertThat(rows).isGreaterThan(50);
        assertThat(stands).isEmpty();
    }
}
