package chock.quantity;

/**
 * A measured value with its expanded uncertainty U (coverage factor k = 2).
 *
 * @param value what the instrument showed
 * @param uncertainty U, same kind of unit, above zero; null where none is stated yet
 */
public record Measured(Quantity value, Quantity uncertainty) {

    /**
     * Reads {@code 1.2 mm} or {@code 1.2 mm ± 0.1 mm} ({@code +/-} will do; the unit may be written once).
     *
     * @throws UnreadableQuantity when either part is unreadable, the kinds of unit differ, or the uncertainty is not above zero
     */
    public static Measured parse(String text) {
        String[] parts = text.split("±|\\+/-|\\+-", -1);
        if (parts.length > 2) {
            throw new UnreadableQuantity(text, "one ± only");
        }
        if (parts.length == 1) {
            return new Measured(Quantity.parse(text), null);
        }
        String left = parts[0].strip();
        String right = parts[1].strip();
        if (left.matches("[-+\\d./ ]+")) {
            left = (left + " " + right.replaceFirst("^[\\d./ ]+", "")).strip();
        } else if (right.matches("[\\d./ ]+")) {
            right = right + " " + left.replaceFirst("^[-+\\d./ ]+", "");
        }
        if (left.isEmpty() || right.isEmpty()) {
            throw new UnreadableQuantity(text, "a number stands on both sides of ±, such as 1.2 mm ± 0.1 mm");
        }
        Measured measured = new Measured(Quantity.parse(left), Quantity.parse(right));
        if (measured.uncertainty.unit().dimension() != measured.value.unit().dimension()) {
            throw new UnreadableQuantity(text, "the uncertainty is of another kind than the value");
        }
        if (measured.uncertainty.value().signum() <= 0) {
            throw new UnreadableQuantity(text, "the uncertainty is above zero; no instrument reads exactly");
        }
        return measured;
    }

    @Override
    public String toString() {
        return uncertainty == null ? value.toString() : value + " ± " + uncertainty;
    }
}
