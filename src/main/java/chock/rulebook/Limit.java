package chock.rulebook;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.record.Machine;
import chock.record.Plausible;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A number with its unit, sense, dates and source.
 *
 * @param id stable id, such as {@code brakes.pad-thickness}
 * @param of what it limits, in words
 * @param sense which side is allowed
 * @param value the number as printed; for {@code within}, the tolerance on the maker's figure
 * @param upper the other end of {@code between}, else null
 * @param passesAtLimit whether exactly the limit is allowed
 * @param resolution the step in which it is meaningful
 * @param from first day on which it applies, or {@link #ALWAYS}
 * @param registeredFrom first registration date from which it applies to a machine, or null
 * @param registeredBefore first registration date before which it applies, or null
 * @param fasterThan top speed above which it applies to a machine, or null
 * @param largerThan swept volume above which it applies to a machine, or null; one without any is not spared by it
 * @param source where it comes from
 * @param reviewed day it was last looked up
 * @param maker whether a maker's figure is asked for
 * @param local whether a local code's value is asked for
 * @param territory code of the territory that sets it, or null
 * @param file file it stands in, for messages
 * @param line line of that file
 */
public record Limit(String id, String of, Sense sense, Quantity value, Quantity upper, boolean passesAtLimit,
                    Quantity resolution, LocalDate from, LocalDate registeredFrom, LocalDate registeredBefore,
                    Quantity fasterThan, Quantity largerThan, Source source, LocalDate reviewed, Maker maker, boolean local, String territory,
                    String file, int line) {

    /** The first day of a limit that holds whatever day is judged: nobody set it on a day, or nobody judged now is older than it. */
    public static final LocalDate ALWAYS = LocalDate.MIN;

    /** Which side of the number is allowed. */
    public enum Sense {
        AT_LEAST, AT_MOST, BETWEEN, WITHIN, MAKER_ONLY;

        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /** What a maker's figure does to a limit. */
    public enum Maker {
        /** Asked for: the record gives one, or says that none was found; it replaces common practice. */ REPLACES,
        /** Asked for, and nothing passes without it. */ NEEDED,
        /** Not asked for. */ NONE
    }

    /** True when it holds whatever day is judged. */
    public boolean isAlways() {
        return from.equals(ALWAYS);
    }

    /** The first day on which it applies, such as {@code 2026-11-25}, or {@code always}. */
    public String firstDay() {
        return isAlways() ? "always" : from.toString();
    }

    /** True when it applies to this machine, by its first registration, its top speed and its size. */
    boolean meets(Machine machine) {
        LocalDate registered = machine.firstRegistered();
        return (registeredFrom == null || !registered.isBefore(registeredFrom)) && (registeredBefore == null || registered.isBefore(registeredBefore))
                && (fasterThan == null || machine.topSpeed().compareTo(fasterThan) > 0)
                && (largerThan == null || machine.engine().cycle() == Machine.Cycle.ELECTRIC
                        || machine.engine().displacement().compareTo(largerThan) > 0);
    }

    /** The range allowed by this limit alone. Not for {@code within} and {@code maker-only}, which need the maker's figure. */
    public Bounds bounds() {
        return switch (sense) {
            case AT_LEAST -> new Bounds(value, passesAtLimit, null, false);
            case AT_MOST -> new Bounds(null, false, value, passesAtLimit);
            case BETWEEN -> new Bounds(value, passesAtLimit, upper, passesAtLimit);
            case WITHIN, MAKER_ONLY -> throw new IllegalStateException(id + " needs the maker's figure");
        };
    }

    /** Why no limit can have this number, as a sentence without a full stop; empty where it can, and where the number is the maker's. */
    Optional<String> impossible(Plausible plausible) {
        return sense == Sense.MAKER_ONLY ? Optional.empty() : Stream.of(value, upper).filter(Objects::nonNull).flatMap(number -> plausible.refuses(id, number).stream()).findFirst();
    }
}
