package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Grades of brake fluid with their least boiling points, fresh and with 3.7 % water by weight (49 CFR 571.116 S5.1.1 and S5.1.2;
 * read in two copies that agree, paragraph numbers from memory).
 */
public enum BrakeFluid {
    DOT_3("DOT 3", 205, 140), DOT_4("DOT 4", 230, 155), DOT_5("DOT 5", 260, 180), DOT_5_1("DOT 5.1", 260, 180);

    private final String marking;
    private final Quantity leastDry;
    private final Quantity leastWet;

    BrakeFluid(String marking, int leastDry, int leastWet) {
        this.marking = marking;
        this.leastDry = Quantity.of(Integer.toString(leastDry), Unit.DEGREES_CELSIUS);
        this.leastWet = Quantity.of(Integer.toString(leastWet), Unit.DEGREES_CELSIUS);
    }

    /** As it stands on a reservoir: {@code DOT 5.1}. */
    public String marking() {
        return marking;
    }

    /** Least boiling point of fresh fluid, in °C. */
    public Quantity leastDry() {
        return leastDry;
    }

    /** Least boiling point with 3.7 % water by weight, in °C. */
    public Quantity leastWet() {
        return leastWet;
    }

    /** Silicone (DOT 5) or one of the glycol grades. */
    public boolean silicone() {
        return this == DOT_5;
    }

    /** Whether the two may meet in one circuit: silicone and glycol never do (read in a copy of a workshop's advice). */
    public boolean mayMeet(BrakeFluid other) {
        return silicone() == other.silicone();
    }

    /**
     * Whether it may be filled where another grade is marked: the same family, and boiling no sooner, fresh or wet. So DOT 5.1
     * serves for DOT 4 and DOT 4 for DOT 3, never the other way round, and DOT 5 for nothing else (common practice, from the
     * boiling points of 49 CFR 571.116).
     */
    public boolean servesFor(BrakeFluid marked) {
        return mayMeet(marked) && leastDry.compareTo(marked.leastDry) >= 0 && leastWet.compareTo(marked.leastWet) >= 0;
    }

    /** The grade that a mark asks for at least: of {@code DOT-3-or-DOT-4} the lower. */
    public static BrakeFluid marked(String text) {
        return read(text.replaceFirst("-or-.*", ""));
    }

    /**
     * The grade written so: {@code DOT 4}, {@code dot4}, {@code 5.1}, {@code DOT-5.1}.
     *
     * @throws BadFigureInput for any other text
     */
    public static BrakeFluid read(String text) {
        return find(text).orElseThrow(() -> new BadFigureInput("'" + text + "' is not a grade of brake fluid; write DOT 3, DOT 4, DOT 5 or DOT 5.1"));
    }

    /** The grade written so, or empty. */
    public static Optional<BrakeFluid> find(String text) {
        String plain = text.strip().toUpperCase(Locale.ROOT).replaceFirst("^DOT", "").replaceFirst("^[\\s-]+", "");
        return Arrays.stream(values()).filter(grade -> grade.marking.equals("DOT " + plain)).findFirst();
    }
}
