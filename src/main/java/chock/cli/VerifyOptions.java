package chock.cli;

import chock.archive.AsOf;
import chock.rulebook.RuleBook;
import chock.signoff.Shop;
import chock.signoff.TrustList;
import chock.signoff.Verification;
import chock.signoff.Verifier;
import java.time.Instant;
import java.time.ZoneOffset;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;

/** By whose keys a sign-off is looked at, and for which moment. */
final class VerifyOptions {
    @Mixin private ShopOption shop;

    @Option(names = "--trust", paramLabel = "FILE", description = "Trust list to go by. Default: that of the workshop, with its ledger.")
    private String trust;

    @Option(names = "--note", description = "Also write into the ledger what the record voids, so that it stays void. Without it nothing is written.")
    private boolean note;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class, description = "The moment it is to hold at; without a zone, in UTC. Default: now.")
    private AsOf asOf;

    /**
     * What was found.
     *
     * @param moment the moment it was to hold at
     */
    record Looked(Verification found, Instant moment) { }

    /**
     * @param spec the command, for its usage
     * @param signOff file of the sign-off or the seal
     * @param record file of the record, or null
     */
    Looked look(Bench bench, CommandSpec spec, String signOff, String record) {
        if (trust == null && !shop.isGiven(bench)) {
            throw new ParameterException(spec.commandLine(), "Whose keys are believed? Give --trust FILE or --shop FILE.");
        }
        Shop workshop = trust == null ? Workshop.of(shop, bench) : null;
        TrustList list = TrustList.of(trust != null ? Bench.path(trust) : workshop.trust());
        RuleBook book = workshop == null ? bench.ruleBook() : Workshop.book(workshop, bench);
        Instant moment = asOf == null ? bench.clock().instant() : asOf.in(ZoneOffset.UTC);
        Verifier.Source written = record == null ? null : new Verifier.Source(Bench.name(record), bench.read(record));
        if (note && (workshop == null || written == null)) {
            throw new ParameterException(spec.commandLine(), "--note writes into the ledger of a workshop what its record voids; give --shop FILE and the record.");
        }
        if (note) {
            String missed = Verifier.note(workshop, book, written, bench.clock());
            if (missed != null) {
                bench.say(missed);
            }
        }
        return new Looked(new Verifier(list, workshop, book, moment).verify(new Verifier.Source(Bench.name(signOff), bench.read(signOff)), written), moment);
    }
}
