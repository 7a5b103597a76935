package chock.cli;

import chock.record.UnusableInput;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes the parts of a new check, to be filled in. */
@Command(name = "check", sortOptions = false, description = "Write the parts of a new check, to be filled in: card, limit, rule and scenarios.")
final class NewCheckCommand implements Callable<Integer> {
    private final Bench bench;

    @Spec private CommandSpec spec;
    @Mixin private HelpOption help;

    @Parameters(paramLabel = "ID", description = "Its id: system, dot, thing, such as brakes.disc-colour; in a house folder house.disc-colour.")
    private String id;

    @Option(names = "--into", paramLabel = "DIR", description = "Folder that holds rules and features. Default: this one.")
    private String into;

    @Option(names = "--house", paramLabel = "DIR", description = "Write into this house folder instead.")
    private String house;

    @Option(names = "--seen", description = "It is looked at, not measured: no limit.")
    private boolean seen;

    NewCheckCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (!id.matches("[a-z]+\\.[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
            throw new ParameterException(spec.commandLine(), "'" + id + "' is not an id; write system, dot, thing, in small letters with dashes, such as brakes.disc-colour");
        }
        if (into != null && house != null) {
            throw new ParameterException(spec.commandLine(), "Give --into or --house, not both.");
        }
        if (id.startsWith("house.") != (house != null)) {
            throw new ParameterException(spec.commandLine(), house == null ? "Ids that begin with house. belong to a house; add --house DIR." : "In a house the id begins with house.; write house." + id.substring(id.indexOf('.') + 1));
        }
        Scaffold scaffold = new Scaffold(id, !seen, LocalDate.ofInstant(bench.clock().instant(), bench.clock().getZone()));
        List<Path> written = house == null ? scaffold.intoTree(path(into == null ? "." : into)) : scaffold.intoHouse(path(house));
        StringBuilder said = new StringBuilder();
        written.forEach(file -> said.append(file).append('\n'));
        bench.print(said + "\nFill in whatever says FILL IN; until then the rule book refuses to load, and names what is left.\n"
                + (house == null ? "Then name the check under its topic in docs/topics.yaml.\n" : ""));
        return 0;
    }

    private static Path path(String name) {
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw UnusableInput.of(name, "this is not the name of a folder", "");
        }
    }
}
