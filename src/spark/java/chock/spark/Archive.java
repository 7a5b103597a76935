package chock.spark;

import static org.apache.spark.sql.functions.col;
import static org.apache.spark.sql.functions.sum;

import chock.record.UnusableInput;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.apache.spark.sql.AnalysisException;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SaveMode;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;

/**
 * An archive judged slice by slice. What is done is done: a run that was broken off, or is begun again with more files, judges
 * only what is not.
 */
final class Archive {
    private static final ObjectMapper JSON = new ObjectMapper();
    /** Partitions of a slice for each core: some minutes of work. A driver that dies loses one slice at most. */
    private static final long PARTITIONS_PER_CORE = 64;
    private static final List<String> COUNTED_BY = List.of("what", "gate", "check", "was", "is", "marque", "built", "kind", "territory");

    private final SparkSession spark;
    private final Job job;
    private final OutFolder out;
    private final Consumer<String> say;

    Archive(SparkSession spark, Job job, OutFolder out, Consumer<String> say) {
        this.spark = spark;
        this.job = job;
        this.out = out;
        this.say = say;
    }

    /**
     * Judges what is not judged yet.
     *
     * @return what was counted over the whole folder
     */
    JsonNode run(Inputs inputs, List<Slice.Source> there) {
        List<Slice> planned = new ArrayList<>(out.planned());
        List<Slice.Source> fresh = Inputs.fresh(there, planned, source -> planned.stream().anyMatch(slice -> slice.sources().contains(source) && out.done(slice).isPresent()));
        long bytes = PARTITIONS_PER_CORE * inputs.partitionBytes() * Math.max(2, spark.sparkContext().defaultParallelism());
        List<Slice> more = Inputs.slices(fresh, planned.size() + 1, bytes);
        long left = planned.stream().filter(slice -> out.done(slice).isEmpty()).count();
        say.accept(there.size() + (there.size() == 1 ? " file, " : " files, ") + fresh.size() + " not planned before; " + (left + more.size()) + (left + more.size() == 1 ? " slice" : " slices") + " to judge.");
        for (Slice slice : planned) {
            if (out.done(slice).isEmpty()) {
                judge(slice, inputs);
            }
        }
        for (Slice slice : more) {
            out.plan(slice);
            judge(slice, inputs);
        }
        planned.addAll(more);
        if (job.what().equals("holds")) {
            table(planned);
        }
        return counts(planned);
    }

    private void judge(Slice slice, Inputs inputs) {
        long begun = System.nanoTime();
        Dataset<Row> rows = spark.createDataFrame(inputs.lines(slice).mapPartitions(job), job.columns());
        if (job.table()) {
            rows.write().mode(SaveMode.Overwrite).partitionBy(Job.CAME).parquet(out.rows(slice));
        } else {
            rows.write().mode(SaveMode.Overwrite).partitionBy(Job.CAME).text(out.rows(slice));
        }
        ArrayNode counts = JSON.createArrayNode();
        counted(slice).ifPresent(all -> summed(all.filter(col("what").notEqual("held").and(col("what").notEqual("held-at-all")))).collectAsList().forEach(row -> counts.add(node(row))));
        out.done(slice, counts);
        long records = times(counts, "record");
        double seconds = (System.nanoTime() - begun) / 1e9;
        say.accept(String.format(Locale.ROOT, "Slice %s: %d records in %.1f s, %.0f a second.", slice.name(), records, seconds, records / seconds));
    }

    /** The counts of a slice, one row for each partition; empty when there was nothing in it. */
    private Optional<Dataset<Row>> counted(Slice slice) {
        try {
            String from = out.rows(slice) + "/" + Job.CAME + "=" + Job.COUNTED;
            Dataset<String> values = job.table() ? spark.read().parquet(from).select("value").as(Encoders.STRING()) : spark.read().textFile(from);
            return Optional.of(spark.read().schema(countedColumns()).json(values));
        } catch (Exception e) {
            // Scala's compiler does not say that this is thrown, so Java's does not let it be caught by name.
            if (e instanceof AnalysisException) {
                return Optional.empty();
            }
            throw e;
        }
    }

    private static StructType countedColumns() {
        StructType columns = new StructType();
        for (String name : COUNTED_BY) {
            columns = columns.add(name, name.equals("built") ? DataTypes.IntegerType : DataTypes.StringType);
        }
        return columns.add("times", DataTypes.LongType);
    }

    private static Dataset<Row> summed(Dataset<Row> counts) {
        Column[] by = COUNTED_BY.stream().map(functions::col).toArray(Column[]::new);
        return counts.groupBy(by).agg(sum("times").as("times")).orderBy(by);
    }

    private static ObjectNode node(Row row) {
        ObjectNode node = JSON.createObjectNode();
        for (String name : List.of("what", "gate", "check", "was", "is")) {
            if (row.getAs(name) != null) {
                node.put(name, row.<String>getAs(name));
            }
        }
        return node.put("times", row.<Long>getAs("times"));
    }

    static long times(JsonNode counts, String what) {
        long times = 0;
        for (JsonNode one : counts) {
            times += one.path("what").asText().equals(what) ? one.path("times").asLong() : 0;
        }
        return times;
    }

    /** What holds machines, over all slices: one row for each gate, check, finding, make, year, kind and territory. */
    private void table(List<Slice> slices) {
        Dataset<Row> all = null;
        for (Slice slice : slices) {
            Optional<Dataset<Row>> counted = counted(slice);
            if (counted.isPresent()) {
                all = all == null ? counted.get() : all.union(counted.get());
            }
        }
        if (all == null) {
            return;
        }
        Dataset<Row> held = summed(all.filter(col("what").equalTo("held").or(col("what").equalTo("held-at-all"))))
                .withColumnRenamed("was", "finding").withColumnRenamed("times", "machines").drop("what", "is");
        if (job.table()) {
            held.write().mode(SaveMode.Overwrite).parquet(out.at("holds"));
        } else {
            held.write().mode(SaveMode.Overwrite).option("ignoreNullFields", "false").json(out.at("holds"));
        }
    }

    /** The checks that hold most machines at any gate. */
    List<Row> most(int rows) {
        Dataset<Row> held = job.table() ? spark.read().parquet(out.at("holds")) : spark.read().schema("gate STRING, check STRING, machines LONG").json(out.at("holds"));
        return held.filter(col("gate").isNull()).groupBy("check").agg(sum("machines").as("machines")).orderBy(col("machines").desc(), col("check")).limit(rows).collectAsList();
    }

    private JsonNode counts(List<Slice> slices) {
        TreeMap<String, Long> sums = new TreeMap<>();
        for (Slice slice : slices) {
            for (JsonNode one : out.done(slice).orElseThrow(() -> UnusableInput.of(slice.name(), "this slice is not done", ""))) {
                ObjectNode key = one.deepCopy();
                long times = key.remove("times").asLong();
                sums.merge(key.toString(), times, Long::sum);
            }
        }
        ArrayNode all = JSON.createArrayNode();
        sums.forEach((key, times) -> all.add(((ObjectNode) read(key)).put("times", times)));
        return all;
    }

    private static JsonNode read(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("what was written just now can be read", e);
        }
    }
}
