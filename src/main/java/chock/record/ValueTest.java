package chock.record;

import chock.quantity.Quantity;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * Whether a value of a field is among some: {@code rigid}, {@code below 80 km/h}, {@code up to 50 cc}, {@code above 700 cc},
 * {@code before 1956}, {@code from 1977}.
 *
 * @param words as it is written
 */
public record ValueTest(String words, Predicate<String> test) {

    /** @throws chock.quantity.UnreadableQuantity when what stands behind a word of comparing is no amount */
    public static ValueTest parse(String text) {
        for (Sense sense : Sense.values()) {
            String start = sense.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " ";
            if (text.startsWith(start)) {
                String bound = text.substring(start.length());
                if (bound.matches("\\d+")) {
                    int number = Integer.parseInt(bound);
                    return new ValueTest(text, value -> value.matches("\\d+") && sense.holds(Integer.compare(Integer.parseInt(value), number)));
                }
                Quantity amount = Quantity.parse(bound);
                return new ValueTest(text, value -> sense.holds(Quantity.parse(value).compareTo(amount)));
            }
        }
        return new ValueTest(text, text::equals);
    }

    /** True of a value when one of several is. */
    public static ValueTest anyOf(List<ValueTest> several) {
        return new ValueTest(String.join(" or ", several.stream().map(ValueTest::words).toList()), value -> several.stream().anyMatch(one -> one.holds(value)));
    }

    public boolean holds(String value) {
        return test.test(value);
    }

    private enum Sense {
        BELOW, UP_TO, ABOVE, BEFORE, FROM;

        boolean holds(int order) {
            return switch (this) {
                case BELOW, BEFORE -> order < 0;
                case UP_TO -> order <= 0;
                case ABOVE -> order > 0;
                case FROM -> order >= 0;
            };
        }
    }
}
