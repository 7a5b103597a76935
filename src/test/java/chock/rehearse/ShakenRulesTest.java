package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

/** Small changes of the smaller systems of the rule book: a scenario notices each of them. The whole takes too long for every build. */
class ShakenRulesTest {
    private static final List<String> PARTS = List.of("steering", "show", "transmission", "fuel", "oil", "record", "handover", "fasteners", "controls", "roadtest");

    private static Shake.Shaken shaken(String part, List<String> features) {
        RuleBook book = RuleBook.shipped();
        Rehearsed rehearsed = Rehearsal.run(book, features, null, null);
        assertThat(rehearsed.holds()).isTrue();
        return Shake.run(book, rehearsed, new Scope(part, false));
    }

    @ParameterizedTest
    @FieldSource("PARTS")
    void everySmallChangeIsNoticedByAScenario(String part) {
        Shake.Shaken shaken = shaken(part, List.of("features/" + part));
        assertThat(shaken.changes()).isGreaterThan(8);
        assertThat(shaken.unnoticed()).as("changes to write a scenario for").isEmpty();
        assertThat(shaken.idle()).isEmpty();
    }

    @Test
    void whatCountsAndWhatComesOfItIsNoticedByAScenario() {
        Shake.Shaken evidence = shaken("evidence", List.of("features/evidence"));
        assertThat(evidence.changes()).isEqualTo(69);
        assertThat(evidence.unnoticed()).as("changes to write a scenario for").isEmpty();
        assertThat(evidence.idle()).containsExactly("evidence.asked-of-every-machine", "evidence.asked-with");
        Shake.Shaken outcome = shaken("outcome", List.of("features/evidence"));
        assertThat(outcome.changes()).isEqualTo(6);
        assertThat(outcome.unnoticed()).as("changes to write a scenario for").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"docs/examples/house, evidence.asked-of-every-machine", "src/test/resources/house/rules/asked-of-every-machine, evidence.asked-with"})
    void everyChangeOfAHouseIsNoticedByAScenarioOfTheHouse(String folder, String idle) {
        HouseBook house = HouseBook.read(Path.of(folder));
        RuleBook book = RuleBook.shipped().with(house);
        Rehearsed rehearsed = Rehearsal.run(book, List.of(house.features().toString()), null, null);
        assertThat(rehearsed.holds()).isTrue();
        List<Change> changes = Change.of(book).stream().filter(Change::isOfHouse).toList();
        assertThat(changes).extracting(Change::subject).contains(idle.equals("evidence.asked-with") ? "evidence.asked-of-every-machine" : "evidence.asked-with").doesNotContain(idle);
        Shake.Shaken shaken = Shake.run(book, rehearsed, new Scope(null, true));
        assertThat(shaken.changes()).isEqualTo(changes.size());
        assertThat(shaken.unnoticed()).as("changes to write a scenario for").isEmpty();
    }

    @Test
    void aHouseLimitThatNoScenarioPinsIsReported() {
        RuleBook book = RuleBook.shipped().with(HouseBook.read(Path.of("docs/examples/house")));
        Rehearsed rehearsed = Rehearsal.run(book, List.of("docs/rehearsal/one-side.feature"), null, null);
        assertThat(Shake.run(book, rehearsed, new Scope("brakes.pad-thickness", true)).unnoticed()).extracting(Shake.Unnoticed::what).contains("2.5 mm becomes 2.6 mm in the house");
    }
}
