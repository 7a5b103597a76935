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
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What corrections and missing times make of the checks on the record itself, on the released demo record. */
class RecordChecksTest {
    private static final String CALIPER = "front-brake/caliper";
    private JobRecord record;

    @BeforeEach
    void readTheReleasedRecord() throws IOException {
        record = Examples.read("lark-released.yaml");
    }

    private void add(Entry... more) {
        List<Entry> all = new ArrayList<>(record.entries());
        all.addAll(List.of(more));
        record = with(all);
    }

    private JobRecord with(List<Entry> entries) {
        return record.withEntries(entries);
    }

    private Entry work(String id, String time, String by, String point, String what, String corrects) {
        return new Entry(id, at("2026-11-25", time), by, Deed.DONE, point, what, null, null, corrects, corrects == null ? null : "another machine", null, 0);
    }

    private Entry reading(String id, String day, String time, String by, String value, String corrects) {
        return new Entry(id, at(day, time), by, Deed.MEASURED, CALIPER + "/inner-pad", "thickness", new Value.Amount(Measured.parse(value)), "cal-1", corrects, corrects == null ? null : "slip", null, 0);
    }

    private Moment at(String day, String time) {
        return new Moment(LocalDate.parse(day), time == null ? null : LocalTime.parse(time), record.zone());
    }

    private Finding finding(String check) {
        return Examples.judge(record).gates().get(0).findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow();
    }

    @Test
    void theReleasedRecordMeetsThemAll() {
        for (String check : List.of("identity", "instrument-calibrated", "reassembled", "agreement", "second-person", "territory")) {
            assertThat(finding("record." + check).state()).as(check).isEqualTo(State.MET);
        }
    }

    @Test
    void onOneDayWithoutTimesNobodyKnowsWhetherItIsTogether() {
        add(work("x1", null, "tom", CALIPER, "removed", null), work("x2", null, "tom", CALIPER, "refitted", null));
        assertThat(finding("record.reassembled").state()).isEqualTo(State.FAULT);
        assertThat(finding("record.reassembled").evidence()).containsExactly("x1");
    }

    @Test
    void whatIsTakenApartIsCorrectedAwayOnlyBySomebodyElse() {
        add(work("x1", "09:00", "tom", CALIPER, "removed", null), work("x2", "09:10", "tom", "rear-brake/shoes", "cleaned", "x1"));
        assertThat(finding("record.reassembled").state()).isEqualTo(State.FAULT);
        add(work("x3", "09:20", "ida", "rear-brake/shoes", "cleaned", "x2"));
        assertThat(finding("record.reassembled").state()).isEqualTo(State.MET);
    }

    @Test
    void aRefittingThatWasCorrectedClosesNothing() {
        add(work("x1", "09:00", "tom", CALIPER, "removed", null), work("x2", "09:10", "tom", CALIPER, "refitted", null));
        assertThat(finding("record.reassembled").state()).isEqualTo(State.MET);
        add(work("x3", "09:20", "tom", "rear-brake/shoes", "refitted", "x2"));
        assertThat(finding("record.reassembled").state()).isEqualTo(State.FAULT);
    }

    @Test
    void aSecondLookThatWasCorrectedIsNoLook() {
        add(work("x1", "09:00", "tom", CALIPER, "refitted", null), reading("x2", "2026-11-25", "09:10", "ida", "4.2 mm ± 0.1 mm", null));
        assertThat(finding("record.second-person").state()).isEqualTo(State.MET);
        add(reading("x3", "2026-11-25", "09:20", "tom", "4.2 mm ± 0.1 mm", "x2"));
        assertThat(finding("record.second-person").state()).isEqualTo(State.MISSING);
        assertThat(finding("record.second-person").says()).contains("refitted 2026-11-25 09:00 by Tom Fell (x1)");
    }

    @Test
    void aReadingOutsideCalibrationIsMadeUpForByItsCorrection() {
        // The caliper was calibrated on 2026-03-02.
        add(reading("x1", "2026-03-01", "09:00", "ida", "4.2 mm ± 0.1 mm", null));
        assertThat(finding("record.instrument-calibrated").state()).as("read again since").isEqualTo(State.MET);
        record = with(record.entries().stream().filter(e -> e.id().equals("x1") || !(e.point().equals(CALIPER + "/inner-pad") && e.what().equals("thickness"))).toList());
        assertThat(finding("record.instrument-calibrated").state()).isEqualTo(State.STALE);
        assertThat(finding("record.instrument-calibrated").says()).endsWith("x1 was read with cal-1 2026-03-01 09:00, outside its calibration (2026-03-02 to 2027-03-02).");
        add(reading("x2", "2026-11-25", "09:00", "ida", "4.2 mm ± 0.1 mm", "x1"));
        assertThat(finding("record.instrument-calibrated").state()).isEqualTo(State.MET);
    }

    @Test
    void severalFaultsAreToldInOneOrderWhateverTheOrderInTheFile() {
        add(work("x1", "09:00", "tom", CALIPER, "removed", null), work("x2", "09:10", "tom", "rear-wheel", "removed", null), work("x3", "09:20", "tom", "rear-brake/shoes", "opened", null));
        String before = JsonReport.of(List.of(Examples.judge(record)));
        for (int seed = 1; seed <= 10; seed++) {
            List<Entry> shuffled = new ArrayList<>(record.entries());
            Collections.shuffle(shuffled, new Random(seed));
            assertThat(JsonReport.of(List.of(Examples.judge(with(shuffled))))).isEqualTo(before);
        }
    }
}
