package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import chock.record.JobRecord;
import chock.rulebook.HouseBook;
import chock.rulebook.Limit;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class ForesightTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");

    private static GateVerdict ahead(JobRecord record, RuleBook book, Gate gate) {
        return Foresight.assess(record, book, List.of(gate), Examples.DAY).gates().get(0);
    }

    private static Instant startOf(int year, int month, int day) {
        return LocalDate.of(year, month, day).atStartOfDay(LONDON).toInstant();
    }

    private static Map<String, Map<String, State>> states(JobRecord record, Gate gate, Instant at) {
        Map<String, Map<String, State>> states = new TreeMap<>();
        Assessor.assess(record, Examples.BOOK, List.of(gate), at).gates().get(0).findings()
                .forEach(f -> f.places().forEach(p -> states.computeIfAbsent(f.check(), c -> new TreeMap<>()).put(p.point(), p.state())));
        return states;
    }

    @Test
    void aReleaseSaysWhatEndsIt() throws IOException {
        GateVerdict show = ahead(Examples.read("lark-on-show.yaml"), Examples.BOOK, Gate.ON_SHOW);
        // seen and tried on 18 November, good for 30 days: the last of them is 18 December
        assertThat(show.changes().at()).isEqualTo(startOf(2026, 12, 19));
        assertThat(show.changes().checks()).contains("show.stand-firm", "show.drip-sheet", "show.starting-prevented");
        assertThat(show.holdsUntil()).isEqualTo(show.changes().at().minusSeconds(1));
    }

    @Test
    void aBlockedVerdictChangesToo() throws IOException {
        GateVerdict blocked = ahead(Examples.read("lark-faults.yaml"), Examples.BOOK, Gate.ROAD_TEST);
        assertThat(blocked.released()).isFalse();
        assertThat(blocked.holdsUntil()).isNull();
        // two hours after the air was measured
        assertThat(blocked.changes().at()).isEqualTo(Instant.parse("2026-11-25T13:51:00Z"));
        assertThat(blocked.changes().checks()).contains("roadtest.air-temperature", "tyres.pressure-outside").doesNotContain("roadtest.weather", "tyres.pressure", "tyres.tread-depth");
    }

    @Test
    void whereNothingIsWrittenNothingChanges() throws IOException {
        JobRecord empty = RandomRecords.with(Examples.read("lark-released.yaml"), List.of());
        assertThat(ahead(empty, Examples.BOOK, Gate.ROAD_TEST).changes()).isEqualTo(new Changes(null, List.of()));
    }

    @Test
    void aLimitThatComesIntoForceEndsARelease() throws IOException {
        LocalDate day = LocalDate.of(2026, 12, 5);
        JobRecord record = Examples.read("lark-on-show.yaml");
        // The share of fuel: what is allowed now is allowed no longer from that day.
        RuleBook book = Examples.BOOK.with(l -> !l.id().equals("show.fuel-volume") ? l : new Limit(l.id(), l.of(), l.sense(), l.value(), l.upper(), l.passesAtLimit(), l.resolution(),
                day, l.registeredFrom(), l.registeredBefore(), l.fasterThan(), l.largerThan(), l.source(), l.reviewed(), l.maker(), l.local(), l.territory(), l.file(), l.line()));
        GateVerdict now = Assessor.assess(record, book, List.of(Gate.ON_SHOW), Examples.DAY).gates().get(0);
        assertThat(now.released()).as("no limit is in force yet, and a null never passes").isFalse();
        assertThat(ahead(record, book, Gate.ON_SHOW).changes()).isEqualTo(new Changes(startOf(2026, 12, 5), List.of("show.fuel-volume")));
    }

    /** The tank holds 3.2 L; shipped: at most 5 US gal. */
    private static RuleBook houseAllows(String litres) {
        return Examples.BOOK.with(HouseBook.named("House").withLimits("- id: show.fuel-volume\n  sense: at-most\n  value: " + litres + "\n  at-limit: passes\n  reason: the hall is small\n"
                + "  author: Ida Marrow\n  date: 2026-11-25\n  from: 2026-12-01\n"));
    }

    @Test
    void aLimitOfTheHouseThatComesIntoForceEndsARelease() throws IOException {
        JobRecord record = Examples.read("lark-on-show.yaml");
        GateVerdict shipped = Assessor.assess(record, Examples.BOOK, List.of(Gate.ON_SHOW), Examples.DAY).gates().get(0);
        assertThat(shipped.holdsUntil()).isEqualTo(startOf(2026, 12, 19).minusSeconds(1));
        GateVerdict tightened = Assessor.assess(record, houseAllows("3 L"), List.of(Gate.ON_SHOW), Examples.DAY).gates().get(0);
        assertThat(tightened.released()).as("the limit is not in force yet").isTrue();
        assertThat(tightened.holdsUntil()).isEqualTo(startOf(2026, 12, 1).minusSeconds(1));
        assertThat(tightened.changes()).isEqualTo(new Changes(startOf(2026, 12, 1), List.of("show.fuel-volume")));
        GateVerdict after = Assessor.assess(record, houseAllows("3 L"), List.of(Gate.ON_SHOW), startOf(2026, 12, 1)).gates().get(0);
        assertThat(after.findings()).filteredOn(f -> f.state() != State.MET).extracting(Finding::check).containsExactly("show.fuel-volume");
        GateVerdict roomy = Assessor.assess(record, houseAllows("4 L"), List.of(Gate.ON_SHOW), Examples.DAY).gates().get(0);
        assertThat(roomy.holdsUntil()).as("a coming limit that changes no finding ends nothing").isEqualTo(shipped.holdsUntil());
    }

    @Test
    void aCopyOfAVerdictMayBeKeptUntilAnyFindingMayChange() throws IOException {
        JobRecord record = Examples.read("lark-on-show.yaml");
        assertThat(Assessor.judge(record, Examples.BOOK, List.of(Gate.ON_SHOW), Examples.DAY).mayChange()).isEqualTo(startOf(2026, 12, 19));
        assertThat(Assessor.judge(record, houseAllows("4 L"), List.of(Gate.ON_SHOW), Examples.DAY).mayChange()).isEqualTo(startOf(2026, 12, 1));
        JobRecord empty = RandomRecords.with(record, List.of());
        assertThat(Assessor.judge(empty, Examples.BOOK, List.of(Gate.ON_SHOW), Examples.DAY).mayChange()).isNull();
    }

    @Test
    void theTurnsOfAPeriodComeInOrderAndStopAtItsEnd() throws IOException {
        List<Foresight.Turn> turns = Foresight.between(Examples.read("lark-on-show.yaml"), Examples.BOOK, List.of(Gate.ON_SHOW), Examples.DAY, startOf(2027, 12, 31));
        assertThat(turns).hasSizeGreaterThan(3).isSortedAccordingTo((a, b) -> a.at().compareTo(b.at()));
        assertThat(turns).allMatch(t -> t.before() == State.MET && t.after() == State.STALE && t.gate() == Gate.ON_SHOW);
        assertThat(Foresight.between(Examples.read("lark-on-show.yaml"), Examples.BOOK, List.of(Gate.ON_SHOW), Examples.DAY, startOf(2026, 12, 18))).isEmpty();
    }

    /** Stepping day by day (in the long run, through a few days by chance), and a look at the last second before and the first of the change. */
    @Test
    void isWhatSteppingFinds() {
        AtomicInteger changed = new AtomicInteger();
        AtomicInteger stepped = new AtomicInteger();
        RandomRecords.forSeeds(12, seed -> {
            JobRecord record = new RandomRecords(seed).next();
            Gate gate = record.seeks().get(seed % record.seeks().size());
            Changes first = ahead(record, Examples.BOOK, gate).changes();
            Map<String, Map<String, State>> now = states(record, gate, Examples.DAY);
            Random leap = new Random(seed);
            Instant day = LocalDate.of(2026, 11, 26).atStartOfDay(record.zone()).toInstant();
            for (int i = 0; i < (RandomRecords.many() ? 3 : 45) && (first.at() == null || day.isBefore(first.at())); i++) {
                assertThat(states(record, gate, day)).as("still as it was on " + day).isEqualTo(now);
                day = day.atZone(record.zone()).plusDays(RandomRecords.many() ? 1 + leap.nextInt(20) : 1).toInstant();
                stepped.incrementAndGet();
            }
            if (first.at() != null) {
                changed.incrementAndGet();
                assertThat(states(record, gate, first.at().minusSeconds(1))).isEqualTo(now);
                Map<String, Map<String, State>> then = states(record, gate, first.at());
                List<String> differ = then.keySet().stream().filter(c -> !then.get(c).equals(now.get(c))).toList();
                assertThat(first.checks()).containsAll(differ).isNotEmpty();
                assertThat(then).isNotEqualTo(now);
            }
        });
        assertThat(changed.get()).as("records of which something changes").isGreaterThan(4);
        assertThat(stepped.get()).as("days stepped through without a change").isGreaterThan(100);
    }
}
