package chock.spark;

import static org.apache.spark.sql.types.DataTypes.BinaryType;
import static org.apache.spark.sql.types.DataTypes.IntegerType;
import static org.apache.spark.sql.types.DataTypes.LongType;
import static org.apache.spark.sql.types.DataTypes.StringType;

import chock.archive.Counted;
import chock.archive.Judging;
import chock.archive.Outcome;
import chock.archive.Tally;
import chock.archive.Terms;
import chock.archive.VerdictRow;
import chock.assess.Assessment;
import chock.assess.Impact;
import chock.report.ImpactReport;
import chock.report.JsonReport;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.Serializable;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;
import org.apache.spark.api.java.function.FlatMapFunction;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;
import org.apache.spark.sql.types.StructType;
import scala.jdk.javaapi.CollectionConverters;

/**
 * Judges the lines of one partition, on whichever executor: rows that were {@link #JUDGED}, lines that were {@link #REFUSED}
 * with their reason, lines on which the program {@link #FAILED}, and at its end what was {@link #COUNTED}. The rows of a
 * partition are written together or not at all, so the counts are those of the rows.
 *
 * @param what {@code judge}, {@code impact} or {@code holds}
 * @param table whether rows are columns of a table; otherwise each is a line of JSON
 */
record Job(String what, Terms terms, boolean table) implements FlatMapFunction<Iterator<Line>, Row> {
    static final String CAME = "came";
    static final String JUDGED = "judged";
    static final String REFUSED = "refused";
    static final String FAILED = "failed";
    static final String COUNTED = "counted";
    private static final long serialVersionUID = 1L;
    /** One for all partitions judged in a process: to read a rule book takes longer than to judge a record. */
    private static final Map<Job, Bench> BENCHES = new ConcurrentHashMap<>();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final List<StructField> REFUSAL = List.of(text("file"), number("at"), number("bytes"), text("reason"), DataTypes.createStructField("raw", BinaryType, true));

    private record Bench(Judging judging, RuleBook other) { }

    private Bench bench() {
        return what.equals("impact") ? new Bench(terms.before(), terms.inForce().book()) : new Bench(terms.judging(), null);
    }

    /** The columns of the rows. */
    StructType columns() {
        List<StructField> fields = new ArrayList<>();
        fields.add(text(CAME));
        if (!table) {
            fields.add(text("value"));
            return DataTypes.createStructType(fields);
        }
        if (what.equals("judge")) {
            List.of("record", "gate", "as_of", "verdict", "holds_until").forEach(name -> fields.add(text(name)));
            List.of("met", "fault", "doubt", "stale", "missing").forEach(name -> fields.add(DataTypes.createStructField(name, IntegerType, true)));
            fields.add(DataTypes.createStructField("not_met", DataTypes.createMapType(StringType, StringType), true));
            List.of("closed_by", "rule_book_faults").forEach(name -> fields.add(DataTypes.createStructField(name, DataTypes.createArrayType(StringType), true)));
            List.of("rule_book", "digest", "house", "marque").forEach(name -> fields.add(text(name)));
            fields.add(DataTypes.createStructField("built", IntegerType, true));
            List.of("kind", "territory").forEach(name -> fields.add(text(name)));
        } else if (what.equals("impact")) {
            List.of("record", "gate", "as_of", "before", "after", "check", "finding_before", "finding_after", "says").forEach(name -> fields.add(text(name)));
        }
        fields.addAll(REFUSAL);
        fields.add(text("value"));
        return DataTypes.createStructType(fields);
    }

    private static StructField text(String name) {
        return DataTypes.createStructField(name, StringType, true);
    }

    private static StructField number(String name) {
        return DataTypes.createStructField(name, LongType, true);
    }

    @Override
    public Iterator<Row> call(Iterator<Line> lines) {
        Bench bench = BENCHES.computeIfAbsent(this, Job::bench);
        Tally tally = new Tally();
        return new Rows(lines, line -> rows(line, bench, tally), () -> counts(tally));
    }

    private List<Row> rows(Line line, Bench bench, Tally tally) {
        if (what.equals("impact")) {
            return rows(line, bench.judging.compare(line.where(), line.whole(), bench.other), tally, this::compared);
        }
        return rows(line, bench.judging.assess(line.where(), line.whole()), tally, what.equals("judge") ? this::judged : this::held);
    }

    /** What is made of one result. */
    private interface Made<T> {
        List<Row> of(T result, Tally tally);
    }

    private <T> List<Row> rows(Line line, Outcome<T> came, Tally tally, Made<T> made) {
        if (came.result() == null) {
            return without(line, came, tally);
        }
        try {
            return made.of(came.result(), tally);
        } catch (RuntimeException | StackOverflowError e) {
            return without(line, new Outcome<>(null, null, e), tally);
        }
    }

    private List<Row> judged(Assessment assessment, Tally tally) {
        List<Row> rows = new ArrayList<>();
        if (table) {
            for (VerdictRow row : VerdictRow.of(assessment)) {
                rows.add(row(JUDGED, List.of(), row.record(), row.gate(), row.asOf(), row.verdict(), row.holdsUntil(), row.met(), row.fault(), row.doubt(), row.stale(), row.missing(),
                        CollectionConverters.asScala(row.notMet()), row.closedBy().toArray(String[]::new), row.ruleBookFaults().toArray(String[]::new),
                        row.ruleBook(), row.digest(), row.house(), row.of().marque(), row.of().built(), row.of().kind(), row.of().territory()));
            }
        } else {
            rows.add(json(JUDGED, JsonReport.line(assessment)));
        }
        tally.judged(assessment);
        return rows;
    }

    private List<Row> held(Assessment assessment, Tally tally) {
        tally.judged(assessment);
        tally.held(assessment);
        return List.of();
    }

    private List<Row> compared(List<Impact> impacts, Tally tally) {
        List<Row> rows = new ArrayList<>();
        for (Impact impact : impacts) {
            if (!table) {
                rows.add(json(JUDGED, ImpactReport.line(impact)));
                continue;
            }
            List<Impact.Change> changes = impact.findings().isEmpty() ? List.of(new Impact.Change(null, null, null, null)) : impact.findings();
            changes.forEach(change -> rows.add(row(JUDGED, List.of(), impact.record().id(), impact.gate().id(), JsonReport.moment(impact.asOf(), impact.record()),
                    Tally.word(impact.before()), Tally.word(impact.after()), change.check(), change.before() == null ? null : change.before().id(),
                    change.after() == null ? null : change.after().id(), change.says())));
        }
        tally.compared(impacts);
        return rows;
    }

    private List<Row> without(Line line, Outcome<?> came, Tally tally) {
        tally.without(came);
        String kind = came.failed() == null ? REFUSED : FAILED;
        String reason = came.failed() == null ? came.refused().getMessage() : "chock itself failed: " + came.failed();
        if (table) {
            return List.of(row(kind, List.of(line.file(), line.at(), line.length(), reason, line.bytes())));
        }
        ObjectNode node = JSON.createObjectNode().put("file", line.file()).put("at", line.at()).put("bytes", line.length()).put("reason", reason).put("raw", line.bytes());
        return List.of(json(kind, node.toString()));
    }

    private List<Row> counts(Tally tally) {
        List<Row> rows = new ArrayList<>();
        tally.counts().forEach((counted, times) -> {
            String value = node(counted).put("times", times).toString();
            if (table) {
                Object[] cells = new Object[columns().length()];
                cells[0] = COUNTED;
                cells[cells.length - 1] = value;
                rows.add(RowFactory.create(cells));
            } else {
                rows.add(json(COUNTED, value));
            }
        });
        return rows;
    }

    private static ObjectNode node(Counted counted) {
        ObjectNode node = JSON.createObjectNode().put("what", counted.what()).put("gate", counted.gate()).put("check", counted.check()).put("was", counted.was()).put("is", counted.is());
        if (counted.of() != null) {
            node.put("marque", counted.of().marque()).put("built", counted.of().built()).put("kind", counted.of().kind()).put("territory", counted.of().territory());
        }
        return node;
    }

    private static Row json(String came, String line) {
        return RowFactory.create(came, line.strip());
    }

    /** A row of the table: first what came of it, then the cells of a result, then those of a refusal, as many as there are. */
    private Row row(String came, List<Object> refusal, Object... result) {
        int width = columns().length();
        Object[] cells = new Object[width];
        cells[0] = came;
        System.arraycopy(result, 0, cells, 1, result.length);
        for (int i = 0; i < refusal.size(); i++) {
            cells[width - 1 - REFUSAL.size() + i] = refusal.get(i);
        }
        return RowFactory.create(cells);
    }

    /** Rows of one line after the other, so that no partition is held in memory, and behind the last what was counted. */
    private static final class Rows implements Iterator<Row> {
        private final Iterator<Line> lines;
        private final Function<Line, List<Row>> each;
        private Supplier<List<Row>> atEnd;
        private Iterator<Row> ready = List.<Row>of().iterator();

        Rows(Iterator<Line> lines, Function<Line, List<Row>> each, Supplier<List<Row>> atEnd) {
            this.lines = lines;
            this.each = each;
            this.atEnd = atEnd;
        }

        @Override
        public boolean hasNext() {
            while (!ready.hasNext()) {
                if (lines.hasNext()) {
                    ready = each.apply(lines.next()).iterator();
                } else if (atEnd != null) {
                    ready = atEnd.get().iterator();
                    atEnd = null;
                } else {
                    return false;
                }
            }
            return true;
        }

        @Override
        public Row next() {
            if (!hasNext()) {
                throw new NoSuchElementException();
            }
            return ready.next();
        }
    }
}
