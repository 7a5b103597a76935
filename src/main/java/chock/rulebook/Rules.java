package chock.rulebook;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.drools.model.EntryPoint;
import org.drools.model.Global;
import org.drools.model.Model;
import org.drools.model.Query;
import org.drools.model.Rule;
import org.drools.model.TypeMetaData;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

/**
 * The compiled reasoning, in two parts: the rules that ask, which look at nothing but the description of a machine, and
 * the rules that find out what the entries prove.
 */
public final class Rules {
    /** Rules that ask because something is asked: they answer to what the description asks and to what entries ask. */
    private static final String IN_BOTH = "evidence.asked-with";

    private final Supplier<KieBase> asking;
    private final Supplier<KieBase> proving;
    private final Supplier<List<Model>> models;
    private final RuleKinds kinds;

    private Rules(Supplier<KieBase> asking, Supplier<KieBase> proving, Supplier<List<Model>> models, RuleKinds kinds) {
        this.asking = asking;
        this.proving = proving;
        this.models = models;
        this.kinds = kinds;
    }

    static Rules of(Collection<Model> models, RuleKinds kinds) {
        List<Model> all = List.copyOf(models);
        KieBase asking = asking(all, kinds);
        KieBase proving = proving(all, kinds);
        return new Rules(() -> asking, () -> proving, () -> all, kinds);
    }

    /**
     * Rules that are being made ready while other things are done.
     *
     * @param models what they are made from, read again when rules of a house join them
     */
    static Rules coming(Supplier<KieBase> asking, Supplier<KieBase> proving, Supplier<List<Model>> models, RuleKinds kinds) {
        return new Rules(asking, proving, models, kinds);
    }

    /** These and others in one, such as those of a house. */
    Rules and(Collection<Model> others, RuleKinds theirKinds) {
        List<Model> all = new ArrayList<>(models.get());
        all.addAll(others);
        return of(all, kinds.and(theirKinds));
    }

    static KieBase asking(Collection<Model> models, RuleKinds kinds) {
        return KieBaseBuilder.createKieBaseFromModel(part(models, kinds.asking()::contains));
    }

    static KieBase proving(Collection<Model> models, RuleKinds kinds) {
        return KieBaseBuilder.createKieBaseFromModel(part(models, name -> !kinds.asking()
                .contains(name) || name.equals(IN_BOTH)));
    }

    /** Of each package the rules of these names. */
    static List<Model> part(Collection<Model> models, Predicate<String> taken) {
        return models.stream().map(model -> (Model) new Part(model, taken)).toList();
    }

    /** The rules that ask by the description of a machine. */
    public KieBase asking() {
        return asking.get();
    }

    /** The rules that look at entries. */
    public KieBase proving() {
        return proving.get();
    }

    /** True when a rule says something of this check even while nothing that it wants was written. */
    public boolean speakOf(String check) {
        return kinds.speaksOf(check);
    }

    /** True when a rule for particular checks looks at this one: what the general rules alone make of it is not all. */
    public boolean name(String check) {
        return kinds.names(check);
    }

    /** Names of all rules. */
    public SortedSet<String> names() {
        SortedSet<String> names = new TreeSet<>();
        for (KieBase base : List.of(asking(), proving())) {
            base.getKiePackages().forEach(pack -> pack.getRules().forEach(rule -> names.add(rule.getName())));
        }
        return names;
    }

    /** Some of the rules of a package. */
    private static final class Part implements Model {
        private final Model whole;
        private final List<Rule> rules;

        Part(Model whole, Predicate<String> taken) {
            this.whole = whole;
            this.rules = whole.getRules().stream().filter(rule -> taken.test(rule.getName())).toList();
        }

        @Override
        public String getName() {
            return whole.getName();
        }

        @Override
        public String getPackageName() {
            return whole.getPackageName();
        }

        @Override
        @SuppressWarnings("rawtypes")
        public List<Global> getGlobals() {
            return whole.getGlobals();
        }

        @Override
        public List<Rule> getRules() {
            return rules;
        }

        @Override
        public List<Query> getQueries() {
            return whole.getQueries();
        }

        @Override
        public List<TypeMetaData> getTypeMetaDatas() {
            return whole.getTypeMetaDatas();
        }

        @Override
        public List<EntryPoint> getEntryPoints() {
            return whole.getEntryPoints();
        }
    }
}
