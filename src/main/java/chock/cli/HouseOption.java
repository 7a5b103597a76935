package chock.cli;

import chock.rulebook.RuleBook;
import picocli.CommandLine.Option;

/** Whose rules are in force besides the shipped ones. */
final class HouseOption {
    @Option(names = "--house", paramLabel = "DIR", description = "Also hold it against the rules of this house. Its *.drl files are code: name only a folder you trust.")
    private String folder;

    boolean isGiven() {
        return folder != null;
    }

    /**
     * The rule book with that house in force, or the shipped one.
     *
     * @throws chock.record.UnusableInput when the house is not sound
     */
    RuleBook book(Bench bench) {
        return bench.ruleBook(folder);
    }
}
