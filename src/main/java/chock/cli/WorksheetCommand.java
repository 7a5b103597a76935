package chock.cli;

import chock.archive.Judging;
import chock.assess.OrderOfWork;
import chock.record.Gate;
import chock.report.OrderReport;
import chock.report.Papers;
import chock.report.SessionSheet;
import chock.report.WorkSheet;
import chock.rulebook.RuleBook;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The order of work as a sheet for the bench. */
@Command(name = "worksheet", sortOptions = false, description = "Write the work that remains for a gate as a sheet with blanks, in the order of work. --format yaml writes it as sessions to fill in, for take-in.",
        footer = {"", "Exit status: 0 nothing remains; 1 something does; 2 unusable input or usage; 3 chock itself failed."})
final class WorksheetCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private RecordOptions record;
    @Mixin private PaperOptions paper;

    @Option(names = "--gate", required = true, paramLabel = "GATE", converter = AssessCommand.GateWord.class, description = "The gate to be released.")
    private Gate gate;

    WorksheetCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        paper.ready(true);
        RuleBook book = record.book(bench);
        Judging.Read read = record.read(bench, book);
        OrderOfWork order = OrderOfWork.of(read.record(), book, gate, read.asOf());
        if (paper.isYaml()) {
            paper.put(bench, SessionSheet.of(order, book));
        } else {
            paper.put(bench, read.asOf(), () -> new OrderReport(order, Map.of()).text(bench.bold()), size -> Papers.html(WorkSheet.of(order, book), size));
        }
        return order.steps().isEmpty() && order.cycle().isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
    }
}
