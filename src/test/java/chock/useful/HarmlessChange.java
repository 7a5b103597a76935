package chock.useful;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Gate;
import chock.useful.HonestHistory.Item;
import chock.useful.HonestRecord.Line;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/** What happens to an honest record every day and takes nothing from it. Each kind is tried once on every record. */
enum HarmlessChange {
    UNITS("an amount in another unit"),
    REORDERED("two independent looks the other way round"),
    FILE_ORDER("the lines of the file in another order"),
    EXTRA_LOOK("one more good look"),
    LUBRICATED("lubricated, and looked at where the part is guarded"),
    INFLATED("a tyre inflated and its pressure read"),
    TOPPED_UP("topped up and looked at"),
    BETTER_READING("a good reading, and then a better one"),
    PART_CHANGED("a part replaced, and the order of work carried out"),
    WITHDRAWN("a slip withdrawn within five minutes");

    /** To which unit a reading is turned. */
    private static final Map<Unit, Unit> OTHER = Map.ofEntries(Map.entry(Unit.MM, Unit.INCH), Map.entry(Unit.PSI, Unit.KPA), Map.entry(Unit.KPA, Unit.PSI), Map.entry(Unit.DEGREES_CELSIUS, Unit.DEGREES_FAHRENHEIT),
            Map.entry(Unit.KG, Unit.POUND), Map.entry(Unit.MPH, Unit.KMH), Map.entry(Unit.SECONDS, Unit.MINUTES), Map.entry(Unit.MINUTES, Unit.SECONDS), Map.entry(Unit.NEWTONS, Unit.KGF), Map.entry(Unit.LITRES, Unit.ML),
            Map.entry(Unit.KILOHMS, Unit.OHMS), Map.entry(Unit.M, Unit.FOOT));
    /** What is oiled or greased, and what is looked at afterwards where somebody else must look at the work. */
    private static final Map<String, String> OILED = oiled();
    /** What is brought to its level, and what the card wants to see afterwards. */
    private static final Map<String, List<String>> LEVELS = Map.of("oil/engine-oil", List.of("engine-oil-level", "engine-oil-look"), "oil/tank", List.of("injection-level"),
            "transmission/gearbox/oil", List.of("gearbox-oil-level", "gearbox-oil-look"), "front-brake/hydraulic/fluid", List.of("fluid-level", "grade-filled"));
    /** Parts that are changed for new in a quarter of an hour. */
    private static final List<String> PARTS = List.of("electrics/horn", "controls/mirrors", "controls/grips", "fuel/filter", "electrics/tail-lamp", "engine/intake/air-filter", "electrics/fuse", "fuel/cap", "electrics/flasher");

    private final String words;

    HarmlessChange(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    private static Map<String, String> oiled() {
        Map<String, String> oiled = new HashMap<>();
        for (String free : List.of("transmission/chain", "controls/clutch", "controls/levers", "controls/gear-lever", "controls/kick-starter", "frame/stands")) {
            oiled.put(free, null);
        }
        oiled.put("front-brake/cable", "cable-run");
        oiled.put("rear-brake/cable", "cable-run");
        oiled.put("front-brake/control", "pivot");
        oiled.put("rear-brake/control", "pivot");
        oiled.put("rear-brake/clevis", "split-pins");
        return oiled;
    }

    /** The record after it. */
    HonestRecord to(HonestRecord record, Random random) {
        return switch (this) {
            case UNITS -> oneLine(record, random, l -> l.is() != null && amount(l) != null && OTHER.containsKey(amount(l).value().unit()), HarmlessChange::inAnotherUnit);
            case REORDERED -> reordered(record, random);
            case FILE_ORDER -> {
                List<Line> lines = new ArrayList<>(record.lines());
                Collections.shuffle(lines, random);
                yield record.with(lines);
            }
            case EXTRA_LOOK -> later(record, List.of(one(looks(record), random)));
            case LUBRICATED -> lubricated(record, random);
            case INFLATED -> {
                String tyre = one(List.of("front-wheel/tyre", "rear-wheel/tyre"), random);
                yield later(record, List.of(work(tyre, "inflated"), look(record, tyre, "pressure")));
            }
            case TOPPED_UP -> toppedUp(record, random);
            case BETTER_READING -> later(record, List.of(better(one(record.lines().stream().filter(l -> l.verb().equals("measured") && !apart(record, l)).toList(), record, random))));
            case PART_CHANGED -> partChanged(record, random);
            case WITHDRAWN -> withdrawn(record, random);
        };
    }

    // Lines that come after all others, a minute apart, and the record judged when they are written.

    static HonestRecord later(HonestRecord record, List<Line> lines) {
        LocalDateTime time = record.asOf();
        List<Line> added = new ArrayList<>();
        for (Line line : lines) {
            time = time.plusMinutes(1 + watched(line));
            added.add(line.named("x" + (record.lines().size() + added.size() + 1)).at(time));
        }
        return record.and(added).judgedAt(time.plusMinutes(1));
    }

    /** What was watched for a time is written when that time is over. */
    private static long watched(Line line) {
        Measured amount = line.verb().equals("measured") ? amount(line) : null;
        boolean time = amount != null && (amount.value().unit() == Unit.MINUTES || amount.value().unit() == Unit.SECONDS);
        return time ? amount.value().to(Unit.MINUTES).value().setScale(0, RoundingMode.UP).longValue() : 0;
    }

    private static boolean alone(HonestRecord record) {
        return record.head().get("one-person").asText().equals("yes");
    }

    private static Line work(String place, String what) {
        return new Line("", null, "ida", place, "done", what, null, null, Map.of());
    }

    /** A fresh look at what the cards want there, by the person who did not do the work. */
    static Line look(HonestRecord record, String place, String aspect) {
        return Catalogued.line(record.sheet(), record.gates(), place, aspect).by(alone(record) ? "ida" : "tom");
    }

    private static <T> T one(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }

    private static Line one(List<Line> from, HonestRecord record, Random random) {
        return from.isEmpty() ? look(record, "front-wheel/tyre", "tread-depth") : from.get(random.nextInt(from.size()));
    }

    private static List<Line> looks(HonestRecord record) {
        return record.lines().stream().filter(l -> l.verb().equals("seen") || l.verb().equals("tried")).filter(l -> !apart(record, l)).toList();
    }

    /** Reading it once more takes the machine apart once more: no harmless change. */
    private static boolean apart(HonestRecord record, Line line) {
        return HonestHistory.wanted(record.sheet(), record.gates()).stream().anyMatch(i -> i.key().equals(line.key()) && CardCatalogue.SHIPPED.isReadApart(i.card(), i.want()));
    }

    static Measured amount(Line line) {
        try {
            return Measured.parse(line.is());
        } catch (RuntimeException notAnAmount) {
            return null;
        }
    }

    private interface Choice {
        boolean fits(Line line);
    }

    private interface Rewriting {
        Line of(Line line);
    }

    private static HonestRecord oneLine(HonestRecord record, Random random, Choice choice, Rewriting rewriting) {
        List<Line> fit = record.lines().stream().filter(choice::fits).toList();
        if (fit.isEmpty()) {
            Line reading = look(record, "front-wheel/tyre", "tread-depth");
            return later(record, List.of(rewriting.of(reading)));
        }
        Line chosen = one(fit, random);
        return record.with(record.lines().stream().map(l -> l == chosen ? rewriting.of(l) : l).toList());
    }

    private static Line inAnotherUnit(Line line) {
        Measured written = amount(line);
        Unit other = OTHER.get(written.value().unit());
        String value = words(written.value().to(other));
        return line.saying(written.uncertainty() == null ? value : value + " ± " + words(written.uncertainty().differenceTo(other)));
    }

    /** To five figures, as a converter on a bench shows it; an uncertainty is never rounded down. */
    private static String words(Quantity quantity) {
        BigDecimal five = quantity.value().round(new MathContext(5, RoundingMode.HALF_UP)).stripTrailingZeros();
        return (five.scale() < 0 ? five.setScale(0) : five).toPlainString() + " " + quantity.unit().symbol();
    }

    private static HonestRecord reordered(HonestRecord record, Random random) {
        List<Line> lines = new ArrayList<>(record.lines());
        List<Integer> pairs = new ArrayList<>();
        for (int i = 0; i + 1 < lines.size(); i++) {
            boolean looks = !lines.get(i).isWork() && !lines.get(i + 1).isWork();
            if (looks && !lines.get(i).place().split("/")[0].equals(lines.get(i + 1).place().split("/")[0])) {
                pairs.add(i);
            }
        }
        int at = one(pairs, random);
        Line first = lines.get(at);
        Line second = lines.get(at + 1);
        lines.set(at, second.at(first.at()));
        lines.set(at + 1, first.at(second.at()));
        return record.with(lines);
    }

    private static HonestRecord lubricated(HonestRecord record, Random random) {
        List<String> there = OILED.keySet().stream().sorted().filter(p -> record.lines().stream().anyMatch(l -> l.place().equals(p))).toList();
        String place = there.isEmpty() ? "controls/levers" : one(there, random);
        List<Line> lines = new ArrayList<>(List.of(work(place, "lubricated")));
        if (OILED.get(place) != null) {
            lines.add(look(record, place, OILED.get(place)));
        }
        return later(record, lines);
    }

    private static HonestRecord toppedUp(HonestRecord record, Random random) {
        List<String> there = LEVELS.keySet().stream().sorted().filter(p -> record.lines().stream().anyMatch(l -> l.place().equals(p))).toList();
        if (there.isEmpty()) {
            // A two-stroke on premix has no level but that of its petrol.
            return ordered(later(record, List.of(work("fuel/tank", "topped-up"))));
        }
        String place = one(there, random);
        List<Line> lines = new ArrayList<>(List.of(work(place, "topped-up")));
        LEVELS.get(place).forEach(aspect -> lines.add(look(record, place, aspect)));
        return later(record, lines);
    }

    /** A tenth of its uncertainty away, as another reading of the same thing with the same instrument may well be. */
    private static Line better(Line reading) {
        Measured written = amount(reading);
        BigDecimal value = written.value().value();
        BigDecimal away = written.uncertainty() == null ? value.movePointLeft(3) : written.uncertainty().value().movePointLeft(1);
        String uncertainty = written.uncertainty() == null ? "" : " ± " + written.uncertainty();
        return reading.saying(value.add(away).toPlainString() + " " + written.value().unit().symbol() + uncertainty);
    }

    private static HonestRecord partChanged(HonestRecord record, Random random) {
        List<Item> items = HonestHistory.wanted(record.sheet(), record.gates());
        List<String> there = PARTS.stream().filter(p -> items.stream().anyMatch(i -> i.place().equals(p))).toList();
        return ordered(later(record, List.of(work(there.isEmpty() ? "controls/grips" : one(there, random), "replaced"))));
    }

    /** What the program asks for afterwards, done: in turns, where the looks of the day are over before the work is. */
    private static HonestRecord ordered(HonestRecord record) {
        HonestRecord done = record;
        for (String gate : record.gates()) {
            for (int turn = 0; turn < 2 && !done.at(Gate.of(gate).orElseThrow()).released(); turn++) {
                done = Orders.after(done, Gate.of(gate).orElseThrow());
            }
        }
        return done;
    }

    /** The wrong answer, and five minutes later the right one: by the other person, or where one works alone by the same, both numbered by the program. */
    private static HonestRecord withdrawn(HonestRecord record, Random random) {
        Item slip = one(HonestHistory.wanted(record.sheet(), record.gates()).stream().filter(i -> !i.want().bad().isEmpty() && !i.want().verb().equals("told") && !CardCatalogue.SHIPPED.isReadApart(i.card(), i.want())).toList(), random);
        Line right = Catalogued.line(record.sheet(), record.gates(), slip.place(), slip.want().aspect());
        LocalDateTime at = record.asOf().plusMinutes(1);
        Line wrong = right.by("ida").named("x1").at(at).saying(one(slip.want().bad(), random)).and("seq", "1");
        Line put = right.by(alone(record) ? "ida" : "tom").named("x2").at(at.plusMinutes(5)).and("corrects", "x1").and("reason", "wrote the wrong word").and("seq", "2");
        return record.and(List.of(wrong, put)).judgedAt(at.plusMinutes(6));
    }
}
