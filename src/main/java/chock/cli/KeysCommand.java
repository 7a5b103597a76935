package chock.cli;

import chock.report.Page;
import chock.signoff.KeyFile;
import chock.signoff.Role;
import chock.signoff.Shop;
import chock.signoff.Signers;
import chock.signoff.SigningKey;
import chock.signoff.TrustList;
import chock.signoff.TrustedKey;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Keys, and whose are believed. */
@Command(name = "keys", synopsisSubcommandLabel = "WHAT", description = "Make a key; say whose keys are believed: new, list, trust, revoke.")
final class KeysCommand implements Runnable {
    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    private KeysCommand() { }

    static CommandLine with(Bench bench) {
        // One id in 64 begins with a dash; it is no option for that.
        CommandLine revoke = new CommandLine(new Revoke(bench)).setUnmatchedOptionsArePositionalParams(true).setPosixClusteredShortOptionsAllowed(false);
        return new CommandLine(new KeysCommand()).addSubcommand(new New(bench)).addSubcommand(new ListKeys(bench)).addSubcommand(new Trust(bench)).addSubcommand(revoke);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "Do what with keys? One of " + String.join(", ", spec.subcommands().keySet()) + ".");
    }

    /** Makes a key. */
    @Command(name = "new", sortOptions = false, description = "Make a key of your own, locked with a passphrase. Give the lead the file that ends in .jwk, and nobody the other.")
    static final class New implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private PassphraseOption passphrase;
        @Parameters(paramLabel = "FILE", description = "Where the key goes, such as ida.pem.")
        private String file;

        New(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Path path = Bench.path(file);
            SigningKey key = SigningKey.create();
            Path open = KeyFile.write(path, key, passphrase.askTwice(bench, file));
            bench.print(new Page(bench.bold()).put(0, "Key:    ", path + " (keep it to yourself)").put(0, "Public: ", open + " (for the lead)").put(0, "Id:     ", key.id()).toString());
            return 0;
        }
    }

    /** Lists the keys that are believed. */
    @Command(name = "list", sortOptions = false, description = "List whose keys are believed, and until when.")
    static final class ListKeys implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;
        @Option(names = "--trust", paramLabel = "FILE", description = "A trust list. Default: that of the workshop.")
        private String trust;

        ListKeys(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = trust == null ? Workshop.of(shop, bench) : null;
            ZoneId zone = workshop == null ? ZoneOffset.UTC : workshop.zone();
            TrustList list = TrustList.of(workshop == null ? Bench.path(trust) : workshop.trust());
            bench.print(SignOffText.keys(list.keys(), zone, bench.clock().instant(), bench.bold()));
            return 0;
        }
    }

    /** Puts a key on the trust list. */
    @Command(name = "trust", sortOptions = false, description = {"Believe a key: say whose it is, and until when.",
        "Only a lead can. The first key on an empty list is that of a lead, and is put there with itself."})
    static final class Trust implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;
        @Mixin private PassphraseOption passphrase;
        @Parameters(paramLabel = "FILE.jwk", description = "The public half of the key.")
        private String file;
        @Option(names = "--name", required = true, paramLabel = "NAME", description = "Full name of its owner.")
        private String name;
        @Option(names = "--role", required = true, paramLabel = "ROLE", description = "inspector, lead or author (signs rule books, not releases).")
        private String role;
        @Option(names = "--from", paramLabel = "DAY", converter = Day.class, description = "First day it may sign. Default: from now on.")
        private LocalDate from;
        @Option(names = "--until", required = true, paramLabel = "DAY", converter = Day.class, description = "Last day it may sign.")
        private LocalDate until;
        @Option(names = "--by", required = true, paramLabel = "FILE", description = "Key of the lead who says so.")
        private String by;
        @Spec private CommandSpec spec;

        Trust(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Role may = Role.of(role).orElseThrow(() -> new ParameterException(spec.commandLine(), "'" + role + "' is not one of inspector, lead, author"));
            Shop workshop = Workshop.of(shop, bench);
            SigningKey lead = KeyFile.read(Bench.path(by), passphrase.ask(bench, by));
            TrustedKey key = Signers.trust(workshop, Bench.path(file), name, may, from, until, lead, bench.clock());
            PackCommand.keepInUse(workshop, lead, bench);
            bench.print(new Page(bench.bold()).put(0, "Trusted: " + key.name() + " (" + key.role().word() + ") until " + SignOffText.moment(key.until(), workshop.zone()) + ", key " + key.id()).toString());
            return Bench.RELEASED;
        }
    }

    /** Takes a key back. */
    @Command(name = "revoke", sortOptions = false, description = {"Believe a key no longer, and nothing it ever signed: it was lost, or somebody else had it.",
        "A key whose owner left is not revoked but trusted anew with an earlier last day."})
    static final class Revoke implements Callable<Integer> {
        private final Bench bench;
        @Mixin private HelpOption help;
        @Mixin private ShopOption shop;
        @Mixin private PassphraseOption passphrase;
        @Parameters(paramLabel = "ID", description = "Id of the key, as 'keys list' shows it.")
        private String id;
        @Option(names = "--reason", required = true, paramLabel = "WORDS", description = "Why; whoever verifies one of its sign-offs reads it.")
        private String reason;
        @Option(names = "--by", required = true, paramLabel = "FILE", description = "Key of the lead who says so.")
        private String by;

        Revoke(Bench bench) {
            this.bench = bench;
        }

        @Override
        public Integer call() {
            Shop workshop = Workshop.of(shop, bench);
            SigningKey lead = KeyFile.read(Bench.path(by), passphrase.ask(bench, by));
            TrustedKey key = Signers.revoke(workshop, id, reason, lead, bench.clock());
            bench.print(new Page(bench.bold()).put(0, "Revoked: the key of " + key.name() + " (" + key.id() + "). Every sign-off made with it is void.").toString());
            return Bench.RELEASED;
        }
    }

    /** Reads a day. */
    static final class Day implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String word) {
            try {
                LocalDate day = LocalDate.parse(word);
                if (day.getYear() >= 1900 && day.getYear() <= 2999) {
                    return day;
                }
            } catch (DateTimeException e) {
                // falls through to the one message that says what to write
            }
            throw new TypeConversionException("'" + word + "' is not a day; write 2028-12-31");
        }
    }
}
