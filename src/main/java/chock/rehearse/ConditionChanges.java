package chock.rehearse;

import chock.rulebook.ChangedRule;
import chock.rulebook.ChangedRules;
import chock.rulebook.RuleBook;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Every condition of every shipped rule, left out or turned round. Under a house nothing of it is changed: its own rules are left out as a whole.
 *
 * <p>A rule of a check is tried on the scenarios of the checks that it names, in its own name or in its text. One that makes something
 * for other rules, and the general reasoning, may matter to more.
 */
final class ConditionChanges {
    private static final Pattern NAMED = Pattern.compile("\"([a-z]+\\.[a-z0-9-]+)\"");
    /** What a rule says of its own checks, and of no other. */
    private static final Pattern OF_ITS_OWN = Pattern.compile("insertLogical\\((new (Required|Lack|Note|Closed)\\b|Derived\\b)");

    private final RuleBook book;
    private final ChangedRules rules;
    private final Map<Change, ChangedRule> byChange = new IdentityHashMap<>();
    private final List<Change> all;

    ConditionChanges(RuleBook book) {
        this.book = book;
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
                "a record to which that condition matters", concerns(changed), book -> rules.inForce(book, changed));
        byChange.put(change, changed);
        return change;
    }

    private Predicate<Scenario> concerns(ChangedRule changed) {
        String then = changed.text().substring(changed.text().lastIndexOf("\nthen"));
        boolean forOthers = !OF_ITS_OWN.matcher(then).find() || then.replaceAll(OF_ITS_OWN.pattern(), "").contains("insertLogical(");
        if (forOthers || changed.rule().startsWith("evidence.") || changed.rule().startsWith("outcome.")) {
            return s -> true;
        }
        Set<String> named = new HashSet<>();
        // The rule itself goes by another name while it is changed.
        for (Matcher m = NAMED.matcher('"' + changed.rule() + '"' + changed.text()); m.find(); ) {
            checkOf(m.group(1)).ifPresent(named::add);
        }
        return named.isEmpty() ? s -> true : s -> named.stream().anyMatch(s::isAbout);
    }

    /** The check that a rule or a limit is named after. */
    private Optional<String> checkOf(String id) {
        return book.cards().keySet().stream().filter(check -> id.equals(check) || id.startsWith(check + "-")).max(Comparator.comparing(String::length));
    }
}
