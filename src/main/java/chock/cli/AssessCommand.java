package chock.cli;

import chock.assess.Assessment;
import chock.assess.Assessor;
import chock.assess.Foresight;
import chock.assess.RunCourse;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import chock.report.HtmlReport;
import chock.report.JsonReport;
import chock.report.RunChart;
import chock.report.TextReport;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
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

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOf.Converter.class,
            description = "Judge as of this moment, such as 2026-11-25T12:00; without a zone, on the workshop's clock. Default: now.")
    private AsOf asOf;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfReport.class, defaultValue = "text",
            description = "text, json or html. Default: text.")
    private Format format;

    @Option(names = "--chart", paramLabel = "FILE.svg",
            description = "Also draw the air at the planned run into this file; for one record, with indoor-run among its gates.")
    private String chart;

    AssessCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (files.stream().filter("-"::equals).count() > 1) {
            throw new ParameterException(spec.commandLine(), "Standard input can be read only once; give - once.");
        }
        if (chart != null && files.size() != 1) {
            throw new ParameterException(spec.commandLine(), "--chart draws one run; give one record.");
        }
        RuleBook book = bench.ruleBook();
        AsOf moment = asOf == null ? new AsOf(bench.clock().instant(), null) : asOf;
        List<Assessment> judged = new ArrayList<>();
        int status = Bench.RELEASED;
        for (String file : files) {
            try {
                Assessment assessment = judge(file, book, moment);
                judged.add(assessment);
                status = Math.max(status, assessment.allReleased() ? Bench.RELEASED : Bench.BLOCKED);
            } catch (UnusableInput e) {
                status = Math.max(status, bench.refuse(e));
            } catch (RuntimeException | StackOverflowError e) {
                status = Math.max(status, bench.failed(e));
            }
        }
        bench.print(switch (format) {
            case TEXT -> TextReport.of(judged, bench.bold());
            case JSON -> JsonReport.of(judged);
            case HTML -> judged.isEmpty() ? "" : HtmlReport.of(judged);
        });
        return chart == null || judged.isEmpty() ? status : Math.max(status, draw(judged.get(0)));
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
            bench.write(chart, RunChart.svg(course.get(), RunChart.about(assessment)));
            return Bench.RELEASED;
        } catch (UnusableInput e) {
            return bench.refuse(e);
        }
    }

    private Assessment judge(String file, RuleBook book, AsOf moment) {
        Records.Read read = new Records(bench, book, moment).read(file);
        JobRecord record = read.record();
        Instant when = read.asOf();
        Set<Gate> asked = new LinkedHashSet<>(gates == null ? record.seeks() : gates);
        return Foresight.of(Assessor.assess(record, book, List.copyOf(asked), when), book);
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
