package chock.figure;

import chock.quantity.Quantity;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Load index and speed symbol as they stand at the end of a tyre's size marking: {@code 65S}, {@code 120/90-18 65S},
 * {@code (65W)} (UN R75, from memory).
 *
 * @param loadIndex 0 to 150
 * @param speedSymbol the symbol
 */
public record ServiceDescription(int loadIndex, SpeedSymbol speedSymbol) {
    private static final Pattern LAST = Pattern.compile("(?:.*\\s)?\\(?([0-9]{1,3})\\s?([A-Z][1-8]?)\\)?");

    /**
     * Reads the description at the end of a marking.
     *
     * @throws BadFigureInput when there is none, or its index or symbol is not in the tables
     */
    public static ServiceDescription read(String marking) {
        Matcher m = LAST.matcher(marking.strip().toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            throw new BadFigureInput("'" + marking + "' does not end in a load index and a speed symbol; write them as they stand on the tyre, such as 65S");
        }
        int index = Integer.parseInt(m.group(1));
        LoadIndex.load(index);
        return new ServiceDescription(index, SpeedSymbol.read(m.group(2)));
    }

    /** As {@link #read}, empty where that would refuse. */
    public static Optional<ServiceDescription> find(String marking) {
        try {
            return Optional.of(read(marking));
        } catch (BadFigureInput unreadable) {
            return Optional.empty();
        }
    }

    /** Load the tyre carries, in kg. */
    public Quantity load() {
        return LoadIndex.load(loadIndex);
    }

    /** Speed the tyre is made for, in km/h. */
    public Quantity speed() {
        return speedSymbol.speed();
    }
}
