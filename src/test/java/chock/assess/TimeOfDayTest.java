package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.rulebook.Coordinates;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What the hours of a day do to a released record. */
class TimeOfDayTest {
    private static final Instant NIGHT = Instant.parse("2026-11-25T22:30:00Z");
    /** The sun sets there at 15:58 on the day of the examples. */
    private static final RuleBook THERE = Examples.BOOK.at(new Coordinates(Quantity.parse("52 °"), Quantity.parse("0 °")));
    private JobRecord record;

    @BeforeEach
    void readTheReleasedRecord() throws IOException {
        record = Examples.read("lark-released.yaml");
    }

    private Moment at(String moment) {
        String[] parts = moment.split(" ");
        return new Moment(LocalDate.parse(parts[0]), parts.length == 1 ? null : LocalTime.parse(parts[1]), record.zone());
    }

    private void add(Entry... more) {
        List<Entry> all = new ArrayList<>(record.entries());
        all.addAll(List.of(more));
        record = record.withEntries(all);
    }

    private Entry answer(String id, String at, String point, Deed deed, String what, String answer) {
        return new Entry(id, at(at), "ida", deed, point, what, new Value.Answer(answer), null, null, null, null, 0);
    }

    private Entry amount(String id, String at, String point, String what, String amount, String with) {
        return new Entry(id, at(at), "ida", Deed.MEASURED, point, what, new Value.Amount(Measured.parse(amount)), with, null, null, null, 0);
    }

    private Entry work(String id, String at, String point, String what) {
        return new Entry(id, at(at), "tom", Deed.DONE, point, what, null, null, null, null, null, 0);
    }

    private GateVerdict judged(RuleBook book, Instant moment) {
        return Assessor.assess(record, book, List.of(Gate.ROAD_TEST), moment).gates().get(0);
    }

    /** {@code check state}, of everything that is open. */
    private Set<String> open(GateVerdict verdict) {
        return verdict.findings().stream().filter(f -> f.state() != State.MET).map(f -> f.check() + " " + f.state().id()).collect(Collectors.toCollection(TreeSet::new));
    }

    private Set<String> open() {
        return open(judged(Examples.BOOK, Examples.DAY));
    }

    private void only(String prefix) {
        record = record.withEntries(record.entries().stream().filter(e -> !e.id().startsWith(prefix)).toList());
    }

    @Test
    void nobodyIsSentOutAtNightOnTheLooksOfTheMorning() {
        only("d");
        assertThat(open(judged(THERE, NIGHT))).contains("roadtest.daylight stale", "roadtest.weather stale", "roadtest.road-dry stale", "roadtest.wind stale", "roadtest.air-temperature stale",
                "roadtest.ice-risk stale", "roadtest.cold-rider stale", "tyres.pressure-outside stale");
        assertThat(open(judged(Examples.BOOK, NIGHT))).isEqualTo(open(judged(THERE, NIGHT)));
    }

    @Test
    void daylightAloneEndsAtSunset() {
        List<Entry> fresh = record.entries().stream().filter(e -> e.id().matches("d[1-5]")).map(e -> new Entry("n" + e.id(), at("2026-11-25 15:57"), e.by(), e.deed(), e.point(), e.what(), e.is(), e.with(), null, null, null, 0)).toList();
        add(fresh.toArray(Entry[]::new));
        add(answer("n6", "2026-11-25 15:57", "ride", Deed.SEEN, "daylight", "whole-ride"));
        GateVerdict before = judged(THERE, Instant.parse("2026-11-25T15:57:00Z"));
        assertThat(open(before)).isEmpty();
        assertThat(before.holdsUntil()).as("before two hours are over").isBetween(Instant.parse("2026-11-25T15:57:00Z"), Instant.parse("2026-11-25T15:59:00Z"));
        assertThat(open(judged(THERE, before.holdsUntil().plusSeconds(1)))).containsExactly("roadtest.daylight stale");
        GateVerdict nowhere = judged(Examples.BOOK, Instant.parse("2026-11-25T15:57:00Z"));
        assertThat(nowhere.holdsUntil()).isEqualTo(Instant.parse("2026-11-25T17:56:59Z"));
        assertThat(nowhere.findings()).filteredOn(f -> f.check().equals("roadtest.daylight")).singleElement()
                .satisfies(f -> assertThat(f.notes()).containsExactly("Ride: sunset is not known, since the shop's settings name no place: this look holds 2 hours"));
    }

    @Test
    void thePlaceChangesNoRule() {
        assertThat(THERE.digest()).isEqualTo(Examples.BOOK.digest());
        assertThat(THERE.without("roadtest.weather").position()).isEqualTo(THERE.position());
        assertThat(THERE.with(limit -> limit).position()).isEqualTo(THERE.position());
    }

    @ParameterizedTest
    @CsvSource({"11:50, rain, 11:58, fair, met", "11:50, fair, 11:58, rain, fault", "09:00, rain, 11:58, fair, met", "11:58, rain, 11:58, fair, fault"})
    void theLatestLookDecides(String first, String found, String second, String then, String state) {
        only("d5");
        add(answer("x1", "2026-11-25 " + first, "outdoors", Deed.SEEN, "weather", found), answer("x2", "2026-11-25 " + second, "outdoors", Deed.SEEN, "weather", then));
        boolean met = state.equals("met");
        assertThat(open()).filteredOn(o -> o.startsWith("roadtest.weather")).isEqualTo(met ? List.of() : List.of("roadtest.weather fault"));
        assertThat(judged(Examples.BOOK, Examples.DAY).released()).isEqualTo(met);
    }

    @Test
    void aLookWithoutATimeProvesNothingAtNoonAndAFaultWithoutATimeStands() {
        only("d5");
        add(answer("x1", "2026-11-25", "outdoors", Deed.SEEN, "weather", "fair"));
        assertThat(open()).contains("roadtest.weather stale");
        assertThat(judged(Examples.BOOK, Examples.DAY).findings()).filteredOn(f -> f.check().equals("roadtest.weather")).singleElement()
                .satisfies(f -> assertThat(f.says()).contains("is too old; it holds 2 hours; write the time of day with it"));
        add(answer("x2", "2026-11-25 11:58", "outdoors", Deed.SEEN, "weather", "fair"));
        assertThat(open()).isEmpty();
        add(answer("x3", "2026-11-25", "outdoors", Deed.SEEN, "weather", "rain"));
        assertThat(open()).contains("roadtest.weather fault");
    }

    @ParameterizedTest
    @CsvSource({"13:00, true", "12:52, true", "12:51, false", "13:08, true"})
    void workInsideTheTimeThatWasWatchedVoidsIt(String refitted, boolean voided) {
        add(work("x1", "2026-11-18 " + refitted, "fuel/hose", "refitted"), answer("x2", "2026-11-18 16:00", "fuel/hose", Deed.TRIED, "fuel-hose", "supple-and-whole"));
        assertThat(open().contains("fuel.leak stale")).isEqualTo(voided);
        if (voided) {
            assertThat(judged(Examples.BOOK, Examples.DAY).findings()).filteredOn(f -> f.check().equals("fuel.leak")).singleElement()
                    .satisfies(f -> assertThat(f.says()).contains("watched for 15 min ± 0.5 s of 2026-11-18 13:07 (f8) was undone when Tom Fell wrote 'refitted' on fuel, hose 2026-11-18 " + refitted));
        }
    }

    @Test
    void aCoilReadHotIsNotCorrectedByATemperatureTakenCold() {
        only("e37");
        add(amount("x1", "2026-11-25 11:00", "ignition/cylinder-1/coil", "primary-resistance", "4.9 Ω ± 0.4 Ω", "meter-1"));
        // To read a winding its leads come off: they are looked at again.
        assertThat(open()).containsExactly("electrics.coil-primary missing", "electrics.connectors stale", "electrics.plug-lead stale");
        assertThat(judged(Examples.BOOK, Examples.DAY).findings()).filteredOn(f -> f.check().equals("electrics.coil-primary")).singleElement()
                .satisfies(f -> assertThat(f.says()).isEqualTo("Ignition, cylinder 1, coil: coil temperature of 2026-11-18 12:06 (e36) and primary resistance of 2026-11-25 11:00 (x1) do not belong together; "
                        + "take them together, within 1 h of each other and with no work between."));
        add(amount("x2", "2026-11-25 11:01", "ignition/cylinder-1/coil", "coil-temperature", "40 °C ± 1 K", "therm-1"),
                answer("x3", "2026-11-25 11:02", "ignition/cylinder-1/lead", Deed.TRIED, "plug-cap-fit", "tight"),
                answer("x4", "2026-11-25 11:03", "electrics/wiring", Deed.TRIED, "connectors", "clean-and-tight"));
        assertThat(open()).isEmpty();
    }

    @Test
    void theOrderAsksForBothReadingsThatBelongTogether() {
        only("e37");
        add(amount("x1", "2026-11-25 11:00", "ignition/cylinder-1/coil", "primary-resistance", "4.9 Ω ± 0.4 Ω", "meter-1"));
        assertThat(OrderOfWork.of(record, Examples.BOOK, Gate.ROAD_TEST, Examples.DAY).steps()).extracting(OrderOfWork.Step::what).containsExactlyInAnyOrder("coil-temperature", "primary-resistance", "plug-cap-fit", "connectors");
    }

    @Test
    void theOrderAsksForAnotherLookAtTheWeatherAndNoWork() {
        add(answer("x1", "2026-11-25 11:58", "outdoors", Deed.SEEN, "weather", "rain"));
        assertThat(open()).containsExactly("roadtest.ice-risk fault", "roadtest.weather fault");
        assertThat(OrderOfWork.of(record, Examples.BOOK, Gate.ROAD_TEST, Examples.DAY).steps()).singleElement().satisfies(step -> {
            assertThat(step.kind()).isEqualTo(OrderOfWork.Kind.LOOK);
            assertThat(step.what()).isEqualTo("weather");
            assertThat(step.corrects()).isEmpty();
        });
    }

    @Test
    void everyHourOfTheDayIsSeenAhead() {
        List<Foresight.Turn> turns = Foresight.between(record, THERE, List.of(Gate.ROAD_TEST), Examples.DAY, NIGHT);
        assertThat(turns).extracting(turn -> turn.at() + " " + turn.check() + " " + turn.after().id()).contains(
                "2026-11-25T13:51:00Z roadtest.air-temperature stale", "2026-11-25T13:53:00Z roadtest.wind stale", "2026-11-25T13:54:00Z roadtest.road-dry stale", "2026-11-25T13:55:00Z roadtest.weather stale");
        assertThat(turns).filteredOn(turn -> turn.check().equals("roadtest.daylight")).singleElement()
                .satisfies(turn -> assertThat(turn.at()).isBetween(Instant.parse("2026-11-25T15:57:00Z"), Instant.parse("2026-11-25T15:59:00Z")));
    }
}
