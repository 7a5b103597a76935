package chock.assess;

import static org.assertj.core.api.Assertions.assertThat;

import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.MakerFigures;
import chock.record.Moment;
import chock.record.RecordForm;
import chock.record.Value;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The plan of the shipped rule book. All its speeds and distances are common practice; the fixture of the machine is invented. */
class RidePlanTest {
    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    private static final Machine.Brake DISC = new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.HYDRAULIC, 1, Machine.Lining.BONDED, true);
    private static final Machine.Brake DRUM = new Machine.Brake(Machine.BrakeType.DRUM, Machine.WorkedBy.ROD, 0, Machine.Lining.BONDED, true);
    private static final Machine.Brake NO_BRAKE = new Machine.Brake(Machine.BrakeType.NONE, Machine.WorkedBy.NONE, 0, Machine.Lining.NONE, false);
    private static final Machine.Engine TWO_STROKE = new Machine.Engine(Machine.Cycle.TWO_STROKE, Quantity.parse("246 cc"), 1,
            Machine.Oiling.OIL_INJECTION, Machine.Ignition.POINTS, Machine.Cooling.AIR);
    private static final Machine.Engine ELECTRIC = new Machine.Engine(Machine.Cycle.ELECTRIC, Quantity.parse("0 cc"), 0,
            Machine.Oiling.NONE, Machine.Ignition.NONE, Machine.Cooling.AIR);
    private static final Machine LARK = machine("120 km/h", TWO_STROKE, DISC, DRUM, Machine.Drive.CHAIN, true, Machine.History.KNOWN);

    private static Machine machine(String topSpeed, Machine.Engine engine, Machine.Brake front, Machine.Brake rear, Machine.Drive drive, boolean spoked, Machine.History history) {
        Machine.Wheel wheel = new Machine.Wheel(spoked ? Machine.Rim.STEEL : Machine.Rim.ALLOY, spoked, true);
        return new Machine("Tarnbeck", "Lark 250", "TB25-10382", "TB25E-10395", Machine.Kind.MOTORCYCLE, Year.of(1974), LocalDate.of(1974, 6, 14),
                Quantity.parse(topSpeed), 2, engine, front, rear, false, wheel, wheel, drive, 6,
                new Machine.Equipment(Machine.Starter.KICK, 1, Machine.FuelTap.MANUAL, Machine.Clutch.CABLE, Machine.FrontSpringing.TELESCOPIC_FORK,
                        Machine.RearSpringing.TWIN_DAMPERS, true, false, true, 1, 2, true), history);
    }

    /** Work at nine plus the number of its id, by ida. */
    private static Entry work(int id, String point, String work) {
        return entry(id, "ida", Deed.DONE, point, work, LocalTime.of(9, id), null);
    }

    private static Entry entry(int id, String by, Deed deed, String point, String what, LocalTime time, String corrects) {
        Value is = deed == Deed.DONE ? null : new Value.Answer("sound");
        return new Entry("e" + id, new Moment(LocalDate.of(2026, 11, 20), time, LONDON), by, deed, point, what, is, null, corrects, corrects == null ? null : "a slip", null, id);
    }

    private static RidePlan plan(Machine machine, Entry... entries) {
        return plan(machine, new GateVerdict(Gate.ROAD_TEST, true, Examples.DAY, List.of(), List.of(), List.of()), entries);
    }

    private static RidePlan plan(Machine machine, GateVerdict gate, Entry... entries) {
        Assessment assessment = assessment(machine, gate, entries);
        return RidePlan.of(assessment.record(), assessment).orElseThrow();
    }

    private static Assessment assessment(Machine machine, GateVerdict gate, Entry... entries) {
        JobRecord record = new JobRecord("HV-0142", "Hollow Vale Motor Works", LONDON, "GB", false, List.of(gate.gate()), machine,
                new MakerFigures(List.of(), List.of()), List.of(), List.of(), List.of(entries), List.of(), RecordForm.NEWEST);
        return new Assessment(record, Examples.DAY, "1", "sha256:0", "GB", null, List.of(gate), List.of(), Disclosures.NONE, List.of(), Examples.BOOK.ride().orElseThrow(), null, List.of());
    }

    private static List<String> held(RidePlan plan) {
        return plan.restraints().stream().map(RidePlan.Restraint::id).toList();
    }

    private static RidePlan.Step step(RidePlan plan, String id) {
        return plan.steps().stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    }

    private static String said(RidePlan plan) {
        StringBuilder said = new StringBuilder();
        plan.restraints().forEach(r -> r.lines().forEach(l -> said.append(l.says()).append('\n')));
        plan.steps().forEach(s -> {
            s.doing().forEach(l -> said.append(l.says()).append('\n'));
            s.feel().forEach(l -> said.append(l.says()).append('\n'));
        });
        plan.stop().forEach(l -> said.append(l.says()).append('\n'));
        plan.back().forEach(l -> said.append(l.says()).append('\n'));
        return said.toString();
    }

    @Test
    void the_steps_go_from_walking_pace_to_the_main_road_each_with_its_speed_and_source() {
        RidePlan plan = plan(LARK);
        assertThat(plan.rideable()).isTrue();
        assertThat(held(plan)).isEmpty();
        assertThat(plan.steps()).extracting(s -> s.upTo() == null ? s.id() : s.id() + " " + s.upTo().says())
                .containsExactly("yard up to 5 mph (8 km/h)", "quiet-road up to 30 mph (48 km/h)", "stop-and-look", "faster-road up to 50 mph (80 km/h)", "main-road up to 60 mph (96 km/h)");
        assertThat(plan.steps()).allMatch(s -> s.leftOut() == null && !s.doing().isEmpty() && !s.feel().isEmpty() && (s.upTo() == null || s.upTo().source() != null));
        assertThat(said(plan)).contains("any loss of feel", "Tap every spoke.", "Measure the slack of chain or belt");
    }

    @Test
    void a_fresh_top_end_limits_throttle_speed_and_distance_and_is_tightened_again_on_return() {
        RidePlan plan = plan(LARK, work(1, "engine/top-end", "stripped"));
        assertThat(held(plan)).containsExactly("fresh-top-end");
        RidePlan.Restraint restraint = plan.restraints().get(0);
        assertThat(restraint.because()).isEqualTo("The top end is fresh");
        assertThat(restraint.points()).containsExactly("engine/top-end");
        assertThat(restraint.evidence()).containsExactly("e1");
        assertThat(restraint.upTo().amount()).isEqualTo(Quantity.parse("50 mph"));
        assertThat(restraint.lines()).extracting(RidePlan.Line::says).contains("for the first 300 mi (483 km) of the running-in", "at most 66 % of full throttle");
        assertThat(restraint.lines()).filteredOn(l -> l.amount() != null).hasSize(3).allMatch(l -> l.source() != null);
        assertThat(step(plan, "faster-road").upTo().amount()).isEqualTo(Quantity.parse("50 mph"));
        assertThat(step(plan, "main-road").leftOut()).isEqualTo("the top end is fresh (up to 50 mph (80 km/h))");
        assertThat(step(plan, "main-road").upTo()).isNull();
        assertThat(plan.back()).extracting(RidePlan.Line::says).contains("Let it go quite cold and tighten the head again in its order to its figure.");
    }

    @ParameterizedTest
    @CsvSource({
        "engine/top-end, replaced, fresh-top-end", "engine/top-end, bored, fresh-top-end", "engine/top-end/piston, replaced, fresh-top-end",
        "engine, stripped, fresh-top-end", "engine/cylinder-2, bored, fresh-top-end",
        "front-wheel/tyre, replaced, new-tyres", "rear-wheel/tyre, replaced, new-tyres",
        "front-brake/caliper/inner-pad, replaced, new-pads", "front-brake/disc, replaced, new-pads",
        "rear-brake/shoes, replaced, new-shoes", "rear-brake/shoes, repaired, new-shoes", "rear-brake/drum, repaired, new-shoes"
    })
    void fresh_work_holds_the_ride_back(String point, String work, String restraint) {
        assertThat(held(plan(LARK, work(1, point, work)))).containsExactly(restraint);
    }

    @ParameterizedTest
    @CsvSource({"engine/top-end, torqued", "engine/top-end, adjusted", "front-wheel/tyre, inflated", "front-brake/caliper/inner-pad, cleaned", "rear-brake/shoes, adjusted", "front-wheel, refitted"})
    void other_work_does_not(String point, String work) {
        assertThat(held(plan(LARK, work(1, point, work)))).isEmpty();
    }

    @Test
    void a_replaced_wheel_or_brake_brings_new_tyre_and_new_friction_with_it() {
        assertThat(held(plan(LARK, work(1, "rear-wheel", "replaced")))).containsExactly("new-tyres");
        assertThat(held(plan(LARK, work(1, "front-brake", "replaced")))).containsExactly("new-pads");
        assertThat(held(plan(LARK, work(1, "rear-brake", "replaced")))).containsExactly("new-shoes");
    }

    @Test
    void new_friction_is_bedded_in_on_the_quiet_road() {
        RidePlan plan = plan(LARK, work(1, "front-brake/caliper/inner-pad", "replaced"), work(2, "rear-brake/shoes", "replaced"));
        assertThat(step(plan, "quiet-road").doing()).extracting(RidePlan.Line::amount).filteredOn(a -> a != null)
                .containsExactly(Quantity.parse("8 times"), Quantity.parse("20 mph"));
        assertThat(step(plan, "yard").doing()).extracting(RidePlan.Line::says).noneMatch(says -> says.startsWith("Bed in"));
        assertThat(plan.restraints().get(0).lines()).extracting(RidePlan.Line::says).containsExactly("no hard stop, no passenger and no traffic before they are bedded in");
    }

    @ParameterizedTest
    @CsvSource({"engine/top-end, stripped, engine/top-end", "engine/top-end/rings, replaced, engine", "front-brake/caliper/inner-pad, replaced, front-brake", "rear-wheel/tyre, replaced, rear-wheel/tyre"})
    void what_was_bedded_afterwards_no_longer_holds_it_back(String point, String work, String bedded) {
        Entry fresh = work(2, point, work);
        assertThat(held(plan(LARK, fresh))).isNotEmpty();
        assertThat(held(plan(LARK, fresh, work(3, bedded, "bedded")))).isEmpty();
        assertThat(held(plan(LARK, fresh, work(1, bedded, "bedded")))).as("bedded before").isNotEmpty();
        assertThat(held(plan(LARK, fresh, entry(3, "ida", Deed.DONE, bedded, "bedded", null, null)))).as("on that day, nobody knows when").isNotEmpty();
    }

    @Test
    void bedding_one_end_leaves_the_other_held_back() {
        RidePlan plan = plan(LARK, work(1, "front-wheel/tyre", "replaced"), work(2, "rear-wheel/tyre", "replaced"), work(3, "front-wheel/tyre", "bedded"));
        assertThat(plan.restraints()).singleElement().extracting(RidePlan.Restraint::points).isEqualTo(List.of("rear-wheel/tyre"));
    }

    @Test
    void corrections_count_only_on_the_safe_side() {
        Entry fresh = work(1, "engine/top-end", "stripped");
        Entry bedded = work(2, "engine/top-end", "bedded");
        assertThat(held(plan(LARK, fresh, entry(3, "tom", Deed.DONE, "engine/top-end", "cleaned", LocalTime.of(10, 0), "e1")))).as("by another person").isEmpty();
        assertThat(held(plan(LARK, fresh, entry(3, "ida", Deed.DONE, "engine/top-end", "cleaned", LocalTime.of(10, 0), "e1")))).as("by the same person").containsExactly("fresh-top-end");
        assertThat(held(plan(LARK, fresh, bedded, entry(3, "ida", Deed.DONE, "engine/top-end", "cleaned", LocalTime.of(10, 0), "e2")))).as("the bedding corrected").containsExactly("fresh-top-end");
    }

    private static GateVerdict aged(State state, String... evidence) {
        Finding.AtPlace place = new Finding.AtPlace("rear-wheel/tyre", state, "…", null, null, null, List.of(), List.of(evidence));
        Finding finding = new Finding("tyres.aged-examination", state, "…", null, null, null, null, null, List.of(), List.of(evidence), true, List.of(place), null);
        return new GateVerdict(Gate.ROAD_TEST, state == State.MET, state == State.MET ? Examples.DAY : null, List.of(finding), List.of(), List.of());
    }

    @Test
    void a_tyre_that_passes_only_on_its_examination_keeps_the_speed_down() {
        Entry code = entry(1, "ida", Deed.SEEN, "rear-wheel/tyre", "date-code", LocalTime.of(9, 0), null);
        Entry examined = entry(2, "ida", Deed.SEEN, "rear-wheel/casing", "examination", LocalTime.of(9, 1), null);
        assertThat(held(plan(LARK, aged(State.MET, "e1"), code, examined))).as("young enough by its date").isEmpty();
        RidePlan plan = plan(LARK, aged(State.MET, "e1", "e2"), code, examined);
        assertThat(held(plan)).containsExactly("aged-tyres");
        assertThat(plan.restraints().get(0).points()).containsExactly("rear-wheel/tyre");
        assertThat(step(plan, "main-road").leftOut()).startsWith("a tyre is too old to pass on its date");
        assertThat(held(plan(LARK, aged(State.MISSING)))).as("nobody knows its age").containsExactly("aged-tyres");
    }

    @Test
    void a_machine_is_never_asked_to_go_faster_than_it_can() {
        RidePlan plan = plan(machine("45 km/h", TWO_STROKE, DISC, DRUM, Machine.Drive.CHAIN, true, Machine.History.KNOWN));
        // 45 km/h is 27.96 mph, below the 30 mph of the quiet road
        assertThat(step(plan, "quiet-road").upTo().says()).isEqualTo("up to 45 km/h");
        assertThat(step(plan, "stop-and-look").leftOut()).isNull();
        assertThat(List.of(step(plan, "faster-road"), step(plan, "main-road"))).allMatch(s -> s.leftOut().equals("the machine goes no faster (up to 45 km/h)"));
    }

    @Test
    void lines_that_do_not_fit_the_machine_are_left_out() {
        String electric = said(plan(machine("90 km/h", ELECTRIC, DRUM, DRUM, Machine.Drive.SHAFT, false, Machine.History.KNOWN), work(1, "engine/top-end", "replaced")));
        assertThat(electric).contains("under power").doesNotContain("fuel", "clutch", "gear", "spoke.", "chain", "master cylinder", "throttle shut", "running-in");
        String four = said(plan(machine("90 km/h", new Machine.Engine(Machine.Cycle.FOUR_STROKE, Quantity.parse("346 cc"), 1, Machine.Oiling.DRY_SUMP,
                Machine.Ignition.MAGNETO, Machine.Cooling.AIR), DISC, DRUM, Machine.Drive.CHAIN, true, Machine.History.KNOWN), work(1, "engine/top-end", "replaced")));
        assertThat(four).contains("running-in").doesNotContain("mixture");
        assertThat(said(plan(LARK, work(1, "engine/top-end", "replaced")))).contains("mixture");
    }

    @Test
    void of_a_machine_without_known_history_everything_counts_as_fresh_until_it_is_settled() {
        Machine unknown = machine("120 km/h", TWO_STROKE, DISC, DRUM, Machine.Drive.CHAIN, true, Machine.History.UNKNOWN);
        RidePlan plan = plan(unknown);
        assertThat(held(plan)).containsExactly("fresh-top-end", "new-tyres", "new-pads", "new-shoes");
        assertThat(plan.restraints()).allMatch(r -> r.evidence().isEmpty() && r.because().contains("history unknown"));
        List<Entry> settled = new ArrayList<>(Arrays.asList(work(1, "engine/top-end", "bedded"), work(2, "front-wheel/tyre", "bedded"),
                work(3, "rear-wheel/tyre", "bedded"), work(4, "front-brake", "bedded")));
        assertThat(held(plan(unknown, settled.toArray(Entry[]::new)))).as("the drum behind is not").containsExactly("new-shoes");
        settled.add(work(5, "rear-brake", "bedded"));
        assertThat(held(plan(unknown, settled.toArray(Entry[]::new)))).isEmpty();
        Machine oneBrake = machine("70 km/h", TWO_STROKE, NO_BRAKE, DRUM, Machine.Drive.CHAIN, true, Machine.History.UNKNOWN);
        assertThat(held(plan(oneBrake, settled.toArray(Entry[]::new)))).isEmpty();
    }

    @Test
    void without_a_brake_there_is_no_ride() {
        RidePlan plan = plan(machine("40 km/h", TWO_STROKE, NO_BRAKE, NO_BRAKE, Machine.Drive.CHAIN, true, Machine.History.KNOWN));
        assertThat(plan.rideable()).isFalse();
        assertThat(plan.says()).isEqualTo("A road test makes no sense for a machine without a brake: there is no ride to plan.");
        assertThat(plan.steps()).isEmpty();
    }

    @Test
    void a_blocked_gate_gives_no_leave_to_ride() {
        GateVerdict blocked = new GateVerdict(Gate.ROAD_TEST, false, null, List.of(), List.of(), List.of());
        assertThat(plan(LARK, blocked).rideable()).isFalse();
        assertThat(plan(LARK, blocked).says()).startsWith("Not to be ridden while road-test is blocked.");
        assertThat(plan(LARK).says()).isEqualTo("In this order, each step only when nothing was felt in the one before.");
    }

    @Test
    void only_the_road_test_has_a_plan() {
        Assessment other = assessment(LARK, new GateVerdict(Gate.HAND_OVER, true, Examples.DAY, List.of(), List.of(), List.of()));
        assertThat(RidePlan.of(other.record(), other)).isEmpty();
    }
}
