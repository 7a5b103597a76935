package chock.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ForallDescr;
import org.drools.drl.ast.descr.FromDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;

/**
 * Reads rules to find out which of them ask by the description of a machine alone, and which checks a rule says
 * something of though nothing that the check wants was written. Where that cannot be seen in a rule, the rule counts as
 * speaking of every check: judging then takes longer, and its result is the same.
 */
final class RuleReading {
    private static final String GENERAL = "rules.evidence";
    private static final String HOUSE = "rules.house";
    /** What of a record is the machine and nothing else. */
    private static final Set<String> DESCRIPTION = Set.of("MachineFact", "EngineFact", "WorkshopFact", "NumberFact",
            "EquipmentFact", "CylinderFact", "BrakeFact", "DiscFact", "PadFact", "WheelFact");
    /** What a rule that asks may look at besides: the rule book, words from it, and what is asked already. */
    private static final Set<String> BESIDE = Set.of("Requirements", "String", "Required");
    /** What may be asked of the rule book there; the rest depends on the manual and the day as well. */
    private static final Set<String> OF_THE_BOOK = Set.of("exemptByLaw", "placesNamed", "bringsUp",
            "broughtUpBy", "ofEveryMachine");
    /** What is there only when something was written that the check wants. */
    private static final Set<String> FROM_ENTRIES = Set.of("Current", "Standing", "Differing", "Derived", "Judgement", "Misplaced");
    private static final Pattern CHECKS = Pattern.compile("check\\s*(?:==|in)\\s*(\\(.*?\\)|\"[^\"]*\")");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern CHECK_NAMED = Pattern.compile("\"([a-z]+\\.[a-z0-9-]+)\"");
    /** About the same want as another condition of the rule. */
    private static final Pattern OF_ONE_WANT = Pattern.compile("\\bwanted\\s*==\\s*\\$");
    private static final Pattern WANT_BOUND = Pattern.compile("(\\$\\w+)\\s*:\\s*wanted\\b");
    /** What is concluded of a check that no rule names. */
    private static final Set<String> CONCLUDED = Set.of("Required", "Wanted", "Standing", "Current", "Judgement", "Outcome");
    private static final Pattern INSERTED = Pattern.compile("insert(?:Logical)?\\s*\\(\\s*(?:new\\s+)?([$\\w]+)");

    private final Set<String> asking = new TreeSet<>();
    private final Set<String> speaking = new TreeSet<>();
    private final Set<String> naming = new TreeSet<>();

    private RuleReading() { }

    /** One condition of a rule. */
    private record Condition(PatternDescr pattern, boolean negated) {
        String type() {
            return pattern.getObjectType();
        }

        String text() {
            StringBuilder text = new StringBuilder();
            pattern.getDescrs().forEach(constraint -> text.append(constraint.getText()).append(", "));
            return text.toString();
        }

        /** Its constraints and where it takes its fact from. */
        String whole() {
            return text() + (pattern.getSource() instanceof FromDescr from ? from.getDataSource().getText() : "");
        }

        /** Checks that it names; empty when it names none. */
        List<String> checks() {
            List<String> checks = new ArrayList<>();
            for (Matcher named = CHECKS.matcher(text()); named.find(); ) {
                QUOTED.matcher(named.group(1)).results().forEach(word -> checks.add(word.group(1)));
            }
            return checks;
        }

        /** True when it is about the same requirement as that one. */
        boolean isJoinedTo(Condition requirement) {
            String name = requirement.pattern.getIdentifier();
            return name != null && Pattern.compile("required\\s*==\\s*" + Pattern.quote(name) + "\\b").matcher(text())
                    .find();
        }
    }

    /**
     * @param sources DRL by name
     * @throws RuleCompiler.NotCompiled when what a rule asks depends on what is not asked
     */
    static RuleKinds of(Map<String, String> sources) {
        RuleReading reading = new RuleReading();
        List<RuleCompiler.Wrong> wrong = new ArrayList<>();
        sources.forEach((file, text) -> {
            PackageDescr parsed = parsed(file, text);
            parsed.getRules().forEach(rule -> reading.read(rule, parsed.getNamespace(), file, wrong));
        });
        if (!wrong.isEmpty()) {
            throw new RuleCompiler.NotCompiled(wrong);
        }
        return new RuleKinds(reading.asking, reading.speaking, reading.naming);
    }

    private static PackageDescr parsed(String file, String text) {
        try {
            return new DrlParser().parse(false, text);
        } catch (DroolsParserException e) {
            throw new IllegalStateException("compiled, and not read: " + file, e);
        }
    }

    private void read(RuleDescr rule, String namespace, String file, List<RuleCompiler.Wrong> wrong) {
        List<Condition> conditions = new ArrayList<>();
        collect(rule.getLhs(), false, conditions);
        String consequence = String.valueOf(rule.getConsequence());
        if (!namespace.equals(HOUSE) && asksByDescription(conditions, consequence)) {
            asking.add(rule.getName());
            if (conditions.stream().anyMatch(c -> c.negated && c.type().equals("Required"))) {
                wrong.add(new RuleCompiler.Wrong(file, rule.getLine(), "rule " + rule.getName()
                        + " asks because something else is not asked, and which comes first is not settled."
                        + " Write the condition on the machine instead"));
            }
            return;
        }
        boolean general = namespace.equals(GENERAL);
        if (!general) {
            name(conditions, consequence, namespace);
        }
        for (Condition condition : conditions) {
            if (speaks(condition, conditions)) {
                List<String> checks = condition.checks();
                if (!checks.isEmpty()) {
                    speaking.addAll(checks);
                } else if (!general && isOfAnyCheck(condition, namespace)) {
                    speaking.add(RuleKinds.EVERY);
                }
            }
        }
    }

    private void name(List<Condition> conditions, String consequence, String namespace) {
        String all = conditions.stream().map(Condition::whole).collect(Collectors.joining("\n")) + consequence;
        CHECK_NAMED.matcher(all).results().forEach(check -> naming.add(check.group(1)));
        if (conditions.stream().anyMatch(one -> looksAtAnyCheck(one, conditions, namespace))) {
            naming.add(RuleKinds.EVERY);
        }
    }

    /** True when this condition may hold by what is concluded of a check that the rule does not name, other than a fault. */
    private static boolean looksAtAnyCheck(Condition condition, List<Condition> all, String namespace) {
        return CONCLUDED.contains(condition.type()) && condition.checks().isEmpty()
                && isOfAnyCheck(condition, namespace) && !OF_ONE_WANT.matcher(condition.text()).find()
                && !condition.text().contains("state == State.FAULT") && !isOneOfTwoReadings(condition, all);
    }

    /** True when the rule wants two readings of one thing, and this is the first. */
    private static boolean isOneOfTwoReadings(Condition condition, List<Condition> all) {
        Matcher bound = WANT_BOUND.matcher(condition.text());
        return condition.type().equals("Standing") && bound.find() && all.stream().anyMatch(other -> !other.negated
                && other.type().equals("Standing") && other.text().matches("(?s).*\\bwanted\\s*==\\s*"
                        + Pattern.quote(bound.group(1)) + "\\b.*"));
    }

    private static void collect(BaseDescr part, boolean negated, List<Condition> into) {
        if (part instanceof PatternDescr pattern) {
            into.add(new Condition(pattern, negated));
            if (pattern.getSource() instanceof AccumulateDescr sum) {
                collect(sum.getInput(), negated, into);
            }
        } else if (part instanceof AccumulateDescr sum) {
            collect(sum.getInput(), negated, into);
        } else if (part instanceof ConditionalElementDescr several) {
            boolean below = negated || part instanceof NotDescr || part instanceof ForallDescr;
            several.getDescrs().forEach(one -> collect((BaseDescr) one, below, into));
        }
    }

    /** True when the rule looks at nothing but the machine, and does nothing but ask. */
    private static boolean asksByDescription(List<Condition> conditions, String consequence) {
        boolean plain = conditions.stream().allMatch(c -> DESCRIPTION.contains(c.type()) || BESIDE.contains(c.type()))
                && OF_THE_BOOK.containsAll(askedOfTheBook(conditions, consequence));
        List<String> inserted = INSERTED.matcher(consequence).results().map(m -> m.group(1)).toList();
        return plain && !inserted.isEmpty() && inserted.stream()
                .allMatch(what -> what.equals("Required") || what.equals("$also"));
    }

    private static Set<String> askedOfTheBook(List<Condition> conditions, String consequence) {
        Set<String> asked = new TreeSet<>();
        String all = conditions.stream().map(Condition::whole).collect(Collectors.joining("\n")) + consequence;
        for (Condition book : conditions.stream().filter(c -> c.type().equals("Requirements")).toList()) {
            Pattern.compile("(\\w+)\\(").matcher(book.text()).results().forEach(call -> asked.add(call.group(1)));
            if (book.pattern.getIdentifier() != null) {
                Pattern.compile(Pattern.quote(book.pattern.getIdentifier()) + "\\.(\\w+)").matcher(all).results()
                        .forEach(call -> asked.add(call.group(1)));
            }
        }
        return asked;
    }

    /** True when this condition can hold, or stop another, while nothing was written that the check wants. */
    private static boolean speaks(Condition condition, List<Condition> all) {
        return switch (condition.type()) {
            case "Required" -> condition.negated || all.stream().noneMatch(other -> !other.negated
                    && FROM_ENTRIES.contains(other.type()) && other.isJoinedTo(condition));
            case "Outcome" -> !condition.text().matches("(?s).*state\\s*==\\s*State\\.(MET|FAULT).*");
            case "Lack", "Wanted" -> true;
            default -> false;
        };
    }

    /** True when nothing says which check it is about. What an entry is held against, the entry decides. */
    private static boolean isOfAnyCheck(Condition condition, String namespace) {
        boolean byEntry = !namespace.equals(HOUSE) && condition.type().equals("Wanted")
                && condition.text().matches("(?s).*\\b(key|aspect)\\s*==.*");
        return !byEntry && !condition.text().matches("(?s).*required\\s*==\\s*\\$.*");
    }
}
