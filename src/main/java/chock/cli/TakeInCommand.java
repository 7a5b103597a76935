package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.record.Fault;
import chock.record.SheetTakenIn;
import chock.record.UnusableInput;
import java.util.Arrays;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a filled-in sheet into a record. */
@Command(name = "take-in", sortOptions = false, description = "Add what was filled in on a sheet of worksheet --format yaml to the record. Each line that would be refused in a record is refused here, and the rest is taken.",
        footer = {"", "Exit status: 0 everything was taken; 1 some lines were refused; 2 unusable input or usage; 3 chock itself failed."})
final class TakeInCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;
    @Mixin private HouseOption house;

    @Parameters(index = "0", paramLabel = "SHEET", description = "The filled-in sheet; - is standard input.")
    private String sheet;

    @Parameters(index = "1", paramLabel = "RECORD", description = "The record file it is added to.")
    private String record;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class, description = "As of this moment; nothing on the sheet may be later. Default: now.")
    private AsOf asOf;

    TakeInCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        if (record.equals("-")) {
            throw UnusableInput.of("standard input", "a record on standard input cannot be added to", "Name the record file");
        }
        byte[] before = bench.read(record);
        var book = house.inForce(bench);
        Judging.Read read = new Records(bench, book, asOf).read(record, before);
        SheetTakenIn taken = SheetTakenIn.of(Bench.name(sheet), bench.read(sheet), record, before, book.vocabulary(), read.asOf());
        if (!Arrays.equals(before, bench.read(record))) {
            throw UnusableInput.of(record, "somebody wrote to it meanwhile", "Nothing was changed; do it again");
        }
        if (!taken.entries().isEmpty()) {
            bench.replace(record, taken.record());
        }
        int n = taken.entries().size();
        bench.print((n == 0 ? "Nothing was added" : n + (n == 1 ? " entry" : " entries") + " added") + " to " + record + "."
                + (taken.there() == 0 ? "" : " " + taken.there() + (taken.there() == 1 ? " line is" : " lines are") + " there already.") + "\n");
        taken.notes().forEach(note -> bench.print(note + "\n"));
        taken.refused().stream().map(Fault::toString).forEach(bench::say);
        return taken.refused().isEmpty() ? Bench.RELEASED : Bench.BLOCKED;
    }
}
