package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TrialTest {
    private static final RuleBook BOOK = RuleBook.shipped();

    @Test
    void changesTheLimitAndNothingElse() {
        RuleBook tried = BOOK.with(Trial.read("tyres.age = 8y", BOOK).change());
        assertThat(tried.limitsNamed("tyres.age")).extracting(Limit::value).extracting(Object::toString).containsExactly("8 y");
        assertThat(tried.limits()).filteredOn(l -> !l.id().equals("tyres.age")).isEqualTo(BOOK.limits().stream().filter(l -> !l.id().equals("tyres.age")).toList());
        assertThat(Trial.read("tyres.age=8y", BOOK).words()).isEqualTo("tyres.age: 8 y instead of 10 y");
    }

    @Test
    void leavesTheLawAsItIs() {
        RuleBook tried = BOOK.with(Trial.read("brakes.shoe-lining=9 mm", BOOK).change());
        assertThat(tried.limitsNamed("brakes.shoe-lining")).filteredOn(l -> l.territory() != null).hasSizeGreaterThan(1).noneMatch(l -> l.value().toString().equals("9 mm"));
        assertThat(tried.limits()).filteredOn(l -> l.id().equals("brakes.shoe-lining")).allMatch(l -> l.value().toString().equals("9 mm"));
    }

    @Test
    void readsBothEnds() {
        Trial trial = Trial.read("electrics.charging-voltage-12=13.8 V to 14.8 V", BOOK);
        assertThat(BOOK.with(trial.change()).limitsNamed("electrics.charging-voltage-12").get(0).bounds().words()).isEqualTo("between 13.8 V and 14.8 V");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "tyres.agee=8y|there is no limit 'tyres.agee'. Did you mean tyres.age",
        "nothing.here=8y|there is no limit 'nothing.here'. 'chock rules' shows the limits of each check.",
        "tyres.age=8 mm|tyres.age is 10 y now, and 8 mm is of another kind: give it in a unit of age",
        "tyres.age=8|the unit is missing",
        "tyres.age=2.11y|tyres.age: 2.11 y is no whole number of months, and ages are counted in months",
        "tyres.age|'tyres.age': write a limit and its value, such as tyres.age=8y",
        "tyres.age=1y to 2y|tyres.age has one value, 10 y: write one, such as tyres.age=10 y",
        "electrics.charging-voltage-12=14 V|electrics.charging-voltage-12 has two ends, between 13.5 V and 15.0 V: write the lower and the higher, such as electrics.charging-voltage-12=13.5 V to 15.0 V",
        "electrics.charging-voltage-12=15 V to 14 V|electrics.charging-voltage-12 has two ends"})
    void refuses(String written, String says) {
        assertThatThrownBy(() -> Trial.read(written, BOOK)).isInstanceOf(IllegalArgumentException.class).hasMessageContaining(says);
    }
}
