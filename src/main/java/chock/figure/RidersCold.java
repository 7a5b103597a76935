package chock.figure;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;

/** How cold a ride feels, by the wind chill of the road speed with the gusts against it. */
public final class RidersCold {
    private static final Quantity WARMEST = Quantity.of("10", Unit.DEGREES_CELSIUS);

    private RidersCold() { }

    /** True up to 10 °C, the warmest air for which wind chill is defined (from memory); in warmer air it does not matter. */
    public static boolean matters(Measured air) {
        return air.value().compareTo(WARMEST) <= 0;
    }

    /**
     * What is felt on bare skin at this speed into these gusts. The uncertainty is that of the air, as the wind magnifies it.
     *
     * @param air −50 °C to 10 °C, its uncertainty included at the cold end
     * @param road road speed
     * @param gusts speed of the gusts, taken as coming from ahead
     * @return in the unit of {@code air}
     * @throws BadFigureInput when an amount is of the wrong kind, or outside the range of {@link WindChill}
     */
    public static Measured felt(Measured air, Quantity road, Quantity gusts) {
        Quantity speed = new Quantity(Amounts.in("road speed", road, Unit.KMH).add(Amounts.in("gusts", gusts, Unit.KMH)), Unit.KMH);
        Quantity felt = WindChill.of(air.value(), speed);
        if (air.uncertainty() == null) {
            return new Measured(felt, null);
        }
        Quantity coldest = WindChill.of(air.value().minus(air.uncertainty()), speed);
        return new Measured(felt, new Quantity(felt.value().subtract(coldest.value()), felt.unit()));
    }
}
