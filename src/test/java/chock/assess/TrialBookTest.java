package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A rule book changed for trial judges by the change, and never passes for the real one. */
class TrialBookTest {
    private static final Instant DAY = Instant.parse("2026-11-25T13:00:00Z");

    private static GateVerdict roadTest(RuleBook book) throws IOException {
        JobRecord record = RecordReader.read("lark", Examples.bytes("lark-released.yaml"), Examples.BOOK.vocabulary(), DAY);
        return Assessor.assess(record, book, List.of(Gate.ROAD_TEST), DAY).gates().get(0);
    }

    private static Limit thickPads(Limit limit) {
        return !limit.id().equals("brakes.pad-thickness") ? limit
                : new Limit(limit.id(), limit.of(), limit.sense(), new Quantity(new BigDecimal(50), Unit.MM), limit.upper(), limit.passesAtLimit(), limit.resolution(), limit.from(),
                        limit.registeredFrom(), limit.registeredBefore(), limit.fasterThan(), limit.largerThan(), limit.source(), limit.reviewed(), limit.maker(), limit.local(), limit.territory(), limit.file(), limit.line());
    }

    @Test
    void aChangedLimitDecides() throws IOException {
        RuleBook changed = Examples.BOOK.with(TrialBookTest::thickPads);
        assertThat(roadTest(Examples.BOOK).released()).isTrue();
        assertThat(roadTest(changed).findings()).filteredOn(f -> f.state() != State.MET).extracting(Finding::check).containsExactly("brakes.pad-thickness");
        assertThat(changed.digest()).isEqualTo("changed for trial, from " + Examples.BOOK.digest());
    }

    @Test
    void aRuleAsleepLeavesItsCheckUnasked() throws IOException {
        RuleBook changed = Examples.BOOK.without("brakes.pad-thickness");
        assertThat(roadTest(changed).notApplicable()).extracting(GateVerdict.NotApplicable::check).contains("brakes.pad-thickness");
        assertThat(roadTest(changed).findings()).extracting(Finding::check).doesNotContain("brakes.pad-thickness");
        assertThat(changed.digest()).startsWith("changed for trial");
    }
}
