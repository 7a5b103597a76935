package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * How much longer a roller chain has become (method read in two makers' manuals: pulled taut, from the centre of one pin
 * to the centre of another; where only edges can be reached, the mean of inside to inside and outside to outside).
 */
public final class ChainWear {
    /** Fewest pitches that make a reading worth having (common practice). */
    public static final int FEWEST = 5;
    /** Most pitches over which one pin too many or too few still shows, whatever the wear. */
    public static final int MOST = 24;

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    /** No chain in use is longer than this by wear; one pitch too many over 20 reads 5 % (a proposal of ours). */
    private static final BigDecimal LONGEST = BigDecimal.valueOf(4);
    /** New chains are not shorter than their pitch says by more than this; one pitch too few would hide the wear (a proposal of ours). */
    private static final BigDecimal SHORTEST = BigDecimal.valueOf(-1);
    private static final MathContext UP = new MathContext(16, RoundingMode.UP);

    private ChainWear() { }

    /**
     * (length − pitches × pitch) ÷ (pitches × pitch), with the uncertainty of the length.
     *
     * @param length from pin centre to pin centre, taut, above zero
     * @param pitches how many pitches the length spans, 5 to 24: one fewer than the pins counted
     * @param pitch pitch of the chain when new, above zero, such as 15.875 mm or 5/8 in
     * @return per cent, to 16 significant digits
     * @throws BadFigureInput when an amount is of the wrong kind or outside its range, or the result lies outside −1 % to
     *     4 %, where a pin was miscounted or the pitch belongs to another chain
     */
    public static Measured elongation(Measured length, int pitches, Quantity pitch) {
        BigDecimal mm = Amounts.above0("length", length.value(), Unit.MM);
        BigDecimal onePitch = Amounts.above0("pitch", pitch, Unit.MM);
        if (pitches < FEWEST || pitches > MOST) {
            throw new BadFigureInput("pitches is " + pitches + "; measure over " + FEWEST + " to " + MOST
                    + ": with fewer the reading is too coarse, with more a miscounted pin cannot be told from wear");
        }
        BigDecimal asNew = onePitch.multiply(BigDecimal.valueOf(pitches));
        BigDecimal percent = mm.subtract(asNew).multiply(HUNDRED).divide(asNew, MathContext.DECIMAL64);
        if (percent.compareTo(LONGEST) > 0 || percent.compareTo(SHORTEST) < 0) {
            throw new BadFigureInput(length.value() + " over " + pitches + " pitches of " + pitch + " is " + new Quantity(percent, Unit.PER_CENT).rounded(1)
                    + " against a new chain, which is no wear; count again (" + pitches + " pitches lie between " + (pitches + 1) + " pins) and check the pitch");
        }
        Quantity u = length.uncertainty() == null ? null
                : new Quantity(length.uncertainty().differenceTo(Unit.MM).value().multiply(HUNDRED).divide(asNew, UP), Unit.PER_CENT);
        return new Measured(new Quantity(percent, Unit.PER_CENT), u);
    }
}
