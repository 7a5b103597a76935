package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.UnreadableQuantity;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * One field of a machine's description that work can change: its name as a path below {@code machine}, such as
 * {@code front-brake.type}, and how a value of it is written.
 */
public final class DescriptionField {
    /** Known of every machine, and changed by no work. */
    public static final String BUILT = "built";

    /** The reader's own bound for whole numbers. */
    static final int MOST = 999_999;

    private static final Map<String, DescriptionField> ALL = table();

    private final String name;
    private final Reader reader;
    private final Function<Machine, Object> value;
    private final List<String> values;
    private final boolean amount;
    private final Map<String, Integer> laterWords;

    /** Turns a text into a value, or into null and a fault. */
    private interface Reader {
        Object read(Reading read, String path, String text);
    }

    private DescriptionField(String name, Reader reader, Function<Machine, Object> value, List<String> values, boolean amount) {
        this(name, reader, value, values, amount, Map.of());
    }

    private DescriptionField(String name, Reader reader, Function<Machine, Object> value, List<String> values, boolean amount, Map<String, Integer> laterWords) {
        this.name = name;
        this.reader = reader;
        this.value = value;
        this.values = values;
        this.amount = amount;
        this.laterWords = laterWords;
    }

    /** Names of all fields, in the order of the description. */
    public static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    static Optional<DescriptionField> named(String name) {
        return Optional.ofNullable(ALL.get(name));
    }

    /** Every value of a field that is one of a few words, and the usual ones of a count, or an empty list for an amount or a text; empty as well for no field. */
    public static List<String> valuesOf(String name) {
        return named(name).map(f -> f.values).orElse(List.of());
    }

    /** The words of a field that a form after the first brought, each with that form. */
    static Map<String, Integer> laterWords(String name) {
        return named(name).map(f -> f.laterWords).orElse(Map.of());
    }

    /** Every field of a machine as a record writes it, and the year it was built, which no work changes. */
    static Map<String, String> of(Machine machine) {
        Map<String, String> written = new LinkedHashMap<>();
        written.put(BUILT, String.valueOf(machine.built()));
        ALL.values().forEach(field -> written.put(field.name, written(field.value.apply(machine))));
        return Collections.unmodifiableMap(written);
    }

    /** The value as a record writes it, or null after a fault. */
    String read(Reading read, String path, String text) {
        Object known = reader.read(read, path, text);
        return known == null ? null : written(known);
    }

    /**
     * True when two values say the same. Amounts in different units do when one is the other rounded: 75 mph and 120 km/h
     * are one speed in two manuals.
     */
    public static boolean agree(String name, String one, String other) {
        return one.equals(other) || named(name).filter(f -> f.amount).isPresent() && sameAmount(one, other);
    }

    private static boolean sameAmount(String one, String other) {
        try {
            Quantity a = Quantity.parse(one);
            Quantity b = Quantity.parse(other);
            return a.unit().dimension() == b.unit().dimension() && (a.compareTo(b) == 0 || isRounded(a, b) || isRounded(b, a));
        } catch (UnreadableQuantity e) {
            return false;
        }
    }

    private static boolean isRounded(Quantity exact, Quantity rounded) {
        return exact.to(rounded.unit()).value().setScale(Math.max(0, rounded.value().scale()), RoundingMode.HALF_UP).compareTo(rounded.value()) == 0;
    }

    private static String written(Object value) {
        return value instanceof Enum<?> word ? Reading.spelled(word) : value instanceof Boolean yes ? yes ? "yes" : "no" : String.valueOf(value);
    }

    private static Map<String, DescriptionField> table() {
        List<DescriptionField> all = new ArrayList<>();
        all.add(new DescriptionField("engine-number", (read, path, text) -> text, Machine::engineNumber, List.of(), false));
        all.add(word("kind", Machine.Kind.class, Machine::kind));
        all.add(amount("top-speed", Unit.Dimension.SPEED, Machine::topSpeed));
        all.add(whole("seats", 4, Machine::seats));
        all.add(word("engine.cycle", Machine.Cycle.class, m -> m.engine().cycle()));
        all.add(amount("engine.displacement", Unit.Dimension.VOLUME, m -> m.engine().displacement()));
        all.add(whole("engine.cylinders", 6, m -> m.engine().cylinders()));
        all.add(word("engine.oiling", Machine.Oiling.class, m -> m.engine().oiling()));
        all.add(word("engine.ignition", Machine.Ignition.class, m -> m.engine().ignition()));
        all.add(word("engine.cooling", Machine.Cooling.class, m -> m.engine().cooling()));
        brake(all, "front-brake", Machine::frontBrake);
        brake(all, "rear-brake", Machine::rearBrake);
        all.add(yesNo("linked-brakes", Machine::linkedBrakes));
        wheel(all, "front-wheel", Machine::frontWheel);
        wheel(all, "rear-wheel", Machine::rearWheel);
        all.add(word("drive", Machine.Drive.class, Machine::drive));
        all.add(whole("volts", 0, Machine::volts));
        all.add(word("battery", Machine.Battery.class, m -> m.further().battery()));
        all.add(yesNo("generator", m -> m.further().generator()));
        for (Machine.Part part : Machine.Part.values()) {
            all.add(yesNo("parts." + part.word(), m -> m.has(part)));
        }
        all.add(word("equipment.starter", Machine.Starter.class, m -> m.equipment().starter()));
        all.add(whole("equipment.carburettors", 4, m -> m.equipment().carburettors()));
        all.add(word("equipment.fuel-tap", Machine.FuelTap.class, m -> m.equipment().fuelTap()));
        all.add(word("equipment.clutch", Machine.Clutch.class, m -> m.equipment().clutch()));
        all.add(word("equipment.front-springing", Machine.FrontSpringing.class, m -> m.equipment().frontSpringing()));
        all.add(word("equipment.rear-springing", Machine.RearSpringing.class, m -> m.equipment().rearSpringing()));
        all.add(yesNo("equipment.lamps", m -> m.equipment().lamps()));
        all.add(yesNo("equipment.indicators", m -> m.equipment().indicators()));
        all.add(yesNo("equipment.horn", m -> m.equipment().horn()));
        all.add(whole("equipment.mirrors", 2, m -> m.equipment().mirrors()));
        all.add(whole("equipment.stands", 2, m -> m.equipment().stands()));
        all.add(yesNo("equipment.speedometer", m -> m.equipment().speedometer()));
        Map<String, DescriptionField> named = new LinkedHashMap<>();
        all.forEach(field -> named.put(field.name, field));
        return Collections.unmodifiableMap(named);
    }

    private static void brake(List<DescriptionField> all, String name, Function<Machine, Machine.Brake> brake) {
        all.add(word(name + ".type", Machine.BrakeType.class, brake.andThen(Machine.Brake::type)));
        all.add(word(name + ".worked-by", Machine.WorkedBy.class, brake.andThen(Machine.Brake::workedBy)));
        all.add(whole(name + ".discs", 2, brake.andThen(Machine.Brake::discs)));
        all.add(word(name + ".lining", Machine.Lining.class, brake.andThen(Machine.Brake::lining)));
        all.add(yesNo(name + ".stop-lamp-switch", brake.andThen(Machine.Brake::stopLampSwitch)));
    }

    private static void wheel(List<DescriptionField> all, String name, Function<Machine, Machine.Wheel> wheel) {
        all.add(word(name + ".rim", Machine.Rim.class, wheel.andThen(Machine.Wheel::rim)));
        all.add(yesNo(name + ".spoked", wheel.andThen(Machine.Wheel::spoked)));
        all.add(yesNo(name + ".tube", wheel.andThen(Machine.Wheel::tube)));
    }

    private static <E extends Enum<E>> DescriptionField word(String name, Class<E> kind, Function<Machine, E> of) {
        return new DescriptionField(name, (read, path, text) -> read.choice(path, text, kind), of::apply, Reading.spellings(kind), false, laterWords(kind));
    }

    private static <E extends Enum<E>> Map<String, Integer> laterWords(Class<E> kind) {
        Map<String, Integer> later = new LinkedHashMap<>();
        for (java.lang.reflect.Field constant : kind.getFields()) {
            if (constant.isAnnotationPresent(Since.class)) {
                later.put(Reading.spelled(Enum.valueOf(kind, constant.getName())), constant.getAnnotation(Since.class).value());
            }
        }
        return Collections.unmodifiableMap(later);
    }

    /**
     * A count. Which of them are possible is for the rule book to say of the machine; what it was once stays readable.
     *
     * @param usual the greatest that is tried one by one; 0 where there are too many to try
     */
    private static DescriptionField whole(String name, int usual, Function<Machine, Integer> of) {
        List<String> few = usual == 0 ? List.of() : java.util.stream.IntStream.rangeClosed(0, usual).mapToObj(String::valueOf).toList();
        return new DescriptionField(name, (read, path, text) -> read.wholeNumber(path, text, 0, MOST), of::apply, few, false);
    }

    private static DescriptionField yesNo(String name, Function<Machine, Boolean> of) {
        return new DescriptionField(name, Reading::yesNo, of::apply, List.of("yes", "no"), false);
    }

    private static DescriptionField amount(String name, Unit.Dimension kind, Function<Machine, Quantity> of) {
        return new DescriptionField(name, (read, path, text) -> read.amount(path, text, kind), of::apply, List.of(), true);
    }
}
