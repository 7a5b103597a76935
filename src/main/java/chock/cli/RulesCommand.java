package chock.cli;

import chock.report.Json;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The catalogue of checks, or one of them explained. */
@Command(name = "rules", sortOptions = false, description = "List all checks, or explain one: evidence, limits, sources, what undoes it.")
final class RulesCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(arity = "0..1", paramLabel = "ID", description = "Check to explain, such as brakes.pad-thickness.")
    private String id;

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    RulesCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        RuleBook book = bench.ruleBook();
        if (id == null) {
            bench.print(format == Format.JSON ? Json.pretty(CatalogueJson.of(book)) : Catalogue.of(book, bench.bold()));
        } else {
            Card card = named(book).orElseThrow(() -> new ParameterException(spec.commandLine(), "There is no check '" + id + "'. " + near(book)));
            bench.print(format == Format.JSON ? Json.pretty(CatalogueJson.of(card, book)) : Catalogue.of(card, book, bench.bold()));
        }
        return 0;
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
}
