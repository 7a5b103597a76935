package chock.assess;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
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
    private final Map<String, List<Integer>> below = new HashMap<>();

    /** @param place says where a thing is */
    Places(List<T> all, Function<T, String> place) {
        this.all = all;
        for (int i = 0; i < all.size(); i++) {
            String point = place.apply(all.get(i));
            at.computeIfAbsent(point, p -> new ArrayList<>()).add(i);
            for (String above = point; above != null; above = above(above)) {
                below.computeIfAbsent(above, p -> new ArrayList<>()).add(i);
            }
        }
    }

    /** What carries a place, or null when nothing does. */
    private static String above(String place) {
        int slash = place.lastIndexOf('/');
        return slash < 0 ? null : place.substring(0, slash);
    }

    /** Everything at these places, at what carries them and at what they carry, each once, in the order it was given. */
    List<T> touching(Collection<String> places) {
        BitSet found = new BitSet(all.size());
        for (String place : places) {
            mark(below.get(place), found);
            for (String above = above(place); above != null; above = above(above)) {
                mark(at.get(above), found);
            }
        }
        List<T> touching = new ArrayList<>();
        for (int number = found.nextSetBit(0); number >= 0; number = found.nextSetBit(number + 1)) {
            touching.add(all.get(number));
        }
        return touching;
    }

    private static void mark(List<Integer> numbers, BitSet found) {
        if (numbers != null) {
            for (int number : numbers) {
                found.set(number);
            }
        }
    }
}
