package chock.cli;

import chock.signoff.Shop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints the settings of a workshop to fill in. */
@Command(name = "shop", description = "Print the settings of a workshop to fill in.")
final class NewShopCommand implements Callable<Integer> {
    private final Bench bench;

    @Mixin private HelpOption help;

    NewShopCommand(Bench bench) {
        this.bench = bench;
    }

    @Override
    public Integer call() {
        bench.print(Shop.SKELETON);
        return 0;
    }
}
