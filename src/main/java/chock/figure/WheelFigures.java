package chock.figure;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.Unit.Dimension;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Figures of tyres and brakes. */
final class WheelFigures {
    static final List<Figure> ALL = List.of(
            new Figure("tyre-date", "The week a tyre was made and its age.",
                    "49 CFR 574.5: four digits since 64 FR 36807 (read); first full week of the year (read in a copy); Sunday to Saturday (from memory)",
                    List.of(Parameter.asked("code", "the marking or its last three or four digits", "1307"),
                            Parameter.asked("as-of", "the day the age is wanted for", "2026-11-25")),
                    WheelFigures::tyreDate),
            new Figure("tread-left", "Share of the usable tread that is left.", "(measured − limit) ÷ (new − limit), common practice",
                    List.of(Parameter.asked("measured", "depth at the shallowest point", "3.4mm"),
                            Parameter.asked("new", "depth of this tyre when new", "7.0mm"),
                            Parameter.asked("limit", "depth at which it is worn out", "1.0mm")),
                    a -> Results.of("left", Tread.left(a.quantity("measured", Dimension.LENGTH), a.quantity("new", Dimension.LENGTH), a.quantity("limit", Dimension.LENGTH)))),
            new Figure("load-index", "Load one tyre carries.", "UN R75 Annex 4 (20 to 150 read in copies that agree, 0 to 19 from memory)",
                    List.of(Parameter.asked("index", "load index on the tyre, 0 to 150", "58")),
                    a -> Results.of("load", LoadIndex.load(a.whole("index")))),
            new Figure("speed-symbol", "Speed a tyre is made for.", "UN R75 (B to Y read in copies that agree, A1 to A8 from memory)",
                    List.of(Parameter.asked("symbol", "speed symbol on the tyre, A1 to Y", "S")),
                    a -> Results.of("speed", SpeedSymbol.read(a.text("symbol")).speed())),
            new Figure("tyre-pressure", "Pressure of the same tyre at another temperature.",
                    "gas law at fixed volume on gauge pressure plus one standard atmosphere (101.325 kPa)",
                    List.of(Parameter.asked("pressure", "gauge pressure", "36psi"), Parameter.asked("from", "temperature it was set at", "20°C"),
                            Parameter.asked("to", "temperature it will be ridden at", "-5°C")),
                    a -> Results.of("pressure", TyrePressure.at(a.quantity("pressure", Dimension.PRESSURE), a.quantity("from", Dimension.TEMPERATURE), a.quantity("to", Dimension.TEMPERATURE)))),
            new Figure("stopping-limit", "Stopping distance and deceleration once asked of a new machine, one control at a time; a line to compare an old one with.",
                    "Directive 93/14/EEC, Annex, Appendix 1, 2.1 (read)",
                    List.of(Parameter.asked("vehicle", "motorcycle, motorcycle-sidecar, moped or moped-3w", "motorcycle"),
                            Parameter.asked("control", "the brake used, front or rear", "front"), Parameter.asked("speed", "speed when the control first moves", "60km/h")),
                    WheelFigures::stoppingLimit),
            new Figure("deceleration", "Deceleration from two speeds and the distance between them.", "UN R78 Annex 3: (from² − to²) ÷ (25.92 × over) (from memory)",
                    List.of(Parameter.asked("from", "higher speed", "48km/h"), Parameter.asked("to", "lower speed", "6km/h"), Parameter.asked("over", "distance between the two", "21m")),
                    a -> Results.of("deceleration", Deceleration.fullyDeveloped(a.quantity("from", Dimension.SPEED), a.quantity("to", Dimension.SPEED), a.quantity("over", Dimension.LENGTH)))),
            new Figure("brake-efficiency", "Braking force as a share of weight.",
                    "GB inspection manual for motorcycles 3.3 (read in a copy); standard gravity 9.80665 m/s²",
                    List.of(Parameter.asked("force", "braking force of one control; kgf where the tester prints kg", "110kgf"),
                            Parameter.asked("mass", "machine with rider", "300kg")),
                    a -> Results.of("efficiency", BrakeEfficiency.of(a.quantity("force", Dimension.FORCE), a.quantity("mass", Dimension.MASS)))));

    private WheelFigures() { }

    private static Map<String, ResultValue> tyreDate(Arguments a) {
        LocalDate asOf = a.day("as-of");
        TyreDate date = TyreDate.read(a.text("code"), asOf);
        List<TyreDate.Week> weeks = date.weeks();
        Map<String, ResultValue> results = new LinkedHashMap<>();
        if (date.yearIsMarked()) {
            results.put("from", new ResultValue.Day(date.earliest()));
            results.put("to", new ResultValue.Day(date.latest()));
            results.put("age-years", age(date.earliest(), asOf));
        } else {
            ResultValue unknown = new ResultValue.Unknown("three digits do not mark the decade");
            results.put("from", unknown);
            results.put("to", unknown);
            results.put("age-years", new ResultValue.Range(age(weeks.get(weeks.size() - 1).from(), asOf), age(date.earliest(), asOf)));
            results.put("candidates", new ResultValue.Several(weeks.stream()
                    .<ResultValue>map(week -> new ResultValue.Range(new ResultValue.Day(week.from()), new ResultValue.Day(week.to()))).toList()));
        }
        return results;
    }

    private static ResultValue.Amount age(LocalDate made, LocalDate asOf) {
        return new ResultValue.Amount(new Quantity(TyreDate.years(made, asOf), Unit.YEARS));
    }

    private static Map<String, ResultValue> stoppingLimit(Arguments a) {
        StoppingLimit limit = StoppingLimit.of(a.choice("vehicle", StoppingLimit.Vehicle.class), a.choice("control", StoppingLimit.Control.class));
        return Results.of("distance", limit.distance(a.quantity("speed", Dimension.SPEED)), "deceleration", limit.deceleration());
    }
}
