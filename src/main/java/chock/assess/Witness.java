package chock.assess;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kie.api.event.rule.BeforeMatchFiredEvent;
import org.kie.api.event.rule.DefaultAgendaEventListener;
import org.kie.api.event.rule.ObjectDeletedEvent;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.event.rule.ObjectUpdatedEvent;
import org.kie.api.event.rule.RuleRuntimeEventListener;
import org.kie.api.runtime.rule.Match;

/** Remembers of every conclusion which rule drew it, and from which facts. */
final class Witness extends DefaultAgendaEventListener implements RuleRuntimeEventListener {
    private final Map<Object, Ground> grounds = new HashMap<>();
    private Match firing;

    /** Why a fact is there. */
    record Ground(String rule, List<Object> facts) { }

    @Override
    public void beforeMatchFired(BeforeMatchFiredEvent event) {
        firing = event.getMatch();
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
        if (firing != null) {
            grounds.putIfAbsent(event.getObject(), new Ground(firing.getRule().getName(), List.copyOf(firing.getObjects())));
        }
    }

    @Override
    public void objectUpdated(ObjectUpdatedEvent event) {
        // no rule updates a fact
    }

    @Override
    public void objectDeleted(ObjectDeletedEvent event) {
        grounds.remove(event.getOldObject());
    }

    /** The ground of a conclusion, or null for what was there from the beginning. */
    Ground of(Object conclusion) {
        return grounds.get(conclusion);
    }
}
