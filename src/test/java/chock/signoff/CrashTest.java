package chock.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Gate;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Processes killed while they write. What they had acknowledged is there afterwards, and the ledger is sound or mended. */
@Tag("slow")
class CrashTest {
    /** In the build a few, for each costs the start of a Java; {@code .ci/run} kills two hundred. */
    private static final int KILLS = Integer.getInteger("chock.kills", 12);
    private static final int AT_ONCE = 4;
    private static final Random RANDOM = new Random(20261125);

    @TempDir private Path folder;

    @Test
    void processes_killed_at_random_moments_lose_no_line_they_acknowledged() throws Exception {
        ShopBench bench = new ShopBench(folder);
        List<String> acknowledged = new ArrayList<>();
        for (int round = 0; round < KILLS / AT_ONCE; round++) {
            List<Killed> killed = new ArrayList<>();
            for (int i = 0; i < AT_ONCE; i++) {
                killed.add(Killed.start("r" + round + "-" + i, folder, LedgerChild.command(LedgerChild.class, bench.ledger().toString(), "r" + round + "-" + i, "1000000")));
            }
            for (Killed one : killed) {
                one.after(RANDOM.nextInt(12), one != killed.get(0)).forEach(n -> acknowledged.add(one.name + " line " + n));
            }
            bench.at(ShopBench.NOON.plusSeconds(1800));
            Ledgers.recover(bench.shop(), bench.clock());
            trim(bench, acknowledged);
        }
        assertThat(Ledgers.verify(bench.shop()).fault()).isNull();
    }

    // Held against the ledger after every round, and begun anew, so that reading it does not come to be all the work.
    private static void trim(ShopBench bench, List<String> acknowledged) throws IOException {
        List<String> there = Ledgers.lines(bench.ledger()).stream().map(line -> line.text("record") + " " + line.text("why").replaceFirst(" x+$", "")).toList();
        assertThat(acknowledged).isNotEmpty();
        assertThat(there).containsAll(acknowledged);
        acknowledged.clear();
        List<String> lines = Files.readAllLines(bench.ledger());
        Files.writeString(bench.ledger(), lines.get(0) + "\n" + lines.get(1) + "\n");
    }

    @Test
    void no_sign_off_that_was_acknowledged_is_lost_when_its_process_is_killed() throws Exception {
        ShopBench bench = new ShopBench(folder);
        bench.sign();
        int signed = 0;
        for (int round = 0; round < Math.max(2, KILLS / 25); round++) {
            Killed one = Killed.start("r" + round, folder, LedgerChild.command(SigningChild.class, folder.toString(), Integer.toString(round)));
            List<String> files = one.after(RANDOM.nextInt(150), false);
            bench.at(ShopBench.NOON.plusSeconds(3600));
            Ledgers.recover(bench.shop(), bench.clock());
            Map<String, LedgerLine> lines = Ledgers.lines(bench.ledger()).stream().filter(line -> line.kind().equals("signed")).collect(Collectors.toMap(line -> line.text("signOff"), line -> line));
            for (String file : files) {
                byte[] jws = Files.readAllBytes(Path.of(file));
                assertThat(lines).as(file).containsKey(Canonical.digest(jws));
                assertThat(bench.verify(jws, null, ShopBench.NOON.plusSeconds(3600)).holds()).as(file).isTrue();
                signed++;
            }
        }
        assertThat(signed).isPositive();
        assertThat(Ledgers.verify(bench.shop()).fault()).isNull();
        try (var all = Files.list(folder)) {
            List<Path> named = all.filter(file -> file.toString().endsWith(".jws")).toList();
            Map<String, LedgerLine> lines = Ledgers.lines(bench.ledger()).stream().filter(line -> line.kind().equals("signed")).collect(Collectors.toMap(line -> line.text("signOff"), line -> line));
            assertThat(named).isNotEmpty().allSatisfy(file -> assertThat(lines).as("nothing has its name that is not in the ledger").containsKey(Canonical.digest(Files.readAllBytes(file))));
        }
    }

    /** A process that prints into a file, and what it had printed when it was killed. */
    private record Killed(String name, Process process, Path out) {

        static Killed start(String name, Path folder, List<String> command) throws IOException {
            Path out = folder.resolve(name + ".out");
            return new Killed(name, new ProcessBuilder(command).redirectError(folder.resolve(name + ".err").toFile()).redirectOutput(out.toFile()).start(), out);
        }

        /**
         * Kills it so many milliseconds after its first line; gives every line it printed to the end. One killed before it may
         * have torn the last line of the ledger: then nobody writes until that is mended, and this one has ended and says so.
         */
        List<String> after(int millis, boolean others) throws IOException, InterruptedException {
            while (Files.size(out) == 0 && process.isAlive()) {
                Thread.sleep(1);
            }
            Thread.sleep(millis);
            assertThat(process.isAlive() || others && complaint().contains("the last line is torn")).as(() -> "it was still writing; it said " + complaint()).isTrue();
            process.destroyForcibly().waitFor();
            return said().substring(0, said().lastIndexOf('\n') + 1).lines().toList();
        }

        private String complaint() {
            try {
                return Files.readString(out.resolveSibling(name + ".err"));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private String said() {
            try {
                return Files.readString(out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Signs the same release again and again, as {@code sign} does once it has judged. */
    static final class SigningChild {
        private SigningChild() { }

        /** Arguments: folder of the shop, number of the round. */
        public static void main(String[] args) throws IOException {
            Path folder = Path.of(args[0]);
            Shop shop = Shop.of(folder.resolve("shop.yaml"));
            SigningKey key = KeyFile.read(folder.resolve("ida.pem"), ShopBench.PASSPHRASE.toCharArray());
            Path first;
            try (var files = Files.list(folder)) {
                first = files.filter(file -> file.getFileName().toString().startsWith("lark." + Gate.ROAD_TEST)).findFirst().orElseThrow();
            }
            SignOff was = SignOff.read(Jws.parse(Files.readAllBytes(first)).payload());
            for (int n = 0; n < 100_000; n++) {
                Path to = folder.resolve("again-" + args[1] + "-" + n + ".jws");
                try (OpenLedger ledger = OpenLedger.at(shop.ledger())) {
                    SignOff again = new SignOff(was.chock(), was.record(), was.machine(), was.gate(), was.verdict(), was.asOf(), was.holdsUntil(), was.zone(), was.place(), was.territory(), was.localCode(), was.recordedLaw(),
                            was.ruleBook(), was.house(), was.findings(), was.notAsked(), was.cautions(), was.notes(), was.criticalPoints(), was.workBy(), was.changedSince(), was.deferral(),
                            was.signer(), was.signedAt(), new SignOff.Position(ledger.nextNumber(), "sha256:" + ledger.lastDigest()), was.seal());
                    SignOffs.write(ledger, again, JsonNodeFactory.instance.objectNode(), ledger.now(ShopBench.NOON.plusSeconds(60)), to, key);
                }
                System.out.println(to);
                System.out.flush();
            }
        }
    }
}
