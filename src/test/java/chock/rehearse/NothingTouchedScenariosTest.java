package chock.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Assessor;
import chock.rulebook.RuleBook;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * What is settled without the rules comes to what the rules come to, on the record of every scenario: each was written for
 * something that a rule says. Every build tries those of the general reasoning and of records, {@code -Dchock.shake=cards} all.
 */
class NothingTouchedScenariosTest {
    private static final List<String> TRIED = System.getProperty("chock.shake") == null ? List.of("features/evidence", "features/record") : List.of("features");
    private static final RuleBook BOOK = RuleBook.shipped();
    /** On trial every check goes through the rules. */
    private static final RuleBook BY_THE_RULES = BOOK.without("no such rule");

    @Test
    void theRulesComeToTheSame() {
        List<Scenario> scenarios = Rehearsal.run(BOOK, TRIED, null, null).scenarios();
        assertThat(scenarios).hasSizeGreaterThan(400);
        List<String> otherwise = scenarios.stream().filter(scenario -> !told(scenario, BOOK).equals(told(scenario, BY_THE_RULES))).map(scenario -> scenario.place() + ": " + scenario.name()).toList();
        assertThat(otherwise).isEmpty();
    }

    private static List<Object> told(Scenario scenario, RuleBook book) {
        return List.copyOf(Assessor.assess(scenario.record(), book.withPlans(null, null).at(scenario.workshop()), List.copyOf(scenario.gates()), scenario.asOf()).gates());
    }
}
