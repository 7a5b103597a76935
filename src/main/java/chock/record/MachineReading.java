package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Year;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Reads the machine, and refuses a configuration that no machine has: it would switch checks off by mistake. */
final class MachineReading {
    /** What exists and has no checks here, by the words somebody may write for it. */
    private static final Map<String, String> OUT_OF_SCOPE = Map.ofEntries(
            Map.entry("diesel", "a diesel engine"),
            Map.entry("wankel", "a rotary engine"), Map.entry("rotary", "a rotary engine"), Map.entry("steam", "a steam engine"),
            Map.entry("gas-turbine", "a gas turbine"), Map.entry("hybrid", "a hybrid drive"), Map.entry("gas", "an engine that burns gas"), Map.entry("lpg", "an engine that burns gas"),
            Map.entry("tricycle", "a tricycle"), Map.entry("trike", "a tricycle"), Map.entry("quadricycle", "a machine on four wheels"),
            Map.entry("quad", "a machine on four wheels"), Map.entry("car", "a car"), Map.entry("cyclecar", "a machine on four wheels"));

    private final Reading read;

    MachineReading(Reading read) {
        this.read = read;
    }

    Machine machine(Raw.Machine raw) {
        Year built = built(raw.built());
        LocalDate registered = read.pastDay("machine.first-registered", raw.firstRegistered());
        if (built != null && registered != null && registered.getYear() < built.getValue()) {
            wrong("machine.first-registered", "first registered " + registered + ", before the machine was built (" + built + ")", "Look at both again in the papers");
        }
        Quantity speed = read.amount("machine.top-speed", raw.topSpeed(), Unit.Dimension.SPEED);
        if (speed != null && speed.value().signum() <= 0) {
            wrong("machine.top-speed", "a top speed of " + speed, "Write the speed the maker gives, such as 120 km/h");
        }
        Integer seats = whole("machine.seats", raw.seats(), "seats");
        Machine.Brake front = brake("machine.front-brake", raw.frontBrake());
        Machine.Brake rear = brake("machine.rear-brake", raw.rearBrake());
        Boolean linked = read.yesNo("machine.linked-brakes", raw.linkedBrakes());
        if (Boolean.TRUE.equals(linked) && (isNone(front) || isNone(rear))) {
            wrong("machine.linked-brakes", "linked brakes, but one of the two is none", "Write no, or the missing brake");
        }
        Machine.Engine engine = raw.engine() == null ? null : engine(raw.engine());
        Integer volts = whole("machine.volts", raw.volts(), "volts");
        Machine machine = new Machine(raw.marque(), raw.model(), raw.frameNumber(), raw.engineNumber(),
                inScope("machine.kind", raw.kind(), Machine.Kind.class), built, registered, speed, orZero(seats),
                engine, front, rear, orNo(linked),
                wheel("machine.front-wheel", raw.frontWheel()), wheel("machine.rear-wheel", raw.rearWheel()),
                read.choice("machine.drive", raw.drive(), Machine.Drive.class), orZero(volts),
                raw.equipment() == null ? null : equipment("machine.equipment", raw.equipment(), engine, volts),
                read.choice("machine.history", raw.history(), Machine.History.class)).with(further(raw, volts));
        refusePartsWithoutTheirPlace(machine);
        if (read.isNew("machine")) {
            new PlausibleDescription(read.words.plausible()).impossible(machine).forEach(field -> read.faults.addIfNew("machine." + field.field().replaceFirst(" .*", ""), field.says(), field.advice()));
        }
        return machine;
    }

    private Machine.Further further(Raw.Machine raw, Integer volts) {
        Machine.Further none = Machine.Further.NOT_WRITTEN;
        Machine.Battery battery = raw.battery() == null ? none.battery()
                : read.choice("machine.battery", raw.battery(), Machine.Battery.class);
        if (volts != null && battery == Machine.Battery.NONE && volts > 0) {
            wrong("machine.battery", "no battery, but " + volts + " volts", "Write which kind it is, or 0 volts");
        }
        if (volts != null && volts == 0 && (battery == Machine.Battery.WET || battery == Machine.Battery.SEALED || battery == Machine.Battery.LITHIUM)) {
            wrong("machine.battery", "a " + battery.word() + " battery of 0 volts", "Write none, or the volts of the battery");
        }
        return new Machine.Further(battery, raw.generator() == null || orNo(read.yesNo("machine.generator", raw.generator())),
                raw.laidUpSince() == null ? null : laidUp(raw.laidUpSince()), raw.parts() == null ? Map.of() : parts(raw.parts()));
    }

    private void refusePartsWithoutTheirPlace(Machine m) {
        Map<Machine.Part, Boolean> parts = m.further().parts();
        boolean burns = m.engine() == null || m.engine().cycle() != Machine.Cycle.ELECTRIC;
        if (parts.getOrDefault(Machine.Part.TWIN_LEADING_SHOES, false) && m.frontBrake() != null && m.frontBrake().type() != Machine.BrakeType.DRUM) {
            wrong("machine.parts.twin-leading-shoes", "two leading shoes, but the front brake is no drum", "Write no, or front-brake.type: drum");
        }
        if (Boolean.FALSE.equals(parts.get(Machine.Part.FUEL_PUMP)) && burns && m.equipment() != null && m.equipment().carburettors() == 0 && !read.faults.any()) {
            wrong("machine.parts.fuel-pump", "an engine without a carburettor and without a fuel pump", "Write yes, or how many carburettors it has");
        }
        for (Machine.Part part : List.of(Machine.Part.DECOMPRESSOR, Machine.Part.ADVANCE_LEVER, Machine.Part.HAND_OILER, Machine.Part.FUEL_PUMP)) {
            if (!burns && parts.getOrDefault(part, false)) {
                wrong("machine.parts." + part.word(), "an electric machine with " + part.word(), "Write no");
            }
        }
    }

    private Map<Machine.Part, Boolean> parts(Map<String, String> raw) {
        Map<Machine.Part, Boolean> parts = new EnumMap<>(Machine.Part.class);
        raw.forEach((word, answer) -> {
            String path = "machine.parts." + word;
            Machine.Part part = read.choice(path, word, Machine.Part.class);
            Boolean has = part == null ? null : read.yesNo(path, answer);
            if (has != null) {
                parts.put(part, has);
            }
        });
        return Collections.unmodifiableMap(parts);
    }

    /** A word, refused with a sentence of its own where the machine exists and this rule book has no checks for it. */
    private <E extends Enum<E>> E inScope(String path, String text, Class<E> kind) {
        String what = text == null ? null : OUT_OF_SCOPE.get(text.strip().toLowerCase(Locale.ROOT));
        if (what == null || read.faults.at(path)) {
            return read.choice(path, text, kind);
        }
        wrong(path, Faults.quoted(text) + ": " + what + " is outside what this rule book judges", "Do not describe it as another machine; have it inspected by somebody who knows its kind");
        return null;
    }

    private Machine.LaidUp laidUp(String text) {
        if (text.equals("no") || text.equals("unknown")) {
            return new Machine.LaidUp(text.equals("no"), null);
        }
        Value.Days days = read.days("machine.laid-up-since", text);
        if (days != null && read.today() != null && days.from().isAfter(read.today())) {
            wrong("machine.laid-up-since", days + " lies after the moment judged (" + read.asOfWords() + ")", "Write since when it stood, unknown, or no");
        }
        return days == null ? null : new Machine.LaidUp(true, days.from());
    }

    /** A whole number within what the rule book knows to be possible; 0 where an electric machine has none is for the caller to judge. */
    private Integer whole(String path, String text, String field) {
        return read.wholeNumber(path, text, field.equals("engine.cylinders") ? 0 : least(read.words, field), most(read.words, field));
    }

    /** The least that a whole number of the description can be. */
    static int least(Vocabulary words, String field) {
        Plausible.Row row = words.plausible().description().get(field);
        return row == null ? 0 : row.canBe().low().value().intValueExact();
    }

    /** The most that a whole number of the description can be; six figures where the rule book does not say. */
    static int most(Vocabulary words, String field) {
        Plausible.Row row = words.plausible().description().get(field);
        return row == null ? 999_999 : row.canBe().high().value().intValueExact();
    }

    private Year built(String text) {
        String path = "machine.built";
        if (Reading.blank(text) || read.faults.at(path)) {
            return null;
        }
        Year year = Year.parse(text);
        if (year.getValue() < least(read.words, "built")) {
            wrong(path, "built in " + year + ", before there were motorcycles", "Write the year it was built, such as 1974");
            return null;
        }
        if (read.today() != null && year.getValue() > read.today().getYear()) {
            wrong(path, "built in " + year + ", after the moment judged (" + read.asOfWords() + ")", "Write the year it was built");
            return null;
        }
        return year;
    }

    private Machine.Engine engine(Raw.Engine raw) {
        String path = "machine.engine";
        Machine.Engine engine = new Machine.Engine(
                inScope(path + ".cycle", raw.cycle(), Machine.Cycle.class),
                read.amount(path + ".displacement", raw.displacement(), Unit.Dimension.VOLUME),
                orZero(whole(path + ".cylinders", raw.cylinders(), "engine.cylinders")),
                read.choice(path + ".oiling", raw.oiling(), Machine.Oiling.class),
                read.choice(path + ".ignition", raw.ignition(), Machine.Ignition.class),
                read.choice(path + ".cooling", raw.cooling(), Machine.Cooling.class));
        if (engine.cycle() == Machine.Cycle.ELECTRIC) {
            electric(path, engine);
        } else if (engine.cycle() != null) {
            combustion(path, engine, raw);
        }
        return engine;
    }

    private void electric(String path, Machine.Engine engine) {
        if (engine.displacement() != null && engine.displacement().value().signum() != 0) {
            wrong(path + ".displacement", "an electric machine has no swept volume", "Write 0 cc");
        }
        if (engine.cylinders() != 0) {
            wrong(path + ".cylinders", "an electric machine has no cylinders", "Write 0");
        }
        if (engine.oiling() != null && engine.oiling() != Machine.Oiling.NONE) {
            wrong(path + ".oiling", "an electric machine has no engine oil", "Write none");
        }
        if (engine.ignition() != null && engine.ignition() != Machine.Ignition.NONE) {
            wrong(path + ".ignition", "an electric machine has no ignition", "Write none");
        }
    }

    private void combustion(String path, Machine.Engine engine, Raw.Engine raw) {
        String cycle = Reading.spelled(engine.cycle());
        Quantity volume = engine.displacement();
        if (volume != null && (volume.value().signum() <= 0 || volume.to(Unit.CC).value().compareTo(BigDecimal.valueOf(10_000)) > 0)) {
            wrong(path + ".displacement", "a " + cycle + " of " + volume, "Write the swept volume of all cylinders, such as 246 cc");
        }
        if (engine.cylinders() == 0 && "0".equals(raw.cylinders())) {
            wrong(path + ".cylinders", "a " + cycle + " without cylinders", "Write how many it has");
        }
        if (engine.ignition() == Machine.Ignition.NONE) {
            wrong(path + ".ignition", "a " + cycle + " without ignition", "Write points, magneto or electronic");
        }
        boolean two = engine.cycle() == Machine.Cycle.TWO_STROKE;
        if (engine.oiling() != null && !oilings(two).contains(engine.oiling())) {
            wrong(path + ".oiling", "a " + cycle + " is not oiled by " + Reading.spelled(engine.oiling()),
                    "Write " + Listing.or(oilings(two).stream().map(Reading::spelled).toList()));
        }
    }

    private static List<Machine.Oiling> oilings(boolean twoStroke) {
        return twoStroke ? List.of(Machine.Oiling.OIL_INJECTION, Machine.Oiling.PREMIX, Machine.Oiling.TOTAL_LOSS)
                : List.of(Machine.Oiling.WET_SUMP, Machine.Oiling.DRY_SUMP, Machine.Oiling.TOTAL_LOSS);
    }

    private Machine.Brake brake(String path, Raw.Brake raw) {
        if (raw == null) {
            return null;
        }
        Machine.BrakeType type = read.choice(path + ".type", raw.type(), Machine.BrakeType.class);
        Machine.WorkedBy workedBy = read.choice(path + ".worked-by", raw.workedBy(), Machine.WorkedBy.class);
        Integer discs = whole(path + ".discs", raw.discs(), "discs");
        Machine.Lining lining = read.choice(path + ".lining", raw.lining(), Machine.Lining.class);
        Boolean lamp = read.yesNo(path + ".stop-lamp-switch", raw.stopLampSwitch());
        if (type == Machine.BrakeType.NONE) {
            noBrake(path, workedBy, discs, lining, lamp);
        } else if (type != null) {
            aBrake(path, type, workedBy, discs, lining);
        }
        return new Machine.Brake(type, workedBy, orZero(discs), lining, orNo(lamp));
    }

    private void aBrake(String path, Machine.BrakeType type, Machine.WorkedBy workedBy, Integer discs, Machine.Lining lining) {
        boolean disc = type == Machine.BrakeType.DISC;
        String name = "a " + Reading.spelled(type) + " brake";
        if (workedBy == Machine.WorkedBy.NONE || disc && workedBy == Machine.WorkedBy.ROD) {
            wrong(path + ".worked-by", name + " worked by " + Reading.spelled(workedBy), disc ? "Write hydraulic or cable" : "Write hydraulic, cable or rod");
        }
        if (discs != null && disc != discs > 0) {
            wrong(path + ".discs", name + " with " + (discs == 1 ? "1 disc" : discs + " discs"), disc ? "Write 1 or 2" : "Write 0");
        }
        if (lining == Machine.Lining.NONE) {
            wrong(path + ".lining", name + " without friction material", "Write bonded, riveted or sintered");
        }
    }

    private void noBrake(String path, Machine.WorkedBy workedBy, Integer discs, Machine.Lining lining, Boolean lamp) {
        String advice = "where the type is none";
        if (workedBy != null && workedBy != Machine.WorkedBy.NONE) {
            wrong(path + ".worked-by", "no brake, but worked by " + Reading.spelled(workedBy), "Write none " + advice);
        }
        if (discs != null && discs > 0) {
            wrong(path + ".discs", "no brake, but " + discs + (discs == 1 ? " disc" : " discs"), "Write 0 " + advice);
        }
        if (lining != null && lining != Machine.Lining.NONE) {
            wrong(path + ".lining", "no brake, but a lining", "Write none " + advice);
        }
        if (Boolean.TRUE.equals(lamp)) {
            wrong(path + ".stop-lamp-switch", "no brake, but a stop lamp switch", "Write no " + advice);
        }
    }

    private Machine.Wheel wheel(String path, Raw.Wheel raw) {
        return raw == null ? null : new Machine.Wheel(read.choice(path + ".rim", raw.rim(), Machine.Rim.class),
                orNo(read.yesNo(path + ".spoked", raw.spoked())), orNo(read.yesNo(path + ".tube", raw.tube())));
    }

    private Machine.Equipment equipment(String path, Raw.Equipment raw, Machine.Engine engine, Integer volts) {
        Machine.Equipment equipment = new Machine.Equipment(
                read.choice(path + ".starter", raw.starter(), Machine.Starter.class),
                orZero(whole(path + ".carburettors", raw.carburettors(), "equipment.carburettors")),
                read.choice(path + ".fuel-tap", raw.fuelTap(), Machine.FuelTap.class),
                read.choice(path + ".clutch", raw.clutch(), Machine.Clutch.class),
                read.choice(path + ".front-springing", raw.frontSpringing(), Machine.FrontSpringing.class),
                read.choice(path + ".rear-springing", raw.rearSpringing(), Machine.RearSpringing.class),
                orNo(read.yesNo(path + ".lamps", raw.lamps())),
                orNo(read.yesNo(path + ".indicators", raw.indicators())),
                orNo(read.yesNo(path + ".horn", raw.horn())),
                orZero(whole(path + ".mirrors", raw.mirrors(), "equipment.mirrors")),
                orZero(whole(path + ".stands", raw.stands(), "equipment.stands")),
                orNo(read.yesNo(path + ".speedometer", raw.speedometer())));
        boolean turnedByBattery = equipment.starter() == Machine.Starter.ELECTRIC || equipment.starter() == Machine.Starter.BOTH;
        if (turnedByBattery && volts != null && volts == 0) {
            wrong(path + ".starter", "an electric starter without a battery", "Write kick or none, or the battery's volts");
        }
        if (equipment.indicators() && !equipment.lamps() && !read.faults.at(path + ".lamps")) {
            wrong(path + ".indicators", "indicators, but no lamps", "Write lamps: yes, or indicators: no");
        }
        if (engine != null && engine.cycle() == Machine.Cycle.ELECTRIC) {
            electric(path, equipment);
        } else if (engine != null && engine.cylinders() > 0 && equipment.carburettors() > 2 * engine.cylinders()) {
            wrong(path + ".carburettors", equipment.carburettors() + " carburettors on " + (engine.cylinders() == 1 ? "1 cylinder" : engine.cylinders() + " cylinders"), "Write how many it has");
        }
        return equipment;
    }

    private void electric(String path, Machine.Equipment equipment) {
        if (equipment.starter() != null && equipment.starter() != Machine.Starter.NONE) {
            wrong(path + ".starter", "an electric machine needs no starter", "Write none");
        }
        if (equipment.carburettors() != 0) {
            wrong(path + ".carburettors", "an electric machine has no carburettors", "Write 0");
        }
        if (equipment.fuelTap() != null && equipment.fuelTap() != Machine.FuelTap.NONE) {
            wrong(path + ".fuel-tap", "an electric machine has no fuel", "Write none");
        }
    }

    private static boolean isNone(Machine.Brake brake) {
        return brake != null && brake.type() == Machine.BrakeType.NONE;
    }

    private void wrong(String path, String what, String advice) {
        read.faults.add(path, what, advice);
    }

    // A null here means that a fault is known already, so the record is refused and what stands in is never seen.
    private static int orZero(Integer number) {
        return number == null ? 0 : number;
    }

    private static boolean orNo(Boolean answer) {
        return answer != null && answer;
    }
}
