package chock.report;

import chock.assess.Assessment;
import chock.assess.Finding;
import chock.assess.GateVerdict;
import chock.assess.Points;
import chock.assess.State;
import chock.record.Deed;
import chock.record.Vocabulary;
import chock.rulebook.Card;
import chock.rulebook.RuleBook;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What is still to be done for one gate, with blanks to fill in at the bench; what is written into them makes the entries
 * of the record.
 */
public record WorkSheet(Heading heading, Told gate, Told verdict, boolean released, List<Job> jobs) {

    /**
     * A step of the work.
     *
     * @param check id of the check it clears
     * @param points where; empty when the whole check is open
     */
    public record Step(String check, List<String> points) { }

    /**
     * One thing to clear.
     *
     * @param place where, in words
     * @param signs signs and words of the states found
     * @param says what is wrong, one sentence for each place
     * @param clear the remedy
     * @param caution where people get hurt, or null
     */
    public record Job(int number, Told place, Told check, String sign, String state, boolean critical, List<Told> says, Told clear, Told caution, List<Blank> blanks) { }

    /**
     * Something to be written down.
     *
     * @param what key of the entry and what is looked at, such as {@code measured thickness}
     * @param where the place on the machine
     * @param allowed the limit it is held against, or empty
     * @param unit unit of an amount, or null
     * @param choices the answers to tick; empty when something is to be written
     * @param work whether it is work, and only its time and name are wanted
     */
    public record Blank(String what, String where, String allowed, String unit, List<String> choices, boolean work, boolean instrument) { }

    /** With these steps, in this order. */
    public static WorkSheet of(Assessment assessment, GateVerdict gate, RuleBook book, List<Step> steps) {
        List<Job> jobs = new ArrayList<>();
        for (Step step : steps) {
            Finding finding = gate.findings().stream().filter(f -> f.check().equals(step.check())).findFirst().orElseThrow();
            jobs.add(job(jobs.size() + 1, finding, step, book));
        }
        String verdict = gate.released() ? "Released " + Wording.until(assessment, gate) + ". Nothing is left to be done." : "Blocked: " + Wording.tally(gate) + ".";
        return new WorkSheet(Heading.of(assessment), Told.of(gate.gate().id().replace('-', ' '), "gate/" + gate.gate()), Told.of(verdict, "gate/" + gate.gate()), gate.released(), jobs);
    }

    /** The open findings from the front of the alphabet of places, the worst of a place first. */
    public static List<Step> byPlace(GateVerdict gate) {
        return gate.findings().stream().filter(f -> f.state() != State.MET)
                .sorted(Comparator.comparing((Finding f) -> system(f)).thenComparing(Finding::state).thenComparing(Finding::check))
                .map(f -> new Step(f.check(), open(f).stream().map(Finding.AtPlace::point).toList())).toList();
    }

    private static List<Finding.AtPlace> open(Finding finding) {
        return finding.places().stream().filter(p -> p.state() != State.MET).toList();
    }

    private static String system(Finding finding) {
        return open(finding).stream().map(p -> p.point().replaceFirst("/.*", "")).findFirst().orElse("");
    }

    private static Job job(int number, Finding finding, Step step, RuleBook book) {
        Card card = book.cards().get(finding.check());
        List<Finding.AtPlace> places = finding.places().stream().filter(p -> step.points().contains(p.point())).toList();
        List<Told> says = places.stream().map(p -> Told.check(p.says(), finding.check(), p.evidence())).distinct().toList();
        Set<Blank> blanks = new LinkedHashSet<>();
        places.forEach(place -> blanks.addAll(blanks(card, place, book)));
        String system = system(finding);
        return new Job(number, Told.check(system.isEmpty() ? "Machine" : Points.title(system), finding.check(), List.of()), Told.of(finding.check(), "check/" + finding.check()),
                Wording.sign(finding.state()), finding.state().id(), finding.critical(),
                says.isEmpty() ? List.of(Told.check(finding.says(), finding.check(), finding.evidence())) : says,
                finding.remedy() == null ? null : Told.of(finding.remedy(), "check/" + finding.check()),
                finding.caution() == null ? null : Told.of(finding.caution(), "check/" + finding.check()), List.copyOf(blanks));
    }

    private static List<Blank> blanks(Card card, Finding.AtPlace place, RuleBook book) {
        List<String> points = book.laidOut(card, place.point()).points();
        List<Blank> blanks = new ArrayList<>();
        for (int i = 0; i < card.wants().size(); i++) {
            Card.Want want = card.wants().get(i);
            boolean amount = want.form() == Vocabulary.Form.AMOUNT;
            List<String> choices = new ArrayList<>(want.good());
            choices.addAll(want.bad());
            boolean judged = place.limit() != null && (want.judged() || card.wants().size() == 1);
            blanks.add(new Blank(want.weakest().key() + " " + want.aspect().replace('-', ' '), Points.words(points.get(i)),
                    judged ? place.limit().bounds().words() : "", amount && want.unit() != null ? want.unit().symbol() : null,
                    choices.stream().map(word -> word.replace('-', ' ')).toList(), want.weakest() == Deed.DONE, want.weakest() == Deed.MEASURED));
        }
        return blanks;
    }
}
