package chock.assess;

import chock.assess.facts.SetAside;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which proofs of an order of work a later step of the same order took away. */
public final class UndoneLater {
    private UndoneLater() { }

    /**
     * Only what the step was for counts: a head torqued before the first start was for that, and not for the torquing after it.
     *
     * @param checks the entries the order led to, each with the checks its step was for
     * @return a line for each proof of the gate that was there and was undone
     */
    public static List<String> of(JobRecord record, RuleBook book, Gate gate, Instant asOf, Map<String, Set<String>> checks) {
        Conclusions concluded = Assessor.conclude(record, book, asOf);
        return book.cards().values().stream().filter(card -> card.gates().contains(gate))
                .flatMap(card -> concluded.required(card.id()).stream())
                .flatMap(required -> concluded.of(required, SetAside.class).stream())
                .filter(SetAside::wasProof)
                .filter(aside -> checks.getOrDefault(aside.entry(), Set.of()).contains(aside.wanted().required().check()))
                .map(aside -> aside.wanted().required().check() + ": " + aside.entry() + " by " + aside.by())
                .sorted().toList();
    }
}
