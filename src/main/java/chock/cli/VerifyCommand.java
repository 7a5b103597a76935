package chock.cli;

import chock.signoff.Verification;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says of a sign-off what holds and what does not. */
@Command(name = "verify", sortOptions = false, description = "Say of a sign-off what holds and what does not. Asks nobody outside.")
final class VerifyCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;
    @Mixin private VerifyOptions with;

    @Parameters(index = "0", paramLabel = "SIGNOFF", description = "The sign-off, or the seal read from its paper.")
    private String signOff;

    @Parameters(index = "1", arity = "0..1", paramLabel = "RECORD", description = "The job record as it is now.")
    private String record;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    VerifyCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        Verification found = with.look(bench, spec, signOff, record).found();
        bench.print(format == Format.JSON ? SignOffText.verifiedJson(found) : SignOffText.verified(found, bench.bold()));
        return found.holds() ? Bench.RELEASED : Bench.BLOCKED;
    }
}
