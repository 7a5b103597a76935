package chock.assess;

import chock.assess.facts.Required;
import chock.assess.facts.Wanted;
import chock.bench.RecordMill;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.record.JobRecord;
import chock.record.RecordReader;
import chock.record.Value;
import chock.rulebook.LimitFor;
import chock.rulebook.RuleBook;
import dev.cel.bundle.Cel;
import dev.cel.bundle.CelFactory;
import dev.cel.common.types.SimpleType;
import dev.cel.runtime.CelRuntime;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What it costs to judge a record of 60 entries, stage by stage, beside the same reasoning by hand and beside bare comparisons. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class AssessBench {
    private static final Instant DAY = Instant.parse("2026-11-25T12:00:00Z");
    private static final int RECORDS = 32;

    /** What the reasoning by hand is told: which checks are asked where, what they want, and their limits. */
    record Asked(Required required, List<Wanted> wants, LimitFor limit) { }

    private RuleBook book;
    private final List<byte[]> lines = new ArrayList<>();
    private final List<JobRecord> records = new ArrayList<>();
    private final List<Conclusions> concluded = new ArrayList<>();
    private final List<List<Asked>> asked = new ArrayList<>();
    private final List<Measured> values = new ArrayList<>();
    private final List<Bounds> bounds = new ArrayList<>();
    private final List<CelRuntime.Program> programs = new ArrayList<>();
    private int turn;

    @Setup
    public void read() throws Exception {
        book = RuleBook.shipped();
        RecordMill mill = new RecordMill("lark-released.yaml", 60, 1);
        Cel cel = CelFactory.standardCelBuilder().addVar("value", SimpleType.DOUBLE).addVar("u", SimpleType.DOUBLE).build();
        for (int i = 0; i < RECORDS; i++) {
            byte[] line = mill.next().getBytes(StandardCharsets.UTF_8);
            JobRecord record = RecordReader.read("line", line, book.vocabulary(), DAY);
            Conclusions all = Assessor.conclude(record, book, DAY);
            lines.add(line);
            records.add(record);
            concluded.add(all);
            List<Asked> some = new ArrayList<>();
            PlainJudgeTest.GENERAL.forEach(check -> all.required(check).forEach(r -> some.add(new Asked(r, all.requirements().wantedFor(r), all.requirements().limitFor(r)))));
            asked.add(some);
            for (Asked one : some) {
                all.of(one.required(), chock.assess.facts.Standing.class).forEach(s -> {
                    if (one.limit() != null && one.limit().applied() != null && s.wanted().judged() && s.evidence().entry().is() instanceof Value.Amount amount) {
                        values.add(amount.measured());
                        bounds.add(one.limit().applied().bounds());
                        programs.add(program(cel, one.limit().applied().bounds()));
                    }
                });
            }
        }
    }

    private static CelRuntime.Program program(Cel cel, Bounds bounds) {
        try {
            String low = bounds.low() == null ? "true" : "value - u > " + bounds.low().value().doubleValue();
            String high = bounds.high() == null ? "true" : "value + u < " + bounds.high().value().doubleValue();
            return cel.createProgram(cel.compile(low + " && " + high).getAst());
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private int next() {
        turn = (turn + 1) % RECORDS;
        return turn;
    }

    /** A line of a stream, as it is read and found usable. */
    @Benchmark
    public JobRecord reading() {
        return RecordReader.read("line", lines.get(next()), book.vocabulary(), DAY);
    }

    /** The rules alone. */
    @Benchmark
    public Object rules() {
        return Assessor.conclude(records.get(next()), book, DAY);
    }

    /** The rules and the verdict in words. */
    @Benchmark
    public Object assess() {
        JobRecord record = records.get(next());
        return Assessor.assess(record, book, record.seeks(), DAY);
    }

    /** The general reasoning by hand, for the checks that their card alone settles, told what is asked. */
    @Benchmark
    public int byHand() {
        int at = next();
        PlainJudge judge = new PlainJudge(records.get(at), DAY, concluded.get(at).wanted());
        int sum = 0;
        for (Asked one : asked.get(at)) {
            sum += judge.state(one.required(), one.wants(), one.limit()).ordinal();
        }
        return sum;
    }

    /** Every measured value of all these records against its limit, as the rules do it: exact, with units. */
    @Benchmark
    public int comparing() {
        int inside = 0;
        for (int i = 0; i < values.size(); i++) {
            inside += bounds.get(i).standing(values.get(i)) == Bounds.Standing.INSIDE ? 1 : 0;
        }
        return inside;
    }

    /** The same comparisons in the Common Expression Language, in floating point and without units. */
    @Benchmark
    public int comparingInCel() throws Exception {
        int inside = 0;
        for (int i = 0; i < values.size(); i++) {
            Measured v = values.get(i);
            double u = v.uncertainty() == null ? 0 : v.uncertainty().value().doubleValue();
            inside += Boolean.TRUE.equals(programs.get(i).eval(Map.of("value", v.value().value().doubleValue(), "u", u))) ? 1 : 0;
        }
        return inside;
    }
}
