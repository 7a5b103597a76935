package chock.rulebook;

import chock.quantity.Quantity;
import chock.record.Gate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a known fault can do, and which gates it closes though they do not ask for it.
 *
 * @param byName the closed list of dangers, by name
 * @param exceptions what keeps a gate open all the same, by name
 */
public record Dangers(Map<String, Danger> byName, Map<String, Exemption> exceptions) {

    /** A rule book that knows no dangers. */
    static final Dangers NONE = new Dangers(Map.of(), Map.of());

    /**
     * One danger.
     *
     * @param name its name on the cards
     * @param what what can happen, in words that complete "danger: …"
     * @param closes gates that a known fault closes where its card says nothing else
     */
    public record Danger(String name, String what, Set<Gate> closes) { }

    /**
     * Something proven that keeps a gate open although a fault is known: an empty tank cannot leak.
     *
     * @param name its name on the cards
     * @param says what is proven, in words that complete "unless …"
     * @param shown what proves it, any one of these
     */
    public record Exemption(String name, String says, List<Proof> shown) { }

    /**
     * One proof of an exception.
     *
     * @param check the check whose evidence it is
     * @param want name of the evidence on its card, or null when the check has to be met as a whole
     * @param answers the answers that prove it; empty where an amount proves it
     * @param atMost the amount that proves it, or null
     */
    public record Proof(String check, String want, Set<String> answers, Quantity atMost) { }

    /** The gates that any of these dangers closes as a rule. */
    public Set<Gate> closes(List<String> dangers) {
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        dangers.forEach(danger -> gates.addAll(byName.get(danger).closes()));
        return gates;
    }

    /** What can happen, in words, in the order given. */
    public List<String> words(List<String> dangers) {
        return dangers.stream().map(danger -> byName.get(danger).what()).toList();
    }
}
