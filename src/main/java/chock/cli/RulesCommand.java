package chock.cli;

import chock.rehearse.Scenarios;
import chock.report.CatalogueJson;
import chock.report.CheckInWords;
import chock.report.Json;
import chock.rulebook.Card;
import chock.rulebook.HouseBook;
import chock.rulebook.RuleBook;
import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
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

/** The catalogue of checks, or one of them explained. */
@Command(name = "rules", sortOptions = false, synopsisSubcommandLabel = "[pack | keep]",
        description = "List all checks, or explain one: evidence, limits, sources, what undoes it. Pack a rule book into one signed file, or keep one in the workshop.")
final class RulesCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "Check to explain, such as brakes.pad-thickness.")
    private String id;

    @Mixin private RuleBookOption house;

    @Option(names = "--overdue", description = "List the limits due to be looked up again.")
    private boolean overdue;

    @Option(names = "--as-of", paramLabel = "DATE", converter = Day.class, description = "With --overdue: on this day, such as 2026-11-25. Default: today.")
    private LocalDate asOf;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    RulesCommand(Bench bench) {
        this.bench = bench;
    }

    static CommandLine with(Bench bench) {
        return new CommandLine(new RulesCommand(bench)).addSubcommand(new PackCommand(bench)).addSubcommand(new PackCommand.Keep(bench));
    }

    @Override
    public Integer call() throws IOException {
        if (overdue && id != null || asOf != null && !overdue) {
            throw new ParameterException(spec.commandLine(), overdue ? "--overdue lists all limits; leave the ID out." : "--as-of belongs to --overdue.");
        }
        RuleBook book = house.named(bench);
        if (overdue) {
            LocalDate day = asOf == null ? LocalDate.ofInstant(bench.clock().instant(), bench.clock().getZone()) : asOf;
            bench.print(format == Format.JSON ? Json.pretty(CatalogueJson.overdue(book, day)) : Catalogue.overdue(book, day, bench.bold()));
        } else if (id == null) {
            bench.print(format == Format.JSON ? Json.pretty(CatalogueJson.of(book)) : Catalogue.of(book, bench.bold()));
        } else {
            Card card = named(book).orElseThrow(() -> new ParameterException(spec.commandLine(), "There is no check '" + id + "'. " + near(book)));
            Scenarios scenarios = scenarios(book);
            bench.print(format == Format.JSON ? Json.pretty(CatalogueJson.of(card, book, scenarios.of(card.id()))) : Catalogue.of(CheckInWords.of(card, book, scenarios.of(card.id())), bench.bold()));
        }
        return 0;
    }

    private static Scenarios scenarios(RuleBook book) throws IOException {
        Scenarios shipped = Scenarios.shipped();
        Path ofHouse = book.house().map(HouseBook::features).orElse(null);
        return ofHouse == null ? shipped : shipped.and(Scenarios.below(ofHouse, ofHouse.toString()));
    }

    private Optional<Card> named(RuleBook book) {
        return Optional.ofNullable(book.cards().get(id))
                .or(() -> book.cards().values().stream().filter(card -> card.formerly().contains(id)).findFirst());
    }

    private String near(RuleBook book) {
        String thing = id.substring(id.indexOf('.') + 1);
        List<String> near = book.cards().keySet().stream().filter(known -> !thing.isBlank() && known.contains(thing) || known.startsWith(id + ".")).toList();
        return near.isEmpty() ? "'chock rules' lists them all." : "Did you mean " + String.join(", ", near) + "?";
    }

    /** Reads a day. */
    static final class Day implements ITypeConverter<LocalDate> {
        @Override
        public LocalDate convert(String text) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeException e) {
                throw new TypeConversionException("'" + text + "' is not a day; write 2026-11-25");
            }
        }
    }
}
