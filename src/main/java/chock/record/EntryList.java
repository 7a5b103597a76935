package chock.record;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** The entries of a record in the order they were written, each found by its id. */
final class EntryList extends AbstractList<Entry> implements RandomAccess {
    private final List<Entry> entries;
    private final Map<String, Entry> byId = new HashMap<>();
    private volatile Map<String, Entry> lastCorrections;

    private EntryList(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        entries.forEach(entry -> byId.putIfAbsent(entry.id(), entry));
    }

    static EntryList of(List<Entry> entries) {
        return entries instanceof EntryList known ? known : new EntryList(entries);
    }

    /** The entry with this id, or null. */
    Entry byId(String id) {
        return byId.get(id);
    }

    /** By the id of each entry that was corrected its correction, or where that was corrected as well, the last of them. */
    Map<String, Entry> lastCorrections() {
        if (lastCorrections == null) {
            lastCorrections = followed();
        }
        return lastCorrections;
    }

    private Map<String, Entry> followed() {
        Map<String, Entry> next = new HashMap<>();
        entries.stream().filter(entry -> entry.corrects() != null).forEach(entry -> next.putIfAbsent(entry.corrects(), entry));
        Map<String, Entry> last = new HashMap<>();
        for (String first : next.keySet()) {
            List<String> way = new ArrayList<>();
            String id = first;
            while (next.containsKey(id) && !last.containsKey(id)) {
                way.add(id);
                id = next.get(id).id();
                if (way.size() > next.size()) {
                    throw new IllegalStateException("entries correct each other in a circle, from " + first + " on");
                }
            }
            Entry end = last.getOrDefault(id, byId.get(id));
            way.forEach(one -> last.put(one, end));
        }
        return last;
    }

    @Override
    public Entry get(int index) {
        return entries.get(index);
    }

    @Override
    public int size() {
        return entries.size();
    }
}
