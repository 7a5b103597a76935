package chock.spark;

import chock.record.UnusableInput;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocatedFileStatus;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RemoteIterator;
import org.apache.hadoop.io.NullWritable;
import org.apache.hadoop.mapreduce.Job;
import org.apache.hadoop.mapreduce.lib.input.FileInputFormat;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.apache.spark.sql.functions;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructField;

/** Where records come from: files of lines, and tables in Parquet with a column of records. */
final class Inputs {
    /** Size of a partition. It is judged again when its executor dies, so it is small: some 600 records of 12 kB. */
    private static final long PARTITION_BYTES = 8L << 20;
    private static final String SETTING = "spark.chock.partitionBytes";
    private static final String TABLE = ".parquet";
    private static final String STORE = "jdbc:";
    private static final Map<String, String> DRIVERS = Map.of("jdbc:postgresql:", "org.postgresql.Driver", "jdbc:sqlite:", "org.sqlite.JDBC");
    /**
     * Every machine of a board as the record it is kept as, up to the version it had when this was asked. A machine is asked for
     * in the same part of the store each time, since the moment it was first written does not change. Read by SQLite from 3.44 on
     * and by PostgreSQL alike.
     */
    private static final String MACHINES = """
            (SELECT m.id AS machine, m.version AS version, began.written_at AS began,
              substr(s.json, 1, length(s.json) - 1) || ',"entries":[' || COALESCE((SELECT string_agg(e.json, ',' ORDER BY e.seq)
                FROM entry e WHERE e.machine = m.id AND e.version <= m.version), '') || ']}' AS record
            FROM machine m
            JOIN sheet began ON began.machine = m.id AND began.version = 1
            JOIN sheet s ON s.machine = m.id AND s.version = (SELECT MAX(t.version) FROM sheet t WHERE t.machine = m.id AND t.version <= m.version)) machines""";
    private static final Set<String> LINES = Set.of("ndjson", "jsonl", "json");
    private static final Set<String> PACKED = Set.of("gz", "bz2");

    private final SparkSession spark;
    private final String column;
    private final long partitionBytes;
    private final Map<String, String> stores = new TreeMap<>();

    /** @param column name of the column of records in a table, or null for the only one of text or bytes */
    Inputs(SparkSession spark, String column) {
        this.spark = spark;
        this.column = column;
        this.partitionBytes = spark.sparkContext().getConf().getLong(SETTING, PARTITION_BYTES);
    }

    /** Bytes that are judged in one go. */
    long partitionBytes() {
        return partitionBytes;
    }

    /**
     * Every file named, in order of path: files as they are, folders with all files in them, patterns.
     *
     * @throws UnusableInput when one is not there, or it is not known what it is
     */
    List<Slice.Source> list(List<String> names) {
        Configuration conf = spark.sparkContext().hadoopConfiguration();
        TreeMap<String, Slice.Source> found = new TreeMap<>();
        for (String name : names) {
            if (name.startsWith(STORE)) {
                // What stands behind the question mark is how to get in, and is written nowhere.
                String shown = name.replaceFirst("\\?.*", "");
                driver(shown);
                stores.put(shown, name);
                found.put(shown, new Slice.Source(shown, 0, 0));
                continue;
            }
            try {
                Path path = new Path(name);
                FileSystem files = path.getFileSystem(conf);
                FileStatus[] matched = files.exists(path) ? new FileStatus[] {files.getFileStatus(path)} : files.globStatus(path);
                if (matched == null || matched.length == 0) {
                    throw UnusableInput.of(name, "there is no such file or folder", "Name files of job records, one in JSON a line, or tables in Parquet");
                }
                for (FileStatus one : matched) {
                    if (one.isDirectory()) {
                        inside(files, one, found);
                    } else {
                        add(one, found);
                    }
                }
            } catch (IOException | IllegalArgumentException e) {
                throw UnusableInput.of(name, "it cannot be read: " + e.getMessage(), "Name a file or folder that the driver and every executor can read");
            }
        }
        if (found.isEmpty()) {
            throw UnusableInput.of(String.join(", ", names), "there is no file in it", "Name files of job records, one in JSON a line, or tables in Parquet");
        }
        return List.copyOf(found.values());
    }

    private static void inside(FileSystem files, FileStatus folder, TreeMap<String, Slice.Source> found) throws IOException {
        RemoteIterator<LocatedFileStatus> all = files.listFiles(folder.getPath(), true);
        while (all.hasNext()) {
            FileStatus file = all.next();
            String name = file.getPath().getName();
            if (name.startsWith(".") || name.startsWith("_")) {
                continue;
            }
            if (!isTable(file.getPath().toString()) && !LINES.contains(ending(name))) {
                throw UnusableInput.of(file.getPath().toString(), "it is not known what this is", "In a folder, lines of JSON end with .ndjson, .jsonl or .json, also with .gz or .bz2 behind it, and tables with .parquet");
            }
            add(file, found);
        }
    }

    private static String ending(String name) {
        String[] parts = name.toLowerCase(Locale.ROOT).split("\\.");
        String last = parts[parts.length - 1];
        return PACKED.contains(last) && parts.length > 2 ? parts[parts.length - 2] : last;
    }

    private static void add(FileStatus file, TreeMap<String, Slice.Source> found) {
        String path = file.getPath().toString();
        if (path.indexOf('\n') >= 0) {
            throw UnusableInput.of(path, "there is a line end in its name", "Give it another name");
        }
        found.put(path, new Slice.Source(path, file.getLen(), file.getModificationTime()));
    }

    private static boolean isTable(String path) {
        return path.endsWith(TABLE);
    }

    /** Files that are judged together, each whole. */
    static List<Slice> slices(List<Slice.Source> sources, int first, long bytes) {
        List<Slice> slices = new ArrayList<>();
        List<Slice.Source> together = new ArrayList<>();
        long sum = 0;
        for (Slice.Source source : sources) {
            if (!together.isEmpty() && sum + source.length() > bytes) {
                slices.add(new Slice(first + slices.size(), List.copyOf(together)));
                together.clear();
                sum = 0;
            }
            together.add(source);
            sum += source.length();
        }
        if (!together.isEmpty()) {
            slices.add(new Slice(first + slices.size(), List.copyOf(together)));
        }
        return slices;
    }

    /** The lines of these files, in partitions that are judged side by side. */
    JavaRDD<Line> lines(Slice slice) {
        List<Slice.Source> texts = slice.sources().stream().filter(source -> !isTable(source.path()) && !isStore(source.path())).toList();
        List<Slice.Source> tables = slice.sources().stream().filter(source -> isTable(source.path())).toList();
        JavaRDD<Line> lines = texts.isEmpty() ? null : texts(texts);
        for (Slice.Source table : tables) {
            JavaRDD<Line> more = table(table);
            lines = lines == null ? more : lines.union(more);
        }
        for (Slice.Source store : slice.sources().stream().filter(source -> isStore(source.path())).toList()) {
            JavaRDD<Line> more = store(store.path());
            lines = lines == null ? more : lines.union(more);
        }
        return lines;
    }

    private JavaRDD<Line> texts(List<Slice.Source> sources) {
        try {
            JavaSparkContext context = JavaSparkContext.fromSparkContext(spark.sparkContext());
            Job job = Job.getInstance(context.hadoopConfiguration());
            FileInputFormat.setMaxInputSplitSize(job, partitionBytes);
            job.getConfiguration().set(LineReading.FILES, String.join("\n", sources.stream().map(Slice.Source::path).toList()));
            JavaRDD<Line> lines = context.newAPIHadoopRDD(job.getConfiguration(), LineReading.class, Line.class, NullWritable.class).keys();
            long bytes = sources.stream().mapToLong(Slice.Source::length).sum();
            // Many small files, several in one partition: to begin a partition takes as long as to judge a record.
            int wanted = Math.toIntExact(Math.max(4L * context.defaultParallelism(), bytes / partitionBytes + 1));
            return lines.getNumPartitions() > 2 * wanted ? lines.coalesce(wanted) : lines;
        } catch (IOException e) {
            throw UnusableInput.of(sources.get(0).path(), "it cannot be read: " + e.getMessage(), "");
        }
    }

    private JavaRDD<Line> table(Slice.Source source) {
        Dataset<Row> rows = spark.read().parquet(source.path());
        String name = column == null ? only(source.path(), rows) : column;
        if (List.of(rows.columns()).stream().noneMatch(name::equals)) {
            throw UnusableInput.of(source.path(), "there is no column " + name, "Name one of " + String.join(", ", rows.columns()) + " with --column");
        }
        Column record = rows.col(name).cast(DataTypes.BinaryType);
        Dataset<Row> records = rows.select(functions.coalesce(record, functions.lit(new byte[0])), functions.col("_metadata.row_index"));
        // A group of rows in a table is read in one partition, however long it is; packed as it is, it may be five times as long.
        int partitions = Math.toIntExact(5 * source.length() / partitionBytes + 1);
        Dataset<Row> spread = partitions > records.javaRDD().getNumPartitions() ? records.repartition(partitions) : records;
        String file = source.path();
        return spread.javaRDD().map(row -> LineReading.of(file, row.getLong(1), row.getAs(0), "row"));
    }

    private static boolean isStore(String path) {
        return path.startsWith(STORE);
    }

    private static String driver(String shown) {
        return DRIVERS.entrySet().stream().filter(one -> shown.startsWith(one.getKey())).map(Map.Entry::getValue).findFirst()
                .orElseThrow(() -> UnusableInput.of(shown, "this kind of store is not known", "Name jdbc:postgresql://HOST/DATABASE or jdbc:sqlite:FILE"));
    }

    private JavaRDD<Line> store(String shown) {
        String url = stores.get(shown);
        if (url == null) {
            throw UnusableInput.of(shown, "a run that was broken off was judging this store", "Name it again with --in");
        }
        Properties how = new Properties();
        // Else the driver of PostgreSQL holds all machines of a part in memory.
        how.setProperty("fetchsize", "100");
        // Named, since it was loaded beside Spark, where nobody looks for it.
        how.setProperty("driver", driver(shown));
        // SQLite says of a text that was put together that it is a number.
        how.setProperty("customSchema", "machine STRING, version BIGINT, record STRING");
        int parts = 4 * Math.max(2, spark.sparkContext().defaultParallelism());
        String[] each = IntStream.range(0, parts).mapToObj(part -> "began % " + parts + " = " + part).toArray(String[]::new);
        Dataset<Row> machines = spark.read().jdbc(url, MACHINES, each, how).select("machine", "version", "record");
        return machines.javaRDD().map(row -> LineReading.of(shown + ", machine " + row.getString(0), ((Number) row.get(1)).longValue(), row.getString(2).getBytes(StandardCharsets.UTF_8), "version"));
    }

    private static String only(String file, Dataset<Row> rows) {
        List<String> able = Arrays.stream(rows.schema().fields())
                .filter(field -> field.dataType().equals(DataTypes.StringType) || field.dataType().equals(DataTypes.BinaryType)).map(StructField::name).toList();
        if (able.size() != 1) {
            throw UnusableInput.of(file, able.isEmpty() ? "it has no column of text or bytes" : "it is not known which column holds the records", "Name one of " + String.join(", ", rows.columns()) + " with --column");
        }
        return able.get(0);
    }

    /** What is planned of files that are there now, and were not planned before. */
    static List<Slice.Source> fresh(List<Slice.Source> there, List<Slice> planned, Predicate<Slice.Source> done) {
        TreeMap<String, Slice.Source> known = new TreeMap<>();
        planned.forEach(slice -> slice.sources().forEach(source -> known.put(source.path(), source)));
        List<Slice.Source> fresh = new ArrayList<>();
        for (Slice.Source source : there) {
            Slice.Source before = known.get(source.path());
            if (before == null) {
                fresh.add(source);
            } else if (isStore(source.path()) && done.test(source)) {
                throw UnusableInput.of(source.path(), "this store was judged into this folder already, and may have been written to since", "Judge into a new folder");
            } else if (!before.equals(source)) {
                throw UnusableInput.of(source.path(), "it was written to since it was judged into this folder", "Judge into a new folder; write new records into a new file");
            }
        }
        fresh.sort(Comparator.comparing(Slice.Source::path));
        return fresh;
    }
}
