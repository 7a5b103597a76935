package chock.assess;

import chock.assess.facts.RunLevel.Name;
import chock.figure.RunForecast;
import chock.figure.RunForecast.Point;
import chock.figure.RunPlan.Phase;
import chock.quantity.Quantity;
import chock.quantity.Unit;
import chock.record.Gate;
import chock.rulebook.Applied;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The course of the air at a planned run, for drawing: at its worst, as the figures of {@link RunPlan} are.
 *
 * @param onlyIfTheHoseSlips whether this happens only when the exhaust hose comes off at the start
 * @param runs when the engine runs
 * @param near from the start until a quarter of an hour after the last run
 * @param airing from the end of the last run until the air is clean enough to come back; empty when it never is, or was all along
 * @param levels the limits, in ppm
 */
public record RunCourse(boolean onlyIfTheHoseSlips, List<Span> runs, List<Point> near, List<Point> airing, Map<Name, Quantity> levels) {
    private static final double QUARTER_HOUR = 15;
    private static final double BEYOND = 1.1;
    private static final int STEPS = 240;

    /** Minutes from the start. */
    public record Span(double from, double to) { }

    /** The course, or empty when indoor-run was not judged or nothing can be predicted, as above idle. */
    public static Optional<RunCourse> of(Assessment assessment) {
        return assessment.gates().stream().filter(gate -> gate.gate() == Gate.INDOOR_RUN && gate.run() != null && gate.run().air() != null)
                .filter(gate -> !RunPlan.saysAboveIdle(assessment.record(), gate)).findFirst().map(RunCourse::of);
    }

    private static RunCourse of(GateVerdict gate) {
        IndoorRun run = gate.run();
        RunForecast forecast = run.air().forecast();
        List<Span> runs = new ArrayList<>();
        double at = 0;
        for (Phase phase : chock.figure.RunPlan.read(run.air().plan()).phases()) {
            double end = at + phase.minutes().doubleValue();
            if (phase.running()) {
                runs.add(new Span(at, end));
            }
            at = end;
        }
        double lastEnd = runs.get(runs.size() - 1).to();
        Map<Name, Quantity> levels = new TreeMap<>();
        for (Name name : List.of(Name.CEILING, Name.QUARTER_HOUR, Name.STOP, Name.START)) {
            Applied level = run.levels().get(name);
            if (level != null) {
                levels.put(name, level.bounds().high());
            }
        }
        boolean hose = gate.findings().stream().anyMatch(finding -> finding.check().equals("air.extraction") && finding.state() == State.MET);
        return new RunCourse(hose, List.copyOf(runs), forecast.course(lastEnd + QUARTER_HOUR, STEPS), airing(forecast, levels.get(Name.START), lastEnd), levels);
    }

    private static List<Point> airing(RunForecast forecast, Quantity level, double lastEnd) {
        double minutes = level == null ? 0 : forecast.purge(level).map(purge -> purge.to(Unit.MINUTES).value().doubleValue()).orElse(0.0);
        return minutes == 0 ? List.of() : forecast.course(lastEnd + minutes * BEYOND, STEPS).stream().filter(point -> point.minutes() >= lastEnd).toList();
    }
}
