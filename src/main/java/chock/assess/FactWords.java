package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Closure;
import chock.assess.facts.Current;
import chock.assess.facts.Defect;
import chock.assess.facts.Differing;
import chock.assess.facts.Evidence;
import chock.assess.facts.ImpliedWork;
import chock.assess.facts.Misplaced;
import chock.assess.facts.Outcome;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.Work;
import chock.record.Entry;
import chock.record.JobRecord;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A fact that made a rule fire, in words. */
final class FactWords {
    private FactWords() { }

    /** In words, or empty for what is there for every machine. */
    static String of(Object fact, JobRecord record) {
        if (fact instanceof Requirements || fact instanceof AsOf) {
            return "";
        }
        if (fact instanceof Evidence one) {
            return entry(one.entry(), record);
        }
        if (fact instanceof Work work) {
            return entry(work.entry(), record);
        }
        if (fact instanceof ImpliedWork implied) {
            return entry(implied.work().entry(), record) + implied.words();
        }
        if (fact instanceof Current current) {
            return entry(current.evidence().entry(), record);
        }
        if (fact instanceof Standing standing) {
            return entry(standing.evidence().entry(), record);
        }
        if (fact instanceof Differing two) {
            return entry(two.first().evidence().entry(), record) + "; " + entry(two.second().evidence().entry(), record);
        }
        if (fact instanceof Misplaced misplaced) {
            return entry(misplaced.evidence().entry(), record);
        }
        if (fact instanceof Defect defect) {
            return Disclosures.words(defect.entry(), record);
        }
        if (fact instanceof Closure closure) {
            return Disclosures.words(closure.entry(), record);
        }
        if (fact instanceof Required required) {
            return required.check() + " is asked at " + Points.words(required.point());
        }
        if (fact instanceof Outcome outcome) {
            return outcome.required().check() + " at " + Points.words(outcome.required().point()) + " is " + outcome.state().id();
        }
        return fact instanceof Record part ? part(part) : Points.words(fact.toString());
    }

    private static String entry(Entry e, JobRecord record) {
        return Points.words(e.point()) + ": " + e.what() + (e.is() == null ? "" : " " + e.is()) + " " + e.at() + " by " + record.nameOf(e.by()) + " (" + e.id() + ")";
    }

    /** {@code brake: end front, type disc, worked by hydraulic, …}. */
    private static String part(Record part) {
        List<String> said = new ArrayList<>();
        for (RecordComponent component : part.getClass().getRecordComponents()) {
            try {
                said.add(spaced(component.getName()) + " " + value(component.getAccessor().invoke(part)));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(e);
            }
        }
        return spaced(part.getClass().getSimpleName().replaceFirst("Fact$", "")) + ": " + String.join(", ", said);
    }

    private static String spaced(String name) {
        return name.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static String value(Object value) {
        if (value instanceof Enum<?> word) {
            return word.name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
        return value instanceof Boolean yes ? yes ? "yes" : "no" : String.valueOf(value);
    }
}
