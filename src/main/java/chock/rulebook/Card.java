package chock.rulebook;

import chock.record.Deed;
import chock.record.Gate;
import chock.record.Vocabulary;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * A check as it is written down: one question with a stable id.
 *
 * @param id {@code <system>.<thing>}
 * @param question what the check asks
 * @param applies to what it applies, in words that complete "asked of …"
 * @param gates the gates that ask it
 * @param needs what must be allowed before the evidence can be had
 * @param critical whether somebody gets hurt when it is wrong
 * @param place pattern of the points it is asked at
 * @param wants the evidence it wants
 * @param limit id of the limit, or null
 * @param holds how long evidence holds
 * @param undoneBy work that undoes it, besides work on the point itself or above it; of a shipped card from {@code rules/undoing.yaml}, of a house's from the card
 * @param survives work above the point that leaves it untouched, though it disturbs: a rim stays true when the wheel comes out
 * @param clearedBy the work that clears a fault, any one of the rows; empty when the remedy can be any work there
 * @param together which of the wants count only when taken together, or null
 * @param remedy what clears it, in the imperative
 * @param caution where people get hurt, or null
 * @param formerly ids it had before
 * @param dangers what a known fault of it can do, by name; empty where a check of a house names none
 * @param closes which gates a known fault closes though they do not ask; null where the rule of its dangers decides
 * @param endsBy what ends a fault that was found at first hand
 * @param file file it stands in
 * @param line line of that file
 */
public record Card(String id, String question, String applies, Set<Gate> gates, Needs needs, boolean critical, Place place,
                   List<Want> wants, String limit, Holds holds, List<Undo> undoneBy, List<Undo> survives, List<Undo> clearedBy, Together together, String remedy, String caution,
                   List<String> formerly, List<String> dangers, List<AlsoCloses> closes, EndsBy endsBy, String file, int line) {

    /** What must be allowed before the evidence can be had. */
    public enum Needs {
        /** Nothing: the machine stands, is pushed, or is turned over without a spark. */ STANDING,
        /** The engine runs on the stand. */ ENGINE_RUNNING,
        /** The machine was ridden on the road. */ RIDING;

        /** True when the gate itself, or an earlier one, has let it happen: no gate may need what only a later one permits. */
        public boolean before(Gate gate) {
            return switch (this) {
                case STANDING -> true;
                case ENGINE_RUNNING -> gate == Gate.ROAD_TEST || gate == Gate.HAND_OVER;
                case RIDING -> gate == Gate.HAND_OVER;
            };
        }
    }

    /**
     * One piece of evidence.
     *
     * @param name its name on the card, unique there
     * @param weakest the weakest kind accepted; {@link Deed#DONE} when work itself is wanted
     * @param aspect what is measured, tried or seen, or the work
     * @param form how it is written
     * @param unit unit of an amount, else null
     * @param good answers that meet it
     * @param bad answers that are a fault
     * @param place where it is looked for when not at the place of the check, or null
     * @param holds how long it holds when not as the card says, or null
     * @param judged whether it alone is held against the limit
     * @param covers whether it is a time during which something was watched or held, which ended when it was written
     * @param varies whether two readings of it may differ though nothing was worked on, as what a meter shows in two runs
     */
    public record Want(String name, Deed weakest, String aspect, Vocabulary.Form form, Unit unit, Set<String> good,
                       Set<String> bad, Place place, Holds holds, boolean judged, boolean varies, boolean covers) { }

    /** What ends a fault that somebody found at first hand. */
    public enum EndsBy {
        /** Work that mends it. */ WORK,
        /** A later look that finds it good: nothing was broken. */ LOOK,
        /** A later good answer that names its document. */ DOCUMENT,
        /** The end of the day it was found on: a fault of the place and the day. */ TIME
    }

    /**
     * Work that undoes evidence: these works (empty: any that disturbs), done at this place or above it.
     *
     * @param only under undone-by, names of the wants it bears on; under cleared-by, the answers whose fault this work clears; empty for all of the card
     */
    public record Undo(Set<String> works, Place place, Set<String> only) { }

    /**
     * Gates that a known fault closes though they do not ask for the check.
     *
     * @param gates the gates
     * @param only the answers that close them; empty means every fault
     * @param at the parts where the fault has to lie; empty means anywhere
     * @param over the amount above which a reading closes them, or null
     * @param below whether only a reading below the limit closes them
     * @param unless name of what keeps them open all the same, or null
     */
    public record AlsoCloses(Set<Gate> gates, Set<String> only, List<String> at, Quantity over, boolean below, String unless) { }

    /** The same card with more work that undoes it, and more that leaves it untouched. */
    Card resting(List<Undo> moreUndoing, List<Undo> moreSparing) {
        return moreUndoing.isEmpty() && moreSparing.isEmpty() ? this : new Card(id, question, applies, gates, needs, critical, place, wants, limit, holds, joined(undoneBy, moreUndoing), joined(survives, moreSparing),
                clearedBy, together, remedy, caution, formerly, dangers, closes, endsBy, file, line);
    }

    private static List<Undo> joined(List<Undo> rows, List<Undo> more) {
        return Stream.concat(rows.stream(), more.stream()).toList();
    }
}
