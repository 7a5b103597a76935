package chock.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.drools.model.Model;
import org.kie.internal.builder.conf.LanguageLevelOption;

/**
 * The shipped rules, each with one of its conditions left out or turned round, for trying whether anybody would notice. What a
 * condition is, and where in the file it begins and ends, is Drools' own description of the rule.
 */
public final class ChangedRules {
    private static final String ELSEWHERE = "rules.changed.";

    private final List<ChangedRule> all = new ArrayList<>();
    private final Map<String, String> heads = new TreeMap<>();
    private final Map<ChangedRule, List<Model>> compiled = new ConcurrentHashMap<>();
    private final Map<String, RuleKinds> kinds = new ConcurrentHashMap<>();

    private ChangedRules() { }

    /** Every change of every condition of the shipped rules. */
    public static ChangedRules shipped() {
        ChangedRules changed = new ChangedRules();
        RuleBookLoader.shippedFiles().forEach((file, text) -> {
            if (file.endsWith(".drl")) {
                changed.read(file, text);
            }
        });
        return changed;
    }

    /** In order of file and rule. */
    public List<ChangedRule> all() {
        return List.copyOf(all);
    }

    private void read(String file, String text) {
        PackageDescr described;
        try {
            described = new DrlParser(LanguageLevelOption.DRL6).parse(false, text);
        } catch (DroolsParserException e) {
            throw new IllegalStateException(file, e);
        }
        // The rules are compiled into a package of their own, so that no class of theirs bears the name of a shipped one.
        int start = described.getRules().stream().mapToInt(RuleDescr::getStartCharacter).min().orElseThrow();
        heads.put(file, text.substring(0, start).replace("package " + described.getName(), "package " + ELSEWHERE + described.getName()));
        for (RuleDescr rule : described.getRules()) {
            all.addAll(new Conditions(file, text, rule).changes());
        }
    }

    /** Compiles some of the changed rules, file by file. Only these can be put in force. */
    public void compile(Collection<ChangedRule> some) {
        SortedMap<String, List<ChangedRule>> byFile = new TreeMap<>();
        some.stream().filter(one -> !compiled.containsKey(one)).forEach(one -> byFile.computeIfAbsent(one.file(), f -> new ArrayList<>()).add(one));
        byFile.values().parallelStream().forEach(this::compileOneFile);
    }

    private void compileOneFile(List<ChangedRule> changed) {
        StringBuilder text = new StringBuilder(heads.get(changed.get(0).file()));
        changed.forEach(one -> text.append(one.text()).append("\n\n"));
        Map<String, byte[]> made = RuleCompiler.compile(Map.of("changed/" + changed.get(0).file(), text.toString()));
        RuleKinds own = RuleBookLoader.kindsOf(made);
        kinds.merge(changed.get(0).file(), own, RuleKinds::and);
        List<Model> models = RuleBookLoader.modelsOf(made);
        changed.forEach(one -> compiled.put(one, Rules.part(models, one.name()::equals)));
    }

    /**
     * A rule book with a changed rule in place of the shipped one.
     *
     * @param book the shipped rule book
     * @param changed one of those compiled
     */
    public RuleBook inForce(RuleBook book, ChangedRule changed) {
        List<Model> models = RuleBookLoader.models();
        models.addAll(compiled.get(changed));
        return book.without(changed.rule()).reasoningBy(Rules.of(models, RuleBookLoader.kinds().and(kinds.get(changed.file()))));
    }
}
