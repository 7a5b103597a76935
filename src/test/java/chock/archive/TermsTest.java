package chock.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.signoff.RulePack;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** What an archive is judged by, sent to another machine. */
class TermsTest {
    private static final Path HOUSE = Path.of("docs/examples/house");
    private static final Path FORMER = Path.of("src/test/resources/signoff/rule-book-v1");
    private static final Instant SIGNED = Instant.parse("2026-11-30T12:00:00Z");

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
        Terms terms = new Terms("2026-11-25T12:00", List.of("road-test"), null, Terms.House.of(house), List.of("tyres.age=8y"));
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

    /** What is sent when a rule book is named: the one kept as a file of its form, with the trust list beside it. */
    private static SignedRules rules(UnaryOperator<String> pack, UnaryOperator<String> trust, Instant at) throws IOException {
        return new SignedRules("former.rules", pack.apply(Files.readString(FORMER.resolve("former.rules"))), "trust.json", trust.apply(Files.readString(FORMER.resolve("trust.json"))), at);
    }

    private static Terms by(SignedRules rules, Terms.House house) {
        return new Terms("2026-11-25T12:00", List.of(), rules, house, List.of());
    }

    @Test
    void a_rule_book_that_is_sent_is_checked_again_and_loaded_there() throws IOException, ClassNotFoundException {
        Terms there = sent(by(rules(same -> same, same -> same, SIGNED), null));
        assertThat(there).as("one rule book for all partitions of a process").isEqualTo(by(rules(same -> same, same -> same, SIGNED), null)).hasSameHashCodeAs(by(rules(same -> same, same -> same, SIGNED), null));
        RulePack pack = there.rules().open();
        assertThat(pack.digest()).endsWith(Files.readString(FORMER.resolve("digest.txt")).strip());
        assertThat(pack.digest()).isNotEqualTo(RuleBook.shipped().digest());
    }

    @Test
    void a_rule_book_that_was_altered_on_the_way_or_is_not_by_a_trusted_author_is_not_read() throws IOException {
        refused(rules(text -> text.substring(0, 200) + (text.charAt(200) == 'A' ? 'B' : 'A') + text.substring(201), same -> same, SIGNED), "invalid signature: altered since ");
        refused(rules(same -> same, text -> text.replace("\"lead\"", "\"inspector\"").replace("\"author\"", "\"inspector\""), SIGNED), " (inspector); contents not read");
        refused(rules(same -> same, text -> "{\"chock\": \"trust/1\", \"keys\": []}", SIGNED), "which is not trusted now; contents not read");
        refused(rules(same -> same, same -> same, SIGNED.plus(Duration.ofDays(36_600))), "which is not trusted now; contents not read");
        refused(rules(text -> "no rule book", same -> same, SIGNED), "former.rules: not a packed rule book");
        refused(rules(same -> same, text -> "no list", SIGNED), "trust.json");
    }

    private static void refused(SignedRules rules, String why) {
        assertThatThrownBy(() -> by(rules, null).inForce()).isInstanceOf(UnusableInput.class).hasMessageContaining(why);
        assertThatThrownBy(() -> by(rules, null).judging()).as("before it is compiled").isInstanceOf(UnusableInput.class).hasMessageContaining(why);
    }

    @Test
    void without_a_house_or_limits_they_are_the_shipped_rule_book() {
        Terms.InForce rules = new Terms("2026-11-25T12:00", List.of(), null, null, List.of()).inForce();
        assertThat(rules.book()).isSameAs(RuleBook.shipped());
        assertThat(rules.changes()).isEmpty();
        assertThat(new Terms("2026-11-25T12:00", List.of(), null, null, List.of()).asked()).isNull();
    }

    @Test
    void what_is_asked_badly_is_refused() {
        assertThatThrownBy(() -> new Terms("now", List.of(), null, null, List.of()).moment()).isInstanceOf(UnusableInput.class).hasMessage("--as-of: 'now' is not a date and time. " + AsOf.ADVICE);
        assertThatThrownBy(() -> new Terms("2026-11-25T12:00", List.of("door"), null, null, List.of()).asked()).isInstanceOf(UnusableInput.class).hasMessage("--gate: there is no gate 'door'");
        assertThatThrownBy(() -> new Terms("2026-11-25T12:00", List.of(), null, null, List.of("tyres.age=8mm")).inForce()).isInstanceOf(UnusableInput.class).hasMessageContaining("--set: tyres.age is 10 y now");
    }
}
