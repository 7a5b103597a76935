package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.time.Year;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The figure in the words of a claim. */
public final class ClaimedFigure {
    /** Thousands behind commas only in threes, so that a decimal comma is not taken for one. */
    private static final Pattern AMOUNT = Pattern.compile("(?<![\\d.,])(\\d{1,3}(?:,\\d{3})+|\\d+(?:\\.\\d+)?(?:\\s+\\d+/\\d+)?|\\d+/\\d+)(?![\\d.,]*\\d)\\s*([A-Za-z\"]+)");
    /** 18.000 km is eighteen thousand to some readers and eighteen to others. */
    private static final Pattern AMBIGUOUS = Pattern.compile("\\d{1,3}\\.\\d{3}");
    private static final Pattern YEAR = Pattern.compile("(?<!\\d)(1[89]\\d{2}|20\\d{2})(?!\\d)");

    private ClaimedFigure() { }

    /** The first length that is named, such as a distance or a depth. */
    public static Optional<Quantity> length(String says) {
        Matcher amounts = AMOUNT.matcher(says);
        while (amounts.find()) {
            if (!AMBIGUOUS.matcher(amounts.group(1)).matches()) {
                try {
                    Quantity amount = Quantity.parse(amounts.group(1).replace(",", "") + " " + amounts.group(2));
                    if (amount.unit().dimension() == Unit.Dimension.LENGTH) {
                        return Optional.of(amount);
                    }
                } catch (UnreadableQuantity notAnAmount) {
                    // "2 owners": a number in a sentence is not always an amount.
                    continue;
                }
            }
        }
        return Optional.empty();
    }

    /** The first year that is named with four figures. */
    public static Optional<Year> year(String says) {
        Matcher years = YEAR.matcher(says);
        return years.find() ? Optional.of(Year.parse(years.group(1))) : Optional.empty();
    }

    /**
     * Why a claim cannot be true of any machine, in words without a full stop; empty where it can.
     *
     * @param latest the last year that it can name, or null
     */
    public static Optional<String> refused(Claim.Kind kind, String says, Plausible plausible, Year latest) {
        return switch (kind) {
            case MILEAGE -> length(says).flatMap(amount -> outside("odometer", amount, plausible));
            case TREAD -> length(says).flatMap(amount -> outside("tread-depth", amount, plausible));
            case YEAR -> year(says).flatMap(year -> outside(year, plausible, latest));
            default -> Optional.empty();
        };
    }

    private static Optional<String> outside(String aspect, Quantity amount, Plausible plausible) {
        return plausible.rows(aspect, "machine").stream().findFirst().filter(row -> !row.canBe().contains(amount))
                .map(row -> PlausibleEntries.name(aspect) + " " + amount + " is not possible: it lies " + row.canBe().words());
    }

    private static Optional<String> outside(Year year, Plausible plausible, Year latest) {
        Plausible.Row built = plausible.description().get("built");
        boolean early = built != null && Quantity.of(year.toString(), Unit.TIMES).compareTo(built.canBe().low()) < 0;
        return early ? Optional.of(year + " lies before the first motorcycles") : latest != null && year.isAfter(latest) ? Optional.of(year + " lies after the moment judged") : Optional.empty();
    }
}
