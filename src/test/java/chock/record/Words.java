package chock.record;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.Unit.Dimension;
import chock.record.Vocabulary.Aspect;
import chock.record.Vocabulary.Form;
import chock.record.Vocabulary.InstrumentKind;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** A small rule book's words, the record written with them, and the moment at which it is read. */
final class Words {
    static final Path FOLDER = Path.of("src/test/resources/record");
    /** 12:00 in London, where the record is kept. */
    static final Instant AS_OF = Instant.parse("2026-11-25T12:00:00Z");

    static final Vocabulary VOCABULARY = new Vocabulary(
            new TreeSet<>(Set.of("machine", "machine/battery", "front-brake", "front-brake/caliper", "front-brake/caliper/inner-pad",
                    "front-brake/caliper/outer-pad", "front-brake/disc", "front-brake/control", "front-brake/hydraulic", "front-brake/hydraulic/hose",
                    "rear-brake", "rear-brake/shoes", "front-wheel", "front-wheel/tyre", "rear-wheel", "rear-wheel/tyre")),
            aspects(new Aspect("thickness", Form.AMOUNT, Dimension.LENGTH, Set.of()),
                    new Aspect("torque", Form.AMOUNT, Dimension.TORQUE, Set.of()),
                    new Aspect("rest-voltage", Form.AMOUNT, Dimension.VOLTAGE, Set.of()),
                    new Aspect("head-temperature", Form.AMOUNT, Dimension.TEMPERATURE, Set.of()),
                    new Aspect("minimum-mark", Form.AMOUNT, Dimension.LENGTH, Set.of()),
                    new Aspect("condition", Form.ANSWER, null, Set.of("sound", "cracked", "twisted")),
                    new Aspect("feel", Form.ANSWER, null, Set.of("firm", "spongy", "sinks")),
                    new Aspect("runs-true", Form.ANSWER, null, Set.of("yes", "no")),
                    new Aspect("date-mark", Form.DAYS, null, Set.of()),
                    new Aspect("date-code", Form.CODE, null, Set.of())),
            new TreeMap<>(Map.of("bled", "air driven out", "removed", "taken off", "torqued", "tightened to a figure", "refitted", "put back", "cleaned", "cleaned")),
            new TreeMap<>(Map.of(
                    "caliper", new InstrumentKind("caliper", Map.of(Dimension.LENGTH, Quantity.of("0.1", Unit.MM))),
                    "thermometer", new InstrumentKind("thermometer", Map.of(Dimension.TEMPERATURE, Quantity.of("2", Unit.DEGREES_CELSIUS))),
                    "torque-wrench", new InstrumentKind("torque-wrench", Map.of(Dimension.TORQUE, Quantity.of("4", Unit.PER_CENT))),
                    "multimeter", new InstrumentKind("multimeter", Map.of(Dimension.VOLTAGE, Quantity.of("0.1", Unit.VOLTS),
                            Dimension.RESISTANCE, Quantity.of("2", Unit.PER_CENT))))),
            new TreeMap<>(Map.of("brakes.disc-thickness", Dimension.LENGTH, "brakes.disc-runout", Dimension.LENGTH, "tyres.pressure", Dimension.PRESSURE)),
            chock.rulebook.RuleBook.shipped().vocabulary().plausible(),
            Map.of("torqued", new Vocabulary.Tooled("torqued", "torque-wrench", Unit.NEWTON_METRE, LocalDate.of(2026, 12, 1), "fasteners.torque")),
            Map.of("front-brake/lever", "front-brake/control", "front-brake/hose", "front-brake/hydraulic/hose"),
            List.of(new FieldRule("front-brake.type", "front-brake", true, Map.of("none", Set.of("front-brake"), "drum", Set.of("front-brake/caliper", "front-brake/disc")), Map.of(), Set.of(), List.of())),
            new LawWords(new TreeMap<>(Map.of("brakes.disc-thickness", List.of("at-least"), "brakes.disc-runout", List.of("at-most"))), List.of(new Area("GB", List.of(), List.of("GB-NIR"))), Set.of("US")));

    private Words() { }

    private static Map<String, Aspect> aspects(Aspect... all) {
        Map<String, Aspect> byName = new TreeMap<>();
        for (Aspect aspect : all) {
            byName.put(aspect.name(), aspect);
        }
        return byName;
    }

    static byte[] bytes(String name) {
        try {
            return Files.readAllBytes(FOLDER.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String good() {
        return new String(bytes("good.yaml"), java.nio.charset.StandardCharsets.UTF_8);
    }

    static JobRecord read(String text) {
        return read(text.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    static JobRecord read(byte[] bytes) {
        return RecordReader.read("record.yaml", bytes, VOCABULARY, AS_OF);
    }
}
