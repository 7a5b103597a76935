package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.assess.Foresight;
import chock.assess.Impact;
import chock.record.Gate;
import chock.record.UnusableInput;
import chock.report.ImpactReport;
import chock.rulebook.RuleBook;
import chock.rulebook.Trial;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What changed limits, or time alone, would do to every record. Exits 1 when a release would be lost. */
@Command(name = "impact", sortOptions = false, description = "Show which verdicts would change under other limits, or lapse within some days, before anybody adopts them.")
final class ImpactCommand implements Callable<Integer> {
    private static final int LONGEST = 36_600;

    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(arity = "1..*", paramLabel = "RECORD", description = "Job record in YAML or JSON.")
    private List<String> files;

    @Option(names = "--set", paramLabel = "LIMIT=VALUE", description = "Try this value, such as tyres.age=8y; may be given several times. What a law sets stays.")
    private List<String> sets;

    @Option(names = "--within", paramLabel = "DAYS", description = "List what changes by itself within so many days.")
    private Integer days;

    @Option(names = "--gate", paramLabel = "GATE", converter = AssessCommand.GateWord.class, description = "Gate to judge; may be given several times. Default: the gates each record seeks.")
    private List<Gate> gates;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class, description = "Judge as of this moment, as for assess; it may lie ahead. Default: now.")
    private AsOf asOf;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfTable.class, defaultValue = "text", description = "text, json or csv. Default: text.")
    private Format format;

    @Mixin private RuleBookOption house;

    ImpactCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (sets == null && days == null && !house.isGiven()) {
            throw new ParameterException(spec.commandLine(), "What is to be tried? Give --set LIMIT=VALUE, --house DIR, --rule-book FILE or --within DAYS.");
        }
        if (days != null && (days < 1 || days > LONGEST)) {
            throw new ParameterException(spec.commandLine(), "--within takes 1 to " + LONGEST + " days.");
        }
        RuleBook book = new HouseOption().inForce(bench);
        RuleBook other = house.inForce(bench);
        RuleBook named = other;
        List<Trial> trials = sets == null ? List.of() : sets.stream().map(text -> trial(text, named)).toList();
        for (Trial trial : trials) {
            other = other.with(trial.change());
        }
        List<String> what = new ArrayList<>();
        if (house.pack() != null) {
            what.add("rule book " + other.version() + " (" + house.pack() + ")");
        }
        other.house().filter(rules -> house.isGiven()).ifPresent(rules -> what.add("house " + rules.name() + " (" + rules.folder() + ")"));
        trials.forEach(trial -> what.add(trial.words()));
        return judge(book, other, what);
    }

    private Trial trial(String text, RuleBook book) {
        try {
            return Trial.read(text, book);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), "--set: " + e.getMessage());
        }
    }

    /**
     * @param other the rule book under trial; the same when only time is
     * @param what the changes tried, in words
     */
    private int judge(RuleBook book, RuleBook other, List<String> what) {
        List<Impact> impacts = new ArrayList<>();
        List<ImpactReport.Lapse> lapses = new ArrayList<>();
        int status = Bench.RELEASED;
        int judged = 0;
        for (String file : files) {
            try {
                Judging.Read read = new Records(bench, book, asOf).read(file);
                List<Gate> asked = gates == null ? read.record().seeks() : gates;
                if (!what.isEmpty()) {
                    List<Impact> own = Impact.of(read.record(), book, other, asked, read.asOf());
                    impacts.addAll(own);
                    status = Math.max(status, own.stream().anyMatch(i -> i.before() && !i.after()) ? Bench.BLOCKED : Bench.RELEASED);
                }
                if (days != null) {
                    Instant last = read.asOf().plus(Duration.ofDays(days));
                    List<Foresight.Turn> turns = Foresight.between(read.record(), other, asked, read.asOf(), last);
                    turns.forEach(turn -> lapses.add(new ImpactReport.Lapse(read.record(), turn)));
                    status = Math.max(status, turns.isEmpty() ? Bench.RELEASED : Bench.BLOCKED);
                }
                judged++;
            } catch (UnusableInput e) {
                status = Math.max(status, bench.refuse(e));
            } catch (RuntimeException | StackOverflowError e) {
                status = Math.max(status, bench.failed(e));
            }
        }
        if (judged > 0) {
            ImpactReport report = new ImpactReport(what, impacts, days, lapses);
            bench.print(switch (format) {
                case JSON -> report.json();
                case CSV -> report.csv();
                default -> report.text(bench.bold());
            });
        }
        return status;
    }
}
