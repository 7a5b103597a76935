package chock.useful;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the sentence behind {@code applies} on a card means for a description, as a reader of the catalogue understands it. */
final class Asked {
    private static final Map<String, Condition> SENTENCES = new HashMap<>();

    /** Whether a machine is one of those at this end (null where the sentence is about the whole machine), with these gates sought. */
    private interface Condition {
        boolean holds(ModelSheet sheet, String end, Intent intent);
    }

    /** The gates a record seeks. */
    record Intent(List<String> gates) {
        boolean seeks(String... any) {
            return Arrays.stream(any).anyMatch(gates::contains);
        }
    }

    private Asked() { }

    static boolean of(String sentence, ModelSheet sheet, String end, Intent intent) {
        Condition condition = SENTENCES.get(sentence);
        if (condition == null) {
            throw new IllegalStateException("a card is asked of \"" + sentence + "\"; write in Asked what that means for a description");
        }
        return condition.holds(sheet, end, intent);
    }

    private static void say(String sentence, Condition condition) {
        if (SENTENCES.put(sentence, condition) != null) {
            throw new IllegalStateException("twice: " + sentence);
        }
    }

    private static void burning(String... sentences) {
        for (String sentence : sentences) {
            say(sentence, (s, e, i) -> s.combustion());
        }
    }

    private static boolean brake(ModelSheet s, String end, String... types) {
        return !s.is(end + "-brake.type", "none") && (types.length == 0 || s.is(end + "-brake.type", types));
    }

    private static boolean workedBy(ModelSheet s, String end, String... words) {
        return brake(s, end) && s.is(end + "-brake.worked-by", words);
    }

    private static boolean twoBrakes(ModelSheet s) {
        return s.braked().size() == 2 && !s.territory().startsWith("US");
    }

    /** Great Britain spares slow machines, and of those before April 1984 the small ones too; no machine of a sheet stands on a limit. */
    private static boolean speedometer(ModelSheet s) {
        boolean small = s.combustion() && Integer.parseInt(s.text("engine.displacement").replace(" cc", "")) <= 100;
        boolean slow = Integer.parseInt(s.text("top-speed").replace(" km/h", "")) <= 40;
        return s.territory().equals("DE") || s.territory().equals("GB") && !slow && since(s, small ? "1984-04-01" : "1937-10-01", null, null);
    }

    /** The law of the place asks it of machines first registered since. */
    private static boolean since(ModelSheet s, String gb, String de, String va) {
        String day = switch (s.territory()) {
            case "GB" -> gb;
            case "DE" -> de;
            default -> va;
        };
        return day != null && !s.registered().isBefore(LocalDate.parse(day));
    }

    static {
        say("every machine", (s, e, i) -> true);
        say("the frame and the engine of every machine", (s, e, i) -> true);
        say("both ends of every machine; where there is no mudguard, write none-fitted", (s, e, i) -> true);
        say("every machine; where there is none, write none-fitted", (s, e, i) -> true);
        say("every brake, every wheel, the steering, the front fork and the throttle", (s, e, i) -> true);
        burning("every engine that burns fuel", "every machine with a petrol engine", "every machine with a combustion engine", "every cylinder");
        say("every electric machine", (s, e, i) -> !s.combustion());

        // Brakes
        say("every pad of a disc brake", (s, e, i) -> brake(s, e, "disc"));
        say("every caliper of a disc brake", (s, e, i) -> brake(s, e, "disc"));
        say("every brake disc", (s, e, i) -> brake(s, e, "disc"));
        say("every drum brake", (s, e, i) -> brake(s, e, "drum"));
        // Every machine of a sheet has its figures stamped on, and hoses of rubber.
        burning("every machine with a petrol engine, unless its petrol runs through metal pipe alone");
        say("every machine whose petrol runs through metal pipe alone, where somebody has seen that", (s, e, i) -> false);
        say("every brake disc, unless it carries no legible figure", (s, e, i) -> brake(s, e, "disc"));
        say("every drum brake, unless its drum carries no legible figure", (s, e, i) -> brake(s, e, "drum"));
        say("every brake disc that was looked over for its maker's figure and carries none", (s, e, i) -> false);
        say("every brake drum that was looked over for its maker's figure and carries none", (s, e, i) -> false);
        say("every brake disc without a figure, on it or in its maker's book", (s, e, i) -> false);
        say("every brake drum without a figure, on it or in its maker's book", (s, e, i) -> false);
        say("every brake", (s, e, i) -> brake(s, e));
        say("every drum brake worked by cable or rod", (s, e, i) -> brake(s, e, "drum") && workedBy(s, e, "cable", "rod"));
        say("every brake worked by cable or rod", (s, e, i) -> workedBy(s, e, "cable", "rod"));
        say("every brake worked by fluid", (s, e, i) -> workedBy(s, e, "hydraulic"));
        say("every brake worked by cable", (s, e, i) -> workedBy(s, e, "cable"));
        say("every brake worked by rod", (s, e, i) -> workedBy(s, e, "rod"));
        say("a machine with linked brakes", (s, e, i) -> s.yes("linked-brakes"));
        say("a machine with a brake at each end, outside the United States", (s, e, i) -> twoBrakes(s));
        say("a machine with a brake at each end, outside the United States; in GB from 1927", (s, e, i) -> twoBrakes(s) && since(s, "1927-01-01", "1885-01-01", null));
        say("a machine with one brake, outside the United States", (s, e, i) -> s.braked().size() == 1 && brake(s, e) && !s.territory().startsWith("US"));
        say("a machine to be ridden in the United States", (s, e, i) -> s.territory().startsWith("US"));
        say("every brake control with a stop lamp switch", (s, e, i) -> brake(s, e) && s.yes(e + "-brake.stop-lamp-switch"));
        say("a machine with a stop lamp switch, or of an age and kind that must have one", (s, e, i) -> s.switches() > 0);

        // Controls
        say("every machine with a clutch worked by cable", (s, e, i) -> s.is("equipment.clutch", "cable"));
        say("every machine with a clutch worked by fluid", (s, e, i) -> s.is("equipment.clutch", "hydraulic"));
        say("every machine with a clutch lever", (s, e, i) -> !s.is("equipment.clutch", "none"));
        say("every machine with a clutch", (s, e, i) -> !s.is("equipment.clutch", "none"));
        say("every machine with a kick-starter", (s, e, i) -> s.is("equipment.starter", "kick", "both"));
        say("every machine with an electric starter", (s, e, i) -> s.is("equipment.starter", "electric", "both"));
        say("every machine with a seat for a passenger", (s, e, i) -> s.number("seats") > 1);
        say("every machine that carries a mirror, or must by the law of the place", (s, e, i) -> s.number("equipment.mirrors") > 0);

        say("every machine that must carry a speedometer by the law of the place", (s, e, i) -> speedometer(s));
        say("every machine whose record says how it was built", (s, e, i) -> true);
        burning("every engine that burns fuel, if the record says how the machine was built");
        say("every machine whose record says how it was built, unless it has no lamps and may be ridden so by day", (s, e, i) ->
                s.yes("equipment.lamps") || !s.territory().equals("GB"));

        // Electrics
        say("every machine with a battery", (s, e, i) -> s.battery());
        say("every machine with a battery that its engine charges", (s, e, i) -> s.battery() && s.yes("generator"));
        say("every sealed or lithium battery that the engine charges", (s, e, i) -> s.is("battery", "sealed", "lithium") && s.yes("generator"));
        say("every machine with a battery and an electric starter", (s, e, i) -> s.battery() && s.is("equipment.starter", "electric", "both"));
        say("every machine of an age that must have a headlamp, unless it is ridden without lamps by day", (s, e, i) -> s.yes("equipment.lamps") && since(s, "1931-01-01", "1885-01-01", "1885-01-01"));
        say("a machine without lamps, where the law lets it be ridden by day", (s, e, i) -> !s.yes("equipment.lamps") && s.territory().equals("GB"));
        say("every machine with lamps", (s, e, i) -> s.yes("equipment.lamps"));
        say("every motorcycle and outfit with lamps of an age that must have direction indicators", (s, e, i) ->
                s.is("kind", "motorcycle", "motorcycle-sidecar") && s.yes("equipment.indicators") && since(s, "1986-08-01", "1962-01-01", "1973-01-01"));
        say("both sides of every machine with direction indicators", (s, e, i) -> s.yes("equipment.indicators"));
        say("every machine with direction indicators", (s, e, i) -> s.yes("equipment.indicators"));
        say("every cylinder of an engine with an ignition", (s, e, i) -> s.combustion());
        say("every cylinder of an engine with a coil of its own outside the magneto", (s, e, i) -> s.is("engine.ignition", "points", "electronic"));

        // Engine, oil and fuel
        say("every cylinder of an engine with two or more", (s, e, i) -> s.number("engine.cylinders") > 1);
        say("every cylinder of which a leak-down was ever written down", (s, e, i) -> false);
        say("an engine whose head or top end was worked on, or whose history is unknown", (s, e, i) -> s.combustion() && s.is("history", "unknown"));
        say("every cylinder of a four-stroke", (s, e, i) -> s.is("engine.cycle", "four-stroke"));
        say("every four-stroke", (s, e, i) -> s.is("engine.cycle", "four-stroke"));
        say("every cylinder of a two-stroke whose crankcase or seals were worked on, whose history is unknown, or that was laid up for a long time", (s, e, i) -> s.is("engine.cycle", "two-stroke") && s.is("history", "unknown"));
        say("every engine with contact points or a magneto", (s, e, i) -> s.is("engine.ignition", "points", "magneto"));
        say("every engine with electronic ignition", (s, e, i) -> s.is("engine.ignition", "electronic"));
        say("every engine with two or more carburettors", (s, e, i) -> s.number("equipment.carburettors") > 1);
        say("every four-stroke with two or more carburettors", (s, e, i) -> s.is("engine.cycle", "four-stroke") && s.number("equipment.carburettors") > 1);
        say("every machine with a fuel tap", (s, e, i) -> !s.is("equipment.fuel-tap", "none"));
        say("every machine with a carburettor", (s, e, i) -> s.number("equipment.carburettors") > 0);
        say("every two-stroke with an oil pump", (s, e, i) -> s.is("engine.oiling", "oil-injection"));
        // A pump seen to deliver, at the road test or at hand-over, needs no oil in the petrol.
        say("every two-stroke with an oil pump that was not seen to deliver since the oil side was last opened", (s, e, i) ->
                s.is("engine.oiling", "oil-injection") && !i.seeks("road-test", "hand-over"));
        say("every two-stroke oiled by its petrol", (s, e, i) -> s.is("engine.oiling", "premix"));
        say("every engine whose gearbox has oil of its own", (s, e, i) -> s.combustion() && !s.is("engine.oiling", "wet-sump"));
        say("every wet-sump four-stroke, if the record says how the machine was built", (s, e, i) -> s.is("engine.oiling", "wet-sump"));
        say("every four-stroke with a dry sump or total loss, and one whose gearbox has oil of its own, if the record says how the machine was built", (s, e, i) -> s.is("engine.oiling", "dry-sump", "total-loss"));
        say("every outfit, if the record says how the machine was built", (s, e, i) -> s.is("kind", "motorcycle-sidecar"));
        say("every brake whose fluid was ever tested", (s, e, i) -> false);
        say("every four-stroke whose pump sends oil round, wet or dry sump", (s, e, i) -> s.is("engine.oiling", "wet-sump", "dry-sump"));
        say("every engine oiled by total loss", (s, e, i) -> s.is("engine.oiling", "total-loss"));

        say("every liquid-cooled engine, if the record says how the machine was built", (s, e, i) -> s.combustion() && s.is("engine.cooling", "liquid"));
        say("every machine with an engine and no clutch lever, if the record says how it was built", (s, e, i) -> s.combustion() && s.is("equipment.clutch", "none"));
        say("the third wheel of an outfit or three-wheeled moped, if the record says how the machine was built", (s, e, i) -> s.thirdWheel());
        say("every outfit with lamps, if the record says how it was built", (s, e, i) -> s.is("kind", "motorcycle-sidecar") && s.yes("equipment.lamps"));
        // None of these machines stood.
        say("every machine laid up for a long time", (s, e, i) -> false);
        say("every engine that burns fuel, if it was laid up for longer than petrol keeps", (s, e, i) -> false);
        say("every four-stroke laid up for a long time", (s, e, i) -> false);
        say("every liquid-cooled engine laid up for a long time", (s, e, i) -> false);
        say("every machine with one or two rear dampers, laid up for a long time", (s, e, i) -> false);
        say("every petrol engine, if it was laid up for longer than petrol keeps", (s, e, i) -> false);
        say("every wheel of a machine laid up for a long time", (s, e, i) -> false);

        // Chassis and drive
        say("every machine with a telescopic fork", (s, e, i) -> s.is("equipment.front-springing", "telescopic-fork"));
        say("every leg of a telescopic fork", (s, e, i) -> s.is("equipment.front-springing", "telescopic-fork"));
        say("every girder fork, and every fork with leading links, trailing links or a leaf spring", (s, e, i) -> s.is("equipment.front-springing", "girder", "leading-link", "trailing-link", "leaf-spring"));
        // No machine of a sheet has a further part.
        say("every machine with a parking brake, and every three-wheeled moped whose description does not say that it has none", (s, e, i) -> s.is("kind", "moped-3w"));
        say("every front drum with two leading shoes", (s, e, i) -> false);
        say("every engine with a decompressor", (s, e, i) -> false);
        say("every machine whose ignition is advanced by hand", (s, e, i) -> false);
        say("every engine with a hand oiler", (s, e, i) -> false);
        say("every machine with a reverse gear", (s, e, i) -> false);
        say("every machine whose generator is driven by a belt", (s, e, i) -> false);
        say("every machine with acetylene lamps", (s, e, i) -> false);
        say("every machine with a fuel pump, and every engine that burns fuel without a carburettor, if the record says how the machine was built", (s, e, i) -> s.combustion() && s.number("equipment.carburettors") == 0);
        say("every machine with a leaf spring behind", (s, e, i) -> s.is("equipment.rear-springing", "leaf-spring"));
        say("every machine with a sprung hub", (s, e, i) -> s.is("equipment.rear-springing", "sprung-hub"));
        say("every machine with a sprung front wheel", (s, e, i) -> !s.is("equipment.front-springing", "rigid"));
        say("every machine with a swing arm", (s, e, i) -> s.is("equipment.rear-springing", "twin-dampers", "single-damper", "leaf-spring"));
        say("every machine with one or two rear dampers", (s, e, i) -> s.is("equipment.rear-springing", "twin-dampers", "single-damper"));
        say("every machine with plunger springing", (s, e, i) -> s.is("equipment.rear-springing", "plunger"));
        say("every machine with a sprung rear wheel", (s, e, i) -> !s.is("equipment.rear-springing", "rigid"));
        say("every outfit", (s, e, i) -> s.is("kind", "motorcycle-sidecar"));
        say("every machine with a stand", (s, e, i) -> s.number("equipment.stands") > 0);
        say("every machine driven by chain", (s, e, i) -> s.is("drive", "chain"));
        say("every machine driven by chain; write riveted or endless where there is no clip", (s, e, i) -> s.is("drive", "chain"));
        say("every machine driven by belt", (s, e, i) -> s.is("drive", "belt"));
        say("every machine driven by shaft", (s, e, i) -> s.is("drive", "shaft"));
        say("every machine driven by chain or belt", (s, e, i) -> s.is("drive", "chain", "belt"));
        say("every sprocket of a chain and every pulley of a belt", (s, e, i) -> s.is("drive", "chain", "belt"));
        say("every machine with a final drive; where there is none, write none-fitted", (s, e, i) -> !s.is("drive", "none"));

        // Wheels and tyres. The tyres of these machines are young.
        say("every tyre", (s, e, i) -> true);
        say("every wheel", (s, e, i) -> true);
        say("every rim", (s, e, i) -> true);
        say("the pair of tyres of a machine", (s, e, i) -> true);
        say("every tyre that is not proven young enough to pass on its date", (s, e, i) -> false);
        say("every tyre with a tube", (s, e, i) -> s.yes(e + "-wheel.tube"));
        say("every spoked wheel", (s, e, i) -> s.yes(e + "-wheel.spoked"));
        say("every spoked wheel with a tube", (s, e, i) -> s.yes(e + "-wheel.spoked") && s.yes(e + "-wheel.tube"));
        say("the third wheel of an outfit or a three-wheeled moped", (s, e, i) -> s.thirdWheel());

        // Running under a roof: these shops lead the exhaust outdoors by a hose, and have measured no run.
        say("every run whose exhaust is led outdoors by a hose", (s, e, i) -> s.combustion());
        say("every run that was measured and not put right by work since", (s, e, i) -> false);
        say("every room into which a fan brings fresh air", (s, e, i) -> false);
        say("every room whose mixing factor was measured", (s, e, i) -> false);
        say("every run whose exhaust goes into the room", (s, e, i) -> false);
        say("every engine whose exhaust was measured", (s, e, i) -> false);
        say("every run without a proven hose to the open", (s, e, i) -> false);
    }
}
