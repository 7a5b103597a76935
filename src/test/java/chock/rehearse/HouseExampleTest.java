package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.Source;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example house does what its page says, and a house can do no more than it may. */
class HouseExampleTest {
    private static final Path EXAMPLE = Path.of("docs/examples/house");
    private static final Path RULES = Path.of("src/test/resources/house/rules");
    private static final Instant DAY = Instant.parse("2026-11-25T13:00:00Z");
    private static final RuleBook SHIPPED = RuleBook.shipped();
    private static final RuleBook HOUSE = SHIPPED.with(HouseBook.read(EXAMPLE));

    private static Assessment judged(RuleBook book, String example, Gate... gates) throws IOException {
        JobRecord record = RecordReader.read(example, Files.readAllBytes(Path.of("docs/examples", example)), book.vocabulary(), DAY);
        return Assessor.assess(record, book, List.of(gates), DAY);
    }

    @Test
    void itsScenariosHold() throws IOException {
        assertThat(Spoken.against(HOUSE, HouseBook.read(EXAMPLE).features())).isEmpty();
    }

    @Test
    void itsScenariosWouldNoticeThatTheHouseIsNotInForce() throws IOException {
        assertThat(Spoken.against(SHIPPED, HouseBook.read(EXAMPLE).features())).isNotEmpty();
    }

    @Test
    void aReleasedMachineIsHeldByTheHouseAloneAndEveryOtherFindingStands() throws IOException {
        Assessment before = judged(SHIPPED, "lark-released.yaml", Gate.ROAD_TEST);
        Assessment after = judged(HOUSE, "lark-released.yaml", Gate.ROAD_TEST);
        assertThat(before.gates().get(0).released()).isTrue();
        assertThat(after.gates().get(0).released()).isFalse();
        assertThat(before.house()).isNull();
        assertThat(after.house().name()).isEqualTo("Hollow Vale house rules");
        assertThat(after.ruleBookDigest()).startsWith("sha256:").isNotEqualTo(before.ruleBookDigest()).isNotEqualTo(after.house().digest());
        Set<String> open = after.gates().get(0).findings().stream().filter(f -> f.state() != chock.assess.State.MET).map(Finding::check).collect(Collectors.toSet());
        assertThat(open).contains("house.cam-lever-photo").isSubsetOf("house.cam-lever-photo", "brakes.pad-thickness");
        assertThat(after.gates().get(0).findings().stream().map(Finding::check)).containsAll(before.gates().get(0).findings().stream().map(Finding::check).toList());
    }

    @Test
    void theFindingNamesTheHouseAndTheOthers() throws IOException {
        Finding pads = judged(HOUSE, "lark-released.yaml", Gate.ROAD_TEST).gates().get(0).findings().stream().filter(f -> f.check().equals("brakes.pad-thickness")).findFirst().orElseThrow();
        assertThat(pads.limit().source().kind()).isEqualTo(Source.Kind.HOUSE);
        assertThat(pads.limit().words()).isEqualTo("at least 2.5 mm (house: Hollow Vale house rules, Ida Marrow 2026-11-25: pads wear fast on the hill to the ford, and the next look is months away)");
        assertThat(pads.limit().others()).anyMatch(other -> other.contains("1.5 mm"));
    }

    @Test
    void theDigestIsThatOfWhatDecides() throws IOException {
        HouseBook read = HouseBook.read(EXAMPLE);
        assertThat(read.digest()).matches("sha256:[0-9a-f]{64}").isEqualTo(HouseBook.read(EXAMPLE).digest());
        assertThat(HouseBook.read(RULES.resolve("sound-with-rules")).digest()).isNotEqualTo(read.digest());
        assertThat(read.files().keySet()).containsExactly("checks.yaml", "house.yaml", "limits.yaml");
    }

    @Test
    void aRuleOfTheHouseIsCompiledWhenTheHouseIsNamed() throws IOException {
        RuleBook book = SHIPPED.with(HouseBook.read(RULES.resolve("sound-with-rules")));
        Assessment judged = judged(book, "lark-released.yaml", Gate.ROAD_TEST);
        assertThat(judged.gates().get(0).findings()).filteredOn(f -> f.check().equals("house.cam-lever-photo")).hasSize(1)
                .allMatch(f -> f.state() == chock.assess.State.MISSING);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            releases-a-shipped-check | the rule "house.cam-lever-photo-waves-through" puts down a Outcome. A rule of a house inserts Required, Derived or Note, for checks of the house.
            takes-evidence-away      | the rule "house.cam-lever-photo-tidies" takes away what others put down. A house only adds; leave that fact alone.
            asks-at-another-place    | the rule "house.cam-lever-photo" asks for house.cam-lever-photo at rear-brake/shoes, and its card says rear-brake/cam-lever
            breaks-off               | the rule "house.cam-lever-photo" breaks off: java.lang.StringIndexOutOfBoundsException
            """)
    void aRuleOfTheHouseThatDoesMoreThanItMayIsStopped(String folder, String message) {
        RuleBook book = SHIPPED.with(HouseBook.read(RULES.resolve(folder)));
        assertThatThrownBy(() -> judged(book, "lark-released.yaml", Gate.ROAD_TEST)).isInstanceOf(UnusableInput.class)
                .hasMessageStartingWith(RULES.resolve(folder).toString()).hasMessageContaining(message);
    }
}
