package chock.cli;

import chock.record.UnusableInput;
import chock.rulebook.RuleBook;
import chock.signoff.Shop;

/** The workshop a command is for. */
final class Workshop {
    private Workshop() { }

    /** @throws UnusableInput when none is given, or its settings cannot be used */
    static Shop of(ShopOption option, Bench bench) {
        String name = option.name(bench);
        if (name == null) {
            throw UnusableInput.of("--shop", "it is not known which workshop this is for", "Give --shop FILE, or set CHOCK_SHOP; 'chock new shop' prints settings to fill in");
        }
        return Shop.of(Bench.path(name));
    }

    /** The rule book with the house rules the workshop is bound to in force, whether or not they are still those it named, and in its place. */
    static RuleBook book(Shop shop, Bench bench) {
        return book(shop, new HouseOption(), bench);
    }

    /** The rule book of this workshop, with the house that was named in force in place of its own. */
    static RuleBook book(Shop shop, HouseOption house, Bench bench) {
        return shop.equip(house.named(bench, shop.house() == null ? null : shop.house().folder().toString())).at(shop.place());
    }

    /** The same of the workshop whose settings lie there. */
    static RuleBook book(String settings, HouseOption house, Bench bench) {
        return book(Shop.of(Bench.path(settings)), house, bench);
    }
}
