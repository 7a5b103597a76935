package chock.board.store;

import java.time.Instant;
import java.util.List;

/**
 * What the rule book made of a machine, kept beside it so that the database can list and count.
 *
 * @param book digest of the rule book
 * @param gates one for each gate sought
 * @param again from when it may be otherwise though nobody wrote anything, or null
 */
public record Summary(String book, List<OfGate> gates, Instant again) {

    /**
     * One gate.
     *
     * @param holdsUntil last instant of the release, or null when blocked
     * @param undecided how much the rule book itself could not decide
     * @param held what holds it, worst first
     */
    public record OfGate(String gate, boolean released, Instant holdsUntil, int faults, int doubts, int stales, int missings,
                         int mets, int undecided, List<Held> held) {

        /** How many things are open. */
        public int open() {
            return faults + doubts + stales + missings + undecided;
        }

        /** Grows with what is open; where that is equal, with the faults, for a fault wants work and the rest a look. */
        long distance() {
            return open() * 100L + Math.min(faults, 99);
        }
    }

    /** One thing that holds a machine at a gate. */
    public record Held(String check, String state, boolean critical, String says) { }

    /** How far the gate nearest to its release is from it, or null when none is blocked. */
    Long nearest() {
        return gates.stream().filter(g -> !g.released()).map(OfGate::distance).min(Long::compare).orElse(null);
    }

    /** When the first release lapses, or null. */
    Instant lapses() {
        return gates.stream().filter(OfGate::released).map(OfGate::holdsUntil).min(Instant::compareTo).orElse(null);
    }
}
