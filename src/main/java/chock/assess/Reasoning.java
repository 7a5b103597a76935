package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Evidence;
import chock.assess.facts.Required;
import chock.assess.facts.Unwritten;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.kie.api.event.rule.AgendaEventListener;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.rule.AgendaFilter;
import org.kie.api.runtime.rule.ConsequenceException;
import org.kie.api.runtime.rule.FactHandle;

/**
 * The rules at work on one record. Moved to a later moment they conclude anew only what rests on the moment, and the
 * rest stands as it is.
 */
final class Reasoning implements AutoCloseable {
    /** Far more than any record needs: some 500 for one of 60 entries. */
    static final int MOST_FIRINGS = 100_000;
    private static final int MOST_FOR_AN_ENTRY = 1_000;

    private final JobRecord record;
    private final RuleBook book;
    private KieSession session;
    private FactHandle moment;
    private AsOf now;
    private Requirements requirements;
    private Untouched untouched;
    private Conclusions concluded;

    private Reasoning(JobRecord record, RuleBook book) {
        this.record = record;
        this.book = book;
    }

    static Reasoning of(JobRecord record, RuleBook book, Instant asOf) {
        Reasoning reasoning = new Reasoning(record, book);
        reasoning.begin(asOf, null);
        return reasoning;
    }

    /**
     * The same before a witness, who is told of every check what the rules make of it, also where nothing was written.
     */
    static Reasoning before(Witness witness, JobRecord record, RuleBook book, Instant asOf) {
        Reasoning reasoning = new Reasoning(record, book);
        reasoning.begin(asOf, witness);
        return reasoning;
    }

    static AsOf moment(JobRecord record, Instant asOf) {
        return new AsOf(asOf, asOf.atZone(record.zone()).toLocalDate(), record.zone());
    }

    /** Lets every rule fire but those that sleep; null when none does. */
    static AgendaFilter awake(RuleBook book) {
        Set<String> asleep = book.asleep();
        return asleep.isEmpty() ? null : match -> !asleep.contains(match.getRule().getName());
    }

    private void begin(Instant asOf, Witness witness) {
        now = moment(record, asOf);
        List<Object> facts = Facts.of(record, book.vocabulary().fields());
        AskedChecks asked = witness == null ? AskedChecks.of(record, book, now.date())
                : AskedChecks.told(record, book, now.date(), witness);
        requirements = new Requirements(book, record, now.date(), facts, asked);
        session = book.rules().proving().newKieSession();
        if (witness != null) {
            session.addEventListener((AgendaEventListener) witness);
            session.addEventListener((RuleRuntimeEventListener) witness);
        }
        if (book.houseHasRules()) {
            session.addEventListener(new HouseWatch(book));
        }
        moment = session.insert(now);
        session.insert(requirements);
        if (witness != null) {
            facts.forEach(session::insert);
            asked.all().forEach(session::insert);
            untouched = Untouched.none();
        } else {
            tell(facts, asked);
        }
        fire();
    }

    /** Tells the rules of the entries, and of the checks that they have to reason about. */
    private void tell(List<Object> facts, AskedChecks asked) {
        List<Evidence> evidence = facts.stream().filter(Evidence.class::isInstance).map(Evidence.class::cast).toList();
        AskedChecks.Concerned concerned = asked.concernedBy(evidence, requirements);
        // On trial every check goes through the rules, so that nothing hides what the changed one does.
        untouched = book.isOnTrial() ? Untouched.none() : Untouched.among(concerned.read(), facts, asked, requirements, now);
        Set<String> settled = untouched.entries();
        facts.forEach(fact -> session.insert(fact instanceof Evidence one && settled.contains(one.id()) ? one.asSettled() : fact));
        concerned.all().stream().filter(required -> !untouched.checks().contains(required)).forEach(session::insert);
        session.insert(new Unwritten(asked.all().stream().filter(required -> !concerned.all().contains(required)).toList()));
    }

    /** Goes on to a later moment. */
    Conclusions at(Instant later) {
        AsOf then = moment(record, later);
        if (!book.limitsFrom(now.date(), then.date()).isEmpty()) {
            session.dispose();
            begin(later, null);
            return concluded;
        }
        now = then;
        session.update(moment, now);
        untouched.touchedBy(now).forEach(session::insert);
        fire();
        return concluded;
    }

    private void fire() {
        try {
            toTheEnd(session, book, MOST_FIRINGS + record.entries().size() * MOST_FOR_AN_ENTRY);
            concluded = new Conclusions(requirements, session.getObjects(), untouched.found());
        } catch (ConsequenceException e) {
            throw ofHouse(e, book);
        }
    }

    /**
     * Fires until no rule matches any more. A rule that removes the facts it is based on would fire for ever, so firings are counted.
     */
    static void toTheEnd(KieSession session, RuleBook book, int mostFirings) {
        if (session.fireAllRules(awake(book), mostFirings) >= mostFirings) {
            String what = "the rules never finish: one of them removes the facts it is based on";
            throw book.house().isPresent() ? UnusableInput.of(book.house().get().folder(), what, "Check the newest rule of this house, and every condition in it that begins with not.") : new IllegalStateException(what);
        }
    }

    // What goes wrong in a rule of the house is for the house to mend, and is told so.
    private static RuntimeException ofHouse(ConsequenceException e, RuleBook book) {
        if (e.getCause() instanceof UnusableInput refused) {
            return refused;
        }
        String rule = e.getRule() == null ? "" : e.getRule().getName();
        return rule.startsWith("house.") ? UnusableInput.of(book.house().orElseThrow().folder(), "the rule \"" + rule
                + "\" breaks off: " + e.getCause(), "Mend what it does after then.") : e;
    }

    /** What the rules conclude at the moment they are at. */
    Conclusions concluded() {
        return concluded;
    }

    @Override
    public void close() {
        session.dispose();
    }
}
