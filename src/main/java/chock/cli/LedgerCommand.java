package chock.cli;

import chock.record.UnusableInput;
import chock.report.Page;
import chock.signoff.KeyFile;
import chock.signoff.LedgerHead;
import chock.signoff.LedgerLine;
import chock.signoff.Ledgers;
import chock.signoff.Shop;
import chock.signoff.SigningKey;
import chock.signoff.Withdrawals;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The ledger: what was signed, refused and voided, and whose keys were believed. */
@Command(name = "ledger", synopsisSubcommandLabel = "WHAT", description = "What was signed, refused, voided and withdrawn: list, verify, head, withdraw, recover.")
final class LedgerCommand implements Runnable {
    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    private LedgerCommand() { }

    static CommandLine with(Bench bench) {
        return new CommandLine(new LedgerCommand()).addSubcommand(new ListLines(bench)).addSubcommand(new Verify(bench)).addSubcommand(new Head(bench)).addSubcommand(new Withdraw(bench)).addSubcommand(new Recover(bench));
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

        @Option(names = "--head", paramLabel = "HEAD", description = "A head of this ledger that was kept elsewhere, as 'chock ledger head' printed it, or a file of them, one a line: "
            + "also look whether the ledger still has every line it had then.")
        private String head;

        Verify(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            Ledgers.Checked checked = Ledgers.verify(workshop);
            List<LedgerHead> kept = head == null ? List.of() : kept(head);
            List<String> faults = new ArrayList<>();
            if (checked.fault() == null) {
                List<LedgerLine> lines = Ledgers.lines(workshop.ledger());
                kept.forEach(one -> one.missingIn(lines).ifPresent(why -> faults.add("The ledger no longer has the head " + one + ": " + why)));
            } else {
                faults.add(checked.fault());
            }
            Page page = new Page(bench.bold());
            if (faults.isEmpty()) {
                page.heading("SOUND: " + checked.lines() + " lines, each as it was written").put(2, "Last line: " + checked.last());
                page.put(2, kept.isEmpty() ? "Keep 'chock ledger head' somewhere else: --head shows later whether lines were cut off at the end."
                        : kept.size() == 1 ? "It still has the head " + kept.get(0) + "." : "It still has all of the " + kept.size() + " heads.");
                Withdrawals.all(workshop).forEach(one -> page.put(2, "Withdrawn: ", one.words(workshop.zone()) + "."));
            } else {
                page.heading("NOT SOUND");
                faults.forEach(fault -> page.put(2, fault.replaceFirst("([^.])$", "$1.")));
            }
            bench.print(page.toString());
            return faults.isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
        }

        private List<LedgerHead> kept(String word) {
            return LedgerHead.parse(word).map(List::of).orElseGet(() -> LedgerHead.in(Bench.name(word), bench.read(word)));
        }
    }

    /** What shows later that no line is gone. */
    @Command(name = "head", description = "Print the head of the ledger, LINE:DIGEST, to be kept where nobody who signs can write. 'chock ledger verify --head' looks for it later.")
    static final class Head implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;

        Head(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            bench.print(LedgerHead.of(Ledgers.lines(workshop.ledger())).orElseThrow(() -> UnusableInput.of(workshop.ledger().toString(), "it has no line yet", "The first 'chock keys trust' begins it")) + "\n");
            return 0;
        }
    }

    /** Withdraws what was found wrong later. */
    @Command(name = "withdraw", sortOptions = false, description = {"Withdraw a rule book, or one check, that was found wrong: every sign-off that rests on it ends.",
        "A sign-off rests on its rule book and on each check that was asked of its machine. Only a lead can, and nobody can take it back. "
            + "Nothing more is signed that rests on it, until a rule book with another digest is used."})
    static final class Withdraw implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;
        @Mixin private PassphraseOption passphrase;
        @Option(names = "--check", paramLabel = "ID", description = "The check, such as brakes.pad-thickness. Without --rule-book: of every rule book until now.")
        private String check;
        @Option(names = "--rule-book", paramLabel = "DIGEST", description = "Digest of the rule book, sha256:…, as 'chock rules' shows that at hand and 'chock verify' that of a sign-off. Without --check: all of it.")
        private String ruleBook;
        @Option(names = "--also-not-asked", description = "End also the sign-offs of machines that were not asked the check: what was wrong is that it was not.")
        private boolean alsoNotAsked;
        @Option(names = "--reason", required = true, paramLabel = "WORDS", description = "Why; whoever verifies one of these sign-offs reads it.")
        private String reason;
        @Option(names = "--by", required = true, paramLabel = "FILE", description = "Key of the lead who says so.")
        private String by;
        @Spec private CommandSpec spec;

        Withdraw(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            if (check == null && ruleBook == null) {
                throw new ParameterException(spec.commandLine(), "Withdraw what? Give --check ID, --rule-book DIGEST, or both for one check of one rule book.");
            }
            Shop workshop = Workshop.of(shop, bench);
            Withdrawals.What what = new Withdrawals.What(check, ruleBook, alsoNotAsked, reason);
            what.mustBeMeant();
            SigningKey lead = KeyFile.read(Bench.path(by), passphrase.ask(bench, by));
            Withdrawals.Done done = Withdrawals.withdraw(workshop, Workshop.book(workshop, bench), what, lead, bench.clock());
            Page page = new Page(bench.bold()).heading("WITHDRAWN: " + done.made().what().replaceFirst(",$", "")).put(2, "Ledger: ", "line " + done.made().line());
            page.put(2, done.ended() == 1 ? "1 sign-off ended with it." : done.ended() + " sign-offs ended with it.");
            if (done.unknown() > 0) {
                page.put(2, (done.unknown() == 1 ? "1 line" : done.unknown() + " lines") + " of the ledger, written by an earlier chock, " + (done.unknown() == 1 ? "does" : "do")
                        + " not say which rule book judged. 'chock verify' with the sign-off file tells; a board tells by itself.");
            }
            bench.print(page.toString());
            return Bench.RELEASED;
        }
    }

    /** Mends what a crash left. */
    @Command(name = "recover", description = "Mend a last line torn by a crash, and write the trust list anew from the ledger. What is left of the line is kept in a file beside it.")
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
