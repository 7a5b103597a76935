package chock.useful;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;

/** Fifty descriptions of machines as they come into such a shop, each drawn by its number: the same number, the same machine. */
final class ModelSheets {
    static final int COUNT = 50;
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Which kind of machine comes at which place of ten, so that every kind comes several times. */
    private static final List<Era> ERAS = List.of(Era.TWO_STROKE, Era.FOUR_STROKE, Era.MODERN, Era.VETERAN, Era.POST_WAR, Era.TWO_STROKE, Era.MOPED, Era.FOUR_STROKE, Era.OUTFIT, Era.MODERN);

    private enum Era { VETERAN, POST_WAR, TWO_STROKE, FOUR_STROKE, MODERN, MOPED, OUTFIT, THREE_WHEELER, ELECTRIC, ONE_BRAKE }

    private final Random random;
    private final int number;
    private final ObjectNode machine = JSON.createObjectNode();
    private final ObjectNode engine = JSON.createObjectNode();
    private final ObjectNode equipment = JSON.createObjectNode();
    private String territory = "GB";

    private ModelSheets(int number) {
        this.number = number;
        this.random = new Random(15_000L + number);
    }

    /** The two-stroke single of 1972 for which the entries are counted. */
    static ModelSheet singleOf1972() {
        ModelSheets s = new ModelSheets(100);
        s.head(1972, "motorcycle", 120, 2);
        s.engine("two-stroke", 246, 1, "oil-injection", "points", "air");
        s.brake("front", "disc", "hydraulic", 1, "bonded", true);
        s.brake("rear", "drum", "rod", 0, "bonded", true);
        s.wheels("steel", true, true);
        s.rest("chain", 6, "kick", 1, "manual", "cable", "telescopic-fork", "twin-dampers", true, false, 1, 2);
        return s.sheet(false);
    }

    /** @param number 0 to 49 */
    static ModelSheet of(int number) {
        ModelSheets s = new ModelSheets(number);
        Era era = switch (number) {
            case 16 -> Era.THREE_WHEELER;
            case 26 -> Era.ELECTRIC;
            case 33 -> Era.ONE_BRAKE;
            default -> ERAS.get(number % ERAS.size());
        };
        s.territory = number % 7 == 3 ? "DE" : number % 7 == 5 ? "US-VA" : "GB";
        switch (era) {
            case VETERAN -> s.veteran();
            case POST_WAR -> s.postWar("motorcycle");
            case OUTFIT -> s.postWar("motorcycle-sidecar");
            case TWO_STROKE -> s.twoStroke();
            case FOUR_STROKE -> s.fourStroke();
            case MODERN -> s.modern();
            case MOPED -> s.moped("moped");
            case THREE_WHEELER -> s.moped("moped-3w");
            case ELECTRIC -> s.electric();
            case ONE_BRAKE -> s.oneBrake();
        }
        return s.sheet(number % 6 == 1);
    }

    private void veteran() {
        int built = between(1919, 1930);
        territory = "GB";
        head(built, "motorcycle", 80, 1);
        engine("four-stroke", between(24, 59) * 10, one(1, 1, 2), "total-loss", "magneto", "air");
        brake("front", "drum", "cable", 0, "riveted", false);
        brake("rear", "drum", one("rod", "cable"), 0, "riveted", false);
        wheels("steel", true, true);
        boolean lamps = random.nextBoolean();
        rest("chain", 0, "kick", 1, "manual", "cable", "girder", "rigid", lamps, false, 0, 1);
    }

    /** Built with a brake at the rear wheel alone, as the law of its day let it be. */
    private void oneBrake() {
        veteran();
        head(1922, "motorcycle", 65, 1);
        brake("front", "none", "none", 0, "none", false);
    }

    private void postWar(String kind) {
        int built = between(1946, 1959);
        head(built, kind, between(9, 14) * 10, 2);
        boolean two = territory.equals("GB") && random.nextInt(3) == 0;
        if (two) {
            engine("two-stroke", 197, 1, "premix", "points", "air");
        } else {
            engine("four-stroke", one(348, 497, 499, 646), one(1, 1, 2), one("dry-sump", "wet-sump"), "magneto", "air");
        }
        brake("front", "drum", "cable", 0, one("riveted", "bonded"), false);
        brake("rear", "drum", one("rod", "cable"), 0, one("riveted", "bonded"), true);
        wheels("steel", true, true);
        rest(one("chain", "chain", "shaft"), 6, "kick", 1, "manual", "cable", one("telescopic-fork", "girder"), one("plunger", "rigid", "twin-dampers"), true, false, 1, 1);
    }

    private void twoStroke() {
        head(between(1963, 1978), "motorcycle", between(10, 15) * 10, 2);
        int cylinders = one(1, 2, 3);
        engine("two-stroke", 123 * cylinders, cylinders, one("oil-injection", "premix"), one("points", "electronic"), one("air", "air", "liquid"));
        if (random.nextBoolean()) {
            brake("front", "disc", "hydraulic", 1, "bonded", true);
        } else {
            brake("front", "drum", "cable", 0, "bonded", true);
        }
        brake("rear", "drum", "rod", 0, "bonded", true);
        wheels("steel", true, true);
        rest("chain", one(6, 12), "kick", cylinders, one("manual", "vacuum"), "cable", "telescopic-fork", "twin-dampers", true, indicated(), 2, 2);
    }

    private void fourStroke() {
        head(between(1966, 1980), "motorcycle", between(12, 19) * 10, 2);
        int cylinders = one(1, 2, 4);
        engine("four-stroke", 124 * cylinders + 100, cylinders, one("wet-sump", "dry-sump"), "points", "air");
        if (random.nextBoolean()) {
            brake("front", "disc", "hydraulic", one(1, 2), "bonded", true);
        } else {
            brake("front", "drum", "cable", 0, "bonded", true);
        }
        brake("rear", "drum", one("rod", "cable"), 0, "bonded", true);
        wheels(one("steel", "alloy"), true, true);
        rest(one("chain", "chain", "shaft"), 12, one("kick", "both"), cylinders, "manual", "cable", "telescopic-fork", "twin-dampers", true, indicated(), 2, 2);
    }

    private void modern() {
        head(between(1984, 2001), "motorcycle", between(15, 24) * 10, 2);
        int cylinders = one(1, 2, 4, 6);
        engine("four-stroke", 170 * cylinders + 80, cylinders, one("wet-sump", "wet-sump", "dry-sump"), "electronic", one("air", "liquid"));
        brake("front", "disc", "hydraulic", 2, one("bonded", "sintered"), true);
        brake("rear", "disc", "hydraulic", 1, "bonded", true);
        if (random.nextInt(4) == 0) {
            machine.put("linked-brakes", "yes");
        }
        wheels("alloy", false, false);
        rest(one("chain", "belt", "shaft"), 12, "electric", Math.min(4, cylinders), one("manual", "vacuum"), one("cable", "hydraulic"), "telescopic-fork", one("twin-dampers", "single-damper"), true, true, 2, 2);
    }

    private void moped(String kind) {
        head(between(1968, 1985), kind, 45, 1);
        engine("two-stroke", 49, 1, one("premix", "oil-injection"), one("points", "electronic"), "air");
        brake("front", "drum", "cable", 0, "bonded", true);
        brake("rear", "drum", "cable", 0, "bonded", true);
        wheels("steel", true, true);
        rest("chain", 6, "kick", 1, "manual", "cable", "telescopic-fork", "twin-dampers", true, false, 1, 1);
    }

    private void electric() {
        head(1998, "moped", 45, 1);
        engine("electric", 0, 0, "none", "none", "air");
        brake("front", "disc", "hydraulic", 1, "bonded", true);
        brake("rear", "drum", "cable", 0, "bonded", true);
        wheels("alloy", false, false);
        rest("belt", 12, "none", 0, "none", "none", "telescopic-fork", "single-damper", true, true, 1, 1);
        territory = "GB";
    }

    private boolean indicated() {
        return !territory.equals("GB") || random.nextBoolean();
    }

    private void head(int built, String kind, int speed, int seats) {
        machine.put("marque", one("Tarnbeck", "Harrowgill", "Ostrel")).put("model", "Sheet " + number).put("frame-number", "F" + (20_000 + number)).put("engine-number", "E" + (30_000 + number))
                .put("kind", kind).put("built", built).put("first-registered", built + "-05-1" + number % 10).put("top-speed", speed + " km/h").put("seats", seats);
        machine.set("engine", engine);
        machine.put("linked-brakes", "no");
    }

    private void engine(String cycle, int displacement, int cylinders, String oiling, String ignition, String cooling) {
        engine.put("cycle", cycle).put("displacement", displacement + " cc").put("cylinders", cylinders).put("oiling", oiling).put("ignition", ignition).put("cooling", cooling);
    }

    private void brake(String end, String type, String workedBy, int discs, String lining, boolean lamp) {
        machine.putObject(end + "-brake").put("type", type).put("worked-by", workedBy).put("discs", discs).put("lining", lining).put("stop-lamp-switch", lamp ? "yes" : "no");
    }

    private void wheels(String rim, boolean spoked, boolean tube) {
        for (String end : List.of("front", "rear")) {
            machine.putObject(end + "-wheel").put("rim", rim).put("spoked", spoked ? "yes" : "no").put("tube", tube ? "yes" : "no");
        }
    }

    private void rest(String drive, int volts, String starter, int carburettors, String tap, String clutch, String front, String rear, boolean lamps, boolean indicators, int mirrors, int stands) {
        machine.put("drive", drive).put("volts", volts).put("battery", volts > 0 ? "wet" : "none").put("generator", "yes");
        equipment.put("starter", starter).put("carburettors", carburettors).put("fuel-tap", tap).put("clutch", clutch).put("front-springing", front).put("rear-springing", rear)
                .put("lamps", lamps ? "yes" : "no").put("indicators", indicators ? "yes" : "no").put("horn", "yes").put("mirrors", mirrors).put("stands", stands).put("speedometer", "yes");
        machine.set("equipment", equipment);
    }

    private ModelSheet sheet(boolean unknown) {
        machine.put("history", unknown ? "unknown" : "known");
        String zone = switch (territory) {
            case "DE" -> "Europe/Berlin";
            case "US-VA" -> "America/New_York";
            default -> "Europe/London";
        };
        return new ModelSheet(machine, territory, zone);
    }

    private int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    @SafeVarargs
    private <T> T one(T... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
