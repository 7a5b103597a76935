package chock.assess.facts;

import chock.assess.State;
import chock.figure.BadFigureInput;
import chock.quantity.Measured;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What a rule of a check works out from several pieces of evidence.
 *
 * @param required the check it answers
 * @param value an amount to be held against the limit, or null
 * @param made earliest day of manufacture, to be held against a limit of age, or null
 * @param state an outcome that needs no limit, or null
 * @param says the sentence that goes with it, or the words before an amount, or null
 * @param from what it was worked out from
 * @param entries ids of entries it rests on besides, for what is concluded from the record itself
 */
public record Derived(Required required, Measured value, LocalDate made, State state, String says, List<Current> from, List<String> entries) {

    /** An amount to be held against the limit. */
    public static Derived of(Required required, Measured value, Current... from) {
        return new Derived(required, value, null, null, null, List.of(from), List.of());
    }

    /**
     * An amount from a computation. What the computation refuses (a mass of nothing, a temperature no thermometer shows)
     * is no evidence, and the refusal says why.
     */
    public static Derived worked(Required required, Supplier<Measured> computation, Current... from) {
        try {
            return of(required, computation.get(), from);
        } catch (BadFigureInput refused) {
            return missing(required, refused.getMessage(), from);
        }
    }

    /** The same, said in words of its own: they stand before the amount in the finding. */
    public static Derived worked(Required required, String says, Supplier<Measured> computation, Current... from) {
        Derived plain = worked(required, computation, from);
        return plain.value == null ? plain : new Derived(required, plain.value, null, null, says, plain.from, plain.entries);
    }

    /** A day of manufacture, to be held against a limit of age. */
    public static Derived made(Required required, LocalDate earliest, Current... from) {
        return new Derived(required, null, earliest, null, null, List.of(from), List.of());
    }

    public static Derived met(Required required, String says, Current... from) {
        return new Derived(required, null, null, State.MET, says, List.of(from), List.of());
    }

    public static Derived fault(Required required, String says, Current... from) {
        return new Derived(required, null, null, State.FAULT, says, List.of(from), List.of());
    }

    public static Derived missing(Required required, String says, Current... from) {
        return new Derived(required, null, null, State.MISSING, says, List.of(from), List.of());
    }

    /** A fault of the record itself, shown by these entries. */
    public static Derived faultIn(Required required, String says, String... entries) {
        return new Derived(required, null, null, State.FAULT, says, List.of(), List.of(entries));
    }

    /** Something that entries leave open. */
    public static Derived doubtIn(Required required, String says, String... entries) {
        return new Derived(required, null, null, State.DOUBT, says, List.of(), List.of(entries));
    }

    /** Something that these entries ask for and that was not written. */
    public static Derived missingFor(Required required, String says, String... entries) {
        return new Derived(required, null, null, State.MISSING, says, List.of(), List.of(entries));
    }

    public List<String> ids() {
        return Stream.concat(from.stream().map(Current::id), entries.stream()).sorted().toList();
    }

    /** True when it was worked out from a reading that was read again since. */
    public boolean earlier() {
        return from.stream().anyMatch(Current::earlier);
    }

    /** First instant at which one of its pieces is too old, or null. */
    public Instant lapses() {
        return from.stream().map(Current::lapses).filter(Objects::nonNull).min(Comparator.naturalOrder()).orElse(null);
    }

    // Equal ones have equal hashes; sentences and numbers need not be hashed for that. One check may have thousands.
    @Override
    public int hashCode() {
        return 31 * (31 * required.hashCode() + from.hashCode()) + entries.hashCode();
    }
}
