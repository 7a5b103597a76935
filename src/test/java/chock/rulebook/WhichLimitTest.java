package chock.rulebook;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Bounds;
import chock.quantity.Quantity;
import chock.record.JobRecord;
import chock.record.MakerFigure;
import chock.record.MakerFigures;
import chock.record.RecordReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The maker's figure, common practice and the law: which of them decides. */
class WhichLimitTest {
    private static final RuleBook BOOK = RuleBook.shipped();
    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final String PAD = "front-brake/caliper/inner-pad";

    private static JobRecord record(String territory, List<String> noneFound, MakerFigure... figures) {
        try {
            JobRecord r = RecordReader.read("lark", Files.readAllBytes(Path.of("docs/examples/lark-released.yaml")), BOOK.vocabulary(), Instant.parse("2026-11-25T12:00:00Z"));
            return new JobRecord(r.id(), r.workshop(), r.zone(), territory, r.onePerson(), r.seeks(), r.machine(), new MakerFigures(List.of(figures), noneFound), r.people(), r.instruments(), r.entries(), r.claims(), r.form());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private static MakerFigure maker(String limit, String atLeast, String atMost, String nominal, String second) {
        return new MakerFigure(limit, null, quantity(atLeast), quantity(atMost), quantity(nominal), "manual", "9", "ida", second);
    }

    private static Quantity quantity(String text) {
        return text == null ? null : Quantity.parse(text);
    }

    private static Bounds bounds(LimitFor limit) {
        assertThat(limit.gap()).isNull();
        return limit.applied().bounds();
    }

    @Test
    void practiceStandsWhereTheManualWasSearchedInVain() {
        LimitFor limit = BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of("brakes.disc-runout")), DAY);
        assertThat(bounds(limit).words()).isEqualTo("at most 0.3 mm");
        assertThat(limit.applied().source().kind()).isEqualTo(Source.Kind.PRACTICE);
    }

    @Test
    void silenceAboutTheManualIsAGap() {
        assertThat(BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of()), DAY).gap()).contains("does not say that none was found");
        assertThat(BOOK.limitFor("tyres.pressure", "front-wheel/tyre", record("GB", List.of("tyres.pressure")), DAY).gap()).contains("nothing else can stand in for it");
    }

    @Test
    void aStricterFigureOfTheMakerDecides() {
        LimitFor limit = BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of(), maker("brakes.disc-runout", null, "0.15 mm", null, null)), DAY);
        assertThat(bounds(limit).words()).isEqualTo("at most 0.15 mm");
        assertThat(limit.applied().source().kind()).isEqualTo(Source.Kind.MAKER);
        assertThat(limit.applied().others()).anyMatch(o -> o.contains("0.3 mm"));
    }

    @Test
    void aLooserFigureOfTheMakerNeedsASecondReader() {
        LimitFor alone = BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of(), maker("brakes.disc-runout", null, "0.5 mm", null, null)), DAY);
        assertThat(bounds(alone).words()).isEqualTo("at most 0.3 mm");
        assertThat(alone.applied().others()).anyMatch(o -> o.contains("read by one person only"));
        LimitFor seconded = BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of(), maker("brakes.disc-runout", null, "0.5 mm", null, "tom")), DAY);
        assertThat(bounds(seconded).words()).isEqualTo("at most 0.5 mm");
        assertThat(seconded.applied().others()).anyMatch(o -> o.contains("looser on the word of") && o.contains("as the record names them"));
    }

    @Test
    void noTwoReadersLoosenALimitWithoutEnd() {
        // The bound is common practice: no disc that runs out by more than 0.5 mm is left on, whatever a book says.
        LimitFor further = BOOK.limitFor("brakes.disc-runout", "front-brake/disc", record("GB", List.of(), maker("brakes.disc-runout", null, "0.51 mm", null, "tom")), DAY);
        assertThat(further.gap()).contains("0.51 mm").contains("whoever read it").contains("between 0.02 mm and 0.5 mm");
        assertThat(further.applied()).isNull();
    }

    @Test
    void everyLimitThatAMakersFigureReplacesSaysHowFarItMayGo() {
        List<String> without = BOOK.limits().stream().filter(l -> l.maker() == Limit.Maker.REPLACES && l.territory() == null)
                .filter(l -> BOOK.vocabulary().plausible().limits().get(l.id()).maker() == null).map(Limit::id).toList();
        assertThat(without).isEmpty();
    }

    @Test
    void theMakerNeverLoosensTheLaw() {
        // GB: 1.5 mm (manual, read in a copy); Virginia: 2/32 in (19VAC30-70-340 B 4, read in the official text)
        JobRecord looser = record("GB", List.of(), maker("brakes.pad-thickness", "1.0 mm", null, null, "tom"));
        assertThat(bounds(BOOK.limitFor("brakes.pad-thickness", PAD, looser, DAY)).low()).isEqualByComparingTo(Quantity.parse("1.5 mm"));
        JobRecord virginia = record("US-VA", List.of(), maker("brakes.pad-thickness", "1.0 mm", null, null, "tom"));
        assertThat(bounds(BOOK.limitFor("brakes.pad-thickness", PAD, virginia, DAY)).low()).isEqualByComparingTo(Quantity.parse("2/32 in"));
    }

    @Test
    void aFigureForTheOtherEndTakesNothingAway() {
        // A manual that prints only how thick a new pad may be says nothing of how thin a worn one may get.
        JobRecord upsideDown = record("GB", List.of(), maker("brakes.pad-thickness", null, "6 mm", null, "tom"));
        Bounds bounds = bounds(BOOK.limitFor("brakes.pad-thickness", PAD, upsideDown, DAY));
        assertThat(bounds.low()).isEqualByComparingTo(Quantity.parse("1.5 mm"));
        assertThat(bounds.high()).isEqualByComparingTo(Quantity.parse("6 mm"));
    }

    @Test
    void aSingleFigureCountsForTheSideThatIsLimited() {
        JobRecord record = record("GB", List.of(), maker("brakes.pad-thickness", null, null, "2 mm", "tom"));
        assertThat(bounds(BOOK.limitFor("brakes.pad-thickness", PAD, record, DAY)).words()).isEqualTo("at least 2 mm");
    }

    @Test
    void aToleranceIsTakenOnTheMakersFigure() {
        JobRecord record = record("GB", List.of(), maker("tyres.pressure", null, null, "24 psi", null));
        Bounds bounds = bounds(BOOK.limitFor("tyres.pressure", "front-wheel/tyre", record, DAY));
        // 24 psi ± 10 % = 21.6 to 26.4 psi (common practice)
        assertThat(bounds.low()).isEqualByComparingTo(Quantity.parse("21.6 psi"));
        assertThat(bounds.high()).isEqualByComparingTo(Quantity.parse("26.4 psi"));
    }

    @Test
    void withoutALocalCodeALocalLimitIsAGap() {
        assertThat(BOOK.limitFor("tyres.tread-depth", "front-wheel/tyre", record("JP", List.of("tyres.tread-depth")), DAY).gap()).contains("no local code", "ask the licensed inspector");
    }

    @Test
    void theLawIsNamedWhereItSaysTheSameAsPractice() {
        LimitFor limit = BOOK.limitFor("brakes.pad-thickness", PAD, record("GB", List.of("brakes.pad-thickness")), DAY);
        assertThat(limit.applied().source().kind()).isEqualTo(Source.Kind.LAW);
        assertThat(limit.applied().others()).anyMatch(o -> o.contains("common practice"));
    }

    @Test
    void allLimitsAreThoseOfTheBookOfLocalCodesAndOfTheHouse() {
        RuleBook house = BOOK.with(HouseBook.named("House").withLimits("- id: brakes.pad-thickness\n  sense: at-least\n  value: 2.5 mm\n  at-limit: passes\n  reason: hills\n  author: Ida Marrow\n  date: 2026-11-25\n  from: 2027-03-01\n"));
        assertThat(house.tightened()).hasSize(1);
        assertThat(house.allLimits()).containsAll(BOOK.limits()).containsAll(house.tightened()).containsAll(BOOK.codes().get("GB").limits())
                .hasSize(BOOK.limits().size() + BOOK.codes().values().stream().mapToInt(code -> code.limits().size()).sum() + 1).doesNotHaveDuplicates();
        assertThat(house.limitsNamed("brakes.pad-thickness")).containsAll(BOOK.limitsNamed("brakes.pad-thickness")).containsAll(house.tightened());
        assertThat(house.limitsFrom(DAY, LocalDate.of(2027, 3, 1))).isEqualTo(new java.util.TreeSet<>(List.of(LocalDate.of(2027, 3, 1))));
        assertThat(house.limitsFrom(DAY, LocalDate.of(2027, 2, 28))).isEmpty();
        assertThat(house.overdue(LocalDate.of(2099, 1, 1))).hasSize(BOOK.overdue(LocalDate.of(2099, 1, 1)).size() + 1);
        assertThat(house.with(limit -> limit).allLimits()).isEqualTo(house.allLimits());
    }
}
