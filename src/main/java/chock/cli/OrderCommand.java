package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.UnusableInput;
import chock.report.OrderReport;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** What remains to be done for one gate. A ring in the rule book blocks, as every fault of the rule book does, and exits 1. */
@Command(name = "order", sortOptions = false, description = "List the work that remains for a gate, in an order in which nothing is done twice.")
final class OrderCommand implements Callable<Integer> {
    private static final int LONGEST = 10_000;

    private final Bench bench;

    @Mixin private HelpOption help;

    @Parameters(arity = "1", paramLabel = "RECORD", description = "Job record in YAML or JSON; - is standard input.")
    private String file;

    @Option(names = "--gate", required = true, paramLabel = "GATE", converter = AssessCommand.GateWord.class, description = "The gate to be released.")
    private Gate gate;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class, description = "As of this moment; as for assess. Default: now.")
    private AsOf asOf;

    @Option(names = "--minutes", paramLabel = "FILE", description = "Minutes a step takes, in YAML: an aspect, a work or a kind of step each with its minutes, such as 'bled: 30' or 'measure: 4'.")
    private String minutes;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    @Mixin private RuleBookOption house;

    OrderCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        RuleBook book = house.inForce(bench);
        Map<String, Integer> times = minutes == null ? Map.of() : minutes(book);
        Judging.Read read = new Records(bench, book, asOf).read(file);
        JobRecord record = read.record();
        OrderOfWork order = OrderOfWork.of(record, book, gate, read.asOf());
        OrderReport report = new OrderReport(order, times);
        bench.print(format == Format.JSON ? report.json() : report.text(bench.bold()));
        return order.steps().isEmpty() && order.cycle().isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
    }

    private Map<String, Integer> minutes(RuleBook book) {
        Map<String, Integer> read;
        try {
            read = new YAMLMapper().readValue(bench.read(minutes), new TypeReference<TreeMap<String, Integer>>() { });
        } catch (JsonProcessingException e) {
            throw UnusableInput.of(minutes, "it is not a list of names with whole minutes", "Write one a line, such as bled: 30");
        } catch (IOException e) {
            throw UnusableInput.of(minutes, "it cannot be read", "");
        }
        TreeSet<String> known = new TreeSet<>(book.vocabulary().aspects().keySet());
        known.addAll(book.vocabulary().works().keySet());
        for (OrderOfWork.Kind kind : OrderOfWork.Kind.values()) {
            known.add(kind.words().replace(' ', '-'));
        }
        Optional<String> unknown = read.keySet().stream().filter(name -> !known.contains(name)).findFirst();
        if (unknown.isPresent()) {
            throw UnusableInput.of(minutes, "'" + unknown.get() + "' is no aspect, work or kind of step", Near.advice(unknown.get(), known));
        }
        read.forEach((name, value) -> {
            if (value == null || value < 0 || value > LONGEST) {
                throw UnusableInput.of(minutes, "'" + name + "' has " + (value == null ? "no minutes" : value + " minutes"), "Write 0 to " + LONGEST);
            }
        });
        return read;
    }
}
