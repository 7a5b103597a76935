package chock.assess;

import chock.quantity.Quantity;
import chock.record.Machine;
import chock.record.Machine.Brake;
import chock.record.Machine.BrakeType;
import chock.record.Machine.Clutch;
import chock.record.Machine.Cooling;
import chock.record.Machine.Cycle;
import chock.record.Machine.Drive;
import chock.record.Machine.Engine;
import chock.record.Machine.Equipment;
import chock.record.Machine.FrontSpringing;
import chock.record.Machine.FuelTap;
import chock.record.Machine.Ignition;
import chock.record.Machine.Kind;
import chock.record.Machine.Lining;
import chock.record.Machine.Oiling;
import chock.record.Machine.RearSpringing;
import chock.record.Machine.Rim;
import chock.record.Machine.Starter;
import chock.record.Machine.Wheel;
import chock.record.Machine.WorkedBy;
import java.time.LocalDate;
import java.time.Year;
import java.util.LinkedHashMap;
import java.util.Map;

/** Machines by which every condition in {@code rules/assembly.yaml} is met and not met. The files of cases name them. */
final class CaseMachines {
    private static final Brake DISC = new Brake(BrakeType.DISC, WorkedBy.HYDRAULIC, 1, Lining.BONDED, true);
    private static final Brake TWO_DISCS = new Brake(BrakeType.DISC, WorkedBy.HYDRAULIC, 2, Lining.BONDED, true);
    private static final Wheel WIRE = new Wheel(Rim.STEEL, true, true);
    private static final Wheel CAST = new Wheel(Rim.ALLOY, false, false);
    private static final Map<String, Machine> ALL = all();

    private CaseMachines() { }

    static Machine named(String name) {
        Machine machine = ALL.get(name);
        if (machine == null) {
            throw new IllegalArgumentException(name + " is none of " + ALL.keySet());
        }
        return machine;
    }

    static Iterable<String> names() {
        return ALL.keySet();
    }

    private static Brake drum(WorkedBy by, boolean lamp) {
        return new Brake(BrakeType.DRUM, by, 0, Lining.BONDED, lamp);
    }

    private static Engine engine(Cycle cycle, int cylinders, Oiling oiling, Ignition ignition, Cooling cooling) {
        return new Engine(cycle, Quantity.parse("347 cc"), cylinders, oiling, ignition, cooling);
    }

    private static Map<String, Machine> all() {
        Map<String, Machine> all = new LinkedHashMap<>();
        Equipment kicked = new Equipment(Starter.KICK, 2, FuelTap.MANUAL, Clutch.CABLE, FrontSpringing.TELESCOPIC_FORK, RearSpringing.TWIN_DAMPERS, true, true, true, 2, 2, true);
        Equipment buttoned = new Equipment(Starter.BOTH, 2, FuelTap.VACUUM, Clutch.HYDRAULIC, FrontSpringing.TELESCOPIC_FORK, RearSpringing.SINGLE_DAMPER, true, true, true, 2, 2, true);
        Equipment geared = new Equipment(Starter.BOTH, 2, FuelTap.MANUAL, Clutch.CABLE, FrontSpringing.TELESCOPIC_FORK, RearSpringing.TWIN_DAMPERS, true, true, true, 2, 2, true);
        Equipment girder = new Equipment(Starter.KICK, 1, FuelTap.MANUAL, Clutch.CABLE, FrontSpringing.GIRDER, RearSpringing.RIGID, true, false, true, 0, 1, true);
        Equipment plunger = new Equipment(Starter.KICK, 1, FuelTap.MANUAL, Clutch.CABLE, FrontSpringing.TELESCOPIC_FORK, RearSpringing.PLUNGER, true, false, true, 1, 2, true);
        Equipment plain = new Equipment(Starter.KICK, 1, FuelTap.MANUAL, Clutch.CABLE, FrontSpringing.TELESCOPIC_FORK, RearSpringing.TWIN_DAMPERS, true, false, true, 1, 1, true);
        Engine injected = engine(Cycle.TWO_STROKE, 2, Oiling.OIL_INJECTION, Ignition.POINTS, Cooling.AIR);
        all.put("two-stroke", machine(Kind.MOTORCYCLE, 1972, "150 km/h", injected, DISC, drum(WorkedBy.ROD, true), false, WIRE, Drive.CHAIN, 12, kicked));
        all.put("four-stroke", machine(Kind.MOTORCYCLE, 1972, "150 km/h", engine(Cycle.FOUR_STROKE, 2, Oiling.WET_SUMP, Ignition.POINTS, Cooling.AIR), DISC, drum(WorkedBy.ROD, true), false, WIRE,
                Drive.CHAIN, 12, kicked));
        all.put("outfit", machine(Kind.MOTORCYCLE_SIDECAR, 1972, "150 km/h", injected, DISC, drum(WorkedBy.ROD, true), false, WIRE, Drive.CHAIN, 12, kicked));
        all.put("single", machine(Kind.MOTORCYCLE, 1936, "100 km/h", engine(Cycle.FOUR_STROKE, 1, Oiling.DRY_SUMP, Ignition.MAGNETO, Cooling.AIR), drum(WorkedBy.CABLE, false), drum(WorkedBy.ROD, true),
                false, WIRE, Drive.CHAIN, 6, girder));
        all.put("total-loss", machine(Kind.MOTORCYCLE, 1926, "80 km/h", engine(Cycle.FOUR_STROKE, 1, Oiling.TOTAL_LOSS, Ignition.MAGNETO, Cooling.AIR), drum(WorkedBy.CABLE, false),
                drum(WorkedBy.ROD, false), false, WIRE, Drive.CHAIN, 0, girder));
        all.put("shaft", machine(Kind.MOTORCYCLE, 1982, "180 km/h", engine(Cycle.FOUR_STROKE, 2, Oiling.WET_SUMP, Ignition.ELECTRONIC, Cooling.AIR), TWO_DISCS, DISC, false, CAST, Drive.SHAFT, 12, geared));
        all.put("plunger", machine(Kind.MOTORCYCLE, 1951, "120 km/h", engine(Cycle.FOUR_STROKE, 1, Oiling.DRY_SUMP, Ignition.MAGNETO, Cooling.AIR), drum(WorkedBy.CABLE, true), drum(WorkedBy.ROD, true),
                false, WIRE, Drive.CHAIN, 6, plunger));
        all.put("moped", machine(Kind.MOPED, 1968, "45 km/h", engine(Cycle.TWO_STROKE, 1, Oiling.PREMIX, Ignition.POINTS, Cooling.AIR), drum(WorkedBy.CABLE, true), drum(WorkedBy.CABLE, true), false, WIRE,
                Drive.CHAIN, 6, plain));
        all.put("belt", machine(Kind.MOTORCYCLE, 1986, "150 km/h", engine(Cycle.FOUR_STROKE, 2, Oiling.WET_SUMP, Ignition.ELECTRONIC, Cooling.AIR), DISC, drum(WorkedBy.HYDRAULIC, true), false, WIRE,
                Drive.BELT, 12, geared));
        all.put("liquid", machine(Kind.MOTORCYCLE, 1987, "180 km/h", engine(Cycle.TWO_STROKE, 2, Oiling.OIL_INJECTION, Ignition.ELECTRONIC, Cooling.LIQUID), TWO_DISCS, DISC, true, CAST, Drive.CHAIN, 12,
                buttoned));
        return all;
    }

    private static Machine machine(Kind kind, int built, String speed, Engine engine, Brake front, Brake rear, boolean linked, Wheel wheels, Drive drive, int volts, Equipment equipment) {
        return new Machine("Tarnbeck", "Merle", "MT35-20417", "MT35E-20419", kind, Year.of(built), LocalDate.of(built, 4, 28), Quantity.parse(speed), 2, engine, front, rear, linked, wheels, wheels, drive, volts,
                equipment, Machine.History.KNOWN);
    }
}
