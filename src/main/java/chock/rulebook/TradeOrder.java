package chock.rulebook;

import chock.record.Entry;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which the trade does things, stage by stage.
 *
 * @param stages the stages, in their order
 */
public record TradeOrder(List<Stage> stages) {

    /** A rule book without an order: steps come part by part. */
    static final TradeOrder NONE = new TradeOrder(List.of());

    /**
     * One stage.
     *
     * @param name as the trade calls it
     * @param ends whether it goes through one end of the machine after the other
     * @param parts places whose steps belong to it where none is listed
     * @param proofs where in the stage each listed proof comes, from 0; a check, or a check and a want with a blank between
     */
    public record Stage(String name, boolean ends, Set<String> parts, Map<String, Integer> proofs) { }

    /**
     * Where a step comes.
     *
     * @param stage number of the stage; one behind the last for what belongs to none
     * @param end 0 in front, 1 behind, 2 at the third wheel; always 0 in a stage without ends
     * @param place how far on in the stage; −1 for what is not listed there
     */
    public record Rank(int stage, int end, int place) implements Comparable<Rank> {
        @Override
        public int compareTo(Rank other) {
            return stage != other.stage ? Integer.compare(stage, other.stage) : end != other.end ? Integer.compare(end, other.end) : Integer.compare(place, other.place);
        }
    }

    /** Where a step at a point comes that answers these proofs; of several that are listed the first decides. */
    public Rank rank(String point, List<String> checks, List<String> wants) {
        for (int stage = 0; stage < stages.size(); stage++) {
            Stage one = stages.get(stage);
            int first = Integer.MAX_VALUE;
            for (int i = 0; i < checks.size(); i++) {
                Integer own = one.proofs.get(checks.get(i) + " " + wants.get(i));
                Integer whole = one.proofs.get(checks.get(i));
                first = Math.min(first, own != null ? own : whole != null ? whole : first);
            }
            if (first < Integer.MAX_VALUE) {
                return new Rank(stage, one.ends ? end(point) : 0, first);
            }
        }
        int nearest = -1;
        int length = -1;
        for (int stage = 0; stage < stages.size(); stage++) {
            for (String part : stages.get(stage).parts) {
                if (part.length() > length && Entry.covers(part, point)) {
                    nearest = stage;
                    length = part.length();
                }
            }
        }
        return nearest < 0 ? new Rank(stages.size(), 0, -1) : new Rank(nearest, stages.get(nearest).ends ? end(point) : 0, -1);
    }

    // What belongs to no end, as the chain, goes with the rear wheel.
    private static int end(String point) {
        return point.startsWith("front") ? 0 : point.startsWith("third") ? 2 : 1;
    }
}
