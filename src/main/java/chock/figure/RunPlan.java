package chock.figure;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * When an engine runs and when it stands, from the start of a shift.
 *
 * @param phases one after the other
 */
public record RunPlan(List<Phase> phases) {
    private static final Pattern PHASE = Pattern.compile("([0-9]{1,4}(?:\\.[0-9]{1,3})?)(on|off)");
    private static final BigDecimal LONGEST = BigDecimal.valueOf(1440);

    /**
     * @param minutes above zero
     * @param running whether the engine runs
     */
    public record Phase(BigDecimal minutes, boolean running) { }

    /** @throws BadFigureInput when it never runs the engine, has a phase of nothing, or is longer than a day */
    public RunPlan {
        phases = List.copyOf(phases);
        if (phases.stream().noneMatch(Phase::running)) {
            throw new BadFigureInput("plan never runs the engine; write its minutes, such as 2on,28off,2on");
        }
        if (phases.stream().anyMatch(phase -> phase.minutes.signum() <= 0)) {
            throw new BadFigureInput("plan has a phase of no minutes; leave it out");
        }
        BigDecimal total = phases.stream().map(Phase::minutes).reduce(BigDecimal.ZERO, BigDecimal::add);
        if (total.compareTo(LONGEST) > 0) {
            throw new BadFigureInput("plan is " + total.toPlainString() + " minutes long; it covers a day at most");
        }
    }

    /**
     * Reads {@code 2on,28off,2on}: minutes running and standing.
     *
     * @throws BadFigureInput when it is written otherwise, or as the constructor does
     */
    public static RunPlan read(String plan) {
        List<Phase> phases = new ArrayList<>();
        for (String part : plan.split(",", -1)) {
            Matcher m = PHASE.matcher(part.strip());
            if (!m.matches()) {
                throw new BadFigureInput("plan '" + part.strip() + "' is not minutes and on or off; write such as 2on,28off,2on");
            }
            phases.add(new Phase(new BigDecimal(m.group(1)), m.group(2).equals("on")));
        }
        return new RunPlan(phases);
    }

    /** The longest time for which the engine runs without a pause, in minutes. */
    public BigDecimal longestRun() {
        BigDecimal longest = BigDecimal.ZERO;
        BigDecimal running = BigDecimal.ZERO;
        for (Phase phase : phases) {
            running = phase.running ? running.add(phase.minutes) : BigDecimal.ZERO;
            longest = longest.max(running);
        }
        return longest;
    }
}
