package chock.assess;

import chock.assess.facts.Evidence;
import chock.assess.facts.FoundOut;
import chock.record.Claim;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Plausible;
import chock.record.Value;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Holds what is claimed of a machine against what its record carries. A claim changes no verdict; it is told with what
 * became of it, so that nobody repeats it as if it were proven.
 */
public final class Claims {
    private final JobRecord record;
    private final List<FoundOut> foundOut;
    private final List<Entry> counting;
    private final Plausible plausible;
    private final LocalDate today;

    private Claims(JobRecord record, Plausible plausible, LocalDate today) {
        this.record = record;
        this.plausible = plausible;
        this.today = today;
        this.foundOut = record.entries().stream().filter(e -> e.deed() == Deed.FOUND_OUT).map(FoundOut::new).toList();
        Set<String> corrected = record.entries().stream().map(Entry::corrects).filter(Objects::nonNull).collect(Collectors.toSet());
        this.counting = record.entries().stream().filter(e -> !corrected.contains(e.id())).filter(this::isFirstHand)
                .sorted(Comparator.comparing((Entry e) -> e.at().earliest()).thenComparing(Entry::id)).toList();
    }

    /** What becomes of a claim. */
    public enum Standing {
        /** An entry named for it shows it, and none says otherwise. */ SUPPORTED,
        /** An entry says otherwise, whether it is named or not. */ CONTRADICTED,
        /** Neither. */ UNPROVEN;

        /** As shown in reports. */
        public String id() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param claim what is claimed
     * @param standing what became of it
     * @param says why, in words that go on after a colon, without a full stop
     * @param evidence ids of the entries that decided, in order; may be empty
     */
    public record Weighed(Claim claim, Standing standing, String says, List<String> evidence) { }

    /**
     * Every claim of a record, in the order in which they stand there. Of the entries only those count that are first
     * hand, not corrected, and not taken with an instrument out of its calibration or later found out.
     *
     * @param plausible what figures can be at all; a claim beyond it is held against nothing
     * @param today the day judged
     */
    public static List<Weighed> weigh(JobRecord record, Plausible plausible, LocalDate today) {
        Claims claims = new Claims(record, plausible, today);
        return record.claims().stream().map(claims::weigh).toList();
    }

    /** Work, and what the writer measured, tried or saw. */
    private boolean isFirstHand(Entry entry) {
        if (entry.is() instanceof Value.Impossible) {
            return false;
        }
        if (entry.deed() == Deed.DONE || entry.deed() == Deed.TRIED || entry.deed() == Deed.SEEN) {
            return true;
        }
        if (entry.deed() != Deed.MEASURED) {
            return false;
        }
        Evidence reading = new Evidence(entry, Entry.key(entry.point(), entry.what()), record.instrument(entry.with()).orElseThrow());
        return !reading.outOfCalibration() && foundOut.stream().noneMatch(found -> found.kills(reading));
    }

    private Weighed weigh(Claim claim) {
        Testimony testimony = new Testimony(claim, record.machine(), counting, plausible, Year.from(today));
        Optional<String> unclear = testimony.unclear();
        if (unclear.isPresent()) {
            return new Weighed(claim, Standing.UNPROVEN, unclear.get(), List.of());
        }
        List<Testimony.Word> words = testimony.words();
        List<Testimony.Word> against = words.stream().filter(w -> w.side() == Testimony.Side.AGAINST).toList();
        if (!against.isEmpty()) {
            return weighed(claim, Standing.CONTRADICTED, against);
        }
        List<Testimony.Word> named = words.stream().filter(w -> claim.supportedBy().contains(w.entry())).toList();
        List<Testimony.Word> clouds = words.stream().filter(w -> w.side() == Testimony.Side.CLOUDS).toList();
        if (named.isEmpty()) {
            return new Weighed(claim, Standing.UNPROVEN, whyUnproven(claim), List.of());
        }
        if (!clouds.isEmpty()) {
            List<Testimony.Word> all = new ArrayList<>(named);
            all.addAll(clouds);
            return weighed(claim, Standing.UNPROVEN, all);
        }
        return weighed(claim, Standing.SUPPORTED, named);
    }

    private static Weighed weighed(Claim claim, Standing standing, List<Testimony.Word> words) {
        return new Weighed(claim, standing, words.stream().map(Testimony.Word::says).distinct().collect(Collectors.joining("; ")),
                words.stream().map(Testimony.Word::entry).filter(id -> id != null).distinct().toList());
    }

    private String whyUnproven(Claim claim) {
        return claim.supportedBy().isEmpty() ? "no entry is named for it" : claim.supportedBy().stream().map(this::whyNot).collect(Collectors.joining("; "));
    }

    private String whyNot(String id) {
        Optional<Entry> entry = record.entry(id);
        if (entry.isEmpty()) {
            return "there is no entry " + id;
        }
        Entry e = entry.get();
        if (e.deed() == Deed.TOLD || e.deed() == Deed.ASSUMED) {
            return id + " is hearsay itself";
        }
        if (!counting.contains(e)) {
            return id + " does not count: it was corrected, or is no work, reading or sighting that can be relied on";
        }
        return id + " does not show it (" + Judge.brief(e) + (e.deed() == Deed.DONE ? "" : ", " + Points.words(e.point())) + ")";
    }
}
