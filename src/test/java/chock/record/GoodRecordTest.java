package chock.record;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;

class GoodRecordTest {
    private final JobRecord record = Words.read(Words.good());

    private Value is(String id) {
        return record.entry(id).orElseThrow().is();
    }

    @Test
    void sameRecordInJsonIsEqual() {
        JobRecord json = Words.read(Words.bytes("good.json"));
        assertThat(withoutLines(json)).isEqualTo(withoutLines(record));
        assertThat(json.machine()).isEqualTo(record.machine());
        assertThat(json.maker()).isEqualTo(record.maker());
        assertThat(json.people()).isEqualTo(record.people());
        assertThat(json.claims()).isEqualTo(record.claims());
        assertThat(json.instruments()).isEqualTo(record.instruments());
    }

    /** Only the lines differ between the two files. */
    private static JobRecord withoutLines(JobRecord r) {
        List<Entry> entries = r.entries().stream().map(e -> new Entry(e.id(), e.at(), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), e.corrects(), e.reason(), e.note(), 0)).toList();
        return r.withEntries(entries);
    }

    /** The wrench has 5 % of its own, and 5 % of 24 N·m are 1.2 N·m. */
    @Test
    void workNamesItsInstrumentAndWhatThatWasSetTo() {
        Entry torqued = record.entry("e16").orElseThrow();
        assertThat(torqued.with()).isEqualTo("wrench-1");
        assertThat(torqued.is()).hasToString("24 N·m ± 1.2 N·m");
        assertThat(record.entry("e4").orElseThrow().with()).isNull();
        assertThat(record.maker().saysNone("fasteners.torque", "front-wheel/spindle")).isTrue();
        assertThat(record.maker().saysNone("fasteners.torque", "front-brake/caliper")).isFalse();
    }

    @Test
    void machineIsReadInFull() {
        Machine machine = record.machine();
        assertThat(machine.built()).isEqualTo(Year.of(1974));
        assertThat(machine.engineNumber()).isEqualTo("none");
        assertThat(machine.kind()).isEqualTo(Machine.Kind.MOTORCYCLE);
        assertThat(machine.topSpeed()).isEqualTo(Quantity.of("120", Unit.KMH));
        assertThat(machine.seats()).isEqualTo(2);
        assertThat(machine.engine()).isEqualTo(new Machine.Engine(Machine.Cycle.TWO_STROKE, Quantity.of("246", Unit.CC), 1, Machine.Oiling.OIL_INJECTION, Machine.Ignition.POINTS, Machine.Cooling.AIR));
        assertThat(machine.frontBrake()).isEqualTo(new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.HYDRAULIC, 1, Machine.Lining.BONDED, true));
        assertThat(machine.linkedBrakes()).isFalse();
        assertThat(machine.rearWheel()).isEqualTo(new Machine.Wheel(Machine.Rim.STEEL, true, true));
        assertThat(machine.volts()).isEqualTo(6);
        assertThat(machine.equipment()).isEqualTo(new Machine.Equipment(Machine.Starter.KICK, 1, Machine.FuelTap.MANUAL, Machine.Clutch.CABLE,
                Machine.FrontSpringing.TELESCOPIC_FORK, Machine.RearSpringing.TWIN_DAMPERS, true, false, true, 1, 2, true));
        assertThat(machine.history()).isEqualTo(Machine.History.KNOWN);
        assertThat(record.seeks()).containsExactly(Gate.ROAD_TEST, Gate.HAND_OVER);
    }

    @Test
    void makerFiguresAndThoseNotFound() {
        assertThat(record.maker().figure("tyres.pressure", "front-wheel/tyre").orElseThrow().nominal()).isEqualTo(Quantity.of("24", Unit.PSI));
        assertThat(record.maker().figure("brakes.disc-thickness", "front-brake/disc").orElseThrow().secondedBy()).isEqualTo("tom");
        assertThat(record.maker().saysNone("tyres.pressure", "rear-wheel/tyre")).isTrue();
        assertThat(record.maker().saysNone("tyres.pressure", "front-wheel/tyre")).isFalse();
    }

    @Test
    void readingKeepsItsOwnUncertainty() {
        assertThat(is("e1")).isEqualTo(new Value.Amount(Measured.parse("3.1 mm ± 0.2 mm")));
    }

    @Test
    void byKindTakesTheTable() {
        assertThat(is("e9")).isEqualTo(new Value.Amount(new Measured(Quantity.of("0.12", Unit.INCH), Quantity.of("0.1", Unit.MM))));
    }

    @Test
    void percentageIsOfTheReading() {
        // 5 % of 40 N·m = 2 N·m
        assertThat(is("e10")).isEqualTo(new Value.Amount(new Measured(Quantity.of("40", Unit.NEWTON_METRE), Quantity.of("2", Unit.NEWTON_METRE))));
    }

    @Test
    void instrumentOwnUncertaintyGoesBeforeTheTable() {
        assertThat(is("e11")).isEqualTo(new Value.Amount(new Measured(Quantity.of("6.3", Unit.VOLTS), Quantity.of("0.2", Unit.VOLTS))));
    }

    @Test
    void uncertaintiesCompareAsDifferencesOfTemperature() {
        // The table gives 2 °C, which is 3.6 °F and not 35.6 °F.
        String text = Words.good().replace("kind: multimeter, uncertainty: 0.2 V", "kind: thermometer, uncertainty: by-kind")
                .replace("measured: rest-voltage, is: 6.3 V", "measured: head-temperature, is: 200 °F ± 3.6 °F");
        assertThat(Words.read(text).entry("e11").orElseThrow().is()).hasToString("200 °F ± 3.6 °F");
    }

    @Test
    void marksAreReadWithoutUncertainty() {
        assertThat(is("e13")).isEqualTo(new Value.Amount(new Measured(Quantity.of("4.5", Unit.MM), null)));
    }

    @Test
    void daysMonthsAndYears() {
        assertThat(is("e3")).isEqualTo(new Value.Days(LocalDate.of(2023, 5, 1), LocalDate.of(2023, 5, 31), "2023-05"));
        assertThat(is("e6")).isEqualTo(new Value.Days(LocalDate.of(2022, 1, 1), LocalDate.of(2022, 12, 31), "2022"));
        assertThat(is("e15")).isEqualTo(new Value.Days(LocalDate.of(2022, 5, 14), LocalDate.of(2022, 5, 14), "2022-05-14"));
    }

    @Test
    void codeKeepsItsZero() {
        assertThat(is("e12")).isEqualTo(new Value.Code("0301"));
    }

    @Test
    void yesStaysAWord() {
        assertThat(is("e14")).isEqualTo(new Value.Answer("yes"));
    }

    @Test
    void timesAreOfTheWorkshop() {
        assertThat(record.entry("e3").orElseThrow().at()).isEqualTo(new Moment(LocalDate.of(2026, 11, 20), LocalTime.of(9, 46), ZoneId.of("Europe/London")));
        assertThat(record.entry("e6").orElseThrow().at().time()).isNull();
    }

    @Test
    void workInstrumentAndInspection() {
        assertThat(record.entry("e4").orElseThrow()).extracting(Entry::deed, Entry::point, Entry::what, Entry::is).containsExactly(Deed.DONE, "front-brake/hydraulic", "bled", null);
        assertThat(record.entry("e7").orElseThrow()).extracting(Entry::deed, Entry::point, Entry::what).containsExactly(Deed.FOUND_OUT, "meter-1", "reads 0.2 V high at the master");
        assertThat(record.entry("e8").orElseThrow()).extracting(Entry::deed, Entry::point, Entry::what, Entry::is, Entry::note)
                .containsExactly(Deed.INSPECTED, "machine", "refused", new Value.Code("L-2231"), "document slip 118, inspector Edda Crane; asked for new hoses");
    }

    @Test
    void claimsKeepTheirWords() {
        assertThat(record.claims()).containsExactly(
                new Claim(Claim.Kind.NEW, "front-brake/hydraulic/hose", "new hose in May", "seller", List.of("e6", "e15")),
                new Claim(Claim.Kind.REBUILT, "rear-brake", "gone through last winter", "advertisement", List.of()));
    }

    @Test
    void entryKnowsItsLine() {
        String[] lines = Words.good().split("\n");
        assertThat(record.entries()).hasSize(16).allSatisfy(e -> assertThat(lines[e.line() - 1]).contains("id: " + e.id() + ","));
    }

    @Test
    void byteOrderMarkAndWindowsLineEndsAreRead() {
        byte[] text = ("\uFEFF" + Words.good().replace("\n", "\r\n")).getBytes(StandardCharsets.UTF_8);
        assertThat(Words.read(text)).isEqualTo(record);
    }

    @Test
    void emptyListsMayBeWritten() {
        String text = Words.good();
        String bare = text.substring(0, text.indexOf("maker:")) + "maker: {figures: [], none-found: []}\npeople: [{id: ida, name: Ida Marrow, role: lead}]\ninstruments: []\nentries: []\nclaims: []\n";
        JobRecord empty = Words.read(bare);
        assertThat(empty.entries()).isEmpty();
        assertThat(empty.instruments()).isEmpty();
        assertThat(empty.claims()).isEmpty();
        assertThat(empty.maker()).isEqualTo(new MakerFigures(List.of(), List.of()));
    }

    @Test
    void entryOfTheDayJudgedWithoutATimeIsNotLater() {
        assertThat(Words.read(Words.good().replace("id: e15, at: 2026-11-23 09:31", "id: e15, at: 2026-11-25")).entries()).hasSize(16);
    }
}
