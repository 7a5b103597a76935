package chock.assess;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Machine;
import chock.record.Machine.Brake;
import chock.record.Machine.BrakeType;
import chock.record.Machine.Cycle;
import chock.record.Machine.Engine;
import chock.record.Machine.Equipment;
import chock.record.Machine.Lining;
import chock.record.Machine.Oiling;
import chock.record.Machine.Starter;
import chock.record.Machine.Wheel;
import chock.record.Machine.WorkedBy;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Year;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Tuple;

/** Every machine that can be written down: whatever parts it is put together from, as long as no reader would refuse it. */
final class AnyMachine {
    private AnyMachine() { }

    static Arbitrary<Machine> machine() {
        return described().flatMap(machine -> Combinators.combine(Arbitraries.of(batteries(machine.volts())), Arbitraries.frequency(Tuple.of(9, true), Tuple.of(1, false)))
                .as((battery, generator) -> machine.with(new Machine.Further(battery, generator, null))));
    }

    private static List<Machine.Battery> batteries(int volts) {
        return volts == 0 ? List.of(Machine.Battery.NONE, Machine.Battery.UNKNOWN)
                : List.of(Machine.Battery.WET, Machine.Battery.SEALED, Machine.Battery.LITHIUM, Machine.Battery.UNKNOWN);
    }

    private static Arbitrary<Machine> described() {
        return Combinators.combine(engine(), brakes(), papers(), Arbitraries.frequency(Tuple.of(6, 12), Tuple.of(4, 6), Tuple.of(2, 0), Tuple.of(1, 24))).flatAs((engine, brakes, papers, volts) ->
                Combinators.combine(equipment(engine, volts), wheel(), wheel(), Arbitraries.of(Machine.Drive.class), Arbitraries.of(Machine.Kind.class), Arbitraries.of(Machine.History.class))
                        .as((equipment, front, rear, drive, kind, history) -> new Machine("Tarnbeck", "Merle", "MT35-20417", "MT35E-20419", kind, papers.built, papers.registered, papers.speed,
                                papers.seats, engine, brakes.front, brakes.rear, brakes.linked, front, rear, drive, volts, equipment, history)));
    }

    private record Papers(Year built, LocalDate registered, Quantity speed, int seats) { }

    private static Arbitrary<Papers> papers() {
        Arbitrary<Quantity> speed = Combinators.combine(Arbitraries.integers().between(20, 110), Arbitraries.of(Unit.KMH, Unit.MPH)).as((value, unit) -> new Quantity(BigDecimal.valueOf(value), unit));
        return Combinators.combine(Arbitraries.integers().between(1905, 2026), Arbitraries.integers().between(0, 4000), speed, Arbitraries.integers().between(1, 3)).as((built, later, top, seats) -> {
            LocalDate registered = LocalDate.of(built, 1, 1).plusDays(later);
            return new Papers(Year.of(built), registered.isAfter(Latest.DAY) ? Latest.DAY : registered, top, seats);
        });
    }

    /** The day before the examples are judged. */
    private static final class Latest {
        static final LocalDate DAY = LocalDate.of(2026, 11, 24);
    }

    private static Arbitrary<Engine> engine() {
        Arbitrary<Engine> electric = Arbitraries.of(Machine.Cooling.class).map(cooling -> new Engine(Cycle.ELECTRIC, Quantity.parse("0 cc"), 0, Oiling.NONE, Machine.Ignition.NONE, cooling));
        return Arbitraries.frequencyOf(Tuple.of(4, burning(Cycle.FOUR_STROKE, Oiling.WET_SUMP, Oiling.DRY_SUMP, Oiling.TOTAL_LOSS)),
                Tuple.of(4, burning(Cycle.TWO_STROKE, Oiling.OIL_INJECTION, Oiling.PREMIX, Oiling.TOTAL_LOSS)), Tuple.of(1, electric));
    }

    private static Arbitrary<Engine> burning(Cycle cycle, Oiling... oilings) {
        return Combinators.combine(Arbitraries.integers().between(49, 1300), Arbitraries.integers().between(1, 6), Arbitraries.of(oilings),
                Arbitraries.of(Machine.Ignition.POINTS, Machine.Ignition.MAGNETO, Machine.Ignition.ELECTRONIC), Arbitraries.of(Machine.Cooling.class))
                .as((swept, cylinders, oiling, ignition, cooling) -> new Engine(cycle, new Quantity(BigDecimal.valueOf(swept), Unit.CC), cylinders, oiling, ignition, cooling));
    }

    private record Brakes(Brake front, Brake rear, boolean linked) { }

    private static Arbitrary<Brakes> brakes() {
        return Combinators.combine(brake(), brake(), Arbitraries.of(false, true))
                .as((front, rear, linked) -> new Brakes(front, rear, linked && front.type() != BrakeType.NONE && rear.type() != BrakeType.NONE));
    }

    private static Arbitrary<Brake> brake() {
        Arbitrary<Lining> lining = Arbitraries.of(Lining.BONDED, Lining.RIVETED, Lining.SINTERED);
        Arbitrary<Boolean> lamp = Arbitraries.of(false, true);
        Arbitrary<Brake> disc = Combinators.combine(Arbitraries.of(WorkedBy.HYDRAULIC, WorkedBy.CABLE), Arbitraries.of(1, 2), lining, lamp)
                .as((worked, discs, friction, stop) -> new Brake(BrakeType.DISC, worked, discs, friction, stop));
        Arbitrary<Brake> drum = Combinators.combine(Arbitraries.of(WorkedBy.CABLE, WorkedBy.ROD, WorkedBy.HYDRAULIC), lining, lamp)
                .as((worked, friction, stop) -> new Brake(BrakeType.DRUM, worked, 0, friction, stop));
        Arbitrary<Brake> none = Arbitraries.just(new Brake(BrakeType.NONE, WorkedBy.NONE, 0, Lining.NONE, false));
        return Arbitraries.frequencyOf(Tuple.of(4, drum), Tuple.of(4, disc), Tuple.of(1, none));
    }

    private static Arbitrary<Wheel> wheel() {
        return Combinators.combine(Arbitraries.of(Machine.Rim.class), Arbitraries.of(false, true), Arbitraries.of(false, true)).as(Wheel::new);
    }

    private static Arbitrary<Equipment> equipment(Engine engine, int volts) {
        boolean electric = engine.cycle() == Cycle.ELECTRIC;
        Arbitrary<Starter> starter = electric ? Arbitraries.just(Starter.NONE) : volts == 0 ? Arbitraries.of(Starter.KICK, Starter.NONE) : Arbitraries.of(Starter.class);
        Arbitrary<Integer> carburettors = electric ? Arbitraries.just(0) : Arbitraries.integers().between(0, Math.min(4, 2 * engine.cylinders()));
        Arbitrary<Machine.FuelTap> tap = electric ? Arbitraries.just(Machine.FuelTap.NONE) : Arbitraries.of(Machine.FuelTap.class);
        Arbitrary<Integer> fewer = Arbitraries.integers().between(0, 2);
        Arbitrary<Boolean> yesNo = Arbitraries.of(false, true);
        return Combinators.combine(starter, carburettors, tap, Arbitraries.of(Machine.Clutch.class), Arbitraries.of(Machine.FrontSpringing.class), Arbitraries.of(Machine.RearSpringing.class),
                Combinators.combine(yesNo, yesNo, yesNo, yesNo).as((lamps, indicators, horn, meter) -> new boolean[] {lamps, lamps && indicators, horn, meter}), Combinators.combine(fewer, fewer).as((a, b) -> new int[] {a, b}))
                .as((start, carbs, fuel, clutch, front, rear, has, counts) -> new Equipment(start, carbs, fuel, clutch, front, rear, has[0], has[1], has[2], counts[0], counts[1], has[3]));
    }
}
