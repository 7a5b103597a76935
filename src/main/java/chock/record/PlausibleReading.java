package chock.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Holds a record that has been read against what can be true at all. What is being written now is refused. What is stored
 * is marked as {@link Value.Impossible}, so that no rule, claim or report can take it for a reading.
 */
public final class PlausibleReading {
    private final Vocabulary words;
    private final PlausibleEntries plausible;
    private final Machine machine;
    private final Map<String, Instrument> instruments;
    private final Map<String, Impossible> certificates;
    private final List<Entry> entries;

    /**
     * An entry that cannot be true.
     *
     * @param at its place in the list
     * @param beside place of the earlier entry it does not go with, or -1
     * @param key the key that is wrong
     */
    private record Found(int at, int beside, String key, Impossible why) { }

    /** @param today the day judged, or null */
    private PlausibleReading(Vocabulary words, List<Entry> entries, Machine machine, Map<String, Instrument> instruments, LocalDate today) {
        this.words = words;
        this.plausible = new PlausibleEntries(words);
        this.machine = machine;
        this.instruments = instruments;
        this.entries = new ArrayList<>(entries);
        this.certificates = plausible.instruments(instruments.values(), entries, today);
    }

    /**
     * The entries of a record as reading it from its file would leave them.
     *
     * @param today the day judged
     */
    public static List<Entry> marked(List<Entry> entries, Machine machine, Collection<Instrument> instruments, Vocabulary words, LocalDate today) {
        Map<String, Instrument> byId = new LinkedHashMap<>();
        instruments.forEach(instrument -> byId.put(instrument.id(), instrument));
        return new PlausibleReading(words, entries, machine, byId, today).marked(found -> { });
    }

    /**
     * The entries that are being read, with what cannot be true marked, and refused where it is being written.
     *
     * @param raw the instruments as they stand in the file
     */
    static List<Entry> of(Reading read, List<Entry> entries, Machine machine, Map<String, Instrument> instruments, List<Raw.Instrument> raw) {
        PlausibleReading reading = new PlausibleReading(read.words, entries, machine, instruments, read.today());
        reading.refuseCertificates(read, raw);
        List<Entry> marked = reading.marked(found -> refuse(read, found));
        for (int i = 0; i < entries.size(); i++) {
            if (entries.get(i) != null && read.isNew(path(i))) {
                int at = i;
                reading.plausible.code(entries.get(i)).ifPresent(why -> read.faults.addIfNew(path(at) + ".is", why.says(), why.advice()));
            }
        }
        return marked;
    }

    private List<Entry> marked(Consumer<Found> told) {
        for (int i = 0; i < entries.size(); i++) {
            Entry entry = entries.get(i);
            if (entry != null && entry.is() != null && entry.what() != null && entry.point() != null) {
                Impossible certificate = entry.with() == null ? null : certificates.get(entry.with());
                Optional<Impossible> why = certificate != null ? Optional.of(certificate) : plausible.of(entry, entry.with() == null ? null : instruments.get(entry.with()));
                if (why.isPresent()) {
                    mark(new Found(i, -1, certificate != null ? "with" : "is", why.get()), told);
                }
            }
        }
        for (PlausiblePairs.Misfit misfit : new PlausiblePairs(words.plausible(), machine, entries).impossible()) {
            mark(new Found(misfit.later(), misfit.earlier(), "is", misfit.why()), told);
        }
        return entries;
    }

    private void mark(Found found, Consumer<Found> told) {
        Entry entry = entries.get(found.at());
        if (!(entry.is() instanceof Value.Impossible)) {
            entries.set(found.at(), entry.withValue(new Value.Impossible(entry.is(), found.why().says(), found.why().advice())));
        }
        told.accept(found);
    }

    private static void refuse(Reading read, Found found) {
        // Of two that do not go together the one that is being written is refused, whatever times they bear.
        int at = read.isNew(path(found.at())) || found.beside() < 0 ? found.at() : found.beside();
        // An instrument refused where it stands is not refused again wherever it was used.
        if (read.isNew(path(at)) && !(found.key().equals("with") && read.faults.anyBelow("instruments"))) {
            read.faults.addIfNew(path(at) + "." + found.key(), found.why().says(), found.why().advice());
        }
    }

    private void refuseCertificates(Reading read, List<Raw.Instrument> raw) {
        for (int i = 0; i < raw.size(); i++) {
            Impossible why = raw.get(i) == null ? null : certificates.get(raw.get(i).id());
            if (why != null && read.isNew("instruments[" + i + "]")) {
                read.faults.addIfNew("instruments[" + i + (why.says().contains(" is due ") ? "].due" : "].calibrated"), why.says(), why.advice());
            }
        }
    }

    private static String path(int i) {
        return "entries[" + i + "]";
    }
}
