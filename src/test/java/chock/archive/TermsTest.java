package chock.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What an archive is judged by, sent to another machine. */
class TermsTest {
    private static final Path HOUSE = Path.of("docs/examples/house");

    private static Terms sent(Terms terms) throws IOException, ClassNotFoundException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
            out.writeObject(terms);
        }
        try (ObjectInputStream in = new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
            return (Terms) in.readObject();
        }
    }

    @Test
    void there_they_make_the_same_rule_book() throws IOException, ClassNotFoundException {
        HouseBook house = HouseBook.read(HOUSE);
        Terms terms = new Terms("2026-11-25T12:00", List.of("road-test"), Terms.House.of(house), List.of("tyres.age=8y"));
        Terms there = sent(terms);
        assertThat(there).isEqualTo(terms);
        Terms.InForce rules = there.inForce();
        assertThat(rules.book().house().orElseThrow().digest()).isEqualTo(house.digest());
        assertThat(rules.book().digest()).isEqualTo("changed for trial, from " + RuleBook.shipped().with(house).digest());
        assertThat(rules.changes()).hasSize(2);
        assertThat(rules.changes().get(0)).contains(house.name());
        assertThat(rules.changes().get(1)).isEqualTo("tyres.age: 8 y instead of 10 y");
        assertThat(there.asked()).containsExactly(Gate.ROAD_TEST);
        assertThat(there.moment()).isEqualTo(AsOf.read("2026-11-25T12:00").orElseThrow());
    }

    @Test
    void without_a_house_or_limits_they_are_the_shipped_rule_book() {
        Terms.InForce rules = new Terms("2026-11-25T12:00", List.of(), null, List.of()).inForce();
        assertThat(rules.book()).isSameAs(RuleBook.shipped());
        assertThat(rules.changes()).isEmpty();
        assertThat(new Terms("2026-11-25T12:00", List.of(), null, List.of()).asked()).isNull();
    }

    @Test
    void what_is_asked_badly_is_refused() {
        assertThatThrownBy(() -> new Terms("now", List.of(), null, List.of()).moment()).isInstanceOf(UnusableInput.class).hasMessage("--as-of: 'now' is not a date and time. " + AsOf.ADVICE);
        assertThatThrownBy(() -> new Terms("2026-11-25T12:00", List.of("door"), null, List.of()).asked()).isInstanceOf(UnusableInput.class).hasMessage("--gate: there is no gate 'door'");
        assertThatThrownBy(() -> new Terms("2026-11-25T12:00", List.of(), null, List.of("tyres.age=8mm")).inForce()).isInstanceOf(UnusableInput.class).hasMessageContaining("--set: tyres.age is 10 y now");
    }
}
