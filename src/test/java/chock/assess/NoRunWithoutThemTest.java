package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Measured;
import chock.record.Deed;
import chock.record.Machine.Cycle;
import chock.record.Value;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever is written down, however generous, no run is released with the public in the room, or without a direct-reading
 * meter that was bump-tested today. The checks of the air judge alone here, so nothing else can be what blocks it.
 */
@Tag("slow")
class NoRunWithoutThemTest {
    private static final int RECORDS = 2000;
    private static final long SEED = 20261125;
    private final Random random = new Random(SEED);

    private <T> T any(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    /** Mostly the good word, so that many records fail by one thing alone. */
    private String mostly(String good, String... others) {
        return random.nextInt(12) > 0 ? good : any(List.of(others));
    }

    private boolean mostly() {
        return random.nextInt(25) > 0;
    }

    /** What this record says of the two things that may never be wrong. */
    private record Truth(boolean publicPresent, boolean meterWorks) { }

    private Truth fill(RunRecord record) {
        String people = mostly("staff-only", "public");
        boolean toldOfPeople = mostly();
        String kind = mostly("direct-reading", "household-alarm", "none");
        String bump = mostly("passed", "failed", "not-done");
        Deed bumpDeed = any(List.of(Deed.TRIED, Deed.TRIED, Deed.TRIED, Deed.TRIED, Deed.SEEN, Deed.TOLD, Deed.ASSUMED));
        String height = mostly("breathing", "floor", "ceiling", "out-of-sight");
        boolean kindWritten = mostly();
        boolean bumpWritten = mostly();
        boolean heightWritten = mostly();
        boolean readBefore = mostly();
        if (toldOfPeople) {
            record.seen("room", "people", people);
        }
        if (kindWritten) {
            record.seen("room/co-instrument", "meter-kind", kind);
        }
        if (bumpWritten) {
            record.add(bumpDeed, "room/co-instrument", "bump-test", new Value.Answer(bump));
        }
        if (heightWritten) {
            record.seen("room/co-instrument", "meter-height", height);
        }
        if (readBefore) {
            record.measured("room/co-instrument", "background", any(List.of("0 ppm ± 1 ppm", "1 ppm ± 3 ppm", "2 ppm ± 5 ppm")));
        }
        room(record);
        run(record);
        if (mostly()) {
            record.seen("room", "adjoining-rooms", mostly("none", "sealed-off", "people-inside"));
        }
        record.seen("room", "way-out", mostly("clear", "blocked"));
        record.seen("room", "other-engines", mostly("none-running", "running"));
        record.tried("machine", "stand-and-chock", mostly("held", "rocks")).tried("machine", "drive", mostly("rear-wheel-clear", "in-gear"));
        boolean works = kindWritten && kind.equals("direct-reading") && bumpWritten && bump.equals("passed") && bumpDeed == Deed.TRIED && heightWritten && height.equals("breathing") && readBefore;
        return new Truth(!toldOfPeople || people.equals("public"), works);
    }

    private void room(RunRecord record) {
        record.measured("room", "volume", any(List.of("500 m³ ± 50 m³", "5000 m³ ± 500 m³", "1000000 m³ ± 100 m³")));
        String openings = any(List.of("shut", "held-open", "fan-running"));
        record.seen("room", "openings", openings);
        if (random.nextBoolean()) {
            record.measured("room", "airflow", any(List.of("1000 m³/h ± 150 m³/h", "1000000 m³/h ± 1000 m³/h")));
            record.tried("room", "fan", mostly("moves-air-to-outdoors", "switched-off"));
        }
        if (random.nextInt(4) == 0) {
            record.measured("room", "mixing-factor", "1.4 times ± 0.3 times");
        }
        if (random.nextInt(8) == 0) {
            record.measured("room/run", "peak", "1 ppm ± 5 ppm").count("room/run", "run-minutes", "5 min");
        }
    }

    private void run(RunRecord record) {
        record.code("run-plan", "planned-runs", any(List.of("0.5on", "1on", "5on", "2on,28off,2on", "60on")));
        record.seen("run-plan", "planned-speed", mostly("idle", "above-idle"));
        if (random.nextBoolean()) {
            record.seen("run-plan", "exhaust-goes", "outdoors-by-hose").count("exhaust", "outlets", "2 times")
                    .add(Deed.SEEN, "room/extraction", "connected-outlets", new Value.Amount(Measured.parse(mostly("2 times", "1 times"))))
                    .tried("room/extraction", "extraction", mostly("running", "switched-off")).seen("room/extraction", "discharge", mostly("outdoors-clear", "indoors"))
                    .measured("room/extraction", "extraction-flow", "5000 m³/h ± 75 m³/h");
        } else {
            record.seen("run-plan", "exhaust-goes", "into-the-room");
            String data = any(List.of("measured", "not-measured"));
            record.seen("exhaust", "exhaust-data", data);
            if (data.equals("measured")) {
                record.measured("exhaust", "co-share", "0.5 % ± 0.3 %").measured("exhaust", "exhaust-rpm", "800 rpm ± 50 rpm").seen("run-plan", "engine-at-start", "warm");
            }
        }
    }

    @Test
    void no_record_however_generous_is_released_with_the_public_or_without_a_working_meter() {
        int released = 0;
        int byThePublicAlone = 0;
        int byTheMeterAlone = 0;
        for (int i = 0; i < RECORDS; i++) {
            RunRecord record = RunRecord.of(any(List.of("50 cc", "125 cc", "250 cc", "1000 cc")), any(List.of(Cycle.TWO_STROKE, Cycle.FOUR_STROKE)));
            Truth truth = fill(record);
            GateVerdict verdict = record.judged().gates().get(0);
            assertThat(verdict.ruleBookFaults()).as("record " + i).isEmpty();
            if (truth.publicPresent() || !truth.meterWorks()) {
                assertThat(verdict.released()).as("record " + i + " of seed " + SEED + ": " + truth + record.record().entries()).isFalse();
            }
            List<String> open = verdict.findings().stream().filter(f -> f.state() != State.MET).map(Finding::check).toList();
            released += verdict.released() ? 1 : 0;
            byThePublicAlone += open.equals(List.of("air.people")) ? 1 : 0;
            byTheMeterAlone += open.equals(List.of("air.instrument")) ? 1 : 0;
        }
        // Else the records would be so bad that nothing was tried.
        assertThat(released).as("released for comparison").isGreaterThan(RECORDS / 30);
        assertThat(byThePublicAlone).as("held by the public alone").isGreaterThan(RECORDS / 200);
        assertThat(byTheMeterAlone).as("held by the meter alone").isGreaterThan(RECORDS / 60);
    }
}
