package chock.bench;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Random;

/** A demo machine, put together otherwise: the same number gives the same machine. */
final class MixedMachine {
    private final Random random;
    private final ObjectNode machine;

    private MixedMachine(int number, ObjectNode machine) {
        this.random = new Random(18_000L + number);
        this.machine = machine;
    }

    /** @param demo the block {@code machine} of a demo record, which stays as it is */
    static ObjectNode of(int number, ObjectNode demo) {
        MixedMachine mixed = new MixedMachine(number, demo.deepCopy());
        // The first of each demo is as it was written.
        if (number >= 3) {
            mixed.change(number);
        }
        return mixed.machine.put("frame-number", "F" + (20_000 + number));
    }

    private void change(int number) {
        if (number % 4 > 0) {
            machine.remove("as-built");
        }
        if (number % 29 == 7) {
            electric();
        } else if (random.nextInt(3) > 0) {
            engine();
        }
        if (random.nextInt(3) > 0) {
            brake("front", number % 19 == 9);
        }
        if (random.nextInt(3) > 0) {
            brake("rear", false);
        }
        equipment();
        machine.put("kind", one("motorcycle", "motorcycle", "motorcycle", "moped", "motorcycle-sidecar", "moped-3w"));
        machine.put("drive", one("chain", "chain", "belt", "shaft"));
        machine.put("history", one("known", "known", "unknown"));
        machine.put("seats", 1 + random.nextInt(2));
        for (String end : List.of("front-wheel", "rear-wheel")) {
            boolean spoked = random.nextInt(3) > 0;
            machine.putObject(end).put("rim", one("steel", "alloy")).put("spoked", spoked ? "yes" : "no")
                    .put("tube", spoked ? "yes" : one("yes", "no"));
        }
        boolean braked = !machine.get("front-brake").get("type").asText().equals("none");
        machine.put("linked-brakes", braked ? one("no", "no", "no", "yes") : "no");
        int built = 1920 + random.nextInt(75);
        machine.put("built", built).put("first-registered",
                built + "-0" + (1 + random.nextInt(9)) + "-1" + random.nextInt(9));
    }

    private void electric() {
        machine.putObject("engine").put("cycle", "electric").put("displacement", "0 cc").put("cylinders", 0)
                .put("oiling", "none").put("ignition", "none").put("cooling", "air");
        ((ObjectNode) machine.get("equipment")).put("starter", "none").put("carburettors", 0).put("fuel-tap", "none");
        machine.put("volts", 12);
    }

    private void engine() {
        boolean two = random.nextBoolean();
        int cylinders = 1 + random.nextInt(4);
        machine.putObject("engine").put("cycle", two ? "two-stroke" : "four-stroke")
                .put("displacement", 124 * cylinders + " cc").put("cylinders", cylinders)
                .put("oiling", two ? one("oil-injection", "premix") : one("wet-sump", "dry-sump", "total-loss"))
                        .put("ignition", one("points", "magneto", "electronic")).put("cooling", one("air", "liquid"));
        int volts = random.nextInt(3) * 6;
        machine.put("volts", volts);
        ((ObjectNode) machine.get("equipment")).put("starter", volts == 0 ? "kick" : one("kick", "electric", "both"))
                .put("carburettors", 1 + random.nextInt(Math.min(4, 2 * cylinders)))
                .put("fuel-tap", one("manual", "vacuum", "none"));
    }

    private void brake(String end, boolean none) {
        boolean disc = random.nextBoolean();
        ObjectNode brake = machine.putObject(end + "-brake");
        if (none) {
            brake.put("type", "none").put("worked-by", "none").put("discs", 0).put("lining", "none")
                    .put("stop-lamp-switch", "no");
        } else {
            brake.put("type", disc ? "disc" : "drum").put("worked-by", disc
                    ? one("hydraulic", "hydraulic", "cable") : one("cable", "rod", "hydraulic"))
                    .put("discs", disc ? 1 + random.nextInt(2) : 0)
                    .put("lining", one("bonded", "riveted", "sintered")).put("stop-lamp-switch", one("yes", "no"));
        }
    }

    private void equipment() {
        boolean lamps = random.nextInt(5) > 0;
        ((ObjectNode) machine.get("equipment")).put("clutch", one("cable", "hydraulic"))
                .put("front-springing", one("telescopic-fork", "telescopic-fork", "girder", "rigid"))
                .put("rear-springing", one("twin-dampers", "single-damper", "plunger", "rigid"))
                        .put("lamps", lamps ? "yes" : "no").put("indicators", lamps ? one("yes", "no") : "no")
                .put("mirrors", random.nextInt(3)).put("stands", random.nextInt(3));
    }

    private String one(String... choices) {
        return choices[random.nextInt(choices.length)];
    }
}
