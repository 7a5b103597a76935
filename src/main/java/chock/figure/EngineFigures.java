package chock.figure;

import static chock.figure.Parameter.asked;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit.Dimension;
import java.util.List;
import java.util.Map;

/** Figures of drive, engine, electrics and fasteners. */
final class EngineFigures {
    static final List<Figure> ALL = List.of(
            new Figure("chain-wear", "How much longer than new a roller chain is.",
                    "(length − pitches × pitch) ÷ (pitches × pitch), as two makers' manuals measure it (read)",
                    List.of(asked("pitches", "pitches measured over, 5 to 24: one fewer than the pins", "20"),
                            asked("length", "pin centre to pin centre, pulled taut", "319.4mm"),
                            asked("pitch", "pitch of the chain when new", "15.875mm")),
                    a -> Results.of("elongation", ChainWear.elongation(exact(a.quantity("length", Dimension.LENGTH)), a.whole("pitches"), a.quantity("pitch", Dimension.LENGTH)).value())),
            new Figure("coil-at-20", "Resistance of a copper winding brought to 20 °C; not for a secondary with its cap on.",
                    "R ÷ (1 + 0.00393 × (t − 20 °C)), coefficient of annealed copper from an instrument maker's manual (read)",
                    List.of(asked("resistance", "as measured, leads subtracted", "4.5ohm"), asked("temperature", "of the winding", "60°C")),
                    a -> Results.of("resistance", CoilResistance.at20(exact(a.quantity("resistance", Dimension.RESISTANCE)), exact(a.quantity("temperature", Dimension.TEMPERATURE))).value())),
            new Figure("battery-charge", "Charge of a rested lead-acid battery by its voltage: the range in which published tables disagree.",
                    "four tables for 12 V (each read in a copy); 6 V as half of them",
                    List.of(asked("voltage", "at rest for 8 h or more, no load, near 20 °C", "12.33V"), asked("nominal", "6V or 12V", "12V")),
                    EngineFigures::batteryCharge),
            new Figure("compression-at-sea-level", "What a compression gauge would show at sea level.",
                    "reading × 1013.25 hPa ÷ pressure of the standard atmosphere (constants read in copies, exponent from memory)",
                    List.of(asked("reading", "gauge pressure", "100psi"), asked("altitude", "of the workshop", "5000ft")),
                    a -> Results.of("pressure", Compression.atSeaLevel(exact(a.quantity("reading", Dimension.PRESSURE)), a.quantity("altitude", Dimension.LENGTH)).value())),
            new Figure("compression-spread", "How far the cylinders lie apart: lowest over highest, and highest less lowest. A limit for one says nothing of the other.",
                    "both rules are printed in manuals (read)",
                    List.of(asked("readings", "one for each cylinder, a comma between", "1050kPa,800kPa")),
                    EngineFigures::compressionSpread),
            new Figure("bolt-torque", "Torque of a metric steel bolt where its maker gives none, good to ± 30 %; too much for a thread in cast aluminium.",
                    "torque = nut factor × diameter × 0.75 × proof load (read in copies); proof loads and pitches of ISO 898-1 and ISO 261 (from memory)",
                    List.of(asked("size", "thread, M4 to M24", "M8"), asked("pitch", "pitch of the thread", "1.25mm"), asked("class", "strength class on the head", "8.8"),
                            asked("nut-factor", "0.20 plain and dry, 0.17 zinc plated, 0.15 oiled", "0.2")),
                    EngineFigures::boltTorque));

    private EngineFigures() { }

    private static Measured exact(Quantity quantity) {
        return new Measured(quantity, null);
    }

    private static Map<String, ResultValue> batteryCharge(Arguments a) {
        BatteryCharge charge = BatteryCharge.of(a.quantity("voltage", Dimension.VOLTAGE), a.wholeVolts("nominal"));
        return Map.of("charge", new ResultValue.Range(Results.amount(charge.from()), Results.amount(charge.to())));
    }

    private static Map<String, ResultValue> compressionSpread(Arguments a) {
        List<Measured> readings = a.quantities("readings", Dimension.PRESSURE).stream().map(EngineFigures::exact).toList();
        return Results.of("lowest-of-highest", Compression.lowestOfHighest(readings).value(), "spread", Compression.spread(readings).value());
    }

    private static Map<String, ResultValue> boltTorque(Arguments a) {
        BoltTorque torque = BoltTorque.of(a.text("size"), a.quantity("pitch", Dimension.LENGTH), BoltTorque.StrengthClass.read(a.text("class")), a.number("nut-factor"));
        return Results.of("torque", torque.torque(), "preload", torque.preload());
    }
}
