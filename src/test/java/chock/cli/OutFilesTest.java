package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.signoff.ShopBench;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What a command writes to never costs anybody a file. */
class OutFilesTest {
    @TempDir private Path folder;
    private ShopBench shop;

    @BeforeEach
    void sign() throws IOException {
        shop = new ShopBench(folder);
        shop.sign();
    }

    private Run run(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Bench bench = new Bench(new ByteArrayInputStream(new byte[0]), new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8),
                Clock.fixed(ShopBench.NOON, ZoneOffset.UTC), false, null, Map.of(), null);
        int status = Chock.run(bench, args);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private Run refused(Path to, String... more) throws IOException {
        List<String> args = new ArrayList<>(List.of("tag", folder.resolve("lark.yaml").toString(), "--format", "text", "--out", to.toString()));
        args.addAll(List.of(more));
        byte[] before = Files.readAllBytes(to);
        Run run = run(args.toArray(String[]::new));
        assertThat(run.status()).as("%s %s", to, run.err()).isEqualTo(Bench.UNUSABLE);
        assertThat(Files.readAllBytes(to)).as("%s", to).isEqualTo(before);
        return run;
    }

    @Test
    void what_chock_reads_is_never_written_over_not_even_by_force() throws IOException {
        List<Path> all = files();
        assertThat(all).extracting(path -> path.getFileName().toString()).contains("lark.yaml", "ledger.txt", "trust.json", "shop.yaml").anyMatch(name -> name.endsWith(".jws"));
        for (Path file : all) {
            assertThat(refused(file).err()).as("%s", file).contains("nothing is written over it");
            refused(file, "--force");
        }
        assertThat(files()).isEqualTo(all);
    }

    @Test
    void any_other_file_is_written_over_only_when_that_is_asked_for() throws IOException {
        Path notes = Files.writeString(folder.resolve("notes.txt"), "of last week\n");
        assertThat(refused(notes).err()).contains("there is such a file already", "--force");
        assertThat(run("tag", folder.resolve("lark.yaml").toString(), "--out", notes.toString(), "--force").status()).isZero();
        assertThat(Files.readString(notes)).contains("road test: OPEN");
        Path chart = Files.writeString(folder.resolve("chart.svg"), "of last week\n");
        String merle = "docs/examples/merle-released.yaml";
        assertThat(run("assess", merle, "--gate", "indoor-run", "--chart", chart.toString()).status()).isEqualTo(Bench.UNUSABLE);
        assertThat(Files.readString(chart)).isEqualTo("of last week\n");
        assertThat(run("assess", merle, "--gate", "indoor-run", "--chart", chart.toString(), "--force").status()).isZero();
        assertThat(Files.readString(chart)).contains("<svg");
    }

    /** To look at it took longer with each such line, and with a printed work sheet for ever. */
    @Test
    @Timeout(120)
    void a_file_with_line_ends_of_another_system_is_known_for_what_it_is() throws IOException {
        Path sheet = Files.writeString(folder.resolve("sheet.txt"), "one line\r\n\r\n".repeat(200));
        assertThat(run("tag", folder.resolve("lark.yaml").toString(), "--out", sheet.toString(), "--force").status()).isZero();
        assertThat(Files.readString(sheet)).contains("road test: OPEN");
        Path record = Files.writeString(folder.resolve("other.txt"), "# of today\r\n".repeat(20) + "chock: job-record/2\r\n");
        assertThat(refused(record, "--force").err()).contains("nothing is written over it");
    }

    @Test
    void what_cannot_be_written_leaves_nothing_behind() throws IOException {
        List<Path> all = files();
        assertThat(run("tag", folder.resolve("lark.yaml").toString(), "--out", folder.resolve("no/such/tag.txt").toString()).err()).contains("Name a file in a folder that is there");
        assertThat(run("tag", folder.resolve("lark.yaml").toString(), "--out", folder.toString()).status()).isEqualTo(Bench.UNUSABLE);
        if (Files.exists(Path.of("/dev/full"))) {
            Run full = run("tag", folder.resolve("lark.yaml").toString(), "--out", "/dev/full");
            assertThat(full.status()).isEqualTo(Bench.UNUSABLE);
            assertThat(full.err()).contains("/dev/full").contains("cannot be written");
        }
        assertThat(files()).isEqualTo(all);
    }

    @Test
    void verify_writes_into_the_ledger_only_when_asked() throws IOException {
        Path signOff = files().stream().filter(file -> file.toString().endsWith(".jws")).findFirst().orElseThrow();
        Path record = folder.resolve("lark.yaml");
        Files.writeString(record, Files.readString(record).stripTrailing() + "\n  - {id: later, at: 2026-11-25 12:00, by: tom, point: front-brake/caliper, done: removed}\n");
        Path ledger = folder.resolve("ledger.txt");
        String before = Files.readString(ledger);
        String[] looked = {"verify", signOff.toString(), record.toString(), "--shop", shop.file().toString()};
        Run run = run(looked);
        assertThat(run.status()).isEqualTo(Bench.BLOCKED);
        assertThat(run.out()).contains("entry later");
        assertThat(Files.readString(ledger)).isEqualTo(before);
        run = run(Stream.concat(Stream.of(looked), Stream.of("--note")).toArray(String[]::new));
        assertThat(run.status()).isEqualTo(Bench.BLOCKED);
        assertThat(Files.readString(ledger)).startsWith(before).contains("\"kind\":\"voided\"");
        assertThat(run("verify", signOff.toString(), "--trust", folder.resolve("trust.json").toString(), "--note").status()).isEqualTo(Bench.UNUSABLE);
    }
}
