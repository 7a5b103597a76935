package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The steps explain themselves, and a line that is none of them leads to the one that was meant. */
class StepListTest {
    private final StepList list = StepList.known();

    @Test
    void everyStepIsShownByAnExampleThatIsThatStepAndNoOther() {
        assertThat(list.steps()).hasSizeGreaterThan(40).allSatisfy(step -> {
            assertThat(step.says()).endsWith(".");
            assertThat(list.steps()).as(step.example()).filteredOn(s -> s.matches(step.example())).containsExactly(step);
        });
    }

    @Test
    void everyWordInBracesIsShownByAnExampleOfItsForm() {
        assertThat(list.words()).hasSizeGreaterThan(10).allSatisfy((name, word) -> {
            assertThat(word.pattern().matcher(word.example()).matches()).as(name + ": " + word.example()).isTrue();
            assertThat(list.steps()).as("a step with {" + name + "}").anyMatch(s -> s.wording().contains("{" + name + "}"));
        });
    }

    @Test
    void aSlipOfThePenLeadsToTheStepWithTheWritersOwnWords() {
        assertThat(list.nearest("And", "the teritory is FR")).containsExactly("And the territory is FR");
        assertThat(list.nearest("And", "front-brake/caliper/inner-pad mesured thickness 3.1 mm ± 0.1 mm"))
                .containsExactly("And front-brake/caliper/inner-pad measured thickness 3.1 mm ± 0.1 mm");
        assertThat(list.nearest("Then", "tyres.age was met")).contains("Then tyres.age is met");
        assertThat(list.nearest("Then", "brakes.pad-thickness should be fault at front-brake/caliper/inner-pad"))
                .containsExactly("Then brakes.pad-thickness is fault at front-brake/caliper/inner-pad");
        assertThat(list.nearest("Then", "it say \"older\"")).contains("Then it says \"older\"");
    }

    @Test
    void whatIsNothingLikeAStepLeadsNowhere() {
        assertThat(list.nearest("When", "I press the big button on the left and wait")).isEmpty();
    }

    @Test
    void thePageOfStepsIsWhatTheStepsSay() throws IOException {
        Path page = Path.of("docs/steps.md");
        if (Boolean.getBoolean("chock.approve")) {
            Files.writeString(page, list.page());
        } else {
            assertThat(Files.exists(page) ? Files.readString(page) : "").as("%s is out of date; renew it with: mvn -B test -Dtest=StepListTest -DargLine=-Dchock.approve=true", page).isEqualTo(list.page());
        }
    }
}
