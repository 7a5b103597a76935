package chock.record;

import chock.quantity.Quantity;
import java.time.LocalDate;
import java.time.Year;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The vehicle and the configuration that decides which checks apply. Every part of it must be written; {@code none} is
 * an answer, absence is not.
 *
 * @param further what only a record of the second form says
 * @param past what it was before, and what it was built with
 */
public record Machine(String marque, String model, String frameNumber, String engineNumber, Kind kind, Year built,
                      LocalDate firstRegistered, Quantity topSpeed, int seats, Engine engine, Brake frontBrake,
                      Brake rearBrake, boolean linkedBrakes, Wheel frontWheel, Wheel rearWheel, Drive drive, int volts,
                      Equipment equipment, History history, Further further, Past past) {

    /** A machine of which nothing is known but how it is now. */
    public Machine(String marque, String model, String frameNumber, String engineNumber, Kind kind, Year built,
                   LocalDate firstRegistered, Quantity topSpeed, int seats, Engine engine, Brake frontBrake, Brake rearBrake,
                   boolean linkedBrakes, Wheel frontWheel, Wheel rearWheel, Drive drive, int volts, Equipment equipment, History history) {
        this(marque, model, frameNumber, engineNumber, kind, built, firstRegistered, topSpeed, seats, engine, frontBrake, rearBrake, linkedBrakes,
                frontWheel, rearWheel, drive, volts, equipment, history, Further.NOT_WRITTEN, Past.NONE);
    }

    /** The same machine with another past. */
    public Machine with(Past other) {
        return new Machine(marque, model, frameNumber, engineNumber, kind, built, firstRegistered, topSpeed, seats, engine, frontBrake, rearBrake, linkedBrakes,
                frontWheel, rearWheel, drive, volts, equipment, history, further, other);
    }

    /** The same machine with what a record of the second form says besides. */
    public Machine with(Further other) {
        return new Machine(marque, model, frameNumber, engineNumber, kind, built, firstRegistered, topSpeed, seats, engine,
                frontBrake, rearBrake, linkedBrakes, frontWheel, rearWheel, drive, volts, equipment, history, other, past);
    }

    /** Every field that work can change, and the year it was built, as a record writes them: {@code front-brake.type} is {@code disc}. */
    public Map<String, String> fields() {
        return DescriptionField.of(this);
    }

    /** What the law calls it. */
    public enum Kind { MOTORCYCLE, MOTORCYCLE_SIDECAR, MOPED, MOPED_3W }

    /** How the engine works. */
    public enum Cycle { TWO_STROKE, FOUR_STROKE, ELECTRIC }

    /** How an engine is oiled. */
    public enum Oiling { OIL_INJECTION, PREMIX, WET_SUMP, DRY_SUMP, TOTAL_LOSS, NONE }

    /** How the spark is made. */
    public enum Ignition { POINTS, MAGNETO, ELECTRONIC, NONE }

    /** How heat is carried off. */
    public enum Cooling { AIR, LIQUID }

    /** @param displacement swept volume of all cylinders, in any unit of volume; zero for an electric machine */
    public record Engine(Cycle cycle, Quantity displacement, int cylinders, Oiling oiling, Ignition ignition, Cooling cooling) { }

    /** Kind of friction brake. */
    public enum BrakeType { DISC, DRUM, NONE }

    /** How the control reaches the brake. */
    public enum WorkedBy { HYDRAULIC, CABLE, ROD, NONE }

    /** How friction material is held. */
    public enum Lining { BONDED, RIVETED, SINTERED, NONE }

    /** @param discs number of discs, 0 to 2 (0 for a drum or none) */
    public record Brake(BrakeType type, WorkedBy workedBy, int discs, Lining lining, boolean stopLampSwitch) { }

    /** What a rim is made of. */
    public enum Rim { STEEL, ALLOY }

    /** @param tube whether the tyre runs with an inner tube */
    public record Wheel(Rim rim, boolean spoked, boolean tube) { }

    /** Final drive. */
    public enum Drive { CHAIN, BELT, SHAFT, NONE }

    /** How the engine is started. */
    public enum Starter { KICK, ELECTRIC, BOTH, NONE }

    /** What shuts the fuel off. */
    public enum FuelTap { MANUAL, VACUUM, NONE }

    /** How the lever reaches the clutch. */
    public enum Clutch { CABLE, HYDRAULIC, NONE }

    /** What the front wheel is sprung by. */
    public enum FrontSpringing {
        TELESCOPIC_FORK, GIRDER, @Since(2) LEADING_LINK, @Since(2) TRAILING_LINK, @Since(2) LEAF_SPRING, RIGID;

        /** Whether the wheel moves on links or arms with pivots and a spring of their own, instead of in sliding legs. */
        public boolean hasLinks() {
            return this == GIRDER || this == LEADING_LINK || this == TRAILING_LINK || this == LEAF_SPRING;
        }
    }

    /** What the rear wheel is sprung by. */
    public enum RearSpringing {
        TWIN_DAMPERS, SINGLE_DAMPER, PLUNGER, @Since(2) LEAF_SPRING, @Since(2) SPRUNG_HUB, RIGID;

        /** Whether the wheel is held by a fork that turns on a pivot. */
        public boolean hasPivot() {
            return this == TWIN_DAMPERS || this == SINGLE_DAMPER || this == LEAF_SPRING;
        }
    }

    /**
     * What it carries.
     *
     * @param carburettors 0 to 4; 0 when electric or injected
     * @param lamps whether it has lamps at all
     * @param mirrors 0 to 2
     * @param stands 0 to 2
     */
    public record Equipment(Starter starter, int carburettors, FuelTap fuelTap, Clutch clutch, FrontSpringing frontSpringing,
                            RearSpringing rearSpringing, boolean lamps, boolean indicators, boolean horn, int mirrors,
                            int stands, boolean speedometer) { }

    /** Whether its past work is known; unknown of a machine bought in without papers about it. */
    public enum History { KNOWN, UNKNOWN }

    /** What a battery is: with acid to top up, closed for good (gel, fleece), or of lithium cells. */
    public enum Battery {
        WET, SEALED, LITHIUM, NONE, UNKNOWN;

        /** As a record writes it. */
        public String word() {
            return Reading.spelled(this);
        }
    }

    /** A part that most machines do not have, with checks of its own. */
    public enum Part {
        PARKING_BRAKE, TWIN_LEADING_SHOES, DECOMPRESSOR, ADVANCE_LEVER, HAND_OILER, REVERSE_GEAR, GENERATOR_BELT, FUEL_PUMP, ACETYLENE_LAMPS;

        /** As a record writes it. */
        public String word() {
            return Reading.spelled(this);
        }
    }

    /**
     * What a record of the first form does not say.
     *
     * @param generator whether the engine charges the battery
     * @param laidUp since when it stood when it came in, or null when that is not written
     * @param parts the parts of which it is written whether the machine has them
     */
    public record Further(Battery battery, boolean generator, LaidUp laidUp, Map<Part, Boolean> parts) {
        public static final Further NOT_WRITTEN = new Further(Battery.UNKNOWN, true, null);

        /** No further part is written. */
        public Further(Battery battery, boolean generator, LaidUp laidUp) {
            this(battery, generator, laidUp, Map.of());
        }
    }

    /** Whether it has a part. Where that is not written, a three-wheeled moped has a parking brake, and an engine without a carburettor a fuel pump. */
    public boolean has(Part part) {
        return further.parts().getOrDefault(part, part == Part.PARKING_BRAKE && kind == Kind.MOPED_3W
                || part == Part.FUEL_PUMP && equipment.carburettors() == 0 && engine.cycle() != Cycle.ELECTRIC);
    }

    /** Every part that it has. */
    public Set<Part> parts() {
        return Arrays.stream(Part.values()).filter(this::has).collect(Collectors.toCollection(() -> EnumSet.noneOf(Part.class)));
    }

    /**
     * How long a machine stood unused when it came in.
     *
     * @param known false when nobody knows
     * @param since the earliest day it can have been, or null when it was in use, or nobody knows
     */
    public record LaidUp(boolean known, LocalDate since) { }

    /** All brakes, with the end of the machine they stop. */
    public List<End> ends() {
        return List.of(new End("front", frontBrake, frontWheel), new End("rear", rearBrake, rearWheel));
    }

    /** One end of the machine. */
    public record End(String name, Brake brake, Wheel wheel) { }
}
