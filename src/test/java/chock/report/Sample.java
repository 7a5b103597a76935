package chock.report;

import chock.assess.Assessment;
import chock.assess.Claims;
import chock.assess.Disclosures;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.State;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.record.Claim;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Machine;
import chock.record.MakerFigures;
import chock.record.RecordForm;
import chock.rulebook.Applied;
import chock.rulebook.Limit;
import chock.rulebook.Source;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Year;
import java.time.ZoneId;
import java.util.List;

/** Assessments made by hand, with every state in them. */
final class Sample {
    static final Instant NOON = Instant.parse("2026-07-25T11:00:30Z");
    static final ZoneId LONDON = ZoneId.of("Europe/London");
    static final String DIGEST = "sha256:0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

    private Sample() { }

    static JobRecord record(String workshop) {
        Machine.Brake disc = new Machine.Brake(Machine.BrakeType.DISC, Machine.WorkedBy.HYDRAULIC, 1, Machine.Lining.BONDED, true);
        Machine.Brake drum = new Machine.Brake(Machine.BrakeType.DRUM, Machine.WorkedBy.ROD, 0, Machine.Lining.BONDED, true);
        Machine.Wheel wheel = new Machine.Wheel(Machine.Rim.STEEL, true, true);
        Machine.Engine engine = new Machine.Engine(Machine.Cycle.TWO_STROKE, Quantity.parse("246 cc"), 1,
                Machine.Oiling.OIL_INJECTION, Machine.Ignition.POINTS, Machine.Cooling.AIR);
        Machine machine = new Machine("Tarnbeck", "Lark 250", "TB25-10382", "TB25E-10395", Machine.Kind.MOTORCYCLE, Year.of(1974),
                LocalDate.of(1974, 6, 14), Quantity.parse("120 km/h"), 2, engine, disc, drum, false, wheel, wheel, Machine.Drive.CHAIN, 6,
                new Machine.Equipment(Machine.Starter.KICK, 1, Machine.FuelTap.MANUAL, Machine.Clutch.CABLE,
                        Machine.FrontSpringing.TELESCOPIC_FORK, Machine.RearSpringing.TWIN_DAMPERS, true, false, true, 1, 2, true),
                Machine.History.KNOWN);
        return new JobRecord("HV-0142", workshop, LONDON, "GB", false, List.of(Gate.ROAD_TEST), machine,
                new MakerFigures(List.of(), List.of()), List.of(), List.of(), List.of(), List.of(), RecordForm.NEWEST);
    }

    static Finding fault() {
        Applied limit = new Applied("brakes.pad-thickness", new Bounds(Quantity.parse("1.50 mm"), true, null, false), Limit.Sense.AT_LEAST,
                new Source(Source.Kind.LAW, "Example code", "section 4", Source.Known.READ), List.of("also at least 1.0 mm (common practice)"));
        Measured measured = new Measured(Quantity.parse("1.20 mm"), Quantity.parse("0.10 mm"));
        String says = "Front brake, caliper, inner pad: 1.20 mm ± 0.10 mm, at least 1.50 mm (Example code, section 4, read in the official text).";
        Quantity margin = Quantity.parse("-0.30 mm");
        return new Finding("brakes.pad-thickness", State.FAULT, says, measured, limit, margin,
                "Fit new pads as a set, bed them in, and measure again.", "Old friction material can contain asbestos. Do not blow it out.",
                List.of("The set is a replica."), List.of("e1"), true,
                List.of(new Finding.AtPlace("front-brake/caliper/inner-pad", State.FAULT, says, measured, limit, margin, List.of("The set is a replica."), List.of("e1")),
                        new Finding.AtPlace("front-brake/caliper/outer-pad", State.MISSING, "Front brake, caliper, outer pad: nobody measured its thickness.",
                                null, null, null, List.of("The pin was seized."), List.of())), null);
    }

    /** A finding of this state with nothing but its words. */
    static Finding plain(String check, State state, String says) {
        return new Finding(check, state, says, null, null, null, state == State.MET ? null : "Do the work for " + check + ".", null,
                List.of(), List.of(), false, List.of(), null);
    }

    static GateVerdict blocked() {
        return new GateVerdict(Gate.ROAD_TEST, false, null, List.of(fault(),
                plain("tyres.tread-depth", State.DOUBT, "Rear tyre: 1.1 mm ± 0.2 mm is too close to at least 1.0 mm."),
                plain("brakes.bled", State.STALE, "Front brake: bled before the caliper came off again."),
                plain("brakes.hose-age", State.MISSING, "Front brake hose: nobody wrote down its date mark."),
                plain("brakes.drum-bore", State.MET, "Rear drum: 160.2 mm.")),
                List.of(new GateVerdict.NotApplicable("brakes.shoes-riveted", "the linings are bonded")), List.of());
    }

    static Assessment assessment(GateVerdict... gates) {
        return of(record("Hollow Vale Motor Works"), gates);
    }

    /** Two entries that no check reads: one good, one that counts elsewhere. */
    static final Disclosures UNREAD = new Disclosures(List.of(
            new Disclosures.Unread("e7", "front wheel: tread depth 3.9 mm ± 0.2 mm, measured 2026-11-20 10:10 by Ida Marl (e7)", List.of("front-wheel/tyre"), null),
            new Disclosures.Unread("e9", "front brake: lever feel sinks, tried 2026-11-20 10:20 by Ida Marl (e9)", List.of("front-brake/control"), State.FAULT)),
            List.of(new Disclosures.Told("transmission, chain: chain condition stiff link, seen 2026-11-20 10:30 by Ida Marl (e11)", List.of("e11"))),
            List.of(new Disclosures.Told("front brake: lever feel sinks (e5) was lifted by e6: a slip", List.of("e5", "e6"))));

    static Assessment of(JobRecord record, GateVerdict... gates) {
        return new Assessment(record, NOON, "0.1.0", DIGEST, "Great Britain (GB)", null, List.of(gates), List.of("e7", "e9"), UNREAD, List.of(), null, null, List.of());
    }

    /** An assessment in which somebody claims something in these words. */
    static Assessment claimed(String says) {
        Assessment a = assessment(blocked());
        Claim claim = new Claim(Claim.Kind.NEW, "rear-wheel/tyre", says, "seller", List.of("e3"));
        return new Assessment(a.record(), a.asOf(), a.ruleBookVersion(), a.ruleBookDigest(), a.localCode(), a.recordedLaw(), a.gates(), a.unasked(), a.disclosures(),
                List.of(new Claims.Weighed(claim, Claims.Standing.CONTRADICTED, "date code 1009 (e4)", List.of("e4"))), null, null, List.of());
    }

    static GateVerdict released() {
        return new GateVerdict(Gate.FIRST_START, true, Instant.parse("2026-08-24T22:59:59.999Z"),
                List.of(plain("fuel.hose-age", State.MET, "Fuel hose: made in 2025-05.")), List.of(), List.of());
    }
}
