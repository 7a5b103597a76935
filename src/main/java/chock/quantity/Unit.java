package chock.quantity;

import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.DAY;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.METRE_PER_SECOND;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.UnitConverter;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.function.MultiplyConverter;
import tech.units.indriya.function.RationalNumber;

/**
 * The units a bench writes, each spelled the way people spell it. Conversion is done by the units library with exact
 * rational factors; the factors here are the defining ones (1 in = 25.4 mm, 1 lb = 0.45359237 kg, standard gravity
 * 9.80665 m/s², 0 °C = 273.15 K; from memory, checked in the tests against the UCUM table). The degree is the only unit of
 * angle, so its factor never matters. There is no plain gallon: the imperial one is a fifth larger than the US one.
 */
public enum Unit {
    MM("mm", Dimension.LENGTH, METRE.divide(1000), "millimetre", "millimetres"),
    CM("cm", Dimension.LENGTH, METRE.divide(100)),
    M("m", Dimension.LENGTH, METRE, "metre", "metres"),
    KM("km", Dimension.LENGTH, METRE.multiply(1000)),
    INCH("in", Dimension.LENGTH, scaled(METRE, 254, 10_000), "inch", "inches", "\""),
    FOOT("ft", Dimension.LENGTH, scaled(METRE, 3048, 10_000), "foot", "feet"),
    THOU("thou", Dimension.LENGTH, scaled(METRE, 254, 10_000_000)),
    MILE("mi", Dimension.LENGTH, scaled(METRE, 1_609_344, 1000), "mile", "miles"),
    CC("cc", Dimension.VOLUME, CUBIC_METRE.divide(1_000_000), "cm³", "cm3"),
    ML("mL", Dimension.VOLUME, LITRE.divide(1000), "ml"),
    LITRES("L", Dimension.VOLUME, LITRE, "l", "litre", "litres"),
    CUBIC_METRES("m³", Dimension.VOLUME, CUBIC_METRE, "m3"),
    CUBIC_FEET("ft³", Dimension.VOLUME, scaled(CUBIC_METRE, 28_316_846_592L, 1_000_000_000_000L), "ft3", "cu ft"),
    US_GALLON("US gal", Dimension.VOLUME, scaled(CUBIC_METRE, 3_785_411_784L, 1_000_000_000_000L)),
    IMPERIAL_GALLON("imp gal", Dimension.VOLUME, scaled(LITRE, 454_609, 100_000)),
    GRAMS("g", Dimension.MASS, GRAM),
    KG("kg", Dimension.MASS, KILOGRAM, "kilogram", "kilograms"),
    POUND("lb", Dimension.MASS, scaled(KILOGRAM, 45_359_237, 100_000_000), "lbs"),
    NEWTONS("N", Dimension.FORCE, NEWTON),
    KGF("kgf", Dimension.FORCE, scaled(NEWTON, 980_665, 100_000)),
    LBF("lbf", Dimension.FORCE, scaled(NEWTON, 44_482_216_152_605L, 10_000_000_000_000L)),
    NEWTON_METRE("N·m", Dimension.TORQUE, NEWTON.multiply(METRE), "Nm", "N m", "N.m"),
    POUND_FOOT("lbf·ft", Dimension.TORQUE, scaled(NEWTON.multiply(METRE), 44_482_216_152_605L * 3048, 100_000_000_000_000_000L), "lb·ft", "lbf ft", "lb ft", "ft lb", "ft-lb", "ft·lbf"),
    POUND_INCH("lbf·in", Dimension.TORQUE, scaled(NEWTON.multiply(METRE), 44_482_216_152_605L * 254, 100_000_000_000_000_000L), "lb·in", "lbf in", "lb in", "in lb", "in-lb", "in·lbf"),
    KGF_METRE("kgf·m", Dimension.TORQUE, scaled(NEWTON.multiply(METRE), 980_665, 100_000), "kgf m", "kg·m", "kg m"),
    KGF_CENTIMETRE("kgf·cm", Dimension.TORQUE, scaled(NEWTON.multiply(METRE), 980_665, 10_000_000), "kgf cm", "kg·cm", "kg cm"),
    KPA("kPa", Dimension.PRESSURE, PASCAL.multiply(1000)),
    PA("Pa", Dimension.PRESSURE, PASCAL),
    HPA("hPa", Dimension.PRESSURE, PASCAL.multiply(100), "mbar"),
    BAR("bar", Dimension.PRESSURE, PASCAL.multiply(100_000)),
    PSI("psi", Dimension.PRESSURE, scaled(PASCAL, 44_482_216_152_605L, 6_451_600_000L), "lbf/in²", "lb/in²", "lb/in2"),
    KGF_PER_CM2("kgf/cm²", Dimension.PRESSURE, scaled(PASCAL, 980_665, 10), "kgf/cm2", "kg/cm²", "kg/cm2"),
    /** An inch of mercury: 3.3863788 kPa, from 133.322 kPa for a metre of it, as the UCUM library of the tests has it. */
    INHG("inHg", Dimension.PRESSURE, scaled(PASCAL, 33_863_788, 10_000), "in Hg", "inHG"),
    KMH("km/h", Dimension.SPEED, scaled(METRE_PER_SECOND, 10, 36), "kmh", "kph"),
    MPH("mph", Dimension.SPEED, scaled(METRE_PER_SECOND, 1_609_344, 3_600_000)),
    MPS("m/s", Dimension.SPEED, METRE_PER_SECOND),
    MPS2("m/s²", Dimension.ACCELERATION, METRE_PER_SECOND.divide(SECOND), "m/s2"),
    FTPS2("ft/s²", Dimension.ACCELERATION, scaled(METRE_PER_SECOND.divide(SECOND), 3048, 10_000), "ft/s2"),
    DEGREES_CELSIUS("°C", Dimension.TEMPERATURE, KELVIN.shift(RationalNumber.of(27_315, 100)), "C", "degC"),
    DEGREES_FAHRENHEIT("°F", Dimension.TEMPERATURE, scaled(KELVIN, 5, 9).shift(RationalNumber.of(45_967, 100)), "F", "degF"),
    KELVINS("K", Dimension.TEMPERATURE, KELVIN),
    VOLTS("V", Dimension.VOLTAGE, VOLT),
    AMPERES("A", Dimension.CURRENT, AMPERE),
    MILLIAMPERES("mA", Dimension.CURRENT, AMPERE.divide(1000)),
    OHMS("Ω", Dimension.RESISTANCE, OHM, "ohm", "ohms", "Ohm"),
    KILOHMS("kΩ", Dimension.RESISTANCE, OHM.multiply(1000), "kohm", "kOhm"),
    WATTS("W", Dimension.POWER, WATT),
    PER_CENT("%", Dimension.RATIO, PERCENT, "percent", "per cent"),
    PPM("ppm", Dimension.RATIO, AbstractUnit.ONE.divide(1_000_000)),
    MG_PER_M3("mg/m³", Dimension.CONCENTRATION, scaled(KILOGRAM.divide(CUBIC_METRE), 1, 1_000_000), "mg/m3"),
    SECONDS("s", Dimension.DURATION, SECOND, "sec"),
    MINUTES("min", Dimension.DURATION, MINUTE, "minutes"),
    HOURS("h", Dimension.DURATION, HOUR, "hours"),
    DAYS("d", Dimension.DURATION, DAY, "day", "days"),
    CUBIC_METRES_PER_HOUR("m³/h", Dimension.FLOW, CUBIC_METRE.divide(HOUR), "m3/h"),
    CUBIC_METRES_PER_MINUTE("m³/min", Dimension.FLOW, CUBIC_METRE.divide(MINUTE), "m3/min"),
    CUBIC_METRES_PER_SECOND("m³/s", Dimension.FLOW, CUBIC_METRE.divide(SECOND), "m3/s"),
    LITRES_PER_MINUTE("L/min", Dimension.FLOW, LITRE.divide(MINUTE), "l/min"),
    CFM("ft³/min", Dimension.FLOW, scaled(CUBIC_METRE.divide(MINUTE), 28_316_846_592L, 1_000_000_000_000L), "cfm", "ft3/min"),
    GRAMS_PER_HOUR("g/h", Dimension.MASS_FLOW, GRAM.divide(HOUR)),
    RPM("rpm", Dimension.REVOLUTIONS, AbstractUnit.ONE.divide(MINUTE), "1/min"),
    SQUARE_METRES("m²", Dimension.AREA, SQUARE_METRE, "m2"),
    DEGREES("°", Dimension.ANGLE, AbstractUnit.ONE, "deg", "degrees"),
    MONTHS("months", Dimension.AGE, AbstractUnit.ONE, "month", "mo"),
    YEARS("y", Dimension.AGE, AbstractUnit.ONE.multiply(12), "year", "years", "yr"),
    TIMES("times", Dimension.COUNT, AbstractUnit.ONE, "pcs");

    /** What kind of thing a unit measures; only units of one kind compare. */
    public enum Dimension {
        LENGTH, AREA, VOLUME, MASS, FORCE, TORQUE, PRESSURE, SPEED, ACCELERATION, TEMPERATURE, VOLTAGE, CURRENT,
        RESISTANCE, POWER, RATIO, CONCENTRATION, DURATION, FLOW, MASS_FLOW, REVOLUTIONS, ANGLE, AGE, COUNT;

        /** The kind in words, for a message. */
        public String words() {
            return name().toLowerCase(Locale.ROOT).replace('_', ' ');
        }
    }

    private static final Map<String, Unit> SPELLINGS = spellings();

    private final String symbol;
    private final Dimension dimension;
    private final javax.measure.Unit<?> library;
    private final List<String> aliases;

    Unit(String symbol, Dimension dimension, javax.measure.Unit<?> library, String... aliases) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.library = library;
        this.aliases = List.of(aliases);
    }

    private static javax.measure.Unit<?> scaled(javax.measure.Unit<?> base, long times, long over) {
        return base.transform(MultiplyConverter.ofRational(times, over));
    }

    private static Map<String, Unit> spellings() {
        Map<String, Unit> all = new LinkedHashMap<>();
        for (Unit unit : values()) {
            all.put(unit.symbol, unit);
            unit.aliases.forEach(alias -> all.put(alias, unit));
        }
        return Map.copyOf(all);
    }

    /** The unit with this spelling, or empty. Spelling is exact except for surrounding blanks. */
    public static Optional<Unit> spelled(String text) {
        return Optional.ofNullable(SPELLINGS.get(text.strip()));
    }

    /** The one unit spelled like this but for capitals, blanks and dots; empty when there is none or more than one. For a message. */
    public static Optional<Unit> almostSpelled(String text) {
        Set<Unit> near = SPELLINGS.entrySet().stream().filter(e -> plain(e.getKey()).equals(plain(text))).map(Map.Entry::getValue)
                .collect(Collectors.toSet());
        return near.size() == 1 ? Optional.of(near.iterator().next()) : Optional.empty();
    }

    private static String plain(String spelling) {
        return spelling.toLowerCase(Locale.ROOT).replaceAll("[\\s.·]", "");
    }

    /** Every symbol of one kind, for a message. */
    public static List<String> symbolsOf(Dimension dimension) {
        return Arrays.stream(values()).filter(u -> u.dimension == dimension).map(u -> u.symbol).toList();
    }

    public String symbol() {
        return symbol;
    }

    public Dimension dimension() {
        return dimension;
    }

    /** Converts from this unit to another of the same kind. */
    UnitConverter converterTo(Unit other) {
        if (dimension != other.dimension) {
            throw new IllegalArgumentException(symbol + " is not a unit of " + other.dimension.words());
        }
        try {
            return library.getConverterToAny(other.library);
        } catch (javax.measure.IncommensurableException e) {
            throw new IllegalStateException("units of one kind must convert: " + symbol + " to " + other.symbol, e);
        }
    }

    @Override
    public String toString() {
        return symbol;
    }
}
