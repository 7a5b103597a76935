package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.record.Machine.Cycle;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Verdicts on whole runs, and the plan that goes with them. Cases A, B and D are held against figures worked out outside this program. */
class RunPlanTest {

    private static State state(Assessment assessment, String check) {
        return assessment.gates().get(0).findings().stream().filter(f -> f.check().equals(check)).findFirst().orElseThrow().state();
    }

    private static RunPlan plan(RunRecord record) {
        Assessment assessment = record.judged();
        assertThat(assessment.gates().get(0).ruleBookFaults()).isEmpty();
        return RunPlan.of(assessment.record(), assessment).orElseThrow();
    }

    private static String figure(RunPlan plan, String id) {
        return plan.figures().stream().filter(f -> f.id().equals(id)).map(RunPlan.Amount::says).findFirst().orElse(null);
    }

    private static String lines(RunPlan plan, String part) {
        return String.join("\n", plan.parts().stream().filter(p -> p.id().equals(part)).findFirst().orElseThrow().lines());
    }

    @Test
    void a_four_stroke_of_250_cc_for_5_minutes_in_a_workshop_is_refused_for_the_quarter_hour_and_the_shift() {
        RunRecord record = RunRecord.of("250 cc", Cycle.FOUR_STROKE).allElseGood().intoTheRoom("200 m³ ± 20 m³", "5on");
        Assessment assessment = record.judged();
        assertThat(assessment.allReleased()).isFalse();
        assertThat(state(assessment, "air.peak")).isEqualTo(State.MET);
        assertThat(state(assessment, "air.quarter-hour")).isEqualTo(State.FAULT);
        assertThat(state(assessment, "air.shift")).isEqualTo(State.FAULT);
        RunPlan plan = plan(record);
        assertThat(plan.mayRun()).isFalse();
        assertThat(plan.says()).startsWith("NOT TO BE RUN");
        // 8 h: 5.25 L/min in 180 m³ and 90 m³/h ÷ 3 leave 16.1 ppm a minute, beside 5 ppm that the meter cannot rule out; 20 ppm allows 0.93 min,
        // and 23 mg/m³, which are 19.75 ppm at 20 °C, 0.92 min: three steps of a quarter of a minute
        assertThat(figure(plan, "longest-run")).isEqualTo("45 s");
    }

    @Test
    void a_two_stroke_of_250_cc_for_5_minutes_in_a_workshop_is_refused_for_the_ceiling_too() {
        RunRecord record = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("200 m³ ± 20 m³", "5on");
        Assessment assessment = record.judged();
        for (String check : List.of("air.peak", "air.quarter-hour", "air.quarter-hour-mass", "air.shift", "air.shift-mass")) {
            assertThat(state(assessment, check)).as(check).isEqualTo(State.FAULT);
        }
        RunPlan plan = plan(record);
        assertThat(figure(plan, "longest-run")).isEqualTo("15 s");
        // worst: 10.5 L/min for 5 min in 180 m³, 5 ppm before: 294.7 ppm; from 289.7 over 4 ppm outdoors: 180 ÷ 30 h · ln(289.7 ÷ 4) = 25.7 h
        assertThat(figure(plan, "highest")).isEqualTo("295 ppm");
        assertThat(figure(plan, "purge")).isEqualTo("25 h 50 min");
        assertThat(lines(plan, "stop")).contains("when the meter shows 100 ppm").doesNotContain("hose").doesNotContain("295 ppm");
        assertThat(plan.says()).contains("refused as it is planned");
        assertThat(plan.parts()).extracting(RunPlan.Part::id).as("nobody reads here how it is started").containsExactly("who", "stop", "after", "next");
    }

    @Test
    void in_a_large_hall_the_figures_pass_and_with_the_public_in_it_the_run_is_refused() {
        RunRecord hall = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("20000 m³ ± 2000 m³", "5on");
        assertThat(hall.judged().allReleased()).isTrue();
        assertThat(figure(plan(hall), "longest-run")).isNotNull().doesNotContain("none");
        RunRecord show = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("20000 m³ ± 2000 m³", "5on").seen("room", "people", "public");
        Assessment refused = show.judged();
        assertThat(refused.allReleased()).isFalse();
        assertThat(state(refused, "air.people")).isEqualTo(State.FAULT);
        assertThat(state(refused, "air.peak")).isEqualTo(State.MET);
        assertThat(figure(plan(show), "longest-run")).isEqualTo("none: it is not proven that nobody but trained staff is in the room");
        assertThat(plan(show).parts()).extracting(RunPlan.Part::id).doesNotContain("before", "run", "between");
    }

    @Test
    void with_a_proven_hose_the_run_is_released_and_the_plan_says_what_happens_when_it_slips() {
        RunRecord record = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().byHose("200 m³ ± 20 m³", "15on");
        assertThat(record.judged().allReleased()).isTrue();
        RunPlan plan = plan(record);
        assertThat(plan.mayRun()).isTrue();
        // from 5 ppm to 100 ppm in 180 m³ at 10.5 L/min and hardly any air: 95e-6 · 180 000 ÷ 10.5 = 1.63 min
        assertThat(figure(plan, "hose-slips")).isEqualTo("1 min 37 s");
        assertThat(lines(plan, "stop")).contains("rises above 9 ppm").contains("nobody pushes a hose back on");
        assertThat(lines(plan, "slips")).contains("The room may be at 100 ppm after 1 min 37 s.");
        assertThat(lines(plan, "before")).contains("Push a hose on every outlet");
        assertThat(lines(plan, "run")).contains("Stop after 15 min at the latest.").doesNotContain("Stay at idle");
        assertThat(figure(plan, "purge")).isNull();
    }

    @Test
    void short_runs_with_time_between_are_released_where_one_long_one_is_not() {
        assertThat(RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("2000 m³ ± 200 m³", "6on").judged().allReleased()).isFalse();
        RunRecord record = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("2000 m³ ± 200 m³", "2on,28off,2on");
        assertThat(record.judged().allReleased()).isTrue();
        RunPlan plan = plan(record);
        assertThat(figure(plan, "planned-run")).isEqualTo("2 min");
        assertThat(plan.restsOn()).contains("planned 2on,28off,2on", "an engine that nobody measured", "mixing factor 3, as nobody measured it");
        assertThat(lines(plan, "who")).contains("Two people");
        assertThat(lines(plan, "next")).contains("down at 9 ppm again");
        // worst at the start of the second: 11.67 ppm from the first, aired for 28 min at 900 m³/h ÷ 3, and 5 ppm that the meter cannot rule out
        assertThat(lines(plan, "between")).contains("only when the meter shows 16 ppm or less");
        assertThat(lines(plan, "stop")).contains("more than 28 ppm: then the figures are wrong");
    }

    @Test
    void above_idle_a_hose_releases_and_the_room_never_does_and_nothing_is_predicted() {
        RunRecord hose = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().byHose("200 m³ ± 20 m³", "5on").seen("run-plan", "planned-speed", "above-idle");
        assertThat(hose.judged().allReleased()).isTrue();
        assertThat(figure(plan(hose), "hose-slips")).isNull();
        assertThat(figure(plan(hose), "planned-run")).isEqualTo("5 min");
        assertThat(RunCourse.of(hose.judged())).isEmpty();
        RunRecord room = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("20000 m³ ± 2000 m³", "1on").seen("run-plan", "planned-speed", "above-idle");
        assertThat(room.judged().allReleased()).isFalse();
        assertThat(figure(plan(room), "longest-run")).isEqualTo("none: no run is proven to stay at idle");
        assertThat(figure(plan(room), "highest")).isNull();
        assertThat(RunCourse.of(room.judged())).isEmpty();
    }

    @Test
    void the_verdict_ends_with_the_day() {
        Assessment assessment = RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().byHose("200 m³ ± 20 m³", "15on").judged();
        assertThat(assessment.gates().get(0).holdsUntil()).isEqualTo(java.time.Instant.parse("2026-11-25T23:59:59Z"));
    }

    @Test
    void without_a_prediction_there_is_a_caution_and_no_figure() {
        RunPlan plan = plan(RunRecord.of("250 cc", Cycle.TWO_STROKE));
        assertThat(plan.caution()).isNotEmpty().allMatch(words -> words.chars().noneMatch(Character::isDigit));
        assertThat(figure(plan, "longest-run")).isEqualTo("none: no prediction can be made");
        assertThat(figure(plan, "highest")).isNull();
        assertThat(RunCourse.of(RunRecord.of("250 cc", Cycle.TWO_STROKE).judged())).isEmpty();
        plan.parts().forEach(part -> assertThat(part.lines()).noneMatch(line -> line.contains("{")));
    }

    @Test
    void an_electric_machine_needs_no_plan_for_the_air() {
        Assessment assessment = RunRecord.of("0 cc", Cycle.ELECTRIC).judged();
        RunPlan plan = RunPlan.of(assessment.record(), assessment).orElseThrow();
        assertThat(plan.says()).startsWith("No exhaust");
        assertThat(plan.parts()).isEmpty();
    }

    @Test
    void the_course_is_what_the_figures_say() {
        RunCourse course = RunCourse.of(RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().intoTheRoom("200 m³ ± 20 m³", "5on").judged()).orElseThrow();
        assertThat(course.onlyIfTheHoseSlips()).isFalse();
        assertThat(course.runs()).containsExactly(new RunCourse.Span(0, 5));
        assertThat(course.near().get(0).ppm()).isCloseTo(5, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(course.near().stream().mapToDouble(p -> p.ppm()).max().orElseThrow()).isBetween(294.0, 295.0);
        assertThat(course.airing().get(0).minutes()).isEqualTo(5);
        assertThat(course.airing().get(course.airing().size() - 1).ppm()).isLessThan(9);
        assertThat(RunCourse.of(RunRecord.of("250 cc", Cycle.TWO_STROKE).allElseGood().byHose("200 m³ ± 20 m³", "5on").judged()).orElseThrow().onlyIfTheHoseSlips()).isTrue();
    }
}
