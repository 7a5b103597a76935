package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is to be done first is told in the order of the card, whatever order the engine concluded it in. */
class FirstToDoTest {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final RuleBook BOOK = RuleBook.shipped();

    @ParameterizedTest
    @ValueSource(strings = {"lark-released.yaml", "lark-gaps.yaml", "lark-worked-on-after.yaml", "harrow-prewar-single.yaml"})
    void it_is_told_in_the_order_of_the_card(String file) throws IOException {
        byte[] bytes = Files.readAllBytes(Path.of("docs/examples", file));
        JobRecord record = RecordReader.read(file, bytes, BOOK.vocabulary(), DAY);
        int several = 0;
        for (GateVerdict gate : Assessor.assess(record, BOOK, List.of(Gate.values()), DAY).gates()) {
            for (Finding finding : gate.findings()) {
                int end = finding.remedy() == null ? -1 : finding.remedy().indexOf("; write down the result.");
                if (end > 0) {
                    String first = "; " + finding.remedy().substring(0, end).replaceFirst("^.*\\. (?=[A-Z])", "");
                    // Each verb comes once, with all it is for; the verbs come as the card first has them.
                    List<Integer> verbs = BOOK.cards().get(finding.check()).wants().stream()
                            .filter(want -> first.matches(".*\\bthe " + aspect(want) + "\\b.*"))
                            .map(want -> verbBefore(first, aspect(want))).distinct().toList();
                    assertThat(verbs).as(finding.check() + ": " + first).isSorted();
                    several += verbs.size() > 1 ? 1 : 0;
                }
            }
        }
        assertThat(several).isPositive();
    }

    private static String aspect(Card.Want want) {
        return want.aspect().replace('-', ' ');
    }

    private static int verbBefore(String first, String aspect) {
        return first.lastIndexOf("; ", first.indexOf("the " + aspect));
    }
}
