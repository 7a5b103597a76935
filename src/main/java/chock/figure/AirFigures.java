package chock.figure;

import static chock.figure.Parameter.asked;
import static chock.figure.Parameter.ifKnown;

import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.quantity.Unit.Dimension;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Figures of the air in a room where an engine runs. */
final class AirFigures {
    private static final String MASS_BALANCE = "mass balance of one room, V dC/dt = G + Q/K (Cb − C) (read)";
    private static final Quantity NO_BACKGROUND = Quantity.of("0", Unit.PPM);
    private static final Quantity STILL = Quantity.of("0", Unit.MPS);

    static final List<Figure> ALL = List.of(
            new Figure("co-build-up", "Carbon monoxide in a room while an engine runs.", MASS_BALANCE,
                    List.of(asked("volume", "of air in the room", "200m³"), airflow(), generation(), asked("minutes", "how long it runs", "5"), mixing(),
                            ifKnown("background", "concentration outdoors and at the start; 0 ppm when left out", "0ppm")),
                    AirFigures::buildUp),
            new Figure("co-schedule", "What somebody breathes in a room over a shift in which an engine runs now and then.",
                    MASS_BALANCE + "; 8-h value as in 29 CFR 1910.1000(d) (read)",
                    List.of(asked("volume", "of air in the room", "200m³"), airflow(), generation(), mixing(),
                            asked("plan", "minutes on and off from the start; off for the rest of 8 h", "2on,28off,2on")),
                    AirFigures::schedule),
            new Figure("purge", "How long outdoor air takes to bring a concentration down.", "V ÷ Q × ln(from ÷ to) (read)",
                    List.of(asked("volume", "of air in the room", "200m³"), asked("airflow", "of outdoor air, divided by K where it mixes badly", "100m³/h"),
                            asked("from", "concentration now", "257ppm"), asked("to", "concentration wanted", "20ppm")),
                    a -> Results.of("minutes", RoomAir.purge(a.quantity("volume", Dimension.VOLUME), a.quantity("airflow", Dimension.FLOW), a.ppm("from"), a.ppm("to")))),
            new Figure("co-source", "Carbon monoxide from an idling engine: from its exhaust as measured, else the value for one nobody measured.",
                    "displacement × rpm ÷ (2 for a four-stroke) × filling × share of carbon monoxide; the form and the assumed values are ours",
                    List.of(asked("displacement", "of all cylinders", "250cc"), asked("cycle", "two-stroke or four-stroke", "two-stroke"),
                            ifKnown("rpm", "at idle, up to 2500; goes with co", "1300rpm"), ifKnown("co", "share in the exhaust; goes with rpm", "4.5%")),
                    a -> Results.of("generation", source(a))),
            new Figure("window-airflow", "Outdoor air through one open window or door: the smallest that four models allow, and no proof.",
                    "Warren and Parkins 1984, DIN/TS 4108-8:2022, EN 16798-7 and a handbook's coefficient, with the third of one opening (each read in a copy)",
                    List.of(asked("area", "of the opening", "1m²"), asked("height", "of the opening", "1m"), asked("inside", "temperature of the room", "15°C"),
                            asked("outside", "temperature outdoors", "-10°C"), ifKnown("wind", "still air when left out", "0m/s")),
                    a -> Results.of("airflow", WindowAirflow.of(a.quantity("area", Dimension.AREA), a.quantity("height", Dimension.LENGTH), a.quantity("inside", Dimension.TEMPERATURE),
                            a.quantity("outside", Dimension.TEMPERATURE), a.optional("wind", Dimension.SPEED).orElse(STILL)))),
            new Figure("cohb", "Carbon monoxide in the blood of a healthy adult after breathing it, from 0.75 %.",
                    "Coburn, Forster and Kane, non-linear, constants of Peterson and Stewart 1970 (from memory; held against published bands)",
                    List.of(asked("ppm", "concentration breathed", "200"), asked("minutes", "how long", "60"), ifKnown("activity", "rest, light (half as much again) or heavy (twice as much); rest when left out", "rest")),
                    a -> Results.of("carboxyhaemoglobin", Carboxyhaemoglobin.after(a.ppm("ppm"), a.minutes("minutes"),
                            a.text("activity") == null ? Carboxyhaemoglobin.Activity.REST : a.choice("activity", Carboxyhaemoglobin.Activity.class)))),
            new Figure("ppm-to-mg", "Carbon monoxide by mass; not for limits, whose printed pairs are rounded.", "28.010 g/mol, 22.414 L/mol at 0 °C and 101.325 kPa (from memory)",
                    List.of(asked("concentration", "by volume", "35ppm"), asked("temperature", "of the air", "25°C")),
                    a -> Results.of("concentration", CarbonMonoxide.byMass(a.ppm("concentration"), a.quantity("temperature", Dimension.TEMPERATURE)))));

    private AirFigures() { }

    private static Parameter airflow() {
        return asked("airflow", "of outdoor air; 0 m³/h for a sealed room", "100m³/h");
    }

    private static Parameter generation() {
        return asked("generation", "of carbon monoxide, by volume", "5.25L/min");
    }

    private static Parameter mixing() {
        return asked("k-acgih", "mixing factor that divides the airflow: 1 perfect, 3 to 10 usual", "3");
    }

    private static RoomAir room(Arguments a, Quantity background) {
        return RoomAir.of(a.quantity("volume", Dimension.VOLUME), a.quantity("airflow", Dimension.FLOW), a.quantity("generation", Dimension.FLOW), a.number("k-acgih"), background);
    }

    private static Map<String, ResultValue> buildUp(Arguments a) {
        RoomAir room = room(a, a.text("background") == null ? NO_BACKGROUND : a.ppm("background"));
        Optional<Quantity> steady = room.steady();
        Map<String, ResultValue> results = new LinkedHashMap<>();
        results.put("end", Results.amount(room.after(a.minutes("minutes"))));
        results.put("steady", steady.<ResultValue>map(Results::amount).orElse(new ResultValue.Unknown("too little air for it ever to settle")));
        for (String level : List.of("200", "1200")) {
            Optional<Quantity> reached = room.timeTo(new Quantity(new BigDecimal(level), Unit.PPM));
            results.put("minutes-to-" + level + "ppm", reached.<ResultValue>map(Results::amount)
                    .orElseGet(() -> new ResultValue.Unknown("never reached; it settles at " + Results.amount(steady.orElseThrow()).words())));
        }
        return results;
    }

    private static Map<String, ResultValue> schedule(Arguments a) {
        Exposure exposure = Exposure.of(room(a, NO_BACKGROUND), RunPlan.read(a.text("plan")));
        Map<String, ResultValue> results = new LinkedHashMap<>();
        results.put("peak", Results.amount(exposure.peak()));
        results.put("max-15-min", Results.amount(exposure.max15Min()));
        results.put("max-1-h", Results.amount(exposure.max1H()));
        results.put("twa-8-h", Results.amount(exposure.twa8H()));
        return results;
    }

    private static Quantity source(Arguments a) {
        Quantity displacement = a.quantity("displacement", Dimension.VOLUME);
        CoSource.Cycle cycle = a.choice("cycle", CoSource.Cycle.class);
        if (a.text("rpm") == null && a.text("co") == null) {
            return CoSource.unknown(displacement, cycle);
        }
        if (a.text("rpm") == null || a.text("co") == null) {
            throw new BadFigureInput("co-source takes rpm and co together, as measured; leave both out when nobody measured");
        }
        return CoSource.measured(displacement, cycle, a.quantity("rpm", Dimension.REVOLUTIONS), a.quantity("co", Dimension.RATIO));
    }
}
