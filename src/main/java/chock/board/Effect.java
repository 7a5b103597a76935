package chock.board;

import chock.board.store.Summary;
import java.util.ArrayList;
import java.util.List;

/** What a write did to the gates, in words. */
final class Effect {
    private Effect() { }

    /** {@code e12, e13: road-test held by 3, now by 2; hand-over held by 5, still by 5}. */
    static String words(List<String> entries, Summary before, Summary after) {
        List<String> gates = new ArrayList<>();
        for (Summary.OfGate now : after.gates()) {
            Summary.OfGate then = before.gates().stream().filter(g -> g.gate().equals(now.gate())).findFirst().orElse(null);
            gates.add(now.gate() + " " + (then == null ? "newly sought, " + standing(now) : change(then, now)));
        }
        return (entries.isEmpty() ? "" : String.join(", ", entries) + ": ") + String.join("; ", gates);
    }

    private static String change(Summary.OfGate then, Summary.OfGate now) {
        if (then.released() && now.released()) {
            return "released, still released";
        }
        if (!then.released() && !now.released()) {
            return "held by " + then.open() + (then.open() == now.open() ? ", still by " : ", now by ") + now.open();
        }
        return now.released() ? "held by " + then.open() + ", now released" : "released, now held by " + now.open();
    }

    private static String standing(Summary.OfGate gate) {
        return gate.released() ? "released" : "held by " + gate.open();
    }
}
