package chock.report;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.Points;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What is still to be done for one gate, in the order of work, with blanks to fill in at the bench. What is written into
 * them makes the entries of the record.
 *
 * @param known open defects, and faults that were lifted without work
 * @param undecided steps that undo each other, a fault of the rule book; empty when there is an order
 */
public record WorkSheet(Heading heading, Told gate, List<Job> jobs, List<Told> known, List<Told> undecided) {

    /**
     * One step: one line of the record.
     *
     * @param phase what must be allowed from here on, or null when it is as before
     * @param look what is done, where this is the first of several answers, else null
     * @param kind what kind of step it is
     * @param place where
     * @param says what to do there
     * @param because why, one sentence for each thing it clears
     * @param caution where people get hurt, or null
     * @param cautionAt number of the step whose caution this is as well, or 0
     */
    public record Job(int number, String phase, Told look, String kind, String beside, Told place, Told says, List<Told> because, Told caution, int cautionAt, Told checks, Blank blank) { }

    /**
     * Steps for which the same must be allowed.
     *
     * @param phase what must be allowed, or null for what is settled before anything is
     */
    public record Part(String phase, List<Job> jobs) { }

    /** The jobs in order, parted where something else must be allowed. */
    public List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (Job job : jobs) {
            if (parts.isEmpty() || job.phase != null) {
                parts.add(new Part(job.phase, new ArrayList<>()));
            }
            parts.get(parts.size() - 1).jobs.add(job);
        }
        return parts;
    }

    /**
     * What is to be written down.
     *
     * @param choices what to tick, or empty when something is to be written
     * @param lead words before the blank, or empty
     */
    public record Blank(List<String> choices, String lead) { }

    public static WorkSheet of(OrderOfWork order, RuleBook book) {
        List<Job> jobs = new ArrayList<>();
        Map<String, Integer> cautions = new HashMap<>();
        Card.Needs needs = null;
        for (Step step : order.steps()) {
            String phase = null;
            if (step.kind() != Kind.SETTLE && step.needs() != needs) {
                needs = step.needs();
                phase = OrderReport.phase(needs, order.gate());
            }
            boolean first = jobs.isEmpty() || jobs.get(jobs.size() - 1).number() != step.number();
            jobs.add(job(step, phase, first, cautions, book));
        }
        return new WorkSheet(Heading.of(order.record(), order.asOf(), book), Told.of(order.gate().id().replace('-', ' '), "gate/" + order.gate()), List.copyOf(jobs),
                order.disclosures().toBeKnown().stream().map(one -> new Told(one.says(), one.entries())).toList(),
                order.cycle().stream().map(part -> Told.of(part, "gate/" + order.gate())).toList());
    }

    private static Job job(Step step, String phase, boolean first, Map<String, Integer> cautions, RuleBook book) {
        List<String> from = step.checks().stream().map(check -> "check/" + check).toList();
        int colon = step.says().indexOf(": ");
        String place = colon < 0 ? "" : step.says().substring(0, colon);
        String says = step.says().substring(colon < 0 ? 0 : colon + 2);
        List<Told> because = new ArrayList<>();
        step.because().forEach(why -> because.add(new Told("Now: " + why + (why.endsWith(".") ? "" : "."), from)));
        if (step.again()) {
            because.add(new Told("Proven now; the work before this undoes it.", from));
        }
        Integer known = step.caution() == null ? null : cautions.putIfAbsent(step.caution(), step.number());
        String beside = step.besides() == null || !first ? "" : "a second person can do this beside " + step.besides();
        Told look = step.look() == null || !first ? null : new Told(Points.title(step.look().point()) + ": " + step.look().says(), from);
        return new Job(step.number(), phase, look, step.kind().words(), beside, new Told(place, from), new Told(Character.toUpperCase(says.charAt(0)) + says.substring(1), from), because,
                step.caution() == null || known != null ? null : new Told(step.caution(), from), known == null ? 0 : known,
                new Told(String.join(", ", step.checks()), from), blank(step, book));
    }

    private static Blank blank(Step step, RuleBook book) {
        if (step.kind() == Kind.DO && step.what() != null) {
            return new Blank(List.of(words(step.what())), "");
        }
        Set<String> choices = new LinkedHashSet<>();
        Set<String> units = new LinkedHashSet<>();
        for (String check : step.checks()) {
            Card card = book.cards().get(check);
            if (card != null) {
                card.wants().stream().filter(want -> want.aspect().equals(step.what())).forEach(want -> {
                    want.good().forEach(word -> choices.add(words(word)));
                    want.bad().forEach(word -> choices.add(words(word)));
                    if (want.unit() != null) {
                        units.add(want.unit().symbol());
                    }
                });
            }
        }
        String unit = units.isEmpty() ? "" : " in " + String.join(" or ", units);
        return switch (step.kind()) {
            case SETTLE -> new Blank(List.of(), "settled");
            case PUT_RIGHT, PUT_TOGETHER, DO -> new Blank(List.of(), "work done");
            case MEASURE -> new Blank(List.of(), "reading" + unit + ", ±, instrument");
            case TRY, LOOK, ASK -> choices.isEmpty() ? new Blank(List.of(), units.isEmpty() ? "as marked" : "amount" + unit) : new Blank(List.copyOf(choices), "");
        };
    }

    private static String words(String written) {
        return written.replace('-', ' ');
    }
}
