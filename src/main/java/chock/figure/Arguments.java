package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The arguments of one computation, each read as what it should be. */
final class Arguments {
    private final Map<String, String> written;

    Arguments(Map<String, String> written) {
        this.written = written;
    }

    String text(String name) {
        return written.get(name);
    }

    Quantity quantity(String name, Unit.Dimension kind) {
        Quantity quantity;
        try {
            quantity = Quantity.parse(text(name));
        } catch (UnreadableQuantity e) {
            throw new BadFigureInput(name + " " + e.getMessage() + " (units of " + kind.words() + ": " + String.join(", ", Unit.symbolsOf(kind)) + ")");
        }
        if (quantity.unit().dimension() != kind) {
            throw new BadFigureInput(Amounts.wrongKind(name, quantity, kind));
        }
        return quantity;
    }

    LocalDate day(String name) {
        try {
            return LocalDate.parse(text(name));
        } catch (DateTimeParseException e) {
            throw new BadFigureInput(name + " '" + text(name) + "' is not a day; write year-month-day, such as 2026-11-25");
        }
    }

    int whole(String name) {
        if (!text(name).matches("[0-9]{1,9}")) {
            throw new BadFigureInput(name + " '" + text(name) + "' is not a whole number; write its digits only");
        }
        return Integer.parseInt(text(name));
    }

    <E extends Enum<E>> E choice(String name, Class<E> choices) {
        List<String> words = Arrays.stream(choices.getEnumConstants()).map(Arguments::word).toList();
        int place = words.indexOf(text(name));
        if (place < 0) {
            throw new BadFigureInput(name + " '" + text(name) + "' is not known" + Nearest.advice(text(name), words) + "; write one of " + String.join(", ", words));
        }
        return choices.getEnumConstants()[place];
    }

    /** {@code MOPED_3W} is written {@code moped-3w}. */
    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
