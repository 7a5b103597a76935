package chock.cli;

import chock.record.RecordSchema;
import chock.report.Json;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints the JSON Schema of a job record, for an editor that completes and checks while one writes. */
@Command(name = "schema", description = "Print the JSON Schema of a job record, with the words this rule book knows.")
final class SchemaCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;

    SchemaCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        bench.print(Json.pretty(RecordSchema.schema(bench.ruleBook().vocabulary())));
        return 0;
    }
}
