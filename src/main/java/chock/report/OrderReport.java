package chock.report;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.Points;
import chock.record.Gate;
import chock.rulebook.Card;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The order of work for a sheet of paper and for scripts; it decides nothing. */
public final class OrderReport {
    private final OrderOfWork order;
    private final Map<String, Integer> minutes;

    /** @param minutes minutes by aspect or work, such as {@code bled}, or by kind of step, such as {@code measure}; the closer name counts */
    public OrderReport(OrderOfWork order, Map<String, Integer> minutes) {
        this.order = order;
        this.minutes = Map.copyOf(minutes);
    }

    /** In lines of at most 80 columns. */
    public String text(boolean bold) {
        Page page = new Page(bold);
        page.heading(title());
        page.put(0, order.record().id() + ": " + Wording.machine(order.record().machine()));
        page.put(0, order.record().workshop() + "; as of " + Wording.moment(order.asOf(), order.record().zone()));
        if (!order.cycle().isEmpty()) {
            order.cycle().forEach(part -> page.put(2, "! ", part));
            page.put(0, "Until that is mended no order can be given; the findings still hold.");
        }
        for (Line line : lines()) {
            if (line.phase() != null) {
                page.gap().heading(line.phase());
            }
            if (line.look() != null) {
                page.put(1, String.format("%3d. ", line.step().number()), line.look().title());
                page.put(6, line.look().says());
            }
            if (line.step().look() != null) {
                page.put(6, "_ ", line.step().says() + " (" + line.kind() + ")");
            } else {
                page.put(1, String.format("%3d. ", line.step().number()), line.kind());
                page.put(6, line.step().says());
            }
            int below = line.step().look() == null ? 6 : 8;
            line.notes().forEach(note -> page.put(below, "- ", note));
            page.put(below, "- ", String.join(", ", line.step().checks()));
            if (!line.caution().isEmpty()) {
                page.put(below, "Caution: ", line.caution());
            }
        }
        if (!order.steps().isEmpty() && !minutes.isEmpty()) {
            page.gap().put(0, total());
        }
        page.gap().put(0, Wording.NOTICE);
        return page.toString();
    }

    /** What remains, in a line. */
    public String title() {
        if (!order.cycle().isEmpty()) {
            return "NO ORDER for " + order.gate() + ": the rule book is at fault, its steps undo each other";
        }
        int n = order.together().size();
        return n == 0 ? "NOTHING REMAINS for " + order.gate() : n + (n == 1 ? " STEP" : " STEPS") + " to " + order.gate() + ", in this order";
    }

    static String phase(Card.Needs needs, Gate gate) {
        return switch (needs) {
            case STANDING -> "With the machine standing";
            case ENGINE_RUNNING -> "With the engine running: " + Gate.FIRST_START + " is released before that";
            case RIDING -> "On the road: " + (gate == Gate.ROAD_TEST ? "on the road test" : Gate.ROAD_TEST + " is released before that");
        };
    }

    /** What is done to answer several questions, above the first of them. */
    public record Together(String title, String says) { }

    /**
     * A step in words, or one answer of it.
     *
     * @param phase what must be allowed from here on, or null when it is as before
     * @param look what is done, where this is the first of several answers, else null
     * @param kind what kind of step, its minutes, and what a second person can do meanwhile
     * @param notes why, and what to know of it
     * @param caution where people get hurt, or empty
     */
    public record Line(Step step, String phase, Together look, String kind, List<String> notes, String caution) { }

    /** Every step in the words that terminal and page share. */
    public List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        Card.Needs needs = null;
        for (Step step : order.steps()) {
            boolean turns = step.kind() != Kind.SETTLE && step.needs() != needs;
            needs = turns ? step.needs() : needs;
            boolean first = step.look() != null && (lines.isEmpty() || lines.get(lines.size() - 1).step().number() != step.number());
            lines.add(line(step, turns ? phase(needs, order.gate()) : null, first ? together(step) : null));
        }
        return lines;
    }

    private Together together(Step first) {
        long answers = order.steps().stream().filter(step -> step.number() == first.number()).count();
        return new Together(first.look().name() + ": " + answers + " answers" + beside(first), Points.title(first.look().point()) + ": " + first.look().says());
    }

    private static String beside(Step step) {
        return step.besides() == null ? "" : " (meanwhile a second person, beside step " + step.besides() + ")";
    }

    private Line line(Step step, String phase, Together look) {
        String beside = step.look() == null ? beside(step) : "";
        String time = minutes(step).map(m -> ", " + m + " min").orElse("");
        List<String> notes = new ArrayList<>();
        step.because().forEach(why -> notes.add("now: " + why + (why.endsWith(".") ? "" : ".")));
        if (step.again()) {
            notes.add("proven now; the work before this undoes it.");
        }
        if (step.kind() == Kind.PUT_RIGHT && step.what() == null) {
            notes.add("which work it takes is not known yet: whatever work there may undo comes back below. Ask for the order again when it is done.");
        }
        Step first = order.steps().stream().filter(s -> step.caution() != null && step.caution().equals(s.caution())).findFirst().orElse(step);
        return new Line(step, phase, look, step.kind().words() + time + beside, notes, step.caution() == null ? "" : first == step ? step.caution() : "as at step " + first.number() + ".");
    }

    private Optional<Integer> minutes(Step step) {
        Integer own = step.what() == null ? null : minutes.get(step.what());
        return Optional.ofNullable(own != null ? own : minutes.get(step.kind().words().replace(' ', '-')));
    }

    private String total() {
        List<Step> untimed = order.steps().stream().filter(s -> minutes(s).isEmpty()).toList();
        int alone = order.steps().stream().mapToInt(s -> minutes(s).orElse(0)).sum();
        Map<Integer, Integer> each = order.steps().stream().collect(Collectors.toMap(Step::number, s -> minutes(s).orElse(0), Integer::sum));
        int saved = order.together().stream().map(look -> look.get(0)).filter(s -> s.besides() != null)
                .mapToInt(s -> Math.min(each.get(s.number()), each.get(s.besides()))).sum();
        String rest = untimed.isEmpty() ? "" : " " + untimed.size() + (untimed.size() == 1 ? " step has" : " steps have") + " no minutes given and no part in this.";
        return "Together " + hours(alone) + " for one person" + (saved > 0 ? ", " + hours(alone - saved) + " for two" : "") + "." + rest;
    }

    private static String hours(int minutes) {
        return minutes < 60 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
    }

    /** One object, with a line end. */
    public String json() {
        JsonNodeFactory make = JsonNodeFactory.instance;
        ObjectNode node = make.objectNode().put("record", order.record().id()).put("gate", order.gate().id()).put("asOf", Wording.iso(order.asOf(), order.record().zone()));
        ArrayNode steps = node.putArray("steps");
        for (Step step : order.steps()) {
            ObjectNode one = steps.addObject().put("number", step.number()).put("kind", step.kind().words().replace(' ', '-')).put("point", step.point()).put("what", step.what()).put("says", step.says());
            step.checks().forEach(one.putArray("checks")::add);
            step.because().forEach(one.putArray("because")::add);
            step.corrects().forEach(one.putArray("corrects")::add);
            one.put("needs", step.needs().name().toLowerCase(Locale.ROOT).replace('_', '-')).put("again", step.again()).put("caution", step.caution())
                    .put("besides", step.besides()).put("minutes", minutes(step).orElse(null)).put("look", step.look() == null ? null : step.look().name());
        }
        order.cycle().forEach(node.putArray("cycle")::add);
        return Json.pretty(node);
    }
}
