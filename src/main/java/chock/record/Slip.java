package chock.record;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Guesses which slip of the pen, the unit or the point made an amount that cannot be. Nothing is ever corrected by it. */
final class Slip {
    /** The units that a bench takes for one another. */
    private static final Map<Unit.Dimension, List<Unit>> COMMON = Map.ofEntries(
            Map.entry(Unit.Dimension.LENGTH, List.of(Unit.MM, Unit.INCH)),
            Map.entry(Unit.Dimension.PRESSURE, List.of(Unit.KPA, Unit.BAR, Unit.PSI)),
            Map.entry(Unit.Dimension.TEMPERATURE, List.of(Unit.DEGREES_CELSIUS, Unit.DEGREES_FAHRENHEIT)),
            Map.entry(Unit.Dimension.SPEED, List.of(Unit.KMH, Unit.MPH)),
            Map.entry(Unit.Dimension.MASS, List.of(Unit.KG, Unit.POUND)),
            Map.entry(Unit.Dimension.FORCE, List.of(Unit.NEWTONS, Unit.KGF)),
            Map.entry(Unit.Dimension.VOLUME, List.of(Unit.LITRES, Unit.ML, Unit.CUBIC_METRES, Unit.CUBIC_FEET, Unit.CC)),
            Map.entry(Unit.Dimension.RATIO, List.of(Unit.PER_CENT, Unit.PPM)),
            Map.entry(Unit.Dimension.RESISTANCE, List.of(Unit.OHMS, Unit.KILOHMS)),
            Map.entry(Unit.Dimension.CURRENT, List.of(Unit.AMPERES, Unit.MILLIAMPERES)),
            Map.entry(Unit.Dimension.DURATION, List.of(Unit.SECONDS, Unit.MINUTES, Unit.HOURS)),
            Map.entry(Unit.Dimension.FLOW, List.of(Unit.CUBIC_METRES_PER_HOUR, Unit.CUBIC_METRES_PER_MINUTE, Unit.CUBIC_METRES_PER_SECOND)));

    private Slip() { }

    /** The one amount that a common slip would have turned into this one; empty when none or more than one is usual. */
    static Optional<Quantity> likely(Quantity written, Bounds usual) {
        List<Quantity> found = new ArrayList<>();
        for (Quantity guess : guesses(written)) {
            if (usual.contains(guess) && guess.value().signum() != 0 && found.stream().noneMatch(f -> f.compareTo(guess) == 0)) {
                found.add(guess);
            }
        }
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    private static List<Quantity> guesses(Quantity written) {
        List<Quantity> guesses = new ArrayList<>();
        for (int places : new int[] {1, 2, -1}) {
            BigDecimal moved = written.value().movePointLeft(places).stripTrailingZeros();
            guesses.add(new Quantity(moved.scale() < 0 ? moved.setScale(0) : moved, written.unit()));
        }
        COMMON.getOrDefault(written.unit().dimension(), List.of()).stream().filter(unit -> unit != written.unit()).forEach(unit -> guesses.add(new Quantity(written.value(), unit)));
        guesses.add(written.abs());
        return guesses;
    }
}
