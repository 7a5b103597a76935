package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Small changes of the smaller systems of the rule book: a scenario notices each of them. The whole takes too long for every build. */
class ShakenRulesTest {
    private static final List<String> PARTS = List.of("steering", "show", "transmission", "fuel", "oil", "record", "handover", "fasteners", "controls", "roadtest");

    @Test
    void everySmallChangeIsNoticedByAScenario() {
        RuleBook book = RuleBook.shipped();
        Rehearsed rehearsed = Rehearsal.run(book, PARTS.stream().map(part -> "features/" + part).toList(), null, null);
        assertThat(rehearsed.holds()).isTrue();
        Shake.Shaken shaken = Shake.run(book, rehearsed, subject -> PARTS.stream().anyMatch(part -> subject.startsWith(part + ".")));
        assertThat(shaken.changes()).isGreaterThan(330);
        assertThat(shaken.unnoticed()).as("changes to write a scenario for").isEmpty();
    }
}
