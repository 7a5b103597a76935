package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.OrderOfWork.Step;
import chock.record.Gate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The order of work is one a fitter would follow: what is closed comes before the trial that depends on it. */
@Tag("slow")
class TradeOrderTest {
    private static final HonestRecord SINGLE = UsefulNumbers.single("road-test");

    private record Job(List<String> works, List<String> steps) {
        @Override
        public String toString() {
            return String.join(", ", works);
        }
    }

    static Stream<Job> jobs() throws IOException {
        List<Job> jobs = new ArrayList<>();
        for (String line : Files.readAllLines(Path.of("src/test/resources/useful/trade-orders.txt"))) {
            String rest = line.replaceFirst("^\\S+ *", "");
            switch (line.replaceFirst(" .*", "")) {
                case "work" -> {
                    if (jobs.isEmpty() || !jobs.get(jobs.size() - 1).steps.isEmpty()) {
                        jobs.add(new Job(new ArrayList<>(), new ArrayList<>()));
                    }
                    jobs.get(jobs.size() - 1).works.add(rest);
                }
                case "then" -> jobs.get(jobs.size() - 1).steps.add(rest);
                default -> assertThat(line).matches("#.*|machine two-stroke|");
            }
        }
        return jobs.stream();
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void theOrderIsTheOneOfTheTrade(Job job) {
        List<String> asked = keys(order(worked(job.works)));
        assertThat(asked).as("asked for after " + job).containsAll(job.steps);
        List<String> found = asked.stream().filter(job.steps::contains).distinct().toList();
        assertThat(found).as("order after " + job).isEqualTo(job.steps);
    }

    /** Every fault in turn, a sample of them: no step takes away what an earlier one proved, and nothing is asked for twice. */
    @Test
    void noStepUndoesAnEarlierOne() {
        List<SingleFaults.Fault> faults = SingleFaults.of(SINGLE);
        int every = Integer.getInteger("chock.faults.every", 25);
        List<String> wrong = IntStream.range(0, faults.size()).filter(i -> i % every == 0).mapToObj(faults::get).flatMap(fault -> {
            HonestRecord record = fault.record();
            List<String> keys = record.order(Gate.ROAD_TEST).steps().stream().filter(s -> s.what() != null).map(s -> s.point() + " " + s.what() + " " + s.needs()).toList();
            List<String> twice = keys.stream().filter(key -> keys.indexOf(key) != keys.lastIndexOf(key)).map(key -> fault.words() + ": twice " + key).toList();
            Orders.Outcome outcome = Orders.carriedOutInTurns(record, Gate.ROAD_TEST, false);
            return outcome.released() ? twice.stream() : Stream.concat(twice.stream(), Stream.of(fault.words() + ": " + outcome.open()));
        }).toList();
        assertThat(faults).hasSizeGreaterThan(100);
        assertThat(wrong).isEmpty();
    }

    private static HonestRecord worked(List<String> works) {
        List<HonestRecord.Line> lines = new ArrayList<>();
        for (String work : works) {
            String[] at = work.split(" ");
            Bench.Result written = Bench.done(at[1]);
            lines.add(new HonestRecord.Line("", null, "tom", at[0], "done", at[1], written.is(), written.with(), Map.of()));
        }
        return HarmlessChange.later(SINGLE, lines);
    }

    private static List<Step> order(HonestRecord record) {
        return record.order(Gate.ROAD_TEST).steps();
    }

    private static List<String> keys(List<Step> steps) {
        return steps.stream().filter(s -> s.what() != null).map(s -> s.point() + " " + s.what()).toList();
    }
}
