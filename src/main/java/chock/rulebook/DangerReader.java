package chock.rulebook;

import chock.record.Fault;
import chock.record.Gate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Reads the closed list of dangers, and what keeps a gate open although a fault is known. */
final class DangerReader {
    static final String FILE = "evidence/dangers.yaml";

    private DangerReader() { }

    /** The dangers; none after a fault of the whole file. */
    static Dangers read(Sheet sheet) {
        if (sheet == null) {
            return Dangers.NONE;
        }
        Map<String, Dangers.Danger> dangers = new LinkedHashMap<>();
        Sheet named = sheet.sheet("dangers");
        if (named != null) {
            for (String name : named.keys()) {
                Sheet one = named.sheet(name);
                String what = one.text("what");
                Set<Gate> closes = gates(one, "closes");
                one.done();
                if (what != null) {
                    dangers.put(name, new Dangers.Danger(name, what, closes));
                }
            }
        }
        Map<String, Dangers.Exemption> exceptions = new LinkedHashMap<>();
        if (sheet.has("unless")) {
            Sheet all = sheet.sheet("unless");
            for (String name : all.keys()) {
                Sheet one = all.sheet(name);
                String says = one.text("says");
                List<Dangers.Proof> shown = new ArrayList<>();
                for (Sheet proof : one.sheets("shown-by")) {
                    shown.add(proof(proof));
                }
                if (shown.isEmpty()) {
                    one.fault("shown-by", "nothing shows it", "Write shown-by: and a list of checks.");
                }
                one.done();
                if (says != null) {
                    exceptions.put(name, new Dangers.Exemption(name, says, List.copyOf(shown)));
                }
            }
        }
        sheet.done();
        return new Dangers(dangers, exceptions);
    }

    private static Dangers.Proof proof(Sheet sheet) {
        Dangers.Proof proof = new Dangers.Proof(sheet.text("check"), sheet.optional("evidence"), new LinkedHashSet<>(sheet.texts("is")), sheet.has("at-most") ? sheet.quantity("at-most") : null);
        if (proof.want() != null && proof.answers().isEmpty() == (proof.atMost() == null)) {
            sheet.fault("evidence", "write what it has to show", "Write is: [empty] for answers, or at-most: 0 L for an amount, one of the two.");
        }
        if (proof.want() == null && (!proof.answers().isEmpty() || proof.atMost() != null)) {
            sheet.fault("check", "a result without its evidence", "Write evidence: and the name of the evidence on the card.");
        }
        sheet.done();
        return proof;
    }

    /** Gates under a key; empty when the key is not there. */
    static Set<Gate> gates(Sheet sheet, String key) {
        Set<Gate> gates = EnumSet.noneOf(Gate.class);
        sheet.texts(key).forEach(name -> Gate.of(name).ifPresentOrElse(gates::add, () -> sheet.fault(key, "'" + name + "' is not a gate", "Known: " + List.of(Gate.values()) + ".")));
        return gates;
    }

    /** Exceptions that rest on a check or evidence that is not there. */
    static void check(Dangers dangers, Map<String, Card> cards, Collection<Fault> faults) {
        dangers.exceptions().values().forEach(exception -> exception.shown().forEach(proof -> {
            Card card = cards.get(proof.check());
            if (card == null) {
                faults.add(new Fault("rules/" + FILE, 0, "unless." + exception.name(), "'" + proof.check() + "' is not a check", "Write the id of a check of this rule book."));
                return;
            }
            if (proof.want() != null && card.wants().stream().noneMatch(want -> want.name().equals(proof.want()) && want.good().containsAll(proof.answers()))) {
                faults.add(new Fault("rules/" + FILE, 0, "unless." + exception.name(), proof.check() + " has no evidence '" + proof.want() + "' with these good answers", "Copy name and answer from its card (" + card.file() + ":" + card.line() + ")."));
            }
        }));
    }
}
