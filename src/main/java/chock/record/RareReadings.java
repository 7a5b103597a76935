package chock.record;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Finds readings that can be true and are rare, to ask whether they are as read. What is asked changes no verdict. */
public final class RareReadings {
    private final Vocabulary words;
    private final Set<String> corrected = new HashSet<>();
    private final Map<String, List<Entry>> alike = new HashMap<>();

    private RareReadings(Vocabulary words, List<Entry> entries) {
        this.words = words;
        for (Entry e : entries) {
            if (e.corrects() != null) {
                corrected.add(e.corrects());
            }
            if (e.is() instanceof Value.Amount) {
                alike.computeIfAbsent(Entry.key(e.point(), e.what()), key -> new ArrayList<>()).add(e);
            }
        }
    }

    /** Each by its id, with a question in words without a full stop. Whoever wrote a note beside it, or read it again, has answered. */
    public static Map<String, String> of(Vocabulary words, Machine machine, List<Entry> entries) {
        RareReadings readings = new RareReadings(words, entries);
        Map<String, String> rare = new LinkedHashMap<>();
        for (Entry entry : entries) {
            if (entry.is() instanceof Value.Amount amount && readings.isOpen(entry, amount.measured())) {
                readings.ask(entry, amount.measured().value(), rare);
            }
        }
        new PlausiblePairs(words.plausible(), machine, entries).rare().forEach((id, why) -> {
            Entry entry = entries.stream().filter(e -> e.id().equals(id)).findFirst().orElseThrow();
            if (entry.is() instanceof Value.Amount amount && readings.isOpen(entry, amount.measured())) {
                rare.putIfAbsent(id, why + " (" + id + ")");
            }
        });
        return rare;
    }

    private void ask(Entry entry, Quantity value, Map<String, String> rare) {
        List<Plausible.Row> rows = words.plausible().rows(entry.what(), entry.point()).stream().filter(row -> row.usual() != null).toList();
        if (!rows.isEmpty() && rows.stream().noneMatch(row -> row.usual().contains(value))) {
            rare.put(entry.id(), PlausibleEntries.name(entry.what()) + " " + value + " as read? It usually lies " + rows.get(0).usual().words() + ". " + rows.get(0).hint() + " (" + entry.id() + ")");
        }
    }

    private boolean isOpen(Entry entry, Measured measured) {
        return Reading.blank(entry.note()) && !corrected.contains(entry.id())
                && alike.get(Entry.key(entry.point(), entry.what())).stream().noneMatch(other -> other != entry && !corrected.contains(other.id()) && agrees(measured, ((Value.Amount) other.is()).measured()));
    }

    private static boolean agrees(Measured one, Measured other) {
        Quantity apart = one.value().minus(other.value().to(one.value().unit())).abs();
        return one.uncertainty() == null ? apart.value().signum() == 0 : apart.value().compareTo(one.uncertainty().differenceTo(apart.unit()).value()) <= 0;
    }
}
