package chock.cli;

import chock.record.UnusableInput;
import chock.report.Page;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import chock.rulebook.RuleFiles;
import chock.signoff.KeyFile;
import chock.signoff.RulePack;
import chock.signoff.RulePacks;
import chock.signoff.Shop;
import chock.signoff.SigningKey;
import java.nio.charset.StandardCharsets;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a rule book into one file and signs it. */
@Command(name = "pack", sortOptions = false, description = {"Put a rule book into one signed file, to pass on or to judge by later.",
    "To use the file, a workshop must trust your key as that of a rule author or a lead."})
final class PackCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private PassphraseOption passphrase;

    @Parameters(paramLabel = "FILE", description = "Where the rule book goes, such as hollow-vale.rules.")
    private String out;

    @Option(names = "--rules", paramLabel = "DIR", description = "Folder of the rule book, laid out like rules/ of the project. Its *.drl files are code: name only a folder you trust. Default: the rule book inside the program.")
    private String rules;

    @Option(names = "--house", paramLabel = "DIR", description = "Also pack the rules of this house. Its *.drl files are code: name only a folder you trust.")
    private String house;

    @Option(names = "--key", paramLabel = "FILE", required = true, description = "Your key.")
    private String keyFile;

    @Option(names = "--force", description = "Write over a file that is there.")
    private boolean force;

    PackCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        SigningKey key = KeyFile.read(Bench.path(keyFile), passphrase.ask(bench, keyFile));
        RulePack.Source source = source().with(house == null ? null : HouseBook.read(Bench.folder(house)));
        bench.write(out, new String(RulePack.pack(source, key), StandardCharsets.US_ASCII) + "\n", force);
        RuleBook book = source.book();
        bench.print(new Page(bench.bold()).put(0, "Packed: ", "rule book " + book.version() + " (" + book.digest() + ")" + book.house().map(one -> " with the house rules '" + one.name() + "'").orElse("")).put(0, "File:   ", out).toString());
        return Bench.RELEASED;
    }

    private RulePack.Source source() {
        if (rules == null) {
            return new RulePack.Source(RuleFiles.shipped(), bench.ruleBook());
        }
        RuleFiles files = of(rules);
        return new RulePack.Source(files, files.load());
    }

    /** @throws UnusableInput when there are none */
    static RuleFiles of(String folder) {
        try {
            return RuleFiles.below(Path.of(folder));
        } catch (InvalidPathException e) {
            throw UnusableInput.of(folder, "this is not the name of a folder", "");
        }
    }

    /** Keeps a rule book in the workshop. */
    @Command(name = "keep", sortOptions = false, description = {"Keep a rule book in the workshop, so that a later version of chock can judge its sign-offs again.",
        "'chock keys trust' does this automatically for the rule book in use. Needs the key of a lead or a rule author."})
    static final class Keep implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;
        @Mixin private PassphraseOption passphrase;
        @Parameters(arity = "0..1", paramLabel = "FILE", description = "A rule book that 'chock rules pack' made. Default: the one this workshop signs by now.")
        private String file;
        @Option(names = "--by", required = true, paramLabel = "FILE", description = "Key of the lead or the rule author who keeps it.")
        private String by;

        Keep(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            SigningKey key = KeyFile.read(Bench.path(by), passphrase.ask(bench, by));
            Path kept = file == null ? RulePacks.keep(workshop, inUse(workshop, bench), key, bench.clock()) : RulePacks.keep(workshop, Bench.path(file), key, bench.clock());
            bench.print(new Page(bench.bold()).put(0, "Kept: ", kept.toString()).toString());
            return Bench.RELEASED;
        }
    }

    /** The rule book this workshop signs by, with its files. */
    static RulePack.Source inUse(Shop shop, Bench bench) {
        return new RulePack.Source(RuleFiles.shipped(), Workshop.book(shop, bench));
    }

    /** Keeps the rule book in use when a lead uses a key; a failure is reported and stops nothing. */
    static void keepInUse(Shop shop, SigningKey key, Bench bench) {
        try {
            if (RulePacks.mayKeep(shop, key, bench.clock())) {
                RulePacks.keep(shop, inUse(shop, bench), key, bench.clock());
            }
        } catch (UnusableInput e) {
            bench.say("Rule book not kept, so a later version of chock cannot judge by it: " + e.getMessage());
        }
    }
}
