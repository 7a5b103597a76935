package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.Explanation.AtPlace;
import chock.assess.Explanation.Considered;
import chock.assess.Explanation.Fate;
import chock.record.Gate;
import chock.record.JobRecord;
import java.io.IOException;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ExplainerTest {

    private static Explanation why(String record, String check) throws IOException {
        return Explainer.explain(Examples.read(record), Examples.BOOK, List.of(check), Examples.DAY).get(0);
    }

    @Test
    void whatWorkUndidIsSetAsideByThatWork() throws IOException {
        AtPlace hydraulic = why("lark-worked-on-after.yaml", "brakes.bled").places().get(0);
        assertThat(hydraulic.state()).isEqualTo(State.STALE);
        Considered bled = hydraulic.wants().get(0).considered().get(0);
        assertThat(bled.fate()).isEqualTo(Fate.SET_ASIDE);
        assertThat(bled.why()).contains("undone by 'refitted' on front brake, hydraulic 2026-11-25 11:50 by Tom Fell (w4)");
        assertThat(hydraulic.lacks()).containsExactly("bled was entered before and no longer counts");
        assertThat(hydraulic.compared()).isEmpty();
    }

    @Test
    void aFaultShowsTheLimitsThatCompetedAndTheMargin() throws IOException {
        AtPlace pad = why("lark-faults.yaml", "brakes.pad-thickness").places().get(0);
        assertThat(pad.state()).isEqualTo(State.FAULT);
        assertThat(pad.rule()).isEqualTo("brakes.pad-thickness");
        assertThat(pad.because()).anyMatch(f -> f.startsWith("pad: end front")).anyMatch(f -> f.contains("type disc") && f.contains("lining bonded"));
        assertThat(pad.limit()).startsWith("at least 1.5 mm (MOT inspection manual: motorcycles");
        assertThat(pad.others()).containsExactly("also at least 1.5 mm (common practice)");
        assertThat(pad.compared()).singleElement().satisfies(c -> assertThat(c.margin()).isEqualTo("outside by 0.3 mm, uncertainty 0.06 mm"));
        assertThat(pad.wants().get(0).considered().get(0).fate()).isEqualTo(Fate.DECIDES);
    }

    @Test
    void aDerivedValueNamesTheRuleThatWorkedItOut() throws IOException {
        AtPlace tyre = why("lark-released.yaml", "tyres.age").places().get(0);
        assertThat(tyre.state()).isEqualTo(State.MET);
        assertThat(tyre.compared()).singleElement().satisfies(c -> assertThat(c.how()).isEqualTo("tyres.age-week"));
    }

    @Test
    void whatDoesNotApplyHasNoPlace() throws IOException {
        assertThat(why("lark-released.yaml", "transmission.belt").places()).isEmpty();
    }

    /** Every check of every example: the same places in the same states, each with its grounds, and every entry the finding rests on decides. */
    @ParameterizedTest
    @ValueSource(strings = {"merle-released.yaml", "lark-faults.yaml", "lark-worked-on-after.yaml", "lark-gaps.yaml", "lark-too-close.yaml"})
    void agreesWithTheFindings(String name) throws IOException {
        JobRecord record = Examples.read(name);
        List<Finding> findings = Assessor.assess(record, Examples.BOOK, List.of(Gate.values()), Examples.DAY).gates().stream().flatMap(g -> g.findings().stream()).toList();
        List<Explanation> all = Explainer.explain(record, Examples.BOOK, findings.stream().map(Finding::check).distinct().toList(), Examples.DAY);
        assertThat(all).hasSizeGreaterThan(150);
        for (Explanation explanation : all) {
            Finding finding = findings.stream().filter(f -> f.check().equals(explanation.check())).findFirst().orElseThrow();
            assertThat(explanation.places()).extracting(p -> p.point() + " " + p.state()).as(explanation.check())
                    .containsExactlyInAnyOrderElementsOf(finding.places().stream().map(p -> p.point() + " " + p.state()).toList());
            for (AtPlace place : explanation.places()) {
                assertThat(place.rule()).as("the rule that asks " + explanation.check()).startsWith(explanation.check());
                TreeSet<String> deciding = new TreeSet<>();
                place.wants().forEach(w -> w.considered().stream().filter(c -> c.fate() == Fate.DECIDES).forEach(c -> deciding.add(c.entry())));
                place.wants().forEach(w -> w.considered().stream().filter(c -> c.fate() == Fate.SET_ASIDE).forEach(c -> assertThat(c.why()).as("why " + c.entry() + " is set aside").isNotEmpty()));
                if (place.state() == State.MET && !place.wants().isEmpty()) {
                    assertThat(deciding).as(explanation.check() + " is met by entries that decide").isNotEmpty();
                }
            }
        }
    }
}
