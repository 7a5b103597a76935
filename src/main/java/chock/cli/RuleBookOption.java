package chock.cli;

import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import chock.signoff.RulePack;
import chock.signoff.RulePacks;
import chock.signoff.Shop;
import chock.signoff.TrustList;
import picocli.CommandLine.Option;

/** Which rule book, besides which house. It loads the classes of the sign-offs only when a rule book is named. */
final class RuleBookOption extends HouseOption {
    @Option(names = "--rule-book", paramLabel = "FILE", description = "Judge by this rule book, made by 'chock rules pack', instead of the one inside the program. Its rules are code, so it is read only when signed by a rule author or a lead on the trust list.")
    private String pack;

    @Option(names = "--trust", paramLabel = "FILE", description = "With --rule-book: trust list to check its signature with. Default: that of the workshop.")
    private String trust;

    private ShopOption shop = new ShopOption();

    /** This option where the command knows which workshop it is for. */
    RuleBookOption of(ShopOption workshop) {
        shop = workshop;
        return this;
    }

    @Override
    boolean isGiven() {
        return pack != null || super.isGiven();
    }

    /** The file named, or null. */
    String pack() {
        return pack;
    }

    @Override
    RuleBook base(Bench bench) {
        if (pack == null) {
            if (trust != null) {
                throw UnusableInput.of("--trust", "it is only used with --rule-book", "Add --rule-book FILE, or leave it out");
            }
            return super.base(bench);
        }
        if (trust == null && !shop.isGiven(bench)) {
            throw UnusableInput.of("--rule-book", "no trust list to check its signature with", "Give --trust FILE, or the workshop with --shop or CHOCK_SHOP");
        }
        String name = Bench.name(pack);
        byte[] bytes = bench.read(pack);
        RulePack opened = trust != null ? RulePack.open(name, bytes, TrustList.of(Bench.path(trust)), bench.clock().instant())
                : RulePacks.open(Shop.of(Bench.path(shop.name(bench))), name, bytes, bench.clock().instant());
        if (!opened.digest().equals(bench.ruleBook().digest())) {
            bench.say("Judging by " + opened.words() + ". Its rules are compiled first; this takes up to half a minute.");
        }
        return opened.load();
    }
}
