package chock.assess;

import chock.record.Entry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Things found by the place on the machine they are at, so that not every one of them is looked at for every place. */
final class Places<T> {
    private final List<T> all;
    private final NavigableMap<String, List<Integer>> numbers = new TreeMap<>();

    /** @param place says where a thing is */
    Places(List<T> all, Function<T, String> place) {
        this.all = all;
        for (int i = 0; i < all.size(); i++) {
            numbers.computeIfAbsent(place.apply(all.get(i)), p -> new ArrayList<>()).add(i);
        }
    }

    /** Everything at these places, at what carries them and at what they carry, each once, in the order it was given. */
    List<T> touching(Collection<String> places) {
        TreeSet<Integer> found = new TreeSet<>();
        for (String place : places) {
            for (int slash = place.indexOf('/'); slash >= 0; slash = place.indexOf('/', slash + 1)) {
                found.addAll(numbers.getOrDefault(place.substring(0, slash), List.of()));
            }
            // Other places may begin with the same letters and stand between.
            numbers.tailMap(place, true).entrySet().stream().takeWhile(at -> at.getKey().startsWith(place))
                    .filter(at -> Entry.covers(place, at.getKey())).forEach(at -> found.addAll(at.getValue()));
        }
        List<T> touching = new ArrayList<>(found.size());
        found.forEach(number -> touching.add(all.get(number)));
        return touching;
    }
}
