package chock.cli;

import chock.figure.BadFigureInput;
import chock.figure.Figure;
import chock.figure.FigureResult;
import chock.figure.Figures;
import chock.figure.ResultValue;
import chock.record.Plausible;
import chock.report.Json;
import chock.report.Page;
import chock.rulebook.RuleBook;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** One bench computation with its source, or the list of them. */
@Command(name = "figure", sortOptions = false, description = "Compute one figure of the trade, with its source; without a name, list them.")
final class FigureCommand implements Callable<Integer> {
    private static final JsonMapper JSON = new JsonMapper();

    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "Name of the figure.")
    private String name;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "key=value",
            description = "What it is computed from; amounts carry their unit, such as pressure=36psi.")
    private List<String> written = List.of();

    @Option(names = "--format", paramLabel = "FORMAT", converter = Format.OfList.class, defaultValue = "text", description = "text or json. Default: text.")
    private Format format;

    FigureCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        try {
            if (name == null) {
                List<Figure> all = Figures.names().stream().map(Figures::named).toList();
                bench.print(format == Format.JSON ? Json.pretty(list(all)) : text(all));
            } else {
                Map<String, String> arguments = arguments();
                FigureResult result = Figures.named(name).compute(arguments);
                refuseImpossible(arguments);
                bench.print(format == Format.JSON ? Json.pretty(node(result)) : text(result));
            }
            return 0;
        } catch (BadFigureInput e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
    }

    // After the computation, which knows better what is no amount at all.
    private void refuseImpossible(Map<String, String> arguments) {
        Plausible plausible = RuleBook.shippedPlausible();
        arguments.forEach((argument, value) -> plausible.refuses(name, argument, value).ifPresent(why -> {
            throw new BadFigureInput(why);
        }));
    }

    private Map<String, String> arguments() {
        Map<String, String> arguments = new LinkedHashMap<>();
        for (String pair : written) {
            int equals = pair.indexOf('=');
            if (equals < 1) {
                throw new BadFigureInput("'" + pair + "' is not key=value, such as " + Figures.named(name).example());
            }
            if (arguments.put(pair.substring(0, equals), pair.substring(equals + 1)) != null) {
                throw new BadFigureInput(pair.substring(0, equals) + " is given twice; give it once");
            }
        }
        return arguments;
    }

    private String text(FigureResult result) {
        Page page = new Page(bench.bold());
        page.heading(result.name());
        result.results().forEach((what, value) -> page.put(2, what + ": ", value.words()));
        page.put(2, "From: ", String.join(", ", result.inputs().entrySet().stream().map(i -> i.getKey() + " " + i.getValue()).toList()));
        page.put(2, "Source: ", result.source());
        return page.toString();
    }

    private String text(List<Figure> all) {
        Page page = new Page(bench.bold());
        for (Figure figure : all) {
            page.heading(figure.name()).put(2, figure.purpose());
            figure.parameters().forEach(p -> page.put(4, p.name() + ": ", p.what() + (p.required() ? "" : " (may be left out)")));
            page.put(2, "Such as: ", "chock figure " + figure.example()).gap();
        }
        return page.toString();
    }

    private static ObjectNode node(FigureResult result) {
        ObjectNode node = JSON.createObjectNode().put("figure", result.name());
        ObjectNode inputs = node.putObject("inputs");
        result.inputs().forEach(inputs::put);
        ObjectNode results = node.putObject("results");
        result.results().forEach((what, value) -> results.set(what, node(value)));
        return node.put("source", result.source());
    }

    private static ObjectNode node(ResultValue value) {
        ObjectNode node = JSON.createObjectNode();
        node.set("value", JSON.valueToTree(value.plain()));
        node.put("unit", value.unit().orElse(null));
        value.why().ifPresent(why -> node.put("why", why));
        return node;
    }

    private static ArrayNode list(List<Figure> all) {
        ArrayNode list = JSON.createArrayNode();
        for (Figure figure : all) {
            ObjectNode node = list.addObject().put("figure", figure.name()).put("purpose", figure.purpose());
            ArrayNode parameters = node.putArray("parameters");
            figure.parameters().forEach(p -> parameters.addObject().put("name", p.name()).put("what", p.what()).put("example", p.example()).put("required", p.required()));
            node.put("example", figure.example()).put("source", figure.source());
        }
        return list;
    }
}
