package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import org.junit.jupiter.api.Test;

/** A house named on the command line, and limits nobody looked up again, as every report tells them. */
class HouseCommandsTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String HOUSE = "docs/examples/house";
    private static final String RECORD = "docs/examples/lark-released.yaml";

    private static Run assess(String... more) {
        String[] args = new String[more.length + 4];
        System.arraycopy(new String[] {"assess", "--gate", "road-test", RECORD}, 0, args, 0, 4);
        System.arraycopy(more, 0, args, 4, more.length);
        return Run.of(args);
    }

    @Test
    void everyReportNamesTheHouseOrNone() throws Exception {
        assertThat(assess("--as-of", "2026-11-25T13:00").out()).contains("House:      none\n").doesNotContain("Review:");
        Run text = assess("--as-of", "2026-11-25T13:00", "--house", HOUSE);
        assertThat(text.status()).isEqualTo(1);
        assertThat(text.out()).containsPattern("House:      Hollow Vale house rules\n  sha256:[0-9a-f]{64}\n").contains("house.cam-lever-photo");
        JsonNode none = JSON.readTree(assess("--as-of", "2026-11-25T13:00", "--format", "json").out()).get(0);
        assertThat(none.at("/rulebook/house").isNull()).isTrue();
        assertThat(none.get("overdue")).isEmpty();
        JsonNode house = JSON.readTree(assess("--as-of", "2026-11-25T13:00", "--format", "json", "--house", HOUSE).out()).get(0);
        assertThat(house.at("/rulebook/house/name").textValue()).isEqualTo("Hollow Vale house rules");
        assertThat(house.at("/rulebook/house/digest").textValue()).startsWith("sha256:");
        assertThat(assess("--as-of", "2026-11-25T13:00", "--format", "html").out()).contains("<strong>House: </strong>none</p>");
        assertThat(assess("--as-of", "2026-11-25T13:00", "--format", "html", "--house", HOUSE).out()).contains("<strong>House: </strong>Hollow Vale house rules, <code>sha256:");
    }

    @Test
    void everyReportWarnsOfLimitsNobodyLookedUpAgain() throws Exception {
        assertThat(assess("--as-of", "2029-11-25T13:00").out()).containsPattern("Review:     \\d+ limits this rests on were due to be looked up again, the first by\\s+2028-11-25");
        JsonNode overdue = JSON.readTree(assess("--as-of", "2029-11-25T13:00", "--format", "json").out()).get(0).get("overdue");
        assertThat(overdue).isNotEmpty().anyMatch(o -> o.get("due").textValue().equals("2028-11-25"))
                .allMatch(o -> java.time.LocalDate.parse(o.get("reviewed").textValue()).plusYears(2).toString().equals(o.get("due").textValue()));
        assertThat(assess("--as-of", "2029-11-25T13:00", "--format", "html").out()).contains("<strong>Review: </strong>" + overdue.size() + " limits this rests on");
    }

    @Test
    void aHouseThatIsNotSoundIsRefusedAndNothingIsJudged() {
        Run run = assess("--as-of", "2026-11-25T13:00", "--house", "src/test/resources/house/refused/limit-looser");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("limits.yaml:4: [0].value: at least 1.2 mm is looser than at least 1.5 mm (rules/brakes/limits.yaml:5)");
        Run unruly = assess("--as-of", "2026-11-25T13:00", "--house", "src/test/resources/house/rules/takes-evidence-away");
        assertThat(unruly.status()).isEqualTo(2);
        assertThat(unruly.err()).contains("takes away what others put down");
    }

    @Test
    void theCatalogueShowsTheHouseAndWhatIsOverdue() throws Exception {
        assertThat(Run.of("rules").out()).contains("House: none\n");
        assertThat(Run.of("rules", "--house", HOUSE).out()).contains("House: Hollow Vale house rules,\n       sha256:", "  house.cam-lever-photo");
        assertThat(Run.of("rules", "brakes.pad-thickness", "--house", HOUSE).out().replaceAll("\\s+", " ")).contains("this house: at least 2.5 mm (house: Hollow Vale house rules, Ida Marrow 2026-11-25: pads wear fast");
        assertThat(Run.of("rules", "--overdue", "--as-of", "2028-11-25").out()).isEqualTo("No limit is overdue on 2028-11-25.\n");
        Run late = Run.of("rules", "--overdue", "--as-of", "2028-11-26");
        assertThat(late.status()).isZero();
        assertThat(late.out()).contains("limits are overdue on 2028-11-26:", "GB brakes.pad-thickness, looked up 2026-11-25, due by 2028-11-25", "rules/codes/GB.yaml:");
        assertThat(JSON.readTree(Run.of("rules", "--overdue", "--as-of", "2028-11-26", "--format", "json").out()).get("overdue")).isNotEmpty();
        assertThat(Run.of("rules", "--overdue", "brakes.pad-thickness").err()).contains("--overdue lists all limits; leave the ID out.");
        assertThat(Run.of("rules", "--as-of", "2028-11-26").err()).contains("--as-of belongs to --overdue.");
        assertThat(Run.of("rules", "--overdue", "--as-of", "soon").err()).contains("'soon' is not a day; write 2026-11-25");
    }
}
