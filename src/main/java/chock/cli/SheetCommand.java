package chock.cli;

import chock.record.UnusableInput;
import chock.report.Papers;
import chock.report.SignOffSheet;
import chock.report.SignOffSheetText;
import chock.signoff.Verification;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The paper of a sign-off. What nobody trusted signed is not printed; what holds no more says so on its first page. */
@Command(name = "sheet", sortOptions = false, description = {"Write the sign-off sheet: what was signed, with its findings, limits and sources, and the seal as a code.",
    "It is verified first, and the sheet says what does not hold."},
        footer = {"", "Exit status: 0 the sheet was made and what was looked at holds; 1 something does not hold, and the sheet says so, or the signature does not and no sheet was made; "
            + "2 unusable input or usage; 3 chock itself failed."})
final class SheetCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(index = "0", paramLabel = "SIGNOFF", description = "The sign-off, as 'chock sign' wrote it.")
    private String signOff;

    @Parameters(index = "1", arity = "0..1", paramLabel = "RECORD", description = "The job record as it is now, to be looked at as well.")
    private String record;

    @Mixin private VerifyOptions with;
    @Mixin private PaperOptions paper;

    SheetCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        paper.ready();
        VerifyOptions.Looked looked = with.look(bench, spec, signOff, record);
        Verification found = looked.found();
        Verification.Thing signature = found.things().get(0);
        if (signature.holds() != Verification.Holds.YES) {
            bench.say(Bench.name(signOff) + ": no sheet was made. " + signature.says());
            return Bench.BLOCKED;
        }
        if (found.signOff() == null) {
            throw UnusableInput.of(Bench.name(signOff), "this is the seal alone, and carries no findings", "Give the whole sign-off, the file 'chock sign' wrote; 'chock verify' looks at a seal");
        }
        SignOffSheet sheet = SignOffSheet.of(found, looked.moment());
        paper.put(bench, looked.moment(), () -> SignOffSheetText.of(sheet, bench.bold()), size -> Papers.html(sheet, size));
        return found.holds() ? Bench.RELEASED : Bench.BLOCKED;
    }
}
