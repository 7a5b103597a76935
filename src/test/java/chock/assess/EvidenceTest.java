package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.report.JsonReport;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The general reasoning about evidence, on the released demo record and what is added to it. */
class EvidenceTest {
    private static final String PAD = "front-brake/caliper/inner-pad";
    private JobRecord record;

    @BeforeEach
    void readTheReleasedRecord() throws IOException {
        record = Examples.read("lark-released.yaml");
    }

    private static Finding.AtPlace at(Assessment assessment, String check, String point) {
        return assessment.gates().get(0).findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow()
                .places().stream().filter(p -> p.point().equals(point)).findFirst().orElseThrow();
    }

    private Finding.AtPlace pad() {
        return at(Examples.judge(record), "brakes.pad-thickness", PAD);
    }

    private Moment moment(String day, String time) {
        return new Moment(LocalDate.parse(day), time == null ? null : LocalTime.parse(time), record.zone());
    }

    private Entry reading(String id, String day, String time, String by, String value, String corrects) {
        return new Entry(id, moment(day, time), by, Deed.MEASURED, PAD, "thickness", new Value.Amount(Measured.parse(value)), "cal-1", corrects, corrects == null ? null : "slip", null, 0);
    }

    private Entry work(String id, String day, String time, String by, String point, String what, String corrects) {
        return new Entry(id, moment(day, time), by, Deed.DONE, point, what, null, null, corrects, corrects == null ? null : "another machine", null, 0);
    }

    private void add(Entry... more) {
        List<Entry> all = new ArrayList<>(record.entries());
        all.addAll(List.of(more));
        with(all);
    }

    private void with(List<Entry> entries) {
        record = record.withEntries(entries);
    }

    private String first() {
        return record.entries().stream().filter(e -> e.point().equals(PAD) && e.what().equals("thickness")).findFirst().orElseThrow().id();
    }

    private void replaceFirst(UnaryOperator<Entry> change) {
        String id = first();
        with(record.entries().stream().map(e -> e.id().equals(id) ? change.apply(e) : e).toList());
    }

    private State bled(int filledSeq, int bledSeq) throws IOException {
        record = Examples.read("lark-released.yaml");
        LocalDate day = LocalDate.of(2026, 11, 25);
        Moment filled = new Moment(day, LocalTime.of(9, 54), record.zone(), filledSeq);
        Moment bled = new Moment(day, LocalTime.of(9, 54), record.zone(), bledSeq);
        add(new Entry("x1", filled, "tom", Deed.DONE, "front-brake/hydraulic", "filled", null, null, null, null, null, 0),
                new Entry("x2", bled, "tom", Deed.DONE, "front-brake/hydraulic", "bled", null, null, null, null, null, 0));
        return at(Examples.judge(record), "brakes.bled", "front-brake/hydraulic").state();
    }

    @Test
    void workOfOneMinuteUndoesWhatTheProgramNumberedBeforeIt() throws IOException {
        assertThat(bled(141, 142)).as("filled, then bled").isEqualTo(State.MET);
        assertThat(bled(142, 141)).as("bled, then filled").isEqualTo(State.STALE);
        assertThat(bled(0, 0)).as("written by hand: the worse counts").isEqualTo(State.STALE);
        assertThat(bled(141, 0)).as("one of them written by hand").isEqualTo(State.STALE);
    }

    @Test
    void readingAgainIsNoCureForAFault() {
        add(reading("x1", "2026-11-25", "09:30", "ida", "1.2 mm ± 0.1 mm", first()), reading("x2", "2026-11-25", "10:00", "ida", "4.2 mm ± 0.1 mm", null));
        assertThat(pad().state()).isEqualTo(State.FAULT);
        assertThat(pad().says()).contains("1.2 mm ± 0.1 mm");
    }

    @Test
    void newPadsMeasuredAfterwardsClearTheFault() {
        add(reading("x1", "2026-11-25", "09:30", "ida", "1.2 mm ± 0.1 mm", first()), work("x2", "2026-11-25", "10:00", "tom", PAD, "replaced", null));
        assertThat(pad().state()).isEqualTo(State.STALE);
        assertThat(pad().says()).contains("Tom Fell wrote 'replaced'").contains("(x2)");
        add(reading("x3", "2026-11-25", "10:30", "ida", "4.5 mm ± 0.1 mm", null));
        assertThat(pad().state()).isEqualTo(State.MET);
    }

    @Test
    void aSlipMayBePutRightByItsWriterButAFaultOnlyBySomebodyElse() {
        add(reading("x1", "2026-11-25", "09:30", "ida", "4.1 mm ± 0.1 mm", first()));
        assertThat(pad().evidence()).containsExactly("x1");
        assertThat(pad().state()).isEqualTo(State.MET);
        add(reading("x2", "2026-11-25", "09:40", "ida", "1.2 mm ± 0.1 mm", "x1"), reading("x3", "2026-11-25", "09:50", "ida", "4.1 mm ± 0.1 mm", "x2"));
        assertThat(pad().state()).as("her own fault corrected away").isEqualTo(State.FAULT);
        add(reading("x4", "2026-11-25", "10:00", "tom", "4.1 mm ± 0.1 mm", "x3"));
        assertThat(pad().state()).as("measured by another person").isEqualTo(State.MET);
    }

    @Test
    void workIsCorrectedAwayOnlyBySomebodyElse() {
        add(work("x1", "2026-11-25", "09:30", "tom", PAD, "replaced", null));
        assertThat(pad().state()).isEqualTo(State.STALE);
        add(work("x2", "2026-11-25", "09:40", "tom", "rear-brake/shoes", "replaced", "x1"));
        assertThat(pad().state()).isEqualTo(State.STALE);
        add(work("x3", "2026-11-25", "09:50", "ida", "rear-brake/shoes", "replaced", "x2"));
        assertThat(pad().state()).isEqualTo(State.MET);
    }

    @Test
    void twoReadingsThatCannotBothBeRightAreInDoubt() {
        add(reading("x1", "2026-11-25", "09:30", "ida", "3.0 mm ± 0.1 mm", null));
        assertThat(pad().state()).isEqualTo(State.DOUBT);
        assertThat(pad().says()).contains("differ by more than their uncertainties together");
    }

    @Test
    void twoReadingsAreLeftStandingWhenTheirUncertaintiesTogetherAllowIt() {
        // 4.2 ± 0.06 and 4.0 ± 0.2: apart 0.2, together √(0.06² + 0.2²) = 0.209
        add(reading("x1", "2026-11-25", "09:30", "ida", "4.0 mm ± 0.2 mm", null));
        assertThat(pad().state()).isEqualTo(State.MET);
    }

    /** 60.8 °F is 16 °C; 28.8 °F is −1.8 °C, though a step of 28.8 °F is one of 16 K. */
    @Test
    void temperaturesAreToldApartByWhatTheyAreInWhateverDegrees() {
        assertThat(outdoors("16 °C ± 1 K", "60.8 °F ± 1 K").state()).isEqualTo(State.MET);
        assertThat(outdoors("16 °C ± 1 K", "60.8 °F ± 1 K").says()).doesNotContain("differ");
        assertThat(outdoors("16 °C ± 1 K", "70 °F ± 1 K").state()).isEqualTo(State.DOUBT);
        assertThat(outdoors("16 °C ± 1 K", "70 °F ± 1 K").says()).contains("air temperature 16 °C ± 1 K (x1) and 70 °F ± 1 K (x2) differ by more than their uncertainties together");
    }

    /** Two of one minute, for the air of another minute may be another. */
    private Finding.AtPlace outdoors(String first, String second) {
        JobRecord before = record;
        add(air("x1", first), air("x2", second));
        Finding.AtPlace found = at(Examples.judge(record), "roadtest.air-temperature", "outdoors");
        record = before;
        return found;
    }

    private Entry air(String id, String temperature) {
        return new Entry(id, moment("2026-11-25", "11:58"), "ida", Deed.MEASURED, "outdoors", "air-temperature", new Value.Amount(Measured.parse(temperature)), "therm-1", null, null, null, 0);
    }

    @Test
    void onOneDayWithoutTimesNobodyKnowsWhichCameFirst() {
        add(work("x1", "2026-11-25", null, "tom", PAD, "replaced", null), reading("x2", "2026-11-25", null, "ida", "4.2 mm ± 0.1 mm", null));
        assertThat(pad().state()).isEqualTo(State.STALE);
        assertThat(pad().says()).contains("write times to show which came first");
    }

    @Test
    void workAtTheVeryMinuteOfTheReadingUndoesIt() {
        add(work("x1", "2026-11-25", "09:30", "tom", PAD, "replaced", null), reading("x2", "2026-11-25", "09:30", "ida", "4.2 mm ± 0.1 mm", null));
        assertThat(pad().state()).isEqualTo(State.STALE);
    }

    /** At one minute, or on one day without times, nobody knows which came last: both count, and the worse decides, whatever the lines are called. */
    @ParameterizedTest
    @CsvSource({"a1, z1, 09:30, 09:30", "z1, a1, 09:30, 09:30", "a1, z1, , ", "z1, a1, , ", "a1, z1, , 09:30", "z1, a1, , 09:30"})
    void ofTwoThatMayBothBeTheLastTheWorseDecides(String one, String other, String first, String second) {
        with(record.entries().stream().filter(e -> !e.what().equals("thickness")).toList());
        add(reading(one, "2026-11-25", first, "ida", "1.55 mm ± 0.06 mm", null), reading(other, "2026-11-25", second, "ida", "1.6 mm ± 0.06 mm", null));
        assertThat(pad().state()).isEqualTo(State.DOUBT);
        assertThat(pad().evidence()).contains(one);
        with(record.entries().stream().filter(e -> !e.what().equals("thickness")).toList());
        String hose = "front-brake/hydraulic/hose";
        with(record.entries().stream().filter(e -> !e.what().equals("hose-condition")).toList());
        add(new Entry(one, moment("2026-11-25", first), "tom", Deed.TOLD, hose, "hose-condition", new Value.Answer("cracked"), null, null, null, null, 0),
                new Entry(other, moment("2026-11-25", second), "ida", Deed.SEEN, hose, "hose-condition", new Value.Answer("sound"), null, null, null, null, 0));
        assertThat(at(Examples.judge(record), "brakes.hose-condition", hose).state()).isEqualTo(State.FAULT);
    }

    @Test
    void anInstrumentFoundOutKillsItsReadings() {
        add(new Entry("x1", moment("2026-11-25", "09:30"), "ida", Deed.FOUND_OUT, "cal-1", "reads 0.2 mm high", null, null, null, null, null, 0));
        assertThat(pad().state()).isEqualTo(State.STALE);
        assertThat(pad().says()).contains("cal-1, later found out of tolerance (x1)");
    }

    @Test
    void aReadingOutsideItsInstrumentsCalibrationIsStale() {
        replaceFirst(e -> new Entry(e.id(), moment("2026-03-01", "10:00"), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), null, null, null, 0));
        assertThat(pad().state()).isEqualTo(State.STALE);
        assertThat(pad().says()).contains("outside its calibration");
    }

    @Test
    void hearsayClosesNothingButAToldFaultCountsUntilSomebodyLooks() {
        String hose = "front-brake/hydraulic/hose";
        Entry told = new Entry("x1", moment("2026-11-25", "09:30"), "tom", Deed.TOLD, hose, "hose-condition", new Value.Answer("cracked"), null, null, null, null, 0);
        add(told);
        assertThat(at(Examples.judge(record), "brakes.hose-condition", hose).state()).isEqualTo(State.FAULT);
        add(new Entry("x2", moment("2026-11-25", "09:45"), "ida", Deed.SEEN, hose, "hose-condition", new Value.Answer("sound"), null, null, null, null, 0));
        assertThat(at(Examples.judge(record), "brakes.hose-condition", hose).state()).isEqualTo(State.MET);
        with(record.entries().stream().filter(e -> !e.what().equals("hose-condition")).toList());
        add(new Entry("x3", moment("2026-11-25", "09:50"), "tom", Deed.TOLD, hose, "hose-condition", new Value.Answer("sound"), null, null, null, null, 0));
        assertThat(at(Examples.judge(record), "brakes.hose-condition", hose).state()).isEqualTo(State.MISSING);
    }

    @Test
    void nothingIsWorkedOutFromAMassOfNothing() {
        add(new Entry("x1", moment("2026-11-25", "09:30"), "ida", Deed.MEASURED, "machine", "mass-with-rider", new Value.Amount(Measured.parse("0 kg ± 1 kg")), "scale-1", null, null, null, 0),
                new Entry("x2", moment("2026-11-25", "09:31"), "ida", Deed.MEASURED, "front-brake/control", "gap-at-rest", new Value.Amount(Measured.parse("0 mm ± 1 mm")), "rule-1", null, null, null, 0));
        Assessment assessment = Assessor.assess(record, Examples.BOOK, List.of(chock.record.Gate.HAND_OVER, chock.record.Gate.ROAD_TEST), Examples.DAY);
        assertThat(assessment.gates()).noneMatch(GateVerdict::released);
    }

    @Test
    void theReleaseLapsesWithTheFirstFindingThatDoes() {
        // The air was measured at 11:51 and holds two hours, and London is on UTC in November.
        assertThat(Examples.judge(record).gates().get(0).holdsUntil()).isEqualTo(Instant.parse("2026-11-25T13:50:59Z"));
        Assessment later = Assessor.assess(record, Examples.BOOK, record.seeks(), Instant.parse("2026-11-25T13:51:00Z"));
        assertThat(later.gates().get(0).released()).isFalse();
        assertThat(at(later, "roadtest.air-temperature", "outdoors").state()).isEqualTo(State.STALE);
        // The tyre pressures hold on the day they were taken.
        Assessment next = Assessor.assess(record, Examples.BOOK, record.seeks(), Instant.parse("2026-11-26T00:00:00Z"));
        assertThat(at(next, "tyres.pressure", "front-wheel/tyre").state()).isEqualTo(State.STALE);
    }

    @Test
    void theOrderOfEntriesInTheFileChangesNothing() {
        String before = JsonReport.of(List.of(Examples.judge(record)));
        for (int seed = 1; seed <= 20; seed++) {
            List<Entry> shuffled = new ArrayList<>(record.entries());
            Collections.shuffle(shuffled, new Random(seed));
            with(shuffled);
            assertThat(JsonReport.of(List.of(Examples.judge(record)))).isEqualTo(before);
        }
    }
}
