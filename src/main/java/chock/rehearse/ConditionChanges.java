package chock.rehearse;

import chock.rulebook.ChangedRule;
import chock.rulebook.ChangedRules;
import chock.rulebook.RuleBook;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Every condition of every shipped rule, left out or turned round. Under a house nothing of it is changed: its own rules are left out as a whole. */
final class ConditionChanges {
    private final ChangedRules rules;
    private final Map<Change, ChangedRule> byChange = new IdentityHashMap<>();
    private final List<Change> all;

    ConditionChanges(RuleBook book) {
        rules = book.house().isPresent() ? null : ChangedRules.shipped();
        all = rules == null ? List.of() : rules.all().stream().map(this::change).toList();
    }

    List<Change> all() {
        return all;
    }

    /** Compiles what is needed for those of these changes that change a condition. */
    void compile(Collection<Change> some) {
        if (rules != null) {
            rules.compile(some.stream().map(byChange::get).filter(Objects::nonNull).toList());
        }
    }

    private Change change(ChangedRule changed) {
        Change change = new Change(Change.Kind.CONDITION, false, changed.rule(), changed.what(), "rules/" + changed.file() + ":" + changed.line(),
                "a record to which that condition matters", s -> true, book -> rules.inForce(book, changed));
        byChange.put(change, changed);
        return change;
    }
}
