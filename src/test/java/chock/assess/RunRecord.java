package chock.assess;

import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.AsBuilt;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.Instrument;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.MakerFigures;
import chock.record.Moment;
import chock.record.Past;
import chock.record.Person;
import chock.record.RecordForm;
import chock.record.Value;
import chock.rulebook.OneSystem;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.Year;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A record of a run under a roof while it is being put together, judged by the checks of the air alone. */
public final class RunRecord {
    static final ZoneId ZONE = ZoneId.of("Europe/London");
    static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");
    static final RuleBook AIR = OneSystem.of("air");
    private static final Machine.Brake NONE = new Machine.Brake(Machine.BrakeType.NONE, Machine.WorkedBy.NONE, 0, Machine.Lining.NONE, false);
    private static final Machine.Wheel WHEEL = new Machine.Wheel(Machine.Rim.STEEL, true, true);

    private final Machine machine;
    private final List<Entry> entries = new ArrayList<>();

    private RunRecord(Machine machine) {
        this.machine = machine.with(new Past(List.of(), AsBuilt.asDescribed(machine, "Lark 250 rider's handbook", "4", "ida"), Map.of()));
    }

    public static RunRecord of(String displacement, Machine.Cycle cycle) {
        Machine.Oiling oiling = cycle == Machine.Cycle.TWO_STROKE ? Machine.Oiling.PREMIX : Machine.Oiling.WET_SUMP;
        return new RunRecord(new Machine("Tarnbeck", "Lark 250", "TB25-10382", "TB25E-10395", Machine.Kind.MOTORCYCLE, Year.of(1974), LocalDate.of(1974, 6, 14), Quantity.parse("120 km/h"), 2,
                new Machine.Engine(cycle, Quantity.parse(displacement), 1, oiling, Machine.Ignition.POINTS, Machine.Cooling.AIR), NONE, NONE, false, WHEEL, WHEEL, Machine.Drive.CHAIN, 6,
                new Machine.Equipment(Machine.Starter.KICK, 1, Machine.FuelTap.MANUAL, Machine.Clutch.CABLE, Machine.FrontSpringing.TELESCOPIC_FORK, Machine.RearSpringing.TWIN_DAMPERS,
                        true, false, true, 1, 2, true), Machine.History.KNOWN));
    }

    /** Everything but the room and the run, as it should be. */
    public RunRecord allElseGood() {
        return seen("room", "people", "staff-only").seen("room", "adjoining-rooms", "empty").seen("room", "way-out", "clear").seen("room", "other-engines", "none-running")
                .seen("room/co-instrument", "meter-kind", "direct-reading").tried("room/co-instrument", "bump-test", "passed").seen("room/co-instrument", "meter-height", "breathing")
                .measured("room/co-instrument", "background", "0 ppm ± 5 ppm").tried("machine", "stand-and-chock", "held").tried("machine", "drive", "neutral-found")
                .seen("run-plan", "planned-speed", "idle");
    }

    /** A closed room and an engine that nobody measured. */
    public RunRecord intoTheRoom(String volume, String runs) {
        return measured("room", "volume", volume).seen("room", "openings", "shut").code("run-plan", "planned-runs", runs)
                .seen("run-plan", "exhaust-goes", "into-the-room").seen("exhaust", "exhaust-data", "not-measured");
    }

    /** A hose that leads outdoors. */
    public RunRecord byHose(String volume, String runs) {
        return measured("room", "volume", volume).seen("room", "openings", "shut").code("run-plan", "planned-runs", runs)
                .seen("run-plan", "exhaust-goes", "outdoors-by-hose").count("exhaust", "outlets", "1 times").count("room/extraction", "connected-outlets", "1 times")
                .tried("room/extraction", "extraction", "running").measured("room/extraction", "extraction-flow", "500 m³/h ± 75 m³/h").seen("room/extraction", "discharge", "outdoors-clear");
    }

    public RunRecord seen(String point, String what, String answer) {
        return add(Deed.SEEN, point, what, new Value.Answer(answer));
    }

    public RunRecord tried(String point, String what, String answer) {
        return add(Deed.TRIED, point, what, new Value.Answer(answer));
    }

    public RunRecord code(String point, String what, String code) {
        return add(Deed.SEEN, point, what, new Value.Code(code));
    }

    public RunRecord count(String point, String what, String amount) {
        return add(Deed.SEEN, point, what, new Value.Amount(Measured.parse(amount)));
    }

    public RunRecord measured(String point, String what, String amount) {
        return add(Deed.MEASURED, point, what, new Value.Amount(Measured.parse(amount)));
    }

    RunRecord add(Deed deed, String point, String what, Value is) {
        int n = entries.size() + 1;
        entries.add(new Entry("e" + n, new Moment(LocalDate.of(2026, 11, 25), LocalTime.of(8, 0).plusMinutes(n), ZONE), "ida", deed, point, what, is,
                deed == Deed.MEASURED ? "gauge" : null, null, null, null, 0));
        return this;
    }

    public JobRecord record() {
        return new JobRecord("HV-0142", "Hollow Vale Motor Works", ZONE, "GB", false, List.of(Gate.INDOOR_RUN), machine, new MakerFigures(List.of(), List.of()),
                List.of(new Person("ida", "Ida Marrow", "inspector")), List.of(new Instrument("gauge", "co-meter", null, LocalDate.of(2026, 1, 1), LocalDate.of(2027, 1, 1))), List.copyOf(entries), List.of(), RecordForm.NEWEST);
    }

    public Assessment judged() {
        return Assessor.assess(record(), AIR, List.of(Gate.INDOOR_RUN), NOON);
    }
}
