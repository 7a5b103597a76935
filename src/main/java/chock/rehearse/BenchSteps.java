package chock.rehearse;

import chock.assess.Finding;
import chock.quantity.Quantity;
import chock.record.Deed;
import chock.record.Machine;
import io.cucumber.java.en.Given;
import io.cucumber.java.en.Then;
import java.time.LocalDate;
import java.time.Period;
import java.util.Locale;

/** The steps in which a scenario speaks. Each is one sentence an inspector would say. */
public final class BenchSteps {
    private final Bench bench;

    public BenchSteps(Bench bench) {
        this.bench = bench;
    }

    @Given("^a motorcycle with (.+) in front and (.+) behind$")
    public void motorcycle(String front, String rear) {
        bench.draft.frontBrake = Draft.brake(front);
        bench.draft.rearBrake = Draft.brake(rear);
    }

    @Given("^the machine is first registered (\\d{4}-\\d{2}-\\d{2})$")
    public void registered(String date) {
        bench.draft.firstRegistered = LocalDate.parse(date);
    }

    @Given("^the machine is a (moped|moped-3w|motorcycle|motorcycle-sidecar)$")
    public void kind(String kind) {
        bench.draft.kind = Draft.word(Machine.Kind.class, kind);
    }

    @Given("^the top speed is (.+)$")
    public void topSpeed(String speed) {
        bench.draft.topSpeed = Quantity.parse(speed);
    }

    @Given("^it has (\\d) seats?$")
    public void seats(int seats) {
        bench.draft.seats = seats;
    }

    @Given("^the brakes are linked$")
    public void linked() {
        bench.draft.linkedBrakes = true;
    }

    @Given("^the linings are (bonded|riveted|sintered)$")
    public void linings(String lining) {
        Machine.Lining held = Draft.word(Machine.Lining.class, lining);
        bench.draft.frontBrake = lined(bench.draft.frontBrake, held);
        bench.draft.rearBrake = lined(bench.draft.rearBrake, held);
    }

    private static Machine.Brake lined(Machine.Brake b, Machine.Lining lining) {
        return b.type() == Machine.BrakeType.NONE ? b : new Machine.Brake(b.type(), b.workedBy(), b.discs(), lining, b.stopLampSwitch());
    }

    @Given("^the (front|rear) brake has no stop lamp switch$")
    public void noSwitch(String end) {
        if (end.equals("front")) {
            bench.draft.frontBrake = unswitched(bench.draft.frontBrake);
        } else {
            bench.draft.rearBrake = unswitched(bench.draft.rearBrake);
        }
    }

    private static Machine.Brake unswitched(Machine.Brake b) {
        return new Machine.Brake(b.type(), b.workedBy(), b.discs(), b.lining(), false);
    }

    @Given("^the wheels have (steel|alloy) rims$")
    public void rims(String rim) {
        wheels(new Machine.Wheel(Draft.word(Machine.Rim.class, rim), bench.draft.frontWheel.spoked(), bench.draft.frontWheel.tube()));
    }

    @Given("^the wheels are cast$")
    public void cast() {
        wheels(new Machine.Wheel(Machine.Rim.ALLOY, false, bench.draft.frontWheel.tube()));
    }

    @Given("^the tyres are tubeless$")
    public void tubeless() {
        wheels(new Machine.Wheel(bench.draft.frontWheel.rim(), bench.draft.frontWheel.spoked(), false));
    }

    private void wheels(Machine.Wheel wheel) {
        bench.draft.frontWheel = wheel;
        bench.draft.rearWheel = wheel;
    }

    @Given("^the engine is a (two-stroke|four-stroke)$")
    public void cycle(String cycle) {
        bench.draft.cycle(Draft.word(Machine.Cycle.class, cycle));
    }

    @Given("^the engine has (\\d) cylinders?$")
    public void cylinders(int cylinders) {
        bench.draft.cylinders(cylinders);
    }

    @Given("^the engine is oiled by (oil-injection|premix|wet-sump|dry-sump|total-loss)$")
    public void oiling(String oiling) {
        bench.draft.oiling(Draft.word(Machine.Oiling.class, oiling));
    }

    @Given("^the ignition is (points|magneto|electronic)$")
    public void ignition(String ignition) {
        bench.draft.ignition(Draft.word(Machine.Ignition.class, ignition));
    }

    @Given("^the machine is electric$")
    public void electric() {
        bench.draft.electric();
    }

    @Given("^the final drive is (chain|belt|shaft)$")
    public void drive(String drive) {
        bench.draft.drive = Draft.word(Machine.Drive.class, drive);
    }

    @Given("^the battery has (\\d+) volts$")
    public void volts(int volts) {
        bench.draft.volts = volts;
    }

    @Given("^the equipment has ([a-z-]+) ([a-z0-9-]+)$")
    public void equipment(String key, String value) {
        bench.draft.equip(key, value);
    }

    @Given("^the history is (known|unknown)$")
    public void history(String history) {
        bench.draft.history = Draft.word(Machine.History.class, history);
    }

    @Given("^the territory is ([A-Z]{2}(?:-[A-Z0-9]{1,3})?)$")
    public void territory(String territory) {
        bench.territory = territory;
    }

    @Given("^the day is (\\d{4}-\\d{2}-\\d{2})$")
    public void day(String date) {
        bench.today = LocalDate.parse(date);
    }

    @Given("^(?:(ida|tom) wrote that )?([a-z0-9/-]+) (measured|tried|seen|told|assumed) ([a-z-]+) (.+?)(?: (\\d+) (day|month|year)s? ago)?$")
    public void evidence(String by, String point, String verb, String aspect, String value, Integer count, String unit) {
        bench.evidence(writer(by), point, Deed.valueOf(verb.toUpperCase(Locale.ROOT)), aspect, value, ago(count, unit));
    }

    @Given("^(?:(ida|tom) wrote that )?([a-z0-9/-]+) was ([a-z-]+)(?: (\\d+) (day|month|year)s? ago)?$")
    public void work(String by, String point, String work, Integer count, String unit) {
        bench.work(writer(by), point, work, ago(count, unit));
    }

    @Given("^a licensed inspector (passed|refused) it(?: (\\d+) (day|month|year)s? ago)?$")
    public void inspected(String result, Integer count, String unit) {
        bench.inspected(result, ago(count, unit));
    }

    private static String writer(String by) {
        return by == null ? Bench.INSPECTOR : by;
    }

    @Given("^(ida|tom) corrected it to (.+)$")
    public void corrected(String by, String value) {
        bench.correct(by, value);
    }

    @Given("^the calibration of the instrument ran out (\\d+) (day|month|year)s? ago$")
    public void ranOut(Integer count, String unit) {
        bench.ranOutOfCalibration(ago(count, unit));
    }

    @Given("^the instrument was found out of tolerance(?: (\\d+) (day|month|year)s? ago)?$")
    public void foundOut(Integer count, String unit) {
        bench.foundOut(ago(count, unit));
    }

    @Given("^another instrument is taken from here on$")
    public void anotherInstrument() {
        bench.takeAnotherInstrument();
    }

    @Given("^one person works alone$")
    public void onePerson() {
        bench.onePerson = true;
    }

    @Given("^the engine has no number$")
    public void engineWithoutNumber() {
        bench.draft.engineNumber = "none";
    }

    private static Period ago(Integer count, String unit) {
        if (count == null) {
            return Period.ZERO;
        }
        return switch (unit) {
            case "day" -> Period.ofDays(count);
            case "month" -> Period.ofMonths(count);
            default -> Period.ofYears(count);
        };
    }

    @Given("^the maker says ([a-z0-9.-]+) (at least|at most|is) (.+?)(?: at ([a-z0-9/-]+))?$")
    public void maker(String limit, String sense, String value, String point) {
        bench.maker(limit, point, sense, value);
    }

    @Given("^no word from the maker on ([a-z0-9.-]+)$")
    public void noWord(String limit) {
        bench.noWordFromMaker(limit);
    }

    private Finding last;

    @Then("^([a-z]+\\.[a-z0-9-]+) is (?:a |in )?(met|fault|doubt|stale|missing|not applicable)(?: at ([a-z0-9/-]+))?$")
    public void outcome(String check, String state, String point) {
        last = bench.finding(check);
        if (state.equals("not applicable")) {
            expect(last == null, check + " applies: " + (last == null ? "" : last.says()));
            return;
        }
        expect(last != null, check + " does not apply to this machine");
        if (point != null) {
            Finding.AtPlace place = last.places().stream().filter(p -> p.point().equals(point)).findFirst().orElse(null);
            expect(place != null, check + " is not asked at " + point);
            expect(place.state().id().equals(state), check + " is " + place.state().id() + " at " + point + ": " + place.says());
        } else {
            expect(last.state().id().equals(state), check + " is " + last.state().id() + ": " + last.says());
        }
    }

    @Then("^it says \"(.+)\"$")
    public void says(String part) {
        expect(last != null && last.places().stream().anyMatch(p -> p.says().contains(part)), "it says: " + (last == null ? "nothing" : last.places().stream().map(Finding.AtPlace::says).toList()));
    }

    @Then("^it notes \"(.+)\"$")
    public void notes(String part) {
        expect(last != null && last.notes().stream().anyMatch(n -> n.contains(part)), "it notes: " + (last == null ? "nothing" : last.notes()));
    }

    @Then("^the limit came from \"(.+)\"$")
    public void limitFrom(String part) {
        expect(last != null && last.places().stream().anyMatch(p -> p.limit() != null && p.limit().source().words().contains(part)),
                "the limit: " + (last == null ? "none" : last.places().stream().filter(p -> p.limit() != null).map(p -> p.limit().words()).toList()));
    }

    @Then("^the ([a-z-]+) is (released|blocked)$")
    public void verdict(String gate, String verdict) {
        expect(bench.gate(gate).verdict().equals(verdict), gate + " is " + bench.gate(gate).verdict());
    }

    private static void expect(boolean holds, String found) {
        if (!holds) {
            throw new AssertionError(found);
        }
    }
}
