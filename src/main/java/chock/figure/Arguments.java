package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

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
        return quantity(name, text(name), kind);
    }

    private static Quantity quantity(String name, String text, Unit.Dimension kind) {
        Quantity quantity;
        try {
            quantity = Quantity.parse(text);
        } catch (UnreadableQuantity e) {
            throw new BadFigureInput(name + " " + e.getMessage() + " (units of " + kind.words() + ": " + String.join(", ", Unit.symbolsOf(kind)) + ")");
        }
        if (quantity.unit().dimension() != kind) {
            throw new BadFigureInput(Amounts.wrongKind(name, quantity, kind));
        }
        return quantity;
    }

    /** An amount of any kind. */
    Quantity any(String name) {
        try {
            return Quantity.parse(text(name));
        } catch (UnreadableQuantity e) {
            throw new BadFigureInput(name + " " + e.getMessage());
        }
    }

    /** {@code 12V} or {@code 12}: the number that stands on a battery. */
    int wholeVolts(String name) {
        Quantity volts = in(Unit.VOLTS, name);
        try {
            return volts.to(Unit.VOLTS).value().intValueExact();
        } catch (ArithmeticException e) {
            throw new BadFigureInput(name + " is " + volts + "; write whole volts, such as 12V");
        }
    }

    /** Empty when it was left out. */
    Optional<Quantity> optional(String name, Unit.Dimension kind) {
        return text(name) == null ? Optional.empty() : Optional.of(quantity(name, kind));
    }

    /** Several amounts, a comma between them. */
    List<Quantity> quantities(String name, Unit.Dimension kind) {
        return Arrays.stream(text(name).split(",", -1)).map(part -> quantity(name, part, kind)).toList();
    }

    /** A plain number counts as degrees: maps and receivers print it so. */
    Quantity degrees(String name) {
        return in(Unit.DEGREES, name);
    }

    /** A plain number counts as minutes. */
    Quantity minutes(String name) {
        return in(Unit.MINUTES, name);
    }

    /** A plain number counts as ppm. */
    Quantity ppm(String name) {
        return in(Unit.PPM, name);
    }

    private Quantity in(Unit usual, String name) {
        return text(name).matches("[-+\u2212]?[0-9]{1,9}(\\.[0-9]{1,12})?") ? Quantity.parse(text(name) + " " + usual.symbol()) : quantity(name, usual.dimension());
    }

    BigDecimal number(String name) {
        if (!text(name).matches("[0-9]{1,9}(\\.[0-9]{1,12})?")) {
            throw new BadFigureInput(name + " '" + text(name) + "' is not a number; write it without a unit, with a point before decimals");
        }
        return new BigDecimal(text(name));
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
