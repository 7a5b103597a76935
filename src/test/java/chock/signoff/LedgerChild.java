package chock.signoff;

import chock.record.UnusableInput;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;

/** A process of its own that appends to a ledger, and prints the number of each line after it was acknowledged. */
final class LedgerChild {
    private LedgerChild() { }

    /** Arguments: ledger, name, how many lines. */
    public static void main(String[] args) {
        try {
            append(Path.of(args[0]), args[1], Integer.parseInt(args[2]), n -> {
                System.out.println(n);
                System.out.flush();
            });
        } catch (UnusableInput e) {
            System.err.println(e.getMessage());
            System.exit(3);
        }
    }

    static void append(Path ledger, String name, int lines, IntConsumer acknowledged) {
        for (int n = 1; n <= lines; n++) {
            try (OpenLedger open = OpenLedger.at(ledger)) {
                open.append(open.now(Instant.parse("2026-11-25T12:30:00Z")), "refused",
                        JsonNodeFactory.instance.objectNode().put("record", name).put("why", "line " + n + " " + "x".repeat(200)), null);
            } catch (UnusableInput busy) {
                // On a machine that hardly gets to it the others may hold the ledger for long; then it is done again, as the message says.
                if (!busy.getMessage().contains("another chock has been writing")) {
                    throw busy;
                }
                n--;
                continue;
            }
            acknowledged.accept(n);
        }
    }

    static Process start(Path ledger, String name, int lines) throws IOException {
        return new ProcessBuilder(command(LedgerChild.class, ledger.toString(), name, Integer.toString(lines))).start();
    }

    /** The same, allowed files of so many kilobytes and no larger. */
    static Process startLimited(Path ledger, String name, int lines, int kilobytes) throws IOException {
        List<String> quoted = command(LedgerChild.class, ledger.toString(), name, Integer.toString(lines)).stream().map(word -> "'" + word + "'").toList();
        return new ProcessBuilder("bash", "-c", "ulimit -f " + kilobytes + "; exec " + String.join(" ", quoted)).start();
    }

    static List<String> command(Class<?> main, String... args) {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-XX:-UsePerfData", "-Xshare:auto", "-cp", classPath(), main.getName()));
        command.addAll(List.of(args));
        return command;
    }

    private static String classPath() {
        String own = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        return own.replace("\"", "").replace('\n', File.pathSeparatorChar);
    }
}
