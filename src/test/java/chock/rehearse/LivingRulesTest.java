package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.rulebook.RuleBook;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every scenario below {@code features/}, or below the folders named in {@code chock.features}. */
class LivingRulesTest {
    @TestFactory
    Stream<DynamicTest> everyScenario() {
        Rehearsed rehearsed = Rehearsal.run(RuleBook.shipped(), List.of(System.getProperty("chock.features", "features").split(",")), null, null);
        assertThat(rehearsed.shown()).as("scenarios that ran").isNotEmpty();
        return rehearsed.shown().stream().map(shown -> DynamicTest.dynamicTest(shown.file() + ":" + shown.line() + " " + shown.name(),
                () -> assertThat(shown.holds()).as(() -> shown.slips().stream().map(s -> s.line() + ": " + s.step() + ": " + s.found()).collect(Collectors.joining("\n"))).isTrue()));
    }
}
