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
     * The rule book with the house named in force; without one, with the house the workshop in CHOCK_SHOP is bound to.
     * A gate held by the house must not look open on a tag or a work sheet.
     *
     * @throws chock.record.UnusableInput when the house or the workshop's settings are not sound
     */
    RuleBook inForce(Bench bench) {
        String shop = bench.env().getOrDefault(ShopOption.VARIABLE, "");
        return shop.isBlank() ? named(bench) : Workshop.book(shop, this, bench);
    }

    /**
     * The rule book with the house named in force, or the shipped one.
     *
     * @throws chock.record.UnusableInput when the house is not sound
     */
    RuleBook named(Bench bench) {
        return bench.ruleBook(folder);
    }
}
