package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Charge of a rested lead-acid battery by its open-circuit voltage at 20 °C to 27 °C. Published tables disagree, so the
 * answer is the range they leave: four tables for 12 V (each read in a copy), with a straight line between their rows. A
 * 6 V battery has half the cells, so twice its voltage is looked up (ours; a printed 6 V table is half of the first here).
 * Rest it first: 8 h, better 24 h (read); 30 min for a sealed one (read in a maker's manual). A meter good to 1 % is worth
 * about 15 % of charge either way (read).
 *
 * @param from least charge that any table gives, per cent
 * @param to most charge that any table gives, per cent
 */
public record BatteryCharge(Quantity from, Quantity to) {
    private static final BigDecimal STEP = BigDecimal.valueOf(25);
    private static final BigDecimal FULL = BigDecimal.valueOf(100);
    /** No lead-acid battery rests above 2.25 V a cell (common practice): a higher voltage comes from a charger or just did. */
    private static final BigDecimal RESTING_AT_MOST = new BigDecimal("13.5");

    /** Volts at 0, 25, 50, 75 and 100 % of a 12 V battery. */
    private static final List<List<BigDecimal>> TABLES = List.of(
            row("11.6 12.0 12.2 12.4 12.6"),
            // one table prints a span at each row: both its edges
            row("11.8 12.00 12.20 12.40 12.60"), row("11.8 12.06 12.24 12.45 12.68"),
            // printed down to 25 % only; empty at 11.8 V as the others say
            row("11.8 12.15 12.30 12.45 12.66"),
            row("11.8 12.0 12.3 12.6 12.7"));

    private static List<BigDecimal> row(String volts) {
        return Stream.of(volts.split(" ")).map(BigDecimal::new).toList();
    }

    /** The charge left, or empty where the tables have none for such a battery or such a voltage. */
    public static Optional<BatteryCharge> find(Quantity voltage, int nominal) {
        try {
            return Optional.of(of(voltage, nominal));
        } catch (BadFigureInput notInTheTables) {
            return Optional.empty();
        }
    }

    /**
     * The charge left.
     *
     * @param voltage of the battery at rest, no load: at least zero, and not above 2.25 V a cell
     * @param nominal 6 or 12, in volts
     * @throws BadFigureInput when the voltage is of the wrong kind or outside its range, or the battery is of another voltage
     */
    public static BatteryCharge of(Quantity voltage, int nominal) {
        if (nominal != 6 && nominal != 12) {
            throw new BadFigureInput("nominal is " + nominal + " V; the tables are for lead-acid batteries of 6 V and 12 V");
        }
        BigDecimal volts = Amounts.in("voltage", voltage, Unit.VOLTS);
        BigDecimal asOf12 = volts.multiply(BigDecimal.valueOf(12 / nominal));
        if (volts.signum() < 0 || asOf12.compareTo(RESTING_AT_MOST) > 0) {
            throw new BadFigureInput("voltage is " + voltage + "; a battery of " + nominal + " V at rest shows 0 V to "
                    + new Quantity(RESTING_AT_MOST.divide(BigDecimal.valueOf(12 / nominal)), Unit.VOLTS)
                    + (volts.signum() < 0 ? "; swap the leads of the meter and look at the polarity" : "; take the charger off, let it rest and measure again"));
        }
        List<BigDecimal> charges = TABLES.stream().map(table -> in(table, asOf12)).sorted().toList();
        return new BatteryCharge(new Quantity(charges.get(0), Unit.PER_CENT), new Quantity(charges.get(charges.size() - 1), Unit.PER_CENT));
    }

    private static BigDecimal in(List<BigDecimal> table, BigDecimal volts) {
        if (volts.compareTo(table.get(0)) <= 0) {
            return BigDecimal.ZERO;
        }
        for (int i = 1; i < table.size(); i++) {
            BigDecimal below = table.get(i - 1);
            BigDecimal above = table.get(i);
            if (volts.compareTo(above) <= 0) {
                BigDecimal part = volts.subtract(below).multiply(STEP).divide(above.subtract(below), MathContext.DECIMAL64);
                return STEP.multiply(BigDecimal.valueOf(i - 1L)).add(part);
            }
        }
        return FULL;
    }

    /** The range in whole per cent, widened outward, for a sentence: {@code between 60 % and 75 %, depending on whose table is read}. */
    public String words() {
        BigDecimal least = from.value().setScale(0, RoundingMode.DOWN);
        BigDecimal most = to.value().setScale(0, RoundingMode.UP);
        return least.equals(most) ? least + " %, whoever's table is read" : "between " + least + " % and " + most + " %, depending on whose table is read";
    }
}
