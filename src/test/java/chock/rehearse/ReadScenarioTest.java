package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** No scenario holds on a record that could not be handed in. */
class ReadScenarioTest {
    private static final RuleBook BOOK = RuleBook.shipped();

    @TempDir
    private Path folder;

    private Rehearsed.Shown shown(String... steps) throws IOException {
        Path file = folder.resolve("told.feature");
        Files.writeString(file, "Feature: told\n\n  Scenario: told\n    Given a motorcycle with one hydraulic disc in front and a rod drum behind\n    And " + String.join("\n    And ", steps) + "\n");
        return Rehearsal.run(BOOK, List.of(file.toString()), null, null).shown().get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "front-brake/caliper/inner-pad tried thickness 4.2 mm ± 0.1 mm|e1: an uncertainty, but tried",
        "front-brake/caliper/inner-pad measured thickness 4.2 mm ± 0.0001 mm|is less than",
        "front-brake/caliper/inner-pad measured thickness 4.2 psi ± 0.1 psi|e1: '4.2 psi' is a pressure; a length is wanted. Write it in mm",
        "room measured volume 0 m³ ± 1 m³|no instrument reads '0 m³ ± 1 m³'",
        "outdoors measured air-temperature 900 °C ± 1 K|no instrument reads '900 °C ± 1 K'"
    })
    void whatNoRecordMaySayStandsInNoScenario(String step, String why) throws IOException {
        Rehearsed.Shown shown = shown(step, "brakes.pad-thickness is met");
        assertThat(shown.holds()).isFalse();
        assertThat(shown.slips()).isNotEmpty().allSatisfy(slip -> {
            assertThat(slip.kind()).isEqualTo(Rehearsed.Kind.NOT_UNDERSTOOD);
            assertThat(slip.found()).contains(why);
        });
    }

    @Test
    void aFigureThatCannotBeIsMarkedAsInAStoredRecord() throws IOException {
        assertThat(shown("front-brake/caliper/inner-pad measured thickness 42 mm ± 0.1 mm", "brakes.pad-thickness is doubt at front-brake/caliper/inner-pad").slips()).isEmpty();
    }
}
