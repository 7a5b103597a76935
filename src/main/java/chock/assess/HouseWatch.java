package chock.assess;

import chock.assess.facts.Derived;
import chock.assess.facts.Note;
import chock.assess.facts.Required;
import chock.record.UnusableInput;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import org.kie.api.definition.rule.Rule;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;

/** Watches the rules of a house while they reason: they may ask, derive and note for checks of the house, and nothing else. */
final class HouseWatch implements RuleRuntimeEventListener {
    private static final String PACKAGE = "rules.house";

    private final RuleBook book;

    HouseWatch(RuleBook book) {
        this.book = book;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
        if (ofHouse(event.getRule())) {
            look(event.getRule(), event.getObject());
        }
    }

    @Override
    public void objectUpdated(ObjectUpdatedEvent event) {
        if (ofHouse(event.getRule())) {
            throw refused(event.getRule(), "changes what others put down", "Insert a fact of its own instead.");
        }
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        if (ofHouse(event.getRule()) && !own(event.getOldObject())) {
            throw refused(event.getRule(), "takes away what others put down", "A house only adds; leave that fact alone.");
        }
    }

    private static boolean ofHouse(Rule rule) {
        return rule != null && PACKAGE.equals(rule.getPackageName());
    }

    private boolean own(Object fact) {
        Required required = requirementOf(fact);
        return required != null && required.check().startsWith("house.");
    }

    private void look(Rule rule, Object fact) {
        if (!own(fact)) {
            Required about = requirementOf(fact);
            throw refused(rule, about == null ? "puts down a " + fact.getClass().getSimpleName() : "concludes about " + about.check() + ", a check of the rule book",
                    "A rule of a house inserts Required, Derived or Note, for checks of the house.");
        }
        Required required = requirementOf(fact);
        Card card = book.cards().get(required.check());
        if (card == null) {
            throw refused(rule, "asks for " + required.check() + ", which has no card", "Write the card in the house's checks.yaml, or mend the id.");
        }
        if (card.place().match(required.point(), book.library().places()).isEmpty()) {
            throw refused(rule, "asks for " + card.id() + " at " + required.point() + ", and its card says " + card.place() + " (" + card.file() + ":" + card.line() + ")", "Make the two agree.");
        }
    }

    private static Required requirementOf(Object fact) {
        return fact instanceof Required required ? required : fact instanceof Derived derived ? derived.required() : fact instanceof Note note ? note.required() : null;
    }

    private UnusableInput refused(Rule rule, String what, String advice) {
        return UnusableInput.of(book.house().orElseThrow().folder(), "the rule \"" + rule.getName() + "\" " + what, advice);
    }
}
