package chock.spark;

import chock.archive.AsOf;
import chock.archive.SignedRules;
import chock.archive.Terms;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.signoff.RulePack;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.apache.spark.SparkConf;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The program that {@code chock-spark} runs on Apache Spark. Exit status as of {@code chock}: the worst of all lines. */
@Command(name = "chock-spark", sortOptions = false, description = "Judge an archive of job records on Apache Spark, on one machine or on many.",
        footer = {"", "Exit status: 0 all released, 1 any is blocked (impact: a release would be", "lost), 2 a line or an option cannot be used, 3 chock itself failed.",
            "This is a working aid. Local law and the licensed inspector or technician decide."})
public final class ChockSpark implements Callable<Integer> {
    private static final int BLOCKED = 1;
    private static final int UNUSABLE = 2;
    private static final int PROGRAM_FAILED = 3;
    private static final int SHOWN = 20;
    private static final int LONGEST_WORDS = 300;
    private static final List<String> JOBS = List.of("judge", "impact", "holds");
    private static final ObjectMapper JSON = new ObjectMapper();

    private final PrintStream print = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    private final PrintStream say = new PrintStream(System.err, true, StandardCharsets.UTF_8);

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Parameters(arity = "1", paramLabel = "JOB", description = "judge: the verdict on every record at every gate. impact: what other limits, a house or another rule book would change, gate by gate. holds: what holds most machines, by make, year, kind and territory.")
    private String what;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", required = true,
            description = "Judge as of this moment, such as 2026-11-25T12:00; without a zone, on the clock of each record's workshop.")
    private String asOf;

    @Option(names = "--in", paramLabel = "PATH", required = true, arity = "1..*", description = "Files, folders or patterns: job records in JSON, one a line, or tables in Parquet; or the store of a board as jdbc:postgresql://HOST/DATABASE?user=…&password=… or jdbc:sqlite:FILE.")
    private List<String> in;

    @Option(names = "--out", paramLabel = "PATH", required = true, description = "Folder for what comes of it; the same again judges only what is new.")
    private String out;

    @Option(names = "--gate", paramLabel = "GATE", description = "Gate to judge; may be given several times. Default: the gates each record seeks.")
    private List<String> gates = List.of();

    @Option(names = "--house", paramLabel = "DIR", description = "Also hold it against the rules of this house. Its *.drl files are code, and run on every machine: name only a folder you trust.")
    private String house;

    @Option(names = "--rule-book", paramLabel = "FILE", description = "Judge by this rule book, made by 'chock rules pack', instead of the one inside the program. Its rules are code and run on every machine, so it is read only when signed by a rule author or a lead on the trust list.")
    private String pack;

    @Option(names = "--trust", paramLabel = "FILE", description = "With --rule-book: trust list to check its signature with.")
    private String trust;

    @Option(names = "--set", paramLabel = "LIMIT=VALUE", description = "Try this value, such as tyres.age=8y; may be given several times. What a law sets stays.")
    private List<String> sets = List.of();

    @Option(names = "--format", paramLabel = "FORMAT", defaultValue = "json", description = "Rows as json or parquet. Default: json.")
    private String format;

    @Option(names = "--column", paramLabel = "NAME", description = "Column of a table that holds the records. Default: the only one of text or bytes.")
    private String column;

    @Option(names = "--master", paramLabel = "URL", description = "The cluster, such as spark://host:7077. Default: every core of this machine.")
    private String master;

    @Option(names = "--spark", paramLabel = "KEY=VALUE", description = "A setting of Spark, such as spark.executor.memory=4g; may be given several times.")
    private Map<String, String> settings = new TreeMap<>();

    private ChockSpark() { }

    /** Runs one job and ends the process with its exit status. */
    public static void main(String[] args) {
        ChockSpark program = new ChockSpark();
        int status = new CommandLine(program).setUsageHelpWidth(80).setParameterExceptionHandler((e, rest) -> program.refuse(e.getMessage() + "\nTry 'chock-spark --help'."))
                .setExecutionExceptionHandler((e, line, result) -> program.ended(e)).execute(args);
        program.print.flush();
        System.exit(status);
    }

    private int ended(Exception e) {
        if (e instanceof UnusableInput) {
            return refuse(e.getMessage());
        }
        say.println("chock-spark itself failed: " + first(e));
        return PROGRAM_FAILED;
    }

    /** The first line of what was at the root of it. */
    private static String first(Throwable e) {
        Throwable cause = e;
        while (cause.getCause() != null && cause.getCause() != cause) {
            cause = cause.getCause();
        }
        String first = cause.toString().lines().findFirst().orElse("");
        return first.length() > LONGEST_WORDS ? first.substring(0, LONGEST_WORDS) + " …" : first;
    }

    private int refuse(String why) {
        say.println(why);
        return UNUSABLE;
    }

    @Override
    public Integer call() throws IOException {
        Terms terms = terms();
        Terms.InForce rules = terms.inForce();
        RuleBook book = rules.book();
        List<String> changes = rules.changes();
        if (what.equals("impact") && changes.isEmpty()) {
            throw UnusableInput.of("impact", "it is not said what is to be tried", "Give --set LIMIT=VALUE, --house DIR or --rule-book FILE");
        }
        Job job = new Job(what, terms, format.equals("parquet"));
        try (SparkSession spark = session(); OutFolder folder = new OutFolder(out, spark.sparkContext().hadoopConfiguration())) {
            Inputs inputs = new Inputs(spark, column);
            List<Slice.Source> there = inputs.list(in);
            folder.open(about(terms, book));
            Archive archive = new Archive(spark, job, folder, say::println);
            JsonNode counts = archive.run(inputs, there);
            ObjectNode summary = about(terms, book);
            changes.forEach(summary.putArray("tried")::add);
            if (terms.rules() != null) {
                RulePack from = terms.rules().open();
                summary.putObject("rulePack").put("file", pack).put("digest", from.digest()).put("signedBy", from.signedBy()).put("madeBy", from.madeBy());
            }
            summary.set("counts", counts);
            folder.put("summary.json", summary.toPrettyString() + "\n");
            tell(counts, changes, book, archive);
            return status(counts);
        }
    }

    private Terms terms() {
        if (!JOBS.contains(what)) {
            throw UnusableInput.of(what, "there is no such job", "Give one of " + String.join(", ", JOBS));
        }
        if (!List.of("json", "parquet").contains(format)) {
            throw UnusableInput.of("--format", "'" + format + "' is neither json nor parquet", "");
        }
        if (AsOf.read(asOf).isEmpty()) {
            throw UnusableInput.of("--as-of", "'" + asOf + "' is not a date and time", AsOf.ADVICE.substring(0, 1).toUpperCase(Locale.ROOT) + AsOf.ADVICE.substring(1));
        }
        for (String gate : gates) {
            if (Gate.of(gate).isEmpty()) {
                throw UnusableInput.of("--gate", "there is no gate '" + gate + "'", "Give one of " + String.join(", ", Arrays.stream(Gate.values()).map(Gate::id).toList()));
            }
        }
        if (!System.getenv().getOrDefault("CHOCK_SHOP", "").isBlank()) {
            // Its register and its house would be left out without a word, and a gate look open that is not.
            throw UnusableInput.of("CHOCK_SHOP", "an archive is of many workshops and is judged without the settings of one", "Unset it, and name the rules of a house with --house");
        }
        return new Terms(asOf, gates, rules(), house == null ? null : Terms.House.of(HouseBook.read(TextFile.path(house))), sets);
    }

    /** The packed rule book with its trust list, or null; checked before Spark is started and before anything in it is read. */
    private SignedRules rules() {
        if (pack == null) {
            if (trust != null) {
                throw UnusableInput.of("--trust", "it is only used with --rule-book", "Add --rule-book FILE, or leave it out");
            }
            return null;
        }
        if (trust == null) {
            throw UnusableInput.of("--rule-book", "no trust list to check its signature with", "Give --trust FILE");
        }
        SignedRules rules = new SignedRules(pack, TextFile.read(pack, "a packed rule book"), trust, TextFile.read(trust, "a trust list"), Instant.now());
        say.println("Judging by " + rules.open().words() + ". Its rules are compiled first, here and in each executor; this takes up to half a minute.");
        return rules;
    }

    /** What decides what comes of a record, and in what form it is written. */
    private ObjectNode about(Terms terms, RuleBook book) {
        ObjectNode node = JSON.createObjectNode().put("job", what).put("asOf", asOf).put("format", format).put("ruleBook", book.version()).put("digest", book.digest());
        terms.gates().forEach(node.putArray("gates")::add);
        terms.sets().forEach(node.putArray("set")::add);
        node.put("house", terms.house() == null ? "none" : terms.house().digest());
        if (terms.rules() != null) {
            node.put("packed", terms.rules().open().digest());
        }
        if (what.equals("impact")) {
            node.put("against", RuleBook.shipped().digest());
        }
        return node;
    }

    private SparkSession session() {
        SparkConf conf = new SparkConf().setAppName("chock-spark-" + what);
        // What is not said otherwise. Nobody asked for a page in the browser, which everybody on the network could read.
        Map<String, String> usual = new TreeMap<>(Map.of("spark.ui.enabled", "false", "spark.executor.memory", "2g", "spark.sql.session.timeZone", "UTC",
                "spark.sql.shuffle.partitions", "8", "spark.sql.parquet.compression.codec", "zstd"));
        String to = conf.get("spark.master", "local[*]");
        if (to.startsWith("local")) {
            usual.put("spark.driver.host", "127.0.0.1");
            usual.put("spark.driver.bindAddress", "127.0.0.1");
        }
        usual.forEach(conf::setIfMissing);
        settings.forEach(conf::set);
        try {
            SparkSession session = SparkSession.builder().config(conf).getOrCreate();
            session.sparkContext().defaultParallelism();
            return session;
        } catch (RuntimeException e) {
            String advice = to.startsWith("local") ? "Mend or leave out what is set with --spark" : "Name a cluster that can be reached and runs Spark 4.2, and mend what is set with --spark";
            throw UnusableInput.of("--master", "Spark cannot be started on " + to + " with these settings: " + first(e), advice);
        }
    }

    private int status(JsonNode counts) {
        if (Archive.times(counts, "failed") > 0) {
            return PROGRAM_FAILED;
        }
        if (Archive.times(counts, "refused") > 0 || Archive.times(counts, "record") == 0) {
            return UNUSABLE;
        }
        for (JsonNode one : counts) {
            boolean blocked = what.equals("impact") ? lost(one) : one.path("what").asText().equals("verdict") && one.path("was").asText().equals("blocked");
            if (blocked) {
                return BLOCKED;
            }
        }
        return 0;
    }

    private static boolean lost(JsonNode one) {
        return one.path("what").asText().equals("verdict") && one.path("was").asText().equals("released") && one.path("is").asText().equals("blocked");
    }

    private void tell(JsonNode counts, List<String> changes, RuleBook book, Archive archive) {
        print.println(Archive.times(counts, "record") + " records judged as of " + asOf + " by rule book " + book.version() + " (" + book.digest() + ")" + (changes.isEmpty() ? "." : ": " + String.join("; ", changes) + "."));
        for (String kind : List.of("refused", "failed")) {
            long times = Archive.times(counts, kind);
            if (times > 0) {
                print.println(times + (times == 1 ? " line was " : " lines were ") + (kind.equals("refused") ? "refused" : "not judged because chock itself failed") + "; each stands with its reason in " + out + "/rows, came=" + kind + ".");
            }
        }
        List<String> verdicts = new ArrayList<>();
        List<String> findings = new ArrayList<>();
        for (JsonNode one : counts) {
            String was = one.path("was").asText();
            String is = one.path("is").asText();
            String turn = is.isEmpty() ? was : was.equals(is) ? was + " as now" : was + ", then " + is;
            if (one.path("what").asText().equals("verdict")) {
                verdicts.add("  " + one.path("gate").asText() + ": " + one.path("times") + " " + turn);
            } else if (one.path("what").asText().equals("change")) {
                findings.add("  " + one.path("check").asText() + " at " + one.path("gate").asText() + ": " + one.path("times") + " " + (was.equals(is) ? was + " at other places" : was + ", then " + is));
            }
        }
        verdicts.forEach(print::println);
        if (what.equals("impact")) {
            print.println(findings.isEmpty() ? "No finding changes." : "Findings that change:");
            findings.forEach(print::println);
        }
        if (what.equals("holds") && status(counts) != 0 && Archive.times(counts, "record") > 0) {
            print.println("What holds most machines, at whatever gate:");
            for (Row row : archive.most(SHOWN)) {
                print.println("  " + row.get(1) + " machines: " + row.get(0));
            }
        }
        print.println(what.equals("holds") ? "By gate, finding, make, year, kind and territory: " + out + "/holds" : "Rows: " + out + "/rows");
        print.println("This is a working aid. Local law and the licensed inspector or technician decide.");
    }
}
