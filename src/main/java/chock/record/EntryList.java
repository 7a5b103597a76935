package chock.record;

import java.util.AbstractList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** The entries of a record in the order they were written, each found by its id. */
final class EntryList extends AbstractList<Entry> implements RandomAccess {
    private final List<Entry> entries;
    private final Map<String, Entry> byId = new HashMap<>();

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

    @Override
    public Entry get(int index) {
        return entries.get(index);
    }

    @Override
    public int size() {
        return entries.size();
    }
}
