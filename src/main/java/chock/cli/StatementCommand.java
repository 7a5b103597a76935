package chock.cli;

import chock.archive.Judging;
import chock.report.Papers;
import chock.report.Statement;
import chock.report.StatementText;
import chock.rulebook.RuleBook;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Tells the new owner what the record carries. It is made of a machine in any condition, so making it is no verdict. */
@Command(name = "statement", sortOptions = false, description = "Write the condition statement for the new owner: what the record carries, and no more.",
        footer = {"", "Exit status: 0 the statement was made, whatever it says; 2 unusable input or usage; 3 chock itself failed."})
final class StatementCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private RecordOptions record;
    @Mixin private PaperOptions paper;

    StatementCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        paper.ready();
        RuleBook book = record.book(bench);
        Judging.Read read = record.read(bench, book);
        Statement statement = Statement.of(read.record(), book, read.asOf());
        paper.put(bench, read.asOf(), () -> StatementText.of(statement, bench.bold()), size -> Papers.html(statement, size));
        return 0;
    }
}
