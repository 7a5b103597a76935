package chock.assess;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.record.Vocabulary;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/**
 * Something that happens to a job record. The numbers choose: which entry or place, how much, who, and how many minutes
 * before the moment of judgement. Whatever a reader would refuse leaves the record as it was.
 */
record Mishap(Kind kind, int which, int much, int who, int ago) {

    enum Kind {
        /** An entry was never written. */ GONE,
        /** It was written days earlier. */ OLDER,
        /** Its time was left out. */ UNTIMED,
        /** It says something else. */ OTHERWISE,
        /** Its uncertainty is wider. */ WIDER,
        /** It was only heard or taken for granted. */ HEARD,
        /** The same was looked at or measured again, with another result. */ AGAIN,
        /** Work on some part. */ WORKED,
        /** A correction, by the writer or by another. */ CORRECTED,
        /** Something nobody may have asked for. */ BESIDES,
        /** An instrument was found out of tolerance. */ FOUND_OUT,
        /** An instrument's calibration ended before. */ OUT_OF_CALIBRATION,
        /** A licensed inspector passed or refused it. */ INSPECTED
    }

    static Arbitrary<Mishap> any() {
        return of(Kind.values());
    }

    /** Half of it happens in the very minute in which everything was proven. */
    static Arbitrary<Mishap> of(Kind... kinds) {
        return Combinators.combine(Arbitraries.of(kinds), Arbitraries.integers().between(0, 999), Arbitraries.integers().between(0, 400), Arbitraries.integers().between(0, 2),
                Arbitraries.frequencyOf(Tuple.of(1, Arbitraries.just(ReadyMachine.PROVEN)), Tuple.of(1, Arbitraries.integers().between(0, 90))))
                .as(Mishap::new);
    }

    JobRecord befalls(JobRecord record, String id) {
        Vocabulary words = Examples.BOOK.vocabulary();
        Entry entry = record.entries().isEmpty() ? null : record.entries().get(which % record.entries().size());
        Moment then = ReadyMachine.ago(record, ago);
        String by = record.people().get(who % record.people().size()).id();
        return switch (kind) {
            case INSPECTED -> and(record, new Entry(id, then, by, Deed.INSPECTED, "machine", much % 2 == 0 ? "refused" : "passed", new Value.Code("L-7"), null, null, null, "document 12, inspector Ann Thrale", 0));
            case FOUND_OUT -> and(record, new Entry(id, then, by, Deed.FOUND_OUT, one(record.instruments(), which).id(), "reads high", null, null, null, null, null, 0));
            case OUT_OF_CALIBRATION -> with(record, one(record.instruments(), which).id());
            case WORKED -> {
                String work = one(new TreeSet<>(words.works().keySet()), much);
                // Who writes that a part was examined writes what was found.
                String reason = work.equals("examined") ? "a loose clip rattled" : null;
                yield and(record, new Entry(id, then, by, Deed.DONE, one(words.points(), which), work, null, null, null, reason, null, 0));
            }
            case BESIDES -> besides(record, id, then, by, one(words.points(), which), one(new TreeSet<>(words.aspects().keySet()), much));
            default -> entry == null ? record : toEntry(record, entry, id, then, by);
        };
    }

    private JobRecord toEntry(JobRecord record, Entry e, String id, Moment then, String by) {
        boolean evidence = e.deed().isEvidence();
        return switch (kind) {
            case GONE -> RandomRecords.with(record, record.entries().stream().filter(other -> other != e && !e.id().equals(other.corrects())).toList());
            case OLDER -> e.corrects() != null || e.at().date().minusDays(much).getYear() < record.machine().built().getValue() ? record
                    : changed(record, e, o -> copy(o, o.id(), new Moment(o.at().date().minusDays(much), o.at().time(), o.at().zone()), o.by(), o.is(), null, null));
            case UNTIMED -> e.corrects() != null || record.entries().stream().anyMatch(o -> e.id().equals(o.corrects())) ? record
                    : changed(record, e, o -> copy(o, o.id(), new Moment(o.at().date(), null, o.at().zone()), o.by(), o.is(), null, null));
            case OTHERWISE -> evidence ? changed(record, e, o -> copy(o, o.id(), o.at(), o.by(), other(o), o.corrects(), o.reason())) : record;
            case WIDER -> changed(record, e, o -> wider(o, BigDecimal.ONE.add(BigDecimal.valueOf(much, 1))));
            case HEARD -> evidence ? changed(record, e, o -> new Entry(o.id(), o.at(), o.by(), much % 2 == 0 ? Deed.TOLD : Deed.ASSUMED, o.point(), o.what(),
                    o.is() instanceof Value.Amount amount ? new Value.Amount(new Measured(amount.measured().value(), null)) : o.is(), null, o.corrects(), o.reason(), null, 0)) : record;
            case AGAIN -> evidence ? and(record, copy(e, id, then, by, other(e), null, null)) : record;
            default -> corrected(record, e, id, then, by);
        };
    }

    /** A correction is later than what it corrects, and of one line there is one. */
    private JobRecord corrected(JobRecord record, Entry e, String id, Moment then, String by) {
        boolean later = then.latest().isAfter(e.at().latest());
        boolean already = record.entries().stream().anyMatch(o -> e.id().equals(o.corrects()));
        return !later || already || !e.deed().isEvidence() && e.deed() != Deed.DONE ? record : and(record, copy(e, id, then, by, other(e), e.id(), "read wrongly"));
    }

    private static JobRecord besides(JobRecord record, String id, Moment then, String by, String point, String name) {
        Vocabulary.Aspect aspect = Examples.BOOK.vocabulary().aspects().get(name);
        Value is = switch (aspect.form()) {
            case ANSWER -> new Value.Answer(new TreeSet<>(aspect.answers()).first());
            case CODE -> new Value.Code("1024");
            case DAYS -> new Value.Days(LocalDate.of(2024, 5, 1), LocalDate.of(2024, 5, 31), "2024-05");
            case AMOUNT -> null;
        };
        return is == null ? record : and(record, new Entry(id, then, by, Deed.SEEN, point, name, is, null, null, null, null, 0));
    }

    /** Another of the answers, or 0 to 4 times the amount. */
    private Value other(Entry e) {
        if (e.is() instanceof Value.Answer) {
            return new Value.Answer(one(new TreeSet<>(Examples.BOOK.vocabulary().aspects().get(e.what()).answers()), much));
        }
        if (e.is() instanceof Value.Code code) {
            return much % 3 == 0 ? code : new Value.Code(much % 3 == 1 ? "2312" : code.text() + "7");
        }
        if (!(e.is() instanceof Value.Amount amount)) {
            return e.is();
        }
        Quantity value = amount.measured().value().times(BigDecimal.valueOf(much, 2));
        if (e.with() == null) {
            return new Value.Amount(new Measured(value, null));
        }
        Quantity least = ReadyMachine.least(e.with(), value);
        return least.value().signum() <= 0 ? e.is() : new Value.Amount(new Measured(value, least));
    }

    static Entry wider(Entry e, BigDecimal factor) {
        return e.is() instanceof Value.Amount amount && amount.measured().uncertainty() != null
                ? copy(e, e.id(), e.at(), e.by(), new Value.Amount(new Measured(amount.measured().value(), amount.measured().uncertainty().times(factor))), e.corrects(), e.reason()) : e;
    }

    private static Entry copy(Entry e, String id, Moment at, String by, Value is, String corrects, String reason) {
        return new Entry(id, at, by, e.deed(), e.point(), e.what(), is, e.with(), corrects, reason, e.note(), 0);
    }

    static JobRecord and(JobRecord record, Entry more) {
        List<Entry> all = new ArrayList<>(record.entries());
        all.add(more);
        return RandomRecords.with(record, all);
    }

    static JobRecord changed(JobRecord record, Entry entry, UnaryOperator<Entry> change) {
        return RandomRecords.with(record, record.entries().stream().map(e -> e == entry ? change.apply(e) : e).toList());
    }

    private static JobRecord with(JobRecord r, String instrument) {
        List<Instrument> instruments = r.instruments().stream().map(i -> i.id().equals(instrument) ? new Instrument(i.id(), i.kind(), i.uncertainty(), i.calibrated(), LocalDate.of(2026, 9, 2)) : i).toList();
        return new JobRecord(r.id(), r.workshop(), r.zone(), r.territory(), r.onePerson(), r.seeks(), r.machine(), r.maker(), r.people(), instruments, r.entries(), r.claims(), r.form());
    }

    private static <T> T one(Collection<T> all, int number) {
        return List.copyOf(all).get(number % all.size());
    }
}
