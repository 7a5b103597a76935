package chock.cli;

import picocli.CommandLine.Option;

/** The help every command has. */
final class HelpOption {
    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;
}
