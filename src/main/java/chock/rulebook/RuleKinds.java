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
 */
record RuleKinds(Set<String> asking, Set<String> speaking) {
    static final String FILE = "META-INF/chock/rule-kinds";
    static final String EVERY = "*";
    private static final String ASKS = "asks ";
    private static final String SPEAKS = "speaks of ";

    RuleKinds {
        asking = Set.copyOf(asking);
        speaking = Set.copyOf(speaking);
    }

    static RuleKinds read(String text) {
        Set<String> asking = new HashSet<>();
        Set<String> speaking = new HashSet<>();
        text.lines().forEach(line -> {
            if (line.startsWith(ASKS)) {
                asking.add(line.substring(ASKS.length()));
            } else {
                speaking.add(line.substring(SPEAKS.length()));
            }
        });
        return new RuleKinds(asking, speaking);
    }

    String text() {
        return lines(ASKS, asking) + lines(SPEAKS, speaking);
    }

    private static String lines(String kind, Collection<String> names) {
        return new TreeSet<>(names).stream().map(name -> kind + name + "\n").collect(Collectors.joining());
    }

    /** These and the rules of a house. */
    RuleKinds and(RuleKinds more) {
        Set<String> all = new HashSet<>(speaking);
        all.addAll(more.speaking);
        Set<String> askingToo = new HashSet<>(asking);
        askingToo.addAll(more.asking);
        return new RuleKinds(askingToo, all);
    }

    /** True when the check has to be reasoned about even while nothing that it wants was written. */
    boolean speaksOf(String check) {
        return speaking.contains(check) || speaking.contains(EVERY);
    }
}
