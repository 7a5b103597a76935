package chock.useful;

import chock.assess.GateVerdict;
import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.UndoneLater;
import chock.record.Gate;
import chock.useful.HonestRecord.Line;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Carries out the program's own order of work, step by step, with a good result each time, and counts what had to be written. */
final class Orders {
    private Orders() { }

    /**
     * What an order came to.
     *
     * @param entries pieces of work and looks the order asked for; a look may have several answers
     * @param written answers and pieces of work the order asked for
     * @param least of these, what remains when every one is left out without which the gate is still released
     * @param released whether the gate is released after all of them
     * @param lines the entries
     * @param open what still blocks, a line a check
     */
    record Outcome(int entries, int written, int least, boolean released, List<Line> lines, List<String> open) {
        /** How many times the least the order asks for, 1 where both are nothing. */
        boolean within(double times) {
            return written <= Math.max(1, Math.floor(least * times));
        }
    }

    /** @param least whether to look for the least as well, which takes one judgement for each entry */
    static Outcome carriedOut(HonestRecord record, Gate gate, boolean least) {
        OrderOfWork order = record.order(gate);
        List<Line> lines = lines(record, order.steps());
        int entries = (int) order.together().stream().filter(look -> look.get(0).kind() != Kind.SETTLE).count();
        HonestRecord after = HarmlessChange.later(record, lines);
        List<Line> written = after.lines().subList(record.lines().size(), after.lines().size());
        GateVerdict verdict = after.at(gate);
        int fewest = verdict.released() && least ? fewest(record, after, written, gate) : written.size();
        return new Outcome(entries, written.size(), fewest, verdict.released(), List.copyOf(written), HonestRecord.open(verdict).toList());
    }

    /** The same, and the order asked for once more where the work took so long that looks of the day were over by then. */
    static Outcome carriedOutInTurns(HonestRecord record, Gate gate, boolean least) {
        Outcome first = carriedOut(record, gate, least);
        if (first.released()) {
            return first;
        }
        Outcome second = carriedOut(after(record, gate), gate, least);
        List<Line> lines = new ArrayList<>(first.lines());
        lines.addAll(second.lines());
        // What the first turn was fewest with is not known: it released nothing.
        return new Outcome(first.entries() + second.entries(), lines.size(), first.written() + second.least(), second.released(), lines, second.open());
    }

    /** The record when the order for a gate has been carried out once. */
    static HonestRecord after(HonestRecord record, Gate gate) {
        return HarmlessChange.later(record, lines(record, record.order(gate).steps()));
    }

    /** Proofs of these steps for a gate that a later one of them takes away again. */
    static List<String> undoneLater(HonestRecord record, Gate gate, List<Step> steps) {
        List<Set<String>> checks = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (Step step : steps) {
            List<Line> ofStep = lines(record, List.of(step));
            ofStep.forEach(line -> checks.add(Set.copyOf(step.checks())));
            lines.addAll(ofStep);
        }
        HonestRecord after = HarmlessChange.later(record, lines);
        Map<String, Set<String>> written = new HashMap<>();
        for (int i = 0; i < lines.size(); i++) {
            written.put(after.lines().get(record.lines().size() + i).id(), checks.get(i));
        }
        return UndoneLater.of(after.read(), HonestRecord.BOOK, gate, after.moment(), written);
    }

    /** Leaves out one entry after the other, from the last to the first, as long as the gate stays released. */
    private static int fewest(HonestRecord record, HonestRecord after, List<Line> written, Gate gate) {
        List<Line> kept = new ArrayList<>(written);
        for (int i = written.size() - 1; i >= 0 && kept.size() > 1; i--) {
            Line out = written.get(i);
            List<Line> without = new ArrayList<>(kept);
            without.remove(out);
            if (record.and(without).judgedAt(after.asOf()).at(gate).released()) {
                kept = without;
            }
        }
        return kept.size();
    }

    private static List<Line> lines(HonestRecord record, List<Step> steps) {
        boolean alone = record.head().get("one-person").asText().equals("yes");
        return lines(record, steps, alone ? "ida" : "tom");
    }

    /** @param worker who does the work, and looks at what the other did */
    private static List<Line> lines(HonestRecord record, List<Step> steps, String worker) {
        List<Line> lines = new ArrayList<>();
        for (Step step : steps) {
            if (step.kind() == Kind.SETTLE) {
                continue;
            }
            if (step.kind().isWork()) {
                String work = step.what() == null ? "repaired" : step.what();
                Bench.Result written = Bench.done(work);
                lines.add(new Line("", null, worker, step.point(), "done", work, written.is(), written.with(), Map.of()));
                continue;
            }
            Line look = Catalogued.line(record.sheet(), record.gates(), step.point(), step.what()).by("Ida Marrow".equals(step.notBy()) ? worker : "ida");
            if (step.namesDocument()) {
                look = look.and("note", "registration certificate, page 1").and("note-is", "remark");
            }
            if (step.corrects().isEmpty()) {
                lines.add(look);
            }
            // Somebody else than who wrote the entry takes it back, where the order does not say who.
            Line again = look;
            step.corrects().forEach(id -> lines.add(again.by(record.lines().stream().anyMatch(l -> l.id().equals(id) && l.by().equals("ida")) ? worker : "ida").and("corrects", id).and("reason", "looked again")));
        }
        return lines;
    }
}
