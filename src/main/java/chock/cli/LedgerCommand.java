package chock.cli;

import chock.report.Page;
import chock.signoff.Ledgers;
import chock.signoff.Shop;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The ledger: what was signed, refused and voided, and whose keys were believed. */
@Command(name = "ledger", synopsisSubcommandLabel = "WHAT", description = "What was signed, refused and voided: list, verify, recover.")
final class LedgerCommand implements Runnable {
    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    private LedgerCommand() { }

    static CommandLine with(Bench bench) {
        return new CommandLine(new LedgerCommand()).addSubcommand(new ListLines(bench)).addSubcommand(new Verify(bench)).addSubcommand(new Recover(bench));
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Do what with the ledger? One of " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** Tells every line. */
    @Command(name = "list", description = "Tell every line, on the workshop's clock.")
    static final class ListLines implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;

        ListLines(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            bench.print(SignOffText.ledger(Ledgers.lines(workshop.ledger()), workshop.zone(), bench.bold()));
            return 0;
        }
    }

    /** Holds every line against the one before, and against the key it was written with. */
    @Command(name = "verify", description = "Look whether any line was altered, taken out or put in; names the first bad one.")
    static final class Verify implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;

        Verify(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            Ledgers.Checked checked = Ledgers.verify(workshop);
            Page page = new Page(bench.bold());
            if (checked.fault() == null) {
                page.heading("SOUND: " + checked.lines() + " lines, each as it was written").put(2, "Last line: " + checked.last())
                        .put(2, "Keep that number somewhere else: it shows later whether lines were cut off at the end.");
            } else {
                page.heading("NOT SOUND").put(2, checked.fault().replaceFirst("([^.])$", "$1."));
            }
            bench.print(page.toString());
            return checked.fault() == null ? Bench.RELEASED : Bench.BLOCKED;
        }
    }

    /** Mends what a crash left. */
    @Command(name = "recover", description = "Mend a last line torn by a crash, and write the trust list anew from the ledger. Takes away nothing that was acknowledged.")
    static final class Recover implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;

        Recover(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Ledgers.Mended mended = Ledgers.recover(Workshop.of(shop, bench), bench.clock());
            Page page = new Page(bench.bold());
            mended.says().forEach(says -> page.put(0, says));
            bench.print(mended.says().isEmpty() ? "Nothing to mend.\n" : page.toString());
            return Bench.RELEASED;
        }
    }
}
