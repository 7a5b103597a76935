package chock.cli;

import chock.assess.Assessment;
import chock.record.UnusableInput;
import chock.report.Page;
import chock.rulebook.RuleBook;
import chock.signoff.Shop;
import chock.signoff.Verifier;
import java.util.List;

/** Tells below a report how the sign-offs of its machine stand. Apart, so that nobody loads it who has no workshop. */
final class SignOffStanding {
    private SignOffStanding() { }

    /** In the text below it; beside any other format on standard error. */
    static int tell(Bench bench, ShopOption option, RuleBook book, List<Assessment> judged, Format format) {
        try {
            Shop shop = Workshop.of(option, bench);
            Page page = new Page(bench.bold());
            judged.forEach(a -> Verifier.standing(shop, a.record(), book.vocabulary(), a.asOf()).forEach(says -> {
                if (format == Format.TEXT) {
                    page.put(0, a.record().id() + ": ", says);
                } else {
                    bench.say(a.record().id() + ": " + says);
                }
            }));
            bench.print(page.toString().isEmpty() ? "" : "\n" + page);
            return Bench.RELEASED;
        } catch (UnusableInput e) {
            return bench.refuse(e);
        }
    }
}
