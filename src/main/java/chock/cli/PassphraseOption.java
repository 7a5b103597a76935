package chock.cli;

import chock.record.UnusableInput;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import picocli.CommandLine.Option;

/** Where the passphrase of a key comes from. It is never an argument, which others on the machine could read. */
final class PassphraseOption {
    @Option(names = "--passphrase-file", paramLabel = "FILE", description = "File whose first line is the passphrase of the key. Default: it is asked for.")
    private String file;

    @Option(names = "--passphrase-env", paramLabel = "NAME", description = "Name of the variable that holds the passphrase.")
    private String variable;

    /** The passphrase that opens a key. */
    char[] ask(Bench bench, String key) {
        char[] given = given(bench);
        return given != null ? given : prompt(bench, "Passphrase of " + key + ": ");
    }

    /** The passphrase for a new key; at the terminal it is asked for twice. */
    char[] askTwice(Bench bench, String key) {
        char[] given = given(bench);
        if (given != null) {
            return given;
        }
        char[] first = prompt(bench, "New passphrase for " + key + ": ");
        if (!Arrays.equals(first, prompt(bench, "The same again: "))) {
            throw UnusableInput.of(key, "the two passphrases differ", "No key was made; do it again");
        }
        return first;
    }

    private char[] given(Bench bench) {
        if (file != null && variable != null) {
            throw UnusableInput.of("--passphrase-file", "the passphrase is given twice", "Leave out one of --passphrase-file and --passphrase-env");
        }
        if (file != null) {
            String first = new String(bench.read(file), StandardCharsets.UTF_8).lines().findFirst().orElse("");
            return notEmpty(first, file);
        }
        return variable == null ? null : notEmpty(bench.env().getOrDefault(variable, ""), variable);
    }

    private static char[] notEmpty(String passphrase, String from) {
        if (passphrase.isEmpty()) {
            throw UnusableInput.of(from, "there is no passphrase in it", "");
        }
        return passphrase.toCharArray();
    }

    private static char[] prompt(Bench bench, String words) {
        char[] answer = bench.prompt() == null ? null : bench.prompt().apply(words);
        if (answer == null) {
            throw UnusableInput.of("passphrase", "there is no terminal to ask for it at", "Give --passphrase-file FILE or --passphrase-env NAME");
        }
        return answer;
    }
}
