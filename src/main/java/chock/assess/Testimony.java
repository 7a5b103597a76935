package chock.assess;

import chock.figure.TyreDate;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Claim;
import chock.record.ClaimedFigure;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Machine;
import chock.record.Plausible;
import chock.record.Value;
import java.time.LocalDate;
import java.time.Period;
import java.time.Year;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What the entries of a record say to one claim. */
final class Testimony {
    /** A part counts as new when it was made within this time before it was fitted or seen (common practice). A claim changes no verdict, so this is no limit of a check. */
    private static final Period NEW = Period.ofMonths(12);
    private static final Set<String> STRIPPING = Set.of("stripped", "repaired");
    private static final Set<String> MARRING = Set.of("damaged", "repaired");

    private final Claim claim;
    private final Machine machine;
    private final List<Entry> entries;
    private final Plausible plausible;
    private final Year today;

    /**
     * @param entries those that count, in order of time
     * @param plausible what figures can be at all
     * @param today the year judged
     */
    Testimony(Claim claim, Machine machine, List<Entry> entries, Plausible plausible, Year today) {
        this.claim = claim;
        this.plausible = plausible;
        this.today = today;
        this.machine = machine;
        this.entries = entries;
    }

    /** Which side an entry takes. */
    enum Side { FOR, AGAINST, CLOUDS }

    /** @param entry id of the entry, or null when it is the machine's own description */
    record Word(Side side, String entry, String says) { }

    /** Why the claim cannot be held against anything, or empty. */
    Optional<String> unclear() {
        Optional<String> impossible = ClaimedFigure.refused(claim.kind(), claim.says(), plausible, today);
        return impossible.isPresent() ? impossible.map(why -> why + "; ask again what was meant") : switch (claim.kind()) {
            case MILEAGE -> claimedLength().isPresent() ? Optional.empty() : Optional.of("it names no distance; write the figure with its unit, such as 18200 mi");
            case TREAD -> claimedLength().isPresent() ? Optional.empty() : Optional.of("it names no depth; write the figure with its unit, such as 4 mm");
            case YEAR -> claimedYear().isPresent() ? Optional.empty() : Optional.of("it names no year; write it with four figures");
            default -> Optional.empty();
        };
    }

    List<Word> words() {
        List<Word> words = new ArrayList<>();
        if (claim.kind() == Claim.Kind.YEAR && claim.about().equals("machine") && !claimedYear().equals(Optional.of(machine.built()))) {
            words.add(new Word(Side.AGAINST, null, "this record says it was built in " + machine.built()));
        }
        entries.forEach(e -> word(e).ifPresent(words::add));
        return words;
    }

    private Optional<Word> word(Entry e) {
        return switch (claim.kind()) {
            case NEW -> onNew(e);
            case REBUILT -> onRebuilt(e);
            case ORIGINAL -> onOriginal(e);
            case MILEAGE -> onMileage(e);
            case TREAD -> onTread(e);
            case YEAR -> onYear(e);
        };
    }

    private Optional<Word> onNew(Entry e) {
        if (isDone(e, "replaced") && covers(e.point(), claim.about())) {
            return says(Side.FOR, e, "replaced " + e.at());
        }
        if (e.deed() == Deed.DONE) {
            boolean marred = MARRING.contains(e.what()) && (covers(e.point(), claim.about()) || covers(claim.about(), e.point())) && replacedSince(e).isEmpty();
            return marred ? says(Side.AGAINST, e, e.what() + " " + e.at()) : Optional.empty();
        }
        Optional<Made> made = made(e);
        if (made.isEmpty() || !covers(claim.about(), e.point()) || replacedSince(e).isPresent()) {
            return Optional.empty();
        }
        // none was fitted since
        Optional<Entry> fitted = lastReplaced();
        LocalDate then = fitted.map(f -> f.at().date()).orElse(e.at().date());
        if (made.get().to().plus(NEW).isBefore(then)) {
            return says(Side.AGAINST, e, made.get().words() + ", over " + NEW.toTotalMonths() + " months old when it was " + (fitted.isPresent() ? "fitted " : "seen ") + then);
        }
        boolean fresh = e.point().equals(claim.about()) && !made.get().from().plus(NEW).isBefore(then);
        return fresh ? says(Side.FOR, e, made.get().words()) : Optional.empty();
    }

    private Optional<Word> onRebuilt(Entry e) {
        if (e.deed() != Deed.DONE) {
            return Optional.empty();
        }
        if (STRIPPING.contains(e.what()) && covers(e.point(), claim.about())) {
            return says(Side.FOR, e, e.what() + " " + e.at());
        }
        boolean hurt = e.what().equals("damaged") && (covers(e.point(), claim.about()) || covers(claim.about(), e.point()));
        boolean mended = hurt && entries.stream().anyMatch(w -> w.deed() == Deed.DONE && STRIPPING.contains(w.what()) && covers(w.point(), claim.about()) && w.at().surelyAfter(e.at()));
        return hurt && !mended ? says(Side.AGAINST, e, "damaged " + e.at() + ", and not rebuilt since") : Optional.empty();
    }

    private Optional<Word> onOriginal(Entry e) {
        if (isDone(e, "replaced")) {
            boolean itself = Entry.covers(e.point(), claim.about());
            return itself || covers(claim.about(), e.point()) ? says(itself ? Side.AGAINST : Side.CLOUDS, e, "replaced " + Points.words(e.point()) + " " + e.at()) : Optional.empty();
        }
        if (!(e.is() instanceof Value.Code code)) {
            return Optional.empty();
        }
        if (e.what().equals("number") && e.point().equals(claim.about())) {
            boolean same = StampedNumber.same(code.text(), claim.about().equals("engine") ? machine.engineNumber() : machine.frameNumber());
            return says(same ? Side.FOR : Side.AGAINST, e, "number " + code + (same ? ", as in this record" : ", and not the one in this record"));
        }
        if (!e.what().equals("part-of-another-year")) {
            return Optional.empty();
        }
        if (code.text().equals("none")) {
            return covers(e.point(), claim.about()) ? says(Side.FOR, e, "no part of another year seen " + e.at()) : Optional.empty();
        }
        boolean within = covers(claim.about(), e.point());
        return within || covers(e.point(), claim.about()) ? says(within ? Side.AGAINST : Side.CLOUDS, e, "of another year: " + code) : Optional.empty();
    }

    private Optional<Word> onMileage(Entry e) {
        Quantity claimed = claimedLength().orElseThrow();
        if (!e.what().equals("odometer") || !(e.is() instanceof Value.Amount amount)) {
            return Optional.empty();
        }
        Quantity shown = amount.measured().value();
        boolean more = shown.compareTo(claimed) > 0;
        return says(more ? Side.AGAINST : Side.FOR, e, "the odometer showed " + shown + ", " + (more ? "more" : "no more") + " than " + claimed);
    }

    private Optional<Word> onTread(Entry e) {
        Quantity claimed = claimedLength().orElseThrow();
        if (!e.what().equals("tread-depth") || !covers(claim.about(), e.point()) || !(e.is() instanceof Value.Amount amount) || replacedSince(e).isPresent()) {
            return Optional.empty();
        }
        Measured depth = amount.measured();
        if (depth.value().compareTo(claimed) >= 0) {
            return says(Side.FOR, e, "tread depth " + depth + ", no less than " + claimed);
        }
        Quantity shy = claimed.minus(depth.value());
        boolean surely = depth.uncertainty() == null || shy.compareTo(depth.uncertainty()) > 0;
        return says(surely ? Side.AGAINST : Side.CLOUDS, e, "tread depth " + depth + ", " + (surely ? "less than " : "which cannot be told from ") + claimed);
    }

    private Optional<Word> onYear(Entry e) {
        Year year = claimedYear().orElseThrow();
        Optional<Made> made = made(e);
        if (made.isEmpty() || !e.point().equals(claim.about())) {
            return Optional.empty();
        }
        boolean before = made.get().to().getYear() < year.getValue();
        boolean after = made.get().from().getYear() > year.getValue();
        boolean within = made.get().from().getYear() == year.getValue() && made.get().to().getYear() == year.getValue();
        return before || after ? says(Side.AGAINST, e, made.get().words()) : within ? says(Side.FOR, e, made.get().words()) : Optional.empty();
    }

    /** The days on which a part can have been made, by what is marked on it. */
    private record Made(LocalDate from, LocalDate to, String words) { }

    private static Optional<Made> made(Entry e) {
        if (e.is() instanceof Value.Days days) {
            return Optional.of(new Made(days.from(), days.to(), "marked " + days));
        }
        if (e.is() instanceof Value.Code code && e.what().equals("date-code")) {
            return TyreDate.find(code.text(), e.at().date())
                    .map(d -> new Made(d.earliest(), d.latest(), "date code " + code));
        }
        return Optional.empty();
    }

    private Optional<Entry> replacedSince(Entry seen) {
        return replaced().stream().filter(r -> r.at().surelyAfter(seen.at())).findFirst();
    }

    private Optional<Entry> lastReplaced() {
        return replaced().stream().max(Comparator.comparing((Entry r) -> r.at().latest()));
    }

    private List<Entry> replaced() {
        return entries.stream().filter(r -> isDone(r, "replaced") && covers(r.point(), claim.about())).toList();
    }

    private static boolean isDone(Entry e, String work) {
        return e.deed() == Deed.DONE && e.what().equals(work);
    }

    /** The whole machine carries every part of it. */
    private static boolean covers(String above, String below) {
        return above.equals("machine") || Entry.covers(above, below);
    }

    private static Optional<Word> says(Side side, Entry e, String words) {
        return Optional.of(new Word(side, e.id(), words + " (" + e.id() + ")"));
    }

    private Optional<Quantity> claimedLength() {
        return ClaimedFigure.length(claim.says());
    }

    private Optional<Year> claimedYear() {
        return ClaimedFigure.year(claim.says());
    }
}
