package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import chock.bench.RecordMill;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Records by the stream. */
class BulkAssessmentTest {
    private static final JsonMapper JSON = new JsonMapper();
    private static final String NOON = "2026-11-25T12:00";
    private static final int RECORDS = 60;
    private static List<String> records;
    @TempDir private Path folder;

    @BeforeAll
    static void make() throws IOException {
        RecordMill mill = new RecordMill("lark-released.yaml", 60, 7);
        records = new ArrayList<>();
        for (int i = 0; i < RECORDS; i++) {
            records.add(mill.next());
        }
    }

    private static Run bulk(String stream, String... more) {
        List<String> args = new ArrayList<>(List.of("assess", "--bulk", "--as-of", NOON, "-"));
        args.addAll(List.of(more));
        return Run.with(stream, args.toArray(String[]::new));
    }

    @Test
    void everyRecordGetsItsLineInOrderAndTheVerdictItGetsAlone() throws IOException {
        Run run = bulk(String.join("\n", records) + "\n");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(1);
        List<String> lines = run.out().lines().toList();
        assertThat(lines).hasSize(RECORDS);
        for (int i = 0; i < RECORDS; i++) {
            JsonNode line = JSON.readTree(lines.get(i));
            assertThat(line.get("line").asInt()).isEqualTo(i + 1);
            assertThat(line.get("record").asText()).isEqualTo("M-" + (i + 1));
            if (i % 10 == 0) {
                JsonNode alone = JSON.readTree(Run.with(records.get(i), "assess", "--format", "json", "--as-of", NOON, "-").out()).get(0);
                alone.get("gates").fields().forEachRemaining(gate -> {
                    JsonNode short_ = line.get("gates").get(gate.getKey());
                    assertThat(short_.get("verdict")).isEqualTo(gate.getValue().get("verdict"));
                    TreeMap<String, String> open = new TreeMap<>();
                    gate.getValue().get("findings").forEach(f -> {
                        if (!f.get("state").asText().equals("met")) {
                            open.put(f.get("check").asText(), f.get("state").asText());
                        }
                    });
                    assertThat(open).isNotEmpty();
                    assertThat(JSON.convertValue(short_.get("notMet"), TreeMap.class)).isEqualTo(open);
                });
            }
        }
    }

    @Test
    void aLineThatCannotBeUsedIsToldByItsNumberAndTheOthersAreJudged() {
        Run run = bulk(records.get(0) + "\n{\"chock\": \"job-record/2\"\n\n" + records.get(1));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.out().lines()).hasSize(2);
        assertThat(run.out()).contains("{\"line\":1,\"record\":\"M-1\"", "{\"line\":4,\"record\":\"M-2\"");
        assertThat(run.err()).contains("standard input, line 2:", "standard input, line 3: it is empty. Write one job record a line");
    }

    @Test
    void aLineThatNeverEndsIsRefusedAndTheNextIsJudged() {
        Run run = bulk("x".repeat(5_000_001) + "\n" + records.get(0));
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("standard input, line 1: it is longer than 5 MB");
        assertThat(run.out()).startsWith("{\"line\":2,");
    }

    @Test
    void aStreamWithoutARecordIsUnusable() {
        Run run = bulk("");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("standard input: there is no record in it.\n");
    }

    @Test
    void anInterruptedRunGoesOnBehindItsLastWholeLine() throws IOException {
        Path stream = Files.writeString(folder.resolve("all.ndjson"), String.join("\n", records) + "\n");
        Path out = folder.resolve("out.ndjson");
        String[] command = {"assess", "--bulk", "--as-of", NOON, "--out", out.toString(), stream.toString()};
        assertThat(Run.of(command).status()).isEqualTo(1);
        byte[] whole = Files.readAllBytes(out);
        String[] again = {"assess", "--bulk", "--as-of", NOON, "--out", out.toString(), "--resume", stream.toString()};
        for (int cut : new int[] {0, 10, whole.length / 2, whole.length - 1, whole.length}) {
            Files.write(out, java.util.Arrays.copyOf(whole, cut));
            Run run = Run.of(again);
            assertThat(run.err()).isEmpty();
            assertThat(Files.readAllBytes(out)).as("cut at " + cut).isEqualTo(whole);
        }
        Run there = Run.of(command);
        assertThat(there.status()).isEqualTo(2);
        assertThat(there.err()).contains("it is there already. Add --resume to go on where it ends");
        assertThat(Files.readAllBytes(out)).isEqualTo(whole);
    }

    @Test
    void anotherFileIsNotTakenForAResult() throws IOException {
        Path stream = Files.writeString(folder.resolve("one.ndjson"), records.get(0));
        Path letter = Files.writeString(folder.resolve("letter.txt"), "Dear Sir,\nthe twin is ready.\nYours");
        Run run = Run.of("assess", "--bulk", "--out", letter.toString(), "--resume", stream.toString());
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("its last line is not a verdict of a stream, so nothing was changed in it");
        assertThat(Files.readString(letter)).isEqualTo("Dear Sir,\nthe twin is ready.\nYours");
    }

    @Test
    void whatDoesNotGoTogetherIsRefused() {
        assertThat(Run.of("assess", "--bulk", "a", "b").err()).startsWith("--bulk reads one stream");
        assertThat(Run.of("assess", "--bulk", "--format", "html", "a").err()).startsWith("--bulk reads one stream");
        assertThat(Run.of("assess", "--bulk", "--resume", "a").err()).startsWith("--resume needs --out FILE");
        assertThat(Run.of("assess", "--bulk", "nowhere.ndjson").err()).contains("there is no such file");
        assertThat(Run.of("assess", "--out", "x", "a.yaml").status()).isEqualTo(2);
    }
}
