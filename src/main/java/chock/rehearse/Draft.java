package chock.rehearse;

import static java.util.Map.entry;

import chock.quantity.Quantity;
import chock.record.AsBuilt;
import chock.record.DescriptionChange;
import chock.record.Machine;
import chock.record.Past;
import java.time.LocalDate;
import java.time.Year;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The machine of a scenario while it is being described. Undescribed, it is a two-stroke single of 1974 with a kick
 * starter, a hydraulic disc in front and a rod drum behind.
 */
final class Draft {
    Machine.Kind kind = Machine.Kind.MOTORCYCLE;
    LocalDate firstRegistered = LocalDate.of(1974, 6, 14);
    Quantity topSpeed = Quantity.parse("120 km/h");
    int seats = 2;
    Machine.Engine engine = new Machine.Engine(Machine.Cycle.TWO_STROKE, Quantity.parse("246 cc"), 1, Machine.Oiling.OIL_INJECTION, Machine.Ignition.POINTS, Machine.Cooling.AIR);
    Machine.Brake frontBrake = brake("one hydraulic disc");
    Machine.Brake rearBrake = brake("a rod drum");
    boolean linkedBrakes;
    Machine.Wheel frontWheel = new Machine.Wheel(Machine.Rim.STEEL, true, true);
    Machine.Wheel rearWheel = frontWheel;
    Machine.Drive drive = Machine.Drive.CHAIN;
    int volts = 12;
    private final Map<String, String> equipment = new HashMap<>(Map.ofEntries(entry("starter", "kick"), entry("carburettors", "1"), entry("fuel-tap", "manual"),
            entry("clutch", "cable"), entry("front-springing", "telescopic-fork"), entry("rear-springing", "twin-dampers"), entry("lamps", "yes"),
            entry("indicators", "no"), entry("horn", "yes"), entry("mirrors", "1"), entry("stands", "2"), entry("speedometer", "yes")));
    private Machine.Further further = Machine.Further.NOT_WRITTEN;
    String engineNumber = "TB25E-10395";
    Machine.History history = Machine.History.KNOWN;

    /** What it was built with where that is not what it is now; by field. */
    final Map<String, String> builtWith = new HashMap<>();
    /** Of which fields it is not written. */
    final Set<String> notWritten = new HashSet<>();
    /** The document it is known from, or null. */
    String document = "Lark 250 rider's handbook";
    boolean asBuiltWritten = true;
    final List<DescriptionChange> changes = new ArrayList<>();

    Machine machine() {
        Machine now = now();
        AsBuilt described = AsBuilt.asDescribed(now, document, document == null ? null : "4", "ida");
        Map<String, String> facts = new TreeMap<>(described.facts());
        Map<String, String> values = new TreeMap<>(now.fields());
        List<Past.Rebuild> rebuilds = new ArrayList<>();
        for (int i = changes.size() - 1; i >= 0; i--) {
            values.put(changes.get(i).field(), changes.get(i).from());
            facts.put(changes.get(i).field(), changes.get(i).from());
            rebuilds.add(0, new Past.Rebuild(changes.get(i).at(), List.of(changes.get(i)), Map.copyOf(values)));
        }
        facts.putAll(builtWith);
        facts.keySet().removeAll(notWritten);
        return now.with(new Past(rebuilds, asBuiltWritten ? new AsBuilt(document, described.page(), "ida", null, facts, Map.of(), 0) : null, Map.of()));
    }

    private Machine now() {
        return new Machine("Tarnbeck", "Lark 250", "TB25-10382", engineNumber, kind, Year.of(firstRegistered.getYear()), firstRegistered, topSpeed, seats,
                engine, frontBrake, rearBrake, linkedBrakes, frontWheel, rearWheel, drive, volts, equipment(), history).with(further);
    }

    void battery(Machine.Battery battery) {
        further = new Machine.Further(battery, further.generator(), further.laidUp(), further.parts());
    }

    void generator(boolean generator) {
        further = new Machine.Further(further.battery(), generator, further.laidUp(), further.parts());
    }

    void laidUp(Machine.LaidUp laidUp) {
        further = new Machine.Further(further.battery(), further.generator(), laidUp, further.parts());
    }

    void part(Machine.Part part, boolean has) {
        Map<Machine.Part, Boolean> parts = new TreeMap<>(further.parts());
        parts.put(part, has);
        further = new Machine.Further(further.battery(), further.generator(), further.laidUp(), parts);
    }

    static Machine.Brake brake(String words) {
        Machine.Lining bonded = Machine.Lining.BONDED;
        return switch (words) {
            case "one hydraulic disc" -> new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.HYDRAULIC, 1, bonded, true);
            case "two hydraulic discs" -> new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.HYDRAULIC, 2, bonded, true);
            case "a cable disc" -> new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.CABLE, 1, bonded, true);
            case "a cable drum" -> new Machine.Brake(Machine.BrakeType.DRUM, Machine.WorkedBy.CABLE, 0, bonded, true);
            case "a rod drum" -> new Machine.Brake(Machine.BrakeType.DRUM, Machine.WorkedBy.ROD, 0, bonded, true);
            case "a hydraulic drum" -> new Machine.Brake(Machine.BrakeType.DRUM, Machine.WorkedBy.HYDRAULIC, 0, bonded, true);
            case "no brake" -> new Machine.Brake(Machine.BrakeType.NONE, Machine.WorkedBy.NONE, 0, Machine.Lining.NONE, false);
            default -> throw new NotUnderstood("'" + words + "': write one hydraulic disc, two hydraulic discs, a cable disc, a cable drum, a rod drum, a hydraulic drum or no brake");
        };
    }

    /** Another cycle, with the oiling that is usual for it. */
    void cycle(Machine.Cycle cycle) {
        boolean two = cycle == Machine.Cycle.TWO_STROKE;
        engine = new Machine.Engine(cycle, engine.displacement(), engine.cylinders(), two ? Machine.Oiling.OIL_INJECTION : Machine.Oiling.WET_SUMP, engine.ignition(), engine.cooling());
    }

    void cooling(Machine.Cooling cooling) {
        engine = new Machine.Engine(engine.cycle(), engine.displacement(), engine.cylinders(), engine.oiling(), engine.ignition(), cooling);
    }

    void displacement(Quantity volume) {
        engine = new Machine.Engine(engine.cycle(), volume, engine.cylinders(), engine.oiling(), engine.ignition(), engine.cooling());
    }

    void cylinders(int cylinders) {
        engine = new Machine.Engine(engine.cycle(), engine.displacement(), cylinders, engine.oiling(), engine.ignition(), engine.cooling());
    }

    void oiling(Machine.Oiling oiling) {
        engine = new Machine.Engine(engine.cycle(), engine.displacement(), engine.cylinders(), oiling, engine.ignition(), engine.cooling());
    }

    void ignition(Machine.Ignition ignition) {
        engine = new Machine.Engine(engine.cycle(), engine.displacement(), engine.cylinders(), engine.oiling(), ignition, engine.cooling());
    }

    /** A motor and a battery, and nothing that burns. */
    void electric() {
        engine = new Machine.Engine(Machine.Cycle.ELECTRIC, Quantity.parse("0 cc"), 0, Machine.Oiling.NONE, Machine.Ignition.NONE, Machine.Cooling.AIR);
        equip("starter", "none");
        equip("carburettors", "0");
        equip("fuel-tap", "none");
        equip("clutch", "none");
    }

    /** One piece of equipment, by its key and in the words of a record. */
    void equip(String key, String value) {
        if (equipment.replace(key, value) == null) {
            throw new NotUnderstood("'" + key + "' is no equipment; write one of " + String.join(", ", new java.util.TreeSet<>(equipment.keySet())));
        }
        equipment();
    }

    private Machine.Equipment equipment() {
        return new Machine.Equipment(word(Machine.Starter.class, equipment.get("starter")), count("carburettors"),
                word(Machine.FuelTap.class, equipment.get("fuel-tap")), word(Machine.Clutch.class, equipment.get("clutch")),
                word(Machine.FrontSpringing.class, equipment.get("front-springing")), word(Machine.RearSpringing.class, equipment.get("rear-springing")),
                yes("lamps"), yes("indicators"), yes("horn"), count("mirrors"), count("stands"), yes("speedometer"));
    }

    private int count(String key) {
        if (!equipment.get(key).matches("\\d")) {
            throw new NotUnderstood("'" + equipment.get(key) + "': write the number of " + key + ", such as 2");
        }
        return Integer.parseInt(equipment.get(key));
    }

    private boolean yes(String key) {
        return switch (equipment.get(key)) {
            case "yes" -> true;
            case "no" -> false;
            default -> throw new NotUnderstood("'" + equipment.get(key) + "': write " + key + " yes or no");
        };
    }

    /** A word of a record as the constant it stands for. */
    static <E extends Enum<E>> E word(Class<E> kind, String word) {
        return Arrays.stream(kind.getEnumConstants()).filter(known -> known.name().toLowerCase(Locale.ROOT).replace('_', '-').equals(word)).findFirst()
                .orElseThrow(() -> new NotUnderstood("'" + word + "': write one of "
                        + Arrays.stream(kind.getEnumConstants()).map(known -> known.name().toLowerCase(Locale.ROOT).replace('_', '-')).collect(Collectors.joining(", "))));
    }
}
