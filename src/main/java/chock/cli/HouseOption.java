package chock.cli;

import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import picocli.CommandLine.Option;

/** Whose rules are in force besides the shipped ones. */
class HouseOption {
    @Option(names = "--house", paramLabel = "DIR", description = "Also hold it against the rules of this house. Its *.drl files are code: name only a folder you trust.")
    private String folder;

    /** True when other rules are named than a workshop has anyway. */
    boolean isGiven() {
        return folder != null;
    }

    /** The rule book that a house tightens. */
    RuleBook base(Bench bench) {
        return bench.ruleBook();
    }

    /**
     * The rule book with the house named in force; without one, with the house the workshop in CHOCK_SHOP is bound to.
     * A gate held by the house must not look open on a tag or a work sheet.
     *
     * @throws UnusableInput when the house or the workshop's settings are not sound
     */
    RuleBook inForce(Bench bench) {
        String shop = bench.env().getOrDefault(ShopOption.VARIABLE, "");
        return shop.isBlank() ? named(bench) : Workshop.book(shop, this, bench);
    }

    /**
     * The rule book with the house named in force, or without one.
     *
     * @throws UnusableInput when the house is not sound
     */
    RuleBook named(Bench bench) {
        return named(bench, null);
    }

    /** @param bound folder of the house in force where none is named, or null */
    RuleBook named(Bench bench, String bound) {
        RuleBook base = base(bench);
        if (base.house().isEmpty()) {
            return Bench.with(base, folder == null ? bound : folder);
        }
        if (folder != null) {
            throw UnusableInput.of("--house", "the rule book already contains the house rules '" + base.house().get().name() + "'", "Leave --house out, or name a rule book without a house");
        }
        return base;
    }
}
