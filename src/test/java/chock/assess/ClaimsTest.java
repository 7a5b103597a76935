package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.record.Claim;
import chock.record.Claim.Kind;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What becomes of a claim, on a record with nothing in it but what each test writes. */
class ClaimsTest {
    private static final String TYRE = "rear-wheel/tyre";
    private final List<Entry> entries = new ArrayList<>();
    private JobRecord blank;

    @BeforeEach
    void emptyTheReleasedRecord() throws IOException {
        blank = Examples.read("lark-released.yaml");
    }

    private void write(String id, String day, Deed deed, String point, String what, Value is) {
        write(id, day, deed, point, what, is, null);
    }

    private void write(String id, String day, Deed deed, String point, String what, Value is, String corrects) {
        entries.add(new Entry(id, new Moment(LocalDate.parse(day), LocalTime.of(9, 0), blank.zone()), "tom", deed, point, what, is, deed == Deed.MEASURED ? "tread-1" : null,
                corrects, corrects == null ? null : "slip", null, 0));
    }

    private void done(String id, String day, String point, String work) {
        write(id, day, Deed.DONE, point, work, null);
    }

    private void code(String id, String day, String point, String aspect, String code) {
        write(id, day, Deed.SEEN, point, aspect, new Value.Code(code));
    }

    private void tread(String id, String depth) {
        write(id, "2026-11-20", Deed.MEASURED, TYRE, "tread-depth", new Value.Amount(Measured.parse(depth)));
    }

    private Claims.Weighed weigh(Kind kind, String about, String says, String... named) {
        return weigh(blank.instruments(), kind, about, says, named);
    }

    private Claims.Weighed weigh(List<Instrument> instruments, Kind kind, String about, String says, String... named) {
        JobRecord record = new JobRecord(blank.id(), blank.workshop(), blank.zone(), blank.territory(), blank.onePerson(), blank.seeks(), blank.machine(), blank.maker(), blank.people(),
                instruments, entries, List.of(new Claim(kind, about, says, "seller", List.of(named))), blank.form());
        return Claims.weigh(record, Examples.BOOK.vocabulary().plausible(), Examples.TODAY).get(0);
    }

    private static void is(Claims.Weighed weighed, Claims.Standing standing, String says) {
        assertThat(weighed.says()).contains(says);
        assertThat(weighed.standing()).isEqualTo(standing);
    }

    private static void supported(Claims.Weighed weighed, String says) {
        is(weighed, Claims.Standing.SUPPORTED, says);
    }

    private static void contradicted(Claims.Weighed weighed, String says) {
        is(weighed, Claims.Standing.CONTRADICTED, says);
    }

    private static void unproven(Claims.Weighed weighed, String says) {
        is(weighed, Claims.Standing.UNPROVEN, says);
    }

    @Test
    void whatNobodyWroteDownIsUnproven() {
        unproven(weigh(Kind.NEW, TYRE, "new in May"), "no entry is named for it");
        done("e1", "2026-05-03", TYRE, "replaced");
        unproven(weigh(Kind.NEW, TYRE, "new in May"), "no entry is named for it");
    }

    @Test
    void newRestsOnTheWorkOnThatVeryPart() {
        done("e1", "2026-05-03", TYRE, "replaced");
        supported(weigh(Kind.NEW, TYRE, "new in May", "e1"), "replaced 2026-05-03 09:00 (e1)");
        assertThat(weigh(Kind.NEW, TYRE, "new in May", "e1").evidence()).containsExactly("e1");
        unproven(weigh(Kind.NEW, "rear-wheel", "wheel new in May", "e1"), "e1 does not show it (replaced rear wheel, tyre)");
        unproven(weigh(Kind.NEW, "front-wheel/tyre", "both new", "e1"), "e1 does not show it");
    }

    @Test
    void aTyreMadeLongBeforeItWasFittedIsNotNew() {
        done("e1", "2026-05-03", TYRE, "replaced");
        // Week 18 of 2025 began on Sunday 4 May 2025, 364 days before it was fitted; week 15 ended on 19 April, over twelve months before.
        code("e2", "2026-05-04", TYRE, "date-code", "1825");
        supported(weigh(Kind.NEW, TYRE, "new in May", "e2"), "date code 1825 (e2)");
        code("e3", "2026-05-05", TYRE, "date-code", "1525");
        contradicted(weigh(Kind.NEW, TYRE, "new in May", "e1"), "date code 1525, over 12 months old when it was fitted 2026-05-03 (e3)");
    }

    @Test
    void theMarkOfTheOldPartSaysNothingOfTheNewOne() {
        code("e1", "2026-05-01", TYRE, "date-code", "1009");
        contradicted(weigh(Kind.NEW, TYRE, "new"), "date code 1009, over 12 months old when it was seen 2026-05-01 (e1)");
        done("e2", "2026-05-03", TYRE, "replaced");
        supported(weigh(Kind.NEW, TYRE, "new", "e2"), "replaced");
    }

    @Test
    void aMarkedDayIsReadAtItsBestForTheClaimBeforeItContradicts() {
        write("e1", "2026-05-31", Deed.SEEN, TYRE, "date-mark", new Value.Days(LocalDate.of(2025, 5, 1), LocalDate.of(2025, 5, 31), "2025-05"));
        unproven(weigh(Kind.NEW, TYRE, "new", "e1"), "e1 does not show it");
        write("e2", "2026-06-01", Deed.SEEN, TYRE, "date-mark", new Value.Days(LocalDate.of(2025, 5, 1), LocalDate.of(2025, 5, 31), "2025-05"));
        contradicted(weigh(Kind.NEW, TYRE, "new", "e1"), "marked 2025-05, over 12 months old when it was seen 2026-06-01 (e2)");
    }

    @Test
    void whatWasMendedSinceIsNotNew() {
        done("e1", "2026-05-03", TYRE, "replaced");
        done("e2", "2026-06-03", TYRE, "repaired");
        contradicted(weigh(Kind.NEW, TYRE, "new", "e1"), "repaired 2026-06-03 09:00 (e2)");
        done("e3", "2026-07-03", TYRE, "replaced");
        supported(weigh(Kind.NEW, TYRE, "new", "e3"), "(e3)");
    }

    /** Made in week 18 of 2025 (Sunday 4 May on): over a year before the second fitting, not before the first. */
    @Test
    void theLastFittingIsTheOneATyreMustBeNewFor() {
        done("e1", "2025-06-03", TYRE, "replaced");
        done("e2", "2026-06-03", TYRE, "replaced");
        code("e3", "2026-06-04", TYRE, "date-code", "1825");
        contradicted(weigh(Kind.NEW, TYRE, "new in June", "e2"), "date code 1825, over 12 months old when it was fitted 2026-06-03 (e3)");
    }

    @Test
    void damageToAPartAndToWhatCarriesItSpeaksAgainstNew() {
        done("e1", "2026-05-03", "rear-wheel", "replaced");
        done("e2", "2026-05-04", "front-wheel", "damaged");
        supported(weigh(Kind.NEW, "rear-wheel", "new", "e1"), "replaced 2026-05-03");
        done("e3", "2026-05-05", TYRE, "damaged");
        contradicted(weigh(Kind.NEW, "rear-wheel", "new", "e1"), "damaged 2026-05-05 09:00 (e3)");
        contradicted(weigh(Kind.NEW, TYRE, "new", "e1"), "damaged 2026-05-05 09:00 (e3)");
        done("e4", "2026-05-06", TYRE, "replaced");
        done("e5", "2026-05-07", "rear-wheel", "damaged");
        contradicted(weigh(Kind.NEW, TYRE, "new", "e4"), "damaged 2026-05-07 09:00 (e5)");
    }

    @Test
    void hearsayAndCorrectedEntriesSupportNothing() {
        write("e1", "2026-05-03", Deed.TOLD, TYRE, "date-code", new Value.Code("1826"));
        unproven(weigh(Kind.NEW, TYRE, "new", "e1"), "e1 is hearsay itself");
        done("e2", "2026-05-03", TYRE, "replaced");
        write("e3", "2026-05-04", Deed.DONE, "front-wheel/tyre", "replaced", null, "e2");
        unproven(weigh(Kind.NEW, TYRE, "new", "e2"), "e2 does not count: it was corrected");
        unproven(weigh(Kind.NEW, TYRE, "new", "e9"), "there is no entry e9");
    }

    @Test
    void rebuiltRestsOnStrippingAndFallsWithDamage() {
        done("e1", "2026-05-03", "front-brake/caliper", "cleaned");
        unproven(weigh(Kind.REBUILT, "front-brake", "brakes gone through", "e1"), "e1 does not show it (cleaned front brake, caliper)");
        done("e2", "2026-05-04", "front-brake", "stripped");
        supported(weigh(Kind.REBUILT, "front-brake/caliper", "caliper gone through", "e2"), "stripped 2026-05-04");
        done("e3", "2026-05-05", "machine", "damaged");
        contradicted(weigh(Kind.REBUILT, "front-brake", "brakes gone through", "e2"), "damaged 2026-05-05 09:00, and not rebuilt since (e3)");
        done("e4", "2026-05-06", "front-brake", "repaired");
        done("e5", "2026-05-07", "rear-brake", "damaged");
        supported(weigh(Kind.REBUILT, "front-brake", "brakes gone through", "e4"), "repaired");
        done("e6", "2026-05-08", "front-brake/caliper", "damaged");
        contradicted(weigh(Kind.REBUILT, "front-brake", "brakes gone through", "e4"), "damaged 2026-05-08 09:00, and not rebuilt since (e6)");
    }

    @Test
    void originalFallsWithAnotherPartInItsPlace() {
        code("e1", "2026-05-03", "machine", "part-of-another-year", "none");
        supported(weigh(Kind.ORIGINAL, "front-wheel", "all original", "e1"), "no part of another year seen");
        done("e0", "2026-05-03", "rear-wheel/tyre", "replaced");
        supported(weigh(Kind.ORIGINAL, "front-wheel", "all original", "e1"), "no part of another year seen");
        done("e2", "2026-05-04", "front-wheel/tyre", "replaced");
        unproven(weigh(Kind.ORIGINAL, "front-wheel", "all original", "e1"), "replaced front wheel, tyre");
        done("e3", "2026-05-05", "front-wheel", "replaced");
        contradicted(weigh(Kind.ORIGINAL, "front-wheel", "all original", "e1"), "replaced front wheel 2026-05-05 09:00 (e3)");
    }

    @Test
    void aPartOfAnotherYearSpeaksAgainstWhatCarriesItAndCloudsTheRest() {
        code("e1", "2026-05-03", "rear-wheel", "part-of-another-year", "none");
        code("e0", "2026-05-03", "front-wheel", "part-of-another-year", "rim of 1980");
        supported(weigh(Kind.ORIGINAL, "rear-wheel", "original wheel", "e1"), "no part of another year seen");
        code("e2", "2026-05-03", "machine", "part-of-another-year", "tank and wheel of 1976");
        unproven(weigh(Kind.ORIGINAL, "rear-wheel", "original wheel", "e1"), "of another year: tank and wheel of 1976 (e2)");
        contradicted(weigh(Kind.ORIGINAL, "machine", "as it left the works", "e1"), "of another year: tank and wheel of 1976 (e2)");
    }

    @Test
    void originalEngineIsToldByItsNumber() {
        code("e1", "2026-05-03", "engine", "number", "tb25e 10395");
        supported(weigh(Kind.ORIGINAL, "engine", "matching numbers", "e1"), "number tb25e 10395, as in this record (e1)");
        code("e2", "2026-05-04", "engine", "number", "TB25E-10396");
        contradicted(weigh(Kind.ORIGINAL, "engine", "matching numbers", "e1"), "not the one in this record (e2)");
    }

    @Test
    void aMileageIsHeldAgainstTheOdometerInWhateverUnit() {
        write("e1", "2026-05-03", Deed.SEEN, "machine", "odometer", new Value.Amount(Measured.parse("29000 km")));
        // 18,200 mi = 29,290.0608 km
        supported(weigh(Kind.MILEAGE, "machine", "2 owners, 18,200 miles", "e1"), "the odometer showed 29000 km, no more than 18200 mi (e1)");
        supported(weigh(Kind.MILEAGE, "machine", "29,000 km", "e1"), "the odometer showed 29000 km, no more than 29000 km (e1)");
        contradicted(weigh(Kind.MILEAGE, "machine", "18,000 miles", "e1"), "the odometer showed 29000 km, more than 18000 mi (e1)");
        unproven(weigh(Kind.MILEAGE, "machine", "18,200 miles"), "no entry is named");
        for (String vague : List.of("low mileage", "18.200 km", "1,8 km", "18200")) {
            unproven(weigh(Kind.MILEAGE, "machine", vague, "e1"), "it names no distance");
        }
    }

    @Test
    void aTreadIsHeldAgainstTheGaugeAndItsUncertainty() {
        tread("e1", "3.9 mm ± 0.2 mm");
        unproven(weigh(Kind.TREAD, TYRE, "4 mm all round", "e1"), "tread depth 3.9 mm ± 0.2 mm, which cannot be told from 4 mm (e1)");
        unproven(weigh(Kind.TREAD, TYRE, "4.1 mm all round", "e1"), "which cannot be told from 4.1 mm");
        contradicted(weigh(Kind.TREAD, TYRE, "4.2 mm all round", "e1"), "tread depth 3.9 mm ± 0.2 mm, less than 4.2 mm (e1)");
        supported(weigh(Kind.TREAD, TYRE, "3.9 mm all round", "e1"), "no less than 3.9 mm");
        unproven(weigh(Kind.TREAD, TYRE, "80 % left", "e1"), "it names no depth");
        done("e2", "2026-11-21", TYRE, "replaced");
        unproven(weigh(Kind.TREAD, TYRE, "3.9 mm all round", "e1"), "e1 does not show it");
    }

    @Test
    void aReadingOfAnInstrumentFoundOutSupportsNothing() {
        tread("e1", "5.2 mm ± 0.2 mm");
        supported(weigh(Kind.TREAD, TYRE, "5 mm", "e1"), "tread depth 5.2 mm");
        List<Instrument> lapsed = List.of(new Instrument("tread-1", "depth-gauge", null, LocalDate.of(2024, 1, 1), LocalDate.of(2025, 1, 1)));
        unproven(weigh(lapsed, Kind.TREAD, TYRE, "5 mm", "e1"), "e1 does not count");
        entries.add(new Entry("e0", new Moment(LocalDate.of(2026, 11, 22), null, blank.zone()), "tom", Deed.FOUND_OUT, "cal-1", "reads high", null, null, null, null, null, 0));
        supported(weigh(Kind.TREAD, TYRE, "5 mm", "e1"), "tread depth 5.2 mm");
        entries.add(new Entry("e2", new Moment(LocalDate.of(2026, 11, 22), null, blank.zone()), "tom", Deed.FOUND_OUT, "tread-1", "reads high", null, null, null, null, null, 0));
        unproven(weigh(Kind.TREAD, TYRE, "5 mm", "e1"), "e1 does not count");
    }

    @Test
    void aYearIsHeldAgainstWhatIsMarkedThere() {
        contradicted(weigh(Kind.YEAR, "machine", "a 1973 model"), "this record says it was built in 1974");
        assertThat(weigh(Kind.YEAR, "machine", "a 1973 model").evidence()).isEmpty();
        unproven(weigh(Kind.YEAR, "machine", "a 1974 model"), "no entry is named");
        unproven(weigh(Kind.YEAR, "machine", "an early one"), "it names no year");
        write("e1", "2026-05-03", Deed.SEEN, "rear-brake/drum", "date-mark", new Value.Days(LocalDate.of(1974, 1, 1), LocalDate.of(1974, 12, 31), "1974"));
        supported(weigh(Kind.YEAR, "rear-brake/drum", "drum of 1974", "e1"), "marked 1974 (e1)");
        contradicted(weigh(Kind.YEAR, "rear-brake/drum", "drum of 1975", "e1"), "marked 1974 (e1)");
        unproven(weigh(Kind.YEAR, "rear-brake", "brake of 1974", "e1"), "e1 does not show it");
    }

    @Test
    void theDemoRecordsTellTheirClaimsApart() throws IOException {
        assertThat(Claims.weigh(Examples.read("lark-released.yaml"), Examples.BOOK.vocabulary().plausible(), Examples.TODAY)).extracting(w -> w.standing().id()).containsExactly("supported", "supported", "unproven");
        assertThat(Claims.weigh(Examples.read("lark-faults.yaml"), Examples.BOOK.vocabulary().plausible(), Examples.TODAY)).extracting(w -> w.standing().id()).containsExactly("contradicted", "unproven");
    }
}
