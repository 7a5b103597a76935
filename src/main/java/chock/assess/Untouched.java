package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Correction;
import chock.assess.facts.Current;
import chock.assess.facts.Evidence;
import chock.assess.facts.FoundOut;
import chock.assess.facts.Judgement;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.Wanted;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks that nothing in the record touches: each thing they want was written once, at its place, by somebody who may,
 * and is good, or was not written at all; no work came near it since, nobody corrected it, no instrument is in doubt,
 * and no rule of their own looks at them. Each such reading stands, is the newest and is judged by itself, and the check
 * is met, in doubt where the instrument cannot tell, or missing what was not written. The rules of
 * {@code rules/evidence} say the same of them, one by one: whatever any of those could set aside, mark or fault makes a
 * check touched, and it goes through them.
 */
final class Untouched {
    private final Map<Required, Written> checks = new LinkedHashMap<>();
    private final Map<Required, List<Object>> found = new HashMap<>();

    /** What was written of a check, and what of it was not. */
    private record Written(List<Current> readings, List<Wanted> unwritten) { }

    private Untouched() { }

    /** Where every check goes through the rules. */
    static Untouched none() {
        return new Untouched();
    }

    /**
     * @param read checks that were written about at their places
     * @param facts what the rules are told of the record
     */
    static Untouched among(Set<Required> read, List<Object> facts, AskedChecks asked, Requirements requirements, AsOf now) {
        Untouched untouched = new Untouched();
        Readings readings = new Readings(facts, requirements);
        for (Required required : read) {
            Written written = readings.of(asked.wanted(required));
            if (written != null && requirements.gap(required).isEmpty()) {
                untouched.checks.put(required, written);
            }
        }
        untouched.touchedBy(now);
        return untouched;
    }

    /** The entries of a record, as far as each is the only one about its thing. */
    private static final class Readings {
        private final Map<String, Evidence> once = new HashMap<>();
        private final Set<String> twice = new HashSet<>();
        private final Set<String> corrected = new HashSet<>();
        private final List<FoundOut> foundOut = new ArrayList<>();
        private final Requirements requirements;

        Readings(List<Object> facts, Requirements requirements) {
            this.requirements = requirements;
            for (Object fact : facts) {
                if (fact instanceof Evidence one && once.put(one.key(), one) != null) {
                    twice.add(one.key());
                } else if (fact instanceof Correction correction) {
                    corrected.add(correction.corrects());
                    corrected.add(correction.entry().id());
                } else if (fact instanceof FoundOut one) {
                    foundOut.add(one);
                }
            }
            once.keySet().removeAll(twice);
        }

        /** What was written of these wants; null when one was written of twice, or something touches it. */
        Written of(List<Wanted> wants) {
            Written written = new Written(new ArrayList<>(wants.size()), new ArrayList<>(0));
            for (Wanted wanted : wants) {
                Evidence evidence = once.get(wanted.key());
                if (evidence != null && isUntouched(wanted, evidence)) {
                    written.readings.add(new Current(wanted, evidence));
                } else if (evidence == null && !twice.contains(wanted.key()) && wanted.card().together() == null) {
                    written.unwritten.add(wanted);
                } else {
                    return null;
                }
            }
            return written;
        }

        private boolean isUntouched(Wanted wanted, Evidence evidence) {
            Current current = new Current(wanted, evidence);
            return isSound(evidence) && isGood(wanted, evidence) && isPlain(current)
                    && requirements.worksTouching(wanted, evidence).isEmpty()
                    && requirements.impliedUndoing(wanted, evidence).isEmpty()
                    && (wanted.openedFor().isEmpty() || requirements.openedSince(wanted, evidence).isEmpty());
        }

        /** Nobody corrected it, it can be true and is not rare, and nothing is wrong with what it was read with. */
        private boolean isSound(Evidence evidence) {
            return !corrected.contains(evidence.id()) && !evidence.impossible() && !requirements.isRare(evidence)
                    && !evidence.outOfCalibration() && foundOut.stream().noneMatch(one -> one.kills(evidence))
                    && !requirements.lacksInstrument(evidence) && !requirements.namesNoInstrument(evidence);
        }

        private static boolean isGood(Wanted wanted, Evidence evidence) {
            return !wanted.faulty(evidence) && !wanted.tooWeak(evidence);
        }

        /** It decides by itself, with nothing to be said besides and nothing that follows for another check. */
        private boolean isPlain(Current current) {
            Wanted wanted = current.wanted();
            return wanted.decidesAlone() && wanted.card().together() == null && !wanted.lacksSunset()
                    && !requirements.asksAboutNote(current) && requirements.isJudged(current)
                    && requirements.exceptionsShownBy(current).isEmpty()
                    && requirements.exceptionsMetBy(current.required()).isEmpty();
        }
    }

    /** Lets go of the checks that this moment touches, because a proof is too old or a part is, and judges the others. */
    Set<Required> touchedBy(AsOf now) {
        Set<Required> touched = new HashSet<>();
        found.clear();
        checks.forEach((required, written) -> {
            List<Object> concluded = concluded(required, written, now);
            if (concluded == null) {
                touched.add(required);
            } else {
                found.put(required, concluded);
            }
        });
        checks.keySet().removeAll(touched);
        return touched;
    }

    private static List<Object> concluded(Required required, Written written, AsOf now) {
        List<Object> concluded = new ArrayList<>(4 * written.readings.size() + 2 * written.unwritten.size() + 1);
        State worst = State.MET;
        for (Current current : written.readings) {
            if (current.wanted().tooOld(current.evidence(), now)) {
                return null;
            }
            Judgement judged = Judge.alone(current, now);
            if (judged.state() == State.FAULT) {
                return null;
            }
            worst = judged.state() == State.DOUBT ? State.DOUBT : worst;
            concluded.add(current.wanted());
            concluded.add(new Standing(current.wanted(), current.evidence()));
            concluded.add(current);
            concluded.add(judged);
        }
        for (Wanted wanted : written.unwritten) {
            concluded.add(wanted);
            concluded.add(Judge.nothingRecorded(wanted));
        }
        concluded.add(new Outcome(required, written.unwritten.isEmpty() ? worst : State.MISSING));
        return concluded;
    }

    Set<Required> checks() {
        return checks.keySet();
    }

    /** Ids of the entries that settled them. */
    Set<String> entries() {
        Set<String> entries = new HashSet<>();
        checks.values().forEach(written -> written.readings.forEach(current -> entries.add(current.id())));
        return entries;
    }

    /** What is found of each of them. */
    Map<Required, List<Object>> found() {
        return found;
    }
}
