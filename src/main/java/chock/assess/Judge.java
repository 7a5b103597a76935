package chock.assess;

import chock.assess.facts.AsOf;
import chock.assess.facts.Current;
import chock.assess.facts.Derived;
import chock.assess.facts.Evidence;
import chock.assess.facts.ImpossibleReading;
import chock.assess.facts.Judgement;
import chock.assess.facts.Lack;
import chock.assess.facts.Misplaced;
import chock.assess.facts.Note;
import chock.assess.facts.Required;
import chock.assess.facts.Standing;
import chock.assess.facts.TakenTogether;
import chock.assess.facts.Wanted;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Value;
import chock.rulebook.Applied;
import chock.rulebook.LimitFor;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.stream.Stream;

/** Holds one value against one limit, and says it in a sentence. */
public final class Judge {
    private Judge() { }

    public static Lack nothingRecorded(Wanted wanted) {
        return new Lack(wanted.required(), State.MISSING, switch (wanted.want().weakest()) {
            case DONE -> "no record that it was " + wanted.want().aspect() + at(wanted);
            case MEASURED -> words(wanted.want().aspect()) + at(wanted) + " was never measured";
            case TRIED -> words(wanted.want().aspect()) + at(wanted) + " was never tried";
            default -> words(wanted.want().aspect()) + at(wanted) + " was never looked at";
        });
    }

    private static String at(Wanted wanted) {
        return wanted.point().equals(wanted.required().point()) ? "" : " (" + Points.words(wanted.point()) + ")";
    }

    public static Lack provenOnce(Wanted wanted) {
        return new Lack(wanted.required(), State.STALE, words(wanted.want().aspect()) + at(wanted) + " was entered before and no longer counts");
    }

    /** A fault that work has ended: what it came to has to be read again. */
    public static Lack ended(Judgement fault) {
        return new Lack(fault.required(), State.STALE, fault.says() + "; worked on since, and not read again");
    }

    /** A fault worked out from earlier readings, and nothing was done about it since. */
    public static Judgement stillKnown(Judgement fault) {
        return new Judgement(fault.required(), fault.want(), State.FAULT, fault.says() + "; not mended since, and reading again ends no fault", fault.measured(), fault.applied(), fault.margin(), fault.evidence(), null);
    }

    public static Lack nothingThatCounts(Wanted wanted) {
        Deed weakest = wanted.want().weakest();
        return new Lack(wanted.required(), State.MISSING, words(wanted.want().aspect()) + at(wanted) + " was written down, but not by somebody who "
                + switch (weakest) {
                    case DONE -> "did it";
                    case MEASURED -> "measured it";
                    case TRIED -> "tried it";
                    default -> "looked";
                });
    }

    /** What was read, but not in one go. */
    public static Lack notTogether(TakenTogether taken) {
        return new Lack(taken.required(), State.MISSING, taken.words() + " do not belong together; take them together, " + taken.apart().get(0).wanted().card().together().words() + " and with no work between");
    }

    /** What is to be known of evidence that ends at a sunset nobody can work out. */
    public static String sunsetUnknown(Current current) {
        return "sunset is not known, since the shop's settings name no place: this look holds " + current.wanted().holds().hours().toHours() + " hours";
    }

    /** {@code  to 24 N·m ± 1.2 N·m with wrench-1}, as far as it was written. */
    private static String set(Current current) {
        Entry work = current.evidence().entry();
        return (work.is() == null ? "" : " to " + work.is()) + (work.with() == null ? "" : " with " + work.with());
    }

    /** Judges evidence that decides without a rule of its own: an answer, work, or a value held against the limit. */
    public static Judgement alone(Current current, AsOf asOf) {
        Judgement judged = byItself(current, asOf);
        return current.evidence().misplaced() ? saidElsewhere(judged, current.evidence().entry()) : judged;
    }

    private static Judgement byItself(Current current, AsOf asOf) {
        Wanted wanted = current.wanted();
        Required required = current.required();
        if (wanted.want().weakest() == Deed.DONE) {
            return new Judgement(required, current.want(), State.MET, wanted.want().aspect() + set(current) + " " + current.moment(), null, null, null, ids(current), current.lapses());
        }
        if (current.answer() != null) {
            boolean good = wanted.want().good().contains(current.answer());
            String heard = current.evidence().entry().deed().atLeast(wanted.want().weakest()) ? "" : ", as told";
            return new Judgement(required, current.want(), good ? State.MET : State.FAULT, words(wanted.want().aspect()) + at(wanted) + " " + words(current.answer()) + heard,
                    null, null, null, ids(current), current.lapses());
        }
        Applied applied = wanted.limit().applied();
        if (current.days() != null) {
            return age(required, current.want(), current.days().from(), "marked " + current.days(), applied, ids(current), current.lapses(), asOf);
        }
        return amount(required, current.want(), words(wanted.want().aspect()), current.measured(), applied, ids(current), current.lapses());
    }

    /** Adds the place of an entry that is read here because no check reads it where it was written. */
    private static Judgement saidElsewhere(Judgement j, Entry entry) {
        String says = j.says() + "; written at " + Points.words(entry.point()) + " (" + entry.id() + "), where no check asks for it";
        return new Judgement(j.required(), j.want(), j.state(), says, j.measured(), j.applied(), j.margin(), j.evidence(), j.lapses());
    }

    /** Judges an entry at a place where no check asks for it, whose value says nothing by itself. */
    public static Judgement misplaced(Misplaced misplaced, AsOf asOf) {
        Wanted wanted = misplaced.wanted();
        Entry entry = misplaced.evidence().entry();
        if (entry.is() instanceof Value.Days days && wanted.judged() && wanted.limit() != null && wanted.limit().applied() != null) {
            Judgement age = age(wanted.required(), wanted.name(), days.from(), "marked " + days, wanted.limit().applied(), List.of(entry.id()), null, asOf);
            if (age.state() == State.FAULT) {
                return saidElsewhere(age, entry);
            }
        }
        return new Judgement(wanted.required(), wanted.name(), State.DOUBT, words(entry.what()) + " " + entry.is() + " (" + entry.id() + ") is written at " + Points.words(entry.point())
                + ", where no check asks for it; write it at " + Points.words(wanted.point()) + ", or correct the entry", null, null, null, List.of(entry.id()), null);
    }

    /** Judges what a rule of a check worked out. */
    public static Judgement derived(Derived derived, LimitFor limit, AsOf asOf) {
        if (derived.state() != null) {
            return new Judgement(derived.required(), null, derived.state(), derived.says(), null, null, null, derived.ids(), derived.lapses());
        }
        if (limit == null) {
            throw new IllegalStateException(derived.required().check() + " works out a value and has no limit to hold it against");
        }
        if (derived.made() != null) {
            return age(derived.required(), null, derived.made(), "made " + derived.made(), limit.applied(), derived.ids(), derived.lapses(), asOf);
        }
        String says = derived.says() == null ? "worked out from " + String.join(", ", derived.ids()) + ":" : derived.says();
        return amount(derived.required(), null, says, derived.value(), limit.applied(), derived.ids(), derived.lapses());
    }

    private static Judgement amount(Required required, String want, String what, Measured measured, Applied applied, List<String> evidence, Instant lapses) {
        Bounds.Standing standing = applied.bounds().standing(measured);
        Quantity margin = applied.bounds().margin(measured.value());
        State state = switch (standing) {
            case INSIDE -> State.MET;
            case TOO_CLOSE -> State.DOUBT;
            case OUTSIDE -> State.FAULT;
        };
        String says = what + " " + shown(measured) + ", " + applied.words();
        if (state == State.DOUBT) {
            says += "; inside by " + shown(margin) + ", which this instrument cannot tell from outside";
        }
        return new Judgement(required, want, state, says, measured, applied, margin, evidence, state == State.MET ? lapses : null);
    }

    /** A reading as a sentence shows it: written values as they were written, worked-out ones with no more digits than anybody measured. */
    public static String shown(Measured measured) {
        String value = shown(measured.value());
        return measured.uncertainty() == null ? value : value + " ± " + shown(measured.uncertainty(), 2, RoundingMode.UP);
    }

    private static String shown(Quantity amount) {
        return shown(amount, 4, RoundingMode.HALF_UP);
    }

    // Worked-out values carry more digits than anybody measured; written ones are shown as they were written.
    private static String shown(Quantity amount, int digits, RoundingMode mode) {
        if (amount.value().precision() <= 6) {
            return amount.toString();
        }
        BigDecimal value = amount.value().round(new MathContext(digits, mode)).stripTrailingZeros();
        return new Quantity(value.scale() < 0 ? value.setScale(0) : value, amount.unit()).toString();
    }

    private static Judgement age(Required required, String want, LocalDate made, String how, Applied applied, List<String> evidence, Instant lapses, AsOf asOf) {
        Quantity high = applied.bounds().high();
        LocalDate last = made.plus(period(high));
        LocalDate firstOver = applied.bounds().highPasses() ? last.plusDays(1) : last;
        Period age = Period.between(made, asOf.date());
        Measured measured = new Measured(high.unit() == Unit.YEARS
                ? new Quantity(BigDecimal.valueOf(age.toTotalMonths()).divide(BigDecimal.valueOf(12), 1, RoundingMode.DOWN), Unit.YEARS)
                : new Quantity(BigDecimal.valueOf(age.toTotalMonths()), Unit.MONTHS), null);
        boolean over = !asOf.date().isBefore(firstOver);
        Instant end = firstOver.atStartOfDay(asOf.zone()).toInstant();
        Quantity margin = high.minus(measured.value());
        String says = how + ", age " + measured + ", " + applied.words() + (over ? "" : "; good until " + firstOver.minusDays(1));
        return new Judgement(required, want, over ? State.FAULT : State.MET, says, measured, applied, margin, evidence, over ? null : earlier(end, lapses));
    }

    /** The calendar period of a limit of age given in years or months. */
    static Period period(Quantity age) {
        BigDecimal months = age.unit() == Unit.YEARS ? age.value().multiply(BigDecimal.valueOf(12)) : age.value();
        return Period.ofMonths(months.intValueExact());
    }

    static Instant earlier(Instant a, Instant b) {
        return a == null || b != null && b.isBefore(a) ? b : a;
    }

    /** Judges evidence whose writer says that the note on it is a defect. */
    public static Judgement notedDefect(Current current) {
        return new Judgement(current.required(), current.want(), State.FAULT, noted(current) + "; the writer calls this a defect", null, null, null, ids(current), null);
    }

    /** Judges good evidence with a note that may say otherwise. */
    public static Judgement openNote(Current current) {
        return new Judgement(current.required(), current.want(), State.DOUBT,
                noted(current) + ". Is this note a defect? Look again, and write note-is: remark or note-is: defect", null, null, null, ids(current), null);
    }

    /** Judges good evidence that corrects another for a reason that may say otherwise. */
    public static Judgement openReason(Current current) {
        Entry entry = current.evidence().entry();
        return new Judgement(current.required(), current.want(), State.DOUBT, brief(entry) + at(current.wanted()) + ", with the reason \"" + entry.reason().strip() + "\" (" + entry.id() + "). Does this reason tell of a defect? Look again, and write note-is: remark or note-is: defect", null, null, null, ids(current), null);
    }

    private static String noted(Current current) {
        Entry entry = current.evidence().entry();
        boolean note = entry.note() != null && !entry.note().isBlank();
        return brief(entry) + at(current.wanted()) + ", with the " + (note ? "note" : "reason") + " \"" + (note ? entry.note() : entry.reason()).strip() + "\" (" + entry.id() + ")";
    }

    /** Two readings of one thing with no work between them that cannot both be right. */
    public static Judgement disagreement(Standing first, Standing second) {
        Evidence a = first.evidence();
        Evidence b = second.evidence();
        return new Judgement(first.wanted().required(), first.wanted().name(), State.DOUBT,
                words(first.wanted().want().aspect()) + " " + a.entry().is() + " (" + a.id() + ") and " + b.entry().is() + " (" + b.id() + ") differ by more than their uncertainties together, with no work between them",
                null, null, null, Stream.of(a.id(), b.id()).sorted().toList(), null);
    }

    /** A reading that cannot be true blocks until an entry corrects it. */
    public static Judgement impossible(ImpossibleReading reading) {
        return new Judgement(reading.required(), reading.wanted().name(), State.DOUBT, impossibleWords(reading), null, null, null, List.of(reading.evidence().id()), null);
    }

    /** The same as a note, where something else already blocks. */
    public static Note impossibleNote(ImpossibleReading reading) {
        return new Note(reading.required(), impossibleWords(reading));
    }

    private static String impossibleWords(ImpossibleReading reading) {
        return reading.evidence().whyImpossible() + "; it counts for nothing: read again and correct it";
    }

    private static List<String> ids(Current current) {
        return List.of(current.id());
    }

    private static String words(String aspect) {
        return aspect.replace('-', ' ');
    }

    /** What an entry says, for a sentence about why it no longer counts. */
    static String brief(Entry entry) {
        return entry.deed() == Deed.DONE ? entry.what() + " " + Points.words(entry.point()) : words(entry.what()) + " " + entry.is();
    }
}
