package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A printed session, filled in and taken in. */
class TakeInCommandTest {
    private static final String AS_OF = "--as-of=2026-11-25T12:00";
    @TempDir Path folder;
    private Path record;
    private Path sheet;

    @BeforeEach
    void printed() throws IOException {
        record = folder.resolve("r.yaml");
        sheet = folder.resolve("s.yaml");
        Files.copy(Path.of("docs/examples/lark-gaps.yaml"), record);
        Run printed = Run.of("worksheet", "--gate", "road-test", AS_OF, "--format", "yaml", record.toString());
        assertThat(printed.status()).isEqualTo(1);
        assertThat(printed.out().lines()).allMatch(line -> line.length() <= 100);
        // Nothing is filled in beforehand but who the sheet is of, what it is called, and that its lines are in order.
        assertThat(printed.out().lines().filter(line -> !line.strip().startsWith("#")).map(line -> line.replaceFirst("\\s+#.*", ""))).allMatch(line -> line.endsWith(":") || line.matches("chock: .*|record: .*|  - id: .*|    in-order: yes"));
        Files.writeString(sheet, printed.out());
    }

    private void fill(String... keysAndAnswers) throws IOException {
        String text = Files.readString(sheet);
        for (int i = 0; i < keysAndAnswers.length; i += 2) {
            assertThat(text).contains(keysAndAnswers[i] + ":");
            text = text.replaceAll("(?m)^(\\s+" + keysAndAnswers[i] + ":).*", "$1 " + keysAndAnswers[i + 1]);
        }
        Files.writeString(sheet, text);
    }

    private Run takeIn() {
        return Run.of("take-in", AS_OF, sheet.toString(), record.toString());
    }

    @Test
    void whatIsFilledInIsAddedAndTheRecordKeepsEveryLetterItHad() throws IOException {
        String before = Files.readString(record);
        fill("at", "2026-11-25 11:00", "by", "ida", "hose seen date-mark", "2025-03", "control tried lever-feel", "firm", "control hold-time", "70 s", "hold-time", "watch-1");
        Run run = takeIn();
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isZero();
        assertThat(run.out()).isEqualTo("3 entries added to " + record + ".\n");
        assertThat(Files.readString(record)).isEqualTo(before + """

                sessions:
                  - id: w11251200c
                    at: 2026-11-25 11:00
                    by: ida
                    in-order: yes
                    with: {hold-time: watch-1}
                    fuel: {hose seen date-mark: 2025-03}
                    front-brake: {control tried lever-feel: firm, control hold-time: 70 s}
                """);
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void aLineThatARecordWouldRefuseIsRefusedAndTheRestIsTaken() throws IOException {
        fill("at", "2026-11-25 11:00", "by", "ida", "hose seen date-mark", "2025-03", "control tried lever-feel", "firn", "shoes thickness", "420 mm", "thickness", "tread-1", "tyre seen date-code", "1524");
        // What is read with the wheel out has a session of its own, before the others.
        Files.writeString(sheet, Files.readString(sheet).replaceFirst("at: 2026-11-25 11:00", "at: 2026-11-25 10:40"));
        Run run = takeIn();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).startsWith("2 entries added");
        assertThat(run.err()).contains("control tried lever-feel: 'firn' is not an answer to lever-feel. Write one of comes-to-the-stop, firm, sinks, spongy").contains("shoes thickness:").contains("420 mm");
        assertThat(run.err().lines()).allMatch(line -> line.startsWith(sheet + ":"));

        // Put right and taken in again: what is there is passed over.
        fill("control tried lever-feel", "firm", "shoes thickness", "4.2 mm");
        Run again = takeIn();
        assertThat(again.err()).isEmpty();
        assertThat(again.out()).startsWith("2 entries added").contains("2 lines are there already").contains("without its order");
        assertThat(Run.of("record", "expand", record.toString()).out()).contains("tried: lever-feel, is: firm").contains("is: 4.2 mm, with: tread-1");

        // Another answer of the same moment is no slip to be written over.
        String before = Files.readString(record);
        fill("control tried lever-feel", "sinks");
        Run other = takeIn();
        assertThat(other.status()).isEqualTo(1);
        assertThat(other.err()).contains("the record has another answer of that moment already: firm");
        assertThat(Files.readString(record)).isEqualTo(before);
    }

    @Test
    void aSessionWithoutItsHeadIsRefusedAsAWhole() throws IOException {
        String before = Files.readString(record);
        fill("by", "ida", "control tried lever-feel", "firm");
        Run run = takeIn();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).startsWith("Nothing was added");
        assertThat(run.err()).contains("sessions[2].at: this is empty. Write the day, or day and time");
        assertThat(Files.readString(record)).isEqualTo(before);
    }

    @Test
    void aSheetThatIsNoneOrOfAnotherMachineIsRefused() throws IOException {
        Files.writeString(sheet, Files.readString(sheet).replace("HV-0151", "HV-0152"));
        assertThat(takeIn().err()).contains("the sheet is of 'HV-0152', and the record is HV-0151");
        Files.writeString(sheet, "chock: job-record/2\n");
        assertThat(takeIn().err()).contains("this is no sheet to take in");
        Files.writeString(sheet, "chock: session-sheet/1\nrecord: HV-0151\nsesions: []\n");
        assertThat(takeIn().err()).contains("the key 'sesions' is not known on a sheet").contains("no sessions stand here");
        assertThat(takeIn().status()).isEqualTo(2);
        assertThat(Run.of("take-in", sheet.toString(), "-").status()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"windows", "mark", "no-newline", "sessions-first", "json", "remark-behind"})
    void howeverTheRecordIsWritten(String way) throws IOException {
        String text = Files.readString(record);
        String session = "sessions:\n    - id: s1\n      at: 2026-11-24 09:00\n      by: ida\n      rear-brake: {tried release: free}\n";
        switch (way) {
            case "windows" -> text = text.replace("\n", "\r\n");
            case "mark" -> text = "\uFEFF" + text;
            case "no-newline" -> text = text.stripTrailing();
            case "sessions-first" -> text = text.replace("claims:", session + "\n# What is said of it\nclaims:");
            case "json" -> text = "{" + Run.of("record", "expand", record.toString()).out().transform(TakeInCommandTest::json) + "}";
            default -> text = text + session + "\n# the end\n";
        }
        Files.writeString(record, text);
        fill("at", "2026-11-25 11:00", "by", "ida", "control tried lever-feel", "firm");
        Run run = takeIn();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).startsWith("1 entry added");
        String after = Files.readString(record);
        if (!way.equals("json")) {
            text.lines().forEach(line -> assertThat(after).contains(line));
            assertThat(after.startsWith("\uFEFF")).isEqualTo(way.equals("mark"));
            assertThat(after.replace("\r\n", "").contains("\n")).isEqualTo(!way.equals("windows"));
        }
        assertThat(Run.of("record", "expand", record.toString()).out()).contains("tried: lever-feel, is: firm");
    }

    /** The same record as JSON, which is YAML read by another reader. */
    private static String json(String yaml) {
        try {
            String whole = new com.fasterxml.jackson.databind.ObjectMapper().writeValueAsString(new com.fasterxml.jackson.dataformat.yaml.YAMLMapper().readTree(yaml));
            return whole.substring(1, whole.length() - 1);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void sessionsInBracketsAreLeftAloneAndSaidSo() throws IOException {
        Files.writeString(record, Files.readString(record) + "sessions: [{id: s1, at: 2026-11-24 09:00, by: ida, rear-brake: {tried release: free}}]\n");
        String before = Files.readString(record);
        fill("at", "2026-11-25 11:00", "by", "ida", "control tried lever-feel", "firm");
        Run run = takeIn();
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).contains("Write sessions as items, one behind each dash");
        assertThat(Files.readString(record)).isEqualTo(before);
    }
}
