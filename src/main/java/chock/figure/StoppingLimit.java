package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;

/**
 * Stopping distance and mean fully developed deceleration asked of a new machine braked with one control, laden
 * (Directive 93/14/EEC, Annex, Appendix 1, 2.1; read). It is a type-approval limit: for an old machine a line to compare
 * with, never the legal limit.
 *
 * @param divisor d in S = 0.1 V + V² ÷ d, with S in m and V in km/h
 * @param deceleration least mean fully developed deceleration, in m/s²
 */
public record StoppingLimit(int divisor, Quantity deceleration) {

    /** Kinds of machine the directive tells apart here. */
    public enum Vehicle { MOPED, MOPED_3W, MOTORCYCLE, MOTORCYCLE_SIDECAR }

    /** The brake control used; the other stays off. */
    public enum Control { FRONT, REAR }

    private record Row(StoppingLimit front, StoppingLimit rear) { }

    private static final Map<Vehicle, Row> TABLE = Map.of(
            Vehicle.MOPED, new Row(limit(90, "3.4"), limit(70, "2.7")),
            Vehicle.MOPED_3W, new Row(limit(70, "2.7"), limit(70, "2.7")),
            Vehicle.MOTORCYCLE, new Row(limit(115, "4.4"), limit(75, "2.9")),
            Vehicle.MOTORCYCLE_SIDECAR, new Row(limit(95, "3.6"), limit(95, "3.6")));

    private static StoppingLimit limit(int divisor, String deceleration) {
        return new StoppingLimit(divisor, Quantity.of(deceleration, Unit.MPS2));
    }

    /** The row of the table for this machine and control. */
    public static StoppingLimit of(Vehicle vehicle, Control control) {
        Row row = TABLE.get(vehicle);
        return control == Control.FRONT ? row.front : row.rear;
    }

    /**
     * Longest stopping distance allowed, from the first movement of the control to standstill (Appendix 1, 1.1.2).
     *
     * @param speed speed at that moment, above zero; the test speed is 40 km/h for mopeds and 60 km/h for motorcycles (2.1.1)
     * @return metres, to 16 significant digits
     * @throws BadFigureInput when it is not a speed above zero
     */
    public Quantity distance(Quantity speed) {
        BigDecimal v = Amounts.above0("speed", speed, Unit.KMH);
        BigDecimal metres = v.movePointLeft(1).add(v.multiply(v).divide(BigDecimal.valueOf(divisor), MathContext.DECIMAL128));
        return new Quantity(metres.round(MathContext.DECIMAL64), Unit.M);
    }
}
