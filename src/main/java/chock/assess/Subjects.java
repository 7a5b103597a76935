package chock.assess;

import chock.assess.facts.Wanted;
import chock.record.Deed;
import chock.record.Entry;
import chock.record.JobRecord;
import chock.record.Vocabulary.Form;
import chock.quantity.Unit;
import chock.rulebook.RuleBook;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Everything that can be written about one machine because some check asks it of this machine, at any gate. */
public final class Subjects {
    private final List<Subject> all;
    private final List<Wanted> wanted;

    /**
     * One thing that is asked.
     *
     * @param kind the weakest kind of entry that answers it; {@link Deed#DONE} where it is work
     * @param what the aspect, or the work
     * @param form how it is answered, or null for work
     * @param units of an amount, as cards have them; else empty
     * @param answers good and bad, of an answer; else empty
     */
    public record Subject(String point, Deed kind, String what, Form form, Set<Unit> units, Set<String> answers) { }

    private Subjects(List<Subject> all, List<Wanted> wanted) {
        this.all = all;
        this.wanted = wanted;
    }

    /** What the rule book asks of the machine of this record, as it is described. */
    public static Subjects of(JobRecord record, RuleBook book, Instant asOf) {
        List<Wanted> wanted = Assessor.conclude(record, book, asOf).wanted();
        Map<String, Subject> all = new LinkedHashMap<>();
        wanted.stream().sorted(Comparator.comparing(Wanted::key)).forEach(want -> {
            var aspect = book.vocabulary().aspects().get(want.aspect());
            boolean work = want.want().weakest() == Deed.DONE;
            Subject here = new Subject(want.point(), want.want().weakest(), want.aspect(), work ? null : want.want().form(), new TreeSet<>(), work || aspect == null ? Set.of() : new TreeSet<>(aspect.answers()));
            all.putIfAbsent(work + want.key(), here);
            if (want.want().unit() != null) {
                all.get(work + want.key()).units().add(want.want().unit());
            }
        });
        return new Subjects(List.copyOf(all.values()), wanted);
    }

    public List<Subject> all() {
        return all;
    }

    /** True when some check asks for this work itself. */
    public boolean asksForWork(String point, String work) {
        return all.stream().anyMatch(one -> one.kind() == Deed.DONE && one.point().equals(point) && one.what().equals(work));
    }

    /** What has to be proven after such work, however well it was proven before: {@code front-brake/hydraulic leak-under-pressure}. */
    public List<String> undoneBy(String point, String work) {
        Entry done = new Entry("", null, "", Deed.DONE, point, work, null, null, null, null, null, 0);
        List<String> undone = new ArrayList<>();
        wanted.stream().filter(want -> want.want().weakest() != Deed.DONE && want.isUndoneBy(done)).map(Wanted::key).sorted().distinct().forEach(undone::add);
        return undone;
    }
}
