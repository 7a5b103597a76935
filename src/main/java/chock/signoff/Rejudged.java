package chock.signoff;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.record.JobRecord;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/**
 * A signed record judged once more, at the moment it was signed for: what a sign-off says against what judging gives.
 *
 * @param record the record as it was signed
 * @param assessment of its gate at the moment of the sign-off, by the rule book at hand
 * @param book the rule book at hand
 */
record Rejudged(JobRecord record, Assessment assessment, RuleBook book) {

    private GateVerdict verdict() {
        return assessment.gates().get(0);
    }

    /** Where a later entry voids it: what was signed, and what judging finds critical besides. */
    List<String> criticalPoints(SignOff signed) {
        Set<String> points = new LinkedHashSet<>(signed.criticalPoints());
        points.addAll(Critical.points(verdict(), record));
        return List.copyOf(points);
    }

    /** What the sign-off says otherwise than judging by its own rule book does; empty when all of it agrees. */
    List<String> differences(SignOff signed) {
        Map<String, Boolean> agrees = new LinkedHashMap<>();
        agrees.put("the verdict", verdict().released());
        agrees.put("until when it holds", String.valueOf(verdict().holdsUntil()).equals(signed.holdsUntil()));
        agrees.put("the findings", SignOffs.found(verdict()).equals(signed.findings()));
        agrees.put("what is not asked of the machine", SignOffs.notAsked(verdict()).equals(signed.notAsked()));
        agrees.put("the cautions", SignOffs.cautions(verdict()).equals(signed.cautions()));
        agrees.put("what should be known", signed.notes().containsAll(SignOffs.toBeKnown(assessment)));
        agrees.put("where a later entry voids it", Critical.points(verdict(), record).equals(signed.criticalPoints()));
        agrees.put("who did the work", List.copyOf(SignOffs.workers(record)).equals(signed.workBy()));
        agrees.put("the local code", assessment.localCode().equals(signed.localCode()));
        agrees.put("the law as the record has it", Objects.equals(assessment.recordedLaw(), signed.recordedLaw()));
        agrees.put("the version of the rule book", assessment.ruleBookVersion().equals(signed.ruleBook().version()));
        agrees.put("the house rules", house().equals(signed.house()));
        agrees.put("who decides in the end", Assessment.NOTICE.equals(signed.deferral()));
        return agrees.entrySet().stream().filter(one -> !one.getValue()).map(Map.Entry::getKey).toList();
    }

    private String house() {
        return book.house().map(Rejudged::words).orElse(Shop.NO_HOUSE);
    }

    static String words(HouseBook house) {
        return house.name() + " " + house.digest();
    }

    /** Faults that the rule book at hand finds though the sign-off rests on another. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        verdict().findings().stream().filter(finding -> finding.state() == State.FAULT).map(Finding::check).forEach(faults::add);
        verdict().closedBy().forEach(closed -> faults.add(closed.check()));
        return faults.stream().distinct().toList();
    }

    /** What else would hold the gate by the rule book at hand. */
    List<String> open() {
        return verdict().open().stream().filter(finding -> finding.state() != State.FAULT).map(Finding::check).distinct().toList();
    }
}
