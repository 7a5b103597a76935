package chock.assess;

import chock.assess.facts.NumberFact;
import chock.assess.facts.Required;
import chock.record.JobRecord;
import chock.record.LocalLaw;
import chock.rulebook.RuleBook;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.KieSession;

/**
 * What is asked of a machine, as far as its description alone decides that. The rules that ask look at nothing else, so
 * their answer is the same for every machine of that description, and is worked out once.
 */
final class Asking {
    private Asking() { }

    /**
     * Everything that the rules that ask can look at.
     *
     * @param law the law of the place as the record has it: it may ask for what nobody asks for otherwise
     */
    record Description(List<Object> parts, Map<String, String> fields, LocalLaw law) {
        static Description of(JobRecord record) {
            return new Description(parts(record), record.machine().fields(), record.localLaw());
        }

        /** The number stamped into a frame tells one machine from another of its description, and asks nothing. */
        private static List<Object> parts(JobRecord record) {
            List<Object> parts = new ArrayList<>(Facts.machine(record));
            parts.replaceAll(part -> part instanceof NumberFact known ? new NumberFact(known.point(), "") : part);
            return List.copyOf(parts);
        }
    }

    /** The checks asked of a machine of this description. */
    static List<Required> of(Description description, RuleBook book, JobRecord record, LocalDate day) {
        return book.kept().of(description, () -> ask(description.parts(), book, record, day, null));
    }

    /** The same, worked out anew before a witness. */
    static List<Required> told(JobRecord record, RuleBook book, LocalDate day, Witness witness) {
        return ask(Facts.machine(record), book, record, day, witness);
    }

    private static List<Required> ask(List<Object> parts, RuleBook book,
            JobRecord record, LocalDate day, Witness witness) {
        KieSession session = book.rules().asking().newKieSession();
        try {
            if (witness != null) {
                session.addEventListener((AgendaEventListener) witness);
                session.addEventListener((RuleRuntimeEventListener) witness);
            }
            session.insert(new Requirements(book, record, day));
            parts.forEach(session::insert);
            Reasoning.toTheEnd(session, book, Reasoning.MOST_FIRINGS);
            List<Required> asked = new ArrayList<>();
            session.getObjects(Required.class::isInstance).forEach(fact -> asked.add((Required) fact));
            return List.copyOf(asked);
        } finally {
            session.dispose();
        }
    }
}
