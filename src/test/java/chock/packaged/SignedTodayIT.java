package chock.packaged;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The program as it is handed out signs a record by the clock of this machine. What it makes is left in
 * {@code target/signed-today}, where {@code .ci/run} has it verified by another program.
 */
class SignedTodayIT {
    private static final Path FOLDER = Path.of("target/signed-today");
    private static final Pattern DAY = Pattern.compile("\\b20[2-9]\\d-\\d\\d-\\d\\d\\b");

    private record Ended(int status, String out, String err) { }

    private static Ended chock(String... args) throws IOException, InterruptedException {
        List<String> command = program();
        command.addAll(List.of(args));
        return run(command);
    }

    private static List<String> program() {
        return new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-XX:-UsePerfData", "-jar", "target/chock.jar"));
    }

    private static Ended run(List<String> command) throws IOException, InterruptedException {
        Path err = Files.createTempFile("chock", ".err");
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(err.toFile());
        builder.environment().put("CHOCK_SHOP", FOLDER.resolve("shop.yaml").toString());
        builder.environment().put("WORDS", "the words of this build 1");
        Process process = builder.start();
        process.getOutputStream().close();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        return new Ended(process.waitFor(), out, Files.readString(err));
    }

    private static Ended well(String... args) throws IOException, InterruptedException {
        Ended ended = chock(args);
        assertThat(ended.status()).as(ended.err()).isZero();
        return ended;
    }

    @Test
    void aRecordOfYesterdayIsSignedNow() throws IOException, InterruptedException {
        if (Files.exists(FOLDER)) {
            try (Stream<Path> old = Files.walk(FOLDER)) {
                old.sorted(Comparator.reverseOrder()).forEach(file -> file.toFile().delete());
            }
        }
        Files.createDirectories(FOLDER);
        Files.writeString(FOLDER.resolve("shop.yaml"), well("new", "shop").out());
        String record = Files.writeString(FOLDER.resolve("record.yaml"), endedYesterday(Files.readString(Path.of("docs/examples/lark-non-runner.yaml")))).toString();
        String lead = FOLDER.resolve("lead.pem").toString();
        well("keys", "new", lead, "--passphrase-env", "WORDS");
        String last = LocalDate.now(ZoneId.of("Europe/London")).plusYears(1).toString();
        well("keys", "trust", lead + ".jwk", "--name", "Nora Pell", "--role", "lead", "--until", last, "--by", lead, "--passphrase-env", "WORDS");
        String signOff = FOLDER.resolve("sign-off.jws").toString();
        assertThat(well("sign", record, "--gate", "non-runner", "--key", lead, "--passphrase-env", "WORDS", "--out", signOff).out()).startsWith("SIGNED at non-runner until ");
        assertThat(well("verify", signOff, record).out()).startsWith("HOLDS: non-runner of ");
        assertThat(well("ledger", "verify").out()).startsWith("SOUND: 3 lines");
        onAFullDiskNothingIsSaidToBeSigned(record, lead);
        Ended blocked = chock("sign", record, "--gate", "road-test", "--key", lead, "--passphrase-env", "WORDS");
        assertThat(blocked.status()).isEqualTo(1);
        assertThat(blocked.err()).startsWith("Refused: ").contains("is blocked at road-test");
    }

    /** No file may grow by a line more, as on a disk that is full: the ledger stays what it was, nothing half is left, and the program says so. */
    private static void onAFullDiskNothingIsSaidToBeSigned(String record, String lead) throws IOException, InterruptedException {
        Path ledger = FOLDER.resolve("ledger.txt");
        byte[] before = Files.readAllBytes(ledger);
        List<String> files = files();
        List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -f " + (before.length + 511) / 512 + "; exec \"$@\"", "sh"));
        command.addAll(program());
        command.addAll(List.of("sign", record, "--gate", "non-runner", "--key", lead, "--passphrase-env", "WORDS"));
        Ended full = run(command);
        assertThat(full.status()).as(full.err()).isEqualTo(2);
        assertThat(full.err()).contains("it cannot be written: ").contains("Nothing was changed").doesNotContain("\tat ");
        assertThat(full.out()).doesNotContain("SIGNED");
        assertThat(Files.readAllBytes(ledger)).isEqualTo(before);
        assertThat(files()).isEqualTo(files);
        assertThat(well("ledger", "verify").out()).startsWith("SOUND: 3 lines");
    }

    private static List<String> files() throws IOException {
        try (Stream<Path> all = Files.list(FOLDER)) {
            return all.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** The record with every day since 2020 moved so that its last entry is of yesterday. */
    private static String endedYesterday(String record) {
        LocalDate newest = Pattern.compile("at: (20\\d\\d-\\d\\d-\\d\\d)").matcher(record).results().map(m -> LocalDate.parse(m.group(1))).max(Comparator.naturalOrder()).orElseThrow();
        long days = ChronoUnit.DAYS.between(newest, LocalDate.now(ZoneId.of("Europe/London")).minusDays(1));
        return DAY.matcher(record).replaceAll((MatchResult m) -> LocalDate.parse(m.group()).plusDays(days).toString());
    }
}
