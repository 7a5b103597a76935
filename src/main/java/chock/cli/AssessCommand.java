package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.assess.Assessment;
import chock.assess.Closest;
import chock.assess.Explainer;
import chock.assess.Foresight;
import chock.assess.RunCourse;
import chock.record.Gate;
import chock.record.RecordReader;
import chock.record.UnusableInput;
import chock.report.AnswersReport;
import chock.report.HtmlReport;
import chock.report.JsonReport;
import chock.report.RunChart;
import chock.report.TextReport;
import chock.rulebook.RuleBook;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Judges job records. A record that cannot be used keeps none of the others from being judged. */
@Command(name = "assess", sortOptions = false, description = "Judge job records: released or blocked, why, and what clears it.")
final class AssessCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(arity = "1..*", paramLabel = "RECORD", description = "Job record in YAML or JSON; - is standard input.")
    private List<String> files;

    @Option(names = "--gate", paramLabel = "GATE", converter = GateWord.class,
            description = "Gate to judge; may be given several times. Default: the gates the record seeks.")
    private List<Gate> gates;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class,
            description = "Judge as of this moment, such as 2026-11-25T12:00; without a zone, on the workshop's clock. Default: now.")
    private AsOf asOf;

    @Mixin private RuleBookOption house;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfReport.class, defaultValue = "text",
            description = "text, json or html. Default: text.")
    private Format format;

    @Option(names = "--force", description = "Let --chart write over a file that is there already; never over a record, a key, a sign-off, a ledger or a store.")
    private boolean force;

    @Option(names = "--chart", paramLabel = "FILE.svg",
            description = "Also draw the air at the planned run into this file; for one record, with indoor-run among its gates.")
    private String chart;

    @Mixin private ShopOption shop;

    @Option(names = "--why", paramLabel = "CHECK", description = "Instead of the whole report, tell how this check came to its finding; may be given several times, and 'all' means every one.")
    private List<String> why;

    @Option(names = "--not-asked", description = "List the checks that do not apply to the machine, with the reason.")
    private boolean notAsked;

    @Option(names = "--closest", description = "List how sure each reading is of its limit, the least sure first.")
    private boolean closest;

    @ArgGroup(exclusive = false)
    private Many many;

    /** What only a stream of records asks for. */
    static final class Many {
        @Option(names = "--bulk", required = true,
                description = "RECORD is a stream: one record in JSON a line; - is standard input. Writes one line of JSON each, in the same order; a line that cannot be used is told by its number and skipped.")
        private boolean bulk;

        @Option(names = "--out", paramLabel = "FILE", description = "Write the lines of a stream to this new file.")
        private String out;

        @Option(names = "--resume", description = "Go on behind the last whole line of --out.")
        private boolean resume;
    }

    AssessCommand(Bench bench) {
        this.bench = bench;
    }

    /**
     * What a plain line asks for.
     *
     * @param gates null for those that the record seeks
     * @param asOf null for now
     */
    record Asked(List<String> files, List<Gate> gates, AsOf asOf, Format format) { }

    /** As it is asked for on a plain line, with nothing else of what may stand there. */
    AssessCommand(Bench bench, Asked asked) {
        this.bench = bench;
        this.files = asked.files;
        this.gates = asked.gates;
        this.asOf = asked.asOf;
        this.format = asked.format;
        this.house = new RuleBookOption();
        this.shop = new ShopOption();
    }

    @Override
    public Integer call() {
        if (files.stream().filter("-"::equals).count() > 1) {
            throw new ParameterException(spec.commandLine(), "Standard input can be read only once; give - once.");
        }
        if (many != null) {
            return bulk();
        }
        if (chart != null && (why != null || notAsked || closest)) {
            throw new ParameterException(spec.commandLine(), "--chart goes with the whole report, not with --why, --not-asked or --closest.");
        }
        if (chart != null && files.size() != 1) {
            throw new ParameterException(spec.commandLine(), "--chart draws one run; give one record.");
        }
        Supplier<RecordReader.Opened> first = Records.opening(bench, files.get(0));
        RuleBook book = book();
        boolean asked = why != null || notAsked || closest;
        if (asked && format == Format.HTML) {
            throw new ParameterException(spec.commandLine(), "--why, --not-asked and --closest are answered as text or json.");
        }
        List<String> explained = why == null ? List.of() : checks(book);
        AsOf moment = asOf == null ? new AsOf(bench.clock().instant(), null) : asOf;
        List<Assessment> judged = new ArrayList<>();
        int status = Bench.RELEASED;
        for (int i = 0; i < files.size(); i++) {
            String file = files.get(i);
            try {
                Assessment assessment = judge(i == 0 ? first.get() : Records.opened(bench, file), book, moment);
                judged.add(assessment);
                status = Math.max(status, assessment.allReleased() ? Bench.RELEASED : Bench.BLOCKED);
            } catch (UnusableInput e) {
                status = Math.max(status, bench.refuse(e));
            } catch (RuntimeException | StackOverflowError e) {
                status = Math.max(status, bench.failed(e));
            }
        }
        if (asked) {
            List<AnswersReport> answers = judged.stream().map(a -> new AnswersReport(a, Explainer.explain(a.record(), book, explained, a.asOf()), notAsked, closest ? Closest.of(a) : null)).toList();
            bench.print(format == Format.JSON ? JsonReport.answering(answers) : answers.stream().map(a -> a.text(bench.bold())).collect(Collectors.joining("\n")));
            return status;
        }
        bench.print(switch (format) {
            case TEXT -> TextReport.of(judged, bench.bold());
            case JSON -> JsonReport.of(judged);
            case HTML -> judged.isEmpty() ? "" : HtmlReport.of(judged);
            case CSV -> throw new IllegalStateException("a report is no table");
        });
        if (shop.isGiven(bench)) {
            status = Math.max(status, SignOffStanding.tell(bench, shop, book, judged, format));
        }
        return chart == null || judged.isEmpty() ? status : Math.max(status, draw(judged.get(0)));
    }

    /** With the house that was named, else the one the workshop is bound to. */
    private RuleBook book() {
        return shop.isGiven(bench) ? Workshop.book(Workshop.of(shop, bench), house.of(shop), bench) : house.inForce(bench);
    }

    private List<String> checks(RuleBook book) {
        if (why.contains("all")) {
            return List.copyOf(book.cards().keySet());
        }
        why.stream().filter(id -> !book.cards().containsKey(id)).findFirst().ifPresent(id -> {
            throw new ParameterException(spec.commandLine(), "There is no check '" + id + "'. " + Near.advice(id, book.cards().keySet()));
        });
        return why;
    }

    /** Only here is the drawing touched: its libraries take longer to load than everything else takes to run. */
    private int draw(Assessment assessment) {
        if (assessment.gates().stream().noneMatch(gate -> gate.gate() == Gate.INDOOR_RUN)) {
            throw new ParameterException(spec.commandLine(), "--chart draws a run under a roof; add --gate " + Gate.INDOOR_RUN + ".");
        }
        Optional<RunCourse> course = RunCourse.of(assessment);
        if (course.isEmpty()) {
            bench.say("No chart was drawn: nothing can be predicted for this run; the findings say what is missing.");
            return Bench.BLOCKED;
        }
        try {
            bench.write(chart, RunChart.svg(course.get(), RunChart.about(assessment)), force);
            return Bench.RELEASED;
        } catch (UnusableInput e) {
            return bench.refuse(e);
        }
    }

    private int bulk() {
        if (files.size() != 1 || chart != null || why != null || notAsked || closest || format != Format.TEXT) {
            throw new ParameterException(spec.commandLine(), "--bulk reads one stream and writes lines of JSON; give one file, and none of --chart, --format, --why, --not-asked and --closest.");
        }
        if (many.resume && (many.out == null || files.get(0).equals("-"))) {
            throw new ParameterException(spec.commandLine(), "--resume needs --out FILE, and a stream that can be read again from its first line: a file.");
        }
        RuleBook book = book();
        AsOf moment = asOf == null ? new AsOf(bench.clock().instant(), null) : asOf;
        String file = files.get(0);
        try (InputStream stream = bench.open(file); BulkProgress progress = BulkProgress.of(bench, file)) {
            BulkResult result = many.out == null ? null : new BulkResult(many.out);
            long after = many.resume ? result.lastLine() : 0;
            BulkAssessment all = new BulkAssessment(bench, new Judging(book, moment, gates), progress::dealt, Runtime.getRuntime().availableProcessors());
            if (result == null) {
                return all.run(Bench.name(file), stream, bench.out(), after);
            }
            try (OutputStream out = new BufferedOutputStream(many.resume ? result.more() : result.fresh(), 1 << 16)) {
                return all.run(Bench.name(file), stream, out, after);
            }
        } catch (UnusableInput e) {
            return bench.refuse(e);
        } catch (IOException e) {
            return bench.refuse(UnusableInput.of(Bench.name(file), "it could not be closed: " + e.getMessage(), ""));
        }
    }

    private Assessment judge(RecordReader.Opened file, RuleBook book, AsOf moment) {
        Judging.Read read = new Records(bench, book, moment).read(file);
        return Foresight.assess(read.record(), book, asked(read), read.asOf());
    }

    private List<Gate> asked(Judging.Read read) {
        return List.copyOf(new LinkedHashSet<>(gates == null ? read.record().seeks() : gates));
    }

    /** Reads a gate. */
    static final class GateWord implements ITypeConverter<Gate> {
        @Override
        public Gate convert(String word) {
            return Gate.of(word).orElseThrow(() -> new TypeConversionException("'" + word + "' is not one of "
                    + String.join(", ", Arrays.stream(Gate.values()).map(Gate::id).toList())));
        }
    }
}
