package chock.assess;

import chock.assess.facts.RunLevel.Name;
import chock.figure.RunForecast;
import chock.figure.RunPlan.Phase;
import chock.quantity.Bounds;
import chock.quantity.Measured;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Entry;
import chock.record.Gate;
import chock.record.JobRecord;
import chock.record.Value;
import chock.rulebook.Applied;
import chock.rulebook.RunSheet;
import chock.rulebook.RunSheet.Figure;
import chock.rulebook.RunSheet.Only;
import chock.rulebook.Source;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A run under a roof as it is to be done: who may be there, in which order, how long, when to stop, when to come back.
 * Every figure is at its worst, all readings off to the bad side by their whole uncertainty.
 *
 * @param mayRun whether the gate is released
 * @param says in a sentence, what the plan is good for
 * @param caution what everybody must know first
 * @param figures the figures of this run, in a fixed order; what is not known is not among them
 * @param restsOn what the prediction takes as given
 * @param parts the plan, part by part
 */
public record RunPlan(boolean mayRun, String says, List<String> caution, List<Amount> figures, List<String> restsOn, List<Part> parts) {
    private static final BigDecimal SECONDS_IN_MINUTE = BigDecimal.valueOf(60);
    private static final Quantity SHIFT = Quantity.of("480", Unit.MINUTES);
    private static final long HOUR = 3600;
    private static final long ROUNDED_ABOVE_AN_HOUR = 600;

    /**
     * A figure of this run.
     *
     * @param id stable id
     * @param name what it is, in words
     * @param amount the figure, or null when there is none to be given
     * @param says the figure in words, or why there is none
     * @param source where a limit comes from; null when it was worked out
     */
    public record Amount(String id, String name, Quantity amount, String says, Source source) { }

    /** @param numbered whether the order of its lines matters */
    public record Part(String id, String title, boolean numbered, List<String> lines) { }

    /** The plan, or empty when indoor-run was not judged or the rule book has no plan. */
    public static Optional<RunPlan> of(JobRecord record, Assessment assessment) {
        return assessment.gates().stream().filter(gate -> gate.gate() == Gate.INDOOR_RUN && gate.run() != null && gate.run().sheet() != null)
                .findFirst().map(gate -> of(record, gate));
    }

    private static RunPlan of(JobRecord record, GateVerdict gate) {
        if (gate.findings().isEmpty() || find(gate, "air.run").isEmpty()) {
            String none = "No exhaust, no carbon monoxide: there is no plan to make for the air.";
            return new RunPlan(gate.released(), none, List.of(), List.of(), List.of(), List.of());
        }
        IndoorRun run = gate.run();
        boolean hose = find(gate, "air.extraction").isPresent();
        boolean aboveIdle = saysAboveIdle(record, gate);
        Map<Figure, Amount> known = hose ? behindAHose(run, aboveIdle) : inTheRoom(run, whyNoRun(gate), aboveIdle);
        level(run, Name.STOP, Figure.STOP_LEVEL, "stop at").ifPresent(stop -> known.put(Figure.STOP_LEVEL, stop));
        level(run, Name.START, Figure.START_LEVEL, "start, and come back, at or below").ifPresent(start -> known.put(Figure.START_LEVEL, start));
        Set<Only> fits = hose ? EnumSet.of(Only.HOSE) : EnumSet.of(Only.ROOM, known.containsKey(Figure.BETWEEN) ? Only.SERIES : Only.ROOM);
        boolean refused = isFault(gate, "air.people") || !hose && (aboveIdle || run.air() == null || !allowed(run.air().forecast(), run));
        Map<Figure, Amount> spoken = spoken(known);
        List<Part> parts = run.sheet().parts().stream().filter(part -> !refused || part.whenRefused()).map(part -> part(part, fits, spoken)).filter(part -> !part.lines().isEmpty()).toList();
        return new RunPlan(gate.released(), says(gate, refused), run.sheet().caution(), List.copyOf(known.values()), restsOn(run, hose), parts);
    }

    private static String says(GateVerdict gate, boolean refused) {
        if (gate.released()) {
            return "In this order, today, in this room, with this plan and nothing else.";
        }
        return "NOT TO BE RUN: " + Gate.INDOOR_RUN + " is blocked. " + (refused ? "This run is refused as it is planned, so nothing is said on how to start it." : "This is the plan for the day it is released.");
    }

    // Where the meter may show more than the level to stop at, only that level is a reason to stop.
    private static Map<Figure, Amount> spoken(Map<Figure, Amount> known) {
        Map<Figure, Amount> spoken = new EnumMap<>(known);
        Amount stop = known.get(Figure.STOP_LEVEL);
        Amount highest = known.get(Figure.HIGHEST);
        if (stop == null || highest == null || highest.amount().compareTo(stop.amount()) >= 0) {
            spoken.remove(Figure.HIGHEST);
        }
        return spoken;
    }

    private static Optional<Finding> find(GateVerdict gate, String check) {
        return gate.findings().stream().filter(finding -> finding.check().equals(check)).findFirst();
    }

    private static boolean isMet(GateVerdict gate, String check) {
        return find(gate, check).map(finding -> finding.state() == State.MET).orElse(false);
    }

    private static boolean isFault(GateVerdict gate, String check) {
        return find(gate, check).map(finding -> finding.state() == State.FAULT).orElse(false);
    }

    /** True unless the plan is proven to stay at idle. */
    static boolean saysAboveIdle(JobRecord record, GateVerdict gate) {
        return find(gate, "air.idle-only").map(finding -> finding.state() != State.MET || finding.evidence().stream().map(record::entry).flatMap(Optional::stream).map(Entry::is)
                .anyMatch(is -> is instanceof Value.Answer answer && answer.word().equals("above-idle"))).orElse(true);
    }

    /** What rules out every run, however short, or null. */
    private static String whyNoRun(GateVerdict gate) {
        if (!isMet(gate, "air.people")) {
            return "none: it is not proven that nobody but trained staff is in the room";
        }
        if (!isMet(gate, "air.instrument") || !isMet(gate, "air.background")) {
            return "none: no working meter that reads clean air is proven";
        }
        return null;
    }

    private static Map<Figure, Amount> inTheRoom(IndoorRun run, String whyNone, boolean aboveIdle) {
        Map<Figure, Amount> known = new EnumMap<>(Figure.class);
        if (run.air() == null || aboveIdle) {
            put(known, Figure.LONGEST_RUN, "longest run", null, run.air() == null ? "none: no prediction can be made" : "none: no run is proven to stay at idle");
            return known;
        }
        RunForecast forecast = run.air().forecast();
        planned(run, known);
        Quantity longest = whyNone == null ? RunForecast.longest(run.air().room(), SHIFT, shorter -> allowed(shorter, run)) : null;
        if (longest == null || longest.value().signum() == 0) {
            put(known, Figure.LONGEST_RUN, "longest run", null, whyNone == null ? "none, however short" : whyNone);
        } else {
            put(known, Figure.LONGEST_RUN, "longest single run", longest, words(longest, RoundingMode.DOWN));
        }
        Quantity highest = worst(forecast.peak());
        put(known, Figure.HIGHEST, "highest reading to be expected", highest, highest.toString());
        forecast.beforeLaterRuns().ifPresent(between -> {
            Quantity whole = whole(between);
            put(known, Figure.BETWEEN, "highest reading before a later run", whole, whole.toString());
        });
        Applied start = run.levels().get(Name.START);
        if (start != null) {
            forecast.purge(start.bounds().high()).ifPresentOrElse(
                    purge -> put(known, Figure.PURGE, "airing after the run, doors shut", purge, words(purge, RoundingMode.UP)),
                    () -> put(known, Figure.PURGE, "airing after the run, doors shut", null, "no end: no air comes in"));
        }
        return known;
    }

    private static Map<Figure, Amount> behindAHose(IndoorRun run, boolean aboveIdle) {
        Map<Figure, Amount> known = new EnumMap<>(Figure.class);
        if (run.air() == null) {
            return known;
        }
        planned(run, known);
        Applied stop = run.levels().get(Name.STOP);
        if (stop != null && !aboveIdle) {
            run.air().forecast().timeTo(stop.bounds().high()).ifPresent(time -> put(known, Figure.HOSE_SLIPS, "if the hose slips, to " + stop.bounds().high(), time, words(time, RoundingMode.DOWN)));
        }
        return known;
    }

    private static void planned(IndoorRun run, Map<Figure, Amount> known) {
        BigDecimal longest = chock.figure.RunPlan.read(run.air().plan()).phases().stream().filter(Phase::running).map(Phase::minutes).max(BigDecimal::compareTo).orElseThrow();
        Quantity minutes = new Quantity(longest, Unit.MINUTES);
        put(known, Figure.PLANNED_RUN, "longest run planned", minutes, words(minutes, RoundingMode.DOWN));
    }

    private static void put(Map<Figure, Amount> known, Figure figure, String name, Quantity amount, String says) {
        known.put(figure, new Amount(figure.id(), name, amount, says, null));
    }

    private static Optional<Amount> level(IndoorRun run, Name name, Figure figure, String words) {
        return Optional.ofNullable(run.levels().get(name)).map(level -> new Amount(figure.id(), words, level.bounds().high(), level.bounds().high().toString(), level.source()));
    }

    private static boolean allowed(RunForecast forecast, IndoorRun run) {
        Applied at = run.levels().get(Name.MASS_AT);
        return at != null && inside(forecast.peak(), run, Name.CEILING) && inside(forecast.quarterHour(), run, Name.QUARTER_HOUR) && inside(forecast.shift(), run, Name.SHIFT)
                && inside(RunForecast.byMass(forecast.quarterHour(), at.bounds().high()), run, Name.QUARTER_HOUR_MASS)
                && inside(RunForecast.byMass(forecast.shift(), at.bounds().high()), run, Name.SHIFT_MASS);
    }

    private static boolean inside(Measured value, IndoorRun run, Name name) {
        Applied limit = run.levels().get(name);
        return limit != null && limit.bounds().standing(value) == Bounds.Standing.INSIDE;
    }

    private static Quantity worst(Measured measured) {
        return whole(measured.uncertainty() == null ? measured.value() : measured.value().plus(measured.uncertainty()));
    }

    private static Quantity whole(Quantity amount) {
        return new Quantity(amount.value().setScale(0, RoundingMode.UP), amount.unit());
    }

    private static List<String> restsOn(IndoorRun run, boolean hose) {
        List<String> all = new ArrayList<>();
        if (run.air() == null) {
            return all;
        }
        all.add("planned " + run.air().plan() + (hose ? ", the exhaust led outdoors" : ""));
        all.add("a room of " + run.air().room().volume());
        all.addAll(run.air().basis());
        if (run.air().replaced() != null) {
            all.add(run.air().replaced());
        }
        return List.copyOf(all);
    }

    private static Part part(RunSheet.Part part, Set<Only> fits, Map<Figure, Amount> known) {
        List<String> lines = new ArrayList<>();
        for (RunSheet.Line line : part.lines()) {
            if (line.only() == null || fits.contains(line.only())) {
                filled(line.say(), known).ifPresent(lines::add);
            }
        }
        return new Part(part.id(), part.title(), part.numbered(), List.copyOf(lines));
    }

    /** The words with every figure in its place, or empty when one of them is not known. */
    private static Optional<String> filled(String words, Map<Figure, Amount> known) {
        String filled = words;
        for (Figure figure : Figure.values()) {
            if (words.contains(figure.inBraces())) {
                Amount amount = known.get(figure);
                if (amount == null || amount.amount() == null) {
                    return Optional.empty();
                }
                filled = filled.replace(figure.inBraces(), amount.says());
            }
        }
        return Optional.of(filled);
    }

    /** A time as people say it. Above an hour to ten minutes; rounded one way only, so that it never errs to the unsafe side. */
    static String words(Quantity time, RoundingMode mode) {
        long seconds = time.to(Unit.MINUTES).value().multiply(SECONDS_IN_MINUTE).setScale(0, mode).longValueExact();
        long step = seconds > HOUR ? ROUNDED_ABOVE_AN_HOUR : seconds > ROUNDED_ABOVE_AN_HOUR ? 60 : 1;
        long shown = mode == RoundingMode.UP ? (seconds + step - 1) / step * step : seconds / step * step;
        List<String> parts = new ArrayList<>();
        if (shown >= HOUR) {
            parts.add(shown / HOUR + " h");
        }
        if (shown % HOUR >= 60) {
            parts.add(shown % HOUR / 60 + " min");
        }
        if (shown % 60 > 0 || parts.isEmpty()) {
            parts.add(shown % 60 + " s");
        }
        return String.join(" ", parts);
    }
}
