package chock.cli;

import chock.record.Gate;
import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import chock.signoff.KeyFile;
import chock.signoff.RulePacks;
import chock.signoff.Shop;
import chock.signoff.SignOffs;
import chock.signoff.SigningKey;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts a name to a release. */
@Command(name = "sign", sortOptions = false, description = {"Judge a record now, and sign the release.",
    "The name comes from the key and the role from the trust list. What is blocked is not signed; the refusal goes into the ledger."})
final class SignCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private ShopOption shop;
    @Mixin private PassphraseOption passphrase;

    @Parameters(arity = "1", paramLabel = "RECORD", description = "Job record in YAML or JSON.")
    private String file;

    @Option(names = "--gate", paramLabel = "GATE", required = true, converter = AssessCommand.GateWord.class, description = "The gate to sign.")
    private Gate gate;

    @Option(names = "--key", paramLabel = "FILE", required = true, description = "Your key.")
    private String keyFile;

    @Option(names = "--out", paramLabel = "FILE", description = "Where the sign-off goes. Default: beside the record, named by gate and time.")
    private String out;

    SignCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        Shop workshop = Workshop.of(shop, bench);
        byte[] bytes = bench.read(file);
        Path record = Path.of(file.equals("-") ? "record" : file);
        Path keys = Bench.path(keyFile);
        KeyFile.check(keys);
        char[] words = passphrase.ask(bench, keyFile);
        RuleBook book = Workshop.book(workshop, bench);
        SigningKey key;
        try {
            key = KeyFile.read(keys, words);
        } catch (UnusableInput closed) {
            throw SignOffs.keyStayedClosed(workshop, book, record, bytes, gate, keys, closed, bench.clock());
        }
        SignOffs.Signed signed = SignOffs.sign(workshop, key, book, record, bytes, gate, out == null ? null : Bench.path(out), bench.clock());
        PackCommand.keepInUse(workshop, key, bench);
        bench.print(SignOffText.signed(signed, RulePacks.isKept(workshop, book.digest()), bench.bold()));
        return Bench.RELEASED;
    }
}
