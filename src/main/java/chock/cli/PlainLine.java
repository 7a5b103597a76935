package chock.cli;

import chock.archive.AsOf;
import chock.record.Gate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the plainest line of the command that is asked for most, such as
 * {@code assess --as-of 2026-11-25T12:00 --gate road-test record.yaml}: to load the library that reads every other
 * line takes a fifth of judging one machine. Whatever is not plain, or not right, is left to the library, which also
 * says what is wrong with it.
 */
final class PlainLine {
    private final List<String> files = new ArrayList<>();
    private final List<Gate> gates = new ArrayList<>();
    private AsOf asOf;
    private Format format;

    private PlainLine() { }

    /** The command of this line, ready to run; empty when the line is not as plain as that. */
    static Optional<AssessCommand> of(Bench bench, String... args) {
        if (args.length < 2 || !args[0].equals("assess")) {
            return Optional.empty();
        }
        PlainLine line = new PlainLine();
        for (int i = 1; i < args.length; i++) {
            if (!args[i].startsWith("--")) {
                if (!line.takesFile(args[i])) {
                    return Optional.empty();
                }
            } else if (i + 1 == args.length || !line.takesOption(args[i], args[++i])) {
                return Optional.empty();
            }
        }
        return line.files.isEmpty() ? Optional.empty() : Optional.of(new AssessCommand(bench,
                new AssessCommand.Asked(line.files, line.gates.isEmpty() ? null : line.gates, line.asOf,
                        line.format == null ? Format.TEXT : line.format)));
    }

    private boolean takesFile(String word) {
        boolean again = word.equals("-") && files.contains(word);
        if (word.isEmpty() || word.startsWith("-") && word.length() > 1 || again) {
            return false;
        }
        return files.add(word);
    }

    /** False when the option is another one, is given again, or does not take this value. */
    private boolean takesOption(String option, String value) {
        switch (option) {
            case "--gate":
                return Gate.of(value).map(gates::add).orElse(false);
            case "--as-of":
                Optional<AsOf> moment = AsOf.read(value);
                boolean first = asOf == null;
                asOf = moment.orElse(null);
                return first && moment.isPresent();
            case "--format":
                Optional<Format> known = Format.ofReport(value);
                boolean alone = format == null;
                format = known.orElse(null);
                return alone && known.isPresent();
            default:
                return false;
        }
    }
}
