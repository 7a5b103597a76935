package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

/** What is read out of a rule before it is used: whether it asks, and of which checks it speaks. */
class RuleReadingTest {

    private static RuleKinds read(String space, String conditions, String conclusion) {
        return RuleReading.of(Map.of("some.drl", """
                package %s;
                import chock.assess.facts.*;
                rule "some.rule"
                when
                  %s
                then
                  %s
                end
                """.formatted(space, conditions, conclusion)));
    }

    private static RuleKinds read(String conditions, String conclusion) {
        return read("rules.some", conditions, conclusion);
    }

    private static final String ASKS = "insertLogical(new Required(\"some.check\", \"machine\"));";
    private static final String NOTES = "insertLogical(new Note($r, \"so it is\"));";

    @Test
    void aRuleAboutTheMachineAsks() {
        assertThat(read("MachineFact()\n  not BrakeFact(end == \"front\")", ASKS).asking())
                .containsExactly("some.rule");
        assertThat(read("MachineFact(seats > 1)\n  Requirements(!exemptByLaw(\"x\"))", ASKS).asking())
                .containsExactly("some.rule");
    }

    @Test
    void aRuleAboutEntriesDoesNotAskByDescription() {
        assertThat(read("Work(entry.what == \"opened\")", ASKS).asking()).isEmpty();
        assertThat(read("MachineFact()\n  not Correction()", ASKS).asking()).isEmpty();
        assertThat(read("MachineFact()\n  exists (Work() and Correction())", ASKS).asking()).isEmpty();
        assertThat(read("MachineFact()\n  $w : Work() from $book.works()", ASKS).asking()).isEmpty();
    }

    @Test
    void aRuleThatConcludesOtherThingsDoesNotAsk() {
        assertThat(read("MachineFact()", "insertLogical(Derived.met(null, \"good\"));").asking()).isEmpty();
        assertThat(read("MachineFact()", ASKS + " insertLogical(new Lift(\"a\", \"b\"));").asking()).isEmpty();
    }

    /** The machine's day and manual are not its description. */
    @Test
    void aRuleAboutLimitsDoesNotAskByDescription() {
        assertThat(read("MachineFact()\n  Requirements(!lacksLimit(null))", ASKS).asking()).isEmpty();
        assertThat(read("$b : Requirements()\n  String() from $b.rareDescription()", ASKS).asking()).isEmpty();
    }

    @Test
    void whatIsAskedMayNotDependOnWhatIsNotAsked() {
        assertThatThrownBy(() -> read("MachineFact()\n  not Required(check == \"other.check\")", ASKS))
                .isInstanceOf(RuleCompiler.NotCompiled.class)
                .hasMessageContaining("some.drl:3: rule some.rule asks because something else is not asked")
                .hasMessageContaining("Write the condition on the machine instead");
    }

    @Test
    void aHouseRuleIsReadAmongThoseAboutEntries() {
        assertThat(read("rules.house", "MachineFact()", "insertLogical(new Required(\"house.x\", \"machine\"));")
                .asking())
                .isEmpty();
    }

    @Test
    void aRuleThatNeedsAnEntrySpeaksOfNothingUnwritten() {
        assertThat(read("$r : Required(check == \"some.check\")\n  Current(required == $r)", NOTES).speaking())
                .isEmpty();
        assertThat(read("not Outcome(required.check == \"some.check\", state == State.MET)", NOTES).speaking())
                .isEmpty();
    }

    @Test
    void aRuleThatNeedsNoEntrySpeaksOfItsChecks() {
        assertThat(read("$r : Required(check in (\"a.a\", \"b.b\"))\n  MachineFact(seats > 1)", NOTES).speaking())
                .containsExactlyInAnyOrder("a.a", "b.b");
        assertThat(read("$r : Required(check == \"a.a\")\n  not Current(required == $r)", NOTES).speaking())
                .containsExactly("a.a");
        assertThat(read("not Required(check == \"a.a\")\n  Work()", NOTES).speaking()).containsExactly("a.a");
        assertThat(read("Lack(required.check == \"a.a\")", NOTES).speaking()).containsExactly("a.a");
        assertThat(read("Outcome(required.check == \"a.a\", state == State.MISSING)", NOTES).speaking())
                .containsExactly("a.a");
    }

    /** Then every check is reasoned about, whether anything was written or not. */
    @Test
    void aRuleAboutAnyCheckSpeaksOfAll() {
        assertThat(read("$r : Required()\n  MachineFact(seats > 1)", NOTES).speaking())
                .containsExactly(RuleKinds.EVERY);
        assertThat(read("rules.house", "not Wanted(key == \"machine x\")", NOTES).speaking())
                .containsExactly(RuleKinds.EVERY);
        assertThat(read("$r : Required(check == \"a.a\")\n  Current(required == $r)", NOTES).and(
                read("$r : Required()", NOTES)).speaksOf("b.b")).isTrue();
    }

    @Test
    void aRuleNamesTheChecksItLooksAtOrConcludesAnythingOf() {
        assertThat(read("$r : Required(check == \"a.a\")\n  Current(required == $r)\n  not Outcome(required.check == \"b.b\")",
                "insertLogical(new Required(\"c.c\", \"machine\"));").naming()).containsExactlyInAnyOrder("a.a", "b.b", "c.c");
        assertThat(read("MachineFact()", ASKS).naming()).as("what asks by the description looks at no reading").isEmpty();
        assertThat(read("rules.evidence", "$r : Required(check == \"a.a\")\n  Current(required == $r)", NOTES).naming())
                .as("general rules are answered for one by one").isEmpty();
    }

    /** Then no check is settled without the rules. */
    @Test
    void aRuleAboutReadingsOfAnyCheckNamesAll() {
        for (String any : new String[] {"Current()", "Judgement(state == State.MET)", "Standing($w : wanted)", "Outcome()",
            "$c : Current()\n  Standing(wanted == $c.wanted)", "Standing($w : wanted)\n  not Standing(wanted == $w)"}) {
            assertThat(read(any, NOTES).naming()).as(any).containsExactly(RuleKinds.EVERY);
        }
        for (String none : new String[] {"Judgement(state == State.FAULT)", "Standing($w : wanted)\n  Standing(wanted == $w)",
            "Evidence(impossible())", "Work()"}) {
            assertThat(read(none, NOTES).naming()).as(none).isEmpty();
        }
        assertThat(read("rules.house", "not Wanted(key == \"machine x\")", NOTES).naming())
                .containsExactly(RuleKinds.EVERY);
    }

    @Test
    void whatIsReadIsKeptAsText() {
        RuleKinds asks = read("MachineFact()", ASKS).and(read("$r : Required(check == \"a.a\")", NOTES));
        assertThat(RuleKinds.read(asks.text())).isEqualTo(asks);
    }
}
