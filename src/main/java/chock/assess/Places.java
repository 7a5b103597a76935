package chock.assess;

import chock.rulebook.Reach;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Things found by the place on the machine they are at, so that not every one of them is looked at for every place. */
final class Places<T> {
    private final List<T> all;
    /** What is at a place, by number. */
    private final Map<String, List<Integer>> at = new HashMap<>();
    /** What is at a place or at something it carries, by number. */
    private final Map<String, List<Integer>> within = new HashMap<>();

    /** @param place says where a thing is */
    Places(List<T> all, Function<T, String> place) {
        this.all = all;
        for (int i = 0; i < all.size(); i++) {
            String point = place.apply(all.get(i));
            at.computeIfAbsent(point, p -> new ArrayList<>()).add(i);
            for (String above = point; above != null; above = Reach.above(above)) {
                within.computeIfAbsent(above, p -> new ArrayList<>()).add(i);
            }
        }
    }

    /** Everything within reach, each once, in the order it was given; the list is the caller's own. */
    List<T> within(Reach reach) {
        BitSet found = new BitSet(all.size());
        reach.carried().forEach(place -> mark(within.get(place), found));
        reach.carrying().forEach(place -> mark(at.get(place), found));
        List<T> things = new ArrayList<>();
        for (int number = found.nextSetBit(0); number >= 0; number = found.nextSetBit(number + 1)) {
            things.add(all.get(number));
        }
        return things;
    }

    private static void mark(List<Integer> numbers, BitSet found) {
        if (numbers != null) {
            for (int number : numbers) {
                found.set(number);
            }
        }
    }
}
