package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Scenarios as their author runs them: what holds, what does not, and what cannot be read. */
class RehearseCommandTest {
    private static final String MACHINE = "Given a motorcycle with one hydraulic disc in front and a rod drum behind\n";
    private static final String PAD = "And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm\n";

    @TempDir private Path folder;

    private String feature(String... steps) throws IOException {
        Path file = folder.resolve("own.feature");
        Files.writeString(file, "Feature: Own rules\n\n  Scenario: good pads\n    " + String.join("    ", steps));
        return file.toString();
    }

    @Test
    void whatHoldsIsCounted() throws IOException {
        Run run = Run.of("rehearse", feature(MACHINE, PAD, "Then brakes.pad-thickness is met at front-brake/caliper/inner-pad\n"));
        assertThat(run).isEqualTo(new Run(0, "1 scenario in 1 file: all hold.\n", ""));
    }

    @Test
    void whatDoesNotHoldIsToldWithItsStepAndWhatWasFound() throws IOException {
        String file = feature(MACHINE, PAD, "Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad\n");
        Run run = Run.of("rehearse", file);
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out().replaceAll("\\s+", " ")).contains("DOES NOT HOLD: good pads ", "own.feature:3",
                "line 6: Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad",
                "found: met: Front brake, caliper, inner pad: thickness 3.1 mm ± 0.1 mm, at least 1.5 mm", "1 scenario in 1 file: 1 does not hold.");
        assertThat(run.err()).isEmpty();
    }

    @Test
    void anUnknownStepIsRefusedWithTheLineToPaste() throws IOException {
        String file = feature(MACHINE, "And the teritory is US-VA\n", "And the dya is 2026-11-20\n", "Then brakes.pad-thickness is missing\n");
        Run run = Run.of("rehearse", file);
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(file + ":5: And the teritory is US-VA\n  no step is written like this. Perhaps:\n    And the territory is US-VA\n"
                + file + ":6: And the dya is 2026-11-20\n  no step is written like this. Perhaps:\n    And the day is 2026-11-20\n");
    }

    @Test
    void anUnknownPlaceOrCheckIsRefusedWithTheNearest() throws IOException {
        String file = feature(MACHINE, "And front-brake/caliper/iner-pad measured thickness 3.1 mm ± 0.1 mm\n", "Then brakes.pad-thickness is met\n");
        assertThat(Run.of("rehearse", file)).extracting(Run::status, Run::err).containsExactly(2, file + ":5: And front-brake/caliper/iner-pad measured thickness 3.1 mm ± 0.1 mm\n"
                + "  no machine has the place 'front-brake/caliper/iner-pad'; did you mean front-brake/caliper/inner-pad?\n");
        String other = feature(MACHINE, "Then brakes.pad-thicknes is missing\n");
        assertThat(Run.of("rehearse", other)).extracting(Run::status, Run::err).containsExactly(2, other + ":5: Then brakes.pad-thicknes is missing\n"
                + "  there is no check 'brakes.pad-thicknes'; did you mean brakes.pad-thickness?\n");
    }

    @Test
    void whatIsSaidAfterTheJudgementIsRefused() throws IOException {
        Run run = Run.of("rehearse", feature(MACHINE, "Then brakes.pad-thickness is missing\n", PAD));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains(":6: And front-brake", "say everything about the machine before the first Then: it was judged there, and this would count for nothing.");
    }

    @Test
    void whatIsNotWrittenAsScenariosIsRefusedWithItsLine() throws IOException {
        String file = feature(MACHINE, "Wnen something else\n", "Then brakes.pad-thickness is missing\n");
        assertThat(Run.of("rehearse", file)).isEqualTo(new Run(2, "", file + ":5: 'Wnen something else' cannot stand here; a step begins with Given, When, Then, And or But, "
                + "and what groups steps is Feature:, Rule:, Scenario:, Scenario Outline: or Examples:. A scenario is written as in docs/steps.md\n"));
        String lost = feature("Gievn a motorcycle with a cable drum in front and a rod drum behind\n", "Then brakes.pad-thickness is not applicable\n");
        assertThat(Run.of("rehearse", lost)).isEqualTo(new Run(2, "", lost + ":4: 'Gievn a motorcycle with a cable drum in front and a rod drum behind' reads like a step and would be passed over. "
                + "Begin it with Given, And or Then\n"));
    }

    @Test
    void nothingRunIsNoSuccess() throws IOException {
        assertThat(Run.of("rehearse", folder.toString())).isEqualTo(new Run(2, "", folder + ": there is no feature file in this folder. Scenarios stand in files whose names end in .feature\n"));
        assertThat(Run.of("rehearse", folder + "/none")).isEqualTo(new Run(2, "", folder + "/none: there is no such file or folder\n"));
        Files.writeString(folder.resolve("empty.feature"), "Feature: Nothing yet\n");
        assertThat(Run.of("rehearse", folder.toString())).isEqualTo(new Run(1, "No scenario ran: the files have none. A rehearsal of nothing shows nothing.\n", ""));
        Run idle = Run.of("rehearse", feature(MACHINE));
        assertThat(idle.status()).isEqualTo(1);
        assertThat(idle.out()).contains("It expects nothing.");
    }

    @Test
    void otherProgramsReadTheResultInTheirForms() throws IOException {
        String file = feature(MACHINE, PAD, "Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad\n");
        Run json = Run.of("rehearse", file, "--format", "json");
        assertThat(json.status()).isEqualTo(1);
        assertThat(new ObjectMapper().readTree(json.out()).get(0).get("elements").get(0).get("name").asText()).isEqualTo("good pads");
        assertThat(Run.of("rehearse", file, "--format", "junit").out()).startsWith("<?xml").contains("failures=\"1\"", "good pads");
        assertThat(Run.of("rehearse", file, "--format", "html").out()).startsWith("<!DOCTYPE html>").contains("good pads");
    }

    @Test
    void optionsThatDoNotGoTogetherAreRefused() {
        assertThat(Run.of("rehearse", "--require").err()).startsWith("--require goes with --coverage.");
        assertThat(Run.of("rehearse", "--of", "brakes").err()).startsWith("--of goes with --coverage, --boundaries or --shake.");
        assertThat(Run.of("rehearse", "--coverage", "--format", "html").err()).startsWith("'html' is not one of text, json: junit and html are for a plain rehearsal.");
        assertThat(Run.of("rehearse", "--coverage", "--shake").status()).isEqualTo(2);
    }

    @Test
    void coverageTellsAHoleFromWhatCannotBe() throws IOException {
        String file = feature(MACHINE, PAD, "Then brakes.pad-thickness is met at front-brake/caliper/inner-pad\n");
        Run table = Run.of("rehearse", file, "--coverage", "--require", "--of", "brakes.pad-thickness");
        assertThat(table.status()).isEqualTo(1);
        assertThat(table.out()).contains("brakes.pad-thickness    1   none   none   none     none       none", "1 check, 5 states left out");
        JsonNode row = new ObjectMapper().readTree(Run.of("rehearse", file, "--coverage", "--of", "brakes.hose-condition", "--format", "json").out()).path(0);
        assertThat(row.at("/states/doubt/canBe").asBoolean(true)).isFalse();
        assertThat(Run.of("rehearse", file, "--coverage", "--of", "brakes.no-such-thing").err()).startsWith("Nothing in the rule book bears the id 'brakes.no-such-thing'");
    }

    @Test
    void boundariesAreTriedInTheRecordOfAScenario() throws IOException {
        String file = feature(MACHINE, "And the territory is DE\n", PAD, "Then brakes.pad-thickness is met at front-brake/caliper/inner-pad\n");
        Run run = Run.of("rehearse", file, "--boundaries", "--of", "brakes.pad-thickness");
        assertThat(run.status()).isZero();
        assertThat(run.out()).contains("brakes.pad-thickness, at least 1.5 mm\n  rules/brakes/limits.yaml:5\n    1.6 mm ± 0.0001 mm: met\n    1.6 mm ± 0.1 mm: doubt\n    1.5 mm ± 0.0001 mm: doubt\n    1.4 mm ± 0.0001 mm: fault\n  by hand: nothing outside it; inside");
        // Where the line is broken depends on how long the name of the folder is.
        assertThat(run.out().replaceAll("\\s+", " ")).contains("fault by hand: nothing outside it; inside " + file + ":3 ");
    }

    @Test
    void aScenarioWhoseKeywordIsMisspeltIsNotPassedOver() throws IOException {
        Path file = Files.writeString(folder.resolve("pads.feature"), "Feature: Pads\n\n  Scenrio: worn\n    Given a motorcycle with one hydraulic disc in front and a rod drum behind\n    Then brakes.pad-thickness is missing\n"
                + "\n  Scenario: read\n    Given a motorcycle with one hydraulic disc in front and a rod drum behind\n    Then brakes.pad-thickness is missing\n");
        Run run = Run.of("rehearse", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(file + ":4: 'Given a motorcycle with one hydraulic disc in front and a rod drum behind' stands in no scenario and would be passed over. Begin one above it with Scenario: or Scenario Outline: and its name\n");
    }

    @Test
    void aTagThatIsNoCheckIsRefused() throws IOException {
        Path file = Files.writeString(folder.resolve("pads.feature"), "Feature: Pads\n\n  @brakes.pad-thicknes\n  Scenario: read\n    Given a motorcycle with one hydraulic disc in front and a rod drum behind\n    Then brakes.pad-thickness is missing\n");
        Run run = Run.of("rehearse", file.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEqualTo(file + ":3: the tag '@brakes.pad-thicknes' names no check. Did you mean @brakes.pad-thickness?\n");
    }

    @Test
    void aShakeOfMeaningTriesTheFieldsOfTheCardAsWell() throws IOException {
        String file = feature(MACHINE, "Then brakes.pad-thickness is missing\nAnd it holds road-test, hand-over and no other gate\n");
        Run run = Run.of("rehearse", file, "--shake", "--meaning", "--of", "brakes.pad-thickness");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("NOT NOTICED: brakes.pad-thickness: critical: no\n").doesNotContain("gates without road-test");
        assertThat(Run.of("rehearse", file, "--meaning").err()).startsWith("--meaning goes with --shake.");
    }

    @Test
    void aShakeNamesEveryChangeNobodyNotices() throws IOException {
        String file = feature(MACHINE, "And the territory is DE\n", "And front-brake/caliper/inner-pad measured thickness 1.5 mm ± 0.1 mm\n", "Then brakes.pad-thickness is doubt at front-brake/caliper/inner-pad\n");
        Run run = Run.of("rehearse", file, "--shake", "--of", "brakes.pad-thickness");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).contains("NOT NOTICED: brakes.pad-thickness: 1.5 mm becomes 1.4 mm\n  rules/brakes/limits.yaml:5\n  write: a reading between 1.5 mm and 1.4 mm, one end included\n")
                .doesNotContain("brakes.pad-thickness: 1.5 mm becomes 1.6 mm\n", "brakes.pad-thickness: exactly 1.5 mm fails instead of passing\n", "brakes.pad-thickness: rule left out");
    }
}
