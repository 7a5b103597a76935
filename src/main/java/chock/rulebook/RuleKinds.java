package chock.rulebook;

import java.util.Collection;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What each rule is for, as far as judging has to know: worked out by {@link RuleReading} when the rules are compiled.
 *
 * @param asking names of the rules that ask by the description of a machine alone
 * @param speaking ids of the checks that a rule says something of though nothing that they want was written; {@code *}
 *     stands for every check
 * @param naming ids of the checks that a rule for particular checks looks at or concludes anything of; {@code *} stands
 *     for every check
 */
record RuleKinds(Set<String> asking, Set<String> speaking, Set<String> naming) {
    static final String FILE = "META-INF/chock/rule-kinds";
    static final String EVERY = "*";
    private static final String ASKS = "asks ";
    private static final String SPEAKS = "speaks of ";
    private static final String NAMES = "names ";

    RuleKinds {
        asking = Set.copyOf(asking);
        speaking = Set.copyOf(speaking);
        naming = Set.copyOf(naming);
    }

    static RuleKinds read(String text) {
        return new RuleKinds(after(ASKS, text), after(SPEAKS, text), after(NAMES, text));
    }

    private static Set<String> after(String kind, String text) {
        return text.lines().filter(line -> line.startsWith(kind)).map(line -> line.substring(kind.length()))
                .collect(Collectors.toSet());
    }

    String text() {
        return lines(ASKS, asking) + lines(SPEAKS, speaking) + lines(NAMES, naming);
    }

    private static String lines(String kind, Collection<String> names) {
        return new TreeSet<>(names).stream().map(name -> kind + name + "\n").collect(Collectors.joining());
    }

    /** These and the rules of a house. */
    RuleKinds and(RuleKinds more) {
        return new RuleKinds(both(asking, more.asking), both(speaking, more.speaking), both(naming, more.naming));
    }

    private static Set<String> both(Set<String> some, Set<String> more) {
        Set<String> all = new HashSet<>(some);
        all.addAll(more);
        return all;
    }

    /** True when the check has to be reasoned about even while nothing that it wants was written. */
    boolean speaksOf(String check) {
        return speaking.contains(check) || speaking.contains(EVERY);
    }

    /** True when a rule for particular checks looks at this one, or concludes anything of it. */
    boolean names(String check) {
        return naming.contains(check) || naming.contains(EVERY);
    }
}
