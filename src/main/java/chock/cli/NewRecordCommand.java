package chock.cli;

import chock.record.RecordSkeleton;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints a job record to fill in. */
@Command(name = "record", description = "Print a job record to fill in.")
final class NewRecordCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;

    NewRecordCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        bench.print(RecordSkeleton.yaml(bench.ruleBook().vocabulary()));
        return 0;
    }
}
