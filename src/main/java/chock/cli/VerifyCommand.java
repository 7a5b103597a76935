package chock.cli;

import chock.rulebook.RuleBook;
import chock.signoff.Shop;
import chock.signoff.TrustList;
import chock.signoff.Verification;
import chock.signoff.Verifier;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says of a sign-off what holds and what does not. */
@Command(name = "verify", sortOptions = false, description = "Say of a sign-off what holds and what does not. Asks nobody outside.")
final class VerifyCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;
    @Mixin private ShopOption shop;

    @Parameters(index = "0", paramLabel = "SIGNOFF", description = "The sign-off, or the seal read from its paper.")
    private String signOff;

    @Parameters(index = "1", arity = "0..1", paramLabel = "RECORD", description = "The job record as it is now.")
    private String record;

    @Option(names = "--trust", paramLabel = "FILE", description = "Trust list to go by. Default: that of the workshop, with its ledger.")
    private String trust;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOf.Converter.class, description = "The moment it is to hold at; without a zone, in UTC. Default: now.")
    private AsOf asOf;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    VerifyCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (trust == null && !shop.isGiven(bench)) {
            throw new ParameterException(spec.commandLine(), "Whose keys are believed? Give --trust FILE or --shop FILE.");
        }
        Shop workshop = trust == null ? Workshop.of(shop, bench) : null;
        TrustList list = TrustList.of(trust != null ? Bench.path(trust) : workshop.trust());
        RuleBook book = workshop == null ? bench.ruleBook() : Workshop.book(workshop, bench);
        Instant moment = asOf == null ? bench.clock().instant() : asOf.in(ZoneOffset.UTC);
        Verifier.Source written = record == null ? null : new Verifier.Source(Bench.name(record), bench.read(record));
        if (workshop != null && written != null) {
            String missed = Verifier.note(workshop, book, written, bench.clock());
            if (missed != null) {
                bench.say(missed);
            }
        }
        Verification found = new Verifier(list, workshop, book, moment).verify(new Verifier.Source(Bench.name(signOff), bench.read(signOff)), written);
        bench.print(format == Format.JSON ? SignOffText.verifiedJson(found) : SignOffText.verified(found, bench.bold()));
        return found.holds() ? Bench.RELEASED : Bench.BLOCKED;
    }
}
