package chock.rehearse;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Finding;
import chock.quantity.Measured;
import chock.quantity.Unit;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Value;
import chock.record.Vocabulary.InstrumentKind;
import chock.rulebook.Coordinates;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.List;
import java.util.Set;

/**
 * A scenario as it was put together, so that it can be judged again by another rule book.
 *
 * @param place file and line, such as {@code features/brakes/disc-and-drum.feature:12}
 * @param name its name
 * @param record the job record its steps made
 * @param asOf the moment of judgement
 * @param byTable ids of the readings whose uncertainty comes from the table of instruments
 * @param workshop where the workshop is, or null
 * @param gates the gates its expectations need
 * @param expected what it expects, in order
 * @param found what was found of the checks it speaks of, at every place
 */
record Scenario(String place, String name, JobRecord record, Set<String> byTable, Instant asOf, Coordinates workshop, Set<Gate> gates, List<Expected> expected, List<Place> found) {

    /** The finding on a check at one place. */
    record Place(String check, Finding.AtPlace found) { }

    Assessment judgedBy(RuleBook book) {
        return Assessor.assess(recordUnder(book), book.at(workshop), List.copyOf(gates), asOf);
    }

    /** True when one of its expectations fails under this rule book, or it cannot be judged by it at all. */
    boolean notices(RuleBook book) {
        Assessment judged;
        try {
            judged = judgedBy(book);
        } catch (RuntimeException broken) {
            return true;
        }
        return expected.stream().anyMatch(e -> e.otherwise(judged, book).isPresent());
    }

    // What a table gives belongs to the rule book and not to the record.
    private JobRecord recordUnder(RuleBook book) {
        if (byTable.isEmpty()) {
            return record;
        }
        return record.withEntries(record.entries().stream().map(entry -> byTable.contains(entry.id()) && entry.is() instanceof Value.Amount amount
                ? entry.withValue(new Value.Amount(new Measured(amount.measured().value(), kindOf(entry, book).leastOf(amount.measured().value()).orElseThrow()))) : entry).toList());
    }

    private InstrumentKind kindOf(Entry entry, RuleBook book) {
        return book.vocabulary().instruments().get(record.instruments().stream().filter(one -> one.id().equals(entry.with())).findFirst().orElseThrow().kind());
    }

    /** True when it has a reading with this kind of instrument whose uncertainty the table gives. */
    boolean isMeasuredByTable(String kind, Unit.Dimension dimension) {
        return record.entries().stream().anyMatch(entry -> byTable.contains(entry.id()) && entry.is() instanceof Value.Amount amount && amount.measured().value().unit().dimension() == dimension
                && record.instruments().stream().anyMatch(one -> one.id().equals(entry.with()) && one.kind().equals(kind)));
    }

    /** True when it stands with the general reasoning about evidence, and not with one system. */
    boolean isOfGeneralReasoning() {
        return place.startsWith("features/evidence/");
    }

    /** True when it says of the remaining work what has to be allowed before. */
    boolean isAboutNeeds() {
        return expected.stream().anyMatch(Expected.OnlyNeeding.class::isInstance);
    }

    /** True when it says how a ride or a run under a roof is planned. */
    boolean isAboutThePlan(Gate gate) {
        return expected.stream().anyMatch(e -> e instanceof Expected.OfThePlan plan && plan.gate() == gate);
    }

    boolean isAbout(String check) {
        return expected.stream().anyMatch(e -> check.equals(e.check()));
    }

    /** True when it expects something of a gate, to which every check may matter. */
    boolean isAboutAGate() {
        return expected.stream().anyMatch(e -> e.check() == null || e instanceof Expected.Alone);
    }

    // Each is one of its kind; comparing whole records would only take time.
    @Override
    public boolean equals(Object other) {
        return this == other;
    }

    @Override
    public int hashCode() {
        return System.identityHashCode(this);
    }
}
