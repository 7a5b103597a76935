package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.quantity.Quantity;
import chock.record.UnusableInput;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A ride plan that is not sound keeps the whole rule book from loading, and says where and why. */
class RideSheetReaderTest {
    private static final String PLAN = """
            steps:
              - id: yard
                title: Walking pace
                up-to: {amount: 5 mph, source: {kind: practice}}
                do: [{say: Try the brakes., only: disc-brake}]
                feel: [{say: drag}]
              - id: look
                title: Stop and look
                do: [{say: Feel the hubs.}]
                feel: [{say: heat}]
            limits:
              - id: fresh
                because: It is fresh
                only: combustion
                after: [{work: [opened], place: "{end}-brake/pad"}]
                until: bled
                lines: [{step: yard, say: "Slow down {amount}.", amount: 8 times, source: {kind: practice}}]
              - id: old
                because: It is old
                check: record.licensed-inspection
                met-without: thickness
                up-to: {amount: 50 km/h, source: {kind: law, document: Example code, section: "4", known: read}}
                lines: [{say: no hurry}]
                back: [{say: Look again.}]
            stop: [{say: any wobble}]
            back: [{say: Look for leaks.}]
            """;
    private static final String CARD = """
            - id: record.licensed-inspection
              question: Is there enough?
              applies: every pad
              gates: [road-test]
              critical: yes
              dangers: [proof]
              place: "{end}-brake/pad"
              wants:
                - {seen: condition, good: [sound], bad: [worn]}
              holds: 12 months
              undone-by: []
              ends-by: work
              remedy: Fit new ones and measure again.
            """;

    // The compiled rules are the shipped ones; the one card here borrows an id they know.
    private static RuleBook load(String plan) {
        SortedMap<String, String> files = new TreeMap<>();
        files.put("book.yaml", "version: test\nreview-every: 2 years\nlongest-release: 30 days\ngates: [road-test]\n");
        files.put("evidence/dangers.yaml", "dangers:\n  fire: {what: petrol can burn, closes: [first-start]}\n  proof: {what: not known}\nunless:\n  tank-empty: {says: the tank is empty, shown-by: [{check: record.licensed-inspection}]}\n");
        files.put("evidence/words.yaml", "places: {end: [front, rear]}\ndisturbing: {opened: taken apart}\nother: {bled: freed of air}\npoints: [machine]\n");
        files.put("x/checks.yaml", CARD);
        if (plan != null) {
            files.put("roadtest/plan.yaml", plan);
        }
        return new RuleBookLoader().load(files, () -> RuleBook.shipped().rules());
    }

    @Test
    void aSoundPlanIsReadWithItsNumbersAndSources() {
        RideSheet sheet = load(PLAN).ride().orElseThrow();
        assertThat(sheet.steps()).extracting(RideSheet.Step::id).containsExactly("yard", "look");
        assertThat(sheet.steps().get(0).upTo().speed()).isEqualTo(Quantity.parse("5 mph"));
        assertThat(sheet.steps().get(0).doing().get(0).only()).isEqualTo(RideSheet.Only.DISC_BRAKE);
        assertThat(sheet.steps().get(1).upTo()).isNull();
        RideSheet.Restraint fresh = sheet.restraints().get(0);
        assertThat(fresh.after().get(0).points()).containsExactlyInAnyOrder("front-brake/pad", "rear-brake/pad");
        assertThat(fresh.lines().get(0).amount()).isEqualTo(Quantity.parse("8 times"));
        assertThat(fresh.lines().get(0).source().words()).isEqualTo("common practice");
        assertThat(sheet.restraints().get(1).upTo().source().words()).isEqualTo("Example code, 4, read in the official text");
        assertThat(sheet.stop()).hasSize(1);
        assertThat(sheet.back()).hasSize(1);
    }

    @Test
    void aBookWithoutAPlanLoadsAndHasNone() {
        assertThat(load(null).ride()).isEmpty();
        assertThat(RuleBook.shipped().ride()).isPresent();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            title: Walking pace            | title: Walking pace, 5 mph      | rules/roadtest/plan.yaml:3: steps[0].title: a number in the words has no source
            say: any wobble                | say: any wobble above 30        | stop[0].say: a number in the words has no source
            because: It is old             | because: It is 6 years old      | a number in the words has no source
            "Slow down {amount}."          | "Slow down."                    | does not say where the amount goes
            {say: drag}                    | {say: "drag {amount}"}          | speaks of an amount that is not given
            amount: 8 times, source: {kind: practice} | amount: 8 times      | [0].source: the key is missing. Add source:
            amount: 5 mph, source          | amount: 5 mm, source            | 5 mm is not a speed. Write it as 30 mph or 50 km/h.
            amount: 5 mph, source          | amount: 5, source               | the unit is missing
            only: disc-brake               | only: disc                      | 'disc': write one of combustion, electric, two-stroke
            id: look                       | id: yard                        | 'yard' stands twice
            id: old                        | id: fresh                       | 'fresh' stands twice
            work: [opened]                 | work: [bored]                   | 'bored' is not a known work. Known: bled, opened.
            work: [opened]                 | work: []                        | names no work
            until: bled                    | until: polished                 | 'polished' is not a known work
            "{end}-brake/pad"              | "{side}-brake/pad"              | '{side}' is not a known word for a place
            until: bled                    | colour: red                     | unknown key 'colour'
            until: bled                    | check: record.licensed-inspection | says not when it applies
            check: record.licensed-inspection | check: record.other          | no check is called 'record.other'
            met-without: thickness         | until: bled                     | says not when it applies
            step: yard                     | step: barn                      | there is no step 'barn' to do this at. Known: look, yard.
            stop: [{say: any wobble}]      | stop: []                        | a rider must know when to stop
            title: Walking pace            | title:                          | a text is wanted here
            feel: [{say: heat}]            | feel: heat                      | a list is wanted here
            """)
    void aWrongPlanIsRefused(String right, String wrong, String message) {
        assertThat(PLAN).contains(right);
        assertThatThrownBy(() -> load(PLAN.replace(right, wrong))).isInstanceOf(UnusableInput.class).hasMessageContaining(message);
    }

    @Test
    void aPlanWithoutStepsIsRefused() {
        assertThatThrownBy(() -> load("stop: [{say: any wobble}]\nback: [{say: Look.}]\n")).isInstanceOf(UnusableInput.class)
                .hasMessageContaining("a ride without steps is no plan");
        assertThatThrownBy(() -> load("")).isInstanceOf(UnusableInput.class).hasMessageContaining("the file is empty");
    }
}
