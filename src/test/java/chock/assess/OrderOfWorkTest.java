package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork.Step;
import chock.record.Gate;
import chock.record.JobRecord;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
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

    /** Whatever is gone, older, worse or worked on: the steps in their order, with good results, release it; in another order they seldom do. */
    @Test
    void inThisOrderNothingIsDoneTwice(TestReporter reporter) {
        int[] followed = {0};
        int[] shuffled = {0};
        int[] released = {0};
        RandomRecords.forSeeds(8, seed -> {
            JobRecord record = new RandomRecords(seed).next();
            Gate gate = record.seeks().get(seed % record.seeks().size());
            OrderOfWork order = order(record, gate);
            assertThat(order.cycle()).isEmpty();
            JobRecord after = GoodEntries.written(record, order.steps());
            GateVerdict verdict = GoodEntries.judged(after, gate);
            assertThat(verdict.findings().stream().filter(f -> f.state() != State.MET).map(f -> f.check() + " " + f.state() + " " + f.says()).toList()).isEmpty();
            assertThat(verdict.released()).isTrue();
            assertThat(GoodEntries.undone(after, gate)).as("proofs of the order that a later step undid").isEmpty();
            followed[0]++;
            if (order.steps().size() > 1) {
                List<Step> other = new ArrayList<>(order.steps());
                Collections.shuffle(other, new Random(seed));
                shuffled[0]++;
                released[0] += GoodEntries.judged(GoodEntries.written(record, other), gate).released() ? 1 : 0;
            }
        });
        reporter.publishEntry("orders followed to a release", String.valueOf(followed[0]));
        reporter.publishEntry("random orders of more than one step that released", released[0] + " of " + shuffled[0]);
        assertThat(followed[0]).isPositive();
        assertThat(released[0]).as("random orders that happen to release, of " + shuffled[0]).isLessThan(shuffled[0] / 2);
    }
}
