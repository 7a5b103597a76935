package chock.cli;

import chock.archive.AsOf;
import chock.archive.Judging;
import chock.rulebook.RuleBook;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Of which record a paper is made, and as of when. */
final class RecordOptions {
    @Parameters(arity = "1", paramLabel = "RECORD", description = "Job record in YAML or JSON; - is standard input.")
    private String file;

    @Option(names = "--as-of", paramLabel = "DATE-TIME", converter = AsOfWord.class,
            description = "As of this moment, such as 2026-11-25T12:00; without a zone, on the workshop's clock. Default: now.")
    private AsOf asOf;

    @Mixin private HouseOption house;

    /** The rule book the record is held against. */
    RuleBook book(Bench bench) {
        return house.inForce(bench);
    }

    Judging.Read read(Bench bench, RuleBook book) {
        return new Records(bench, book, asOf).read(file);
    }
}
