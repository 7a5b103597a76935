package chock.useful;

import static org.assertj.core.api.Assertions.assertThat;

import chock.assess.GateVerdict;
import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Step;
import chock.record.Gate;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
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

    /**
     * Whatever was found bad, no step takes away what an earlier one proved, and nothing is asked for twice. A share is tried in
     * every build, all with {@code -Dchock.ways=single}.
     */
    @Test
    void noStepUndoesAnEarlierOne() {
        List<SingleFaults.Fault> faults = UsefulNumbers.faults();
        int every = System.getProperty("chock.ways", "").equals("single") ? 1 : 40;
        List<SingleFaults.Fault> tried = IntStream.range(0, faults.size()).filter(i -> i % every == 0).mapToObj(faults::get).toList();
        assertThat(tried).hasSizeGreaterThan(10);
        assertThat(tried.parallelStream().flatMap(TradeOrderTest::doneTwice).toList()).isEmpty();
    }

    private static Stream<String> doneTwice(SingleFaults.Fault fault) {
        return fault.closed().stream().map(GateVerdict::gate).flatMap(gate -> {
            List<Step> steps = fault.record().order(gate).steps();
            List<String> keys = steps.stream().filter(s -> s.what() != null)
                    .map(s -> s.point() + " " + s.what() + " " + s.needs()).toList();
            Stream<String> twice = keys.stream().filter(key -> keys.indexOf(key) != keys.lastIndexOf(key)).map(key -> "asked for twice: " + key);
            Stream<String> undone = Orders.undoneLater(fault.record(), gate, steps).stream();
            return Stream.concat(twice, undone).map(wrong -> fault.words() + " at " + gate.id() + ": " + wrong);
        });
    }

    /** What one look answers stands together, each question with an answer of its own; work belongs to no look. */
    @Test
    void whatOneLookAnswersStandsTogether() {
        OrderOfWork all = SINGLE.with(SINGLE.lines().subList(0, 1)).order(Gate.ROAD_TEST);
        Map<String, List<Step>> looks = all.steps().stream().filter(s -> s.look() != null)
                .collect(Collectors.groupingBy(s -> s.look().name() + " " + s.look().point()));
        assertThat(looks).hasSizeGreaterThan(30);
        looks.forEach((look, answers) -> {
            assertThat(answers).as(look).extracting(Step::number).containsOnly(answers.get(0).number());
            assertThat(answers).as(look).extracting(s -> s.point() + " " + s.what()).doesNotHaveDuplicates().hasSizeGreaterThan(1);
            assertThat(answers).as(look).allMatch(s -> s.kind().compareTo(OrderOfWork.Kind.DO) > 0);
        });
        assertThat(all.steps()).extracting(Step::number).isSorted();
        assertThat(all.together()).hasSizeLessThan(all.steps().size() * 2 / 3);
    }

    /** The other way round most orders would: the law above could be broken. */
    @Test
    void theSameStepsBackwardsDo() {
        HonestRecord record = worked(List.of("rear-wheel/tube replaced"));
        List<Step> backwards = new ArrayList<>(order(record));
        Collections.reverse(backwards);
        assertThat(Orders.undoneLater(record, Gate.ROAD_TEST, order(record))).isEmpty();
        assertThat(Orders.undoneLater(record, Gate.ROAD_TEST, backwards)).isNotEmpty();
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
