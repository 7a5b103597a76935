package chock.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.BindingDescr;
import org.drools.drl.ast.descr.ConditionalElementDescr;
import org.drools.drl.ast.descr.ConstraintConnectiveDescr;
import org.drools.drl.ast.descr.ExistsDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlExprParserFactory;
import org.kie.internal.builder.conf.LanguageLevelOption;

/** The conditions of one rule, each left out or turned round. */
final class Conditions {
    /** In every session there is exactly one of each: leaving such a pattern out changes nothing. */
    private static final Set<String> ALWAYS_THERE = Set.of("Requirements", "AsOf", "MachineFact", "RecordFact", "WorkshopFact");

    private final String file;
    private final String text;
    private final RuleDescr rule;
    private final List<ChangedRule> all = new ArrayList<>();

    Conditions(String file, String text, RuleDescr rule) {
        this.file = file;
        this.text = text;
        this.rule = rule;
    }

    List<ChangedRule> changes() {
        among(rule.getLhs().getDescrs());
        return all;
    }

    private void among(List<? extends BaseDescr> parts) {
        for (int i = 0; i < parts.size(); i++) {
            BaseDescr part = parts.get(i);
            if (part instanceof NotDescr || part instanceof ExistsDescr) {
                leaveOut(parts, i);
                among(((ConditionalElementDescr) part).getDescrs().stream().map(BaseDescr.class::cast).toList());
            } else if (part instanceof ConditionalElementDescr group) {
                among(group.getDescrs().stream().map(BaseDescr.class::cast).toList());
            } else if (part instanceof PatternDescr pattern) {
                if (pattern.getSource() instanceof AccumulateDescr gathered) {
                    among(List.of(gathered.getInput()));
                } else if (parts.size() > 1 && !ALWAYS_THERE.contains(pattern.getObjectType()) && !isSpokenOfElsewhere(pattern)) {
                    leaveOut(parts, i);
                }
                constraints(pattern);
            }
        }
    }

    private void constraints(PatternDescr pattern) {
        List<? extends BaseDescr> constraints = pattern.getDescrs();
        for (int i = 0; i < constraints.size(); i++) {
            if (constraints.get(i) instanceof ExprConstraintDescr constraint && isCondition(constraint)) {
                leaveOut(constraints, i);
                add("'" + words(constraint) + "' turned round", constraint, text.substring(rule.getStartCharacter(), constraint.getStartCharacter())
                        + "!(" + of(constraint) + ")" + text.substring(end(constraint), end(rule)));
            }
        }
    }

    // A field that is only given a name for what follows holds nothing back.
    private static boolean isCondition(ExprConstraintDescr constraint) {
        ConstraintConnectiveDescr parsed = DrlExprParserFactory.getDrlExprParser(LanguageLevelOption.DRL6).parse(constraint.getExpression());
        return parsed != null && parsed.getDescrs().stream().noneMatch(BindingDescr.class::isInstance);
    }

    // With the comma or the "and" between it and its neighbour.
    private void leaveOut(List<? extends BaseDescr> parts, int at) {
        BaseDescr part = parts.get(at);
        int from = at > 0 ? end(parts.get(at - 1)) : part.getStartCharacter();
        int to = at == 0 && parts.size() > 1 ? parts.get(1).getStartCharacter() : end(part);
        add("'" + words(part) + "' left out", part, text.substring(rule.getStartCharacter(), from) + "\n  " + text.substring(to, end(rule)));
    }

    /** True when something outside of a pattern uses a name given in it. */
    private boolean isSpokenOfElsewhere(PatternDescr pattern) {
        String others = text.substring(rule.getStartCharacter(), pattern.getStartCharacter()) + text.substring(end(pattern), end(rule));
        List<String> names = new ArrayList<>();
        if (pattern.getIdentifier() != null) {
            names.add(pattern.getIdentifier());
        }
        for (BaseDescr part : pattern.getDescrs()) {
            DrlExprParserFactory.getDrlExprParser(LanguageLevelOption.DRL6).parse(((ExprConstraintDescr) part).getExpression()).getDescrs().stream()
                    .filter(BindingDescr.class::isInstance).forEach(binding -> names.add(((BindingDescr) binding).getVariable()));
        }
        return names.stream().anyMatch(name -> isIn(others, name));
    }

    private static boolean isIn(String others, String name) {
        for (int at = others.indexOf(name); at >= 0; at = others.indexOf(name, at + 1)) {
            int end = at + name.length();
            if (end == others.length() || !Character.isJavaIdentifierPart(others.charAt(end))) {
                return true;
            }
        }
        return false;
    }

    /** The first character behind it. Drools counts a constraint to its last character, and everything else to the one behind. */
    private static int end(BaseDescr part) {
        return part instanceof ExprConstraintDescr ? part.getEndCharacter() + 1 : part.getEndCharacter();
    }

    private String of(BaseDescr part) {
        return text.substring(part.getStartCharacter(), end(part)).strip();
    }

    private String words(BaseDescr part) {
        return String.join(" ", of(part).split("\\s+"));
    }

    private void add(String what, BaseDescr part, String changed) {
        String name = rule.getName() + "~" + (all.size() + 1);
        all.add(new ChangedRule(rule.getName(), toldApart(what), file, part.getLine(), changed.replace("\"" + rule.getName() + "\"\nwhen", "\"" + name + "\"\nwhen"), name));
    }

    // One rule may ask the same of several things.
    private String toldApart(String what) {
        long before = all.stream().filter(one -> one.what().equals(what) || one.what().startsWith(what + ", the ")).count();
        return before == 0 ? what : what + ", the " + (before + 1) + (before == 1 ? "nd" : before == 2 ? "rd" : "th");
    }
}
