package chock.report;

import chock.assess.OrderOfWork;
import chock.assess.OrderOfWork.Kind;
import chock.assess.OrderOfWork.Step;
import chock.assess.Points;
import chock.record.Vocabulary;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is still to be done for one gate, in the order of work, with blanks to fill in at the bench. What is written into
 * them makes the entries of the record.
 *
 * @param known open defects, and faults that were lifted without work
 * @param sections the steps, part by part as the order of work comes to them
 * @param undecided steps that undo each other, a fault of the rule book; empty when there is an order
 */
public record WorkSheet(Heading heading, Told gate, List<Section> sections, List<Told> known, List<Told> undecided) {

    /**
     * One question: one line of the record.
     *
     * @param place where on the part, or empty
     * @param says what to do there, with the limit a reading is held against
     * @param because why, one sentence for each thing it clears
     */
    public record Item(Told place, Told says, List<Told> because, Blank blank) { }

    /**
     * One step; several questions are answered by one look.
     *
     * @param look what is done, where several questions are answered by it, else null
     * @param beside that a second person can do it meanwhile, or empty
     */
    public record Job(int number, Told look, String kind, String beside, List<Item> items) {
        /** Whether what is to be done takes whole sentences. */
        public boolean wide() {
            return look == null && items.get(0).says().says().length() > 60;
        }
    }

    /**
     * Steps that follow each other at one part. Who did them and when is written once.
     *
     * @param phase what must be allowed from here on, or null when it is as before
     * @param cautions where people get hurt, each once
     */
    public record Section(String phase, Told part, List<Told> cautions, List<Job> jobs) { }

    /**
     * What is to be written down.
     *
     * @param choices what to tick, or empty when something is to be written
     * @param lead words before the blank, or empty
     */
    public record Blank(List<String> choices, String lead) { }

    public static WorkSheet of(OrderOfWork order, RuleBook book) {
        List<Section> sections = new ArrayList<>();
        Card.Needs needs = null;
        String part = null;
        for (List<Step> together : order.together()) {
            Step first = together.get(0);
            boolean turns = first.kind() != Kind.SETTLE && first.needs() != needs;
            needs = turns ? first.needs() : needs;
            if (turns || !part(first).equals(part)) {
                part = part(first);
                sections.add(new Section(turns ? OrderReport.phase(needs, order.gate()) : null, new Told(Points.title(part), from(first)), new ArrayList<>(), new ArrayList<>()));
            }
            Section section = sections.get(sections.size() - 1);
            section.jobs.add(job(together, part, book));
            together.stream().filter(step -> step.caution() != null).map(step -> new Told(step.caution(), from(step))).filter(caution -> section.cautions.stream().noneMatch(one -> one.says().equals(caution.says()))).forEach(section.cautions::add);
        }
        return new WorkSheet(Heading.of(order.record(), order.asOf(), book), Told.of(order.gate().id().replace('-', ' '), "gate/" + order.gate()), List.copyOf(sections),
                order.disclosures().toBeKnown().stream().map(one -> new Told(one.says(), one.entries())).toList(),
                order.cycle().stream().map(one -> Told.of(one, "gate/" + order.gate())).toList());
    }

    private static String part(Step step) {
        return (step.look() == null ? step.point() : step.look().point()).replaceFirst("/.*", "");
    }

    private static List<String> from(Step step) {
        return step.checks().stream().map(check -> "check/" + check).toList();
    }

    private static Job job(List<Step> together, String part, RuleBook book) {
        Step first = together.get(0);
        Told look = first.look() == null ? null : new Told(Character.toUpperCase(first.look().says().charAt(0)) + first.look().says().substring(1), from(first));
        return new Job(first.number(), look, first.kind().words(), first.besides() == null ? "" : "beside " + first.besides(), together.stream().map(step -> item(step, part, book)).toList());
    }

    private static Item item(Step step, String part, RuleBook book) {
        List<String> from = from(step);
        String place = step.point().equals(part) ? "" : step.point().startsWith(part + "/") ? Points.title(step.point().substring(part.length() + 1)) : Points.title(step.point());
        List<Told> because = new ArrayList<>();
        step.because().forEach(why -> because.add(new Told("Now: " + why + (why.endsWith(".") ? "" : "."), from)));
        if (step.again()) {
            because.add(new Told("Proven now; the work before this undoes it.", from));
        }
        String says = step.instruction();
        if (step.what() != null && step.corrects().isEmpty() && step.notBy() == null && !step.kind().isWork() && !step.namesDocument()) {
            says = words(step.what()) + (step.limit() == null ? "" : ", " + step.limit().bounds().words());
        }
        return new Item(new Told(place, from), new Told(Character.toUpperCase(says.charAt(0)) + says.substring(1), from), because, blank(step, book));
    }

    private static Blank blank(Step step, RuleBook book) {
        if (step.kind() == Kind.DO && step.what() != null) {
            Vocabulary.Tooled tooled = book.vocabulary().tooled().get(step.what());
            return new Blank(List.of(words(step.what())), tooled == null ? "" : tooled.unit().symbol() + ", with");
        }
        Set<String> choices = new LinkedHashSet<>();
        Set<String> units = new LinkedHashSet<>();
        for (String check : step.checks()) {
            Card card = book.cards().get(check);
            if (card != null) {
                card.wants().stream().filter(want -> want.aspect().equals(step.what())).forEach(want -> {
                    choices.addAll(want.good());
                    choices.addAll(want.bad());
                    if (want.unit() != null) {
                        units.add(want.unit().symbol());
                    }
                });
            }
        }
        return switch (step.kind()) {
            case SETTLE -> new Blank(List.of(), "settled");
            case PUT_RIGHT, PUT_TOGETHER, DO -> new Blank(List.of(), "work done");
            case MEASURE -> new Blank(List.of(), (units.isEmpty() ? "" : String.join(" or ", units)) + ", with");
            case TRY, LOOK, ASK -> choices.isEmpty() ? new Blank(List.of(), units.isEmpty() ? "as marked" : String.join(" or ", units)) : new Blank(AnswerOrder.mixed(step.what(), choices.stream()).stream().map(WorkSheet::words).toList(), "");
        };
    }

    private static String words(String written) {
        return written.replace('-', ' ');
    }
}
