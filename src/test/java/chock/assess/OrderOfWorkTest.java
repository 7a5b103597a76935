package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork.Step;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Moment;
import chock.record.Value;
import chock.rulebook.Card;
import chock.rulebook.OneSystem;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;

class OrderOfWorkTest {

    private static OrderOfWork order(JobRecord record, Gate gate) {
        return OrderOfWork.of(record, Examples.BOOK, gate, Examples.DAY);
    }

    @Test
    void nothingIsAskedOfAReleasedMachine() throws IOException {
        assertThat(order(Examples.read("lark-released.yaml"), Gate.ROAD_TEST).steps()).isEmpty();
    }

    private static Step step(OrderOfWork order, String point, String what) {
        return order.steps().stream().filter(s -> s.point().equals(point) && Objects.equals(s.what(), what)).findFirst()
                .orElseThrow(() -> new AssertionError("no step " + what + " at " + point));
    }

    private static int number(OrderOfWork order, String point, String what) {
        return step(order, point, what).number();
    }

    @Test
    void workComesBeforeWhatItUndoes() throws IOException {
        OrderOfWork order = order(Examples.read("lark-worked-on-after.yaml"), Gate.ROAD_TEST);
        assertThat(number(order, "front-brake/hydraulic/fluid", "filled")).isLessThan(number(order, "front-brake/hydraulic", "bled"));
        assertThat(number(order, "front-brake/hydraulic", "bled")).isLessThan(number(order, "front-brake/control", "lever-feel"));
        assertThat(number(order, "front-brake/hydraulic", "bled")).isLessThan(number(order, "front-brake/hydraulic/fluid", "fluid-level"));
    }

    @Test
    void aFaultIsPutRightFirstAndTheProofsItKillsComeBack() throws IOException {
        OrderOfWork order = order(Examples.read("lark-faults.yaml"), Gate.ROAD_TEST);
        Step tyre = step(order, "front-wheel/tyre", "replaced");
        assertThat(tyre.kind()).isEqualTo(OrderOfWork.Kind.PUT_RIGHT);
        assertThat(tyre.because()).anyMatch(why -> why.contains("made 2015-05-17"));
        Step bead = step(order, "front-wheel/tyre", "bead-line");
        assertThat(bead.again()).as("met now, and the new tyre undoes it").isTrue();
        assertThat(bead.number()).isGreaterThan(tyre.number());
    }

    @Test
    void aFaultThatTheGateDoesNotAskForIsPutRightAllTheSame() throws IOException {
        JobRecord lark = Examples.read("lark-released.yaml");
        List<Entry> entries = new ArrayList<>(lark.entries());
        entries.add(new Entry("knock", new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(11, 59), lark.zone()), "tom", Deed.TRIED, "engine", "running-noise", new Value.Answer("knocks"), null, null, null, null, 0));
        JobRecord knocking = RandomRecords.with(lark, entries);
        for (Gate gate : List.of(Gate.FIRST_START, Gate.INDOOR_RUN)) {
            assertThat(Assessor.assess(knocking, Examples.BOOK, List.of(gate), Examples.DAY).gates().get(0).closedBy()).extracting(ClosedBy::check).contains("engine.knock");
            assertThat(order(knocking, gate).steps()).as("order for " + gate).anySatisfy(step -> {
                assertThat(step.kind()).isEqualTo(OrderOfWork.Kind.PUT_RIGHT);
                assertThat(step.checks()).contains("engine.knock");
                assertThat(step.because()).anyMatch(why -> why.contains("knocks"));
            });
            assertThat(order(lark, gate).steps()).noneMatch(step -> step.checks().contains("engine.knock"));
        }
    }

    /** An extraction found switched off holds a first start, though a machine whose exhaust goes elsewhere is not asked about it. */
    @Test
    void whatWasFoundInTheRoomIsLookedAtAgain() throws IOException {
        JobRecord lark = Examples.read("lark-released.yaml");
        List<Entry> entries = new ArrayList<>(lark.entries());
        entries.add(new Entry("fan", new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(11, 58), lark.zone()), "tom", Deed.TRIED, "room/extraction", "extraction", new Value.Answer("switched-off"), null, null, null, null, 0));
        JobRecord found = RandomRecords.with(lark, entries);
        OrderOfWork order = order(found, Gate.FIRST_START);
        assertThat(order.steps()).anySatisfy(step -> {
            assertThat(step.kind()).isEqualTo(OrderOfWork.Kind.TRY);
            assertThat(step.point() + " " + step.what()).isEqualTo("room/extraction extraction");
            assertThat(step.because()).anyMatch(why -> why.contains("switched off"));
        });
        entries.add(new Entry("fan-on", new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(11, 59), lark.zone()), "ida", Deed.TRIED, "room/extraction", "extraction", new Value.Answer("running"), null, null, null, null, 0));
        assertThat(order(RandomRecords.with(lark, entries), Gate.FIRST_START).steps()).noneMatch(step -> step.point().equals("room/extraction"));
    }

    @Test
    void anEmptyRecordIsOrderedForEveryGate() throws IOException {
        for (String name : List.of("merle-released.yaml", "harrow-prewar-single.yaml")) {
            JobRecord empty = RandomRecords.with(Examples.read(name), List.of());
            for (Gate gate : Gate.values()) {
                OrderOfWork order = order(empty, gate);
                assertThat(order.cycle()).isEmpty();
                assertThat(order.steps()).hasSizeGreaterThan(5);
                // Only what a run or a ride undoes is proven after it, standing though it is; and the weather just before the ride.
                List<Step> untilThen = order.steps().stream().filter(s -> s.kind() != OrderOfWork.Kind.SETTLE && !Examples.BOOK.library().ofTheDay().has(s.point()))
                        .takeWhile(s -> s.kind() != OrderOfWork.Kind.DO || s.needs() == Card.Needs.STANDING).toList();
                assertThat(untilThen).extracting(Step::needs).as("standing, then running, then riding").isNotEmpty().isSorted();
            }
        }
    }

    @Test
    void theSecondPersonIsNeverAtTheSamePartNorWaitsForTheFirst() throws IOException {
        OrderOfWork order = order(RandomRecords.with(Examples.read("merle-released.yaml"), List.of()), Gate.ROAD_TEST);
        List<Step> paired = order.steps().stream().filter(s -> s.besides() != null).toList();
        assertThat(paired).hasSizeGreaterThan(20);
        assertThat(paired).allSatisfy(s -> {
            Step first = order.together().get(s.besides() - 1).get(0);
            assertThat(first.number()).isLessThan(s.number());
            assertThat(first.point().split("/")[0]).isNotEqualTo(s.point().split("/")[0]);
        });
        assertThat(order.together()).extracting(look -> look.get(0).besides()).filteredOn(Objects::nonNull).doesNotHaveDuplicates();
    }

    /** As if filling undid the bleeding, which it does, and bleeding undid the filling, which it does not. */
    @Test
    void stepsThatUndoEachOtherAreAFaultOfTheRuleBook() throws IOException {
        String bleeding = "{work: [bled], at: \"{end}-brake/hydraulic\", proofs: [";
        RuleBook book = OneSystem.of("brakes", text -> text.replace(bleeding, bleeding + "brakes.fluid-age, "));
        OrderOfWork order = OrderOfWork.of(RandomRecords.with(Examples.read("lark-released.yaml"), List.of()), book, Gate.ROAD_TEST, Examples.DAY);
        assertThat(order.steps()).isEmpty();
        assertThat(order.cycle()).containsExactly(
                "'filled' on front brake, hydraulic, fluid undoes 'bled' on front brake, hydraulic (brakes.bled)",
                "'bled' on front brake, hydraulic undoes 'filled' on front brake, hydraulic, fluid (brakes.fluid-age)");
        assertThat(OrderOfWork.of(RandomRecords.with(Examples.read("lark-released.yaml"), List.of()), OneSystem.of("brakes"), Gate.ROAD_TEST, Examples.DAY).cycle()).isEmpty();
    }

    /** Whatever is gone, older, worse or worked on: the steps in their order, with good results, release it; in another order they seldom do. */
    @Test
    void inThisOrderNothingIsDoneTwice(TestReporter reporter) {
        AtomicInteger followed = new AtomicInteger();
        AtomicInteger shuffled = new AtomicInteger();
        AtomicInteger released = new AtomicInteger();
        RandomRecords.forSeeds(25, seed -> {
            JobRecord record = new RandomRecords(seed).next();
            Gate gate = record.seeks().get(seed % record.seeks().size());
            OrderOfWork order = order(record, gate);
            assertThat(order.cycle()).isEmpty();
            JobRecord after = GoodEntries.written(record, order.steps());
            GateVerdict verdict = GoodEntries.judged(after, gate);
            assertThat(verdict.findings().stream().filter(f -> f.state() != State.MET).map(f -> f.check() + " " + f.state() + " " + f.says()).toList()).isEmpty();
            assertThat(verdict.released()).isTrue();
            assertThat(GoodEntries.undone(after, gate, order.steps())).as("proofs of the order that a later step undid").isEmpty();
            followed.incrementAndGet();
            // Of two or three steps any order is often as good as another.
            if (order.steps().size() > 5) {
                List<Step> other = new ArrayList<>(order.steps());
                Collections.shuffle(other, new Random(seed));
                shuffled.incrementAndGet();
                released.addAndGet(GoodEntries.judged(GoodEntries.written(record, other), gate).released() ? 1 : 0);
            }
        });
        reporter.publishEntry("orders followed to a release", followed.toString());
        reporter.publishEntry("random orders of more than five steps that released", released + " of " + shuffled);
        assertThat(followed.get()).isPositive();
        assertThat(released.get()).as("random orders that happen to release, of " + shuffled).isLessThan(shuffled.get() / 2);
    }
}
