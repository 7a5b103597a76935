package chock.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What can be begun from a skeleton. */
@Command(name = "new", synopsisSubcommandLabel = "THING", description = "Begin with a skeleton: new record and new shop print one, new check writes the parts of a check.")
final class NewCommand implements Runnable {
    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "New what? One of " + String.join(", ", spec.subcommands().keySet()) + ".");
    }
}
