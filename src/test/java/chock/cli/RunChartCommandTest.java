package chock.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The chart of a run under a roof, as it is asked for. */
class RunChartCommandTest {
    private static final String NOON = "2026-11-25T12:00";
    private static final String AIR = """
            entries:
              - {id: e901, at: 2026-11-25 08:01, by: ida, point: room, measured: volume, is: 200 m³ ± 20 m³, with: tape-9}
              - {id: e902, at: 2026-11-25 08:02, by: ida, point: room, seen: openings, is: shut}
              - {id: e903, at: 2026-11-25 08:03, by: ida, point: run-plan, seen: planned-runs, is: 5on}
              - {id: e904, at: 2026-11-25 08:04, by: ida, point: run-plan, seen: exhaust-goes, is: into-the-room}
              - {id: e905, at: 2026-11-25 08:05, by: ida, point: run-plan, seen: planned-speed, is: idle}
              - {id: e906, at: 2026-11-25 08:06, by: ida, point: exhaust, seen: exhaust-data, is: not-measured}
              - {id: e907, at: 2026-11-25 08:07, by: ida, point: room/co-instrument, measured: background, is: 0 ppm, with: meter-9}
              - {id: e908, at: 2026-11-25 08:08, by: ida, point: room/co-instrument, seen: meter-kind, is: direct-reading}
              - {id: e909, at: 2026-11-25 08:09, by: ida, point: room/co-instrument, tried: bump-test, is: passed}
              - {id: e910, at: 2026-11-25 08:10, by: ida, point: room/co-instrument, seen: meter-height, is: breathing}
              - {id: e911, at: 2026-11-25 08:11, by: ida, point: room, seen: people, is: staff-only}
              - {id: e912, at: 2026-11-25 08:12, by: ida, point: room, seen: adjoining-rooms, is: empty}
              - {id: e913, at: 2026-11-25 08:13, by: ida, point: room, seen: way-out, is: clear}
              - {id: e916, at: 2026-11-25 08:16, by: ida, point: room, seen: other-engines, is: none-running}
              - {id: e914, at: 2026-11-25 08:14, by: ida, point: machine, tried: stand-and-chock, is: held}
              - {id: e915, at: 2026-11-25 08:15, by: ida, point: machine, tried: drive, is: rear-wheel-clear}
            """;
    private static final String HOSE = """
              - {id: e921, at: 2026-11-25 08:21, by: ida, point: run-plan, seen: exhaust-goes, is: outdoors-by-hose}
              - {id: e922, at: 2026-11-25 08:22, by: ida, point: exhaust, seen: outlets, is: 1 times}
              - {id: e923, at: 2026-11-25 08:23, by: ida, point: room/extraction, seen: connected-outlets, is: 1 times}
              - {id: e924, at: 2026-11-25 08:24, by: ida, point: room/extraction, tried: extraction, is: running}
              - {id: e925, at: 2026-11-25 08:25, by: ida, point: room/extraction, measured: extraction-flow, is: 500 m³/h, with: vane-9}
              - {id: e926, at: 2026-11-25 08:26, by: ida, point: room/extraction, seen: discharge, is: outdoors-clear}
            """;
    private static final String TOOLS = """
            instruments:
              - {id: tape-9, kind: tape-measure, uncertainty: by-kind, calibrated: 2026-03-02, due: 2027-03-02}
              - {id: vane-9, kind: anemometer, uncertainty: by-kind, calibrated: 2026-03-02, due: 2027-03-02}
              - {id: meter-9, kind: co-meter, uncertainty: by-kind, calibrated: 2026-03-02, due: 2027-03-02}
            """;
    @TempDir private static Path folder;
    private static String plain;
    private static String withAir;

    @BeforeAll
    static void writeARunIntoAnExample() throws IOException {
        plain = Files.readString(Path.of("docs/examples/merle-released.yaml"))
                .replaceAll("(?m)^  - \\{id: .*(point: room|point: run-plan|seen: outlets|tried: drive|tried: stand-and-chock).*\n", "");
        withAir = plain.replaceFirst("(?m)^entries:\n", AIR).replaceFirst("(?m)^instruments:\n", TOOLS);
    }

    @Test
    void the_chart_is_written_beside_the_report_and_the_status_stays_that_of_the_verdict() throws IOException {
        Path chart = folder.resolve("run.svg");
        Run run = Run.with(withAir, "assess", "--as-of", NOON, "--gate", "indoor-run", "--chart", chart.toString(), "-");
        assertThat(run.err()).isEmpty();
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).startsWith("CAUTION: carbon monoxide\n").contains("BLOCKED at indoor-run", "RUN PLAN");
        assertThat(Files.readString(chart)).contains("<svg", "indoor-run blocked as of 2026-11-25 12:00");
        assertThat(run.out()).isEqualTo(Run.with(withAir, "assess", "--as-of", NOON, "--gate", "indoor-run", "-").out());
    }

    @Test
    void a_record_that_may_be_started_outdoors_may_be_started_under_a_roof_with_a_hose_and_not_without() throws IOException {
        assertThat(Run.with(plain, "assess", "--as-of", NOON, "--gate", "first-start", "-").status()).isZero();
        Run without = Run.with(withAir, "assess", "--as-of", NOON, "--gate", "indoor-run", "-");
        assertThat(without.status()).isEqualTo(1);
        assertThat(without.out()).contains("BLOCKED at indoor-run: ", "air.shift (critical)", "This run is refused as it is planned");
        Path chart = folder.resolve("hose.svg");
        Run with = Run.with(withAir.replaceFirst("(?m)^entries:\n", "entries:\n" + HOSE), "assess", "--as-of", NOON, "--gate", "indoor-run", "--chart", chart.toString(), "-");
        assertThat(with.err()).isEmpty();
        assertThat(with.out()).contains("RELEASED at indoor-run until 2026-11-25 23:59", "Push a hose on every outlet", "Stop after 5 min at the latest.");
        assertThat(with.status()).isZero();
        assertThat(Files.readString(chart)).contains("IF THE HOSE SLIPS", "indoor-run released");
        Run shown = Run.with(withAir.replaceFirst("(?m)^entries:\n", "entries:\n" + HOSE).replace("is: staff-only", "is: public"), "assess", "--as-of", NOON, "--gate", "indoor-run", "-");
        assertThat(shown.status()).isEqualTo(1);
        assertThat(shown.out()).contains("BLOCKED at indoor-run: 1 fault;", "whatever the figures say");
    }

    @Test
    void without_a_prediction_nothing_is_drawn_and_somebody_is_told() {
        Path chart = folder.resolve("none.svg");
        Run run = Run.with(plain, "assess", "--as-of", NOON, "--gate", "indoor-run", "--chart", chart.toString(), "-");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).startsWith("No chart was drawn");
        assertThat(chart).doesNotExist();
    }

    @Test
    void another_gate_two_records_or_a_folder_that_is_not_there_are_refused() {
        Run gate = Run.with(withAir, "assess", "--as-of", NOON, "--gate", "road-test", "--chart", folder.resolve("x.svg").toString(), "-");
        assertThat(gate.status()).isEqualTo(2);
        assertThat(gate.err()).startsWith("--chart draws a run under a roof; add --gate indoor-run.");
        Run two = Run.of("assess", "--gate", "indoor-run", "--chart", folder.resolve("x.svg").toString(), "a.yaml", "b.yaml");
        assertThat(two.status()).isEqualTo(2);
        assertThat(two.err()).startsWith("--chart draws one run; give one record.");
        Run nowhere = Run.with(withAir, "assess", "--as-of", NOON, "--gate", "indoor-run", "--chart", folder.resolve("no/such/x.svg").toString(), "-");
        assertThat(nowhere.status()).isEqualTo(2);
        assertThat(nowhere.err()).contains("it cannot be written");
        assertThat(folder.resolve("x.svg")).doesNotExist();
    }
}
