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
        Machine m = bench.machine;
        change(m.kind(), m.firstRegistered(), m.topSpeed(), m.seats(), Bench.brake(front), Bench.brake(rear), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    @Given("^the machine is first registered (\\d{4}-\\d{2}-\\d{2})$")
    public void registered(String date) {
        Machine m = bench.machine;
        change(m.kind(), LocalDate.parse(date), m.topSpeed(), m.seats(), m.frontBrake(), m.rearBrake(), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    @Given("^the machine is a (moped|moped-3w|motorcycle|motorcycle-sidecar)$")
    public void kind(String kind) {
        Machine m = bench.machine;
        change(Machine.Kind.valueOf(kind.toUpperCase(Locale.ROOT).replace('-', '_')), m.firstRegistered(), m.topSpeed(), m.seats(), m.frontBrake(), m.rearBrake(), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    @Given("^the top speed is (.+)$")
    public void topSpeed(String speed) {
        Machine m = bench.machine;
        change(m.kind(), m.firstRegistered(), Quantity.parse(speed), m.seats(), m.frontBrake(), m.rearBrake(), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    @Given("^it has (\\d) seats?$")
    public void seats(int seats) {
        Machine m = bench.machine;
        change(m.kind(), m.firstRegistered(), m.topSpeed(), seats, m.frontBrake(), m.rearBrake(), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    @Given("^the brakes are linked$")
    public void linked() {
        Machine m = bench.machine;
        change(m.kind(), m.firstRegistered(), m.topSpeed(), m.seats(), m.frontBrake(), m.rearBrake(), true, m.frontWheel(), m.rearWheel());
    }

    @Given("^the linings are (bonded|riveted|sintered)$")
    public void linings(String lining) {
        Machine m = bench.machine;
        Machine.Lining held = Machine.Lining.valueOf(lining.toUpperCase(Locale.ROOT));
        change(m.kind(), m.firstRegistered(), m.topSpeed(), m.seats(), lined(m.frontBrake(), held), lined(m.rearBrake(), held), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    private static Machine.Brake lined(Machine.Brake b, Machine.Lining lining) {
        return b.type() == Machine.BrakeType.NONE ? b : new Machine.Brake(b.type(), b.workedBy(), b.discs(), lining, b.stopLampSwitch());
    }

    @Given("^the (front|rear) brake has no stop lamp switch$")
    public void noSwitch(String end) {
        Machine m = bench.machine;
        boolean front = end.equals("front");
        change(m.kind(), m.firstRegistered(), m.topSpeed(), m.seats(), front ? unswitched(m.frontBrake()) : m.frontBrake(), front ? m.rearBrake() : unswitched(m.rearBrake()), m.linkedBrakes(), m.frontWheel(), m.rearWheel());
    }

    private static Machine.Brake unswitched(Machine.Brake b) {
        return new Machine.Brake(b.type(), b.workedBy(), b.discs(), b.lining(), false);
    }

    @Given("^the wheels have (steel|alloy) rims$")
    public void rims(String rim) {
        wheels(new Machine.Wheel(Machine.Rim.valueOf(rim.toUpperCase(Locale.ROOT)), bench.machine.frontWheel().spoked(), bench.machine.frontWheel().tube()));
    }

    @Given("^the wheels are cast$")
    public void cast() {
        wheels(new Machine.Wheel(Machine.Rim.ALLOY, false, bench.machine.frontWheel().tube()));
    }

    @Given("^the tyres are tubeless$")
    public void tubeless() {
        wheels(new Machine.Wheel(bench.machine.frontWheel().rim(), bench.machine.frontWheel().spoked(), false));
    }

    private void wheels(Machine.Wheel wheel) {
        Machine m = bench.machine;
        change(m.kind(), m.firstRegistered(), m.topSpeed(), m.seats(), m.frontBrake(), m.rearBrake(), m.linkedBrakes(), wheel, wheel);
    }

    private void change(Machine.Kind kind, LocalDate registered, Quantity speed, int seats, Machine.Brake front, Machine.Brake rear, boolean linked, Machine.Wheel frontWheel, Machine.Wheel rearWheel) {
        Machine m = bench.machine;
        bench.machine = new Machine(m.marque(), m.model(), m.frameNumber(), m.engineNumber(), kind, java.time.Year.of(registered.getYear()), registered, speed, seats,
                m.engine(), front, rear, linked, frontWheel, rearWheel, m.drive(), m.volts());
    }

    @Given("^the territory is ([A-Z]{2}(?:-[A-Z0-9]{1,3})?)$")
    public void territory(String territory) {
        bench.territory = territory;
    }

    @Given("^the day is (\\d{4}-\\d{2}-\\d{2})$")
    public void day(String date) {
        bench.today = LocalDate.parse(date);
    }

    @Given("^([a-z/-]+) (measured|tried|seen|told|assumed) ([a-z-]+) (.+?)(?: (\\d+) (day|month|year)s? ago)?$")
    public void evidence(String point, String verb, String aspect, String value, Integer count, String unit) {
        bench.evidence(point, Deed.valueOf(verb.toUpperCase(Locale.ROOT)), aspect, value, ago(count, unit));
    }

    @Given("^([a-z/-]+) was ([a-z-]+)(?: (\\d+) (day|month|year)s? ago)?$")
    public void work(String point, String work, Integer count, String unit) {
        bench.work(point, work, ago(count, unit));
    }

    @Given("^a licensed inspector (passed|refused) it(?: (\\d+) (day|month|year)s? ago)?$")
    public void inspected(String result, Integer count, String unit) {
        bench.inspected(result, ago(count, unit));
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

    @Given("^the maker says ([a-z.-]+) (at least|at most|is) (.+?)(?: at ([a-z/-]+))?$")
    public void maker(String limit, String sense, String value, String point) {
        bench.maker(limit, point, sense, value);
    }

    @Given("^no word from the maker on ([a-z.-]+)$")
    public void noWord(String limit) {
        bench.noWordFromMaker(limit);
    }

    private Finding last;

    @Then("^([a-z]+\\.[a-z0-9-]+) is (?:a |in )?(met|fault|doubt|stale|missing|not applicable)(?: at ([a-z/-]+))?$")
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
