package chock.rulebook;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import chock.record.Spelling;
import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** A limit with another value, for trying what it would do. What a law sets is not touched. */
public final class Trial {
    private final Limit now;
    private final Quantity value;
    private final Quantity upper;

    private Trial(Limit now, Quantity value, Quantity upper) {
        this.now = now;
        this.value = value;
        this.upper = upper;
    }

    /**
     * Reads {@code tyres.age=8 y}, or {@code electrics.charging-voltage-12=13.8 V to 14.8 V} for a limit with two ends.
     *
     * @throws IllegalArgumentException when there is no such limit, it has no number of its own, or the value does not fit; the message says what to write
     */
    public static Trial read(String written, RuleBook book) {
        String[] parts = written.split("=", 2);
        String id = parts[0].strip();
        if (parts.length < 2 || parts[1].isBlank()) {
            throw new IllegalArgumentException("'" + written + "': write a limit and its value, such as tyres.age=8y");
        }
        Limit now = book.limits().stream().filter(l -> l.id().equals(id)).max(Comparator.comparing(Limit::from))
                .orElseThrow(() -> new IllegalArgumentException("there is no limit '" + id + "'." + nearest(id, book)));
        if (now.sense() == Limit.Sense.MAKER_ONLY) {
            throw new IllegalArgumentException(id + " has no number of its own: it is the maker's, and stands in each record");
        }
        List<Quantity> values = Stream.of(parts[1].split("\\s+to\\s+|(?<=\\S)\\s*\\.\\.\\s*(?=\\S)")).map(text -> quantity(id, text, now)).toList();
        if (now.sense() == Limit.Sense.BETWEEN && (values.size() != 2 || values.get(0).compareTo(values.get(1)) > 0)) {
            throw new IllegalArgumentException(id + " has two ends, " + now.bounds().words() + ": write the lower and the higher, such as " + id + "=" + now.value() + " to " + now.upper());
        }
        if (now.sense() != Limit.Sense.BETWEEN && values.size() != 1) {
            throw new IllegalArgumentException(id + " has one value, " + now.value() + ": write one, such as " + id + "=" + now.value());
        }
        for (Quantity value : values) {
            book.vocabulary().plausible().refuses(id, value).ifPresent(why -> {
                throw new IllegalArgumentException(why + ": check the unit and the decimal point");
            });
        }
        return new Trial(now, values.get(0), values.size() == 2 ? values.get(1) : null);
    }

    private static Quantity quantity(String id, String text, Limit now) {
        Quantity value;
        try {
            value = Quantity.parse(text);
        } catch (UnreadableQuantity e) {
            throw new IllegalArgumentException(id + ": " + e.getMessage(), e);
        }
        if (value.unit().dimension() != now.value().unit().dimension()) {
            throw new IllegalArgumentException(id + " is " + now.value() + " now, and " + value + " is of another kind: give it in a unit of " + now.value().unit().dimension().words());
        }
        if (value.unit().dimension() == Unit.Dimension.AGE && value.to(Unit.MONTHS).value().remainder(BigDecimal.ONE).signum() != 0) {
            throw new IllegalArgumentException(id + ": " + value + " is no whole number of months, and ages are counted in months");
        }
        return value;
    }

    private static String nearest(String id, RuleBook book) {
        TreeSet<String> known = new TreeSet<>(book.limits().stream().map(Limit::id).toList());
        String thing = id.substring(id.indexOf('.') + 1);
        List<String> near = Stream.concat(Spelling.nearest(id, known).stream(), known.stream().filter(k -> !thing.isBlank() && k.contains(thing))).distinct().limit(3).toList();
        return near.isEmpty() ? " 'chock rules' shows the limits of each check." : " Did you mean " + String.join(" or ", near) + "?";
    }

    /** The limit under the new value, for {@link RuleBook#with}; itself when it is another limit, or a law's. */
    public UnaryOperator<Limit> change() {
        return l -> !l.id().equals(now.id()) || l.territory() != null ? l
                : new Limit(l.id(), l.of(), l.sense(), value, upper, l.passesAtLimit(), l.resolution(), l.from(), l.registeredFrom(), l.registeredBefore(), l.fasterThan(), l.largerThan(), l.source(), l.reviewed(),
                        l.maker(), l.local(), l.territory(), l.file(), l.line());
    }

    /** {@code tyres.age: 8 y instead of 10 y}. */
    public String words() {
        return now.id() + ": " + value + (upper == null ? "" : " to " + upper) + " instead of " + now.value() + (now.upper() == null ? "" : " to " + now.upper());
    }
}
