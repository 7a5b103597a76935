package chock.cli;

import picocli.CommandLine.Option;

/** Which workshop. It names no class of the sign-offs, for whoever only judges loads none of them. */
final class ShopOption {
    static final String VARIABLE = "CHOCK_SHOP";

    @Option(names = "--shop", paramLabel = "FILE", description = "Settings of the workshop; 'chock new shop' prints some to fill in. Default: the file in CHOCK_SHOP.")
    private String file;

    /** True when there is a workshop to speak of. */
    boolean isGiven(Bench bench) {
        return name(bench) != null;
    }

    /** The file, or null. */
    String name(Bench bench) {
        String variable = bench.env().getOrDefault(VARIABLE, "");
        return file != null ? file : variable.isBlank() ? null : variable;
    }
}
