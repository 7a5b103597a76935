package chock.assess;

import chock.record.Entry;
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
    private final Map<String, List<Integer>> within = new HashMap<>();

    /** What reaches a place or something it carries from elsewhere, by number. */
    private final Map<String, List<Integer>> reaching = new HashMap<>();

    /** @param place says where a thing is */
    Places(List<T> all, Function<T, String> place) {
        this(all, place, thing -> List.of());
    }

    /** @param reached says which other places a thing reaches, with what carries them */
    Places(List<T> all, Function<T, String> place, Function<T, Collection<String>> reached) {
        this.all = all;
        for (int i = 0; i < all.size(); i++) {
            String point = place.apply(all.get(i));
            at.computeIfAbsent(point, p -> new ArrayList<>()).add(i);
            for (String carrying : Entry.upFrom(point)) {
                within.computeIfAbsent(carrying, p -> new ArrayList<>()).add(i);
            }
            for (String other : reached.apply(all.get(i))) {
                reaching.computeIfAbsent(other, p -> new ArrayList<>()).add(i);
            }
        }
    }

    /** Everything at these places, at what carries them and at what they carry, each once, in the order it was given; the list is the caller's own. */
    List<T> touching(Collection<String> places) {
        return listed(around(places));
    }

    /** The same, and everything that reaches them from elsewhere. */
    List<T> touchingOrReaching(Collection<String> places) {
        BitSet found = around(places);
        places.forEach(place -> mark(reaching.get(place), found));
        return listed(found);
    }

    private BitSet around(Collection<String> places) {
        BitSet found = new BitSet(all.size());
        for (String place : places) {
            mark(within.get(place), found);
            Entry.upFrom(place).forEach(carrying -> mark(at.get(carrying), found));
        }
        return found;
    }

    private List<T> listed(BitSet found) {
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
