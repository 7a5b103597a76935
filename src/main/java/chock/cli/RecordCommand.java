package chock.cli;

import chock.record.RecordReader;
import chock.record.RecordText;
import chock.record.UnusableInput;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** What can be done with a record file itself. */
@Command(name = "record", synopsisSubcommandLabel = "WHAT", description = "Work with a record file itself: record expand writes its sessions out as single entries.")
final class RecordCommand implements Runnable {
    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Do what with the record? One of " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** Prints a record with each of its sessions as the entries that they are. */
    @Command(name = "expand", description = "Print a record with its sessions written out as single entries, as every judgement and every signature sees them.",
            footer = {"", "Exit status: 0 printed; 2 unusable input or usage; 3 chock itself failed."})
    static final class Expand implements Callable<Integer> {
        private final Bench bench;

        @Mixin private HelpOption help;

        @Parameters(arity = "1", paramLabel = "RECORD", description = "Job record in YAML or JSON; - is standard input.")
        private String file;

        Expand(Bench bench) {
            this.bench = bench;
        }

        /** @throws UnusableInput when the record would be refused for its form */
        @Override
        public Integer call() {
            byte[] bytes = bench.read(file);
            new Records(bench, bench.ruleBook(), null).read(Bench.name(file), bytes);
            bench.print(RecordText.yaml(RecordReader.written(Bench.name(file), bytes)));
            return Bench.RELEASED;
        }
    }
}
