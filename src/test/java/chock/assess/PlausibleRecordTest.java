package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import chock.record.JobRecord;
import chock.record.Plausible;
import chock.record.ReadAs;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A figure that cannot be true is refused when it is written, and blocks where it is stored. */
class PlausibleRecordTest {

    private static ObjectNode lark() throws IOException {
        return RecordReader.written("lark", Examples.bytes("lark-released.yaml"));
    }

    private static byte[] bytes(ObjectNode record) {
        return record.toString().getBytes(StandardCharsets.UTF_8);
    }

    private static JobRecord stored(ObjectNode record) {
        return RecordReader.read("lark", bytes(record), Examples.BOOK.vocabulary(), Examples.DAY);
    }

    private static String refusal(ObjectNode record) {
        UnusableInput refused = catchThrowableOfType(UnusableInput.class, () -> RecordReader.read("lark", bytes(record), Examples.BOOK.vocabulary(), Examples.DAY, ReadAs.WRITTEN));
        return refused == null ? "accepted" : refused.getMessage();
    }

    /** The first entry that says this. */
    private static ObjectNode entry(ObjectNode record, String point, String aspect) {
        for (JsonNode entry : (ArrayNode) record.get("entries")) {
            boolean says = Stream.of("measured", "tried", "seen").anyMatch(deed -> entry.path(deed).asText().equals(aspect));
            if (says && entry.path("point").asText().equals(point)) {
                return (ObjectNode) entry;
            }
        }
        throw new AssertionError("the example has no " + aspect + " at " + point);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theExamplesAreRefusedNothingWhenTheyAreWritten(String name) throws IOException {
        assertThat(RecordReader.read(name, Examples.bytes(name), Examples.BOOK.vocabulary(), Examples.DAY, ReadAs.WRITTEN).entries()).isNotEmpty();
    }

    static List<String> examples() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("docs/examples"))) {
            return files.map(f -> f.getFileName().toString()).filter(f -> f.endsWith(".yaml")).sorted().toList();
        }
    }

    /** A share of the reading leaves nothing to a reading of 0, and 0 is what a dry pipe or a brake that does nothing gives. */
    @Test
    void everyInstrumentWhoseScaleBeginsAtZeroCanReadZero() {
        List<Plausible.Tool> fromZero = Examples.BOOK.vocabulary().plausible().tools().values().stream().flatMap(List::stream).filter(tool -> tool.shows().low().value().signum() <= 0).toList();
        assertThat(fromZero).hasSizeGreaterThan(20).allSatisfy(tool -> assertThat(tool.mostUncertainty()).anyMatch(most -> !most.ofReading()));
    }

    @ParameterizedTest
    @CsvSource({"electrics/battery, leakage-current, 0 mA ± 0.1 mA, multimeter", "ignition/cylinder-1/cap, cap-resistance, 0.0 kΩ ± 0.1 kΩ, multimeter", "fuel/tank, fuel-volume, 0 L ± 0.1 L, measuring-jug",
        "rear-brake/control, braking-force, 0 N ± 20 N, brake-roller", "outdoors, gusts, 20 mph ± 2 mph, anemometer"})
    void anHonestReadingOfNothingCanBeWritten(String point, String aspect, String is, String kind) throws IOException {
        ObjectNode record = lark();
        ((ArrayNode) record.get("instruments")).addObject().put("id", "zero").put("kind", kind).put("uncertainty", "by-kind").put("calibrated", "2026-06-01").put("due", "2027-05-01");
        ((ArrayNode) record.get("entries")).addObject().put("id", "zero-1").put("at", "2026-11-25 11:00").put("by", "ida").put("point", point).put("measured", aspect).put("is", is).put("with", "zero");
        assertThat(refusal(record)).isEqualTo("accepted");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "front-wheel/tyre|tread-depth|3.9 m|tyres.tread-depth|tread depth 3.9 m is not possible: it lies between 0 mm and 30 mm|Perhaps 3.9 mm? Measure in the main groove in mm; check the decimal point",
        "front-brake/caliper/inner-pad|thickness|420 mm|brakes.pad-thickness|thickness 420 mm is not possible: it lies between 0 mm and 20 mm|Perhaps 4.2 mm? Measure the friction material alone, without the plate it sits on",
        "front-wheel/tyre|cut-length|-50 mm|tyres.cut|cut length -50 mm is not possible: it lies between 0 mm and 2500 mm|Perhaps 50 mm? Write the length of the longest cut, 0 where there is none; check cm against mm",
        "engine/cylinder-1|compression|1000000000 kPa|engine.compression|compression 1000000000 kPa is not possible: it lies between 0 kPa and 6000 kPa|Check the unit of the gauge: kPa, bar, psi or kgf/cm²",
        "front-wheel|wheel-load|0 kg|tyres.load-index|wheel load 0 kg is not possible: it lies between 5 kg and 1500 kg|Put one wheel on the scale with everybody aboard; check pounds against kilograms",
        "controls/mirrors|mirrors-showing-behind|1.5 times|controls.mirrors|mirrors showing behind 1.5 is not a whole number|Count the mirrors that show the road behind",
        "front-brake/hydraulic/hose|date-mark|2034|brakes.hose-age|date mark 2034 is later than the day of the entry (2026-11-18)|Check day and month, and whether it is a use-by date: a hose cannot be made after it was looked at"})
    void isRefusedWhenWrittenAndBlocksWhenStored(String point, String aspect, String is, String check, String says, String advice) throws IOException {
        ObjectNode record = lark();
        entry(record, point, aspect).put("is", is);
        assertThat(refusal(record)).contains(".is: " + says + ". " + advice);

        Assessment judged = Examples.judge(stored(record));
        assertThat(judged.gates()).isNotEmpty().noneMatch(GateVerdict::released);
        Finding finding = judged.gates().get(0).findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow();
        assertThat(finding.state()).isEqualTo(State.DOUBT);
        assertThat(finding.says()).contains(says);
    }

    @Test
    void aStoredReadingIsGoodAgainWhenALaterEntryCorrectsIt() throws IOException {
        ObjectNode record = lark();
        ObjectNode wrong = entry(record, "front-wheel/tyre", "tread-depth");
        ObjectNode right = wrong.deepCopy().put("id", "right").put("at", "2026-11-25 11:30").put("corrects", wrong.get("id").asText()).put("reason", "millimetres");
        wrong.put("is", "3.9 m");
        ((ArrayNode) record.get("entries")).add(right);
        assertThat(Examples.judge(stored(record)).gates()).isNotEmpty().allMatch(GateVerdict::released);
        assertThat(refusal(record)).as("an import is refused all the same").contains("tread depth 3.9 m is not possible");
        UnusableInput none = catchThrowableOfType(UnusableInput.class, () -> RecordReader.read("lark", bytes(record), Examples.BOOK.vocabulary(), Examples.DAY, ReadAs.withEntriesFrom(record.get("entries").size() - 1)));
        assertThat(none).as("the correction alone is written, and it is sound").isNull();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "calibrated|1950-01-01|cal-1 (caliper) is calibrated 1950-01-01, before 1980-01-01|Write the day on the certificate, not the day it was made or bought",
        "calibrated|2010-01-01|cal-1 (caliper) is calibrated 2010-01-01, more than 10 years before its first reading|Write the day on the latest certificate before that reading",
        "due|2999-01-01|cal-1 (caliper) is due 2999-01-01, more than 5 years after its calibration|Write the last day on which this calibration counts; most last one year"})
    void anInstrumentWhoseCertificateCannotBeRightIsRefusedAndTakesItsReadingsWithIt(String key, String day, String says, String advice) throws IOException {
        ObjectNode record = lark();
        record.get("instruments").forEach(instrument -> {
            if (instrument.get("id").asText().equals("cal-1")) {
                ((ObjectNode) instrument).put(key, day);
            }
        });
        assertThat(refusal(record)).contains("." + key + ": " + says).contains(advice);
        Assessment judged = Examples.judge(stored(record));
        assertThat(judged.gates()).noneMatch(GateVerdict::released);
        assertThat(judged.gates().get(0).findings()).filteredOn(f -> f.state() == State.DOUBT).isNotEmpty().anyMatch(f -> f.says().contains(says));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "gap-when-on|front-brake/control|400 mm|does not go with gap at rest|A control cannot move outwards when it is pulled; check whether the two are swapped",
        "rest-voltage|electrics/battery|126 V|does not go with machine.volts|Check the decimal point, and the volts of the machine"})
    void twoThatCannotBothBeTrueAreRefusedAndBlock(String aspect, String point, String is, String says, String advice) throws IOException {
        ObjectNode record = lark();
        entry(record, point, aspect).put("is", is);
        assertThat(refusal(record)).contains(says).contains(advice);
        Assessment judged = Examples.judge(stored(record));
        assertThat(judged.gates()).noneMatch(GateVerdict::released);
        assertThat(judged.gates().get(0).findings()).anyMatch(f -> f.state() == State.DOUBT && f.says().contains(says));
    }

    @Test
    void aMakersFigureThatCannotBeIsRefusedAndStandsInForNothing() throws IOException {
        ObjectNode record = lark();
        ObjectNode figure = null;
        for (JsonNode one : record.get("maker").get("figures")) {
            if (one.get("for").asText().equals("transmission.chain-slack")) {
                figure = (ObjectNode) one;
            }
        }
        assertThat(figure).isNotNull();
        figure.put("at-most", "350 mm");
        assertThat(refusal(record)).contains(".at-most: 350 mm is not possible for transmission.chain-slack: it lies between 5 mm and 70 mm");
        Finding finding = Examples.judge(stored(record)).gates().get(0).findings().stream().filter(f -> f.check().equals("transmission.chain-slack")).findFirst().orElseThrow();
        assertThat(finding.state()).isEqualTo(State.MISSING);
        assertThat(finding.says()).contains("the maker's figure cannot be right: 350 mm is not possible for transmission.chain-slack");
    }

    @Test
    void aDescriptionThatNoMachineHasIsRefusedAndBlocks() throws IOException {
        ObjectNode record = lark();
        ((ObjectNode) record.get("machine")).put("top-speed", "1200 km/h");
        assertThat(refusal(record)).contains("machine.top-speed: machine.top-speed 1200 km/h is not possible: it lies between 5 km/h and 650 km/h. Write the speed the maker gives; check mph against km/h");
        Finding finding = Examples.judge(stored(record)).gates().get(0).findings().stream().filter(f -> f.check().equals("record.plausible")).findFirst().orElseThrow();
        assertThat(finding.state()).isEqualTo(State.DOUBT);
        assertThat(finding.says()).contains("1200 km/h is not possible");
    }

    @Test
    void aClaimThatNoMachineCanBearOutIsRefusedAndUnproven() throws IOException {
        ObjectNode record = lark();
        ObjectNode claim = ((ArrayNode) record.get("claims")).addObject().put("claim", "mileage").put("about", "machine").put("says", "4000000 km from new").put("by", "seller");
        claim.putArray("supported-by");
        assertThat(refusal(record)).contains(".says: odometer 4000000 km is not possible: it lies between 0 km and 3000000 km. Ask again what was meant, and check the unit");
        List<Claims.Weighed> claims = Examples.judge(stored(record)).claims();
        assertThat(claims.get(claims.size() - 1).standing()).isEqualTo(Claims.Standing.UNPROVEN);
        assertThat(claims.get(claims.size() - 1).says()).isEqualTo("odometer 4000000 km is not possible: it lies between 0 km and 3000000 km; ask again what was meant");
    }

    @ParameterizedTest
    @CsvSource({"6 carburettors, equipment, carburettors, 6", "a third stand, equipment, stands, 3", "more mirrors, equipment, mirrors, 24", "a traction battery, , volts, 400"})
    void whatExistsIsNotRefused(String what, String part, String key, String value) throws IOException {
        ObjectNode record = lark();
        ObjectNode machine = (ObjectNode) record.get("machine");
        ((ObjectNode) machine.get("engine")).put("cylinders", "6").put("displacement", "1000 cc");
        (part == null ? machine : (ObjectNode) machine.get(part)).put(key, value);
        assertThat(refusal(record)).as(what).isEqualTo("accepted");
    }
}
