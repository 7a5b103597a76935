package chock.record;

import chock.quantity.Quantity;
import chock.quantity.UnreadableQuantity;
import java.util.List;
import java.util.Optional;

/**
 * Why something that stands in a record cannot be true.
 *
 * @param says what is wrong, in words without a full stop
 * @param advice what to look at again and what to write, as an imperative without a full stop
 */
record Impossible(String says, String advice) {

    /** Why an argument cannot be this; empty where it can, and where it is no amount of that kind. */
    static Optional<String> ofArgument(String argument, String written, List<Plausible.Row> rows) {
        Plausible.Row row = rows.get(0);
        Quantity amount;
        try {
            amount = Quantity.parse(written.matches("[-+]?[0-9.]+") ? written + " " + row.canBe().low().unit().symbol() : written);
        } catch (UnreadableQuantity e) {
            return Optional.empty();
        }
        boolean same = amount.unit().dimension() == row.canBe().low().unit().dimension();
        return !same || rows.stream().anyMatch(r -> r.canBe().contains(amount)) ? Optional.empty()
                : Optional.of(argument + " " + amount + " is not possible: it lies " + row.canBe().words() + ". " + perhaps(amount, row) + row.hint());
    }

    /** The likely slip, as a question with a blank behind it; nothing where none or more than one is likely. */
    static String perhaps(Quantity value, Plausible.Row row) {
        return Slip.likely(value, row.usual() == null ? row.canBe() : row.usual()).map(guess -> "Perhaps " + guess + "? ").orElse("");
    }
}
